/** What is known of the animal on a day that bears on its weight: its age, young, and the season. */
import { dayNumber, dayOf } from '../../kitchen/days.ts';
import { GROWN_AT, GROWN_AT_OTHERS, LONGEST_GESTATION, LONGEST_GESTATION_OF_ALL } from '../figures/growth.ts';
import { median } from './level/reading.ts';
import type { WeightQuestion } from './model.ts';
import { type Season, seasonOf } from './season.ts';

export interface Circumstances extends Season {
  /** Carrying young, or about to be found so. */
  carries(day: number): boolean;
  /** Just after a birth, when what it carried is gone. */
  afterBirth(day: number): boolean;
  nurses(day: number): boolean;
  young(day: number): boolean;
  /** Days of age; undefined where the day of birth is not known, NaN where it is known only about. */
  age(day: number): number | undefined;
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
  // A slip in a male's record must not hide a loss of his.
  const carried = q.sex === 'male' ? [] : spans('pregnant', gestation);
  const nursed = q.sex === 'male' ? [] : spans('nursing', LONGEST_NURSING);
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
  const moved = q.daylight !== false && (kind === 'winter-white' || kind === 'golden') ? kind : undefined;

  return {
    carries,
    afterBirth: (day) => births.some((birth) => day > birth - 3 && day <= birth + AFTER_BIRTH),
    nurses: (day) => inOneOf(nursed, day),
    young: (day) => (born === undefined ? q.lifeStage === 'growing' : day - born < grown),
    age: (day) => (born === undefined ? undefined : q.born?.about ? Number.NaN : day - born),
    ...seasonOf(moved, q.south, q.daylight === true && kind === q.species),
    old:
      q.lifeStage === 'old' || q.conditions.some(({ what, until }) => what === 'old' && until === undefined),
  };
}

/** The day by its number, rounded. */
export const asDay = (day: number) => dayOf(Math.round(day));
