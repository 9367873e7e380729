/** Lots found by their id, and by the drying run that left them. */
import type { Lot } from '../../../kitchen/model.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import type { Household } from '../../model.ts';

const byId = remembered((lots: readonly Lot[]) => indexed(lots, (l) => l.id));
const byRun = remembered((lots: readonly Lot[]) => indexed(lots, (l) => l.driedIn));

export function lotById({ lots }: Pick<Household, 'lots'>, id: string): Lot | undefined {
  return byId(lots).get(id);
}

/** The lot that a run left; the first where several say so. */
export function driedIn({ lots }: Pick<Household, 'lots'>, run: string): Lot | undefined {
  return byRun(lots).get(run);
}

function indexed(lots: readonly Lot[], by: (lot: Lot) => string | undefined): ReadonlyMap<string, Lot> {
  const found = new Map<string, Lot>();
  for (const lot of lots) {
    const key = by(lot);
    if (key !== undefined && !found.has(key)) found.set(key, lot);
  }
  return found;
}
