/** How old an animal is, in the words people count ages in. */
import { dayNumber, daysBetween, plusMonths } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import type { LifeStage } from '../../targets/life-stage.ts';
import { words } from '../../words/words.ts';
import type { SpeciesKind } from './species.ts';

interface Age {
  readonly years: number;
  /** Whole months above the years. */
  readonly months: number;
  /** Days in all. */
  readonly days: number;
}

export interface Born {
  readonly on: Day;
  readonly about?: true;
}

/** Undefined where it is not born yet. */
export function ageOn(born: Day, day: Day): Age | undefined {
  const days = daysBetween(born, day);
  if (days < 0) return undefined;
  // A month has 28 days at least, so this is never too few.
  let months = Math.floor(days / 28) + 1;
  while (dayNumber(plusMonths(born, months)) > dayNumber(day)) months--;
  return { years: Math.floor(months / 12), months: months % 12, days };
}

/** "1 year 3 months", "12 days", "about 4 months"; undefined where nobody knows, or it is not born yet. */
export function ageInWords(born: Born | undefined, day: Day): string | undefined {
  const age = born && ageOn(born.on, day);
  if (!age) return undefined;
  const t = words().animals.age;
  const said = t.is(age.years, age.months, age.days);
  return born?.about ? t.about(said) : said;
}

/** Whole months that an animal is old. */
export function monthsOld(born: Day, day: Day): number | undefined {
  const age = ageOn(born, day);
  return age && 12 * age.years + age.months;
}

/** The day of birth of an animal of so many months, or about that. */
export function bornAbout(months: number, day: Day): Born {
  return { on: plusMonths(day, -months), about: true };
}

/** Common practice, no source: months until which a small rodent is counted as growing, and from which hamsters as old. */
const GROWING_UNTIL = 3;
const OLD_FROM = 18;
const HAMSTERS: ReadonlySet<SpeciesKind> = new Set([
  'golden',
  'campbells',
  'winter-white',
  'roborovski',
  'chinese',
  'dwarf',
  'hamster',
]);

/**
 * The life stage that goes with an age, as keepers commonly count; undefined where there is no such custom. How long other
 * animals live differs too much to say from when they are old.
 */
export function stageForAge(kind: SpeciesKind, born: Day, day: Day): LifeStage | undefined {
  const months = monthsOld(born, day);
  if (months === undefined || kind === 'other') return undefined;
  if (months < GROWING_UNTIL) return 'growing';
  if (!HAMSTERS.has(kind)) return undefined;
  return months >= OLD_FROM ? 'old' : 'adult';
}
