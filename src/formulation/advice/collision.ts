/** What collides in a problem that no mix can solve, and what would mend it: each remedy verified by solving again. */

import { words } from '../../words/words.ts';
import { smallestConflict } from '../explain/conflict.ts';
import { Elastic } from '../explain/elastic.ts';
import { boundsContent } from '../problem/at-pointer.ts';
import type { Problem } from '../problem/problem.ts';
import type { Addition, Loosening, Remedy } from '../problem/result.ts';
import type { Bound } from '../solve/bounds.ts';
import type { FormulationOptions } from '../solve/build-ration.ts';
import { DROP_ONE } from '../solve/drop-one.ts';
import type { RuleSet } from '../solve/integer-question.ts';
import { CountedConflict } from './counted-conflict.ts';
import { additions, change, loosenings, loosenTogether } from './remedies.ts';

interface CollisionQuestion {
  readonly problem: Problem;
  readonly options: FormulationOptions;
  readonly asked: RuleSet;
  /** Whether the problem can be solved with a remedy applied. */
  mends(remedy: Remedy): boolean;
  /** Least share of the food added that suffices, percent of the mix; undefined where it does not help. */
  leastShare(added: Addition): number | undefined;
}

interface Collided {
  /** A smallest set of bounds that collide. */
  readonly bounds: readonly Bound[];
  readonly remedies: readonly Remedy[];
}

export function collided(question: CollisionQuestion): Collided {
  return collidedLinear(question) ?? collidedCounted(question);
}

/** A smallest set of bounds that collide, where foods are not counted. */
export function colliders(highs: FormulationOptions['highs'], asked: RuleSet): readonly Bound[] {
  const elastic = new Elastic(highs, asked);
  try {
    return smallestConflict(elastic, highs).map((k) => elastic.demands.spoken(k));
  } finally {
    elastic.dispose();
  }
}

/** What collides where foods are not counted; undefined where nothing does. */
function collidedLinear(question: CollisionQuestion): Collided | undefined {
  const { problem, options, asked, mends } = question;
  const elastic = new Elastic(options.highs, asked);
  try {
    const conflict = smallestConflict(elastic, options.highs);
    if (conflict.length === 0 && asked.counts.length > 0) return undefined;
    const bounds = conflict.map((k) => elastic.demands.spoken(k));
    const remedies = [
      ...loosened(elastic, conflict, question),
      ...loosenTogether(elastic, problem),
      ...givingUpDropOne(bounds),
      ...additions(elastic, problem, options.reference, question.leastShare),
    ].filter(mends);
    return { bounds, remedies: sensibly(remedies, problem) };
  } finally {
    elastic.dispose();
  }
}

/**
 * Every bound of a conflict whose loosening suffices. Of what is counted the elastic model knows nothing, so there it tells
 * the least by which a bound must give way in any case; only where that is not enough is it sought with what is counted.
 */
function loosened(
  elastic: Elastic,
  conflict: readonly number[],
  { options, asked, mends }: CollisionQuestion,
): Loosening[] {
  const least = loosenings(elastic, conflict);
  if (asked.counts.length === 0) return least;
  const enough = least.filter(mends);
  const short = new Set(least.filter((l) => !enough.includes(l)).map((l) => l.pointer));
  const bounds = elastic.bounds.filter((b) => short.has(b.pointer));
  if (bounds.length === 0) return enough;
  const further = new CountedConflict(options.highs, asked, bounds).loosenings();
  return [...enough, ...further].sort((a, b) => change(a) - change(b));
}

function collidedCounted({ problem, options, asked, mends }: CollisionQuestion): Collided {
  const conflict = new CountedConflict(options.highs, asked);
  const remedies = [...conflict.loosenings(), ...givingUpDropOne(conflict.bounds)].filter(mends);
  return {
    bounds: conflict.bounds,
    remedies: sensibly([...remedies, ...conflict.additions(problem, options.reference, mends)], problem),
  };
}

/** What the keeper asked for gives way first, then a food may come in, and the animal's target gives way last. */
function sensibly(remedies: readonly Remedy[], problem: Problem): Remedy[] {
  const rank = (remedy: Remedy) => {
    if (remedy.kind === 'add') return 1;
    const changes = remedy.kind === 'loosen' ? [remedy] : remedy.changes;
    return changes.some((c) => boundsContent(problem, c.pointer)) ? 2 : 0;
  };
  return [...remedies].sort((a, b) => rank(a) - rank(b));
}

/** Where it is the wish to be safe against any one food being left that collides, that wish may be given up. */
function givingUpDropOne(conflict: readonly Bound[]): Loosening[] {
  if (!conflict.some((s) => s.pointer === DROP_ONE)) return [];
  return [{ kind: 'loosen', pointer: DROP_ONE, from: true, to: false, sentence: words().advice.dropOne }];
}
