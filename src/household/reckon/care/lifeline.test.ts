import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { draws } from '../../../../test/draws.ts';
import { household } from '../../../../test/household/arbitraries.ts';
import { batch, demo, house } from '../../../../test/kitchen/calendar-house.ts';
import { type Feeding, feedingId, type Note, type Trial } from '../../../care/model.ts';
import type { WeightStory } from '../../../care/weight/model.ts';
import { plusDays } from '../../../kitchen/days.ts';
import type { Batch, Day } from '../../../kitchen/model.ts';
import type { Animal, Household } from '../../model.ts';
import { aroundDay, daysFrom } from './around-day.ts';
import { fedBatches } from './fed-batches.ts';
import { leftNights } from './left-nights.ts';
import { lifelineOf } from './lifeline.ts';
import { weightsOf } from './weight-of.ts';

const dayAt = (at: string) => at.slice(0, 10);
const NO_WEIGHTS: WeightStory = { points: [], trend: [], alerts: [], past: [] };
const bramble = demo.animals[0]!;
const pellet = demo.foods[0]!;

function fed(on: Day, p: Partial<Feeding> = {}): Feeding {
  return { id: feedingId(bramble.id, on), animalId: bramble.id, on, beside: [], ...p };
}
const ofBatch = (on: Day, batchId: string, p: Partial<Feeding> = {}) =>
  fed(on, { mix: { batchId, grams: 6 }, ...p });
const fromPack = (on: Day, lot: string) => fed(on, { beside: [{ food: pellet.id, lot, grams: 6 }] });

function turns(p: Partial<Household>, animal: Animal = bramble) {
  return fedBatches(house(p), animal, dayAt).map((f) => [f.batch.id, f.from, f.to, f.assumed]);
}

describe('the batches an animal was fed', () => {
  const batches = [batch('a', '2026-01-01'), batch('b', '2026-02-01'), batch('c', '2026-03-01')];

  test('follow one another from the days on which they were finished, where nothing was noted', () => {
    expect(turns({ batches })).toEqual([
      ['a', '2026-01-01', '2026-01-31', true],
      ['b', '2026-02-01', '2026-02-28', true],
      ['c', '2026-03-01', undefined, true],
    ]);
  });

  test('are those that were noted, from the day on which they were', () => {
    const feedings = [ofBatch('2026-02-03', 'a'), ofBatch('2026-02-05', 'b'), ofBatch('2026-02-06', 'b')];
    expect(turns({ batches, feedings })).toEqual([
      ['a', '2026-01-01', '2026-02-04', false],
      ['b', '2026-02-05', '2026-02-28', false],
      ['c', '2026-03-01', undefined, true],
    ]);
  });

  test('change back where the older one was fed again', () => {
    const feedings = [ofBatch('2026-03-02', 'c'), ofBatch('2026-03-04', 'b')];
    expect(turns({ batches, feedings })).toEqual([
      ['a', '2026-01-01', '2026-01-31', true],
      ['b', '2026-02-01', '2026-02-28', false],
      // Nothing says otherwise between the day it was finished and that on which it was noted.
      ['c', '2026-03-01', '2026-03-03', false],
      ['b', '2026-03-04', undefined, false],
    ]);
  });

  test('end where they were used up, and with the animal; given-up ones and those of others are none', () => {
    const usedUp = batch('a', '2026-01-01', { left: { grams: 0, on: '2026-01-20' } });
    const given = batch('x', '2026-01-05', { givenUp: { note: 'spilt', on: '2026-01-05' } });
    const other = batch('y', '2026-01-06', { animalIds: ['another'] });
    const gone: Animal = { ...bramble, gone: { how: 'died', on: '2026-02-10' } };
    expect(turns({ batches: [usedUp, given, other, batches[1]!] }, gone)).toEqual([
      ['a', '2026-01-01', '2026-01-20', true],
      ['b', '2026-02-01', '2026-02-10', true],
    ]);
  });

  test('say what changed: other foods, another mix, or only a new batch of the same', () => {
    const foods = batches[0]!.problem.foods.map((f) => f.id);
    const with_ = (of: Batch, ids: readonly string[], mixId?: string): Batch => ({
      ...of,
      mixId,
      pours: ids.map((food) => ({ food, lots: [], target: 1, grams: 1, at: of.startedAt })),
    });
    const [a, b, c] = batches as [Batch, Batch, Batch];
    const d = batch('d', '2026-03-05');
    const changes = fedBatches(
      house({
        batches: [
          with_(a, foods.slice(0, 3), 'demo-mix'),
          with_(b, foods.slice(0, 3), 'demo-mix'),
          with_(c, foods.slice(1, 4), 'demo-mix'),
          with_(d, foods.slice(1, 4), 'demo-mix-2'),
        ],
      }),
      bramble,
      dayAt,
    ).map((f) => f.change);
    const name = (i: number) => a.problem.foods[i]!.name;
    expect(changes).toEqual([
      { kind: 'first', added: [], gone: [] },
      { kind: 'same', added: [], gone: [] },
      { kind: 'foods', added: [name(3)], gone: [name(0)] },
      { kind: 'mix', added: [], gone: [] },
    ]);
  });
});

