/** Swaps keep every rule at every share of their span, and break one just outside it. */
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { drawProblem, fullyKnown, randomFrom } from '../../../test/formulation/problems.ts';
import { demoProblem } from '../../household/demo.ts';
import { loadReference } from '../../household/reference-file.ts';
import { normalQuantile } from '../../nutrition/normal.ts';
import { applyCautions, isCautioned } from '../amounts/apply-cautions.ts';
import { foodAmounts } from '../amounts/food-amounts.ts';
import { Formulation } from '../formulation.ts';
import { parseProblem } from '../problem/parse.ts';
import type { Ingredient, Problem, Rule, Shares } from '../problem/problem.ts';
import { besideAmounts } from '../solve/build-ration.ts';
import { type Highs, loadHighs } from '../solve/highs.ts';
import { type SubstituteQuestion, type Swap, substitutes, swapped } from './substitutes.ts';

const reference = loadReference();
// Foods without a caution: what a caution allows is tried on its own, below.
const anything = parseProblem({ foods: [{ id: 'any', ref: 'sr28:20038' }], rules: [] }, reference).problem;
const pool = fullyKnown(reference).filter(
  (f) => (f.composition.WATER ?? 100) <= 40 && !isCautioned(f.ref, anything, reference),
);
let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

/** With what is fed beside the mix as the problem writes it. */
function substitutesIn(problem: Problem, shares: Shares, question?: SubstituteQuestion) {
  const beside = besideAmounts(problem, reference).map((food, row) => ({
    food,
    part: problem.beside[row]!.share_of_ration / 100,
  }));
  return substitutes(problem, { reference, beside }, shares, question);
}

function solved(problem: Problem): Record<string, number> | undefined {
  const formulation = new Formulation(problem, { reference, highs });
  try {
    // The reasons why there is none would take long, and nobody asks for them here.
    if (!formulation.feasible()) return undefined;
    const result = formulation.solve();
    return result.status === 'optimal' ? { ...result.shares } : undefined;
  } finally {
    formulation.dispose();
  }
}

/** The problem with a food of the tables written into it. */
function withSwap(problem: Problem, swap: Swap): { problem: Problem; id: string } {
  if (swap.id !== undefined) return { problem, id: swap.id };
  const food: Ingredient = { id: swap.ref!, ref: swap.ref, group: swap.group };
  return { problem: { ...problem, foods: [...problem.foods, food] }, id: food.id };
}

