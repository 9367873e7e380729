/** A confidence asked for is met: bounds hold at mean -+ z x sd, and simulated compositions lie in range as often. */
import { solveQP } from 'quadprog';
import { expect, test } from 'vitest';
import { onCrudeProtein } from '../../src/foods/crude-protein.ts';
import type { ReferenceFood } from '../../src/foods/reference.ts';
import { variationOf } from '../../src/foods/variation.ts';
import { Formulation } from '../../src/formulation/formulation.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { draws } from '../draws.ts';
import { crudeAmount, crudeSd } from './crude-amount.ts';
import { randomFrom } from './problems.ts';

const reference = loadReference();
const TAGS = ['PROCNT', 'FAT', 'FIBTG'] as const;
/** Of so many mixes the compositions are simulated too. */
const SIMULATED = draws(60, 10);
const NEAREST = draws(300, 30);
const TRIED = draws(200, 20);
/** z for 90 %: the normal quantile of 0.95, Abramowitz and Stegun 1964, table 26.5. */
const Z90 = 1.6448536269514722;

const withSd = Array.from({ length: reference.size }, (_, i) => onCrudeProtein(reference.at(i))).filter(
  (f) =>
    f.ref.startsWith('sr28:') && TAGS.every((t) => f.composition[t] !== undefined && f.sd[t] !== undefined),
);

function draw(seed: number) {
  const random = randomFrom(seed);
  const foods = [
    ...new Set(
      Array.from(
        { length: 8 + Math.floor(10 * random()) },
        () => withSd[Math.floor(random() * withSd.length)]!,
      ),
    ),
  ];
  const rules = TAGS.map((nutrient) => {
    const mean = foods.reduce((s, f) => s + crudeAmount(f, nutrient)!, 0) / foods.length;
    return { nutrient, min: mean * (0.6 + 0.35 * random()), max: mean * (1.1 + 0.4 * random()) };
  });
  return { foods, rules };
}

test(`${NEAREST} nearest mixes at 90 % agree with tangent cuts over a dual quadratic solver, and simulate as asked`, async () => {
  const highs = await loadHighs();
  let met = 0;
  for (let seed = 1; met < NEAREST; seed++) {
    const { foods, rules } = draw(seed);
    const json = { foods: foods.map((f) => ({ id: f.ref, ref: f.ref })), rules, confidence: 0.9 };
    const formulation = new Formulation(parseProblem(json, reference).problem, { reference, highs });
    const result = formulation.solve();
    formulation.dispose();
    if (result.status !== 'optimal') continue;
    met++;
    const x = foods.map((f) => result.shares[f.ref]!);
    for (const rule of rules) {
      const mean = x.reduce((s, v, i) => s + (v / 100) * crudeAmount(foods[i]!, rule.nutrient)!, 0);
      const sd = Math.hypot(...x.map((v, i) => (v / 100) * crudeSd(foods[i]!, rule.nutrient)!));
      expect(mean - Z90 * sd).toBeGreaterThanOrEqual(rule.min - 1e-6);
      expect(mean + Z90 * sd).toBeLessThanOrEqual(rule.max + 1e-6);
      expect(result.in_range_chance[rule.nutrient]!).toBeGreaterThan(0.9 - 1e-6);
      if (met > SIMULATED) continue;
      const simulated = simulate(foods, x, rule, seed);
      expect(simulated).toBeGreaterThan(0.9 - 3 * Math.sqrt((0.9 * 0.1) / 4000));
      expect(Math.abs(simulated - result.in_range_chance[rule.nutrient]!)).toBeLessThan(0.03);
    }
    const best = cutDual(foods, rules);
    expect(Math.abs(result.objective - best) / Math.max(1, best), `seed ${seed}`).toBeLessThan(1e-6);
  }
});

/** A standard normal deviate (Box and Muller 1958). */
function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** Part of 4,000 simulated compositions, foods independent and normal, that lie in the window. */
function simulate(
  foods: readonly ReferenceFood[],
  x: readonly number[],
  rule: ReturnType<typeof draw>['rules'][number],
  seed: number,
): number {
  const random = randomFrom(seed * 7919);
  let inside = 0;
  for (let k = 0; k < 4000; k++) {
    const content = x.reduce(
      (s, v, i) =>
        s +
        (v / 100) *
          (crudeAmount(foods[i]!, rule.nutrient)! + normal(random) * crudeSd(foods[i]!, rule.nutrient)!),
      0,
    );
    if (content >= rule.min && content <= rule.max) inside++;
  }
  return inside / 4000;
}

