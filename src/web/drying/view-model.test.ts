import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoHousehold } from '../../household/demo.ts';
import type { Household, OwnFood } from '../../household/model.ts';
import { loadReference } from '../../household/reference-file.ts';
import { leftOver } from '../../kitchen/cupboard/cupboard.ts';
import { nextCheck } from '../../kitchen/drying/check-times.ts';
import { waysToDry } from '../../kitchen/drying/drying-practice.ts';
import type { DryingRun, Lot } from '../../kitchen/model.ts';
import {
  clockOf,
  driedOn,
  foodLines,
  kindOf,
  lookAt,
  looksOf,
  lotFrom,
  nextLoadOf,
  outcomeOf,
  ownAtMoisture,
  presetCelsius,
  presetWay,
  runLines,
  sayTime,
  sayWater,
  toDry,
  trayArea,
  withMoisture,
} from './view-model.ts';

const reference = loadReference();
const table = new Map(['sr28:11124', 'sr28:11683'].map((ref) => [ref, reference.get(ref)!]));
const carrot = table.get('sr28:11124')!;

const lot: Lot = {
  id: 'fresh',
  food: 'carrot-dried',
  name: 'Carrots',
  grams: 1000,
  form: 'fresh',
  boughtOn: '2026-03-14',
  frozen: false,
  cold: [],
};
const run: DryingRun = {
  id: 'r1',
  lot: 'fresh',
  device: 'oven',
  celsius: 90,
  startedAt: '2026-03-14T08:00:00.000Z',
  trays: 2,
  gramsTaken: 600,
  gramsBefore: 500,
  hours: 6,
  checks: [],
};
const house = (more: Partial<Household> = {}): Household => ({
  ...demoHousehold(),
  lots: [lot],
  kitchen: [{ id: 'kitchen', driedAtHome: [{ food: 'carrot-dried', fresh: 'sr28:11124', moisture: 10 }] }],
  ...more,
});
const at = (time: string) => Date.parse(`2026-03-14T${time}:00.000Z`);

describe('what there is', () => {
  it('lists fresh lots that hold some, and runs with their state, the last first', () => {
    expect(toDry(house()).map((l) => l.lot.id)).toEqual(['fresh']);
    expect(toDry(house({ lots: [{ ...lot, barred: { why: 'spoiled', on: '2026-03-14' } }] }))).toEqual([]);
    expect(toDry(house({ dryingRuns: [{ ...run, gramsTaken: 1000 }] }))).toEqual([]);
    const runs = [
      run,
      { ...run, id: 'r2', startedAt: '2026-03-15T08:00:00.000Z', gramsAfter: 60, load: { n: 1, of: 2 } },
      { ...run, id: 'r3', startedAt: '2026-03-16T08:00:00.000Z', gramsAfter: 60, endedAt: 'x' },
      { ...run, id: 'r4', startedAt: '2026-03-17T08:00:00.000Z', endedAt: 'x' },
    ];
    const lines = runLines(house({ dryingRuns: runs }));
    expect(lines.map((l) => l.state)).toEqual(['lost', 'done', 'weighed', 'drying']);
    expect(lines.map((l) => l.name)).toEqual(['Carrots', 'Carrots', 'Carrots, load 1 of 2', 'Carrots']);
  });
});

describe('the next look', () => {
  it('is told with the time left, and turns due on the second', () => {
    const words = lookAt(run, at('08:48'))!.words;
    expect(words).toBe(`Look and turn at ${clockOf('2026-03-14T10:00:00Z', at('08:48'))}, in 1 h 12 min`);
    expect(lookAt(run, at('10:00') - 1)!.due).toBe(false);
    expect(lookAt(run, at('10:00'))!.due).toBe(true);
    expect(lookAt({ ...run, gramsAfter: 60 }, at('10:00'))).toBeUndefined();
  });

  it.each([
    [1, '1 min'],
    [60_000, '1 min'],
    [60_001, '2 min'],
    [3_600_000, '1 h'],
    [4_320_000, '1 h 12 min'],
  ])('%d ms are %s', (ms, words) => expect(sayTime(ms)).toBe(words));

  it('names the day where it is another', () => {
    expect(clockOf('2026-03-16T10:00:00Z', at('10:00'))).toMatch(/ on 16 March$/);
  });

  it('and all after it go into a calendar, those that were first', () => {
    expect(looksOf(run).map((t) => t.slice(11, 16))).toEqual(['10:00', '12:00', '14:00']);
    const late = { ...run, checks: [{ at: '2026-03-14T10:30:00.000Z' }] };
    expect(looksOf(late).map((t) => t.slice(11, 16))).toEqual(['10:30', '12:30', '14:00']);
    const long = { ...run, checks: [{ at: '2026-03-14T15:30:00.000Z' }] };
    expect(looksOf(long).map((t) => t.slice(11, 16))).toEqual(['15:30', '17:30']);
    expect(looksOf({ ...late, gramsAfter: 60 })).toHaveLength(1);
  });

  it('always holds the next look, whatever was', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.array(fc.integer({ min: 1, max: 3000 })),
        (hours, minutes) => {
          const checks = [...minutes]
            .sort((a, b) => a - b)
            .map((m) => ({ at: new Date(Date.parse(run.startedAt) + m * 60_000).toISOString() }));
          const any = { ...run, hours, checks };
          const times = looksOf(any);
          expect(times.length).toBeGreaterThan(checks.length);
          // The last may come sooner than two hours after: at the end of the time.
          expect(Date.parse(times[checks.length]!)).toBeLessThanOrEqual(Date.parse(nextCheck(any)!));
          expect([...times].sort()).toEqual(times);
        },
      ),
    );
  });
});

