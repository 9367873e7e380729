/** The part of the new ration on each day of a change. */

/** Most new food on the first day, as a part (common practice, no source). */
export const FIRST_MOST = 1 / 4;

/** Parts as near as this are the same: the arithmetic is no finer. */
const CLOSE = 1e-12;

/** How the new part may rise: days, most on the first, most from day to day, and the span of parts in range. */
interface Corridor {
  readonly days: number;
  readonly firstMost: number;
  readonly mostStep: number;
  /** Parts in range; none where `low` is above `high`. */
  readonly low: number;
  readonly high: number;
}

/** Between which parts of the new ration a day may lie. */
interface DayBounds {
  least: number;
  most: number;
}

/**
 * The new ration's part on each day: never falling, at most `firstMost` on the first day and `mostStep` more on each
 * further one, 1 on the last. As many days as possible are in range; no such plan comes nearer, on any single day, to
 * the even one (day / days).
 *
 * Why one pass suffices. The part on day d can be anything from L_d (the last day is still reached) to U_d (as fast as
 * allowed), so day d can be in range only where [L_d, U_d] meets [low, high]. All such days can be so at once: go up
 * with U, stop at `high`, and leave it with L; both rise by no more than a step a day. They are next to each other,
 * since L and U never fall. Asking all of them to be in range leaves bounds for each day; carried forwards and
 * backwards these never fall and rise by no more than a step. The even plan does so too, and so does the middle of the
 * three, which on each day is the part nearest to the even plan that any such plan can have.
 */
export function partsByDay({ days, firstMost, mostStep, low, high }: Corridor): number[] {
  const bounds = Array.from({ length: days }, (_, d): DayBounds => {
    const least = Math.max(0, 1 - (days - 1 - d) * mostStep);
    const most = Math.min(1, firstMost + d * mostStep);
    const possible = low <= high && low <= most + CLOSE && least <= high + CLOSE;
    if (!possible || d === days - 1) return { least, most };
    return { least: Math.max(least, low), most: Math.min(most, high) };
  });
  let before: DayBounds | undefined;
  for (const day of bounds) {
    if (before) {
      day.least = Math.max(day.least, before.least);
      day.most = Math.min(day.most, before.most + mostStep);
    }
    before = day;
  }
  let after: DayBounds | undefined;
  for (const day of [...bounds].reverse()) {
    if (after) {
      day.least = Math.max(day.least, after.least - mostStep);
      day.most = Math.min(day.most, after.most);
    }
    after = day;
  }
  return bounds.map(({ least, most }, d) =>
    d === days - 1 ? 1 : Math.max(least, Math.min((d + 1) / days, most)),
  );
}

/**
 * The parts of a change of so many days where nobody knows which of them are in range: evenly up, and no more than
 * {@link FIRST_MOST} on the first day.
 * @param days whole, 1 or more
 */
export function evenParts(days: number): number[] {
  return partsByDay({ days, firstMost: FIRST_MOST, mostStep: 2 / days, low: 0, high: 1 });
}
