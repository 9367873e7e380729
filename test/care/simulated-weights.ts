/**
 * Invented series of weighings: an animal of some kind, weighed for some time by a keeper who forgets days and once slips
 * when typing. Every draw comes from the seed.
 */
import type { SpeciesKind } from '../../src/care/animal/species.ts';
import type { Weighing } from '../../src/care/model.ts';
import type { WeightQuestion } from '../../src/care/weight/model.ts';
import { dayNumber, dayOf } from '../../src/kitchen/days.ts';

/** Uniform numbers from a seed (Marsaglia's xorshift, with a multiplier that spreads neighbouring seeds). */
function randomFrom(seed: number): () => number {
  let state = Math.imul(seed + 1, 0x9e3779b1) ^ 0x5bd1e995;
  const next = () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
  for (let i = 0; i < 8; i++) next();
  return next;
}

const normalFrom = (random: () => number) =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** Middle of what such animals weigh grown, g, as simulated. */
export const SIMULATED: Readonly<Partial<Record<SpeciesKind, readonly [low: number, high: number]>>> = {
  golden: [120, 180],
  campbells: [30, 50],
  'winter-white': [30, 45],
  roborovski: [20, 25],
  chinese: [28, 40],
  dwarf: [22, 50],
  hamster: [25, 180],
  gerbil: [70, 110],
  mouse: [20, 40],
  rat: [250, 520],
};

export type Often = 'daily' | 'every few days' | 'weekly';
/** Days since the first of July and for how many more it goes down, and up again; how much in all; how even. */
interface Course {
  readonly down: readonly [from: number, days: number];
  readonly up: readonly [from: number, days: number];
  readonly part: number;
  readonly even?: true;
}

/** What a winter white's year may look like: nobody has published it day by day. */
const COURSES = {
  cosine: { down: [31, 150], up: [206, 120], part: 0.32 },
  linear: { down: [31, 138], up: [206, 120], part: 0.32, even: true },
  steep: { down: [62, 105], up: [206, 120], part: 0.32 },
  year: { down: [20, 183], up: [203, 162], part: 0.32 },
  'from September': { down: [62, 110], up: [215, 100], part: 0.32, even: true },
  'early spring': { down: [31, 130], up: [175, 125], part: 0.32 },
  'early, even spring': { down: [31, 130], up: [175, 90], part: 0.32, even: true },
  'late spring': { down: [45, 150], up: [225, 140], part: 0.36 },
  'late, even spring': { down: [45, 150], up: [235, 100], part: 0.36, even: true },
  'long winter': { down: [31, 120], up: [190, 110], part: 0.36, even: true },
  'even spring': { down: [31, 130], up: [200, 100], part: 0.3, even: true },
  mild: { down: [31, 150], up: [206, 120], part: 0.25 },
  'mild and even': { down: [31, 150], up: [206, 100], part: 0.25, even: true },
} satisfies Record<string, Course>;
export type SeasonShape = 'none' | keyof typeof COURSES;
export const SEASON_SHAPES = Object.keys(COURSES) as (keyof typeof COURSES)[];

export interface Simulation {
  readonly seed: number;
  readonly species: SpeciesKind;
  readonly from: string;
  readonly days: number;
  readonly often: Often;
  /** Correlation of neighbouring days' scatter. */
  readonly alike?: number;
  readonly season?: SeasonShape;
  readonly mistyped?: boolean;
  /** A fall, as a part of the weight, over some days. */
  readonly fall?: { readonly day: number; readonly part: number; readonly over: number };
  /** A drift of the logarithm a day. */
  readonly drift?: number;
  readonly daySd?: number;
  /** Course of its own: the logarithm added on a day of the series. */
  readonly course?: (day: number) => number;
  readonly about?: Partial<WeightQuestion>;
}

export interface Simulated {
  readonly question: WeightQuestion;
  /** Id of the weighing that was mistyped. */
  readonly slip?: string;
  readonly start: number;
}

