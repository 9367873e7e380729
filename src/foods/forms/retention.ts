/**
 * Published retention factors: the share of a nutrient left after preparation, by weight of the whole lot.
 * Source: USDA Table of Nutrient Retention Factors, Release 6 (2007); see `retention.json`.
 */
import type { Tag } from '../../nutrition/nutrients.ts';
import table from './retention.json' with { type: 'json' };

export const RETENTION_SOURCE: string = table.source;

/** What kind of food a row of factors is for. */
export type Prepared = 'fruit' | 'leaf' | 'root' | 'vegetable' | 'potato' | 'legume' | 'nut';

export interface RetentionRow {
  readonly form: 'dried' | 'blanched' | 'roasted';
  readonly for: Prepared;
  /** Code and title of the row in the table. */
  readonly code: string;
  readonly title: string;
  /** Percent left, to the nearest 5. A tag without a factor is unknown. */
  readonly percent: Partial<Record<Tag, number>>;
}

export const RETENTION_ROWS = table.rows as readonly RetentionRow[];

/** The published row for a preparation of a kind of food, or undefined. */
export function retentionRow(form: RetentionRow['form'], prepared: Prepared): RetentionRow | undefined {
  return RETENTION_ROWS.find((row) => row.form === form && row.for === prepared);
}

/** The share of a nutrient that drying leaves in fruit, the only foods for which the table has a row for drying. */
export function publishedDrying(tag: Tag): number | undefined {
  const percent = retentionRow('dried', 'fruit')?.percent[tag];
  return percent === undefined ? undefined : percent / 100;
}
