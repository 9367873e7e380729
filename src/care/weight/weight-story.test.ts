import { describe, expect, it } from 'vitest';
import { dayNumber, dayOf } from '../../kitchen/days.ts';
import type { Condition, Weighing } from '../model.ts';
import type { WeightQuestion } from './model.ts';
import { isUnlikely, weightStory } from './weight-story.ts';

const START = dayNumber('2025-03-01');
type Typed = readonly [day: number, grams: number, sure?: true];

const weighed = (typed: readonly Typed[]): Weighing[] =>
  typed.map(([day, grams, sure], i) => ({
    id: `w${i}`,
    animalId: 'a',
    at: `${dayOf(START + day)}T${String(8 + (i % 10)).padStart(2, '0')}:00:00Z`,
    grams,
    ...(sure && { sure }),
  }));

const story = (typed: readonly Typed[], about: Partial<WeightQuestion> = {}) =>
  weightStory({
    weighings: weighed(typed),
    species: 'golden',
    lifeStage: 'adult',
    conditions: [],
    south: false,
    today: dayOf(START + (typed.at(-1)?.[0] ?? 0)),
    dayAt: (at) => at.slice(0, 10),
    ...about,
  });

/** Scatter that is no chance: the same each time. */
const SCATTER = [0, 2, -1, 1, -2, 0, 1, -1, 2, -2];
const steady = (days: number, grams: number, from = 0): Typed[] =>
  Array.from({ length: days }, (_, i) => [from + i, Math.round(grams * (1 + (SCATTER[i % 10] ?? 0) / 150))]);
const unlikely = (s: ReturnType<typeof story>) => s.points.filter((p) => p.unlikely).map((p) => p.grams);

describe('a weighing that is unlikely', () => {
  it.each([412, 1420, 14, 124, 241])('%d for 142 is asked about, and counts for nothing', (slip) => {
    const before = story(steady(20, 142));
    expect(isUnlikely(before, slip)).toBe(true);
    expect(isUnlikely(before, 140)).toBe(false);
    const after = story([...steady(20, 142), [20, slip], ...steady(20, 142, 21)]);
    expect(unlikely(after)).toEqual([slip]);
    expect([...after.alerts, ...after.past]).toEqual([]);
    expect(Math.max(...after.trend.map((t) => t.grams))).toBeLessThan(146);
    expect(Math.min(...after.trend.map((t) => t.grams))).toBeGreaterThan(138);
  });

  it('counts when the keeper is sure', () => {
    const s = story([...steady(20, 142), [20, 120, true]]);
    expect(unlikely(s)).toEqual([]);
    expect(s.alerts[0]).toMatchObject({ rule: 'fast', way: 'loss', vet: 'today', on: dayOf(START + 20) });
  });

  it('is borne out by the next that agrees: a true rapid loss is told at its second weighing', () => {
    expect(story([...steady(20, 142), [20, 116]]).alerts).toEqual([]);
    const s = story([...steady(20, 142), [20, 116], [21, 114]]);
    expect(unlikely(s)).toEqual([]);
    expect(s.alerts[0]).toMatchObject({ rule: 'fast', vet: 'today', since: dayOf(START + 20) });
    expect(s.alerts[0]?.percent).toBeGreaterThan(15);
  });

  it('is not borne out by another slip elsewhere', () => {
    const s = story([...steady(20, 142), [20, 412], [21, 14], ...steady(10, 142, 22)]);
    expect(unlikely(s)).toEqual([412, 14]);
    expect(s.alerts).toEqual([]);
  });

  it('may be the first', () => {
    const s = story([[0, 1400], ...steady(10, 142, 1)]);
    expect(unlikely(s)).toEqual([1400]);
    expect(s.trend[0]?.day).toBe(dayOf(START + 1));
    const low = story([[0, 104], ...steady(10, 142, 1)], { species: 'other' });
    expect(unlikely(low)).toEqual([104]);
    expect([...low.alerts, ...low.past]).toEqual([]);
  });

  it('is taken back where it had counted, when the next agree without it', () => {
    const young = { born: { on: dayOf(START - 30) }, lifeStage: 'growing' } as const;
    const s = story(
      [
        [0, 40],
        [4, 46],
        [8, 52],
        [15, 80],
        [16, 64],
        [17, 66],
        [18, 67],
      ],
      young,
    );
    expect(unlikely(s)).toEqual([80]);
    expect([...s.alerts, ...s.past]).toEqual([]);
  });

  it('says between which weights one of today is likely, wider after weeks without', () => {
    const near = story(steady(20, 142)).likely;
    const later = story(steady(20, 142), { today: dayOf(START + 60) }).likely;
    expect(near?.low).toBeGreaterThan(128);
    expect(near?.high).toBeLessThan(156);
    expect(later?.low).toBeLessThan((near?.low ?? 0) - 5);
    expect(story([], { species: 'other' }).likely).toBeUndefined();
    expect(isUnlikely(story([]), 1420)).toBe(true);
    expect(isUnlikely(story([], { usualGrams: 142 }), 70)).toBe(true);
  });
});

