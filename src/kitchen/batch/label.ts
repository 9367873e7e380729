/** What a label of a batch says. Plain data: whoever prints it chooses the layout. */
import type { Reference } from '../../foods/reference.ts';
import type { Verdict } from '../../formulation/explain/verdict.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import type { Feeding } from '../feeding/feeding.ts';
import type { Day } from '../model.ts';
import { amountOf, type BatchRecord, nameOf } from './batch.ts';
import type { ContentLine } from './content-line.ts';
import { cautionsOf, type FoodsCaution } from './foods-cautions.ts';
import { type MixMoisture, mixMoisture } from './mix-moisture.ts';
import type { StoredFood } from './shelf-kind.ts';
import { type StorageAdvice, storageAdvice } from './storage-advice.ts';
import { type UseBy, usableUntil } from './use-by.ts';

/** How the foods of a record keep, for `use-by.ts`. */
function storedFoods(record: BatchRecord, reference: Reference): StoredFood[] {
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
  readonly verdict: Verdict;
  /** What it is fed beside, by name; empty where it is fed alone. */
  readonly beside: readonly string[];
  readonly useBy: UseBy;
  readonly moisture: MixMoisture;
  readonly keep: readonly StorageAdvice[];
  /** What the caution list says of its foods; foods of which it says the same stand together. */
  readonly cautions: readonly FoodsCaution[];
  /** Daily amounts, one sentence an animal; and how long the batch lasts. */
  readonly feeding: readonly string[];
  readonly lasts: string;
}

/** The data of a label. @param p.feeding as `feedingOf` gives it for this batch */
export function batchLabel(
  record: BatchRecord,
  p: { readonly feeding: Feeding; readonly reference: Reference },
): BatchLabel {
  const { evaluation } = record;
  const stored = storedFoods(record, p.reference);
  const names = new Map(record.foods.map((f) => [f.food, f.name]));
  return {
    name: record.name,
    batch: record.id,
    grams: record.grams,
    madeOn: record.madeOn,
    ...(record.madeBy !== undefined && { madeBy: record.madeBy }),
    foods: record.foods.map(({ name, share }) => ({ name, share })),
    contents: ON_LABEL.flatMap((tag) => record.contents.filter((line) => line.tag === tag)),
    verdict: record.verdict,
    beside: record.problem.beside.map((food) => nameOf(food, p.reference)),
    useBy: usableUntil(stored, record.madeOn),
    moisture: mixMoisture(evaluation.nutrients.WATER),
    keep: storageAdvice(stored),
    cautions: cautionsOf(evaluation.cautions, (food) => names.get(food)),
    feeding: p.feeding.animals.map((a) => a.sentence),
    lasts: p.feeding.sentence,
  };
}
