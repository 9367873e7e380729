/** The lots that a pour comes from. */
import { mayBeWeighed } from '../../kitchen/cold.ts';
import { allocate, type Kept } from '../../kitchen/cupboard.ts';
import type { Day, Pour } from '../../kitchen/model.ts';

/** Which lots a pour comes from, g of each: those that may be weighed on that day; what no lot holds stays unnamed. */
export function pourLots(kept: Kept, food: string, grams: number, day: Day): Pour['lots'] {
  if (!(grams > 0)) return [];
  const { takes } = allocate(kept, food, grams, { ready: (lot) => mayBeWeighed(lot, day) });
  return takes.map(({ lot, grams: g }) => ({ lot: lot.id, grams: g }));
}
