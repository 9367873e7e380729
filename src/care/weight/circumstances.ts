/** What is known of the animal on a day that bears on its weight: its age, young, and the season. */
import { dayNumber, dayOf } from '../../kitchen/days.ts';
import { GROWN_AT, GROWN_AT_OTHERS, LONGEST_GESTATION, LONGEST_GESTATION_OF_ALL } from '../figures/growth.ts';
import { GOLDEN, type Stretch, WINTER_WHITE } from '../figures/season.ts';
import { median } from './level/reading.ts';
import type { WeightQuestion } from './model.ts';

export interface Circumstances {
  /** Carrying young, or about to be found so. */
  carries(day: number): boolean;
  /** Just after a birth, when what it carried is gone. */
  afterBirth(day: number): boolean;
  nurses(day: number): boolean;
  young(day: number): boolean;
  /** Days of age; undefined where the day of birth is not known, NaN where it is known only about. */
  age(day: number): number | undefined;
  /** Days between two, the first not counted, on which the season may be taking weight. */
  fallingDays(from: number, to: number): number;
  /** Those of them on which it may only be beginning to. */
  beginningDays(from: number, to: number): number;
  /** The season may be adding weight, by what. */
  rising(day: number): 'spring' | 'short days' | undefined;
  readonly old: boolean;
}

/** A nursing that nobody ended, and the days after which young are weaned in any kind here: from memory. */
const LONGEST_NURSING = 35;
/** Before a pregnancy is noticed it may have begun. */
const UNNOTICED = 10;
const AFTER_BIRTH = 7;
/** Below this a hamster of unknown kind is one of the small ones, above it the golden: between table 5-1's ranges of NRC 1995. */
const SMALL_GRAMS = 70;

type Span = readonly [from: number, to: number];
const inOneOf = (spans: readonly Span[], day: number) => spans.some(([a, b]) => a <= day && day <= b);

export function circumstancesOf(q: WeightQuestion): Circumstances {
  const spans = (what: string, atMost: number): Span[] =>
    q.conditions
      .filter((c) => c.what === what)
      .map(({ since, until }) => {
        const from = dayNumber(since);
        return [from, until === undefined ? from + atMost : Math.min(dayNumber(until), from + 2 * atMost)];
      });
  const gestation = LONGEST_GESTATION[q.species]?.days ?? LONGEST_GESTATION_OF_ALL;
  const carried = spans('pregnant', gestation);
  const nursed = spans('nursing', LONGEST_NURSING);
  const carries = (day: number) =>
    inOneOf(carried, day) || carried.some(([from]) => day < from && day >= from - UNNOTICED);
  const births = [...carried.map(([, to]) => to), ...nursed.map(([from]) => from)];

  const born = q.born && dayNumber(q.born.on);
  const grown = GROWN_AT[q.species] ?? GROWN_AT_OTHERS;
  const small = () => median(q.weighings.map(({ grams }) => grams)) < SMALL_GRAMS;
  const kind =
    q.species === 'dwarf' || (q.species === 'hamster' && small())
      ? 'winter-white'
      : q.species === 'hamster'
        ? 'golden'
        : q.species;
  const seasons = q.daylight !== false;
  const falls = seasons && kind === 'winter-white' ? daysWithin(WINTER_WHITE.falling, q.south) : undefined;
  const begins = falls && daysWithin(WINTER_WHITE.beginning, q.south);
  const inSpring = seasons && kind === 'winter-white' ? daysWithin(WINTER_WHITE.rising, q.south) : undefined;
  const inShort = seasons && kind === 'golden' ? daysWithin(GOLDEN.shortDays, q.south) : undefined;

  return {
    carries,
    afterBirth: (day) => births.some((birth) => day > birth - 3 && day <= birth + AFTER_BIRTH),
    nurses: (day) => inOneOf(nursed, day),
    young: (day) => (born === undefined ? q.lifeStage === 'growing' : day - born < grown),
    age: (day) => (born === undefined ? undefined : q.born?.about ? Number.NaN : day - born),
    fallingDays: (from, to) => falls?.(from, to) ?? 0,
    beginningDays: (from, to) => begins?.(from, to) ?? 0,
    rising: (day) =>
      inSpring?.(day - 1, day) ? 'spring' : inShort?.(day - 1, day) ? 'short days' : undefined,
    old:
      q.lifeStage === 'old' || q.conditions.some(({ what, until }) => what === 'old' && until === undefined),
  };
}

const YEAR = 365.2425;
const HALF_YEAR = 183;

/** How many of the days after `from` up to `to` lie in the stretch of each year. */
function daysWithin(stretch: Stretch, south: boolean): (from: number, to: number) => number {
  const start = dayNumber(`1970-${stretch.from}`) + (south ? HALF_YEAR : 0);
  const end = dayNumber(`1970-${stretch.to}`) + (south ? HALF_YEAR : 0);
  const length = end - start + 1 + (end < start ? YEAR : 0);
  const upTo = (day: number) => {
    const since = day - start + 1;
    const years = Math.floor(since / YEAR);
    return years * length + Math.min(length, since - years * YEAR);
  };
  return (from, to) => Math.max(0, upTo(to) - upTo(from));
}

/** For labels of days reckoned by number. */
export const asDay = (day: number) => dayOf(Math.round(day));