export function simulate(s: Simulation): Simulated {
  const random = randomFrom(s.seed);
  const normal = () => normalFrom(random);
  const [low, high] = SIMULATED[s.species] ?? [30, 50];
  const healthy = Math.log(low + random() * (high - low));
  const start = dayNumber(s.from);
  const { alike = 0, daySd = 0.015 } = s;
  let scatter = normal() * daySd;
  const weighed: { day: number; grams: number }[] = [];
  const missing = random() < 0.5 ? 0.1 + 0.2 * random() : 0.05;
  let away = 0;
  let next = 0;
  for (let d = 0; d < s.days; d++) {
    if (d > 0) scatter = alike * scatter + Math.sqrt(1 - alike ** 2) * daySd * normal();
    if (away > 0) away -= 1;
    else if (random() < 1 / 60) away = 1 + Math.floor(random() * 7);
    const due = d >= next;
    const forgets = random() < missing || away > 0;
    if (!due || forgets) continue;
    next = d + (s.often === 'daily' ? 1 : s.often === 'weekly' ? 7 : 2 + Math.floor(random() * 2));
    const fell = s.fall
      ? Math.log(1 - s.fall.part * Math.min(1, Math.max(0, (d - s.fall.day) / s.fall.over)))
      : 0;
    const y =
      healthy +
      scatter +
      fell +
      (s.drift ?? 0) * d +
      (s.course?.(d) ?? 0) +
      season(s.season ?? 'none', start + d);
    weighed.push({ day: start + d, grams: Math.max(1, Math.round(Math.exp(y))) });
  }
  let slip: string | undefined;
  const weighings: Weighing[] = weighed.map(({ day, grams }, i) => ({
    id: `w${i}`,
    animalId: 'a',
    at: `${dayOf(day)}T18:00:00Z`,
    grams,
  }));
  if (s.mistyped) {
    const place = Math.floor(random() * weighings.length);
    const right = weighings[place];
    if (right) {
      const grams = mistype(right.grams, random);
      if (grams !== right.grams) {
        slip = right.id;
        weighings[place] = { ...right, grams };
      }
    }
  }
  return {
    start,
    slip,
    question: {
      weighings,
      species: s.species,
      lifeStage: 'adult',
      conditions: [],
      south: false,
      today: dayOf(start + s.days - 1),
      dayAt: (at) => at.slice(0, 10),
      ...s.about,
    },
  };
}

/** 412 for 142, tenfold, two neighbouring digits swapped, a digit left out, another first digit. */
function mistype(grams: number, random: () => number): number {
  const digits = String(grams);
  const kind = Math.floor(random() * 5);
  if (kind === 0) return grams * 10;
  if (kind === 1) return Number([...digits].reverse().join('')) || grams;
  if (kind === 2) {
    const at = Math.floor(random() * (digits.length - 1));
    const swapped = [...digits];
    [swapped[at], swapped[at + 1]] = [digits[at + 1] ?? '', digits[at] ?? ''];
    return Number(swapped.join('')) || grams;
  }
  if (kind === 3) return Number(digits.slice(1)) || grams;
  return Number(`${1 + Math.floor(random() * 9)}${digits.slice(1)}`);
}

/** Logarithm that a winter white's autumn has taken on a day and the spring not yet given back. */
function season(shape: SeasonShape, day: number): number {
  if (shape === 'none') return 0;
  const course: Course = COURSES[shape];
  const ofYear = (((day - dayNumber('1970-07-01')) % 365.2425) + 365.2425) % 365.2425;
  const gone = ([from, days]: readonly [number, number]) => {
    const x = Math.min(1, Math.max(0, (ofYear - from) / days));
    return course.even ? x : (1 - Math.cos(Math.PI * x)) / 2;
  };
  return Math.log(1 - course.part) * (gone(course.down) - gone(course.up));
}
