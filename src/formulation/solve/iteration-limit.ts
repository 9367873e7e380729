/**
 * A limit to a mixed-integer search that is the same on every machine: simplex iterations over the whole search. A
 * node is a poor measure of work (one root can take longer than a hundred later nodes), and seconds would make the
 * answer depend on the machine. HiGHS's own `simplex_iteration_limit` does not bound such a search, so it is
 * interrupted at one of its checkpoints, which come at the same places of the search every time.
 */
import type { CallbackData, HighsCallbackMap } from 'highs';
import type { Highs } from './highs.ts';

/** What a mixed-integer search comes to on its way. The solver may be asked nothing meanwhile. */
export interface SearchWatch {
  /** No answer costs less; told when it has risen. */
  bound?(cost: number): void;
  /** All columns of an answer better than those before. */
  better?(columns: Float64Array): void;
}

/** Callbacks for a run that is to end with what it has after so many iterations; its status is then "interrupted". */
export function endingAfter(highs: Highs, iterations: number, watch?: SearchWatch): HighsCallbackMap {
  const { mipInterrupt, mipImprovingSolution } = highs.constants.callbackType;
  let known = Number.NEGATIVE_INFINITY;
  return {
    [mipInterrupt]({ data, interrupt }) {
      if (Number(data.mip_total_lp_iterations ?? 0) >= iterations) interrupt();
      const { mip_dual_bound: bound } = data;
      if (watch?.bound && bound !== undefined && bound > known) {
        known = bound;
        watch.bound(bound);
      }
      return undefined;
    },
    ...(watch?.better && {
      [mipImprovingSolution]({ data }: { data: CallbackData }) {
        if (data.mip_solution) watch.better?.(data.mip_solution);
        return undefined;
      },
    }),
  };
}
