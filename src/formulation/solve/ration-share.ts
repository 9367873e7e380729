/**
 * How much of the ration each food beside the mix gets, where it may be chosen within bounds: its wanted share, or the
 * nearest to it for which some mix keeps every rule.
 */
import type { Problem } from '../problem/problem.ts';
import type { Highs } from './highs.ts';
import { keeps, OuterApproximation } from './outer-approximation.ts';
import { Polytope } from './polytope.ts';
import { SOLVER_TOLERANCE } from './tolerances.ts';
import { elementAt } from './vectors.ts';
import type { WholeRation } from './whole-ration.ts';

/**
 * How far inside its span, percent, a share is put that cannot be the wanted one: at the very end one mix alone may be
 * left, which the solver's last digits can rule out.
 */
const INSIDE = 1e-7;

export interface RationShare {
  /** Percent of the ration. */
  readonly share: number;
  /** Lowest and highest for which some mix keeps every rule, the foods before it at their shares. */
  readonly span: readonly [number, number];
}

/** Whether the share of any food beside the mix is left open. */
export function leavesShareOpen({ beside }: Problem): boolean {
  return beside.some((b) => b.share_min !== undefined || b.share_max !== undefined);
}

/** Least of one column (`sign` 1) or its most (-1) over all rations within bounds; undefined where there are none. */
type End = (column: number, sign: 1 | -1, within: Pick<WholeRation, 'lower' | 'upper'>) => number | undefined;

/**
 * @param wanted shares of the ration, by row in `problem.beside`, percent
 * @returns share and span of each food beside the mix; undefined where no shares within the bounds allow a mix
 */
export function rationShares(
  highs: Highs,
  whole: WholeRation,
  wanted: readonly number[],
): RationShare[] | undefined {
  const lower = whole.lower.slice();
  const upper = whole.upper.slice();
  const { end, dispose } = endsOf(highs, whole);
  try {
    const shares: RationShare[] = [];
    for (const j of wanted.keys()) {
      const column = whole.mix.length + j;
      const within = (from: number, to: number) => ({
        lower: lower.with(column, from),
        upper: upper.with(column, to),
      });
      const [least, most] = [elementAt(lower, column), elementAt(upper, column)];
      const low = end(column, 1, { lower, upper });
      const high = low === undefined ? undefined : end(column, -1, { lower, upper });
      if (low === undefined || high === undefined) return undefined;
      const want = Math.min(most, Math.max(least, elementAt(wanted, j)));
      // Where no food is counted all possible shares are one span.
      const share = nearestTo(want, [low, high], () =>
        whole.counts.length === 0
          ? []
          : [end(column, -1, within(least, want)), end(column, 1, within(want, most))],
      );
      shares.push({ share, span: [Math.min(low, share), Math.max(high, share)] });
      lower[column] = share;
      upper[column] = share;
    }
    return shares;
  } finally {
    dispose();
  }
}

/** @param gap nearest possible shares below and above the wanted one; asked where it lies within the span */
function nearestTo(
  want: number,
  [low, high]: readonly [number, number],
  gap: () => readonly (number | undefined)[],
): number {
  const inside = Math.min(INSIDE, (high - low) / 2);
  if (want < low - SOLVER_TOLERANCE) return low + inside;
  if (want > high + SOLVER_TOLERANCE) return high - inside;
  const off = (share: number) => Math.abs(share - want);
  const [nearest = want] = gap()
    .filter((share) => share !== undefined)
    .sort((a, b) => off(a) - off(b));
  return off(nearest) <= SOLVER_TOLERANCE ? want : nearest;
}

/**
 * Ends by linear questions, and where foods are counted by mixed-integer ones; those only where the answer to the
 * linear one does not keep the counting rules all the same.
 */
function endsOf(highs: Highs, { lower, upper, bounds, given, counts, mix }: WholeRation) {
  const polytope = new Polytope(highs, lower, upper, [...bounds, ...given]);
  const end: End = (column, sign, within) => {
    polytope.setBounds(within.lower, within.upper);
    const shares = lower.map((_, i) => (i === column ? sign : 0));
    const relaxed = polytope.cheapest(shares);
    if (relaxed.status !== 'optimal') return undefined;
    if (counts.every((count) => keeps(count, relaxed.x))) return elementAt(relaxed.x, column);
    const onHand = new Float64Array(lower.length);
    const search = new OuterApproximation({
      highs,
      ...within,
      mix,
      bounds: [...bounds, ...given],
      counts,
      aims: [],
      onHand,
    });
    try {
      const picked = search.least({ shares });
      return picked && elementAt(picked.x, column);
    } finally {
      search.dispose();
    }
  };
  return { end, dispose: () => polytope.dispose() };
}
