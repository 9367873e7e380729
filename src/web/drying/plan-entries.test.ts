import { describe, expect, it } from 'vitest';
import { type PlanEntries, readPlan } from './plan-entries.ts';

const dryer = { device: 'oven', trays: 2, trayArea: 12, celsius: 90 } as const;
const entries: PlanEntries = { taken: '1000', ready: '', kind: 'vegetable', load: 0, perDm2: '' };
const read = (more: Partial<PlanEntries> = {}) =>
  readPlan({ ...entries, ...more }, { has: 1000, dryer, trimLoss: 10 });

describe('what is typed before a run', () => {
  it('is filled in as far as it is known', () => {
    const { guess, about, shown, faults, way } = read();
    expect([guess, about]).toEqual([900, 900]);
    expect(shown.each).toBe('');
    expect(shown.celsius).toBe('90');
    expect(shown.hours).toBe(String(way.hours[0]));
    expect(faults.ready).toBe('Trimmed and ready is empty: enter a number.');
    expect(faults.taken).toBeUndefined();
  });

  it('never takes more than there is', () => {
    expect(read({ taken: '1001' }).faults.taken).toMatch(/1.001 kg is more than the 1 kg that are left/);
    expect(read({ ready: '1001' }).faults.ready).toMatch(/more than the 1 kg taken from the pack/);
    expect(read({ taken: '', ready: '900' }).faults).toMatchObject({
      taken: 'Taken from the pack is empty: enter a number.',
      ready: undefined,
    });
  });

  it('goes onto the trays in loads', () => {
    const own = read({ ready: '900', load: 'own', perDm2: '20' });
    // 24 dm2 hold 480 g: two loads of 450 g.
    expect(own.loads).toBe(2);
    expect(own.values.each).toBe(450);
    expect(read({ ready: '900', load: 'own', perDm2: '20', each: '950' }).faults.each).toMatch(
      /950 g is more than the 900 g that are ready/,
    );
    expect(read({ ready: '900', load: 'own' }).faults.per).toMatch(/^Weight on 1 dm² is empty/);
    const one = read({ ready: '900', load: 'own', perDm2: '100', each: 'x' });
    expect([one.loads, one.values.each, one.faults.each]).toEqual([1, 900, undefined]);
  });
});