describe('what came of it', () => {
  const p = { scaleStep: 1 };
  it('follows from the weights and the fresh food', () => {
    const damp = outcomeOf(house(), run, carrot, { ...p, grams: 90 });
    expect(damp.ok && damp.value.keep.state).toBe('damp');
    const swapped = outcomeOf(house(), run, carrot, { ...p, grams: 600 });
    expect(!swapped.ok && swapped.fault).toMatch(/^Weight after \(600 g\) is not below/);
    const lost = outcomeOf(house(), run, carrot, { ...p, grams: 20 });
    expect(!lost.ok && lost.fault).toMatch(/^Weight after \(20 g\) is less than the dry matter/);
    expect(outcomeOf(house(), run, undefined, p)).toMatchObject({ ok: false });
    const { WATER: _, ...unknown } = carrot.composition;
    const dry = { ...carrot, composition: unknown };
    expect(outcomeOf(house(), run, dry, { ...p, grams: 60 })).toMatchObject({ ok: false, needsSample: true });
    const sampled = outcomeOf(house(), { ...run, sample: { before: 20, dry: 2.4 } }, dry, {
      ...p,
      grams: 65,
    });
    expect(sampled.ok && sampled.value.moisture).toBeCloseTo(100 - (500 / 65) * 12, 9);
  });

  it('is exact but for the scale of the sample where the dried food itself was sampled', () => {
    const sample = { before: 20, dry: 18.8, of: 66 };
    const exact = outcomeOf(house(), { ...run, gramsAfter: 66, sample }, carrot, p);
    expect(exact.ok && exact.value.moisture).toBeCloseTo(6, 9);
    expect(exact.ok && exact.value.sd).toBe(0);
    const coarse = outcomeOf(house(), { ...run, gramsAfter: 66, sample: { ...sample, step: 1 } }, carrot, p);
    expect(coarse.ok && coarse.value.sd).toBeCloseTo(
      (100 / Math.sqrt(12)) * Math.hypot(1 / 20, 18.8 / 400),
      9,
    );
    // Dried on after the sample: both weighings of the whole count again.
    const later = outcomeOf(house(), { ...run, gramsAfter: 65, sample }, carrot, p);
    expect(later.ok && later.value.sd).toBeGreaterThan(0);
  });

  it('of the half dried counts with what it held, and the doubt of it', () => {
    const half: Lot = { ...lot, id: 'half', grams: 90, moisture: 34.94, driedIn: 'r1' };
    const first = { ...run, gramsAfter: 90, endedAt: 'x' };
    const again: DryingRun = { ...run, id: 'r2', lot: 'half', gramsBefore: 90, gramsTaken: 90 };
    const both = house({ lots: [lot, half], dryingRuns: [first, again] });
    const now = outcomeOf(both, again, carrot, { ...p, grams: 62 });
    expect(now.ok && now.value.moisture).toBeCloseTo(100 - (90 / 62) * (100 - 34.94), 9);
    const once = outcomeOf(house(), run, carrot, { ...p, grams: 62 });
    // One more weighing, no less doubt.
    expect(now.ok && once.ok && now.value.sd).toBeGreaterThanOrEqual(once.ok ? once.value.sd * 0.999 : 0);
  });

  it('leaves one lot however often it is kept; damp only a fresh one in the freezer', () => {
    const done = { ...run, gramsAfter: 62 };
    const here = house({ dryingRuns: [done] });
    const dry = lotFrom(here, done, { moisture: 8.123456, on: '2026-03-14' });
    expect(dry).toMatchObject({
      form: 'dried',
      food: 'carrot-dried',
      driedIn: 'r1',
      moisture: 8.12,
      frozen: false,
    });
    expect(dry.name).toBe('Carrot, dried');
    expect(lotFrom({ ...here, lots: [lot, dry] }, done, { moisture: 8, on: '2026-03-14' }).id).toBe(dry.id);
    const damp = lotFrom(here, done, { moisture: 30, on: '2026-03-14', frozen: 'damp' });
    expect(damp).toMatchObject({ form: 'fresh', frozen: true, driedIn: 'r1' });
    // The fresh lot is used by what the run took of it.
    expect(leftOver({ lots: [lot, dry], runs: [done], batches: [] }).map((l) => l.grams)).toEqual([400, 62]);
  });

  it('dried on is a look with its weight', () => {
    const on = driedOn({ ...run, gramsAfter: 90 }, '2026-03-14T14:00:00.000Z');
    expect(on.gramsAfter).toBeUndefined();
    expect(on.checks.at(-1)).toMatchObject({ at: '2026-03-14T14:00:00.000Z', grams: 90 });
    expect(nextCheck(on)).toBe('2026-03-14T16:00:00.000Z');
  });

  it('says water with its interval where there is doubt', () => {
    expect(sayWater({ moisture: 8.44, low: 6.06, high: 10.7 })).toBe('8.4 % (6.1 to 10.7 %)');
    expect(sayWater({ moisture: 8, low: 8, high: 8 })).toBe('8 %');
  });
});

