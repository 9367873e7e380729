/** How a lot stands on a day: ready to weigh out, in its freeze treatment, barred, used up. */
import type { LotStock } from '../../../kitchen/cupboard/cupboard.ts';
import {
  isWeighable,
  type LotGroup,
  needsTreatment,
  readyOn,
  treatmentDone,
} from '../../../kitchen/freezing/freeze-treatment.ts';
import type { Day, FreezeStep, Lot } from '../../../kitchen/model.ts';

/**
 * "ready" and "past" (past its best before, to be looked at) may be weighed out; "treatment": in the freezer or thawing;
 * "due": a step is over and not ticked off; "waits": the treatment is still to begin, or no dates are planned.
 */
export type LotStateKind = 'ready' | 'past' | 'treatment' | 'due' | 'waits' | 'fresh' | 'barred' | 'empty';

export interface LotState {
  readonly kind: LotStateKind;
  /** Its best before lies before the day; of what is barred, empty or fresh it is not asked. */
  readonly pastBest?: true;
  /** It may be weighed out only because the keeper overruled the freeze treatment. */
  readonly overruled?: true;
  /** The first step of its treatment that is not ticked off, where it is in it. */
  readonly step?: FreezeStep;
  /** The day from which it is through its treatment, where that has days. */
  readonly readyOn?: Day;
}

/** The state of a lot on `day`. @param group of its food; see `needsTreatment` */
export function lotState(
  { lot, grams }: Pick<LotStock, 'lot' | 'grams'>,
  day: Day,
  group?: LotGroup,
): LotState {
  if (lot.barred) return { kind: 'barred' };
  if (grams === 0) return { kind: 'empty' };
  if (lot.form === 'fresh') return { kind: 'fresh' };
  const pastBest = isPastBest(lot, day) && { pastBest: true as const };
  if (!isWeighable(lot, day, group)) return { ...treatmentState(lot, day), ...pastBest };
  const overruled = lot.overruled && awaitsTreatment(lot, day, group) && { overruled: true as const };
  return { kind: pastBest ? 'past' : 'ready', ...pastBest, ...overruled };
}

/** Whether the best before of a lot lies before a day. */
export function isPastBest({ bestBefore }: Pick<Lot, 'bestBefore'>, day: Day): boolean {
  return bestBefore !== undefined && bestBefore < day;
}

/** The first step of a lot's treatment that is not ticked off. */
export function openStep({ cold }: Pick<Lot, 'cold'>): FreezeStep | undefined {
  return cold.find((step) => step.doneOn === undefined);
}

/** Where a lot is in its treatment, which is not over. */
function treatmentState(lot: Lot, day: Day): LotState {
  const step = openStep(lot);
  const ready = readyOn(lot);
  const known = { ...(step && { step }), ...(ready !== undefined && { readyOn: ready }) };
  if (!step) return { kind: lot.cold.length === 0 ? 'waits' : 'treatment', ...known };
  return { kind: step.from > day ? 'waits' : step.to <= day ? 'due' : 'treatment', ...known };
}

/** Whether a lot has to go through the freeze treatment, or is in it, and is not through it on a day. */
export function awaitsTreatment(lot: Lot, day: Day, group: LotGroup | undefined): boolean {
  return (lot.cold.length > 0 || needsTreatment(lot, group).needs) && !treatmentDone(lot, day);
}
