/** Parts of the records as the database finds them, and how much of an answer each record takes. */
import { type RawBuilder, type SqlBool, sql } from 'kysely';
import type { Section } from '../records.ts';

/** What of a household is asked for. */
export interface Asked {
  readonly after: number;
  /** Only changes up to this number, and of these only what is there now. */
  readonly upTo?: number | undefined;
  /** Only records of these kinds. */
  readonly of?: Section | undefined;
}

/** What stands around a body in an answer, at most; and where it is brief, around one that stands as it was made, and others. */
const AROUND = 200;
const BRIEF = { asMade: 50, changed: 80 };

/** What is of a section, deleted or not: as the index of them says it, or it would not be found. */
export function isOf(section: Section): RawBuilder<SqlBool> {
  return section === 'rest' ? sql`kind NOT IN ('feedings', 'weighings')` : sql`kind = ${section}`;
}

/** Bytes that a record takes of an answer, at most. What is deleted has no body that says its id. */
export function bytesSent(brief: boolean): RawBuilder<number> {
  const around = brief
    ? sql`CASE WHEN version = 1 AND place = seq THEN ${sql.lit(BRIEF.asMade)} ELSE ${sql.lit(BRIEF.changed)} END`
    : sql.lit(AROUND);
  return sql`coalesce(octet_length(body) + ${around}, ${sql.lit(AROUND)})`;
}
