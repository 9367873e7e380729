/** What label and table say of a food of the problem, on one basis, before anything is estimated. */
import { CRUDE_FACTOR, crudeOfUnsaid, crudePerPrinted } from '../../foods/crude-protein.ts';
import type { ReferenceFood } from '../../foods/reference.ts';
import { inOtherUnit } from '../../nutrition/international-units.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import { fedFigures } from '../problem/fed-figures.ts';
import type { Beside, Ingredient } from '../problem/problem.ts';

/**
 * Amounts per 100 g as the food is fed. Protein is crude protein: an own amount has the food's `protein_factor` (6.25
 * unless written), a table's the factor that the table names.
 */
export interface GivenAmounts {
  value(tag: Tag): number | undefined;
  /** The value by weight: protein as it was printed, for what the parts leave of 100 g. */
  weight(tag: Tag): number | undefined;
  /** Least and most that the value may be, where it stands as printed and nobody says on which basis. */
  reach(tag: Tag): readonly [number, number] | undefined;
  low(tag: Tag): number | undefined;
  high(tag: Tag): number | undefined;
  /** Standard deviation of the value, where one is given. */
  sd(tag: Tag): number | undefined;
}

export function givenAmounts(food: Ingredient | Beside, ref: ReferenceFood | undefined): GivenAmounts {
  const { composition, sd } = fedFigures(food, ref);
  const ownFactor = food.protein_factor ?? CRUDE_FACTOR;
  const tableFactor = food.protein_factor ?? ref?.proteinFactor;
  const isOwn = food.composition?.PROCNT !== undefined;
  const crude = (amount: number | undefined, tag: Tag, factor: number | undefined) =>
    amount === undefined || tag !== 'PROCNT' ? amount : amount * crudePerPrinted(factor ?? CRUDE_FACTOR);
  const factor = isOwn ? ownFactor : tableFactor;
  return {
    weight: (tag) => composition[tag],
    value: (tag) => crude(composition[tag] ?? inOtherUnit(tag, (t) => composition[t]), tag, factor),
    reach: (tag) => {
      const printed = composition.PROCNT;
      if (tag !== 'PROCNT' || factor !== undefined || printed === undefined) return undefined;
      const [least, most] = crudeOfUnsaid();
      return [printed * least, printed * most];
    },
    low: (tag) => crude(food.low?.[tag], tag, ownFactor),
    high: (tag) => crude(food.high?.[tag], tag, ownFactor),
    sd: (tag) => crude(sd[tag], tag, factor),
  };
}
