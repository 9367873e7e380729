/** Spreads of the USDA table that are no spread between samples of the food, found and left out. */
import type { Tag } from '../../nutrition/nutrients.ts';
import { variationBase } from '../variation-class.ts';
import type { Sr26Amount, Sr26Food } from './sr26.ts';

/**
 * How many analyses make a spread suspect, and how many times the median of its group its coefficient of variation may
 * then be. The number of analyses counts every value behind a figure, in old rows also the many that papers give as a
 * few means; the error is then that of the means, and se x sqrt(n) comes out many times too wide: 8.9 g for the 19.3 g
 * of protein in raw chickpeas (1,479 analyses), 41 g for the 58 g in soya protein concentrate (360), 4.5 g for the 4.6 g
 * in carob flour (40). Such a food takes the spread of its group.
 */
const MANY = 30;
const WIDEST = 4;

/** Fewest spreads for a median of the group's own; with fewer, all groups together. */
const ENOUGH = 10;

/** The foods without the spreads that cannot be between samples; by NDB number, as they came. */
export function withoutOddSpreads(foods: ReadonlyMap<string, Sr26Food>): Map<string, Sr26Food> {
  const cvs = new Map<string, number[]>();
  for (const { group, amounts } of foods.values()) {
    for (const [tag, amount] of amounts) {
      const cv = coefficient(tag, amount);
      if (cv === undefined) continue;
      push(cvs, `${tag} ${group}`, cv);
      push(cvs, tag, cv);
    }
  }
  const medians = new Map([...cvs].map(([key, all]) => [key, median(all)]));
  const usual = (tag: Tag, group: string) => {
    const own = `${tag} ${group}`;
    return medians.get((cvs.get(own)?.length ?? 0) >= ENOUGH ? own : tag) ?? Number.POSITIVE_INFINITY;
  };
  const isOdd = (tag: Tag, amount: Sr26Amount, group: string) =>
    amount.analyses >= MANY && (coefficient(tag, amount) ?? 0) > WIDEST * usual(tag, group);
  const kept = [...foods].map(([ndb, food]) => {
    const amounts = [...food.amounts].map(([tag, amount]) => {
      if (!isOdd(tag, amount, food.group)) return [tag, amount] as const;
      const { sd: _, ...rest } = amount;
      return [tag, rest] as const;
    });
    return [ndb, { ...food, amounts: new Map(amounts) }] as const;
  });
  return new Map(kept);
}

function coefficient(tag: Tag, { value, sd }: Sr26Amount): number | undefined {
  return sd === undefined || value === 0 ? undefined : sd / variationBase(tag, value);
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
