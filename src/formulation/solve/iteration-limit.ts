/**
 * A limit to a mixed-integer search that is the same on every machine: simplex iterations over the whole search. A
 * node is a poor measure of work (one root can take longer than a hundred later nodes), and seconds would make the
 * answer depend on the machine. HiGHS's own `simplex_iteration_limit` does not bound such a search, so it is
 * interrupted at one of its checkpoints, which come at the same places of the search every time.
 */
import type { HighsCallbackMap } from 'highs';
import type { Highs } from './highs.ts';

/** Callbacks for a run that is to end with what it has after so many iterations; its status is then "interrupted". */
export function endingAfter(highs: Highs, iterations: number): HighsCallbackMap {
  return {
    [highs.constants.callbackType.mipInterrupt](event) {
      if (Number(event.data.mip_total_lp_iterations ?? 0) >= iterations) event.interrupt();
      return undefined;
    },
  };
}
