/** Figures of a food: plain, counted and compared. */
import type { Tag } from '../nutrition/nutrients.ts';
import type { Composition, Figures } from './food.ts';

/** The figures alone, without bounds that bound nothing. */
export function plainFigures({ composition, sd, low, high, proteinFactor }: Figures): Figures {
  const some = (amounts: Composition | undefined) => amounts && Object.keys(amounts).length > 0;
  return {
    composition,
    sd,
    ...(some(low) && { low }),
    ...(some(high) && { high }),
    ...(proteinFactor !== undefined && { proteinFactor }),
  };
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
