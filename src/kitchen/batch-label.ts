/** What a label of a batch says. Plain data: whoever prints it chooses the layout. */
import type { Reference } from '../foods/reference.ts';
import type { Tag } from '../nutrition/nutrients.ts';
import { amountOf, type BatchRecord, type ContentLine } from './batch.ts';
import type { Feeding } from './feeding.ts';
import {
  type KeepAdvice,
  type Keeping,
  keepAdvice,
  type MixMoisture,
  mixMoisture,
  type Place,
  type UseBy,
  usableUntil,
} from './keeping.ts';
import type { Day } from './model.ts';

/** How the foods of a record keep, for `keeping.ts`. */
export function keepingOf(record: BatchRecord, reference: Reference): Keeping[] {
  const ingredients = new Map(record.problem.foods.map((f) => [f.id, f]));
  return record.foods.map(({ food, name, share, lots }) => {
    const ingredient = ingredients.get(food)!;
    const group =
      ingredient.group ?? (ingredient.ref === undefined ? undefined : reference.get(ingredient.ref)?.group);
    const fat = amountOf(ingredient, 'FAT', reference);
    const water = amountOf(ingredient, 'WATER', reference);
    return {
      food,
      name,
      ...(group !== undefined && { group }),
      share,
      ...(fat !== undefined && { fat }),
      ...(water !== undefined && { water }),
      lots: lots.map(({ lot }) => lot),
    };
  });
}

/** Contents that a label prints, in reading order. */
const ON_LABEL: readonly Tag[] = ['PROCNT', 'FAT', 'FIBTG', 'FIBC', 'ASH', 'WATER', 'CA', 'P'];

/** What a label says. */
export interface BatchLabel {
  readonly name: string;
  readonly batch: string;
  readonly grams: number;
  readonly madeOn: Day;
  readonly madeBy?: string;
  /** Foods, the largest share first, percent. */
  readonly foods: readonly { readonly name: string; readonly share: number }[];
  readonly contents: readonly ContentLine[];
  readonly verdict: string;
  readonly useBy: UseBy;
  readonly moisture: MixMoisture;
  readonly keep: readonly KeepAdvice[];
  /** What the caution list says of its foods, one sentence each. */
  readonly cautions: readonly string[];
  /** Daily amounts, one sentence an animal; and how long the batch lasts. */
  readonly feeding: readonly string[];
  readonly lasts: string;
}

/** The data of a label. @param p.feeding as `feedingOf` gives it for this batch */
export function batchLabel(
  record: BatchRecord,
  p: { readonly feeding: Feeding; readonly reference: Reference; readonly place?: Place },
): BatchLabel {
  const { evaluation } = record;
  const keeping = keepingOf(record, p.reference);
  const present = new Set(record.foods.map((f) => f.food));
  const names = new Map(record.foods.map((f) => [f.food, f.name]));
  return {
    name: record.name,
    batch: record.id,
    grams: record.grams,
    madeOn: record.madeOn,
    ...(record.madeBy !== undefined && { madeBy: record.madeBy }),
    foods: record.foods.map(({ name, share }) => ({ name, share })),
    contents: ON_LABEL.flatMap((tag) => record.contents.filter((line) => line.tag === tag)),
    verdict: evaluation.verdict,
    useBy: usableUntil(keeping, record.madeOn, p.place),
    moisture: mixMoisture(evaluation.nutrients.WATER),
    keep: keepAdvice(keeping, p.place),
    cautions: [
      ...new Set(
        evaluation.cautions
          .filter((c) => present.has(c.food))
          .map((c) => `${names.get(c.food)}: ${c.title}. ${c.reason} ${c.way}`),
      ),
    ],
    feeding: p.feeding.animals.map((a) => a.sentence),
    lasts: p.feeding.sentence,
  };
}
