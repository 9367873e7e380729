/**
 * What to make of left-overs, gently: how to offer, what to change, and when a vet should look. No diagnosis, and never
 * that a small rodent should be kept short until it eats.
 */
import type { Range } from './pile.ts';
import type { SortingIndex } from './sorting-index.ts';

/** What was taken in one night, or in several that were looked at together. */
export interface NightTaken {
  /** g a night. */
  readonly taken: Range;
  /** Whether more lay there than was offered: then the weights say nothing. */
  readonly doubtful?: boolean;
}

/** One piece of advice; the screen has the words. */
export type Advice =
  /** It took much less than usual: a vet should see it. g taken at the most, and usual a night where that is known. */
  | {
      readonly kind: 'vet';
      readonly soon: 'today' | 'tomorrow';
      readonly taken: number;
      readonly usual?: number;
    }
  /** Some foods are picked out: offer less of them at a time, and the rest will be eaten too. */
  | { readonly kind: 'less'; readonly foods: readonly string[] }
  /** Some foods stay: smaller portions scattered, or another form, or less of them in the next mix. */
  | { readonly kind: 'change'; readonly foods: readonly string[] }
  /** Smaller portions, scattered. */
  | { readonly kind: 'scatter' }
  /** Look for hoards: what was taken is not what was eaten. */
  | { readonly kind: 'hoard' }
  /** Never short rations, never waiting till it eats. */
  | { readonly kind: 'never-starve' };

/** Nights that tell what is usual, and the fewest that do. */
const USUAL = { most: 14, least: 3 } as const;
/** Less than this part of the usual is "much less" (common practice, no source). */
const MUCH_LESS = 0.5;
/** Less than this part, or nothing at all, and a vet should see it the same day (common practice, no source). */
const HARDLY = 0.25;
/** Foods that one piece of advice names at the most. */
const NAMED = 5;
/** g: nothing but crumbs. */
const CRUMBS = 0.2;

/**
 * @param nights the last one last @param indices of all foods
 * @param p.hoard whether hoards were looked for after any of the nights
 */
export function adviceOn(
  nights: readonly NightTaken[],
  indices: readonly SortingIndex[],
  p: { readonly hoard: boolean },
): Advice[] {
  const vet = vetAdvice(nights);
  const by = (leaning: SortingIndex['leaning']) =>
    indices.filter((i) => i.leaning === leaning).sort((a, b) => a.value - b.value);
  const left = by('left')
    .slice(0, NAMED)
    .map((i) => i.food);
  const ahead = by('picked').map((i) => i.food);
  // Where nearly all is taken but for a few, it is those few that matter.
  const picked = ahead.length > NAMED ? [] : ahead.reverse();
  return [
    ...(vet ? [vet] : []),
    ...(picked.length > 0 ? [{ kind: 'less', foods: picked } as const] : []),
    ...(left.length > 0 ? [{ kind: 'change', foods: left } as const] : []),
    ...(picked.length + left.length > 0 ? [{ kind: 'scatter' } as const] : []),
    ...(vet || picked.length + left.length > 0 ? [{ kind: 'never-starve' } as const] : []),
    ...(!p.hoard && nights.length > 0 ? [{ kind: 'hoard' } as const] : []),
  ];
}

/**
 * A small rodent that hardly eats for a day is in danger (common practice, no source): much less than usual on the last
 * night calls for a vet, at once where it is hardly anything or the night before was as bad. What it took counts at its
 * most, so that nobody is alarmed by what merely was not sorted.
 */
function vetAdvice(all: readonly NightTaken[]): Advice | undefined {
  const nights = all.filter((n) => !n.doubtful);
  const last = all.at(-1);
  if (!last || last.doubtful) return undefined;
  const taken = last.taken.high;
  const usual = usualOf(nights.slice(0, -1));
  if (usual === undefined) return taken <= CRUMBS ? { kind: 'vet', soon: 'today', taken } : undefined;
  if (taken >= MUCH_LESS * usual) return undefined;
  const before = nights.at(-2);
  const usualBefore = usualOf(nights.slice(0, -2));
  const twice =
    before !== undefined && usualBefore !== undefined && before.taken.high < MUCH_LESS * usualBefore;
  const soon = taken <= Math.max(CRUMBS, HARDLY * usual) || twice ? 'today' : 'tomorrow';
  return { kind: 'vet', soon, taken, usual };
}

/** What it takes a night, g: the median of the last nights; undefined where there are too few. */
function usualOf(nights: readonly NightTaken[]): number | undefined {
  const taken = nights
    .slice(-USUAL.most)
    .map((n) => (n.taken.low + n.taken.high) / 2)
    .sort((a, b) => a - b);
  if (taken.length < USUAL.least) return undefined;
  const middle = Math.floor(taken.length / 2);
  const upper = taken[middle] ?? 0;
  return taken.length % 2 === 1 ? upper : ((taken[middle - 1] ?? upper) + upper) / 2;
}
