/** An amount of a food in words. */
import { nutrient, type Tag, unitWord } from '../nutrition/nutrients.ts';
import type { Figures } from './food.ts';

/** "14 g", "at least 14 g", "at least 0.6 and at most 1.1 g": all that is said of one amount, in its unit. */
export function amountWords({ composition, low, high }: Figures, tag: Tag): string {
  const unit = unitWord(nutrient(tag).unit);
  const value = composition[tag];
  const bounds = [
    low?.[tag] !== undefined && `at least ${shortNumber(low[tag])}`,
    high?.[tag] !== undefined && `at most ${shortNumber(high[tag])}`,
  ].filter((w) => w !== false);
  const said = [value !== undefined && shortNumber(value), bounds.join(' and ')].filter(Boolean).join(', ');
  return said === '' ? 'unknown' : `${said} ${unit}`;
}

/** A number with no more decimals than it needs; small ones keep their first digits. */
export function shortNumber(value: number): string {
  return String(Number(Math.abs(value) < 1 ? value.toPrecision(3) : value.toFixed(2)));
}
