/**
 * Which further food, out of thousands, makes a problem solvable with the least share of it.
 *
 * Every answer of the linear solver carries prices. For prices that no food of the mix can profit from, and any
 * further food k that is worth `d_k` at them, a mix with a share s of it needs s d_k >= V, V the prices' own value:
 * so s >= V / d_k, and where d_k <= 0 the food cannot help at all (the lemma of Farkas). One solve so bounds every
 * food at once. Foods are tried in the order of their bound, each trial brings new prices that raise the bounds of
 * all others, and the search ends when no bound lies below the shares found. Nothing is guessed: the best food is the
 * one that solving anew with each of them would find.
 */
import type { Elastic, Trial } from '../explain/elastic.ts';
import { answered } from '../solve/highs.ts';
import { elementAt } from '../solve/vectors.ts';

interface Candidate<T> {
  readonly food: T;
  /** What one percent of it adds, as {@link Elastic.contentOf} counts it. */
  readonly content: Float64Array;
}

interface Suggestion<T> {
  readonly food: T;
  /** Least share of it that suffices, percent of the mix. */
  readonly share: number;
}

/** Foods whose bound lies this little below the best share found may be passed over, percent. */
const INDIFFERENT = 1e-7;

/** Where a confidence makes cones of the rules a trial is a problem of its own and bounds nothing: no more are made. */
const MOST_TRIALS_WITH_CONES = 10;

/**
 * The `wanted` foods that suffice with the least share, least first.
 * @param allowed asked once of a food that is about to be tried; where it says no the food is passed over
 * @param alone least share of a food worked out by itself, for where the elastic model cannot: its rows know what a
 *   further food adds to a mean, not how it spreads
 * @param tried told how many of those have been tried, of so many at the most
 */
export function leastShares<T>(
  elastic: Elastic,
  candidates: readonly Candidate<T>[],
  wanted: number,
  allowed: (food: T) => boolean = () => true,
  alone: (food: T) => number | undefined = () => undefined,
  tried: (done: number, of: number) => void = () => {},
): Suggestion<T>[] {
  const { wish } = elastic.demands;
  const answer = answered(() => elastic.solve(new Set(wish === undefined ? [] : [wish])));
  if (!answer) return [];
  const bounds = new Float64Array(candidates.length);
  const raise = (prices: ArrayLike<number>, worth: number) => {
    for (const [k, { content }] of candidates.entries()) {
      const before = elementAt(bounds, k);
      if (before === Number.POSITIVE_INFINITY) continue;
      let gain = 0;
      for (let row = 0; row < content.length; row++) gain += content[row]! * prices[row]!;
      const bound = gain > 1e-12 ? worth / gain : Number.POSITIVE_INFINITY;
      if (bound > before) bounds[k] = bound;
    }
  };
  raise(elastic.byContent(answer.prices), answer.total);
  const found: Suggestion<T>[] = [];
  const most = elastic.hasCones ? MOST_TRIALS_WITH_CONES : Number.POSITIVE_INFINITY;
  for (let trials = 0; trials < most; trials++) {
    let next = -1;
    for (let k = 0; k < bounds.length; k++) if (next < 0 || bounds[k]! < bounds[next]!) next = k;
    if (next < 0) break;
    const least = elementAt(bounds, next);
    const last = found[wanted - 1]?.share ?? Number.POSITIVE_INFINITY;
    if (least > 100 || least > last - INDIFFERENT) break;
    const { food, content } = elementAt(candidates, next);
    bounds[next] = Number.POSITIVE_INFINITY;
    if (!allowed(food)) continue;
    const trial: Trial = elastic.hasCones ? { share: alone(food), worth: 0 } : elastic.leastShare(content);
    if (elastic.hasCones) tried(trials + 1, most);
    if (trial.share !== undefined) {
      found.push({ food, share: trial.share });
      found.sort((a, b) => a.share - b.share);
      found.length = Math.min(found.length, wanted);
    }
    if (trial.prices && trial.worth > 0) raise(trial.prices, trial.worth);
  }
  return found;
}
