/** Everything that an answer says about a problem of any kinds together, held against {@link KindsOracle}. */
import type { Formulation } from '../../src/formulation/formulation.ts';
import { setAtPointer } from '../../src/formulation/problem/json-pointer.ts';
import type { Problem } from '../../src/formulation/problem/problem.ts';
import type { Collision, Result } from '../../src/formulation/problem/result.ts';
import { KindsOracle } from './kinds-oracle.ts';

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
  if (Math.abs(room) < CLOSE) {
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
  if (room > 0 !== (result.status === 'optimal')) {
    say(`${result.status} where the room is ${room}`);
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
  const near = (a: number, b: number, by: number) => Math.abs(a - b) <= by * Math.max(1, Math.abs(b));
  const beside = problem.beside.map((b) => result.beside?.[b.id]?.share ?? b.share_of_ration);
  for (const [j, b] of problem.beside.entries()) {
    const told = result.beside?.[b.id];
    if (!told?.span) continue;
    const [low, high] = oracle.besideSpan(j, beside);
    if (!near(told.span[0], low, 2e-6) || !near(told.span[1], high, 2e-6))
      say(`span of ${b.id} ${told.span} where it is ${low} to ${high}`);
    const wanted = Math.min(high, Math.max(low, b.share_of_ration));
    const kept = beside.map((s, k) => (k === j ? wanted : s)).slice(0, j + 1);
    if (
      !near(told.share, wanted, 2e-6) &&
      problem.beside.length === kept.length &&
      oracle.roomAt(kept) > CLOSE
    )
      say(`share of ${b.id} ${told.share} where ${wanted} can be kept`);
  }
  const best = oracle.best(beside);
  // At the very end of what a share may be the mix is a point, which either side may find or miss.
  if (best === undefined) return;
  if (!near(result.objective, best, 2e-5)) say(`objective ${result.objective} where ${best} can be had`);
  problem.foods.forEach((f, i) => {
    met.spans++;
    const told = result.spans[f.id]!;
    const [low, high] = oracle.span(i, beside);
    if (!near(told[0], low, 1e-5) || !near(told[1], high, 1e-5))
      say(`span of ${f.id} ${told} where it is ${low} to ${high}`);
  });
}

function checkCollision(problem: Problem, result: Collision, met: Met, say: (fault: string) => void): void {
  const pointers = result.conflict.map((c) => c.pointer);
  met.members += pointers.length;
  if (new Set(pointers).size < pointers.length) say(`conflict names a bound twice: ${pointers}`);
  const named = new Set(pointers);
  const alone = new KindsOracle(problem, (p) => named.has(p)).room();
  if (alone > CLOSE) say(`conflict ${pointers} leaves room ${alone}`);
  for (const dropped of pointers) {
    const rest = new KindsOracle(problem, (p) => p !== dropped && named.has(p)).room();
    if (rest < -CLOSE) say(`conflict ${pointers} collides without ${dropped}, by ${rest}`);
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
    if (there < -CLOSE) say(`${pointer} loosened to ${to} leaves room ${there}`);
    const rounding = 2 * 10 ** Math.floor(Math.log10(Math.max(Math.abs(to), 1e-9)) - 3);
    const counted = pointer.includes('if_used') || pointer.includes('least_grams');
    const back =
      to + Math.sign(from - to) * Math.max(rounding, Math.abs(from - to) * (counted ? 0.03 : TIGHTER));
    if (Math.sign(from - back) !== Math.sign(from - to)) continue;
    if (isCount(problem, pointer)) {
      if (Math.abs(from - to) > 1 && at(to + Math.sign(from - to)) > CLOSE)
        say(`${pointer}: ${to} is not the nearest`);
      continue;
    }
    const closer = at(back);
    if (closer > CLOSE)
      say(`${pointer} ${from} loosened to ${to} where ${back} suffices, with room ${closer}`);
  }
  // Every rule's bound that may give way and would be enough is among the remedies.
  for (const pointer of pointers) {
    if (!pointer.startsWith('/rules/') || loosened.has(pointer) || isCount(problem, pointer)) continue;
    const gone = new KindsOracle(problem, (p) => p !== pointer).room();
    if (gone < 1e-3) continue;
    const widest = pointer.endsWith('/min') ? 0 : mostOf(problem, pointer);
    const freed = new KindsOracle(setAtPointer(problem, pointer, widest)).room();
    if (freed > 1e-3) say(`${pointer} may give way and no remedy says so`);
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
