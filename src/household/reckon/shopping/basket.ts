/** What is ticked off on the shopping list, and what comes into the cupboard of it. */
import type { Ticked } from '../../../kitchen/model.ts';
import type { ShoppingLine } from '../../../kitchen/shopping/shopping-list.ts';
import { type Purchase, purchaseOf } from './purchased-lots.ts';

/** By food id. */
export type Basket = Readonly<Record<string, Ticked>>;

/** What is to be got of a food, as it is bought. */
export interface ToGet {
  readonly form: 'dry' | 'fresh';
  /** Whole g, rounded up; absent where nobody can say how much fresh food it takes. */
  readonly grams?: number;
  /** More than that, by what is trimmed off, which nobody knows. */
  readonly atLeast?: true;
}

/** Below this part of a step a weight is the rounding of a sum, and no reason for another step. */
const NO_MORE = 1e-6;

/**
 * What is to be got of a food that is dried at home (fresh) or comes dry, in whole grams that can be weighed.
 * @param step of the keeper's scale, g
 */
export function toGet(
  { toBuy, toBuyFresh }: Pick<ShoppingLine, 'toBuy' | 'toBuyFresh'>,
  driedAtHome: boolean,
  step: number,
): ToGet {
  if (!driedAtHome) return { form: 'dry', grams: wholeUp(toBuy, step) };
  if (!toBuyFresh) return { form: 'fresh' };
  const { prepared, purchased } = toBuyFresh;
  if (purchased === undefined) return { form: 'fresh', grams: wholeUp(prepared, step), atLeast: true };
  return { form: 'fresh', grams: wholeUp(purchased, step) };
}

/** The next whole gram that a scale can show. @param step g */
export function wholeUp(grams: number, step: number): number {
  const unit = Math.max(1, Math.ceil(step - NO_MORE));
  return Math.ceil(grams / unit - NO_MORE) * unit;
}

/**
 * What comes in of a food: what the keeper said there is of it, else the packs that were chosen, else what was to be
 * got; nothing where nobody knows how much that is.
 * @param get dry where it was at home already
 */
export function broughtIn(line: ShoppingLine, get: ToGet, ticked: Ticked | undefined): Purchase[] {
  const { food, name, packs } = line;
  const { form, grams } = get;
  if (ticked?.grams !== undefined) return [{ food, name, form, grams: ticked.grams }];
  if (!ticked?.home && packs.length > 0) return packs.map((p) => purchaseOf(name, p));
  return grams === undefined ? [] : [{ food, name, form, grams }];
}

/** The basket with one food ticked, or not any more; undefined where nothing is left in it. */
export function withTick(
  basket: Basket | undefined,
  food: string,
  ticked: Ticked | undefined,
): Basket | undefined {
  const { [food]: _gone, ...others } = basket ?? {};
  const next = ticked ? { ...others, [food]: ticked } : others;
  return Object.keys(next).length > 0 ? next : undefined;
}

/** The basket without these foods. */
export function withoutFoods(basket: Basket | undefined, foods: readonly string[]): Basket | undefined {
  return foods.reduce((left, food) => withTick(left, food, undefined), basket);
}
