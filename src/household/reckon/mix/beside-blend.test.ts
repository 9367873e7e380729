/** The blend of all that is fed beside the mix: what is known of it, and what the formulation counts. */
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import {
  cucumber,
  known,
  mix,
  pellet,
  reference,
  waterOf,
} from '../../../../test/mix/pellet-and-cucumber.ts';
import { Formulation } from '../../../formulation/formulation.ts';
import { parseProblem } from '../../../formulation/problem/parse.ts';
import type { Beside } from '../../../formulation/problem/problem.ts';
import { loadHighs } from '../../../formulation/solve/highs.ts';
import { feedingOf } from '../../../kitchen/feeding/feeding.ts';
import { NUTRIENTS } from '../../../nutrition/nutrients.ts';
import { addBeside, besideTotal, byGrams, byShare, countedPart, withChoice, withDaily } from './beside.ts';
import { besideBlend, blend } from './beside-blend.ts';

describe('the blend of all that is fed beside', () => {
  const amount = fc.option(fc.double({ min: 0, max: 40, noNaN: true }), { nil: undefined });
  const part = fc.record({
    weight: fc.double({ min: 0.1, max: 50, noNaN: true }),
    composition: fc.record({ PROCNT: amount, CA: amount }),
  });

  it('knows an amount where every part knows it, and then lies between them; else only its least', () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        const { known, least } = blend(parts)!;
        for (const tag of ['PROCNT', 'CA'] as const) {
          const values = parts.flatMap((p) => p.composition[tag] ?? []);
          if (values.length === parts.length) {
            expect(known[tag]).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
            expect(known[tag]).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
            expect(least).not.toHaveProperty(tag);
          } else {
            expect(known).not.toHaveProperty(tag);
            expect(least[tag] ?? 0).toBeLessThanOrEqual(Math.max(0, ...values) + 1e-9);
          }
        }
      }),
    );
  });

  it('takes crude fibre for the least of dietary fibre, and a label’s least for what it is', () => {
    const { known, least } = blend([
      { weight: 1, composition: { FIBC: 9 }, low: { PROCNT: 16 } },
      { weight: 1, composition: { FIBTG: 3, PROCNT: 10 } },
    ])!;
    expect(known).toEqual({});
    expect(least).toEqual({ FIBTG: 6, FIBC: 4.5, PROCNT: 13 });
  });

  it('of nothing is nothing; of one food it is that food, whatever its share', () => {
    expect(blend([{ weight: 0, composition: { FAT: 1 } }])).toBeUndefined();
    const none = byShare(mix, pellet.id, 0);
    expect(besideBlend(none.problem, undefined, known)!.known).toEqual(pellet.composition);
  });

  it('a food drier than air-dry food counts as it is, on the screen as in the formulation and in the bowl', () => {
    const crisp: Beside = {
      id: 'crisp',
      name: 'Crisp bread',
      composition: { WATER: 4, PROCNT: 12 },
      share_of_ration: 20,
      grams_a_day: 2,
      counts_as: 'air dry',
    };
    expect(countedPart(crisp, 4)).toBe(1);
    const { problem } = parseProblem({ ...mix.problem, daily_grams: 10, beside: [crisp] }, reference);
    expect(problem.beside[0]!.share_of_ration).toBe(20);
    expect(besideBlend(problem, undefined, known)!.known).toMatchObject({ WATER: 4, PROCNT: 12 });
    const [ada] = feedingOf({
      problem,
      animals: [{ id: 'ada', name: 'Ada', dailyGrams: 10 }],
      grams: 100,
      from: '2026-03-14',
    }).animals;
    expect(ada!.beside[0]!.grams).toBeCloseTo(2, 12);
  });
});

describe('against the formulation', () => {
  let formulation: Formulation;
  afterAll(() => formulation?.dispose());

  it('the blend is what the ration holds beyond the mix, fresh food and a chosen share included', async () => {
    const fed = addBeside(withDaily(mix, 12, waterOf), { ...cucumber, counts_as: 'air dry' });
    const given = withChoice(byGrams(fed, 'cucumber', 6, waterOf), pellet.id, 30, 60);
    const { problem } = parseProblem(JSON.parse(JSON.stringify(given.problem)), reference);
    formulation = new Formulation(problem, { reference, highs: await loadHighs() });
    const at = formulation.evaluate(mix.shares);
    const part = besideTotal(given.problem, at) / 100;
    const { known: whole } = besideBlend(given.problem, at, known)!;
    const compared = NUTRIENTS.filter(({ tag }) => whole[tag] !== undefined && at.nutrients[tag]);
    expect(compared.map((n) => n.tag)).toContain('CA');
    for (const { tag } of compared) {
      const { mix: own, ration } = at.nutrients[tag]!;
      expect(whole[tag]).toBeCloseTo((ration - (1 - part) * own) / part, 6);
    }
  });
});