/** How far the worst rule or bound is from being missed, by plain sums over what is eaten; below 0 where one is. */
function room(problem: Problem, shares: Readonly<Record<string, number>>): number {
  const foods = problem.foods.map((f) => foodAmounts(f, reference, problem.variation));
  const beside = problem.beside.map((b) => foodAmounts(b, reference, problem.variation));
  const bounds = problem.rules.flatMap((r) => ('nutrient' in r ? [r.min, r.max] : []));
  const ends = problem.confidence_for === 'all' ? bounds.filter((b) => b !== undefined).length : 2;
  const z = problem.confidence ? normalQuantile(1 - (1 - problem.confidence) / Math.max(2, ends)) : 0;
  const share = (i: number) => shares[foods[i]!.id] ?? 0;
  let worst = 100;
  const least = (v: number) => {
    worst = Math.min(worst, v);
  };
  const part = 1 - problem.beside.reduce((s, b) => s + b.share_of_ration / 100, 0);
  const ask = (rule: Rule, left: number, spread: number) => {
    const whole = rule.on === 'ration';
    const eaten = [
      ...foods.map((f, i) => ({ f, w: i === left ? 0 : (share(i) / 100) * (whole ? part : 1) })),
      ...(whole ? beside.map((f, k) => ({ f, w: problem.beside[k]!.share_of_ration / 100 })) : []),
    ];
    const sum = (of: (f: (typeof foods)[number]) => number) => eaten.reduce((s, e) => s + e.w * of(e.f), 0);
    const weight = sum(() => 1);
    if (weight < 1e-9) return;
    let [top, bottom, sd] = [0, 1, 0];
    if ('nutrient' in rule) {
      top = sum((f) => f.amount(rule.nutrient).value);
      bottom = rule.basis === 'DM' ? sum((f) => 1 - f.amount('WATER').value / 100) : weight;
      sd = spread * Math.hypot(...eaten.map((e) => e.w * e.f.amount(rule.nutrient).sd));
    } else if ('ratio' in rule) {
      top = sum((f) => f.amount(rule.ratio[0]).value);
      bottom = sum((f) => f.amount(rule.ratio[1]).value);
    } else if ('group' in rule) {
      top = foods.reduce((s, f, i) => s + (f.group === rule.group ? 100 * eaten[i]!.w : 0), 0);
    } else if ('food' in rule) {
      top = 100 * eaten[foods.findIndex((f) => f.id === rule.food)]!.w;
    } else return;
    // Nothing over nothing: a ratio that neither holds nor breaks.
    if (bottom === 0 && top === 0) return;
    if (rule.min !== undefined) least((top - sd) / bottom - rule.min);
    if (rule.max !== undefined) least(rule.max - (top + sd) / bottom);
  };
  for (const rule of problem.rules) {
    ask(rule, -1, z);
    if (problem.drop_one && ('nutrient' in rule || 'ratio' in rule))
      for (let left = 0; left < foods.length; left++) if (share(left) > 0) ask(rule, left, 0);
  }
  problem.foods.forEach((f, i) => {
    least(share(i) - (f.min ?? 0));
    least((f.max ?? 100) - share(i));
    const used = Math.max(f.if_used ?? 0, (100 * (problem.least_grams ?? 0)) / problem.batch_grams);
    if (share(i) > 1e-9) least(share(i) - used);
  });
  // Advice keeps to what a caution allows of each food; of all its foods together where cautions are applied.
  const { each, together } = applyCautions({ ...problem, cautions: 'apply' }, reference).caps;
  for (const [row, { max }] of each) least(max - share(row));
  if (problem.cautions === 'apply')
    for (const { rows, max } of together) least(max - rows.reduce((sum, row) => sum + share(row), 0));
  return worst;
}

/** Looks at every swap of a mix. @returns how many there were, and how many ended inside (0, what is left) */
function checkAll(problem: Problem, shares: Record<string, number>, ids?: string[]) {
  let [count, ended] = [0, 0];
  for (const { food, share, swaps } of substitutesIn(problem, shares, {
    perFood: 2,
    foods: ids,
  })) {
    for (const swap of swaps) {
      const { problem: posed, id } = withSwap(problem, swap);
      const roomAt = (s: number) => room(posed, swapped(shares, food, id, s));
      const nearest = Math.min(swap.high, Math.max(swap.low, share));
      expect(swap.share).toBe(nearest);
      const formulation = new Formulation(posed, { reference, highs });
      for (const s of [swap.low, swap.share, (swap.low + swap.high) / 2, swap.high]) {
        const mix = swapped(shares, food, id, s);
        expect(Object.values(mix).reduce((a, b) => a + b, 0)).toBeCloseTo(100, 8);
        expect(mix[food]).toBe(0);
        expect(roomAt(s), swap.sentence).toBeGreaterThan(-1e-6);
        if (s === swap.share) expect(formulation.evaluate(mix).breaches, swap.sentence).toEqual([]);
      }
      formulation.dispose();
      const had = shares[id] ?? 0;
      const [below, above] = [swap.low - 1e-4, swap.high + 1e-4];
      if (swap.low > 1e-3) {
        ended++;
        expect(roomAt(below), `below ${swap.low}: ${swap.sentence}`).toBeLessThan(0);
      }
      if (swap.high < 100 - had - 1e-3) {
        ended++;
        expect(roomAt(above), `above ${swap.high}: ${swap.sentence}`).toBeLessThan(0);
      }
      count++;
    }
  }
  return { count, ended };
}

