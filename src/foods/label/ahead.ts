/** What lies ahead in a line: a percentage of something other than the weight, and whether a figure follows a name. */
import type { Item } from './match.ts';
import { isEnergyUnit, isRole, isSign } from './per.ts';

/** How far fillers after a percent sign are followed. */
const FARTHEST = 4;

/** "% DV", "% of energy", "% of XY": the percent sign stands at `from`. Undefined where it is a percentage of the weight. */
export function shareAhead(
  items: readonly Item[],
  from: number,
): { of: 'daily' | 'energy' | 'unknown'; next: number } | undefined {
  let i = from + 1;
  const skips = (item: Item | undefined) =>
    isRole(item, 'filler') || isRole(item, 'per') || isSign(item, '.-') || item?.kind === 'noise';
  while (i < from + FARTHEST && skips(items[i]) && !isRole(items[i], 'daily')) i++;
  const item = items[i];
  if (isRole(item, 'daily')) return { of: 'daily', next: i + 1 };
  const energy = item?.kind === 'name' && item.name.tags[0] === 'ENERC_KCAL' && !figureAhead(items, i + 1);
  if (isRole(item, 'energy share') || isEnergyUnit(item) || energy) return { of: 'energy', next: i + 1 };
  return item?.kind === 'word' ? { of: 'unknown', next: i + 1 } : undefined;
}

/** Whether a figure begins at `from`, at most a colon or an opened bracket away. */
export function figureAhead(items: readonly Item[], from: number): boolean {
  const item = items[from];
  return item?.kind === 'number' || (isSign(item, ':=|') && items[from + 1]?.kind === 'number');
}

/** Whether what stands after a comma is a name, a word, or a figure with a name of its own. */
export function nameAfterComma(items: readonly Item[], from: number): boolean {
  let i = from;
  if (items[i]?.kind === 'name' || items[i]?.kind === 'word') return true;
  while (items[i] && !isSign(items[i], ',;|•·.') && items[i]?.kind !== 'name') i++;
  return items[i]?.kind === 'name';
}

/** The print from the first to the last of some items, whatever order they have been put in. */
export function spanOf(items: readonly Item[], text: string): string {
  let first = Number.POSITIVE_INFINITY;
  let last = 0;
  for (const { at, end } of items) {
    first = Math.min(first, at);
    last = Math.max(last, end);
  }
  return text.slice(first, last).trim();
}
