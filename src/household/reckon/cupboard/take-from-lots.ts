/** The lots that a pour comes from, and those that what is taken out again goes back to. */
import { type Allocation, allocate, type CupboardContents } from '../../../kitchen/cupboard/cupboard.ts';
import type { Batch, Day, Pour } from '../../../kitchen/model.ts';
import { CRUMB } from '../../../kitchen/tolerances.ts';
import type { GroupOf } from './lot-foods.ts';
import { weighableOn } from './weighable.ts';

/** Where a weight of a food comes from on a day; undefined where the keeper keeps no lot of it. */
export function lotsFor(
  kept: CupboardContents,
  food: string,
  grams: number,
  p: { readonly day: Day; readonly groupOf: GroupOf },
): Allocation | undefined {
  if (!kept.lots.some((l) => l.food === food)) return undefined;
  return allocate(kept, food, Math.max(0, grams), weighableOn(p.day, p.groupOf));
}

/**
 * Which lots a pour comes from, g of each: those that may be weighed on that day; what no lot holds stays unnamed.
 * What is taken out again goes back to the lots it came from, the last in first, as grams below 0.
 * @param p.pours of the batch until now
 */
export function pourLots(
  kept: CupboardContents,
  food: string,
  grams: number,
  p: { readonly day: Day; readonly groupOf: GroupOf; readonly pours: Batch['pours'] },
): Pour['lots'] {
  if (grams < 0) return lotsBack(p.pours, food, -grams);
  const takes = grams > 0 ? (lotsFor(kept, food, grams, p)?.takes ?? []) : [];
  return takes.map(({ lot, grams: g }) => ({ lot: lot.id, grams: g }));
}

interface Part {
  /** Undefined for what no lot is named for. */
  readonly lot: string | undefined;
  grams: number;
}

/** The lots that g of a food go back to, the last poured first; below 0. */
function lotsBack(pours: Batch['pours'], food: string, grams: number): Pour['lots'] {
  const inBowl: Part[] = [];
  for (const pour of pours) {
    if (pour.food !== food) continue;
    const unnamed = pour.grams - pour.lots.reduce((sum, l) => sum + l.grams, 0);
    for (const part of [...pour.lots, { lot: undefined, grams: unnamed }]) {
      if (part.grams > CRUMB) inBowl.push({ ...part });
      else if (part.grams < -CRUMB) takeOut(inBowl, -part.grams, (p) => p.lot === part.lot);
    }
  }
  const back = new Map<string, number>();
  for (const { lot, grams: g } of takeOut(inBowl, grams))
    if (lot !== undefined) back.set(lot, (back.get(lot) ?? 0) - g);
  return [...back].map(([lot, g]) => ({ lot, grams: g }));
}

/** Takes grams off the end of what lies in the bowl. @returns what was taken */
function takeOut(inBowl: Part[], grams: number, of: (part: Part) => boolean = () => true): Part[] {
  const taken: Part[] = [];
  let open = grams;
  for (let i = inBowl.length - 1; i >= 0 && open > CRUMB; i--) {
    const part = inBowl[i]!;
    if (!of(part)) continue;
    const g = Math.min(open, part.grams);
    if (g <= 0) continue;
    taken.push({ lot: part.lot, grams: g });
    part.grams -= g;
    open -= g;
  }
  return taken;
}