function drawn(seed: number, more: (random: () => number) => object = () => ({})) {
  const json = { ...drawProblem(pool, seed, 'nearest'), ...more(randomFrom(seed + 99)) };
  return parseProblem(json, reference).problem;
}

describe('over drawn problems', () => {
  const found = { count: 0, ended: 0 };
  const property = (more: (random: () => number) => object, runs: number) =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), (seed) => {
        const problem = drawn(seed, more);
        const plain = drawn(seed);
        const shares = solved(plain);
        if (!shares) return;
        const { count, ended } = checkAll(problem, shares, undefined);
        found.count += count;
        found.ended += ended;
      }),
      { numRuns: runs, seed: 20251127 },
    );
  afterAll(() => {
    expect(found.count).toBeGreaterThan(300);
    expect(found.ended).toBeGreaterThan(300);
  });

  test('each span keeps every rule and ends where one breaks', () => property(() => ({}), 10));

  test('so it does with a least share where used, and a least that the scale can weigh', () =>
    property(() => ({ least_grams: 3 }), 15));

  test('so it does when any one food may be left', () => property(() => ({ drop_one: true }), 15));

  test('so it does with a confidence, each rule or all at once', () =>
    property(
      (random) => ({
        confidence: 0.2 + 0.4 * random(),
        confidence_for: random() < 0.5 ? 'all' : 'each',
        variation: 'published',
      }),
      20,
    ));

  test('a food that is not named has no share that keeps every rule', () => {
    let none = 0;
    for (let seed = 1; seed <= 20; seed++) {
      const problem = drawn(seed);
      const shares = solved(problem);
      if (!shares) continue;
      for (const { food, swaps } of substitutesIn(problem, shares, { perFood: 1000 }).slice(0, 3)) {
        const named = new Set(swaps.map((s) => s.id));
        for (const other of problem.foods) {
          if (other.id === food || named.has(other.id)) continue;
          none++;
          for (let k = 1; k <= 15; k++) {
            const s = (k / 15) * (100 - shares[other.id]!);
            expect(room(problem, swapped(shares, food, other.id, s)), `${food} ${other.id}`).toBeLessThan(
              1e-6,
            );
          }
        }
      }
    }
    expect(none).toBeGreaterThan(50);
  });
});

