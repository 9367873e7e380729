/** Everything that an answer says about a problem of any kinds together, held against {@link KindsOracle}. */
import type { Formulation } from '../../src/formulation/formulation.ts';
import { setAtPointer } from '../../src/formulation/problem/json-pointer.ts';
import type { Problem } from '../../src/formulation/problem/problem.ts';
import type { Collision, Result } from '../../src/formulation/problem/result.ts';
import { type Between, KindsOracle } from './kinds-oracle.ts';

/** A problem with less room than this either way, scaled, is too close to call. */
const CLOSE = 1e-6;
/** A loosened bound is as small as can be when so much of the way back no longer suffices; it is rounded to 4 digits. */
const TIGHTER = 0.01;

export interface Met {
  optimal: number;
  infeasible: number;
  close: number;
  spans: number;
  members: number;
  loosenings: number;
  faults: string[];
}

/** @param solve the product's answer @param feasible whether the product finds any mix */
export function checkKinds(problem: Problem, solve: (p: Problem) => Result, met: Met, what: string): void {
  const say = (fault: string) => met.faults.push(`${what}: ${fault}`);
  const oracle = new KindsOracle(problem);
  const room = oracle.room();
  if (room.low < CLOSE && room.high > -CLOSE) {
    met.close++;
    return;
  }
  let result: Result;
  try {
    result = solve(problem);
  } catch (error) {
    say(`threw ${error}`);
    return;
  }
  if (room.low > 0 !== (result.status === 'optimal')) {
    say(`${result.status} where the room is ${room.low}`);
    return;
  }
  if (result.status === 'optimal') {
    met.optimal++;
    checkMix(problem, oracle, result, met, say);
  } else {
    met.infeasible++;
    checkCollision(problem, result, met, say);
  }
}

type Balanced = Extract<Result, { status: 'optimal' }>;

function checkMix(
  problem: Problem,
  oracle: KindsOracle,
  result: Balanced,
  met: Met,
  say: (fault: string) => void,
): void {
  const within = (told: number, { low, high }: Between, by: number) =>
    told >= low - by * Math.max(1, Math.abs(low)) && told <= high + by * Math.max(1, Math.abs(high));
  const beside = problem.beside.map((b) => result.beside?.[b.id]?.share ?? b.share_of_ration);
  for (const [j, b] of problem.beside.entries()) {
    const told = result.beside?.[b.id];
    if (!told?.span) continue;
    // With one before it at the very end of what it may be, this one's span is a hair's breadth.
    if (problem.beside.slice(0, j).some((other, k) => other.share_of_ration !== beside[k])) continue;
    const [low, high] = [oracle.besideEnd(j, 1, beside), oracle.besideEnd(j, -1, beside)];
    if (!within(told.span[0], low, 2e-6) || !within(told.span[1], high, 2e-6))
      say(`span of ${b.id} ${told.span} where it is ${show(low)} to ${show(high)}`);
    if (told.share === b.share_of_ration || j + 1 < problem.beside.length) continue;
    // Half the way back to the wanted share nothing may be left.
    for (const part of [1, 0.5, 0.01]) {
      const nearer = told.share + part * (b.share_of_ration - told.share);
      if (Math.abs(nearer - told.share) < 1e-4) continue;
      if (oracle.roomAt([...beside.slice(0, j), nearer]).low > CLOSE)
        say(`share of ${b.id} ${told.share} where ${nearer} can be kept`);
    }
  }
  // At the very end of what a share may be the mix is a point, which either side may find or miss.
  if (oracle.roomAt(beside).low < CLOSE) return;
  const best = oracle.best(beside);
  if (!within(result.objective, best, 1e-5))
    say(`objective ${result.objective} where ${show(best)} can be had`);
  problem.foods.forEach((f, i) => {
    met.spans++;
    const told = result.spans[f.id]!;
    const [low, high] = [oracle.shareEnd(i, 1, beside), oracle.shareEnd(i, -1, beside)];
    if (!within(told[0], low, 1e-5) || !within(told[1], high, 1e-5))
      say(`span of ${f.id} ${told} where it is ${show(low)} to ${show(high)}`);
  });
}

