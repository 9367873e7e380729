import { expect, test } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { drawProblem, fullyKnown, randomFrom } from '../../../test/formulation/problems.ts';
import { loadReference } from '../../household/reference-file.ts';
import { Formulation } from '../formulation.ts';
import { parseProblem } from '../problem/parse.ts';
import { loadHighs } from './highs.ts';

const reference = loadReference();
const pool = fullyKnown(reference);

/** A drawn problem with a second food beside the mix, both shares fixed. */
function drawn(seed: number, shares: readonly [number, number]) {
  const base = drawProblem(pool, seed, 'nearest');
  const random = randomFrom(seed + 1);
  const second = pool[Math.floor(random() * pool.length)]!.ref;
  const first = base.beside[0]?.ref ?? pool[0]!.ref;
  return {
    ...base,
    foods: base.foods.slice(0, 12),
    rules: base.rules.slice(0, 6),
    beside: [
      { id: 'pellet', ref: first, share_of_ration: shares[0] },
      { id: 'treat', ref: second, share_of_ration: shares[1] },
    ],
  };
}

test('the chosen shares allow a mix, as near to the wanted as trying every other percent finds; nothing beyond the span does', async () => {
  const highs = await loadHighs();
  const posed = (json: object) =>
    new Formulation(parseProblem(JSON.parse(JSON.stringify(json)), reference).problem, { reference, highs });
  const feasibleAt = (seed: number, pellet: number) => {
    const f = posed(drawn(seed, [pellet, 3]));
    const answer = f.feasible();
    f.dispose();
    return answer;
  };
  const met = { kept: 0, moved: 0, none: 0 };
  for (let seed = 1; seed <= draws(40, 12); seed++) {
    const json = drawn(seed, [50, 3]);
    const flexible = {
      ...json,
      beside: [{ ...json.beside[0]!, share_min: 20, share_max: 80 }, json.beside[1]!],
    };
    const f = posed(flexible);
    const result = f.solve();
    f.dispose();
    const percents = Array.from({ length: 31 }, (_, k) => 20 + 2 * k);
    const possible = percents.filter((p) => feasibleAt(seed, p));
    if (result.status !== 'optimal') {
      expect(possible, `seed ${seed}`).toEqual([]);
      met.none++;
      continue;
    }
    const { share, span } = result.beside!.pellet!;
    const [low, high] = span!;
    met[share === 50 ? 'kept' : 'moved']++;
    const nearest = Math.min(...possible.map((p) => Math.abs(p - 50)), Number.POSITIVE_INFINITY);
    expect(Math.abs(share - 50), `seed ${seed}`).toBeLessThanOrEqual(nearest + 1e-6);
    for (const p of percents) {
      if (p < low - 1e-6 || p > high + 1e-6) expect(possible, `seed ${seed}`).not.toContain(p);
      if (p > low + 1e-6 && p < high - 1e-6) expect(possible, `seed ${seed}`).toContain(p);
    }
  }
  expect(met.kept).toBeGreaterThan(0);
  expect(met.moved).toBeGreaterThan(0);
  expect(met.none).toBeGreaterThan(0);
});

test('with several shares left open each is as near to its wanted one as those before it leave', async () => {
  const highs = await loadHighs();
  const { problem } = parseProblem(
    {
      foods: [{ id: 'dry', composition: { PROCNT: 10, WATER: 10 } }],
      rules: [{ nutrient: 'PROCNT', min: 15, max: 15, on: 'ration' }],
      beside: [
        { id: 'rich', composition: { PROCNT: 30 }, share_of_ration: 50, share_min: 0, share_max: 60 },
        { id: 'plain', composition: { PROCNT: 10 }, share_of_ration: 30, share_min: 0, share_max: 40 },
      ],
    },
    reference,
  );
  const result = new Formulation(problem, { reference, highs }).solve();
  if (result.status !== 'optimal') throw new Error(result.verdict);
  // 10 + 20 r = 15 leaves a quarter of the rich food alone.
  expect(result.beside!.rich!.share).toBeCloseTo(25, 6);
  expect(result.beside!.plain!.share).toBeCloseTo(30, 6);
  expect(result.nutrients.PROCNT!.ration).toBeCloseTo(15, 6);
});

test('fresh food by grams a day counts at the water of dry food', async () => {
  const highs = await loadHighs();
  const { problem } = parseProblem(
    {
      foods: [{ id: 'dry', composition: { PROCNT: 16, WATER: 10 } }],
      rules: [{ nutrient: 'PROCNT', min: 0, on: 'ration' }],
      beside: [
        {
          id: 'cucumber',
          composition: { PROCNT: 0.6, WATER: 96 },
          grams_a_day: 2.25,
          counts_as: 'air dry',
        },
      ],
      daily_grams: 10,
    },
    reference,
  );
  const result = new Formulation(problem, { reference, highs }).solve();
  if (result.status !== 'optimal') throw new Error(result.verdict);
  // 2.25 g with 4 % dry matter is 0.1 g of food with 90 %: 1 % of 10 g, with 0.6 x 90 / 4 = 13.5 % protein.
  expect(result.nutrients.PROCNT!.ration).toBeCloseTo(0.99 * 16 + 0.01 * 13.5, 9);
});
