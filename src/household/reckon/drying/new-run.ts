/** A drying run as it begins. */
import type { DryKind } from '../../../kitchen/drying/drying-practice.ts';
import type { DryingRun, Kitchen, Moment } from '../../../kitchen/model.ts';

/**
 * @param p.taken g of the lot, for all loads, with trimmings @param p.ready g of it trimmed and ready to dry
 * @param p.onTrays g of it that go onto the trays now @param p.loads there are to come, this one among them
 * @param p.done loads that were
 */
export function newRun(
  dryer: NonNullable<Kitchen['dryer']>,
  p: {
    readonly id: string;
    readonly lot: string;
    readonly startedAt: Moment;
    readonly taken: number;
    readonly ready: number;
    readonly onTrays: number;
    readonly loads: number;
    readonly done: number;
    readonly kind: DryKind;
    readonly celsius: number;
    readonly hours: number;
  },
): DryingRun {
  const of = p.done + p.loads;
  return {
    id: p.id,
    lot: p.lot,
    device: dryer.device,
    celsius: p.celsius,
    startedAt: p.startedAt,
    trays: dryer.trays,
    gramsBefore: p.onTrays,
    // Of the trimmings each load takes its part.
    gramsTaken: (p.taken * p.onTrays) / p.ready,
    kind: p.kind,
    hours: p.hours,
    ...(of > 1 && { load: { n: p.done + 1, of } }),
    checks: [],
  };
}
