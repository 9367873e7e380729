import { beforeAll, describe, expect, it } from 'vitest';
import { batch, kept, problem, reference } from '../../../test/kitchen/spring-batch.ts';
import { utcDay } from '../../../test/kitchen/zones.ts';
import { type Highs, loadHighs } from '../../formulation/solve/highs.ts';
import { allocate } from '../cupboard/cupboard.ts';
import { paperTolerances, weighSheet } from './weigh-sheet.ts';

let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

describe('weighSheet', () => {
  it('lists foods in the order of pouring, with targets, tolerances, lots and what is short', () => {
    const ready = () => ({ ok: true }) as const;
    const sheet = weighSheet(
      { ...batch, pours: [] },
      {
        reference,
        dayAt: utcDay,
        targets: { oats: 121 },
        tolerance: (food) => (food === 'oats' ? [118, 125] : undefined),
        lots: (food, grams) => allocate(kept, food, grams, ready),
      },
    );
    expect(sheet.lines.map((l) => [l.food, l.target, l.tolerance])).toEqual([
      ['carrot', 40, undefined],
      ['oats', 121, [118, 125]],
      ['peas', 40, undefined],
    ]);
    expect(sheet.lines[1]!.lots!.takes.map((t) => [t.lot.id, t.grams])).toEqual([['o1', 121]]);
    expect(sheet.notes).toEqual(['Peas: 40 g short.']);
  });

  it('asks the lots only for what is not poured yet', () => {
    const asked: Record<string, number> = {};
    const sheet = weighSheet(batch, {
      reference,
      dayAt: utcDay,
      lots: (food, grams) => {
        asked[food] = grams;
        return undefined;
      },
    });
    expect(asked).toEqual({ carrot: 0, oats: 0, peas: 2 });
    // As poured; what gets more comes last. In the bowl there are 38 g of peas before.
    expect(sheet.lines.map((l) => [l.food, l.poured, l.target, l.reading])).toEqual([
      ['oats', 122, 122, 160],
      ['carrot', 40, 40, 200],
      ['peas', 38, 40, 202],
    ]);
  });
});

describe('paperTolerances', () => {
  const grams = { oats: 120, peas: 40, carrot: 40 };

  it('goes as far as the rules hold with all else as printed, and not a step further', () => {
    for (const step of [1, 0.5]) {
      const at = { problem: { ...problem, scale_step_grams: step } };
      const spans = paperTolerances(at, grams, { reference, highs });
      expect([...spans.keys()]).toEqual(['oats', 'peas', 'carrot']);
      const protein = (bowl: Record<string, number>) => {
        const total = bowl.oats! + bowl.peas! + bowl.carrot!;
        return (14 * bowl.oats! + 24 * bowl.peas! + 8 * bowl.carrot!) / total;
      };
      const fits = (food: string, g: number) => {
        const p = protein({ ...grams, [food]: g });
        return p >= 12 - 1e-9 && p <= 16 + 1e-9;
      };
      for (const [food, [low, high]] of spans) {
        expect(fits(food, low) && fits(food, high)).toBe(true);
        if (low > step) expect(fits(food, low - step)).toBe(false);
        if (high + step <= 200) expect(fits(food, high + step)).toBe(false);
        for (const g of [low, high]) expect(Math.abs(g / step - Math.round(g / step))).toBeLessThan(1e-9);
      }
    }
  });

  it('promises nothing for a bowl out of range', () => {
    expect(paperTolerances({ problem }, { peas: 100 }, { reference, highs }).size).toBe(0);
  });
});