describe('the trend', () => {
  it('has a point a day, and a band that is wider where nobody weighed', () => {
    const s = story([...steady(15, 142), [45, 143], [46, 142]]);
    expect(s.trend).toHaveLength(47);
    const width = (day: number) => (s.trend[day]?.high ?? 0) - (s.trend[day]?.low ?? 0);
    expect(width(30)).toBeGreaterThan(2 * width(8));
    for (const t of s.trend) {
      expect(t.low).toBeLessThanOrEqual(142.5);
      expect(t.high).toBeGreaterThanOrEqual(141.5);
    }
  });

  it('follows a fall', () => {
    const fall = Array.from({ length: 14 }, (_, i): Typed => [20 + i, Math.round(142 - i)]);
    const s = story([...steady(20, 142), ...fall, ...steady(10, 128, 34)]);
    expect(s.trend[27]?.grams).toBeCloseTo(135, -0.5);
    expect(s.trend.at(-1)?.grams).toBeCloseTo(128, -0.5);
  });
});

const falling = (from: number, grams: number, part: number, days: number): Typed[] =>
  Array.from({ length: days }, (_, i) => [
    from + i,
    Math.round(grams * (1 - (part * (i + 1)) / days) * (1 + (SCATTER[i % 10] ?? 0) / 200)),
  ]);

describe('a loss', () => {
  it('of level is found, stands, and ends when the weight is back', () => {
    const lost: Typed[] = [...steady(40, 142), ...falling(40, 142, 0.1, 14), ...steady(10, 128, 54)];
    const s = story(lost);
    const shift = s.alerts.find((a) => a.rule === 'shift');
    expect(shift).toMatchObject({ way: 'loss', vet: 'days' });
    expect(shift?.percent).toBeCloseTo(10, -0.5);
    expect(dayNumber(shift?.since ?? '') - START).toBeGreaterThan(36);
    expect(dayNumber(shift?.since ?? '') - START).toBeLessThan(52);
    const back = story([...lost, ...steady(14, 142, 64)]);
    expect(back.alerts).toEqual([]);
    expect(back.past.length).toBeGreaterThan(0);
    expect(back.past[0]?.until.localeCompare(dayOf(START + 64))).toBeGreaterThanOrEqual(0);
  });

  it('that became the new level is the base after some weeks, and a further one is found again', () => {
    const lower: Typed[] = [...steady(40, 142), ...falling(40, 142, 0.1, 14), ...steady(150, 128, 54)];
    expect(story(lower).alerts).toEqual([]);
    const again = story([...lower, ...falling(204, 128, 0.1, 14), ...steady(5, 115, 218)]);
    expect(again.alerts.some((a) => a.way === 'loss' && a.on > dayOf(START + 200))).toBe(true);
  });

  it('of weeks is found against the weight before', () => {
    const s = story([...steady(40, 142), ...falling(40, 142, 0.12, 70), ...steady(8, 125, 110)]);
    expect([...s.alerts].some((a) => a.rule === 'slow' && a.way === 'loss')).toBe(true);
  });

  it('against its usual weight is found from the start', () => {
    const s = story(steady(10, 142), { usualGrams: 175 });
    expect(s.alerts[0]).toMatchObject({
      rule: 'slow',
      way: 'loss',
      vet: 'days',
      from: expect.closeTo(175, 6),
    });
    expect(story(steady(10, 142), { usualGrams: 145 }).alerts).toEqual([]);
  });

  it('of a fifth is for today, whatever found it', () => {
    const s = story([...steady(40, 142), ...falling(40, 142, 0.24, 60), ...steady(10, 108, 100)]);
    expect(s.alerts[0]?.vet).toBe('today');
  });

  it('hides behind no gain before: a golden hamster in short days', () => {
    const gain = Array.from({ length: 60 }, (_, i): Typed => [20 + i, Math.round(142 * (1 + i / 300))]);
    const from = dayNumber('2025-10-01') - START;
    const typed: Typed[] = [
      ...steady(20, 142),
      ...gain,
      ...steady(20, 170, 80),
      ...falling(100, 170, 0.12, 14),
    ];
    const s = story(
      [...typed, ...steady(5, 150, 114)].map(([d, g]): Typed => [d + from, g]),
      { daylight: true },
    );
    expect(s.alerts.some((a) => a.way === 'loss')).toBe(true);
    expect([...s.alerts, ...s.past].some((a) => a.way === 'gain')).toBe(false);
  });
});

