/** What label and table say of a food of the problem, on one basis, before anything is estimated. */
import { CRUDE_FACTOR, crudeOfUnsaid, crudePerPrinted } from '../../foods/crude-protein.ts';
import type { ReferenceFood } from '../../foods/reference.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import type { Beside, Ingredient } from '../problem/problem.ts';

/**
 * Amounts per 100 g as the food is fed. Protein is crude protein: an own amount has the food's `protein_factor` (6.25
 * unless written), a table's the factor that the table names. Where the food is fed at another moisture than the table
 * has, every amount taken from the table moves with the dry matter; what heat or time takes is not reckoned.
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
  const scale = dryMatterScale(food, ref);
  const isOwn = (tag: Tag) => food.composition?.[tag] !== undefined;
  const fromTable = (amount: number | undefined, tag: Tag) =>
    amount === undefined || tag === 'WATER' ? amount : amount * scale;
  const ownFactor = food.protein_factor ?? CRUDE_FACTOR;
  const tableFactor = food.protein_factor ?? ref?.proteinFactor;
  const crude = (amount: number | undefined, tag: Tag, factor: number) =>
    amount === undefined || tag !== 'PROCNT' ? amount : amount * crudePerPrinted(factor);
  const factorOf = (tag: Tag) => (isOwn(tag) ? ownFactor : (tableFactor ?? CRUDE_FACTOR));
  const weight = (tag: Tag) => food.composition?.[tag] ?? fromTable(ref?.composition[tag], tag);
  return {
    weight,
    value: (tag) => crude(weight(tag), tag, factorOf(tag)),
    reach: (tag) => {
      const printed = weight(tag);
      if (tag !== 'PROCNT' || isOwn(tag) || tableFactor !== undefined || printed === undefined)
        return undefined;
      const [least, most] = crudeOfUnsaid();
      return [printed * least, printed * most];
    },
    low: (tag) => crude(food.low?.[tag], tag, ownFactor),
    high: (tag) => crude(food.high?.[tag], tag, ownFactor),
    sd: (tag) =>
      crude(food.sd?.[tag] ?? (isOwn(tag) ? undefined : fromTable(ref?.sd[tag], tag)), tag, factorOf(tag)),
  };
}

/** Dry matter of the food as fed over that of the table's row; 1 where either moisture is unknown. */
function dryMatterScale({ composition }: Ingredient | Beside, ref: ReferenceFood | undefined): number {
  const [own, table] = [composition?.WATER, ref?.composition.WATER];
  if (own === undefined || table === undefined || table >= 100) return 1;
  return (100 - own) / (100 - table);
}
