/** What is found by walking once through years of records is what looking through all of them for each day finds. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { feedingId } from '../../src/care/model.ts';
import type { Household } from '../../src/household/model.ts';
import { fedBatches } from '../../src/household/reckon/care/fed-batches.ts';
import { lifelineOf } from '../../src/household/reckon/care/lifeline.ts';
import { dayOf, daysBetween } from '../../src/kitchen/days.ts';
import type { Day } from '../../src/kitchen/model.ts';
import { draws } from '../draws.ts';
import { tenYears } from './ten-years.ts';

const house = tenYears({ size: 0.02 });
const [animal] = house.animals;
const [pellet] = house.foods;
const [sample] = house.batches;
if (!animal || !pellet || !sample) throw new Error('the household lacks something');
const dayAt = (moment: string) => moment.slice(0, 10);
const START = 20_000;

/** Days that something was fed on, of which batch and which pack. */
const days = fc.uniqueArray(
  fc.record({
    day: fc.integer({ min: 0, max: 60 }),
    batch: fc.option(fc.integer({ min: 0, max: 3 }), { nil: undefined }),
    pack: fc.option(fc.integer({ min: 0, max: 2 }), { nil: undefined }),
  }),
  { selector: (d) => d.day, maxLength: 40 },
);
const finished = fc.uniqueArray(fc.integer({ min: 0, max: 60 }), { minLength: 4, maxLength: 4 });

function houseOf(
  fed: readonly { day: number; batch?: number; pack?: number }[],
  ends: readonly number[],
): Household {
  return {
    ...house,
    trials: [],
    notes: [],
    batches: ends.map((end, i) => ({
      ...sample!,
      id: `b${i}`,
      animalIds: [animal!.id],
      finishedAt: `${dayOf(START + end)}T10:00:00Z`,
    })),
    feedings: fed.map(({ day, batch, pack }) => ({
      id: feedingId(animal!.id, dayOf(START + day)),
      animalId: animal!.id,
      on: dayOf(START + day),
      at: `${dayOf(START + day)}T19:00:00Z`,
      mix: { grams: 5, ...(batch !== undefined && { batchId: `b${batch}` }) },
      beside: [{ food: pellet!.id, grams: 5, ...(pack !== undefined && { lot: `p${pack}` }) }],
    })),
  };
}

it('packs of pellets go on over a week without a note, unless another came between', () => {
  fc.assert(
    fc.property(days, (fed) => {
      const life = lifelineOf(houseOf(fed, []), animal, {
        story: { points: [], trend: [], alerts: [], past: [], expected: undefined, likely: undefined },
        dayAt,
      });
      const plain: { pack: number | undefined; from: Day; to: Day }[] = [];
      for (const { day, pack } of [...fed].sort((a, b) => a.day - b.day)) {
        const on = dayOf(START + day);
        const last = plain.findLast((s) => s.pack === pack);
        const other = plain.findLast((s) => s.pack !== pack);
        if (last && daysBetween(last.to, on) <= 7 && !(other && other.to > last.to)) last.to = on;
        else plain.push({ pack, from: on, to: on });
      }
      const spans = life.spans.filter((s) => s.lane === 'pellet');
      expect(spans.map((s) => [s.from, s.to])).toEqual(plain.map((s) => [s.from, s.to]));
    }),
    { numRuns: draws(2000, 150) },
  );
});

it('a batch is taken to be fed from its end, unless the first note from then on names another', () => {
  fc.assert(
    fc.property(days, finished, (fed, ends) => {
      const found = fedBatches(houseOf(fed, ends), animal, dayAt);
      const notes = [...fed].sort((a, b) => a.day - b.day).filter((d) => d.batch !== undefined);
      const inTurn = ends.map((end, batch) => ({ end, batch })).sort((a, b) => a.end - b.end);
      const starts = new Map<number, number>();
      for (const [i, { end, batch }] of inTurn.entries()) {
        const next = inTurn[i + 1]?.end;
        const first = notes.find((n) => n.day >= end && (next === undefined || n.day < next));
        if (!first || first.batch === batch) starts.set(end, batch);
      }
      for (const { day, batch } of notes) if (batch !== undefined) starts.set(day, batch);
      const turns = [...starts]
        .sort(([a], [b]) => a - b)
        .filter(([, batch], i, all) => batch !== all[i - 1]?.[1]);
      expect(found.map((f) => [f.from, f.batch.id])).toEqual(
        turns.map(([day, batch]) => [dayOf(START + day), `b${batch}`]),
      );
      for (const { batch, assumed } of found) {
        const named = notes.some((n) => `b${n.batch}` === batch.id);
        if (named) expect(assumed).toBe(false);
      }
    }),
    { numRuns: draws(2000, 150) },
  );
});
