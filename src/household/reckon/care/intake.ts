/**
 * What an animal was offered and what it ate of that over some days: by food and by nutrient, each between honest limits.
 * Figures are of the nights whose left-overs were noted; of others nothing is said.
 */
import { type Advice, adviceOn } from '../../../care/leftovers/advice.ts';
import { eatenByFood, eatenInAll, type IntakeSet } from '../../../care/leftovers/intake-set.ts';
import { type Range, sumOf, sumOfRanges } from '../../../care/leftovers/pile.ts';
import { type Doubt, isNothing } from '../../../care/leftovers/pile-of.ts';
import { type SortingIndex, sortingIndex } from '../../../care/leftovers/sorting-index.ts';
import { type HoardKnown, type Observed, observe } from '../../../care/leftovers/stretch.ts';
import type { Reference } from '../../../foods/reference.ts';
import { daysBetween } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import { NUTRIENTS } from '../../../nutrition/nutrients.ts';
import type { Household } from '../../model.ts';
import { fedOf, type NutrientIntake, nutrientIntake } from './intake-nutrients.ts';
import { type IntakeQuestion, intakeQuestion } from './intake-question.ts';
import type { MixKnown } from './offered.ts';
import { offeredFoods, portionAmounts } from './portion-amounts.ts';

/** One food over all noted nights; g. */
export interface FoodIntake {
  readonly food: string;
  readonly name: string;
  readonly offered: number;
  /** Offered and no longer in bowl or on the floor. */
  readonly taken: Range;
  /** Taken and not in a hoard; where nobody looked for hoards, from nothing to all that was taken. */
  readonly eaten: Range;
  /** Absent where it was never offered beside another food, or nothing was taken. */
  readonly index?: SortingIndex;
}

/** Left-overs that were looked at together. */
export interface NightIntake {
  readonly since: Day;
  readonly on: Day;
  /** g over all its nights. */
  readonly offered: number;
  readonly taken: Range;
  /** More lay there than was offered, so its weights say nothing of what was eaten. */
  readonly doubtful: boolean;
}

export interface Intake {
  readonly from: Day;
  readonly to: Day;
  /** Days on which food was said to be offered, nights whose left-overs were noted, and days among those without a word of food. */
  readonly nights: { readonly fed: number; readonly noted: number; readonly unticked: number };
  readonly mix: MixKnown;
  /** What is known of the hoards of these nights: "counted" where all of them were, "unknown" where none was looked for. */
  readonly hoard: HoardKnown;
  /** Nobody had looked for hoards before: some of what was found may be older, and more was eaten then. */
  readonly olderHoard: boolean;
  /** g of all food on all noted nights. */
  readonly grams: { readonly offered: number; readonly taken: Range; readonly eaten: Range };
  /** The most offered first. */
  readonly foods: readonly FoodIntake[];
  /** Those of which something is known. */
  readonly nutrients: readonly NutrientIntake[];
  readonly byNight: readonly NightIntake[];
  /** What the sorting indices rest on: what was eaten, or, where hoards were not all counted, what was taken. */
  readonly sortedBy: 'eaten' | 'taken';
  readonly doubts: readonly Doubt[];
  /** Names of foods that a doubt is about, by id, as far as they are known. */
  readonly names: Readonly<Record<string, string>>;
  readonly advice: readonly Advice[];
}

/** Days after which a bad night calls for a vet no more: what came then is not known. */
const STALE = 2;

/** @param parts.reference the food tables @param from, to the first and the last day, both included */
export function intakeOver(
  house: Pick<Household, 'feedings' | 'foods' | 'mixes' | 'batches' | 'lots'>,
  animalId: string,
  from: Day,
  to: Day,
  parts: { readonly reference: Reference },
): Intake {
  return intakeOf(intakeQuestion(house, animalId, { from, to }), parts);
}

