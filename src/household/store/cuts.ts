/**
 * Where a household may be cut so that each piece fits one answer. Found once, then kept and extended: a record that changes
 * takes a new number and so leaves its piece, which then only holds less.
 */
import { sql } from 'kysely';
import { type Cuts, SECTIONS, type Section } from '../records.ts';
import { bytesSent, isOf } from './section.ts';
import type { Tx } from './tables.ts';

/** Numbers of changes that are summed up at once; where they are too many bytes, one by one. */
const BLOCK = 64;
/** A piece is filled to within so many bytes: more than a block of weighings or feedings mostly holds. */
const FINE = 20_000;

/** Some changes that follow each other. */
interface Block {
  readonly upTo: number;
  /** Of the records of a section that they left as they stand. */
  readonly bytes: number;
}

/** A section, cut as far as it was looked at. */
interface Cut {
  readonly cuts: readonly number[];
  /** After the last cut, at most. */
  readonly bytes: number;
}

/** Knows where one household may be cut. */
export class Cutter {
  readonly #most: number;
  #known = { epoch: '', seq: 0, sections: {} as { readonly [of in Section]?: Cut } };

  /** @param most bytes of a piece, as a brief answer holds it; a record that is larger by itself is a piece */
  constructor(most: number) {
    this.#most = most;
  }

  /** @param newest number of the newest change @returns where each section may be cut, up to about there */
  async cutsOf(tx: Tx, household: string, newest: number, epoch: string): Promise<Cuts> {
    let known = this.#known.epoch === epoch ? this.#known : { epoch, seq: 0, sections: {} };
    if (known.seq < newest) {
      const sections: { [of in Section]?: Cut } = {};
      for (const of of SECTIONS) {
        const blocks = await blocksOf(tx, household, of, { after: known.seq, upTo: newest }, BLOCK);
        sections[of] = this.#extended(known.sections[of], known.seq, blocks);
      }
      known = { epoch, seq: newest, sections };
      // Of several that read at the same time any may be the last.
      this.#known = known;
    }
    const { rest, feedings, weighings } = known.sections;
    return { rest: rest?.cuts ?? [], feedings: feedings?.cuts ?? [], weighings: weighings?.cuts ?? [] };
  }

  #extended({ cuts, bytes }: Cut = { cuts: [], bytes: 0 }, from: number, blocks: readonly Block[]): Cut {
    const all = [...cuts];
    let sum = bytes;
    let at = from;
    for (const block of blocks) {
      if (sum > 0 && sum + block.bytes > this.#most) {
        all.push(at);
        sum = 0;
      }
      sum += block.bytes;
      at = block.upTo;
    }
    return { cuts: all, bytes: sum };
  }
}

/** How much of a section each few of some changes hold, in their order. */
async function blocksOf(
  tx: Tx,
  household: string,
  of: Section,
  { after, upTo }: { readonly after: number; readonly upTo: number },
  width: number,
): Promise<Block[]> {
  const { rows } = await sql<{ upTo: number; bytes: number | string }>`
    WITH RECURSIVE blocks (after) AS (
      SELECT CAST(${after} AS INTEGER)
      UNION ALL SELECT after + ${sql.lit(width)} FROM blocks WHERE after + ${sql.lit(width)} < ${upTo}
    )
    SELECT after + ${sql.lit(width)} AS "upTo", coalesce((
      SELECT sum(${bytesSent(true)}) FROM records
      WHERE household = ${household} AND ${isOf(of)} AND body IS NOT NULL
        AND seq > blocks.after AND seq <= blocks.after + ${sql.lit(width)}
    ), 0) AS bytes
    FROM blocks`.execute(tx);
  const blocks: Block[] = [];
  for (const row of rows) {
    const block = { upTo: Math.min(row.upTo, upTo), bytes: Number(row.bytes) };
    if (block.bytes <= FINE || width === 1) blocks.push(block);
    else
      blocks.push(...(await blocksOf(tx, household, of, { after: row.upTo - width, upTo: block.upTo }, 1)));
  }
  return blocks;
}
