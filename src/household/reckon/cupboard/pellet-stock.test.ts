import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../../test/draws.ts';
import { demo, house, lot, today, under } from '../../../../test/kitchen/calendar-house.ts';
import { type Feeding, feedingId } from '../../../care/model.ts';
import { leftOver } from '../../../kitchen/cupboard/cupboard.ts';
import { plusDays } from '../../../kitchen/days.ts';
import type { Lot } from '../../../kitchen/model.ts';
import { contentsOf } from './contents.ts';
import { lotsByFood } from './lots-by-food.ts';
import { lotsToFreeze } from './lots-to-freeze.ts';
import { packStandings } from './pellet-days.ts';
import { packInUse, pelletStock, pelletStocks } from './pellet-stock.ts';

const PELLET = demo.foods[0]!.id;
const [ANIMAL] = demo.animals;
const ID = ANIMAL!.id;

/** 500 g of the pellet, bought two days ago; the animal is fed 6 g of it a day. */
const pack = (id: string, about: Partial<Lot> = {}): Lot => lot(PELLET, { id, name: id, ...about });

const fed = (on: string, grams: number, from?: string, animalId = ID): Feeding => ({
  id: feedingId(animalId, on),
  animalId,
  on,
  at: `${on}T18:00:00Z`,
  beside: [{ food: PELLET, grams, ...(from !== undefined && { lot: from }) }],
});

describe('packs of pellets', () => {
  it('need no freezing, and stand in the stock', () => {
    const kept = house({ lots: [pack('a')] });
    expect(lotsToFreeze(kept, today)).toEqual([]);
    expect(lotsByFood(kept, today)[0]).toMatchObject({
      name: 'Invented pellet',
      ready: 500,
      lots: [{ state: { kind: 'ready' } }],
    });
  });

  it('hold what is written down as fed less, exactly', () => {
    const kept = house({
      lots: [pack('a')],
      feedings: [fed('2026-03-08', 5.5, 'a'), fed('2026-03-09', 7, 'a')],
    });
    expect(leftOver(contentsOf(kept))[0]).toMatchObject({ grams: 487.5, used: 12.5, over: 0 });
    expect(pelletStock(kept, PELLET, under(today))).toMatchObject({
      left: 487.5,
      estimated: false,
      days: 81,
      runsOut: { status: 'known', day: '2026-05-30', gramsADay: 6 },
      buyBy: '2026-05-23',
    });
  });

  it('count a day without a note by what the animal is fed, and say that it is an estimate', () => {
    const kept = house({ lots: [pack('a')], feedings: [fed('2026-03-09', 7, 'a')] });
    expect(pelletStock(kept, PELLET, under(today))).toMatchObject({
      left: 487,
      estimated: true,
      packs: [{ start: 500, fed: 7, estimated: 6, left: 487, state: 'in-use' }],
    });
  });

  it('go by what was weighed, before that day’s food', () => {
    const weighed = pack('a', { boughtOn: '2026-01-01', left: { grams: 60, on: '2026-03-09' } });
    const kept = house({
      lots: [weighed],
      feedings: [fed('2026-02-01', 50, 'a'), fed('2026-03-09', 6, 'a')],
    });
    expect(leftOver(contentsOf(kept))[0]).toMatchObject({ grams: 54 });
    expect(pelletStock(kept, PELLET, under(today))).toMatchObject({
      left: 54,
      estimated: false,
      runsOut: { day: '2026-03-19' },
    });
  });

  it('count only what is eaten before its best before', () => {
    // 6 g a day from 10 to 20 March: 11 days.
    const short = pack('a', { boughtOn: today, bestBefore: '2026-03-20' });
    const one = pelletStock(house({ lots: [short] }), PELLET, under(today));
    expect(one).toMatchObject({ left: 500, days: 11, runsOut: { day: '2026-03-21' } });
    expect(one.tooMuch).toBeCloseTo(434, 9);
    const both = pelletStock(
      house({ lots: [short, pack('b', { boughtOn: today, grams: 60 })] }),
      PELLET,
      under(today),
    );
    expect(both).toMatchObject({ days: 21, runsOut: { day: '2026-03-31' } });
  });

  it('do not run out a day sooner once today’s food is ticked off', () => {
    const before = house({ lots: [pack('a', { boughtOn: today })] });
    const after = house({ lots: [pack('a', { boughtOn: today })], feedings: [fed(today, 6, 'a')] });
    const [one, other] = [before, after].map((h) => pelletStock(h, PELLET, under(today)));
    expect(other!.left).toBe(494);
    expect(other!.runsOut).toEqual(one!.runsOut);
  });

  it('a note of left-overs alone is none of what was fed', () => {
    const note: Feeding = { id: 'n', animalId: ID, on: '2026-03-09', beside: [] };
    const kept = house({ lots: [pack('a', { boughtOn: '2026-03-09' })], feedings: [note] });
    expect(pelletStock(kept, PELLET, under(today)).packs[0]).toMatchObject({ estimated: 6 });
  });

  it('what nobody has said is said to be missing, and no day is guessed', () => {
    const animals = demo.animals.map(({ dailyGrams: _, ...a }) => a);
    const silent = pelletStock(house({ animals, lots: [pack('a')] }), PELLET, under(today));
    expect(silent.runsOut).toEqual({
      status: 'unknown',
      missing: ['Enter how much Bramble is fed in a day.'],
      sentence: 'Nobody can say yet when Invented pellet runs out. Enter how much Bramble is fed in a day.',
    });
    expect(silent.days).toBeUndefined();
    expect(
      pelletStock(house({ animals: [], lots: [pack('a')] }), PELLET, under(today)).runsOut,
    ).toMatchObject({
      status: 'unknown',
      sentence: 'No animal is fed Invented pellet now, so it does not run out.',
    });
    // Nobody keeps a pack: there is nothing to run out, and the food is still told.
    expect(pelletStocks(house(), under(today))).toMatchObject([{ food: PELLET, packs: [], left: 0 }]);
    expect(pelletStocks(house(), under(today))[0]!.runsOut).toBeUndefined();
  });

  it('an animal that left ate until it left', () => {
    const animals = [{ ...ANIMAL!, gone: { how: 'died' as const, on: '2026-03-09' } }];
    const stock = pelletStock(house({ animals, lots: [pack('a')] }), PELLET, under(today));
    expect(stock.packs[0]).toMatchObject({ estimated: 6, left: 494 });
    expect(stock.eaters).toEqual([]);
  });
});