describe('what was left, night by night', () => {
  const offered = { mix: { grams: 8 }, beside: [{ food: pellet.id, grams: 2 }] };

  test('is a part of what was offered; more may lie where nobody looked', () => {
    const nights = leftNights([
      fed('2026-03-01', {
        ...offered,
        left: { on: '2026-03-02', bowl: { grams: 1 }, hoard: { grams: 1.5 } },
      }),
      fed('2026-03-02', { ...offered, left: { on: '2026-03-03', bowl: { grams: 0 } } }),
      fed('2026-03-03', { ...offered, left: { on: '2026-03-04', bowl: { mostly: ['millet'] } } }),
      fed('2026-03-04', offered),
    ]);
    expect(nights).toEqual([
      { on: '2026-03-01', grams: 2.5, offered: 10, part: 0.25, atLeast: false, mostly: [] },
      { on: '2026-03-02', grams: 0, offered: 10, part: 0, atLeast: true, mostly: [] },
      { on: '2026-03-03', offered: 10, atLeast: true, mostly: ['millet'] },
    ]);
  });

  test('of several nights together is a part of all that was offered in them', () => {
    const nights = leftNights([
      fed('2026-03-01', offered),
      fed('2026-03-02', offered),
      fed('2026-03-03', {
        ...offered,
        left: {
          on: '2026-03-04',
          since: '2026-03-02',
          bowl: { parts: { millet: 3, oats: 1 } },
          hoard: { grams: 0 },
        },
      }),
    ]);
    expect(nights).toMatchObject([{ on: '2026-03-03', grams: 4, offered: 20, part: 0.2, atLeast: false }]);
  });
});

const trial: Trial = {
  id: 't',
  animalId: bramble.id,
  food: 'chickpea',
  name: 'Chickpea',
  days: ['2026-03-05', '2026-03-08'],
  offerings: [{ on: '2026-03-05', seen: 'left' }],
  endedOn: '2026-03-09',
};
const note: Note = { id: 'n', animalId: bramble.id, on: '2026-03-06', kind: 'seen', text: 'Sleepy' };

