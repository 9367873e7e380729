/** What collides in a problem that no mix can solve, and what would mend it: each remedy verified by solving again. */

import { smallestConflict } from '../explain/conflict.ts';
import { Elastic } from '../explain/elastic.ts';
import { boundsContent } from '../problem/at-pointer.ts';
import type { Problem } from '../problem/problem.ts';
import type { Loosening, Remedy } from '../problem/result.ts';
import type { Bound, LinearBound } from '../solve/bounds.ts';
import type { FormulationOptions } from '../solve/build-ration.ts';
import type { CountBound } from '../solve/counting.ts';
import { DROP_ONE } from '../solve/drop-one.ts';
import { elementAt } from '../solve/vectors.ts';
import { CountedConflict } from './counted-conflict.ts';
import { additions, loosenings, loosenTogether } from './remedies.ts';

interface CollisionQuestion {
  readonly problem: Problem;
  readonly options: FormulationOptions;
  /** Number of foods that may be used. */
  readonly n: number;
  readonly linear: readonly LinearBound[];
  readonly counts: readonly CountBound[];
  /** Whether the problem can be solved with a remedy applied. */
  mends(remedy: Remedy): boolean;
}

interface Collided {
  /** A smallest set of bounds that collide. */
  readonly bounds: readonly Bound[];
  readonly remedies: readonly Remedy[];
}

export function collided(question: CollisionQuestion): Collided {
  return collidedLinear(question) ?? collidedCounted(question);
}

/** What collides where foods are not counted; undefined where nothing does. */
function collidedLinear({
  problem,
  options,
  n,
  linear,
  counts,
  mends,
}: CollisionQuestion): Collided | undefined {
  const elastic = new Elastic(options.highs, n, linear);
  try {
    const conflict = smallestConflict(elastic, options.highs);
    if (conflict.length === 0 && counts.length > 0) return undefined;
    const bounds = conflict.map((k) => elementAt(elastic.bounds, k));
    const remedies = [
      ...loosenings(elastic, conflict),
      ...loosenTogether(elastic, problem),
      ...givingUpDropOne(bounds),
      ...additions(elastic, problem, options.reference),
    ].filter(mends);
    return { bounds, remedies: sensibly(remedies, problem) };
  } finally {
    elastic.dispose();
  }
}

function collidedCounted({ problem, options, n, linear, counts, mends }: CollisionQuestion): Collided {
  const conflict = new CountedConflict(options.highs, n, linear, counts);
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
  const sentence = 'Let the mix go out of range when one of its foods is left.';
  return [{ kind: 'loosen', pointer: DROP_ONE, from: true, to: false, sentence }];
}
