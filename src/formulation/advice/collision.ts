/** What collides in a problem that no mix can solve, and what would mend it: each remedy verified by solving again. */

import { words } from '../../words/words.ts';
import { smallestConflict } from '../explain/conflict.ts';
import { Elastic } from '../explain/elastic.ts';
import { boundsContent } from '../problem/at-pointer.ts';
import type { Problem } from '../problem/problem.ts';
import type { Tell } from '../problem/progress.ts';
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
  /** Told what collides, and the remedies verified so far. */
  readonly tell?: Tell<Collided> | undefined;
}

/** Further foods that are named where foods are counted. */
const MOST_NAMED = 5;

export interface Collided {
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
    return smallestConflict(elastic).map((k) => elastic.demands.spoken(k));
  } finally {
    elastic.dispose();
  }
}

/** What collides where foods are not counted; undefined where nothing does. */
function collidedLinear(question: CollisionQuestion): Collided | undefined {
  const { problem, options, asked, tell } = question;
  const elastic = new Elastic(options.highs, asked);
  try {
    tell?.({ doing: 'conflict' });
    const conflict = smallestConflict(elastic);
    if (conflict.length === 0 && asked.counts.length > 0) return undefined;
    const bounds = conflict.map((k) => elastic.demands.spoken(k));
    const mended = new Mended(question, bounds);
    mended.verify(loosened(elastic, conflict, question));
    mended.verify(loosenTogether(elastic, problem));
    mended.verify(givingUpDropOne(bounds));
    const tried = (done: number, of: number) => mended.told({ done, of });
    mended.verify(additions(elastic, problem, options.reference, question.leastShare, tried));
    return mended.collided;
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

function collidedCounted(question: CollisionQuestion): Collided {
  const { problem, options, asked, tell } = question;
  const conflict = new CountedConflict(options.highs, asked, undefined, (done, of) =>
    tell?.({ doing: 'conflict', done, of }),
  );
  const mended = new Mended(question, conflict.bounds);
  mended.verify(conflict.loosenings());
  mended.verify(givingUpDropOne(conflict.bounds));
  mended.verify(conflict.additions(problem, options.reference), MOST_NAMED);
  return mended.collided;
}

/** Remedies of a conflict, verified one after the other and told of. */
class Mended {
  private readonly question: CollisionQuestion;
  private readonly bounds: readonly Bound[];
  private readonly remedies: Remedy[] = [];

  constructor(question: CollisionQuestion, bounds: readonly Bound[]) {
    this.question = question;
    this.bounds = bounds;
    this.told();
  }

  /** Keeps those that mend, up to so many. */
  verify(remedies: readonly Remedy[], most = Number.POSITIVE_INFINITY): void {
    let kept = 0;
    for (const remedy of remedies) {
      if (kept === most) return;
      if (!this.question.mends(remedy)) continue;
      this.remedies.push(remedy);
      kept++;
      this.told();
    }
  }

  get collided(): Collided {
    return { bounds: this.bounds, remedies: sensibly(this.remedies, this.question.problem) };
  }

  told(steps: { readonly done?: number; readonly of?: number } = {}): void {
    this.question.tell?.({ doing: 'remedies', found: this.collided, ...steps });
  }
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
