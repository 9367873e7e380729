/**
 * What a food is taken to hold of one nutrient when several sources speak of it.
 *
 * **The value** is the random-effects mean (`random-effects.ts`), or the figure of the source that the keeper chose.
 * A source's figure, a mean of n samples with sd s between them, has variance s^2 / n; where n is unknown it counts
 * as one sample.
 *
 * **The sd is that of the next bag, not of the mean.** A bag holds mu + b + e: mu the food's mean, b how its origin
 * lies off it (variance tau2 between sources) and e how bags of one origin differ (variance s^2; the mean of the
 * sources' s^2, all origins being as likely). What is formulated with is the estimate m of mu, so the bag misses it by
 * (mu - m) + b + e, three independent parts, and
 *
 *     sd^2 = Var(m) + tau2 + mean s^2
 *
 * A single source is taken as it stands: its sd is what such bags are printed to spread by.
 *
 * More sources shrink only the first. The squares are right on average, as a mix of many foods adds them up; tau2 from a
 * few sources is itself unsure, so a single food's 90 % interval holds somewhat less (86 % of bags in trials with eight).
 * With one source tau2 cannot be known and counts as 0.
 */

import type { Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { randomEffects } from './random-effects.ts';
import { boundsBy, type FoodSource, type Known, knownBy } from './source.ts';

/** The mean of all sources, or the id of the one to follow. */
export type Choice = 'mean' | (string & {});

export interface Combined {
  /** Per 100 g as fed, in the unit of the tagname. */
  readonly value: number;
  /** Standard deviation of the next bag around the value. */
  readonly sd: number;
  /** Standard error of the value as an estimate of the food's mean. */
  readonly se: number;
  /** What the sources guarantee together; absent where none does, or where they contradict one another. */
  readonly low?: number;
  readonly high?: number;
  /** Sources that know the amount. */
  readonly k: number;
  readonly method: 'single' | 'random effects' | 'chosen';
  readonly tau2: number;
  readonly q: number;
  /** Part of each source in the value, sum 1. */
  readonly weights: readonly { readonly id: string; readonly weight: number }[];
  /** In words, which sources and how. */
  readonly source: string;
}

/**
 * Combines what the sources say of one nutrient. Undefined where no source knows it, or where the chosen one does not:
 * unknown stays unknown. Bounds come from the chosen source alone, or from all.
 * @param group the food's group, for the spread of figures that print none
 * @throws RangeError when the chosen id is none of the sources, or a figure is no amount
 */
export function combine(
  tag: Tag,
  sources: readonly FoodSource[],
  choice: Choice,
  group: string | undefined,
): Combined | undefined {
  const all = knownBy(sources, tag, group);
  const followed = choice === 'mean' ? sources : [chosenFrom(sources, choice, tag)];
  const known = choice === 'mean' ? all : knownBy(followed, tag, group);
  const [first, ...others] = known;
  if (!first) return undefined;

  const { mean, se, tau2, q, weights } = randomEffects(
    known.map((s) => s.value),
    known.map((s) => s.sd ** 2 / s.n),
  );
  const within = meanOf(known.map((s) => s.sd ** 2));
  const { low, high, contradictory } = boundsBy(followed, tag);
  const method = choice !== 'mean' ? 'chosen' : known.length === 1 ? 'single' : 'random effects';
  return {
    value: mean,
    sd: others.length === 0 ? first.sd : Math.sqrt(se ** 2 + tau2 + within),
    se,
    ...(low !== undefined && { low }),
    ...(high !== undefined && { high }),
    k: all.length,
    method,
    tau2,
    q,
    weights: known.map((s, i) => ({ id: s.source.id, weight: weights[i]! })),
    source: inWords(method, known, contradictory),
  };
}

/** The source with that id. Throws RangeError when there is none. */
export function chosenFrom(sources: readonly FoodSource[], id: string, tag: Tag): FoodSource {
  const found = sources.find((s) => s.id === id);
  if (!found) {
    const ids = sources.map((s) => s.id).join(', ') || 'none';
    throw new RangeError(`choice for ${tag}: no source "${id}"; choose "mean" or one of: ${ids}`);
  }
  return found;
}

function inWords(method: Combined['method'], known: readonly Known[], contradictory: boolean): string {
  const names = known.map((s) => s.source.name).join('; ');
  const t = words().foodForms.combined;
  const said =
    method === 'random effects' ? t.mean(known.length, names) : method === 'chosen' ? t.chosen(names) : names;
  return contradictory ? t.contradictory(said) : said;
}

function meanOf(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b).reduce((sum, v) => sum + v, 0) / values.length;
}
