/** The figures of a row as cells of a table. */
import type { Column } from './columns.ts';
import type { Figure } from './figure.ts';
import type { Part } from './part.ts';
import type { PrintedQuantity } from './quantity.ts';
import { ownQuantity } from './units.ts';

export type Amount = Part & { readonly kind: 'amount' };

/** A minimum and a maximum side by side are one cell. */
export function joined(figures: readonly Figure[]): Figure[][] {
  const cells: Figure[][] = [];
  for (const figure of figures) {
    const before = cells.at(-1);
    const first = before?.[0];
    const pairs = before?.length === 1 && first && !first.value && !figure.value;
    if (pairs && !first.high !== !figure.high && !first.low !== !figure.low) before.push(figure);
    else cells.push([figure]);
  }
  return cells;
}

export function isOddWeight({ kind, grams, text }: PrintedQuantity): boolean {
  return kind === 'grams' && grams !== 100 && grams !== 1000 && !text.startsWith('/');
}

export function weightsOf(columns: readonly Column[]): Column[] {
  return columns.filter((c) => c.quantity && c.quantity.kind !== 'percent');
}

export function isEnergy({ unit }: Figure): boolean {
  return unit === 'kJ' || unit === 'MJ' || unit === 'kcal';
}

/** How many columns a row fills: an energy in kJ and in kcal is one. */
export function cellsOf({ figures }: Amount): number {
  const counts = new Map<string, number>();
  for (const f of figures) if (isEnergy(f)) counts.set(f.unit, (counts.get(f.unit) ?? 0) + 1);
  return figures.filter((f) => !isEnergy(f)).length + Math.max(0, ...counts.values());
}

export function dimension(figure: Figure): string {
  if (figure.unit === 'kJ' || figure.unit === 'MJ' || figure.unit === 'kcal' || figure.unit === 'IU')
    return figure.unit;
  return ownQuantity(figure.unit) === undefined ? 'weight' : 'share';
}
