/**
 * Which rows were found fit to be shown, so that nothing is checked twice as it stands. Of a program that has a mark this
 * outlives the process: a check depends on nothing but the text and the program, so one that another program made, or one of
 * a text that was changed since, counts for nothing.
 */
import { crc32 } from 'node:zlib';
import type { RecordRow, Tx } from './tables.ts';

export type Fittable = Pick<RecordRow, 'kind' | 'id' | 'seq' | 'body'>;

/** Rows that are kept together, by the numbers of the changes that made them. */
const PART = 2048;

export class FoundFit {
  readonly #program: string | undefined;
  /** By number of the change, a part at a time, the sum over each row that was found fit; 0 elsewhere. */
  readonly #sums = new Map<number, Float64Array>();
  /** Parts that hold more than the database does. */
  readonly #unkept = new Set<number>();
  #isRecalled = false;

  /** @param program mark of the program that runs; without one nothing outlives the process */
  constructor(program?: string) {
    this.#program = program;
  }

  /** Whether the row was found fit as it stands. */
  has(row: Fittable): boolean {
    return row.body !== null && this.#sums.get(partOf(row.seq))?.[row.seq % PART] === sumOf(row, row.body);
  }

  add(row: Fittable): void {
    if (row.body === null) return;
    const part = partOf(row.seq);
    const sums = this.#sums.get(part) ?? new Float64Array(PART);
    sums[row.seq % PART] = sumOf(row, row.body);
    this.#sums.set(part, sums);
    this.#unkept.add(part);
  }

  /** Takes up what this very program kept, once. */
  async recall(tx: Tx, household: string): Promise<void> {
    if (this.#isRecalled || this.#program === undefined) return;
    const parts = await tx
      .selectFrom('found_fit')
      .select(['part', 'sums'])
      .where('household', '=', household)
      .where('program', '=', this.#program)
      .execute();
    for (const { part, sums } of parts) if (!this.#sums.has(part)) this.#sums.set(part, read(sums));
    this.#isRecalled = true;
  }

  /** Keeps what is not kept so far, a part at a time. @param write does its work in a transaction of its own */
  async keep(
    household: string,
    write: (work: (tx: Tx) => Promise<unknown>) => Promise<unknown>,
  ): Promise<void> {
    const program = this.#program;
    if (program === undefined) return;
    for (const part of [...this.#unkept]) {
      const sums = this.#sums.get(part);
      if (!sums) continue;
      const row = { household, part, program, sums: written(sums) };
      this.#unkept.delete(part);
      try {
        await write((tx) =>
          tx
            .insertInto('found_fit')
            .values(row)
            .onConflict((on) => on.columns(['household', 'part']).doUpdateSet(row))
            .execute(),
        );
      } catch (error) {
        this.#unkept.add(part);
        throw error;
      }
    }
  }
}

const partOf = (seq: number) => Math.floor(seq / PART);

/**
 * Tells a row from what stood there: its length and CRC-32. A program that writes past the store may leave the number of the
 * change as it was. Never 0.
 */
function sumOf({ kind, id }: Fittable, raw: string): number {
  return (raw.length + 1) * 2 ** 32 + crc32(raw, crc32(`${kind} ${id}`));
}

function written({ buffer }: Float64Array): string {
  return Buffer.from(buffer).toString('base64');
}

function read(text: string): Float64Array {
  const sums = new Float64Array(PART);
  Buffer.from(text, 'base64').copy(new Uint8Array(sums.buffer));
  return sums;
}