describe('a fall on top of a rise', () => {
  const winterWhite = { species: 'winter-white', daylight: true } as const;
  const rise = (days: number, from = 0): Typed[] =>
    Array.from({ length: days }, (_, i) => [
      i,
      Math.round(3000 * Math.exp(0.004 * (i + from)) * (1 + (SCATTER[i % 10] ?? 0) / 200)) / 100,
    ]);
  const top = 30 * Math.exp(0.004 * 50);

  it('is found within five days of its end, though it nets half of itself', () => {
    const fallen = rise(20, 50).map(
      ([i, grams]): Typed => [50 + i, grams * (1 - 0.1 * Math.min(1, (i + 1) / 14))],
    );
    const s = story([...rise(50), ...fallen.slice(0, 19)], winterWhite);
    const shift = s.alerts.find((a) => a.way === 'loss');
    expect(shift).toMatchObject({ rule: 'shift', vet: 'days' });
    expect(shift?.percent).toBeGreaterThan(2);
    expect(shift?.from).toBeLessThan(1.03 * top);
  });

  it('is not seen where the rise only ends', () => {
    const s = story(
      [...rise(50), ...steady(60, top * 100, 50).map(([d, g]): Typed => [d, g / 100])],
      winterWhite,
    );
    expect([...s.alerts, ...s.past]).toEqual([]);
  });
});

describe('a gain', () => {
  it('is told gently', () => {
    const s = story([...steady(60, 142), ...steady(12, 175, 62)], { daylight: false });
    expect(s.alerts.find((a) => a.way === 'gain')).toMatchObject({ rule: 'shift', vet: 'next visit' });
  });

  it('is expected of a golden hamster in short days', () => {
    const from = dayNumber('2025-10-15') - START;
    const up = Array.from({ length: 50 }, (_, i): Typed => [20 + i, Math.round(142 * (1 + i / 200))]);
    const s = story([...steady(20, 142), ...up].map(([d, g]): Typed => [d + from, g]));
    expect(s.expected).toBe('short days');
    expect(s.alerts).toEqual([]);
  });
});

describe('carrying, birth and nursing', () => {
  const conditions: Condition[] = [
    { what: 'pregnant', since: dayOf(START + 42), until: dayOf(START + 56) },
    { what: 'nursing', since: dayOf(START + 56), until: dayOf(START + 80) },
  ];
  const carrying = Array.from(
    { length: 17 },
    (_, i): Typed => [40 + i, Math.round(142 * (1 + 0.45 * (i / 16) ** 2))],
  );

  it('raise no alarm, and are told', () => {
    const all: Typed[] = [...steady(40, 142), ...carrying, ...steady(24, 136, 57), ...steady(20, 141, 81)];
    const at = (day: number) =>
      story(
        all.filter(([d]) => d <= day),
        { conditions, sex: 'female' },
      );
    expect(at(50).expected).toBe('pregnancy');
    expect(at(57).expected).toBe('birth');
    expect(at(70).expected).toBe('nursing');
    for (const day of [50, 57, 58, 63, 70, 100]) {
      expect([...at(day).alerts, ...at(day).past]).toEqual([]);
      expect(unlikely(at(day))).toEqual([]);
    }
  });

  it('do not hide that she falls below her own weight', () => {
    const s = story([...steady(40, 142), ...carrying, ...steady(6, 112, 57)], { conditions, sex: 'female' });
    expect(s.alerts[0]).toMatchObject({ way: 'loss', vet: 'today' });
    expect(s.alerts[0]?.from).toBeLessThan(148);
  });
});