describe('a plan', () => {
  it('takes the way that the dryer is set to, the published one for herbs, else the first', () => {
    const oven = waysToDry('vegetable', 'oven');
    expect(oven[presetWay(oven, 'vegetable', 58)]!.known).toBe('published');
    expect(oven[presetWay(oven, 'vegetable', 90)]!.known).toBe('common practice');
    expect(oven[presetWay(oven, 'vegetable', undefined)]!.known).toBe('common practice');
    const herbs = waysToDry('herb', 'oven');
    expect(herbs[presetWay(herbs, 'herb', 120)]!.known).toBe('published');
    expect(presetCelsius(oven[1]!, 58)).toBe(58);
    expect(presetCelsius(oven[1]!, 90)).toBe(60);
    expect(trayArea(40, 30)).toBe(12);
  });

  it('goes on with the rest of the loads, at the same trimming', () => {
    const load = { ...run, gramsTaken: 300, gramsBefore: 240, load: { n: 1, of: 3 } };
    expect(nextLoadOf(house({ dryingRuns: [load] }), lot)).toEqual({
      taken: 600,
      ready: 480,
      done: 1,
      of: 3,
    });
    expect(nextLoadOf(house({ dryingRuns: [{ ...load, load: { n: 3, of: 3 } }] }), lot)).toBeUndefined();
    expect(nextLoadOf(house({ dryingRuns: [run] }), lot)).toBeUndefined();
  });

  it('knows what kind a fresh food is', () => {
    expect(kindOf(house(), 'carrot-dried', carrot)).toBe('vegetable');
    expect(kindOf(house(), 'x', { ...carrot, group: 'herb' })).toBe('herb');
  });
});

describe('in the mix', () => {
  const mix = demoHousehold().mixes[0]!;
  it('the food counts at the measured moisture, the others stay', () => {
    const done = outcomeOf(house(), { ...run, gramsAfter: 62 }, carrot, { scaleStep: 1 });
    if (!done.ok) throw new Error(done.fault);
    const food = mix.problem.foods.find((f) => f.id === 'carrot-dried')!;
    const lines = foodLines(food, done.value, table);
    const protein = lines.find((l) => l.tag === 'PROCNT')!;
    const had = table.get('sr28:11683')!.composition;
    expect(protein.mix).toBe(had.PROCNT);
    expect(protein.damp).toBeCloseTo((had.PROCNT! * (100 - done.value.moisture)) / (100 - had.WATER!), 9);
    expect(protein.fresh).toBeCloseTo(
      (carrot.composition.PROCNT! * (100 - done.value.moisture)) / (100 - carrot.composition.WATER!),
      6,
    );
    const next = withMoisture(mix, 'carrot-dried', done.value.moisture, table);
    expect(next.problem.foods.find((f) => f.id === 'carrot-dried')!.composition!.WATER).toBe(
      done.value.moisture,
    );
    expect(next.problem.foods.filter((f) => f.id !== 'carrot-dried')).toEqual(
      mix.problem.foods.filter((f) => f.id !== 'carrot-dried'),
    );
  });

  it('an own food says that it was measured, once', () => {
    const own: OwnFood = {
      id: 'mine',
      name: 'Leaf',
      kind: 'mix',
      composition: { WATER: 10, PROCNT: 18 },
      sd: { WATER: 1, PROCNT: 2 },
      source: 'my label',
      invented: false,
    };
    const once = ownAtMoisture(own, 5, '2026-03-14');
    expect(once.composition.PROCNT).toBeCloseTo(19, 9);
    expect(once.sd).toEqual({ PROCNT: expect.closeTo((2 * 95) / 90, 9) });
    const twice = ownAtMoisture(once, 8, '2026-03-20');
    expect(twice.source).toBe('my label; at 8 % water as dried on 20 March 2026');
    expect(twice.composition.PROCNT).toBeCloseTo(18.4, 9);
  });
});
