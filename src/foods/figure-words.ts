/** An amount of a food in words. */
import { nutrient, type Tag, unitWord } from '../nutrition/nutrients.ts';
import { words } from '../words/words.ts';
import type { Figures } from './food.ts';

/**
 * "14 g", "at least 14 g", "at least 0.6 and at most 1.1 g": all that is said of one amount, in its unit; undefined
 * where nothing is.
 */
export function knownWords({ composition, low, high }: Figures, tag: Tag): string | undefined {
  const t = words().label.amount;
  const unit = unitWord(nutrient(tag).unit);
  const [value, least, most] = [composition[tag], low?.[tag], high?.[tag]];
  const bounds =
    least !== undefined && most !== undefined
      ? t.both(shortNumber(least), shortNumber(most))
      : least !== undefined
        ? t.least(shortNumber(least))
        : most !== undefined && t.most(shortNumber(most));
  const said = [value !== undefined && shortNumber(value), bounds].filter(Boolean).join(', ');
  return said === '' ? undefined : `${said} ${unit}`;
}

/** The same, "unknown" where nothing is said. */
export function amountWords(figures: Figures, tag: Tag): string {
  return knownWords(figures, tag) ?? words().common.unknown;
}

/** A number with no more decimals than it needs; small ones keep their first digits. */
export function shortNumber(value: number): string {
  const { number } = words().figures;
  return Math.abs(value) < 1 ? number(Number(value.toPrecision(3)), 12) : number(value, 2);
}
