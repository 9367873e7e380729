/** Days and amounts of a trial, and what becomes of it as looks are noted. */
import { describe, expect, it } from 'vitest';
import type { Trial } from '../model.ts';
import {
  isRunning,
  nextOffer,
  noted,
  offerDue,
  prolonged,
  runningTrial,
  trialDays,
  trialGrams,
  unnoted,
} from './plan.ts';

const planned: Trial = {
  id: 't',
  animalId: 'a',
  food: 'millet',
  name: 'Millet',
  days: trialDays('2026-03-01', 4),
  offerings: [],
};

describe('the plan', () => {
  it('has a day between two offers', () => {
    expect(planned.days).toEqual(['2026-03-01', '2026-03-03', '2026-03-05', '2026-03-07']);
    expect(trialDays('2026-02-27', 2)).toEqual(['2026-02-27', '2026-03-01']);
  });
  it.each([
    [150, 0.8],
    [30, 0.2],
    [10, 0.1],
    [400, 2],
  ])('offers an animal of %d g some %d g', (body, grams) => expect(trialGrams(body)).toBe(grams));
});

describe('the next offer', () => {
  it('is the next planned day, with a day between where the last came late', () => {
    expect(nextOffer(planned)).toBe('2026-03-01');
    const once = noted(planned, { on: '2026-03-01', seen: 'eaten' });
    expect(nextOffer(once)).toBe('2026-03-03');
    const late = noted(once, { on: '2026-03-06', seen: 'left' });
    expect(nextOffer(late)).toBe('2026-03-08');
    expect(offerDue(late, '2026-03-07')).toBeUndefined();
    expect(offerDue(late, '2026-03-08')).toEqual({ late: 0 });
    expect(offerDue(planned, '2026-03-04')).toEqual({ late: 3 });
  });
  it('is none once all are noted, or the trial ended', () => {
    const all = planned.days.reduce((t, on) => noted(t, { on, seen: 'eaten' }), planned);
    expect(nextOffer(all)).toBeUndefined();
    expect(nextOffer({ ...planned, endedOn: '2026-03-02' })).toBeUndefined();
    const more = prolonged(all, 2, '2026-03-07');
    expect(nextOffer(more)).toBe('2026-03-09');
    expect(more.days).toHaveLength(6);
    expect(nextOffer(prolonged(all, 3, '2026-04-01'))).toBe('2026-04-01');
  });
});

describe('what is noted', () => {
  it('stands once a day, in order', () => {
    const two = noted(noted(planned, { on: '2026-03-03', seen: 'left' }), {
      on: '2026-03-01',
      seen: 'first',
    });
    expect(two.offerings.map((o) => o.seen)).toEqual(['first', 'left']);
    expect(noted(two, { on: '2026-03-03', seen: 'eaten' }).offerings.map((o) => o.seen)).toEqual([
      'first',
      'eaten',
    ]);
  });
  it('of an upset ends the trial; taken back, it goes on unless another runs', () => {
    const upset = noted(planned, { on: '2026-03-01', seen: 'upset' });
    expect(isRunning(upset)).toBe(false);
    expect(upset.endedOn).toBe('2026-03-01');
    expect(runningTrial([upset], 'a')).toBeUndefined();
    expect(unnoted(upset, '2026-03-01', false)).toEqual(planned);
    expect(isRunning(unnoted(upset, '2026-03-01', true))).toBe(false);
  });
});