/** Least squared distance from even shares under the cones, by tangent planes and quadprog (arrays count from 1). */
function cutDual(foods: readonly ReferenceFood[], rules: ReturnType<typeof draw>['rules']): number {
  const n = foods.length;
  const planes: { a: number[]; b: number }[] = foods.map((_, i) => ({
    a: foods.map((__, j) => (i === j ? 1 : 0)),
    b: 0,
  }));
  const sides = rules.flatMap((r) => [
    { tag: r.nutrient, sign: 1, bound: r.min },
    { tag: r.nutrient, sign: -1, bound: r.max },
  ]);
  for (const s of sides)
    planes.push({ a: foods.map((f) => (s.sign * crudeAmount(f, s.tag)!) / 100), b: s.sign * s.bound });
  const from1 = <T>(list: readonly T[]) => [0 as unknown as T, ...list];
  for (let round = 0; ; round++) {
    const all = [{ a: foods.map(() => 1), b: 100 }, ...planes];
    const D = from1(foods.map((_, i) => from1(foods.map((__, j) => (i === j ? 2 : 0)))));
    const A = from1(foods.map((_, i) => from1(all.map((p) => p.a[i]!))));
    const { solution } = solveQP(D, from1(foods.map(() => 200 / n)), A, from1(all.map((p) => p.b)), 1);
    const x = solution.slice(1);
    let cut = false;
    for (const s of sides) {
      const q = foods.map((f) => (Z90 * crudeSd(f, s.tag)!) / 100);
      const length = Math.hypot(...q.map((v, i) => v * x[i]!));
      const mean = x.reduce((sum, v, i) => sum + (v / 100) * crudeAmount(foods[i]!, s.tag)!, 0);
      if (s.sign * mean - length >= s.sign * s.bound - 1e-8) continue;
      cut = true;
      planes.push({
        a: foods.map((f, i) => (s.sign * crudeAmount(f, s.tag)!) / 100 - (q[i]! * q[i]! * x[i]!) / length),
        b: s.sign * s.bound,
      });
    }
    if (!cut || round > 100) return x.reduce((s, v) => s + (v - 100 / n) ** 2, 0);
  }
}

test('where a confidence is too much to ask, loosening one bound is offered, on either basis, and suffices', async () => {
  const highs = await loadHighs();
  const foods = withSd.slice(0, 10).map((f) => ({ id: f.ref, ref: f.ref }));
  for (const basis of ['as fed', 'DM']) {
    const rules = [{ nutrient: 'PROCNT', min: 9, max: 9.01, basis }];
    const posed = (changed: object[]) => {
      const json = { foods, rules: changed, confidence: 0.9 };
      return new Formulation(parseProblem(json, reference).problem, { reference, highs });
    };
    const result = posed(rules).solve();
    if (result.status !== 'infeasible') throw new Error('expected a collision');
    const loosenings = result.remedies.filter((r) => r.kind === 'loosen');
    expect(loosenings.length, basis).toBeGreaterThan(0);
    for (const { pointer, to } of loosenings) {
      const side = pointer.split('/').at(-1)!;
      expect(posed([{ ...rules[0]!, [side]: to }]).feasible(), `${basis} ${pointer}`).toBe(true);
    }
  }
});

/** Foods that print no sd themselves: theirs is the published variation of the nutrient in the group. */
const plain = reference
  .plainFoods()
  .map(onCrudeProtein)
  .filter((f) => TAGS.every((t) => f.composition[t] !== undefined) && (f.composition.WATER ?? 100) <= 20);

function drawPlain(seed: number) {
  const random = randomFrom(seed);
  const foods = [
    ...new Set(
      Array.from(
        { length: 12 + Math.floor(12 * random()) },
        () => plain[Math.floor(random() * plain.length)]!,
      ),
    ),
  ];
  const rules = TAGS.map((nutrient) => {
    const mean = foods.reduce((s, f) => s + crudeAmount(f, nutrient)!, 0) / foods.length;
    return { nutrient, min: mean * (0.5 + 0.35 * random()), max: mean * (1.1 + 0.4 * random()) };
  });
  return { foods, rules };
}

test(`over ${TRIED} mixes at 90 %, simulated compositions are in range 90 % of the time: each rule, and all at once where that is asked`, async () => {
  const highs = await loadHighs();
  const trials = 2000;
  const slack = 3 * Math.sqrt((0.9 * 0.1) / trials);
  let met = 0;
  const together: number[] = [];
  for (let seed = 1; met < TRIED; seed++) {
    const { foods, rules } = drawPlain(seed);
    const confidence_for = seed % 2 === 0 ? 'all' : 'each';
    const json = {
      foods: foods.map((f) => ({ id: f.ref, ref: f.ref })),
      rules,
      confidence: 0.9,
      confidence_for,
      variation: 'published',
    };
    const formulation = new Formulation(parseProblem(json, reference).problem, { reference, highs });
    const result = formulation.solve();
    formulation.dispose();
    if (result.status !== 'optimal') continue;
    met++;
    const parts = foods.map((f) => ({
      share: result.shares[f.ref]! / 100,
      mean: TAGS.map((t) => crudeAmount(f, t)!),
      sd: TAGS.map((t) => crudeSd(f, t) ?? variationOf(t, f.group)!.cv * crudeAmount(f, t)!),
    }));
    const random = randomFrom(seed * 104_729);
    const kept = TAGS.map(() => 0);
    let all = 0;
    for (let k = 0; k < trials; k++) {
      const inside = TAGS.map((_, t) => {
        const content = parts.reduce(
          (s, p) => s + (p.share === 0 ? 0 : p.share * (p.mean[t]! + normal(random) * p.sd[t]!)),
          0,
        );
        return content >= rules[t]!.min && content <= rules[t]!.max;
      });
      inside.forEach((yes, t) => {
        if (yes) kept[t]!++;
      });
      if (inside.every(Boolean)) all++;
    }
    TAGS.forEach((tag, t) => {
      expect(kept[t]! / trials, `${tag}, seed ${seed}`).toBeGreaterThan(0.9 - slack);
      expect(Math.abs(kept[t]! / trials - result.in_range_chance[tag]!), `${tag}, seed ${seed}`).toBeLessThan(
        0.04,
      );
    });
    expect(Math.abs(all / trials - result.all_in_range_chance), `seed ${seed}`).toBeLessThan(0.05);
    if (confidence_for === 'all') {
      together.push(all / trials);
      expect(all / trials, `all, seed ${seed}`).toBeGreaterThan(0.9 - slack);
    }
  }
  expect(together.reduce((s, p) => s + p, 0) / together.length).toBeGreaterThan(0.9);
});
