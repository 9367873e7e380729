/**
 * Crude fibre as a part of total dietary fibre, by food group. The two are different measures; the ratio only
 * serves where one of them is unknown, and what it gives is an estimate with wide bounds, shown as such.
 * The pairs and their sources stand in data/fibre-estimates.json; `formulation/amounts/food-amounts.ts` uses the ratio.
 */
import estimates from './data/fibre-estimates.json' with { type: 'json' };

interface FibreRatio {
  /** Crude over dietary fibre: middle, least and most, each above 0 and not above 1. */
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

interface EstimateRow {
  readonly group: string;
  readonly ratioMean: number;
  readonly ratioLow: number;
  readonly ratioHigh: number;
  readonly source: string;
}

/** By food group, and "any" for a food without one. */
export const FIBRE_ESTIMATES: Readonly<Record<string, FibreRatio>> = Object.fromEntries(
  (estimates.rows as readonly EstimateRow[]).map((r) => [
    r.group,
    { mean: r.ratioMean, low: r.ratioLow, high: r.ratioHigh, source: r.source },
  ]),
);
