/**
 * A base mix and additions for each animal as one program: fewest additions, then lightest, then the best base. A bound
 * `g . x >= h` on mixes that add up to 100 is written `(g - h/100) . x >= 0`, which holds for a mix of any weight.
 */
import type { FoodAmounts } from '../amounts/food-amounts.ts';
import type { Formulation } from '../formulation.ts';
import type { Eater } from '../problem/for-animals.ts';
import type { Problem, Shares } from '../problem/problem.ts';
import type { Tell } from '../problem/progress.ts';
import type { Balanced } from '../problem/result.ts';
import { type FormulationOptions, wantedShares } from '../solve/build-ration.ts';
import { type LinearAnswer, type LinearModel, solveLinearWith } from '../solve/linear-program.ts';
import { elementAt } from '../solve/vectors.ts';

/** Most that is added for one animal, g to 100 g of base: with more, the base would be the smaller part of its mix. */
export const MOST_ADDED = 100;
/** Less than this, g to 100 g of base, is the solver's dust and not an addition. */
const DUST = 1e-8;
/** A bound on a number that is so little above a whole number is that number. */
const WHOLE = 1e-6;
/** A bound on the weight is told anew where it has risen by this part of what is left to gain. */
const LITTLE_RISE = 0.01;
/**
 * Simplex iterations for each question: what is found by then stands, and is not proved. Measured: with 6 to 9 foods
 * every one of 100 draws is proved, with some 28 foods 397 of 400; a second is some 4,000.
 */
const MOST_ITERATIONS = { number: 3000, weight: 1500 };

/** An animal with its own problem, formulated. */
export interface FedAnimal {
  readonly eater: Eater;
  readonly formulation: Formulation;
  readonly best: Balanced;
  /** Rows in `problem.foods` that it may eat. */
  readonly open: readonly number[];
  readonly foods: readonly FoodAmounts[];
  /** Most of each in its mix, percent, by row in `problem.foods`. */
  readonly most: ReadonlyMap<number, number>;
  /** Its bounds over a mix of any weight: `row . mix >= 0`, by row in `problem.foods`. */
  readonly rows: readonly ReadonlyMap<number, number>[];
}

/** A base and additions, g: the columns of the linear program. */
interface Found {
  readonly x: readonly number[];
  readonly proved: boolean;
}

/** The program over base and additions. Columns: base shares, then every animal's additions. */
export class SharedBaseProgram {
  /** Rows in `problem.foods` of what may be in the base: foods that all may eat. */
  readonly baseRows: readonly number[];
  private readonly problem: Problem;
  private readonly options: FormulationOptions;
  /** Animal and row in `problem.foods` of each addition, and the most it can weigh, g to 100 g of base. */
  private readonly added: readonly { readonly animal: number; readonly row: number; readonly most: number }[];
  private readonly animals: number;
  private readonly rows: LinearModel['rows'];

  constructor(problem: Problem, fed: readonly FedAnimal[], options: FormulationOptions) {
    this.problem = problem;
    this.options = options;
    this.animals = fed.length;
    this.baseRows = problem.foods.flatMap((_, row) => (fed.every((f) => f.open.includes(row)) ? [row] : []));
    this.added = fed.flatMap((f, animal) =>
      f.open.map((row) => ({
        animal,
        row,
        // A mix weighs at most base and additions, and of the food it holds no more than its share.
        most: Math.min(MOST_ADDED, ((100 + MOST_ADDED) * f.most.get(row)!) / 100),
      })),
    );
    this.rows = [
      { coefficients: this.row((_, isBase) => (isBase ? 1 : 0)), min: 100, max: 100 },
      ...fed.flatMap((f, animal) =>
        f.rows.map((rule) => ({
          coefficients: this.row((row, isBase, of) => (isBase || of === animal ? (rule.get(row) ?? 0) : 0)),
          min: 0,
        })),
      ),
      ...fed.map((_, animal) => ({
        coefficients: this.row((_row, isBase, of) => (!isBase && of === animal ? 1 : 0)),
        max: MOST_ADDED,
      })),
    ];
  }

  /**
   * Fewest additions, then lightest, then the best base; undefined where no base and additions keep the rules.
   * @param tell told of ever fewer and lighter additions
   */
  solve(tell: Tell<Found> = () => {}): Found | undefined {
    if (this.baseRows.length === 0) return undefined;
    const few = this.fewest(tell);
    if (!few) return undefined;
    const light = this.lightest(few.chosen, tell);
    const x = this.bestBase(light.chosen, light.x);
    return { x, proved: few.proved && light.proved };
  }

