/**
 * Shares to grams on the scale: whole steps, the batch exact, every rule kept, nearest to the shares (least sum of
 * squares). {@link nearestSteps} looks for them; here a problem's bounds become its rows.
 */
import { words } from '../../words/words.ts';
import type { Row } from './bounds.ts';
import type { CountBound } from './counting.ts';
import { type BoxLimits, nearestSteps, type StepCount } from './nearest-steps.ts';
import type { Curve } from './polytope.ts';
import type { StepRow } from './steps-proof.ts';
import { AT_BOUND, STEPS_TOLERANCE, WHOLE_STEP } from './tolerances.ts';

export interface GramsQuestion {
  /** Shares in percent. */
  readonly shares: ArrayLike<number>;
  readonly lower: ArrayLike<number>;
  readonly upper: ArrayLike<number>;
  readonly batchGrams: number;
  readonly stepGrams: number;
  /** Whether shares keep every rule. */
  readonly holds: (shares: ArrayLike<number>) => boolean;
  /** Rows over the shares, and what is curved, that `holds` asks for: the search goes by them. */
  readonly rows: readonly Row[];
  readonly curves?: readonly Curve[];
  /** Counting bounds that `holds` asks for. */
  readonly counts?: readonly CountBound[];
  /** Where less will do than a proof up to 15 foods. */
  readonly mostBoxes?: BoxLimits;
}

/** `least`: no whole steps that keep the rules have a lower sum of squares, in steps. */
interface StepsAnswer {
  readonly steps: number[];
  readonly squares: number;
  readonly least: number;
  readonly proven: boolean;
}
interface NoSteps {
  readonly conflict: string;
  /** There are none; otherwise none were found. */
  readonly proven: boolean;
}

/** Up to so many foods the nearest are proven, but for problems made to be hard. */
const FEW_FOODS = 15;
/** Boxes of the search. */
const MOST_BOXES = { toFind: 60_000, toProve: 60_000 };
/** The same with more foods: once there are grams, what is left to gain is small. */
const MOST_BOXES_OF_MANY = { toFind: 2000, toProve: 1500 };

/** @returns whole steps per food adding up to the batch, or that there are none, or that none were found */
export function roundToSteps(question: GramsQuestion): StepsAnswer | NoSteps {
  const { shares, lower, upper, batchGrams, stepGrams, rows, curves = [], counts = [] } = question;
  const total = Math.round(batchGrams / stepGrams);
  if (Math.abs(total * stepGrams - batchGrams) > 1e-9 * batchGrams || total === 0) {
    return {
      conflict: words().formulation.grams.noMultiple(batchGrams, stepGrams),
      proven: true,
    };
  }
  const toSteps = (percent: number) => (percent / 100) * total;
  const up = (percent: number) => Math.ceil(toSteps(percent) - WHOLE_STEP);
  const back = (steps: Float64Array) => steps.map((k) => (100 * k) / total);
  const { mostBoxes = shares.length <= FEW_FOODS ? MOST_BOXES : MOST_BOXES_OF_MANY } = question;
  const found = nearestSteps({
    target: Float64Array.from(shares, toSteps),
    low: Float64Array.from(lower, up),
    high: Float64Array.from(upper, (percent) => Math.floor(toSteps(percent) + WHOLE_STEP)),
    total,
    least: leastUsed(shares.length, counts, up),
    rows: rows.flatMap((row) => stepRow(row, total)),
    counts: counts.flatMap((count) => stepCount(count, up)),
    planesAt(steps, by) {
      const x = back(steps);
      const missed = STEPS_TOLERANCE + (100 * by) / total;
      return curves.flatMap((curve) => {
        const plane = curve.shortfall(x) > missed ? curve.tangent(x) : undefined;
        return plane ? stepRow(plane, total) : [];
      });
    },
    keeps: (steps) => question.holds(back(steps)),
    mostBoxes,
  });
  if (found.steps) {
    const { squares, least, proven } = found;
    return { steps: Array.from(found.steps), squares, least, proven };
  }
  const t = words().formulation.grams;
  const conflict = found.proven
    ? t.none(batchGrams, stepGrams)
    : t.notFound(batchGrams, stepGrams, mostBoxes.toFind);
  return { conflict, proven: found.proven };
}

/** A row over shares as a row over steps; none where it asks nothing. */
function stepRow({ g, h }: Row, total: number): StepRow[] {
  let scale = 0;
  for (const v of g) scale = Math.max(scale, Math.abs(v));
  const most = h - STEPS_TOLERANCE;
  if (scale === 0) return most > 0 ? [{ a: g, h: most }] : [];
  const a = g.map((v) => v / scale);
  const least = ((most / scale) * total) / 100;
  // A sum of whole steps is whole.
  const one = a.find((v) => v !== 0);
  const whole = a.every((v) => v === 0 || v === one);
  return [{ a, h: whole ? Math.ceil(least - WHOLE_STEP) : least }];
}

/** What a food has at the least where it is used, in steps. */
function leastUsed(n: number, counts: readonly CountBound[], up: (percent: number) => number): Float64Array {
  const least = new Float64Array(n);
  for (const { counts: kind, columns, atLeast } of counts) {
    if (kind !== 'used') continue;
    for (const c of columns) least[c] = Math.max(least[c] ?? 0, up(atLeast));
  }
  return least;
}

function stepCount(count: CountBound, up: (percent: number) => number): StepCount[] {
  const { counts, columns, bound, atLeast } = count;
  if (counts === 'some')
    return [
      { counts, columns, atLeast: up(atLeast - AT_BOUND), number: Math.ceil(bound * (1 - WHOLE_STEP)) },
    ];
  return counts === 'few' ? [{ counts, columns, atLeast: 0, number: Math.floor(bound) }] : [];
}