/** The answer to a question that was put together elsewhere. */
export function intakeOf(asked: IntakeQuestion, { reference }: { readonly reference: Reference }): Intake {
  const tables = portionAmounts(asked.made, reference);
  const names = new Map<string, string>();
  const spans = asked.spans.map((span) => {
    const looks = span.nights.map((night) => ({
      bowl: night.bowl,
      portions: night.offered,
      offered: offeredFoods(night.offered, tables),
    }));
    const portions = looks.flatMap((l) => l.portions);
    for (const p of portions)
      if (!names.has(p.food))
        names.set(p.food, asked.made[p.made]?.made.name ?? tables.get(p.made)?.name ?? p.food);
    const seen = observe({
      looks,
      ...(span.hoard && { hoard: span.hoard }),
      ...(span.others && { others: true }),
    });
    const nights = looks.map((look) => observe({ looks: [look] }));
    return { span, looks, portions, seen, nights };
  });

  const seen = spans.map((s) => s.seen);
  const takenSets = spans.flatMap((s) => s.nights.map((n) => n.taken));
  const eatenSets = seen.map((s) => s.eaten);
  const byNights = spans.flatMap((s) => s.nights.map((n, i) => fedOf(n.taken, s.looks[i]?.portions ?? [])));
  const bySpans = spans.map((s) => fedOf(s.seen.eaten, s.portions));
  const hoard = hoardOf(seen);
  const sorted = hoard === 'counted' ? eatenSets : takenSets;
  const foods = [...names.keys()]
    .map((food): FoodIntake => {
      const index = sortingIndex(sorted, food);
      return {
        food,
        name: names.get(food) ?? food,
        offered: sumOf(
          takenSets.flatMap((s) => s.offered.filter((f) => f.food === food).map((f) => f.grams)),
        ),
        taken: ofFood(takenSets, food),
        eaten: ofFood(eatenSets, food),
        ...(index && { index }),
      };
    })
    .sort((a, b) => b.offered - a.offered);
  const byNight = spans.flatMap((s) =>
    s.span.nights.map((n, i): NightIntake => {
      const one = s.nights[i];
      return {
        since: n.since,
        on: n.on,
        offered: sumOf(n.offered.map((p) => p.grams)),
        taken: one ? eatenInAll([one.taken]) : { low: 0, high: 0 },
        doubtful: one?.doubts.some((d) => d.kind === 'more') ?? false,
      };
    }),
  );
  const unticked = sumOf(spans.flatMap((s) => s.span.nights.map((n) => n.unticked)));
  return {
    from: asked.from,
    to: asked.to,
    nights: { fed: asked.fed, noted: byNight.length, unticked },
    mix: asked.mix,
    hoard,
    olderHoard: spans.some(({ span }) => span.first && span.hoard !== undefined && !isNothing(span.hoard)),
    grams: {
      offered: sumOf(byNight.map((n) => n.offered)),
      taken: eatenInAll(takenSets),
      eaten: eatenInAll(eatenSets),
    },
    foods,
    nutrients: NUTRIENTS.flatMap(({ tag }) => nutrientIntake(tag, byNights, bySpans, tables)),
    byNight,
    sortedBy: hoard === 'counted' ? 'eaten' : 'taken',
    doubts: seen.flatMap((s) => s.doubts),
    names: Object.fromEntries(names),
    advice: adviceOn(
      recent(byNight, asked.to),
      foods.flatMap((f) => f.index ?? []),
      { hoard: hoard !== 'unknown' },
    ),
  };
}

function ofFood(sets: readonly IntakeSet[], food: string): Range {
  return sumOfRanges(sets.flatMap((set) => eatenByFood(set).filter((_, i) => set.offered[i]?.food === food)));
}

/** Of several spans of nights: all counted, none looked for, or anything between. */
function hoardOf(seen: readonly Observed[]): HoardKnown {
  if (seen.every((s) => s.hoard === 'unknown')) return 'unknown';
  return seen.every((s) => s.hoard === 'counted') ? 'counted' : 'in-part';
}

/** The nights for advice, g a night; none where the last one lies too long ago to say how the animal is today. */
function recent(nights: readonly NightIntake[], today: Day) {
  const last = nights.at(-1);
  if (!last || daysBetween(last.on, today) > STALE) return [];
  return nights.map(({ since, on, taken, doubtful }) => {
    const days = daysBetween(since, on) + 1;
    return { taken: { low: taken.low / days, high: taken.high / days }, doubtful };
  });
}