  base(x: readonly number[]): Shares {
    const column = new Map(this.baseRows.map((row, i) => [row, i]));
    const share = (row: number) => {
      const i = column.get(row);
      return i === undefined ? 0 : clean(elementAt(x, i));
    };
    return parts(Object.fromEntries(this.problem.foods.map(({ id }, row) => [id, share(row)])));
  }

  /** Of each animal, g to 100 g of base by food id. */
  additions(x: readonly number[]): Record<string, number>[] {
    return Array.from({ length: this.animals }, (_, animal) =>
      Object.fromEntries(
        this.added.flatMap((a, j) => {
          const grams = clean(this.weighs(x, j));
          return a.animal === animal && grams > 0 ? [[elementAt(this.problem.foods, a.row).id, grams]] : [];
        }),
      ),
    );
  }

  /** Coefficients by column; base columns have no animal. */
  private row(of: (row: number, isBase: boolean, animal: number) => number): number[] {
    return [
      ...this.baseRows.map((row) => of(row, true, -1)),
      ...this.added.map(({ animal, row }) => of(row, false, animal)),
    ];
  }

  /** A smallest set of additions that suffices; undefined where even all of them do not. */
  private fewest(tell: Tell<Found>): { chosen: ReadonlySet<number>; proved: boolean } | undefined {
    const all = new Set(this.added.keys());
    const any = this.lightestOf(all);
    if (!any) return undefined;
    // Dropping what can be dropped, lightest first, gives a set to beat.
    let chosen = this.used(any);
    let x = any;
    const told = (bound: number) => {
      const found = { x, proved: false };
      tell({ doing: 'fewest', found, value: chosen.size, bound: Math.min(bound, chosen.size) });
    };
    told(0);
    const byWeight = [...chosen].sort((a, b) => this.weighs(any, a) - this.weighs(any, b));
    for (const j of byWeight) {
      const rest = new Set([...chosen].filter((other) => other !== j));
      const lighter = chosen.has(j) && this.lightestOf(rest);
      if (!lighter) continue;
      chosen = rest;
      x = lighter;
      told(0);
    }
    if (chosen.size === 0) return { chosen, proved: true };
    let least = 0;
    const fewer = this.choose('number', chosen.size - 1, MOST_ADDED, (bound) => {
      const whole = Math.ceil(bound - WHOLE);
      if (whole <= least) return;
      least = whole;
      told(least);
    });
    return { chosen: fewer.chosen ?? chosen, proved: fewer.proved };
  }

  /** As many additions that weigh least together, and the base with them. */
  private lightest(
    chosen: ReadonlySet<number>,
    tell: Tell<Found>,
  ): {
    chosen: ReadonlySet<number>;
    x: readonly number[];
    proved: boolean;
  } {
    const x = this.lightestOf(chosen)!;
    if (chosen.size === 0) return { chosen, x, proved: true };
    const weight = this.weightOf(x);
    const found = { x, proved: false };
    let least = 0;
    tell({ doing: 'lightest', found, value: weight, bound: least });
    // Nothing lighter has an addition heavier than what all weigh so far.
    const answer = this.choose('weight', chosen.size, weight, (bound) => {
      if (bound - least <= LITTLE_RISE * (weight - least)) return;
      least = Math.min(bound, weight);
      tell({ doing: 'lightest', found, value: weight, bound: least });
    });
    const lighter = answer.chosen && this.lightestOf(answer.chosen);
    if (!answer.chosen || !lighter || this.weightOf(lighter) >= weight)
      return { chosen, x, proved: answer.proved };
    return { chosen: answer.chosen, x: lighter, proved: answer.proved };
  }

