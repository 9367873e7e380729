/** The part of the new ration on each day of a change. */

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
  const least = Array.from({ length: days }, (_, d) => Math.max(0, 1 - (days - 1 - d) * mostStep));
  const most = Array.from({ length: days }, (_, d) => Math.min(1, firstMost + d * mostStep));
  for (let d = 0; d < days; d++) {
    const possible = low <= high && low <= most[d]! + CLOSE && least[d]! <= high + CLOSE;
    if (!possible || d === days - 1) continue;
    least[d] = Math.max(least[d]!, low);
    most[d] = Math.min(most[d]!, high);
  }
  for (let d = 1; d < days; d++) {
    least[d] = Math.max(least[d]!, least[d - 1]!);
    most[d] = Math.min(most[d]!, most[d - 1]! + mostStep);
  }
  for (let d = days - 2; d >= 0; d--) {
    least[d] = Math.max(least[d]!, least[d + 1]! - mostStep);
    most[d] = Math.min(most[d]!, most[d + 1]!);
  }
  return least.map((l, d) => (d === days - 1 ? 1 : Math.max(l, Math.min((d + 1) / days, most[d]!))));
}
