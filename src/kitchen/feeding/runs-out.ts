/** When the present batch runs out: what is left of it, by what is eaten of it in a day. */

import { capital } from '../../formulation/explain/sentences.ts';
import type { Problem } from '../../formulation/problem/problem.ts';
import { words } from '../../words/words.ts';
import { dayInWords, plusDays } from '../days.ts';
import type { Day } from '../model.ts';
import { WHOLE } from '../tolerances.ts';
import type { ChosenShares } from './chosen-shares.ts';

/** An animal as far as feeding needs it. */
export interface FedAnimal {
  readonly id: string;
  readonly name: string;
  /** Its whole ration of a day, g, fresh food counted as the mix counts it; absent where nobody has said. */
  readonly dailyGrams?: number;
}

/** The batch that is being fed. */
export interface PresentBatch {
  /** "batch 3". */
  readonly name: string;
  /** g that are left; absent where nobody has weighed them. */
  readonly gramsLeft?: number;
  /** The day on which they were weighed, before that day's food was taken. */
  readonly weighedOn: Day;
  readonly animals: readonly Pick<FedAnimal, 'name' | 'dailyGrams'>[];
  /** The mix's part of what is fed, above 0 to 1. */
  readonly mixPart: number;
}

export type RunsOut =
  | {
      readonly status: 'known';
      /**
       * The first day on which what is left is not enough for the whole day. While the animals change over to another
       * batch they eat less of this one: then it lasts longer.
       */
      readonly day: Day;
      /** g of the batch that are eaten in a day. */
      readonly gramsADay: number;
      readonly sentence: string;
    }
  | {
      readonly status: 'unknown';
      /** What to enter, in sentences. */
      readonly missing: readonly string[];
      readonly sentence: string;
    };

/**
 * The mix's part of the ration, 0 to 1: what the foods beside it leave.
 * @param chosen their shares, where they were chosen; as the problem writes them else
 */
export function mixPartOf(problem: Pick<Problem, 'beside'>, chosen?: ChosenShares): number {
  return problem.beside.reduce((left, b) => left - (chosen?.[b.id] ?? b.share_of_ration) / 100, 1);
}

/** For how many whole days there is food. A hair below a day's food is a day's food. @param gramsADay above 0 */
export function wholeDays(grams: number, gramsADay: number): number {
  return Math.floor((grams / gramsADay) * (1 + 1e-12) + WHOLE);
}

/**
 * Unknown grams stay unknown: no day is guessed.
 * @throws RangeError naming what is no weight or no part
 */
export function runsOut({ name, gramsLeft, weighedOn, animals, mixPart }: PresentBatch): RunsOut {
  if (!(mixPart > 0 && mixPart <= 1))
    throw new RangeError(
      `mixPart: ${mixPart} is not above 0 and at most 1; give the mix's part of what is fed`,
    );
  if (gramsLeft !== undefined && !(gramsLeft >= 0 && Number.isFinite(gramsLeft)))
    throw new RangeError(`gramsLeft: ${gramsLeft} is no weight; give the grams that are left, 0 or more`);
  for (const { name: who, dailyGrams } of animals)
    if (dailyGrams !== undefined && !(dailyGrams > 0 && Number.isFinite(dailyGrams)))
      throw new RangeError(
        `dailyGrams of ${who}: ${dailyGrams} is no weight; give the grams it is fed in a day`,
      );
  const t = words().feeding;
  const missing = [
    ...(gramsLeft === undefined ? [t.weighLeft(name)] : []),
    ...(animals.length === 0 ? [t.sayWhoEats(name)] : []),
    ...animals.flatMap((a) => (a.dailyGrams === undefined ? [t.enterDaily(a.name)] : [])),
  ];
  if (missing.length > 0 || gramsLeft === undefined)
    return {
      status: 'unknown',
      missing,
      sentence: t.nobodyCanSay(name, missing.join(' ')),
    };
  const gramsADay = mixPart * animals.reduce((sum, a) => sum + a.dailyGrams!, 0);
  const day = plusDays(weighedOn, wholeDays(gramsLeft, gramsADay));
  return {
    status: 'known',
    day,
    gramsADay,
    sentence: t.runsOut(capital(name), dayInWords(day, weighedOn)),
  };
}
