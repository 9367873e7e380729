/** What the shopping page asks of the worker: the list, and whether the mix it is for may be fed. */
import type { Reference } from '../../foods/reference.ts';
import type { Problem } from '../../formulation/problem/problem.ts';
import type { Evaluation } from '../../formulation/problem/result.ts';
import type { Highs } from '../../formulation/solve/highs.ts';
import type { FreshFood } from '../../kitchen/drying/yields.ts';
import type { DriedAtHome } from '../../kitchen/model.ts';
import type { HomeDried } from '../../kitchen/shopping/home-dried.ts';
import {
  type ShoppingList,
  type ShoppingQuestion,
  shoppingList,
} from '../../kitchen/shopping/shopping-list.ts';

/** Plain data; the worker finds the fresh foods by itself. */
export interface ShoppingAsked extends Omit<ShoppingQuestion, 'foods'> {
  readonly problem: Problem;
  readonly foods: readonly { readonly food: string; readonly name: string }[];
  readonly driedAtHome: readonly DriedAtHome[];
  /** The keeper's own foods among the fresh ones. */
  readonly own: readonly FreshFood[];
}

export interface ShoppingTold {
  readonly list: ShoppingList;
  readonly inRange: boolean;
  /** Whether the mix keeps the rules, in one sentence. */
  readonly verdict: string;
}

/** @param evaluation of the problem at the shares asked about */
export function shoppingOf(
  asked: ShoppingAsked,
  p: { readonly evaluation: Evaluation; readonly reference: Reference; readonly highs: Highs },
): ShoppingTold {
  const { problem: _, driedAtHome, own, foods, ...question } = asked;
  const { breaches, verdict } = p.evaluation;
  const list = shoppingList(
    {
      ...question,
      foods: foods.map((food) => {
        const plan = driedAtHome.find((d) => d.food === food.food);
        const dried = plan && homeDried(plan, own, p.reference);
        return dried ? { ...food, dried } : food;
      }),
    },
    p.highs,
  );
  return { list, inRange: breaches.length === 0, verdict };
}

/** Undefined where the fresh food is not kept any more: then nobody can say what is left of it dried. */
function homeDried(
  { fresh: id, moisture, trimLoss }: DriedAtHome,
  own: readonly FreshFood[],
  reference: Reference,
): HomeDried | undefined {
  const fresh = own.find((f) => f.ref === id) ?? reference.get(id);
  return fresh && { fresh, moisture, ...(trimLoss !== undefined && { trimLoss }) };
}
