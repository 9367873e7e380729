/**
 * How the master problem lays out its columns, and the rows it starts with. Columns: the share of each food, its
 * square, whether it is used, what of it comes from the cupboard, whether it must be bought, and whether it counts for
 * each rule that counts.
 */
import type { Row } from './bounds.ts';
import type { CountBound } from './counting.ts';
import type { IntegerQuestion } from './integer-question.ts';
import { elementAt } from './vectors.ts';

/** A linear cost, made least: each part by food, or one number for all foods. */
export interface Cost {
  readonly shares?: Float64Array;
  readonly squares?: number;
  readonly constant?: number;
  readonly used?: number;
  readonly bought?: number;
  readonly fromCupboard?: number;
}

/** A row over all columns. */
export interface MasterRow {
  readonly g: Float64Array;
  readonly min: number;
  readonly max: number;
}

export class MasterLayout {
  /** Number of columns. */
  readonly width: number;
  /** Counting bounds with a column of their own for each food. */
  readonly counters: readonly CountBound[];
  private readonly question: IntegerQuestion;
  private readonly n: number;

  constructor(question: IntegerQuestion) {
    this.question = question;
    this.n = question.lower.length;
    this.counters = question.counts.filter((c) => c.counts === 'some');
    this.width = (5 + this.counters.length) * this.n;
  }

  /** Columns that are 0 or 1 and not decided beforehand. */
  binaries({ lower, upper }: { lower: Float64Array; upper: Float64Array }): number[] {
    const isBinary = (column: number) =>
      column >= 2 * this.n && lower[column] !== upper[column] && Math.floor(column / this.n) !== 3;
    return Array.from({ length: this.width }, (_, column) => column).filter(isBinary);
  }

  readonly square = (i: number) => this.n + i;
  readonly used = (i: number) => 2 * this.n + i;
  readonly fromCupboard = (i: number) => 3 * this.n + i;
  readonly bought = (i: number) => 4 * this.n + i;
  readonly counted = (k: number, i: number) => (5 + k) * this.n + i;

  costRow({ shares, squares = 0, used = 0, fromCupboard = 0, bought = 0 }: Cost): Float64Array {
    const row = new Float64Array(this.width);
    for (let i = 0; i < this.n; i++) {
      row[i] = shares?.[i] ?? 0;
      row[this.square(i)] = squares;
      row[this.used(i)] = used;
      row[this.fromCupboard(i)] = fromCupboard;
      row[this.bought(i)] = bought;
    }
    return row;
  }

  columnBounds() {
    const { n, width, question } = this;
    const { lower: least, upper: most, counts, aims, onHand } = question;
    const lower = new Float64Array(width);
    const upper = new Float64Array(width).fill(1);
    const choosesUsed = aims.some((a) => a.used) || counts.some((c) => c.counts !== 'some');
    const choosesBought = aims.some((a) => a.bought);
    lower.set(least);
    upper.set(most);
    upper.set(onHand, this.fromCupboard(0));
    for (let i = 0; i < n; i++) {
      upper[this.square(i)] = Number.POSITIVE_INFINITY;
      // Where no rule and no aim asks whether a food is used or bought, it may be: the column is fixed.
      lower[this.used(i)] = Number(!choosesUsed);
      lower[this.bought(i)] = Number(!choosesBought);
    }
    this.counters.forEach(({ columns }, k) => {
      for (let i = 0; i < n; i++) upper[this.counted(k, i)] = Number(columns.includes(i));
    });
    return { lower, upper };
  }

  firstRows(): MasterRow[] {
    const { question } = this;
    const { upper, counts, onHand } = question;
    const rows: MasterRow[] = [];
    const row = (
      entries: readonly (readonly [number, number])[],
      min: number,
      max = Number.POSITIVE_INFINITY,
    ) => {
      const g = new Float64Array(this.width);
      for (const [column, value] of entries) g[column] = value;
      rows.push({ g, min, max });
    };
    /** A food has its least share where a column is 1. Of a mix that is a part of all columns, by its sum. */
    const leastShare = (i: number, column: number, atLeast: number) => {
      const sum = (question.mix ?? []).map((j) => [j, Number(j === i) - atLeast / 100] as const);
      const share = question.mix ? sum : [[i, 1] as const];
      row([...share, [column, -atLeast]], question.mix ? -atLeast : 0);
    };
    row(
      Array.from(upper, (_, i) => [i, 1]),
      100,
      100,
    );
    for (const [i, most] of upper.entries()) {
      row(
        [
          [this.used(i), most],
          [i, -1],
        ],
        0,
      );
      row(
        [
          [i, 1],
          [this.fromCupboard(i), -1],
        ],
        0,
      );
      row(
        [
          [this.bought(i), most],
          [i, -1],
        ],
        -elementAt(onHand, i),
      );
    }
    for (const { counts: kind, columns, atLeast, bound } of counts) {
      if (kind === 'used') for (const i of columns) leastShare(i, this.used(i), atLeast);
      if (kind === 'few')
        row(
          columns.map((i) => [this.used(i), -1]),
          -bound,
        );
    }
    this.counters.forEach(({ columns, atLeast, bound }, k) => {
      for (const i of columns) leastShare(i, this.counted(k, i), atLeast);
      row(
        columns.map((i) => [this.counted(k, i), 1]),
        bound,
      );
    });
    return rows;
  }

  polytopeRow({ g, h }: Row): MasterRow {
    const wide = new Float64Array(this.width);
    wide.set(g);
    return { g: wide, min: h, max: Number.POSITIVE_INFINITY };
  }
}
