/** How much of what was offered was left, night by night: as a part, for a picture. */
import type { Feeding, Remains } from '../../../care/model.ts';
import type { Day } from '../../../kitchen/model.ts';

export interface LeftNight {
  readonly on: Day;
  /** g left, and g that were offered in the same time; absent where nobody weighed them. */
  readonly grams?: number;
  readonly offered?: number;
  /** Part of what was offered, 0 to 1; absent where it cannot be said. */
  readonly part?: number;
  /** Nobody looked into hoards, or not everywhere: what lies there was not eaten either, so more may be left. */
  readonly atLeast: boolean;
  /** Ids of foods that were mostly left. */
  readonly mostly: readonly string[];
}

/** @param feedings of one animal, by day */
export function leftNights(feedings: readonly Feeding[]): readonly LeftNight[] {
  return feedings.flatMap((feeding, place) => {
    const { left } = feeding;
    if (!left) return [];
    const since = left.since ?? feeding.on;
    const offered = offeredSince(feedings, place, since);
    const [bowl, hoard] = [gramsOf(left.bowl), gramsOf(left.hoard)];
    // Of a place nobody weighed nothing is known; what was weighed elsewhere is the least that was left.
    const grams = bowl === undefined && hoard === undefined ? undefined : (bowl ?? 0) + (hoard ?? 0);
    return [
      {
        on: feeding.on,
        ...(grams !== undefined && { grams }),
        ...(offered > 0 && { offered }),
        ...(grams !== undefined && offered > 0 && { part: Math.min(1, grams / offered) }),
        atLeast: bowl === undefined || hoard === undefined,
        mostly: [...new Set([...(left.bowl?.mostly ?? []), ...(left.hoard?.mostly ?? [])])],
      },
    ];
  });
}

/** g offered from a day on to that of the feeding at `place`. */
function offeredSince(feedings: readonly Feeding[], place: number, since: Day): number {
  let sum = 0;
  for (let i = place; i >= 0; i--) {
    const feeding = feedings[i];
    if (!feeding || feeding.on < since) break;
    sum += (feeding.mix?.grams ?? 0) + feeding.beside.reduce((g, b) => g + b.grams, 0);
  }
  return sum;
}

/** g in all; of what was sorted the parts together. Undefined where nobody weighed it. */
function gramsOf(remains: Remains | undefined): number | undefined {
  if (!remains) return undefined;
  const { grams, parts, sorted } = remains;
  if (grams !== undefined) return grams;
  const each = Object.values(parts ?? {});
  return each.length > 0 || sorted ? each.reduce((sum, g) => sum + g, 0) : undefined;
}