describe('the life of an animal', () => {
  test('has what happened by its day, and what lasted by its first', () => {
    const story: WeightStory = {
      ...NO_WEIGHTS,
      alerts: [
        {
          rule: 'fast',
          way: 'loss',
          since: '2026-03-04',
          on: '2026-03-07',
          percent: 11,
          from: 142,
          to: 126,
          vet: 'today',
          falseAlarmsAYear: 0.02,
        },
      ],
    };
    const animal: Animal = {
      ...bramble,
      born: { on: '2025-01-01', about: true },
      conditions: [{ what: 'teeth', since: '2026-03-03', until: '2026-03-10', vet: true }],
    };
    const life = lifelineOf(
      house({ batches: [batch('a', '2026-03-01')], trials: [trial], notes: [note] }),
      animal,
      { story, dayAt },
    );
    expect(life.spans.map((s) => [s.lane, s.from, s.to])).toEqual([
      ['batch', '2026-03-01', undefined],
      ['condition', '2026-03-03', '2026-03-10'],
      ['trial', '2026-03-05', '2026-03-09'],
    ]);
    expect(life.events.map((e) => [e.on, e.what.is])).toEqual([
      ['2025-01-01', 'born'],
      ['2026-03-01', 'batch'],
      ['2026-03-03', 'condition'],
      ['2026-03-05', 'offered'],
      ['2026-03-06', 'note'],
      ['2026-03-07', 'alert'],
      ['2026-03-09', 'ended'],
      ['2026-03-10', 'condition'],
    ]);
    // Its birth alone is nothing that a picture could begin with.
    expect(life.start).toBe('2026-03-01');
  });

  test('has a span for each pack of pellets, over days that nobody noted, and an end where they are many', () => {
    const feedings = [
      ...['2026-03-01', '2026-03-02', '2026-03-06'].map((on) => fromPack(on, 'lot-1')),
      fromPack('2026-03-07', 'lot-2'),
      fromPack('2026-03-20', 'lot-2'),
    ];
    const life = lifelineOf(house({ feedings }), bramble, { story: NO_WEIGHTS, dayAt });
    expect(life.spans.map((s) => [s.lane, s.from, s.to])).toEqual([
      ['pellet', '2026-03-01', '2026-03-06'],
      ['pellet', '2026-03-07', '2026-03-07'],
      ['pellet', '2026-03-20', '2026-03-20'],
    ]);
    // Going on with the same pack is no change.
    expect(life.events.map((e) => [e.on, e.what])).toEqual([
      ['2026-03-01', { is: 'pellet', name: pellet.name, change: 'first' }],
      ['2026-03-07', { is: 'pellet', name: pellet.name, change: 'pack' }],
    ]);
  });

  test('is of this animal alone', () => {
    const other = { ...note, animalId: 'another' };
    const life = lifelineOf(house({ notes: [other], trials: [{ ...trial, animalId: 'another' }] }), bramble, {
      story: NO_WEIGHTS,
      dayAt,
    });
    expect(life).toEqual({ spans: [], events: [], left: [] });
  });

  test('of any household is in order, and no batch overlaps another', () => {
    fc.assert(
      fc.property(household, (drawn) => {
        for (const animal of drawn.animals) {
          const story = weightsOf(drawn, animal, { today: '2026-03-10', dayAt });
          const life = lifelineOf(drawn, animal, { story, dayAt });
          const inOrder = (days: readonly Day[]) => expect(days).toEqual([...days].sort());
          inOrder(life.spans.map((s) => s.from));
          inOrder(life.events.map((e) => e.on));
          for (const span of life.spans) if (span.to !== undefined) expect(span.to >= span.from).toBe(true);
          const fedOnes = life.spans.filter((s) => s.lane === 'batch');
          for (const [i, span] of fedOnes.entries()) {
            const next = fedOnes[i + 1];
            if (next && span.to !== undefined) expect(span.to < next.from || animal.gone).toBeTruthy();
          }
          const ids = [...life.spans, ...life.events].map((x) => x.id);
          expect(new Set(life.events.map((e) => e.id)).size).toBe(life.events.length);
          expect(ids.every((id) => id !== '')).toBe(true);
        }
      }),
      { numRuns: draws(2000, 200) },
    );
  });
});

describe('what else happened round a day', () => {
  const trend = Array.from({ length: 31 }, (_, i) => {
    const grams = 142 - i * 0.4;
    return { day: plusDays('2026-02-20', i), grams, low: grams - 2, high: grams + 2 };
  });
  const offered = { mix: { grams: 8 }, beside: [{ food: pellet.id, grams: 2 }] };
  const feedings = Array.from({ length: 10 }, (_, i) => {
    const on = plusDays('2026-03-01', i);
    return fed(on, { ...offered, left: { on, bowl: { grams: i < 5 ? 1 : 4 }, hoard: { grams: 0 } } });
  });
  const life = lifelineOf(house({ feedings, notes: [note], trials: [trial] }), bramble, {
    story: NO_WEIGHTS,
    dayAt,
  });

  test('are weight, left-overs and other events within so many days', () => {
    const around = aroundDay(life, trend, { day: '2026-03-06', days: 3, event: 'note n' });
    expect(around.weight?.before).toBeCloseTo(142 - 11 * 0.4, 9);
    expect(around.weight?.after).toBeCloseTo(142 - 17 * 0.4, 9);
    expect(around.left?.before).toBeCloseTo((0.1 + 0.1 + 0.1) / 3, 9);
    expect(around.left?.after).toBeCloseTo(0.4, 9);
    expect(around.events.map((e) => [e.what.is, daysFrom('2026-03-06', e)])).toEqual([
      ['offered', -1],
      ['ended', 3],
    ]);
  });

  test('say nothing of weight or left-overs where nobody weighed', () => {
    const around = aroundDay(life, [], { day: '2026-03-20', days: 3 });
    expect(around).toEqual({ events: [] });
    expect(aroundDay(life, trend, { day: '2026-01-01', days: 7 }).weight).toBeUndefined();
  });
});
