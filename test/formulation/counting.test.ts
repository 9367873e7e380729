/** Counting rules and aims against an independent oracle, on up to 3,000 problems drawn from the real tables. */
import { describe, expect, test } from 'vitest';
import { Formulation } from '../../src/formulation/formulation.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import type { Aim } from '../../src/formulation/problem/problem.ts';
import type { Best } from '../../src/formulation/problem/result.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { draws } from '../draws.ts';
import {
  type Answer,
  best,
  bestObjective,
  broken,
  bruteForce,
  faults,
  type Goal,
  type Hold,
  holdOf,
  judged,
  nearestMix,
  possible,
  ranked,
  reached,
  search,
  searched,
  signOf,
} from './counting-oracle.ts';
import { type CountingProblem, drawCountingProblem } from './counting-problems.ts';
import { fullyKnown } from './problems.ts';

const PROBLEMS = draws(3000, 200);
/** Problems a test. */
const BY = 200;
/** Of every so many problems one is answered in full, with spans and grams, which take long; the others with the best mix. */
const IN_FULL = 10;
/** Infeasible problems whose conflict and remedies are checked. */
const COLLISIONS = draws(150, 20);
const SMALL = draws(200, 40);
const SQUARES = draws(100, 20);
const POSED = draws(150, 60);
const SURVEYED = draws(300, 60);
const reference = loadReference();
const highs = await loadHighs();
const pool = fullyKnown(reference);

function formulated<T>(problem: CountingProblem, ask: (formulation: Formulation) => T): T {
  const parsed = parseProblem(JSON.parse(JSON.stringify(problem)), reference);
  expect(parsed.ignored).toEqual([]);
  const formulation = new Formulation(parsed.problem, { reference, highs });
  try {
    return ask(formulation);
  } finally {
    formulation.dispose();
  }
}

const solve = (problem: CountingProblem) => formulated(problem, (f) => f.solve());

/** What was answered, or the complaint, so that one bad problem does not hide the others. */
function attempt<T>(ask: () => T): { done: T } | { failed: string } {
  try {
    return { done: ask() };
  } catch (error) {
    return { failed: String(error).slice(0, 200) };
  }
}

function answerOf(problem: CountingProblem, told: Best): Answer {
  return {
    x: problem.foods.map((f) => told.shares[f.id] ?? 0),
    objective: told.objective,
    aims: told.aims ?? [],
    gap: told.gap ?? 0,
  };
}

/** The problem without anything that is counted, and without aims. */
function uncounted(problem: CountingProblem): CountingProblem {
  const { least_grams: _, aims: __, ...rest } = problem;
  return {
    ...rest,
    foods: problem.foods.map(({ if_used: ___, ...f }) => f),
    rules: problem.rules.filter((r) => !('count' in r)),
  };
}

/** The problem with only the bounds that the pointers name. */
function only(problem: CountingProblem, pointers: readonly string[]): CountingProblem {
  const kept = <T>(pointer: string, value: T) => (pointers.includes(pointer) ? value : undefined);
  return {
    ...problem,
    aims: [],
    foods: problem.foods.map((f, i) => ({
      ...f,
      min: kept(`/foods/${i}/min`, f.min),
      max: kept(`/foods/${i}/max`, f.max),
      if_used: kept(`/foods/${i}/if_used`, f.if_used),
    })) as CountingProblem['foods'],
    rules: problem.rules.map((r, i) => ({
      ...r,
      min: kept(`/rules/${i}/min`, r.min),
      max: kept(`/rules/${i}/max`, r.max),
    })) as CountingProblem['rules'],
    least_grams: kept('/least_grams', problem.least_grams),
  };
}

const POINTER = /^\/(?:rules\/\d+\/(?:min|max)|foods\/\d+\/(?:min|max|if_used)|least_grams)$/;

type AnyRemedy =
  | { kind: 'loosen'; pointer: string; to: number }
  | { kind: 'add'; food: CountingProblem['foods'][number] }
  | { kind: 'loosen-together'; changes: readonly { pointer: string; to: number }[] };

