/** What a correction is asked, and between which grams and totals the batch may end. */
import type { Highs } from '../../formulation/solve/highs.ts';
import { elementAt } from '../../formulation/solve/vectors.ts';
import { withoutFloatNoise } from '../rounding.ts';
import { CRUMB, NEAR_STEP } from '../tolerances.ts';
import { type BatchRules, sum } from './batch-rules.ts';

/** A batch that comes out within this part of its planned weight is as large as planned. Our choice, no source. */
export const TOTAL_SLACK = 0.02;
/** Least part of its planned weight that a batch is brought down to so that it stays in range. Our choice, no source. */
const LEAST_TOTAL = 0.9;

/** The batch as planned, and what it may become. */
export interface CorrectionQuestion {
  readonly highs: Highs;
  readonly rules: BatchRules;
  /** Planned grams by column, whole steps. */
  readonly plan: Float64Array;
  readonly plannedTotal: number;
  readonly stepGrams: number;
  /** The most the batch may take of each food in all, g: what the lots held when it began. */
  readonly stock: Float64Array;
  /** The most the batch may come to, g. */
  readonly mostGrams: number;
  /** Whether more may be poured of foods that were poured before. */
  readonly goBack: boolean;
  /** Least grams of each food that was planned and is not poured yet: one step of the scale, 0 where it may be left out. */
  readonly least: Float64Array;
}

/** What lies in the bowl, g by column, and which foods have been poured (0 g of it poured: it is left out). */
export interface Bowl {
  readonly grams: Float64Array;
  readonly poured: readonly boolean[];
}

/** Least and most grams of each food in the end, by column. */
interface Grams {
  readonly lower: Float64Array;
  readonly upper: Float64Array;
}

/** Least and most that the batch may weigh in the end, g. */
export function totalsOf({ plannedTotal, mostGrams }: CorrectionQuestion, bowl: Bowl): [number, number] {
  const inBowl = sum(bowl.grams);
  return [Math.max(inBowl, plannedTotal * LEAST_TOTAL), Math.max(inBowl, mostGrams)];
}

/** The total within which a batch counts as large as planned, g. */
export function plannedTotalsOf({ plannedTotal }: CorrectionQuestion, bowl: Bowl): [number, number] {
  const inBowl = sum(bowl.grams);
  return [
    Math.max(inBowl, plannedTotal * (1 - TOTAL_SLACK)),
    Math.max(inBowl, plannedTotal * (1 + TOTAL_SLACK)),
  ];
}

/**
 * Between which grams each food may end.
 * @param again whether poured foods may get more @param next a food that may, although it was poured
 */
export function boundsOf(
  { stock, rules, plan, least: staysIn }: CorrectionQuestion,
  bowl: Bowl,
  again: boolean,
  next = -1,
): Grams {
  const least = rules.problem.least_grams ?? 0;
  const lower = bowl.grams.slice();
  const upper = bowl.grams.slice();
  bowl.grams.forEach((g, i) => {
    // A food that was never planned, or was left out, stays out.
    const out = g === 0 && (bowl.poured[i] || plan[i] === 0);
    if (i !== next && (out || (bowl.poured[i] && !again))) return;
    const most = Math.max(g, elementAt(stock, i));
    upper[i] = most;
    if (!bowl.poured[i] && elementAt(plan, i) > 0)
      lower[i] = Math.min(most, Math.max(g, least, elementAt(staysIn, i)));
  });
  return { lower, upper };
}

/** What a batch of these grams takes beyond what the lots hold, g rounded up to the scale. */
export function lackingOf(
  { stock, rules, stepGrams }: CorrectionQuestion,
  bowl: Bowl,
  grams: Float64Array,
): { byId: Record<string, number>; named: { name: string; grams: number }[] } {
  const byId: Record<string, number> = {};
  const named: { name: string; grams: number }[] = [];
  for (const [i, g] of grams.entries()) {
    const over = g - Math.max(elementAt(stock, i), elementAt(bowl.grams, i));
    if (!(over > CRUMB)) continue;
    const lacking = withoutFloatNoise(stepGrams * Math.ceil(over / stepGrams - NEAR_STEP));
    byId[elementAt(rules.ids, i)] = lacking;
    named.push({ name: elementAt(rules.names, i), grams: lacking });
  }
  return { byId, named };
}
