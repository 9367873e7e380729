/** A moved slider: the others follow to the nearest mix that keeps the rules, at every point of every span. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Formulation } from '../../src/formulation/formulation.ts';
import type { Balanced, Following } from '../../src/formulation/problem/result.ts';
import { type Highs, loadHighs } from '../../src/formulation/solve/highs.ts';
import { demoHousehold } from '../../src/household/demo.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { crudeAmount } from './crude-amount.ts';

const reference = loadReference();
const { problem } = demoHousehold().mixes[0]!;
let highs: Highs;
let live: Formulation;
let first: Balanced;

beforeAll(async () => {
  highs = await loadHighs();
  live = new Formulation(problem, { reference, highs });
  const solved = live.solve();
  if (solved.status !== 'optimal') throw new Error(solved.verdict);
  first = solved;
});
afterAll(() => live.dispose());

function moved(held: Record<string, number>, moving?: string): Following {
  const result = live.move(first.shares, held, moving);
  if (result.status !== 'optimal') throw new Error(result.verdict);
  return result;
}

describe('on the demo mix', () => {
  test('every share goes to both ends and the middle of its span with every rule kept', () => {
    for (const { id } of problem.foods) {
      const [low, high] = first.spans[id]!;
      for (const share of [low, (low + high) / 2, high]) {
        const result = moved({ [id]: share }, id);
        expect(result.shares[id]).toBeCloseTo(share, 6);
        expect(live.evaluate(result.shares).breaches, `${id} at ${share}`).toEqual([]);
        expect(result.spans[id]![0]).toBeCloseTo(low, 5);
        expect(result.spans[id]![1]).toBeCloseTo(high, 5);
      }
    }
  });

  test('a share moved past its span stops at the end', () => {
    const { id } = problem.foods[4]!;
    expect(moved({ [id]: 90 }, id).shares[id]).toBeCloseTo(first.spans[id]![1], 6);
  });

  test('a held share stays, and narrows the spans of the others', () => {
    const [held, other] = [problem.foods[0]!.id, problem.foods[1]!.id];
    const share = first.spans[held]![1];
    const result = moved({ [held]: share, [other]: 3 }, other);
    expect(result.shares[held]).toBeCloseTo(share, 6);
    expect(result.shares[other]).toBeCloseTo(3, 6);
    for (const { id } of problem.foods) {
      expect(result.spans[id]![0]).toBeGreaterThanOrEqual(first.spans[id]![0] - 1e-5);
      expect(result.spans[id]![1]).toBeLessThanOrEqual(first.spans[id]![1] + 1e-5);
    }
  });

  test('holds that leave no mix are named', () => {
    const held = Object.fromEntries(problem.foods.map((f) => [f.id, 5]));
    const result = live.move(first.shares, held);
    expect(result.status).toBe('infeasible');
    expect(result.verdict).toMatch(/held/);
  });
});

test('a mix that has a single point left is found', () => {
  const only = { id: 'oats', ref: 'sr28:20038' };
  const other = { id: 'carrot', ref: 'sr28:11683' };
  const most = crudeAmount(reference.get(only.ref)!, 'PROCNT')!;
  const tight = new Formulation(
    { ...problem, foods: [only, other], beside: [], rules: [{ nutrient: 'PROCNT', min: most, max: most }] },
    { reference, highs },
  );
  const result = tight.solve();
  tight.dispose();
  expect(result.status).toBe('optimal');
  if (result.status === 'optimal') expect(result.shares.oats).toBeCloseTo(100, 5);
});
