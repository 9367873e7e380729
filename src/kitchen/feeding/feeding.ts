/** Grams a day of mix, pellet and fresh food for every animal of a batch, and how long the batch lasts. */

import type { Beside, Problem } from '../../formulation/problem/problem.ts';
import { airDryPart } from '../../nutrition/air-dry.ts';
import { words } from '../../words/words.ts';
import { dayInWords, plusDays } from '../days.ts';
import type { Day } from '../model.ts';
import type { ChosenShares } from './chosen-shares.ts';
import { type FedAnimal, mixPartOf, wholeDays } from './runs-out.ts';

/** What one animal is fed a day, g as weighed; an amount is absent where it is not known. */
interface DailyFeed {
  readonly animal: FedAnimal;
  readonly mix?: number;
  /** What is fed beside the mix, in the problem's order. */
  readonly beside: readonly { readonly food: string; readonly name: string; readonly grams?: number }[];
  readonly sentence: string;
}

export interface Feeding {
  readonly animals: readonly DailyFeed[];
  /** How many days the batch lasts, and whether that is the most it can, since some animal's amount is not known. */
  readonly lasts?: { readonly days: number; readonly atMost: boolean };
  /** The first day for which it no longer holds a whole day's food; absent where `lasts` is. */
  readonly runsOutOn?: Day;
  readonly sentence: string;
}

/**
 * Daily amounts and how long a batch lasts.
 * @param p.grams of the mix there are @param p.from first day of feeding
 * @param p.water of a food fed beside, g per 100 g; asked only of what counts as air dry
 * @param p.shares percent of the ration by food fed beside, where they were chosen; the problem's own else
 * @throws RangeError naming the animal or the amount that is out of range
 */
export function feedingOf(p: {
  readonly problem: Pick<Problem, 'beside'>;
  readonly animals: readonly FedAnimal[];
  readonly grams: number;
  readonly from: Day;
  readonly water?: (food: Beside) => number | undefined;
  readonly shares?: ChosenShares;
}): Feeding {
  const { problem, grams, water = (b) => b.composition?.WATER } = p;
  if (!(Number.isFinite(grams) && grams >= 0))
    throw new RangeError(`grams of the batch must be 0 or more, not ${grams}`);
  const share = (b: Beside) => p.shares?.[b.id] ?? b.share_of_ration;
  const mixPart = mixPartOf(problem, p.shares);
  const animals = p.animals.map((animal): DailyFeed => {
    const daily = animal.dailyGrams;
    const named = (b: Beside) => ({ food: b.id, name: b.name ?? b.id });
    if (daily === undefined)
      return {
        animal,
        beside: problem.beside.map(named),
        sentence: words().feeding.notKnown(animal.name),
      };
    if (!(Number.isFinite(daily) && daily > 0))
      throw new RangeError(`dailyGrams of ${animal.name} must be above 0 g, not ${daily}`);
    const mix = daily * mixPart;
    const beside = problem.beside.map((b) => {
      const part = countedPart(b, water(b));
      return { ...named(b), ...(part !== undefined && { grams: (daily * share(b)) / 100 / part }) };
    });
    return { animal, mix, beside, sentence: daySentence(animal, mix, beside) };
  });
  return { animals, ...lasting(animals, grams, p.from) };
}

/** How much of a gram counts towards the ration; undefined where that rests on an unknown moisture. */
function countedPart(food: Beside, water: number | undefined): number | undefined {
  // Whatever does not count as air dry counts as it is.
  if (food.counts_as === undefined) return 1;
  return water === undefined ? undefined : airDryPart(water);
}

function daySentence(animal: FedAnimal, mix: number, beside: DailyFeed['beside']): string {
  const t = words().feeding;
  return t.aDay(animal.name, [
    t.ofMix(mix),
    ...beside.map((b) => (b.grams === undefined ? t.amountNotKnown(b.name) : t.ofFood(b.grams, b.name))),
  ]);
}

function lasting(
  animals: readonly DailyFeed[],
  grams: number,
  from: Day,
): Pick<Feeding, 'lasts' | 'runsOutOn' | 'sentence'> {
  const t = words().feeding;
  if (animals.length === 0) return { sentence: t.nobodyNamed };
  const unknown = animals.filter((a) => a.mix === undefined).map((a) => a.animal.name);
  const daily = animals.reduce((sum, a) => sum + (a.mix ?? 0), 0);
  if (!(daily > 0)) return { sentence: unknown.length > 0 ? t.nobodyHasSaid(unknown) : t.nothingFed };
  const days = grams / daily;
  const whole = wholeDays(grams, daily);
  const runsOutOn = plusDays(from, whole);
  const atMost = unknown.length > 0;
  const until = dayInWords(runsOutOn);
  const sentence = atMost ? t.lastsAtMost(whole, until, unknown) : t.lasts(whole, until);
  return { lasts: { days, atMost }, runsOutOn, sentence };
}
