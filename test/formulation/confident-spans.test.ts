/** Spans and moves under a confidence: they end where they end, and no one has to wait for planes by the hundred. */
import { describe, expect, test, vi } from 'vitest';
import { Formulation } from '../../src/formulation/formulation.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { randomFrom } from './problems.ts';

const reference = loadReference();
const highs = await loadHighs();
const TAGS = ['PROCNT', 'FAT', 'FIBTG', 'CA', 'P'] as const;
const dry = reference
  .plainFoods()
  .filter((f) => TAGS.every((t) => f.composition[t] !== undefined) && (f.composition.WATER ?? 100) <= 20);

/** A problem of so many foods at 90 %, its windows around even shares. */
function posed(seed: number, count: number): Formulation {
  const random = randomFrom(seed);
  const foods = [...dry].sort((a, b) => (a.ref < b.ref ? -1 : 1)).slice(seed, seed + count);
  const rules = TAGS.map((nutrient) => {
    const mean = foods.reduce((s, f) => s + f.composition[nutrient]!, 0) / foods.length;
    return { nutrient, min: mean * (0.5 + 0.3 * random()), max: mean * (1.1 + 0.4 * random()) };
  });
  const json = {
    foods: foods.map((f) => ({ id: f.ref, ref: f.ref })),
    rules,
    confidence: 0.9,
    variation: 'published',
  };
  return new Formulation(parseProblem(json, reference).problem, { reference, highs });
}

test('the spans of 40 foods are found without cutting a single cone by planes', () => {
  const create = vi.spyOn(highs, 'createModel');
  const formulation = posed(3, 40);
  const best = formulation.best();
  const result = formulation.move(best!.shares, {});
  expect(result.status).toBe('optimal');
  expect(create).not.toHaveBeenCalled();
  create.mockRestore();
});

describe('a share that is moved', () => {
  const formulation = posed(5, 24);
  const best = formulation.best()!;
  const ids = formulation.ration.foods.map((f) => f.id);

  test('goes to both ends of its span and no further, with every rule kept, from mixes far off', () => {
    const random = randomFrom(9);
    for (const id of ids.slice(0, 8)) {
      for (const to of [0, 100]) {
        const raw = ids.map(() => (random() < 0.4 ? 0 : random()));
        const sum = raw.reduce((a, b) => a + b, 0.01);
        const from = Object.fromEntries(ids.map((other, i) => [other, (100 * raw[i]!) / sum]));
        const moved = formulation.move(from, { [id]: to }, id);
        if (moved.status !== 'optimal') throw new Error(moved.verdict);
        const [low, high] = moved.spans[id]!;
        expect(moved.shares[id]).toBeCloseTo(to === 0 ? low : high, 5);
        expect(formulation.evaluate(moved.shares).breaches, id).toEqual([]);
      }
    }
  });

  test('moves beside others that are held where the best mix has them', () => {
    const held = Object.fromEntries(ids.slice(0, 3).map((id) => [id, best.shares[id]!]));
    const moved = formulation.move(best.shares, { ...held, [ids[4]!]: 100 }, ids[4]);
    if (moved.status !== 'optimal') throw new Error(moved.verdict);
    for (const [id, share] of Object.entries(held)) expect(moved.shares[id]).toBeCloseTo(share, 9);
    expect(formulation.evaluate(moved.shares).breaches).toEqual([]);
  });
});
