/** What the caution list says of the foods of a batch: what says the same stands together. */
import type { CautionNote } from '../../formulation/problem/result.ts';
import { words } from '../../words/words.ts';

/** One caution and the foods of a batch that it is about. */
export interface FoodsCaution {
  readonly foods: readonly string[];
  readonly title: string;
  readonly reason: string;
  /** How to prepare them, or what to take instead. */
  readonly way: string;
  /** Most of them in the mix together, percent; absent where no amount is said. */
  readonly most?: number;
}

/**
 * Cautions by what they say, each with its foods: three pulses with one danger make one caution.
 * @param nameOf name of a food; undefined for foods that are not in the batch
 */
export function cautionsOf(
  notes: readonly CautionNote[],
  nameOf: (food: string) => string | undefined,
): FoodsCaution[] {
  const found = new Map<string, FoodsCaution & { readonly foods: string[] }>();
  for (const { food, title, reason, way, max_share: most } of notes) {
    const name = nameOf(food);
    if (name === undefined) continue;
    const key = JSON.stringify([title, reason, way]);
    const known = found.get(key) ?? { foods: [], title, reason, way, ...(most !== undefined && { most }) };
    found.set(key, known);
    if (!known.foods.includes(name)) known.foods.push(name);
  }
  return [...found.values()];
}

/** A caution in full. */
export const cautionSentence = (c: FoodsCaution) =>
  words().batch.label.caution(c.foods, c.title, c.reason, c.way);

/** What a label has room to say of the foods of a caution: of a limit how much, since the reason stands in the record. */
export function saidOnLabel({ foods, title, reason, way, most }: FoodsCaution): string {
  const t = words().batch.label;
  if (most === undefined) return t.why(title, reason, way);
  return foods.length > 1 ? t.mostTogether(most) : t.most(most);
}