const show = ({ low, high }: Between) => `${low} (${high})`;

function checkCollision(problem: Problem, result: Collision, met: Met, say: (fault: string) => void): void {
  const pointers = result.conflict.map((c) => c.pointer);
  met.members += pointers.length;
  if (new Set(pointers).size < pointers.length) say(`conflict names a bound twice: ${pointers}`);
  const named = new Set(pointers);
  const alone = new KindsOracle(problem, (p) => named.has(p)).room();
  if (alone.low > CLOSE) say(`conflict ${pointers} leaves room ${alone.low}`);
  for (const dropped of pointers) {
    const rest = new KindsOracle(problem, (p) => p !== dropped && named.has(p)).room();
    if (rest.high < -CLOSE) say(`conflict ${pointers} collides without ${dropped}, by ${rest.high}`);
  }
  const loosened = new Set<string>();
  for (const remedy of result.remedies) {
    if (remedy.kind !== 'loosen' || typeof remedy.to !== 'number' || typeof remedy.from !== 'number')
      continue;
    met.loosenings++;
    loosened.add(remedy.pointer);
    const { pointer, from, to } = remedy;
    const at = (bound: number) => new KindsOracle(setAtPointer(problem, pointer, bound)).room();
    const there = at(to);
    if (there.high < -CLOSE) say(`${pointer} loosened to ${to} leaves room ${there.high}`);
    const rounding = 2 * 10 ** Math.floor(Math.log10(Math.max(Math.abs(to), 1e-9)) - 3);
    const counted = pointer.includes('if_used') || pointer.includes('least_grams');
    const back =
      to + Math.sign(from - to) * Math.max(rounding, counted ? 0.02 * from : Math.abs(from - to) * TIGHTER);
    if (Math.sign(from - back) !== Math.sign(from - to)) continue;
    if (isCount(problem, pointer)) {
      if (Math.abs(from - to) > 1 && at(to + Math.sign(from - to)).low > CLOSE)
        say(`${pointer}: ${to} is not the nearest`);
      continue;
    }
    const closer = at(back);
    if (closer.low > CLOSE)
      say(`${pointer} ${from} loosened to ${to} where ${back} suffices, with room ${closer.low}`);
  }
  // Every rule's bound that may give way and would be enough is among the remedies.
  for (const pointer of pointers) {
    if (!pointer.startsWith('/rules/') || loosened.has(pointer) || isCount(problem, pointer)) continue;
    const gone = new KindsOracle(problem, (p) => p !== pointer).room();
    if (gone.low < 1e-3) continue;
    const widest = pointer.endsWith('/min') ? 0 : mostOf(problem, pointer);
    const freed = new KindsOracle(setAtPointer(problem, pointer, widest)).room();
    if (freed.low > 1e-3) say(`${pointer} may give way and no remedy says so`);
  }
}

function isCount({ rules }: Problem, pointer: string): boolean {
  const [, list, row] = pointer.split('/');
  return list === 'rules' && 'count' in rules[Number(row)]!;
}

/** The most that may be written at a rule's upper bound: percent ends at 100. */
function mostOf({ rules }: Problem, pointer: string): number {
  const rule = rules[Number(pointer.split('/')[2])]!;
  return 'ratio' in rule || ('nutrient' in rule && !['PROCNT', 'FAT'].includes(rule.nutrient)) ? 1e5 : 100;
}

export function noneMet(): Met {
  return { optimal: 0, infeasible: 0, close: 0, spans: 0, members: 0, loosenings: 0, faults: [] };
}

/** The product's answer to a problem. */
export function answering(pose: (problem: Problem) => Formulation): (problem: Problem) => Result {
  return (problem) => {
    const formulation = pose(problem);
    try {
      return formulation.solve();
    } finally {
      formulation.dispose();
    }
  };
}