function mended(problem: CountingProblem, remedy: AnyRemedy): CountingProblem {
  const copy = structuredClone(problem);
  if (remedy.kind === 'add') {
    copy.foods.push(remedy.food);
    return copy;
  }
  for (const { pointer, to } of remedy.kind === 'loosen' ? [remedy] : remedy.changes) {
    const path = pointer.split('/').slice(1);
    const last = path.pop()!;
    let place = copy as unknown as Record<string, unknown>;
    for (const step of path) place = place[step] as Record<string, unknown>;
    expect(place[last], `${pointer} is written in the problem`).toBeTypeOf('number');
    place[last] = to;
  }
  return copy;
}

// ---- the oracle by itself ----

describe('the oracle', () => {
  test(`${SMALL} small problems: the integer program and the search find what trying every combination finds`, async () => {
    const met = { feasible: 0, infeasible: 0, close: 0, goals: 0, wholeGoals: 0, held: 0 };
    for (let seed = 0; seed < SMALL; seed++) {
      const problem = drawCountingProblem(pool, 100_000 + seed, { foods: 6, objective: 'cheapest' });
      const at = { problem, reference };
      const price = problem.foods.map((f) => f.price_per_kg!);
      const holds: Hold[] = [];
      const goals: Goal[] = [
        ...(problem.aims ?? []).map((aim): Goal => ({ kind: 'aim', aim })),
        { kind: 'cost', price },
      ];
      for (const goal of goals) {
        const [program, slow, tree] = [
          await best(at, holds, goal),
          await bruteForce(at, holds, goal),
          await search(at, holds, goal),
        ];
        const what = `seed ${seed}, ${JSON.stringify(goal)}`;
        if ((program === undefined) !== (slow === undefined) && (await judged(at)) === 'close') {
          met.close++;
          break;
        }
        expect(program === undefined, what).toBe(slow === undefined);
        expect(tree === undefined, what).toBe(slow === undefined);
        if (!program || !slow || !tree) {
          expect(holds.length, what).toBe(0);
          met.infeasible++;
          break;
        }
        const tolerance = 1e-6 * Math.max(1, Math.abs(slow.z));
        expect(Math.abs(program.z - slow.z), what).toBeLessThan(tolerance);
        expect(Math.abs(tree.z - slow.z), what).toBeLessThan(tolerance);
        expect(broken(at, program.x, 1e-6), what).toEqual([]);
        met.goals++;
        if (goal.kind !== 'aim') {
          met.feasible++;
          continue;
        }
        if (goal.aim.aim.startsWith('few')) met.wholeGoals++;
        expect(Math.abs(reached(at, goal.aim, program.x) - signOf(goal.aim) * program.z), what).toBeLessThan(
          2 * tolerance,
        );
        holds.push(holdOf(goal.aim, program.z, 1e-6));
        met.held++;
      }
    }
    console.log('oracle against every combination', met);
    expect(met.feasible).toBeGreaterThan(SMALL / 4);
    expect(met.infeasible).toBeGreaterThan(SMALL / 8);
    expect(met.wholeGoals).toBeGreaterThan(SMALL / 10);
    expect(met.close).toBeLessThan(SMALL / 50);
  });

  test('least squares: trying every combination finds the same, and no way from it to a corner leads downhill', async () => {
    const met = { compared: 0, infeasible: 0, held: 0 };
    for (let seed = 0; met.compared < SQUARES; seed++) {
      const problem = drawCountingProblem(pool, 200_000 + seed, {
        foods: 6,
        objective: seed % 2 === 0 ? 'nearest' : 'varied',
      });
      const at = { problem, reference };
      const mix = await nearestMix(at, []);
      const slow = await bruteForce(at, [], 'squares');
      expect(mix === undefined, `seed ${seed}`).toBe(slow === undefined);
      if (!mix || !slow) {
        met.infeasible++;
        continue;
      }
      met.compared++;
      expect(Math.abs(mix.z - slow.z), `seed ${seed}`).toBeLessThan(1e-7 * Math.max(1, slow.z));
      const tight = await ranked(at, 1e-6);
      if (problem.aims && tight && tight !== 'undecided') {
        const holds = problem.aims.map((aim, k) => holdOf(aim, tight.bests[k]!, 1e-6));
        const held = await bruteForce(at, holds, 'squares');
        expect(Math.abs(tight.objective - held!.z), `seed ${seed}`).toBeLessThan(1e-7 * Math.max(1, held!.z));
        met.held++;
      }
      expect(broken(at, mix.x, 1e-6), `seed ${seed}`).toEqual([]);
      // Corners of the kept mixes, and the way to them: where the way stays within the rules, it leads uphill.
      for (let i = 0; i < problem.foods.length; i++) {
        for (const sign of [1, -1]) {
          const price = problem.foods.map((_, j) => (i === j ? sign : 0));
          const corner = await best(at, [], { kind: 'cost', price });
          expect(corner, `seed ${seed}`).toBeDefined();
          for (const step of [0.001, 0.01, 0.1, 0.5, 1]) {
            const on = mix.x.map((v, j) => v + step * (corner!.x[j]! - v));
            if (broken(at, on, 1e-9).length > 0) continue;
            const there = squares(problem, on);
            expect(there, `seed ${seed}`).toBeGreaterThan(mix.z - 1e-7 * Math.max(1, mix.z));
          }
        }
      }
    }
    console.log('least squares against every combination', met);
    expect(met.held).toBeGreaterThan(0.3 * SQUARES);
  });

  test('an answer a little off is refused, one within the slack is not', async () => {
    const met = { right: 0, costlier: 0, unaimed: 0, greedy: 0 };
    for (let seed = 0; seed < POSED; seed++) {
      const problem = drawCountingProblem(pool, 300_000 + seed);
      const at = { problem, reference };
      const [tight, usual] = [await ranked(at, 1e-7), await ranked(at, 1e-6)];
      if (!tight || !usual || tight === 'undecided' || usual === 'undecided') continue;
      const posed = (x: readonly number[], objective: number): Answer => ({
        x: toHundred(x),
        objective,
        aims: (problem.aims ?? []).map((aim) => ({ aim: aim.aim, value: reached(at, aim, x) })),
        gap: 0,
      });
      expect(await faults(at, posed(usual.x, usual.objective), tight), `seed ${seed}`).toEqual([]);
      met.right++;
      // Without its aims, or with them given away too freely, the answer is another one.
      const unaimed = await ranked({ ...at, problem: { ...problem, aims: [] } }, 0);
      if (problem.aims && unaimed && unaimed !== 'undecided' && differs(unaimed, tight)) {
        expect(await faults(at, posed(unaimed.x, unaimed.objective), tight), `seed ${seed}`).not.toEqual([]);
        met.unaimed++;
      }
      const freer = problem.aims?.map((aim): Aim => ({ ...aim, give: (aim.give ?? 0) + 1 }));
      const greedy = freer && (await ranked({ ...at, problem: { ...problem, aims: freer } }, 0));
      if (greedy && greedy !== 'undecided' && differs(greedy, tight)) {
        expect(await faults(at, posed(greedy.x, greedy.objective), tight), `seed ${seed}`).not.toEqual([]);
        met.greedy++;
      }
      if (problem.objective !== 'cheapest') continue;
      const price = problem.foods.map((f) => -f.price_per_kg!);
      const holds = (problem.aims ?? []).map((aim, k) => holdOf(aim, tight.bests[k]!, 1e-7));
      const dear = await best(at, holds, { kind: 'cost', price });
      if (!dear || !differs({ objective: -dear.z }, tight)) continue;
      expect(await faults(at, posed(dear.x, -dear.z), tight), `seed ${seed}`).not.toEqual([]);
      met.costlier++;
    }
    console.log('answers put to the comparison', met);
    for (const number of Object.values(met)) expect(number).toBeGreaterThan(POSED / 10);
  });

  test('of the problems drawn, about a third has no mix, and what is counted matters in most others', async () => {
    const met = { feasible: 0, infeasible: 0, matters: 0, countedOut: 0 };
    for (let seed = 0; seed < SURVEYED; seed++) {
      const problem = drawCountingProblem(pool, seed);
      const mix = await bestObjective({ problem: { ...problem, aims: [] }, reference }, []);
      const plain = await bestObjective({ problem: uncounted(problem), reference }, []);
      met[mix ? 'feasible' : 'infeasible']++;
      if (!mix && plain) met.countedOut++;
      if (mix && plain && Math.abs(mix.z - plain.z) > 1e-4 * Math.max(1, mix.z)) met.matters++;
    }
    console.log('problems drawn', met);
    expect(met.infeasible).toBeGreaterThan(SURVEYED / 5);
    expect(met.feasible).toBeGreaterThan(SURVEYED / 2);
    expect(met.matters).toBeGreaterThan(met.feasible / 2);
    expect(met.countedOut).toBeGreaterThan(met.infeasible / 3);
  });
});

