/** What the freeze treatment asks for on a day, lot by lot, in the order of the cupboard's list. */
import type { Day, FreezeStep, Lot } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';
import { lotsByFood } from './lots-by-food.ts';

interface TreatmentToday {
  /** A step has lasted long enough and is to be ticked off. */
  readonly due: readonly Lot[];
  /** A freeze, or a thaw, begins today. */
  readonly goIn: readonly Lot[];
  readonly comeOut: readonly Lot[];
  /** The treatment has no days yet. */
  readonly withoutDays: readonly Lot[];
}

export function treatmentToday(house: Household, today: Day): TreatmentToday {
  const lines = lotsByFood(house, today).flatMap((f) => f.lots);
  const begins = (kind: FreezeStep['kind']) =>
    lines.filter(
      ({ state }) => state.kind === 'treatment' && state.step?.kind === kind && state.step.from === today,
    );
  const lots = (of: typeof lines) => of.map((l) => l.lot);
  return {
    due: lots(lines.filter((l) => l.state.kind === 'due')),
    goIn: lots(begins('freeze')),
    comeOut: lots(begins('thaw')),
    withoutDays: lots(lines.filter((l) => l.state.kind === 'waits' && l.lot.cold.length === 0)),
  };
}
