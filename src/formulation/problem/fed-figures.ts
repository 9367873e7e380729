/** What is said of a food as it is fed: its own figures over those of its reference food. */
import type { Composition, Figures } from '../../foods/food.ts';
import type { ReferenceFood } from '../../foods/reference.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import type { Beside, Ingredient } from './problem.ts';

/**
 * Own amounts stand; the others are the table's. Where the food is fed at another moisture than the table has, every
 * amount taken from the table moves with the dry matter; what heat or time takes is not reckoned. An own amount does not
 * take the standard deviation of the table's. Protein stays as each printed it.
 */
export function fedFigures(
  { composition: own, sd, low, high }: Ingredient | Beside,
  ref: ReferenceFood | undefined,
): Figures {
  const bounds = { ...(low && { low }), ...(high && { high }) };
  if (!ref) return { composition: own ?? {}, sd: sd ?? {}, ...bounds };
  if (!own && !sd) return { composition: ref.composition, sd: ref.sd, ...bounds };
  const scale = dryMatterScale(own, ref);
  const others = (amounts: Composition): Composition =>
    Object.fromEntries(
      (Object.entries(amounts) as [Tag, number][])
        .filter(([tag]) => own?.[tag] === undefined)
        .map(([tag, amount]) => [tag, tag === 'WATER' ? amount : amount * scale]),
    );
  return {
    composition: { ...others(ref.composition), ...own },
    sd: { ...others(ref.sd), ...sd },
    ...bounds,
  };
}

/** Dry matter of the food as fed over that of the table's row; 1 where either moisture is unknown. */
function dryMatterScale(own: Composition | undefined, ref: ReferenceFood): number {
  const [fed, table] = [own?.WATER, ref.composition.WATER];
  if (fed === undefined || table === undefined || table >= 100) return 1;
  return (100 - fed) / (100 - table);
}

/** Pointer of the first of the amounts that the keeper wrote; of the food where all of them are the table's. */
export function fieldOf(food: Ingredient | Beside, at: string, tags: readonly Tag[]): string {
  for (const tag of tags)
    for (const part of ['composition', 'low', 'high'] as const)
      if (food[part]?.[tag] !== undefined) return `${at}/${part}/${tag}`;
  return at;
}
