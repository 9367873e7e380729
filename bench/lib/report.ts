/** What a part of the bench reports. */
import type { Figure } from './figures.ts';

/** A figure with its spread, a plain number that was counted, or words. */
export type Cell = Figure | string | number;

export interface Table {
  readonly title: string;
  /** What stands in the first column. */
  readonly of: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly [name: string, ...cells: Cell[]])[];
  /** Sentences below the table. */
  readonly notes?: readonly string[];
}

/** One of our own limits, and what was measured of it. */
export interface Limit {
  readonly asked: string;
  readonly measured: string;
  readonly met: boolean;
}

export interface Report {
  /** How it was measured. */
  readonly about: readonly string[];
  readonly tables: readonly Table[];
  readonly limits: readonly Limit[];
}

export interface Options {
  /** Few rounds, to try the bench out. */
  readonly quick: boolean;
}
