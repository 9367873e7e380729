/** From what a label prints, typed field by field, to figures per 100 g as fed. */
import { perHundred } from '../../nutrition/amount.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import { plainFigures } from '../figures.ts';
import type { Composition, Figures } from '../food.ts';
import { labelSpread } from '../variation.ts';

/** What a label says of one amount. A guaranteed least or most is a bound, never a value. */
export interface Stated {
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
}

type StatedAmounts = Readonly<Partial<Record<Tag, Stated>>>;

export interface LabelForm {
  /** The quantity the label's amounts are for, grams. */
  readonly quantity: number;
  readonly basis: 'as fed' | 'dry matter';
  /** As printed; moisture always in percent of the food as fed. */
  readonly amounts: StatedAmounts;
}

/** Per 100 g as fed; moisture is taken as percent of the food whatever the label's quantity. No sd is known yet. */
export function figuresFrom({ quantity, basis, amounts }: LabelForm): Figures {
  const dry = basis === 'dry matter' ? (100 - (amounts.WATER?.value ?? 0)) / 100 : 1;
  const all = Object.entries(amounts) as [Tag, Stated][];
  const part = (key: keyof Stated): Composition =>
    Object.fromEntries(
      all.flatMap(([tag, { [key]: amount }]) => {
        if (amount === undefined) return [];
        return [
          [tag, tag === 'WATER' ? amount : Number((perHundred(amount, quantity) * dry).toPrecision(10))],
        ];
      }),
    );
  return plainFigures({ composition: part('value'), sd: {}, low: part('low'), high: part('high') });
}

/** The same figures as fields for 100 g as fed. */
export function statedFrom({ composition, low, high }: Figures): StatedAmounts {
  const tags = Object.keys({ ...composition, ...low, ...high }) as Tag[];
  return Object.fromEntries(
    tags.map((tag): [Tag, Stated] => [tag, { value: composition[tag], low: low?.[tag], high: high?.[tag] }]),
  );
}

/**
 * The figures with the standard deviation that a label of this kind leaves each value; bounds have none.
 * @param known figures with an sd of their own, which a value keeps for as long as it stays the same
 */
export function withLabelSd(told: Figures, kind: 'mix' | 'pellet', known?: Figures): Figures {
  const sd: Composition = {};
  for (const [tag, value] of Object.entries(told.composition) as [Tag, number][]) {
    const own = known?.composition[tag] === value ? known.sd[tag] : undefined;
    const spread = own ?? labelSpread(value, tag, kind === 'pellet' ? 'feed' : 'food')?.sd;
    if (spread !== undefined) sd[tag] = spread;
  }
  return { ...told, sd };
}
