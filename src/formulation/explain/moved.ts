/** One share moved, the others as near to where they were as the rules allow. */
import type { Shares } from '../problem/problem.ts';
import { ContinuousMixSolver } from '../solve/continuous-mix-solver.ts';
import { byColumn, type MixModel } from '../solve/mix-model.ts';
import type { Found, MixQuestion, MixSolver, Pins, Span } from '../solve/mix-solver.ts';
import { boundsAt, keeps } from '../solve/outer-approximation.ts';
import { NO_SHARE } from '../solve/tolerances.ts';
import { elementAt } from '../solve/vectors.ts';

/** How far inside its span, percent, a share comes to stand where a confidence bounds the span. */
const INSIDE = 1e-6;
/** A share this near to the one asked for, percent, is that share. */
const SAME_SHARE = 1e-6;

export interface Move {
  /** Percent by food id. */
  readonly from: Shares;
  readonly held: Shares;
  /** Id of the food whose slider moves; it is held at `held[moving]`. */
  readonly moving?: string | undefined;
}

/** A mix with the spans of its shares while the holds stand; or the holds that leave none. */
export type Moved = { readonly found: Found; readonly spans: readonly Span[] } | { readonly tight: Pins };

/** @param within the bounds of each share that `solver` was made with */
export function moved(
  model: MixModel,
  solver: MixSolver,
  within: Pick<MixQuestion, 'lower' | 'upper'>,
  move: Move,
): Moved {
  const { from, held, moving } = move;
  const target = byColumn(model, from);
  const pins = pinsOf(model, within, move);
  const spans = solver.spans(pins);
  const fixed = new Map(pins);
  const column = model.ration.foods.findIndex((f) => f.id === moving);
  if (moving !== undefined && column >= 0) {
    const [low, high] = elementAt(spans, column);
    if (Number.isNaN(low)) return { tight: pins };
    // At the very end of a span that a confidence bounds the mix is a point, which arithmetic may miss.
    const inside = model.rounded ? Math.min(INSIDE, (high - low) / 2) : 0;
    const share = held[moving] ?? elementAt(target, column);
    fixed.set(column, Math.min(high - inside, Math.max(low + inside, share)));
  }
  for (const [i, share] of fixed) target[i] = share;
  const found = solver.nearest(target, fixed);
  return found ? { found, spans } : { tight: pins };
}

/** The shares held, by column, but for the one that moves. */
function pinsOf(
  { ration }: MixModel,
  { lower, upper }: Pick<MixQuestion, 'lower' | 'upper'>,
  { held, moving }: Move,
): Map<number, number> {
  const pins = new Map<number, number>();
  ration.foods.forEach((f, i) => {
    const share = held[f.id];
    if (share !== undefined && f.id !== moving)
      pins.set(i, Math.min(elementAt(upper, i), Math.max(elementAt(lower, i), share)));
  });
  return pins;
}

/**
 * Moves at once where foods are counted: without a search for which of them are in. Solvers stay warm from one move to
 * the next.
 */
export class QuickMoves {
  private readonly model: MixModel;
  private free: ContinuousMixSolver | undefined;
  private kept:
    | { readonly key: string; readonly question: MixQuestion; solver: ContinuousMixSolver }
    | undefined;

  constructor(model: MixModel) {
    this.model = model;
  }

  dispose(): void {
    this.free?.dispose();
    this.kept?.solver.dispose();
  }

  /**
   * The nearest mix as if foods were not counted, where it keeps what is counted all the same; else the nearest with the
   * foods that are in `from`, where the share asked for can be had so; else the first of these, which breaks rules
   * that count foods.
   */
  moved(move: Move): Moved {
    const { question } = this.model;
    this.free ??= new ContinuousMixSolver(uncounted(question));
    const free = moved(this.model, this.free, question, move);
    if ('tight' in free || question.counts.every((c) => keeps(c, free.found.x))) return free;
    const same = this.withSameFoods(move);
    if ('tight' in same || !question.counts.every((c) => keeps(c, same.found.x))) return free;
    const column = this.model.ration.foods.findIndex((f) => f.id === move.moving);
    const apart = column < 0 ? 0 : elementAt(same.found.x, column) - elementAt(free.found.x, column);
    return Math.abs(apart) <= SAME_SHARE ? same : free;
  }

  /**
   * The nearest mix that keeps what is counted too, found by `solver`; how far the share may move is sought only where no
   * mix has the share asked for.
   */
  settled(move: Move, solver: MixSolver): Moved {
    const { model } = this;
    const { question } = model;
    const column = model.ration.foods.findIndex((f) => f.id === move.moving);
    const share = move.moving === undefined ? undefined : move.held[move.moving];
    if (column >= 0 && share === undefined) return moved(model, solver, question, move);
    // Held as the others are.
    const pins = pinsOf(model, question, { ...move, moving: undefined });
    const target = byColumn(model, move.from);
    for (const [i, pin] of pins) target[i] = pin;
    const found = solver.nearest(target, pins);
    return found ? { found, spans: this.freeSpans(move) } : moved(model, solver, question, move);
  }

  private freeSpans(move: Move): readonly Span[] {
    const { question } = this.model;
    this.free ??= new ContinuousMixSolver(uncounted(question));
    return this.free.spans(pinsOf(this.model, question, move));
  }

  /** With the foods that have a share staying in, each with the least that is counted, and the others out. */
  private withSameFoods(move: Move): Moved {
    const { question } = this.model;
    const x = byColumn(this.model, move.from);
    const { lower, upper } = boundsAt(question, x);
    const key = Array.from(x, (share, i) => (share > NO_SHARE ? elementAt(lower, i) : '-')).join();
    if (this.kept?.key !== key) {
      this.kept?.solver.dispose();
      const narrowed = { ...uncounted(question), lower, upper };
      this.kept = { key, question: narrowed, solver: new ContinuousMixSolver(narrowed) };
    }
    return moved(this.model, this.kept.solver, this.kept.question, move);
  }
}

const uncounted = (question: MixQuestion): MixQuestion => ({ ...question, counts: [], aims: [] });