describe('on the invented mix', () => {
  const problem = demoProblem();
  let shares: Record<string, number>;
  beforeAll(() => {
    shares = solved(problem)!;
  });

  test('own foods come first, nearest share first, and a sentence says how much', () => {
    const all = substitutesIn(problem, shares);
    expect(all.length).toBeGreaterThan(15);
    for (const { share, swaps } of all) {
      const kinds = swaps.map((s) => (s.id === undefined ? 'tables' : 'own'));
      expect(kinds).toEqual([...kinds].sort());
      for (const kind of ['own', 'tables']) {
        const off = swaps.filter((_, k) => kinds[k] === kind).map((s) => Math.abs(s.share - share));
        expect(off.length).toBeLessThanOrEqual(5);
        for (let k = 1; k < off.length; k++) expect(off[k]!).toBeGreaterThanOrEqual(off[k - 1]! - 1e-9);
      }
      for (const { inMix, id, becomes, share: taken } of swaps) {
        expect(inMix).toBe(id !== undefined && shares[id]! > 1e-9);
        expect(becomes).toBeCloseTo(taken + (id === undefined ? 0 : shares[id]!), 10);
      }
    }
    expect(all.flatMap((f) => f.swaps).every((s) => / % can be replaced by .+ %/.test(s.sentence))).toBe(
      true,
    );
    expect(checkAll(problem, shares).count).toBeGreaterThan(50);
  });

  test('figures in a sentence lie inside the span', () => {
    for (const { swaps } of substitutesIn(problem, shares, { perFood: 20 })) {
      for (const swap of swaps) {
        const figures = [...swap.sentence.matchAll(/(?<=, )[\d.]+(?= %)/g)].map((m) => Number(m[0]));
        expect(figures.length, swap.sentence).toBe(1);
        expect(figures[0]!).toBeGreaterThanOrEqual(swap.low - 1e-4);
        expect(figures[0]!).toBeLessThanOrEqual(swap.high + 1e-4);
      }
    }
  });

  test('a refused food and one that a caution caps are not proposed', () => {
    const all = substitutesIn(problem, shares, { perFood: 1000 });
    const own = all.flatMap((f) => f.swaps).find((s) => s.id !== undefined && s.inMix)!;
    const table = all.flatMap((f) => f.swaps).find((s) => s.ref !== undefined)!;
    const refusing: Problem = {
      ...problem,
      foods: [...problem.foods, { id: 'no', ref: table.ref, refused: true }],
    };
    const again = substitutesIn(refusing, shares, { perFood: 1000 }).flatMap((f) => f.swaps);
    expect(again.some((s) => s.id === own.id)).toBe(true);
    expect(again.some((s) => s.ref === table.ref || s.id === 'no')).toBe(false);
    // Almonds are capped by the caution list, in advice also where the problem only reports cautions.
    const almonds = { id: 'almond', ref: 'sr28:12061', group: 'seed' };
    const reported: Problem = { ...problem, cautions: 'report', foods: [...problem.foods, almonds] };
    const swaps = substitutesIn(reported, shares, { perFood: 1000 }).flatMap((f) => f.swaps);
    expect(swaps.filter((s) => s.ref === almonds.ref)).toEqual([]);
    const cap = new Formulation(reported, { reference, highs })
      .evaluate(shares)
      .cautions.find((c) => c.food === 'almond')!.max_share!;
    for (const swap of swaps.filter((s) => s.id === 'almond'))
      expect(swap.high).toBeLessThanOrEqual(cap + 1e-6);
  });

  test('a food that must be in has no substitute, and says so', () => {
    const foods = problem.foods.map((f, i) => (i === 0 ? { ...f, min: 1 } : f));
    const [first] = substitutesIn({ ...problem, foods }, shares, { foods: [foods[0]!.id] });
    expect(first).toMatchObject({ food: foods[0]!.id, swaps: [] });
    expect(first!.sentence).toMatch(/at least 1 %/);
  });

  test('an amount that nobody knows is said beside the swap', () => {
    const mine = { id: 'mine', name: 'Own blend', group: 'seed', composition: { PROCNT: 14, WATER: 8 } };
    const asking: Problem = {
      ...problem,
      rules: [
        { nutrient: 'PROCNT', min: 5 },
        { nutrient: 'FAT', max: 50 },
      ],
      foods: [...problem.foods, mine],
    };
    const [first] = substitutesIn(asking, shares, { perFood: 1000 });
    const swap = first!.swaps.find((s) => s.id === 'mine')!;
    expect(swap.unsure).toEqual(['FAT']);
    expect(swap.sentence).toMatch(/fat is not known/);
  });

  test('shares that are no whole mix, and unknown foods, are bad input', () => {
    expect(() => substitutesIn(problem, { [problem.foods[0]!.id]: 90 })).toThrow(/90 %, not 100 %/);
    expect(() => substitutesIn(problem, shares, { foods: ['nothing'] })).toThrow(/"nothing"/);
  });

  test('a mix of one food can be swapped whole', () => {
    const two: Problem = {
      ...problem,
      rules: [],
      foods: problem.foods.slice(0, 2).map((f) => ({ id: f.id, ref: f.ref })),
    };
    const [only] = substitutesIn(two, { [two.foods[0]!.id]: 100 });
    expect(only!.swaps[0]).toMatchObject({ id: two.foods[1]!.id, share: 100, low: 100, high: 100 });
  });
});
