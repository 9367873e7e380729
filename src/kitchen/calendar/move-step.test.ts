import { describe, expect, test } from 'vitest';
import { kitchen } from '../../../test/kitchen/kitchen-input.ts';
import { moved } from './move-step.ts';
import { planKitchen } from './plan-kitchen.ts';

describe('moving a step', () => {
  test('moves what waits for it; the rest stays', () => {
    const plan = planKitchen(kitchen, { from: '2026-02-01' });
    const answer = moved(plan, 'thaw-2:dry-goods', '2026-02-15');
    expect(answer).toMatchObject({
      ok: true,
      changed: [
        { id: 'thaw-2:dry-goods', from: '2026-02-13', to: '2026-02-15' },
        { id: 'weigh', from: '2026-02-17', to: '2026-02-19' },
        { id: 'change-over', from: '2026-02-18', to: '2026-02-20' },
      ],
    });
  });

  test('moves what comes before only where it must', () => {
    const plan = planKitchen(kitchen, { from: '2026-02-01', until: '2026-03-14' });
    const answer = moved(plan, 'weigh', '2026-02-20');
    expect(answer.ok && answer.changed.map((c) => `${c.id} ${c.to.slice(5)}`)).toEqual([
      'buy:dry-goods 02-04',
      'buy:fresh-goods 02-19',
      'freeze-1:dry-goods 02-04',
      'dry:fresh-goods 02-19',
      'thaw-1:dry-goods 02-08',
      'freeze-2:dry-goods 02-12',
      'thaw-2:dry-goods 02-16',
      'weigh 02-20',
    ]);
  });

  test('to a day that cannot be, says why and from which day it can', () => {
    const plan = planKitchen(kitchen, { from: '2026-02-01' });
    expect(moved(plan, 'weigh', '2026-02-10')).toEqual({
      ok: false,
      firstDay: '2026-02-17',
      sentence:
        'Weigh out cannot begin on 10 February: thaw (1 of 2): oats, millet would have to begin on 29 January, before 1 February. The first day possible is 17 February, or give the steps between fewer days.',
    });
    expect(moved(plan, 'buy:dry-goods', '2026-01-31')).toMatchObject({
      ok: false,
      sentence:
        'Buy: oats, millet cannot begin on 31 January: that is before 1 February, the first day of the plan. The first day possible is 1 February.',
    });
    expect(() => moved(plan, 'wash', '2026-02-10')).toThrow('"wash" is none of the plan');
    expect(() => moved(plan, 'weigh', '2026-02-30')).toThrow('"2026-02-30" is no day');
  });

  test('beyond the deadline, the plan no longer fits, though it could', () => {
    const plan = planKitchen(kitchen, { from: '2026-02-01', until: '2026-03-14' });
    const answer = moved(plan, 'weigh', '2026-03-01');
    expect(answer.ok && answer.plan).toMatchObject({ fits: false, spare: 10, end: '2026-03-16' });
  });
});
