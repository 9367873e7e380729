/**
 * A share asked of one food: what stands in its way, and which foods it would leave with nothing. The answer belongs to
 * the food's own row, so it names limits by their place in the problem and leaves the words to whoever shows it.
 */
import type { Shares } from '../problem/problem.ts';
import type { Bound } from '../solve/bounds.ts';
import { allBounds, byColumn, type MixModel } from '../solve/mix-model.ts';
import type { Span } from '../solve/mix-solver.ts';
import { AT_BOUND } from '../solve/tolerances.ts';
import { elementAt } from '../solve/vectors.ts';

/** A share under this, percent, is shown as 0; one from the second on is worth a word where it would go. */
const SHOWN = 0.05;
const NOTABLE = 0.2;
/** Shares nearer than this, percent, are read as the same. */
const SAME = 0.05;
const MOST_LIMITS = 2;

/** One limit that the share asked for would break. */
export interface AskLimit {
  /** JSON pointer into the problem: of a rule's bound, of a food's own bound, or of a food for its caution. */
  readonly pointer: string;
  readonly side: 'min' | 'max';
  readonly bound: number;
  readonly unit: string;
  /** What the limit is about, in words; of a caution that several foods share too, which no pointer tells. */
  readonly subject: string;
  /** Whether it is a caution's. */
  readonly caution: boolean;
}

export interface AskAnswer {
  /** Whether some mix with the held shares has the share that was asked; undefined where that is too long a search. */
  readonly possible: boolean | undefined;
  /** What the share would break: limits that collide with it, or with the other foods in their present proportion. */
  readonly limits: readonly AskLimit[];
  /** Whether it would not break them, but come nearer to them than the margin of the mix allows. */
  readonly near: boolean;
}

interface AskQuestion {
  readonly model: MixModel;
  readonly shares: Shares;
  /** Shares that stay where they are, percent by food id. */
  readonly held: Shares;
  readonly food: string;
  /** Percent of the mix. */
  readonly wanted: number;
  /** How far the food may move while the held shares stay; undefined where that is too long a search. */
  span(column: number): Span | undefined;
  /** What collides with the share that was asked, the held shares kept; undefined where that is too long a search. */
  collides(): readonly Bound[] | undefined;
  /** The bounds with the margin that the best mix keeps; none where it keeps none. */
  margin(): readonly Bound[];
}

/** @throws RangeError where the food is none that the mix may be made of */
export function answerToAsk(question: AskQuestion): AskAnswer {
  const { model, food, wanted } = question;
  const column = model.ration.foods.findIndex((f) => f.id === food);
  if (column < 0) throw new RangeError(`"${food}" is no food that this mix may be made of`);
  const span = question.span(column);
  // Outwards by as much as two shares are read as the same: what is shown as reached is reached.
  const possible = span && wanted >= span[0] - SAME && wanted <= span[1] + SAME;
  const own = ownLimit(model, column, wanted);
  if (own) return { possible: false, limits: [own], near: false };
  const others = inProportion(question, column);
  const broken = (bounds: readonly Bound[]) =>
    limitsOf(others ? bounds.filter((b) => breaks(b, others)) : [], model, column);
  if (possible === false) {
    const colliding = question.collides();
    return {
      possible,
      limits: colliding ? limitsOf(colliding, model, column) : broken(allBounds(model)),
      near: false,
    };
  }
  const limits = broken(allBounds(model));
  if (limits.length > 0) return { possible, limits, near: false };
  const near = broken(question.margin());
  return { possible, limits: near, near: near.length > 0 };
}

/** The keeper's own least or most share of the food, where that alone refuses what is asked. */
function ownLimit({ problem, open, ration }: MixModel, column: number, wanted: number): AskLimit | undefined {
  const row = elementAt(open, column);
  const { min = 0, max = 100 } = elementAt(problem.foods, row);
  const side = wanted > max + SAME ? 'max' : wanted < min - SAME ? 'min' : undefined;
  if (side === undefined) return undefined;
  const { name } = elementAt(ration.foods, column);
  const bound = side === 'max' ? max : min;
  return { pointer: `/foods/${row}/${side}`, side, bound, unit: '%', subject: name, caution: false };
}

/** The mix with the share asked for, held shares kept and the others in their present proportion, by column. */
function inProportion(
  { model, shares, held, wanted }: AskQuestion,
  column: number,
): Float64Array | undefined {
  const x = byColumn(model, shares);
  const stays = (i: number) => i === column || held[elementAt(model.ration.foods, i).id] !== undefined;
  let kept = wanted;
  let free = 0;
  x.forEach((share, i) => {
    if (i !== column && stays(i)) kept += share;
    else if (i !== column) free += share;
  });
  if (free <= 0 || kept > 100) return undefined;
  return x.map((share, i) => (i === column ? wanted : stays(i) ? share : (share * (100 - kept)) / free));
}

function breaks({ value, bound, side }: Bound, x: Float64Array): boolean {
  const actual = value(x);
  const room = side === 'min' ? actual - bound : bound - actual;
  return !(room >= -AT_BOUND * Math.max(1, Math.abs(bound)));
}

/** Limits to speak of, those of the target first: not the bounds by which the share itself was asked. */
function limitsOf(bounds: readonly Bound[], { open }: MixModel, column: number): AskLimit[] {
  const itself = `/foods/${elementAt(open, column)}/`;
  const rank = ({ pointer }: Bound) => (pointer.startsWith('/rules/') ? 0 : 1);
  return bounds
    .filter((b) => !b.pointer.startsWith(itself))
    .sort((a, b) => rank(a) - rank(b))
    .slice(0, MOST_LIMITS)
    .map(({ pointer, side, bound, unit, subject, because }) => ({
      pointer,
      side,
      bound,
      unit,
      subject,
      caution: because !== undefined,
    }));
}

/**
 * Foods that had a share and would have none.
 * @param from shares as they are, percent by food id @param to as they would be; a food it does not name keeps its own
 * @param asked the food of which the share was asked: that it goes to 0 was meant
 */
export function emptiedBy(from: Shares, to: Shares, asked: string): string[] {
  return Object.keys(from).filter(
    (id) => id !== asked && (from[id] ?? 0) >= NOTABLE && (to[id] ?? from[id] ?? 0) < SHOWN,
  );
}
