/** From what a label prints, typed field by field, to figures per 100 g as fed. */
import type { Composition, Figures } from '../../../foods/food.ts';
import { labelSpread } from '../../../foods/variation.ts';
import { perHundred } from '../../../nutrition/amount.ts';
import { nutrient, type Tag, unitWord } from '../../../nutrition/nutrients.ts';

/** What a label says of one amount. A guaranteed least or most is a bound, never a value. */
export interface Stated {
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
}

export type StatedAmounts = Readonly<Partial<Record<Tag, Stated>>>;

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

/** The figures alone, without bounds that bound nothing. */
export function plainFigures({ composition, sd, low, high }: Figures): Figures {
  const some = (amounts: Composition | undefined) => amounts && Object.keys(amounts).length > 0;
  return { composition, sd, ...(some(low) && { low }), ...(some(high) && { high }) };
}

/** How many nutrients are spoken of, by value or by bound. */
export function countOf({ composition, low, high }: Figures): number {
  return Object.keys({ ...composition, ...low, ...high }).length;
}

/** Whether two sets of figures say the same, standard deviations aside. */
export function sameFigures(a: Figures, b: Figures): boolean {
  const same = (x: Composition = {}, y: Composition = {}) =>
    (Object.keys({ ...x, ...y }) as Tag[]).every((tag) => x[tag] === y[tag]);
  return same(a.composition, b.composition) && same(a.low, b.low) && same(a.high, b.high);
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

/** "14 g", "at least 14 g", "at least 0.6 and at most 1.1 g": all that is said of one amount, in its unit. */
export function words({ composition, low, high }: Figures, tag: Tag): string {
  const unit = unitWord(nutrient(tag).unit);
  const value = composition[tag];
  const bounds = [
    low?.[tag] !== undefined && `at least ${short(low[tag])}`,
    high?.[tag] !== undefined && `at most ${short(high[tag])}`,
  ].filter((w) => w !== false);
  const said = [value !== undefined && short(value), bounds.join(' and ')].filter(Boolean).join(', ');
  return said === '' ? 'unknown' : `${said} ${unit}`;
}

/** A number with no more decimals than it needs; small ones keep their first digits. */
export function short(value: number): string {
  return String(Number(Math.abs(value) < 1 ? value.toPrecision(3) : value.toFixed(2)));
}
