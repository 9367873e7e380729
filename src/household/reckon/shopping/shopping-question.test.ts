import { describe, expect, it } from 'vitest';
import { lotOf } from '../../../../test/kitchen/cupboards.ts';
import { offer } from '../../../../test/kitchen/offers.ts';
import type { DryingRun } from '../../../kitchen/model.ts';
import { demoHousehold } from '../../demo.ts';
import type { Household, Mix } from '../../model.ts';
import { usedShares } from '../batch/used-shares.ts';
import { onTrays } from '../drying/on-trays.ts';
import { shoppingQuestion } from './shopping-question.ts';

const DAY = '2026-03-10';

const house = demoHousehold();

const mix = house.mixes[0]!;

describe('the question', () => {
  const full: Household = {
    ...house,
    lots: [
      lotOf({ id: 'a', food: 'rolled-oats', grams: 200 }),
      lotOf({ id: 'x', food: 'in-no-mix' }),
      lotOf({ id: 'f', food: 'carrot-dried', form: 'fresh' }),
    ],
    offers: [offer({ id: 'o', food: 'rolled-oats' }), offer({ id: 'x', food: 'in-no-mix' })],
    kitchen: [
      {
        id: 'kitchen',
        driedAtHome: [
          { food: 'carrot-dried', fresh: 'sr28:11124', moisture: 10 },
          { food: 'in-no-mix', fresh: 'sr28:11124', moisture: 10 },
        ],
        sellers: [{ seller: 'Alder Mill', delivery: 3 }],
      },
    ],
  };
  const ask = (m: Mix = mix) =>
    shoppingQuestion(full, m, { size: { grams: 300 }, aim: 'cost', on: DAY, nameOf: (f) => f.name ?? f.id });

  it('names what has a share, and what is kept of it', () => {
    const asked = ask();
    expect(asked.foods).toHaveLength(20);
    expect(asked.cupboard.map((c) => c.lot.id)).toEqual(['a', 'f']);
    expect(asked.offers.map((o) => o.id)).toEqual(['o']);
    expect(asked.driedAtHome.map((d) => d.food)).toEqual(['carrot-dried']);
    expect(asked.sellers).toEqual([{ seller: 'Alder Mill', delivery: 3 }]);
  });

  it('leaves out what is refused and what has no share; the shares are then not whole', () => {
    const foods = mix.problem.foods.map((f) => (f.id === 'millet' ? { ...f, refused: true } : f));
    const less = { ...mix, problem: { ...mix.problem, foods } };
    expect(ask(less).foods.map((f) => f.food)).not.toContain('millet');
    expect(usedShares(less)).toMatchObject({ total: 95, whole: false });
    expect(usedShares(mix)).toMatchObject({ total: 100, whole: true });
  });

  it('counts what lies on the trays until its lot is there or it is over', () => {
    const run: DryingRun = {
      id: 'r',
      lot: 'f',
      device: 'oven',
      celsius: 60,
      startedAt: '2026-03-09T08:00:00Z',
      trays: 1,
      gramsBefore: 80,
      checks: [],
    };
    const drying = (more: Partial<DryingRun>, ...lots: Household['lots']) =>
      onTrays({ dryingRuns: [{ ...run, ...more }], lots: [...full.lots, ...lots] }).length;
    expect(drying({})).toBe(1);
    expect(drying({ gramsAfter: 10 })).toBe(1);
    expect(drying({ gramsAfter: 10 }, lotOf({ id: 'd', driedIn: 'r' }))).toBe(0);
    expect(drying({ endedAt: '2026-03-09T14:00:00Z' })).toBe(0);
    expect(drying({ lot: 'gone' })).toBe(0);
  });
});