  /**
   * At most `size` kinds of additions that suffice, the fewest or the lightest, none heavier than `heaviest`.
   * Without `chosen` and proved, there are none.
   */
  private choose(
    by: 'number' | 'weight',
    size: number,
    heaviest: number,
    bound: (cost: number) => void,
  ): { chosen?: ReadonlySet<number>; proved: boolean } {
    const m = this.added.length;
    const n = this.baseRows.length;
    const most = this.added.map((a) => Math.min(a.most, heaviest));
    const flags = (value: (j: number, row: number) => number) => [
      ...new Array<number>(n + m).fill(0),
      ...this.added.map(({ row }, j) => value(j, row)),
    ];
    const rows = [
      ...this.rows.map((r) => ({ ...r, coefficients: [...r.coefficients, ...this.added.map(() => 0)] })),
      ...most.map((grams, j) => {
        const coefficients = flags((k) => (k === j ? grams : 0));
        coefficients[n + j] = -1;
        return { coefficients, min: 0 };
      }),
      { coefficients: flags(() => 1), max: size },
      // What every animal gets of a food belongs in the base.
      ...this.baseRows.map((row) => ({
        coefficients: flags((_, added) => (added === row ? 1 : 0)),
        max: this.animals - 1,
      })),
    ];
    const needed: LinearModel['rows'][number][] = [];
    for (;;) {
      const { status, x } = this.ask({
        cost:
          by === 'number'
            ? flags(() => 1)
            : [...this.row((_, isBase) => (isBase ? 0 : 1)), ...this.added.map(() => 0)],
        rows: [...rows, ...needed],
        upper: [...this.baseRows.map(() => 100), ...most, ...this.added.map(() => 1)],
        whole: flags(() => 1).map((v) => v === 1),
        mostIterations: MOST_ITERATIONS[by],
        watch: { bound },
      });
      if (status === 'infeasible') return { proved: true };
      const chosen = new Set([...this.added.keys()].filter((j) => elementAt(x, n + m + j) > 0.5));
      const suffices = chosen.size <= size && this.lightestOf(chosen) !== undefined;
      if (suffices) return { chosen, proved: status === 'optimal' };
      if (status !== 'optimal') return { proved: false };
      // The solver's tolerance let too little pass for whole: one of the others is needed as well.
      needed.push({ coefficients: flags((j) => (chosen.has(j) ? 0 : 1)), min: 1 });
    }
  }

  /** Base and additions of the chosen kinds alone that weigh least; undefined where they do not suffice. */
  private lightestOf(chosen: ReadonlySet<number>): readonly number[] | undefined {
    const answer = this.ask({
      cost: this.row((_, isBase) => (isBase ? 0 : 1)),
      rows: this.rows,
      upper: this.upper(chosen),
    });
    return answer.status === 'optimal' ? answer.x : undefined;
  }

  /**
   * The best base that needs no heavier additions of the chosen kinds: by price where the cheapest mix is asked, else
   * by the sum of the differences from the wanted (or even) shares, which a linear program can make least.
   */
  private bestBase(chosen: ReadonlySet<number>, x: readonly number[]): readonly number[] {
    const n = this.baseRows.length;
    const { foods, objective } = this.problem;
    const weight = {
      coefficients: this.row((_, isBase) => (isBase ? 0 : 1)),
      max: this.weightOf(x) + DUST,
    };
    const upper = this.upper(chosen);
    let answer: LinearAnswer;
    if (objective === 'cheapest') {
      const cost = this.row(
        (row, isBase) => (elementAt(foods, row).price_per_kg ?? 0) * (isBase ? this.animals : 1),
      );
      answer = this.ask({ cost, rows: [...this.rows, weight], upper });
    } else {
      const wants =
        objective === 'varied'
          ? new Float64Array(n).fill(100 / n)
          : wantedShares(this.baseRows.map((row) => elementAt(foods, row).want));
      const off = new Array<number>(n).fill(0);
      const apart = [...wants].flatMap((want, i) =>
        [1, -1].map((sign) => {
          const coefficients = new Array<number>(upper.length + n).fill(0);
          coefficients[i] = sign;
          coefficients[upper.length + i] = 1;
          return { coefficients, min: sign * want };
        }),
      );
      answer = this.ask({
        cost: [...upper.map(() => 0), ...off.map(() => 1)],
        rows: [
          ...[...this.rows, weight].map((r) => ({ ...r, coefficients: [...r.coefficients, ...off] })),
          ...apart,
        ],
        upper: [...upper, ...off.map(() => Number.POSITIVE_INFINITY)],
      });
    }
    return answer.status === 'optimal' ? answer.x.slice(0, upper.length) : x;
  }

  private ask(model: LinearModel): LinearAnswer {
    return solveLinearWith(this.options.highs, model);
  }

  private upper(chosen: ReadonlySet<number>): number[] {
    return [...this.baseRows.map(() => 100), ...this.added.map((a, j) => (chosen.has(j) ? a.most : 0))];
  }

  private used(x: readonly number[]): ReadonlySet<number> {
    return new Set([...this.added.keys()].filter((j) => this.weighs(x, j) > DUST));
  }

  private weightOf(x: readonly number[]): number {
    return this.added.reduce((sum, _, j) => sum + this.weighs(x, j), 0);
  }

  /** What an addition weighs, g to 100 g of base. */
  private weighs(x: readonly number[], j: number): number {
    return elementAt(x, this.baseRows.length + j);
  }
}

const clean = (value: number) => (value > DUST ? value : 0);

/** Scaled to add up to 100. */
export function parts(amounts: Shares): Shares {
  const total = Object.values(amounts).reduce((sum, v) => sum + v, 0);
  return Object.fromEntries(Object.entries(amounts).map(([id, v]) => [id, (v * 100) / total]));
}