function squares(problem: CountingProblem, x: readonly number[]): number {
  const open = problem.foods.filter((f) => !f.refused);
  const given = open.reduce((s, f) => s + (f.want ?? 0), 0);
  const part = Math.max(0, 100 - given) / open.filter((f) => f.want === undefined).length;
  return problem.foods.reduce((s, f, i) => {
    const want = problem.objective === 'varied' ? 0 : (f.want ?? part);
    return s + (f.refused ? 0 : (x[i]! - want) ** 2);
  }, 0);
}

const differs = (a: { objective: number }, b: { objective: number }) =>
  Math.abs(a.objective - b.objective) > 1e-3 * Math.max(1, Math.abs(b.objective));

/** Takes the last rounding error out of the total, so that it does not hide what is asked. */
function toHundred(x: readonly number[]): number[] {
  const largest = x.indexOf(Math.max(...x));
  return x.map((v, i) => (i === largest ? v + 100 - x.reduce((s, w) => s + w, 0) : v));
}

// ---- the product ----

describe('on problems drawn from the real tables', () => {
  for (let from = 0; from < PROBLEMS; from += BY) {
    test(`problems ${from} to ${from + BY - 1}: same status, same aims, same optimum, rules kept`, async () => {
      const wrong: string[] = [];
      const met = {
        feasible: 0,
        infeasible: 0,
        close: 0,
        undecided: 0,
        aims: 0,
        weighed: 0,
        unproven: 0,
      };
      for (let seed = from; seed < from + BY; seed++) {
        const problem = drawCountingProblem(pool, seed);
        const at = { problem, reference };
        const inFull = seed % IN_FULL === 0;
        const theirs = await ranked(at, 1e-7);
        const asked = attempt(() => formulated(problem, (f) => f.best()));
        if ('failed' in asked) {
          wrong.push(`seed ${seed}: best() fails: ${asked.failed}`);
          continue;
        }
        const feasible = asked.done !== undefined;
        if (feasible !== (theirs !== undefined)) {
          const verdict = await judged(at);
          if (verdict === 'close') met.close++;
          else if (feasible !== (verdict === 'possible'))
            wrong.push(`seed ${seed}: ${verdict}, not found so`);
          continue;
        }
        if (!asked.done || !theirs) {
          met.infeasible++;
          continue;
        }
        met.feasible++;
        met.aims += problem.aims?.length ?? 0;
        if (theirs === 'undecided') met.undecided++;
        const answer = answerOf(problem, asked.done);
        if (answer.gap > 0) met.unproven++;
        for (const fault of await faults(at, answer, theirs)) wrong.push(`seed ${seed}: ${fault}`);
        if (!inFull) continue;
        const solved = attempt(() => solve(problem));
        if ('failed' in solved) {
          wrong.push(`seed ${seed}: solve() fails: ${solved.failed}`);
          continue;
        }
        const ours = solved.done;
        if (ours.status !== 'optimal') {
          wrong.push(`seed ${seed}: best() finds a mix, solve() none`);
          continue;
        }
        expect(ours.objective).toBe(asked.done.objective);
        if (!ours.grams) continue;
        met.weighed++;
        const grams = problem.foods.map((f) => ours.grams![f.id] ?? 0);
        expect(grams.every(Number.isInteger)).toBe(true);
        expect(grams.reduce((a, b) => a + b, 0)).toBe(problem.batch_grams);
        const weighed = grams.map((g) => (100 * g) / problem.batch_grams);
        for (const fault of broken(at, weighed)) wrong.push(`seed ${seed}, grams: ${fault}`);
      }
      console.log(`counting: ${JSON.stringify({ ...met, decidedBySearch: searched.count })}`);
      expect(wrong).toEqual([]);
      expect(met.feasible).toBeGreaterThan(BY / 2);
      expect(met.infeasible).toBeGreaterThan(BY / 5);
      expect(met.aims).toBeGreaterThan(met.feasible / 2);
      expect(met.weighed).toBeGreaterThan(met.feasible / (4 * IN_FULL));
      expect(met.close).toBeLessThan(BY / 100);
      expect(met.undecided).toBeLessThan(BY / 100);
    });
  }

  test(`${COLLISIONS} conflicts cannot be kept, and are minimal; every remedy mends`, async () => {
    const found = {
      conflicts: 0,
      members: 0,
      counting: 0,
      loosen: 0,
      'loosen-together': 0,
      add: 0,
      close: 0,
    };
    const wrong: string[] = [];
    for (let seed = 1; found.conflicts < COLLISIONS && wrong.length < 50; seed += 5) {
      const problem = drawCountingProblem(pool, seed);
      const at = { problem, reference };
      if ((await possible(at)) || (await judged(at)) !== 'impossible') continue;
      const solved = attempt(() => solve(problem));
      if ('failed' in solved) {
        wrong.push(`seed ${seed}: solve() fails: ${solved.failed}`);
        continue;
      }
      const ours = solved.done;
      if (ours.status !== 'infeasible') {
        wrong.push(`seed ${seed}: an answer where no mix is possible`);
        continue;
      }
      found.conflicts++;
      const pointers = ours.conflict.map((c) => c.pointer);
      found.members += pointers.length;
      if (pointers.some((p) => isCounting(problem, p))) found.counting++;
      if (pointers.length === 0 || new Set(pointers).size < pointers.length)
        wrong.push(`seed ${seed}: conflict is ${JSON.stringify(pointers)}`);
      for (const p of pointers) if (!POINTER.test(p)) wrong.push(`seed ${seed}: ${p} points at no bound`);
      /** Whether a problem is as it should be; within a millionth either way is let pass. */
      const check = async (posed: CountingProblem, should: boolean, what: string) => {
        const asked = { problem: posed, reference };
        if ((await possible(asked)) === should) return;
        const verdict = await judged(asked);
        if (verdict === 'close') found.close++;
        else if ((verdict === 'possible') !== should) wrong.push(`seed ${seed}: ${what}: ${verdict}`);
      };
      await check(only(problem, pointers), false, `conflict ${pointers.join(' ')}`);
      for (const dropped of pointers) {
        const rest = only(
          problem,
          pointers.filter((p) => p !== dropped),
        );
        await check(rest, true, `conflict ${pointers.join(' ')} without ${dropped}`);
      }
      for (const remedy of ours.remedies as unknown as readonly AnyRemedy[]) {
        found[remedy.kind]++;
        await check(mended(problem, remedy), true, JSON.stringify(remedy));
      }
    }
    console.log(`conflicts: ${JSON.stringify(found)}`);
    expect(wrong).toEqual([]);
    expect(found.conflicts).toBe(COLLISIONS);
    expect(found.counting).toBeGreaterThan(COLLISIONS / 4);
    expect(found.loosen).toBeGreaterThan(0);
    expect(found.add).toBeGreaterThan(0);
  });
});

function isCounting(problem: CountingProblem, pointer: string): boolean {
  const [, list, row] = pointer.split('/');
  if (list === 'rules') return 'count' in (problem.rules[Number(row)] ?? {});
  return list === 'least_grams' || pointer.endsWith('/if_used');
}
