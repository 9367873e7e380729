/** What holds of every animal's weighings, whatever they are. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { dayNumber, dayOf } from '../../kitchen/days.ts';
import { SPECIES_KINDS } from '../animal/species.ts';
import type { Weighing } from '../model.ts';
import type { WeightQuestion } from './model.ts';
import { weightStory } from './weight-story.ts';

const START = dayNumber('2024-02-27');

const weighings = (least: number, most: number) =>
  fc
    .array(
      fc.record({
        gap: fc.oneof({ weight: 5, arbitrary: fc.constantFrom(0, 1, 2, 3) }, fc.integer({ min: 4, max: 40 })),
        grams: fc.oneof(
          { weight: 8, arbitrary: fc.integer({ min: least, max: most }) },
          fc.integer({ min: 1, max: 3000 }),
        ),
        sure: fc.boolean(),
      }),
      { maxLength: 60 },
    )
    .map((drawn) => {
      let day = START;
      return drawn.map(({ gap, grams, sure }, i): Weighing => {
        day += gap;
        const at = `${dayOf(day)}T${String(i % 24).padStart(2, '0')}:00:00Z`;
        return { id: `w${i}`, animalId: 'a', at, grams, ...(sure && i % 3 === 0 && { sure: true }) };
      });
    });

const question = (over: Partial<WeightQuestion>): WeightQuestion => ({
  weighings: [],
  species: 'golden',
  lifeStage: 'adult',
  conditions: [],
  south: false,
  today: dayOf(START + 900),
  dayAt: (at) => at.slice(0, 10),
  ...over,
});

const RUNS = { numRuns: draws(1000, 60) };

it('is the same in whatever order the weighings come', () => {
  fc.assert(
    fc.property(weighings(120, 160), fc.infiniteStream(fc.nat()), (typed, picks) => {
      const shuffled = [...typed];
      for (let i = shuffled.length - 1; i > 0; i--) {
        const j = (picks.next().value ?? 0) % (i + 1);
        [shuffled[i], shuffled[j]] = [shuffled[j] as Weighing, shuffled[i] as Weighing];
      }
      expect(weightStory(question({ weighings: shuffled }))).toEqual(
        weightStory(question({ weighings: typed })),
      );
    }),
    RUNS,
  );
});

it('is the same on other days, where no season moves the animal', () => {
  fc.assert(
    fc.property(weighings(70, 110), fc.integer({ min: 1, max: 4000 }), (typed, later) => {
      const moved = (day: string) => dayOf(dayNumber(day) + later);
      const about = { species: 'gerbil', daylight: true } as const;
      const a = weightStory(question({ ...about, weighings: typed }));
      const b = weightStory(
        question({
          ...about,
          weighings: typed.map((w) => ({ ...w, at: moved(w.at.slice(0, 10)) + w.at.slice(10) })),
          today: dayOf(START + 900 + later),
        }),
      );
      expect(b.points.map((p) => p.unlikely)).toEqual(a.points.map((p) => p.unlikely));
      expect(b.alerts.map((x) => [x.rule, x.way, x.on, x.vet])).toEqual(
        a.alerts.map((x) => [x.rule, x.way, moved(x.on), x.vet]),
      );
      a.trend.forEach((t, i) => {
        expect(b.trend[i]?.day).toBe(moved(t.day));
        expect(b.trend[i]?.grams).toBeCloseTo(t.grams, 6);
      });
    }),
    RUNS,
  );
});

it('is in proportion to the weight, where the step of the scale does not matter', () => {
  fc.assert(
    fc.property(weighings(120, 160), fc.integer({ min: 2, max: 9 }), (typed, times) => {
      const many = (by: number) =>
        weightStory(
          question({
            species: 'other',
            weighings: typed.map((w) => ({ ...w, grams: w.grams * by * 1e4 })),
          }),
        );
      const [a, b] = [many(1), many(times)];
      expect(b.points.map((p) => p.unlikely)).toEqual(a.points.map((p) => p.unlikely));
      a.trend.forEach((t, i) => {
        expect((b.trend[i]?.grams ?? 0) / t.grams / times).toBeCloseTo(1, 4);
      });
    }),
    RUNS,
  );
});

it('changes nothing to be sure of a weighing that was not unlikely', () => {
  fc.assert(
    fc.property(weighings(135, 146), (typed) => {
      const plain = typed.map(({ sure: _, ...w }) => w);
      const before = weightStory(question({ weighings: plain }));
      fc.pre(before.points.every((p) => !p.unlikely));
      const sure = plain.map((w): Weighing => ({ ...w, sure: true }));
      const after = weightStory(question({ weighings: sure }));
      expect(after.points).toEqual(before.points);
      expect(after.trend).toEqual(before.trend);
    }),
    RUNS,
  );
});

it('answers for every animal and every figure that can be typed', () => {
  const conditions = fc.array(
    fc.record(
      {
        what: fc.constantFrom('pregnant' as const, 'nursing' as const, 'old' as const),
        since: fc.integer({ min: -20, max: 800 }).map((d) => dayOf(START + d)),
        until: fc.integer({ min: -20, max: 900 }).map((d) => dayOf(START + d)),
      },
      { requiredKeys: ['what', 'since'] },
    ),
    { maxLength: 3 },
  );
  const about = fc.record(
    {
      species: fc.constantFrom(...SPECIES_KINDS),
      lifeStage: fc.constantFrom('adult' as const, 'growing' as const, 'breeding' as const, 'old' as const),
      conditions,
      south: fc.boolean(),
      daylight: fc.boolean(),
      usualGrams: fc.integer({ min: 5, max: 600 }),
      born: fc.integer({ min: -400, max: 100 }).map((d) => ({ on: dayOf(START + d) })),
    },
    { requiredKeys: ['species', 'lifeStage', 'conditions', 'south'] },
  );
  fc.assert(
    fc.property(weighings(15, 500), about, (typed, given) => {
      const s = weightStory(question({ ...given, weighings: typed }));
      expect(s.points).toHaveLength(typed.length);
      const counted = s.points.filter((p) => !p.unlikely);
      if (counted.length > 0)
        expect(s.trend).toHaveLength(
          dayNumber(counted.at(-1)?.day ?? '') - dayNumber(counted[0]?.day ?? '') + 1,
        );
      for (const t of s.trend) {
        expect(t.low).toBeGreaterThan(0);
        expect(t.low).toBeLessThanOrEqual(t.grams);
        expect(t.grams).toBeLessThanOrEqual(t.high);
      }
      for (const a of [...s.alerts, ...s.past]) {
        expect(a.percent).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(a.from) && Number.isFinite(a.to) && Number.isFinite(a.percent)).toBe(true);
        expect(a.since <= a.on).toBe(true);
        expect(a.falseAlarmsAYear).toBeGreaterThan(0);
      }
      for (const w of typed.filter((x) => x.sure))
        expect(s.points.find((p) => p.id === w.id)?.unlikely).toBe(false);
    }),
    RUNS,
  );
});
