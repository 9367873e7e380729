/** When an animal is to be weighed again, and when nobody is asked to. */
import { describe, expect, test } from 'vitest';
import { plusDays } from '../../../kitchen/days.ts';
import { weighDue } from './weigh-due.ts';

const today = '2026-03-10';
const quiet = { today, last: undefined, alert: false, trial: false, change: false };
const adult = { lifeStage: 'adult' } as const;
const ago = (days: number) => plusDays(today, -days);
const what = (conditions: NonNullable<Parameters<typeof weighDue>[0]['conditions']>) => ({
  ...adult,
  conditions,
});

describe('weighing', () => {
  test('is due a week after the last one, and no day before', () => {
    expect(weighDue(adult, { ...quiet, last: ago(6) }).is).toBe('no');
    expect(weighDue(adult, { ...quiet, last: ago(7) })).toEqual({
      is: 'due',
      why: 'weekly',
      every: 7,
      last: ago(7),
    });
  });

  test('is due more often where a change is to be seen early', () => {
    const since = ago(20);
    const every = (animal: Parameters<typeof weighDue>[0], more = {}) =>
      weighDue(animal, { ...quiet, ...more }).every;
    expect(every(adult, { alert: true })).toBe(1);
    expect(every(adult, { trial: true })).toBe(3);
    expect(every(adult, { change: true })).toBe(3);
    expect(every({ lifeStage: 'growing' })).toBe(3);
    expect(every({ ...adult, born: { on: ago(83) } })).toBe(3);
    expect(every({ ...adult, born: { on: ago(84) } })).toBe(7);
    expect(every({ lifeStage: 'old' })).toBe(4);
    expect(every(what([{ what: 'old', since }]))).toBe(4);
    expect(every(what([{ what: 'diabetes', since }]))).toBe(3);
    // It held, and does no more.
    expect(every(what([{ what: 'diabetes', since, until: ago(1) }]))).toBe(7);
    // The most pressing of several reasons.
    expect(weighDue({ lifeStage: 'old' }, { ...quiet, alert: true, trial: true }).why).toBe('alert');
  });

  test('is not asked of a keeper who does not weigh, unless there is a reason, and then it is an offer', () => {
    expect(weighDue(adult, quiet).is).toBe('no');
    expect(weighDue(adult, { ...quiet, last: ago(28) }).is).toBe('due');
    expect(weighDue(adult, { ...quiet, last: ago(29) }).is).toBe('no');
    expect(weighDue({ lifeStage: 'growing' }, quiet).is).toBe('offer');
    expect(weighDue({ lifeStage: 'growing' }, { ...quiet, last: ago(40) }).is).toBe('offer');
  });

  test('leaves a mother with a nest in peace, whatever else there is', () => {
    const nursing = what([{ what: 'nursing', since: ago(3) }]);
    expect(weighDue(nursing, { ...quiet, last: ago(9), alert: true }).is).toBe('no');
    expect(weighDue({ lifeStage: 'breeding' }, { ...quiet, last: ago(9) }).is).toBe('no');
    const pregnant = { lifeStage: 'breeding', conditions: [{ what: 'pregnant', since: ago(3) }] } as const;
    expect(weighDue(pregnant, { ...quiet, last: ago(9) }).is).toBe('due');
  });
});
