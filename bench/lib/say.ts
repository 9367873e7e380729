/** Figures in words, rounded to what they are worth. */
import type { Figure } from './figures.ts';
import type { Cell } from './report.ts';

/** Three digits that count, and no more decimals than that takes. */
export function rounded(value: number): string {
  if (!Number.isFinite(value)) return '-';
  if (value === 0) return '0';
  const decimals = Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))));
  return decimals > 4 ? value.toExponential(0) : value.toFixed(Math.min(decimals, 3));
}

/** The middle value with its unit. */
export function middle({ median, unit }: Figure): string {
  return withUnit(rounded(median), unit);
}

/** "1.23 ms (1.10 to 1.50)". */
function spread(figure: Figure): string {
  const { low, high, runs } = figure;
  return runs === 1 ? middle(figure) : `${middle(figure)} (${rounded(low)} to ${rounded(high)})`;
}

export function withUnit(value: string, unit: Figure['unit']): string {
  return unit === 'times' ? `${value} x` : `${value} ${unit}`;
}

export function cell(value: Cell): string {
  if (typeof value === 'string') return value;
  return typeof value === 'number' ? value.toLocaleString('en') : spread(value);
}
