/**
 * What is asked of a mix, one by one, as it can be given up: a bound, or the wish that every food may be left. That
 * wish asks each rule again of what is eaten without a food, so it asks nothing of a rule that is given up.
 */
import { words } from '../../words/words.ts';
import type { Bound } from '../solve/bounds.ts';
import { DROP_ONE } from '../solve/drop-one.ts';
import { elementAt } from '../solve/vectors.ts';

/** The wish, as it is spoken of among the bounds that collide. */
function wishSpoken(): Bound {
  const t = words().formulation.leave;
  return {
    pointer: DROP_ONE,
    side: 'min',
    bound: 1,
    subject: '',
    unit: '',
    says: t.asks,
    because: t.because,
    value: () => 1,
  };
}

export class Demands<B extends Bound> {
  /** One object, so that it is known again. */
  private readonly wishAsBound = wishSpoken();
  /** Bounds that are asked by themselves. */
  readonly own: readonly B[];
  /** What the wish that every food may be left asks, by the row in `own` of the rule's bound that it rests on. */
  readonly whenLeft: readonly { readonly bound: B; readonly of: number }[];

  constructor(bounds: readonly B[]) {
    this.own = bounds.filter((b) => b.restsOn === undefined);
    const rows = new Map(this.own.map((b, k) => [b.pointer, k]));
    this.whenLeft = bounds.flatMap((bound) => {
      if (bound.restsOn === undefined) return [];
      const of = rows.get(bound.restsOn);
      if (of === undefined) throw new RangeError(`no bound stands at ${bound.restsOn}`);
      return [{ bound, of }];
    });
  }

  /** Every demand: rows in `own`, and last, where it is asked, {@link wish}. */
  get all(): number[] {
    return [...this.own.keys(), ...(this.wish === undefined ? [] : [this.wish])];
  }

  /** The wish that every food may be left; undefined where it is not asked. */
  get wish(): number | undefined {
    return this.whenLeft.length > 0 ? this.own.length : undefined;
  }

  /** A demand as it is spoken of. */
  spoken(k: number): Bound {
    return k === this.wish ? this.wishAsBound : elementAt(this.own, k);
  }

  /** Rows of `whenLeft` that the demands kept bring with them. */
  asked(kept: ReadonlySet<number>): number[] {
    if (this.wish === undefined || !kept.has(this.wish)) return [];
    return [...this.whenLeft.entries()].flatMap(([row, { of }]) => (kept.has(of) ? [row] : []));
  }

  /** All bounds that the demands kept bring with them. */
  bounds(kept: ReadonlySet<number>): B[] {
    return [
      ...this.own.filter((_, k) => kept.has(k)),
      ...this.asked(kept).map((row) => elementAt(this.whenLeft, row).bound),
    ];
  }
}
