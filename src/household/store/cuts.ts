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
/** A block that holds more than this part of a piece is split, so that pieces are nearly full. */
const LARGE = 1 / 8;

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
        const blocks = await blocksOf(tx, household, of, known.seq, newest, this.#most * LARGE);
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

/** How much of a section each few of some changes hold, in their order; one by one where they hold much. */
async function blocksOf(
  tx: Tx,
  household: string,
  of: Section,
  after: number,
  upTo: number,
  large: number,
): Promise<Block[]> {
  const there = sql`FROM records WHERE household = ${household} AND ${isOf(of)} AND body IS NOT NULL`;
  const width = sql.lit(BLOCK);
  const sums = await sql<Row>`
    WITH RECURSIVE blocks (after) AS (
      SELECT CAST(${after} AS INTEGER) UNION ALL SELECT after + ${width} FROM blocks WHERE after + ${width} < ${upTo}
    )
    SELECT after + ${width} AS seq, coalesce((
      SELECT sum(${bytesSent(true)}) ${there} AND seq > blocks.after AND seq <= blocks.after + ${width}
    ), 0) AS bytes FROM blocks`.execute(tx);
  const blocks: Block[] = [];
  /** Where those that hold much began, while they follow each other. */
  let from: number | undefined;
  let to = after;
  async function split(): Promise<void> {
    if (from === undefined) return;
    const rows = sql<Row>`
      SELECT seq, ${bytesSent(true)} AS bytes ${there} AND seq > ${from} AND seq <= ${to} ORDER BY seq`;
    blocks.push(...(await rows.execute(tx)).rows.map(blockOf));
    from = undefined;
  }
  for (const row of sums.rows) {
    const block = blockOf(row);
    if (block.bytes > large) from ??= to;
    else {
      await split();
      blocks.push(block);
    }
    to = row.seq;
  }
  await split();
  return blocks;
}

/** As the database gives it: sums of PostgreSQL are text. */
interface Row {
  readonly seq: number;
  readonly bytes: number | string;
}

const blockOf = ({ seq, bytes }: Row): Block => ({ upTo: seq, bytes: Number(bytes) });