it('knows the sex: a male is not pregnant, and a rat of 380 g is heavy for a female alone', () => {
  const conditions: Condition[] = [{ what: 'pregnant', since: dayOf(START + 15), until: dayOf(START + 40) }];
  const lost: Typed[] = [...steady(20, 142), [20, 118], [21, 116]];
  expect(story(lost, { conditions, sex: 'male' }).alerts[0]).toMatchObject({ rule: 'fast', vet: 'today' });
  expect(story(lost, { conditions, sex: 'male' }).expected).toBeUndefined();
  const up = Array.from({ length: 150 }, (_, i): Typed => [i, Math.round(290 * (1 + i / 400))]);
  const rat = (sex: 'female' | 'male') => story(up, { species: 'rat', sex }).alerts;
  expect(rat('female').some((a) => a.rule === 'slow' && a.way === 'gain' && a.vet === 'next visit')).toBe(
    true,
  );
  expect(rat('male')).toEqual([]);
});

describe('the young', () => {
  const born = { born: { on: dayOf(START - 18) }, lifeStage: 'growing' } as const;

  it('grow without alarm', () => {
    const s = story(
      Array.from({ length: 60 }, (_, i): Typed => [i, Math.round(17 + 1.9 * i)]),
      born,
    );
    expect([...s.alerts, ...s.past]).toEqual([]);
    expect(unlikely(s)).toEqual([]);
    expect(s.expected).toBe('growth');
  });

  it('that do not grow are told', () => {
    const up = Array.from({ length: 8 }, (_, i): Typed => [i, Math.round(22 + 1.9 * i)]);
    const s = story([...up, ...Array.from({ length: 12 }, (_, i): Typed => [8 + i, 36 + (i % 2)])], born);
    expect(s.alerts.some((a) => a.rule === 'growth' && a.vet === 'days')).toBe(true);
  });

  it('weaned lighter than such young are, are told', () => {
    const s = story(
      [
        [2, 13],
        [3, 13],
        [4, 14],
        [5, 14],
      ],
      born,
    );
    expect(s.alerts[0]).toMatchObject({ rule: 'growth', from: expect.closeTo(18, 6) });
    expect(
      story(
        [
          [2, 13],
          [3, 13],
        ],
        { ...born, born: { ...born.born, about: true } },
      ).alerts,
    ).toEqual([]);
  });
});

it('is the same in the south half a year on', () => {
  const winterWhite = { species: 'winter-white', daylight: true } as const;
  const autumn = Array.from(
    { length: 120 },
    (_, i): Typed => [i, Math.round(42 * (1 - 0.32 * (i < 20 ? 0 : (i - 20) / 130)))],
  );
  const from = (day: string) => dayNumber(day) - START;
  const north = story(
    autumn.map(([d, g]): Typed => [d + from('2025-07-20'), g]),
    winterWhite,
  );
  expect(north.expected).toBe('autumn');
  expect([...north.alerts, ...north.past]).toEqual([]);
  const southern = autumn.map(([d, g]): Typed => [d + from('2026-01-19'), g]);
  expect(story(southern, { ...winterWhite, south: true }).expected).toBe('autumn');
  expect(story(southern, { ...winterWhite, south: true }).alerts).toEqual([]);
  expect(story(southern, winterWhite).alerts.some((a) => a.way === 'loss')).toBe(true);
  const lamp = story(
    autumn.map(([d, g]): Typed => [d + from('2025-07-20'), g]),
    { ...winterWhite, daylight: false },
  );
  expect(lamp.alerts.some((a) => a.way === 'loss')).toBe(true);
});
