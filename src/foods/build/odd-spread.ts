/** Spreads of the USDA table that are no spread between samples of the food, found and left out. */
import type { Tag } from '../../nutrition/nutrients.ts';
import type { Composition } from '../food.ts';
import { variationBase } from '../variation-class.ts';
import type { TableRow } from './table.ts';

/**
 * How many times the median of its group a coefficient of variation may be. The number of analyses counts every value
 * behind a figure, in old rows also the thousands that papers give as a few means; the error is then that of the
 * means, and se x sqrt(n) comes out many times too wide: 8.9 g for the 19.3 g of protein in raw chickpeas (1,479
 * analyses), 41 g for the 58 g in soya protein concentrate (360). Between samples of a food the coefficient seldom
 * reaches three times the median of its group (one in twenty); such a food takes the spread of its group.
 */
const WIDEST = 4;

/** Fewest spreads for a median of the group's own; with fewer, all groups together. */
const ENOUGH = 10;

/** The rows without the spreads that cannot be between samples. */
export function withoutOddSpreads(rows: readonly TableRow[]): TableRow[] {
  const medians = new Map<string, number>();
  const cvs = new Map<string, number[]>();
  for (const { tableGroup, composition, sd } of rows) {
    for (const [tag, cv] of coefficientsOf(composition, sd)) {
      push(cvs, `${tag} ${tableGroup}`, cv);
      push(cvs, tag, cv);
    }
  }
  for (const [key, all] of cvs) medians.set(key, median(all));
  const usual = (tag: Tag, group: string) => {
    const own = `${tag} ${group}`;
    return medians.get((cvs.get(own)?.length ?? 0) >= ENOUGH ? own : tag) ?? Number.POSITIVE_INFINITY;
  };
  return rows.map((row) => {
    const odd = coefficientsOf(row.composition, row.sd).filter(
      ([tag, cv]) => cv > WIDEST * usual(tag, row.tableGroup),
    );
    if (odd.length === 0) return row;
    const sd = { ...row.sd };
    for (const [tag] of odd) delete sd[tag];
    return { ...row, sd };
  });
}

function coefficientsOf(composition: Composition, sd: Composition): [tag: Tag, cv: number][] {
  return (Object.entries(sd) as [Tag, number][]).map(([tag, spread]) => [
    tag,
    spread / variationBase(tag, composition[tag] ?? 0),
  ]);
}

function push(lists: Map<string, number[]>, key: string, value: number): void {
  const list = lists.get(key);
  if (list) list.push(value);
  else lists.set(key, [value]);
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? Number.POSITIVE_INFINITY;
}