describe('the pack in use', () => {
  const inUse = (...lots: Lot[]) => packInUse(house({ lots }), PELLET, today)?.id;

  it('is the opened one, then the one best before soonest, then the first that came in', () => {
    const soon = pack('soon', { bestBefore: '2026-04-01' });
    const late = pack('late', { bestBefore: '2026-09-01', boughtOn: '2026-01-01' });
    expect(inUse(late, soon)).toBe('soon');
    expect(inUse({ ...late, openedOn: '2026-03-01' }, soon)).toBe('late');
    expect(inUse(pack('b'), pack('a', { boughtOn: '2026-02-01' }))).toBe('a');
  });

  it('is none that is barred, past its best before, empty, or still to come', () => {
    expect(inUse(pack('a', { barred: { why: 'recalled', on: today } }))).toBeUndefined();
    expect(inUse(pack('a', { bestBefore: '2026-03-09' }))).toBeUndefined();
    expect(inUse(pack('a', { left: { grams: 0, on: today } }))).toBeUndefined();
    expect(inUse(pack('a', { boughtOn: '2026-03-11' }))).toBeUndefined();
    expect(inUse(pack('a', { barred: { why: 'recalled', on: today } }), pack('b'))).toBe('b');
  });
});

describe('grams of packs', () => {
  const days = Array.from({ length: 12 }, (_, i) => plusDays('2026-03-01', i));
  const day = fc.constantFrom(...days);
  const tenths = (least: number, most: number) => fc.integer({ min: least, max: most }).map((n) => n / 10);
  const grams = tenths(5, 600);
  const drawn = fc.record({
    packs: fc.array(
      fc.record({
        grams,
        boughtOn: day,
        openedOn: fc.option(day, { nil: undefined }),
        bestBefore: fc.option(day, { nil: undefined }),
        left: fc.option(fc.record({ grams, on: day }), { nil: undefined }),
        barred: fc.option(fc.record({ why: fc.constant('recalled'), on: day }), { nil: undefined, freq: 4 }),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    notes: fc.uniqueArray(
      fc.record({
        on: fc.constantFrom(...days.slice(0, 10)),
        grams: tenths(0, 900),
        from: fc.option(fc.nat(4)),
      }),
      { maxLength: 8, selector: (n) => n.on },
    ),
  });

  it('what came in or was weighed = what is left + fed + estimated - what was noted too much; never below 0', () => {
    let [estimates, overs, weighings] = [0, 0, 0];
    fc.assert(
      fc.property(drawn, ({ packs, notes }) => {
        const lots = packs.map((p, i) => pack(String(i), p));
        const feedings = notes.map((n) => fed(n.on, n.grams, n.from === null ? undefined : String(n.from)));
        const kept = house({ lots, feedings });
        for (const p of packStandings(kept, PELLET, [{ animal: ANIMAL!, grams: 6 }], today)) {
          expect(p.left + p.fed + p.estimated).toBeCloseTo(p.start + p.over, 5);
          for (const g of [p.left, p.fed, p.estimated, p.over, p.atDawn]) expect(g).toBeGreaterThanOrEqual(0);
          expect(p.left === 0 || p.over === 0).toBe(true);
          if (p.estimated > 0) estimates++;
          if (p.over > 0) overs++;
          if (p.weighed) weighings++;
          // What a record names is told by the stock alike.
          const written = leftOver(contentsOf(kept)).find((l) => l.lot.id === p.lot.id)!;
          const odd = (p.lot.left?.on ?? today) < p.lot.boughtOn || p.lot.boughtOn > today;
          const weighsLater = p.lot.left !== undefined && p.lot.left.on > today;
          if (p.estimated === 0 && !odd && !weighsLater) expect(p.left).toBeCloseTo(written.grams, 5);
        }
        const stock = pelletStock(kept, PELLET, under(today));
        expect(stock.left).toBeGreaterThanOrEqual(0);
        if (stock.inUse) expect(stock.inUse.barred).toBeUndefined();
      }),
      { numRuns: draws(3000, 200) },
    );
    expect(Math.min(estimates, overs, weighings)).toBeGreaterThan(10);
  });
});
