/** What the invented household must show: one thing to mend, and that it can be mended. */
import { describe, expect, it } from 'vitest';
import { Formulation } from '../formulation/formulation.ts';
import { parseProblem } from '../formulation/problem/parse.ts';
import { loadHighs } from '../formulation/solve/highs.ts';
import { demoHousehold, demoProblem } from './demo.ts';
import { loadReference } from './reference-file.ts';

const reference = loadReference();
const [mix] = demoHousehold().mixes;

describe('the invented mix', () => {
  it('has 20 dry foods in four groups, each with protein and fat known', () => {
    const { foods } = demoProblem();
    expect(foods).toHaveLength(20);
    expect(new Set(foods.map((f) => f.group))).toEqual(new Set(['seed', 'vegetable', 'legume', 'animal']));
    for (const { ref, name } of foods) {
      const { composition } = reference.get(ref!)!;
      expect(composition.WATER, name).toBeLessThan(15);
      expect(composition.PROCNT, name).toBeDefined();
      expect(composition.FAT, name).toBeDefined();
    }
  });

  it('calls each food what the reference calls it', () => {
    for (const { ref, name } of demoProblem().foods) expect(reference.get(ref!)!.name).toBe(name);
  });

  it('reads as a problem of the machine interface', () => {
    expect(parseProblem(JSON.parse(JSON.stringify(demoProblem())), reference)).toEqual({
      problem: demoProblem(),
      ignored: [],
    });
  });

  it('has too much fat at even shares, and nothing else is wrong', async () => {
    const formulation = new Formulation(mix!.problem, { reference, highs: await loadHighs() });
    const { total, breaches, nutrients } = formulation.evaluate(mix!.shares);
    formulation.dispose();
    expect(total).toBeCloseTo(100, 9);
    expect(breaches.map((b) => [mix!.problem.rules[Number(b.pointer.split('/')[2])], b.side])).toEqual([
      [expect.objectContaining({ nutrient: 'FAT', max: 7 }), 'max'],
    ]);
    expect(nutrients.FAT!.ration).toBeCloseTo(9.44, 1);
  });

  it('is surely in range on crude protein and crude fibre once balanced, with every caution heeded', async () => {
    const formulation = new Formulation(mix!.problem, { reference, highs: await loadHighs() });
    const balanced = formulation.solve();
    formulation.dispose();
    if (balanced.status !== 'optimal') throw new Error(balanced.verdict);
    expect(balanced.in_range).toBe('surely');
    expect(balanced.all_in_range_chance).toBeGreaterThanOrEqual(0.8);
    expect(balanced.grams).not.toBeNull();
    const share = (id: string) => balanced.shares[id] ?? 0;
    const byCaution = new Map<string, number>();
    for (const { caution, food } of balanced.cautions)
      byCaution.set(caution, (byCaution.get(caution) ?? 0) + share(food));
    for (const { caution, max_share = 100, severity } of balanced.cautions) {
      expect(severity).not.toBe('never');
      expect(byCaution.get(caution), caution).toBeLessThanOrEqual(max_share + 1e-6);
    }
  });
});
