/**
 * One base mix for several animals, and what each gets added to it, with the least extra work: fewest additions to
 * weigh, then least weight of them, then the base nearest to the wanted shares (or cheapest, where that is asked).
 *
 * On mixes that add up to 100 a side `g . x >= h` is `(g - h/100) . x >= 0`. Written so it holds for a base with its
 * additions, whatever they weigh together, and base and additions of all animals are one linear program; which
 * additions there are makes it a mixed-integer one.
 */
import type { Reference } from '../foods/reference.ts';
import { type Eater, forAnimals, forOneOf } from './for-animals.ts';
import { Formulation, type Shares } from './formulation.ts';
import type { Highs } from './highs.ts';
import type { Stocked } from './larder.ts';
import { type Problem, ProblemError } from './problem.ts';
import type { Balanced } from './result.ts';
import { capital, figure, joined } from './sentences.ts';
import { served, wantedShares } from './served.ts';
import { sidesOf } from './sides.ts';
import { type LinearAnswer, type LinearModel, solveLinearWith } from './solver.ts';

/** What one mix costs an animal beside the best mix of its own. */
export interface SharingCost {
  /** Part of the mix that would be other food in the best mix of its own, percent. */
  readonly different: number;
  /**
   * How much further from the wanted shares, percent of the mix. Counted in parts of the mix and not in squares as
   * the nearest mix is, so it can be a trifle below 0.
   */
  readonly further: number;
  /** How much dearer per kg; left out where a food in either mix has no price. */
  readonly dearer?: number;
}

export interface SharedAnimal {
  readonly id: string;
  readonly name: string;
  /** Grams added to 100 g of the base, by food id; only what is added. */
  readonly additions: Readonly<Record<string, number>>;
  /** Percent of its mix, base and additions together; adds up to 100. */
  readonly shares: Shares;
  readonly cost: SharingCost;
}

export interface SharedMix {
  readonly status: 'shared';
  /** Percent by food id; adds up to 100. */
  readonly base: Shares;
  readonly animals: readonly SharedAnimal[];
  /** How many additions are weighed, over all animals. */
  readonly weighings: number;
  /** Grams of them on 100 g of base for each animal. */
  readonly weight: number;
  /**
   * The mix that suits all without additions, where there is one: that of {@link forAnimals}. It is the base, unless
   * some animal misses in it the least share of a food that another refuses.
   */
  readonly one_mix: Shares | null;
  /** Rules that a mix does not keep or that were not looked at, in sentences; empty where all were checked and hold. */
  readonly unverified: readonly string[];
  /** Whether fewer, or as many but lighter, additions are known not to do. */
  readonly proved: boolean;
  /** What else is to be known of the answer, in sentences; no rule is in question. */
  readonly notes: readonly string[];
  readonly sentence: string;
}

export interface NotShared {
  readonly status: 'none';
  /** Animals that have no mix even by themselves, and why; empty where only sharing is impossible. */
  readonly without_mix: readonly { readonly id: string; readonly name: string; readonly verdict: string }[];
  readonly sentence: string;
}

export interface SharingOptions {
  readonly reference: Reference;
  readonly highs: Highs;
  /**
   * Most time for the search for fewer and for lighter additions, 1.2 unless given. Where it runs out, what is found
   * by then stands, and {@link SharedMix.proved} is false.
   */
  readonly seconds?: number;
}

/** Most that is added for one animal, g to 100 g of base: with more, the base would be the smaller part of its mix. */
const MOST_ADDED = 100;
/** Less than this, g to 100 g of base, is the solver's dust and not an addition. */
const DUST = 1e-8;
/** Rows are written this much larger, so that the solver keeps them finer than a mix is judged. */
const FINER = 10;
const SECONDS = 1.2;
/** Parts of the time for each question. */
const PATIENCE = { number: 2 / 3, weight: 1 / 3 };
/** Costs below this are not worth a word: percent of a mix, and money per kg. */
const WORTH_SAYING = { percent: 0.05, money: 0.005 };

const OUT_OF_TIME = 'Fewer or lighter additions may do: the time for the search ran out.';
const AIMS_LEFT = 'Aims are followed only where one mix suits all; here they were not.';
const NOT_DROPPED =
  'Whether the rules hold when one food is left was looked at only for the best mix of each animal.';

/** An animal with its own problem, formulated. */
interface Fed {
  readonly eater: Eater;
  readonly formulation: Formulation;
  readonly best: Balanced;
  /** Rows in `problem.foods` that it may eat. */
  readonly open: readonly number[];
  readonly foods: readonly Stocked[];
  /** Most of each in its mix, percent, by row in `problem.foods`. */
  readonly most: ReadonlyMap<number, number>;
  /** Its sides over a mix of any weight: `row . mix >= 0`, by row in `problem.foods`. */
  readonly rows: readonly ReadonlyMap<number, number>[];
}

/** A base and additions, g: the columns of the linear program. */
interface Found {
  readonly x: readonly number[];
  readonly proved: boolean;
}

/**
 * Where one mix keeps every animal's rules (see {@link forAnimals}) it is the base and nothing is added; the problem's
 * objective picks it, with its aims. Otherwise base and additions keep every animal's linear rules, with the shares of
 * what is fed beside as written. A confidence, counting rules, least shares and grams of foods used are not sought
 * there; every mix is judged under all rules of its animal, and what does not hold is said in `unverified`.
 *
 * A rule of the problem that is also in the profile of one animal and not of another binds only the first
 * (see {@link forOneOf}).
 * @throws RangeError without eaters
 */
export function shareMix(
  problem: Problem,
  eaters: readonly Eater[],
  options: SharingOptions,
): SharedMix | NotShared {
  if (eaters.length === 0) throw new RangeError('eaters: there is none; give at least one animal');
  const fed: Fed[] = [];
  const without: { id: string; name: string; verdict: string }[] = [];
  try {
    for (const eater of eaters) {
      const own = feed(problem, eater, eaters, options);
      if (typeof own === 'string') without.push({ id: eater.id, name: eater.name, verdict: own });
      else fed.push(own);
    }
    if (without.length > 0) return { status: 'none', without_mix: without, sentence: aloneSentence(without) };
    const oneMix = mixForAll(problem, eaters, options);
    // What one refuses is left out for all, its least share too: for the others that may be a breach.
    const suits = (mix: Shares) => fed.every((f) => f.formulation.evaluate(mix).breaches.length === 0);
    const asOne = (mix: Shares) => ({ base: mix, additions: fed.map(() => ({})), proved: true });
    if (oneMix && suits(oneMix)) return shared(problem, fed, asOne(oneMix), oneMix);
    const blend = new Blend(problem, fed, options);
    const found = blend.solve();
    if (found) {
      const way = { base: blend.base(found.x), additions: blend.additions(found.x), proved: found.proved };
      return shared(problem, fed, way, oneMix ?? null);
    }
    if (oneMix) return shared(problem, fed, asOne(oneMix), oneMix);
    return { status: 'none', without_mix: [], sentence: apartSentence(fed, blend.baseRows) };
  } finally {
    for (const { formulation } of fed) formulation.dispose();
  }
}

/** An animal's own problem and best mix, or why it has none. */
function feed(
  problem: Problem,
  eater: Eater,
  eaters: readonly Eater[],
  { reference, highs }: SharingOptions,
): Fed | string {
  const own = forOneOf(problem, eater, eaters);
  let formulation: Formulation;
  try {
    formulation = new Formulation(own, { reference, highs });
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    return `${capital(error.message.slice(error.field.length + 2))}.`;
  }
  const best = formulation.solve();
  if (best.status !== 'optimal') {
    formulation.dispose();
    return best.verdict;
  }
  const { open, caps, ration } = served(own, { reference, highs });
  const { foods } = ration;
  // No spread: a confidence is judged afterwards.
  const sides = sidesOf(own, ration, open, 0, caps);
  const rows = sides.map((side) => {
    const { g, h } = side.halfSpace(side.bound);
    return new Map(open.map((row, column) => [row, FINER * (g[column]! - h / 100)]));
  });
  const most = new Map(
    open.map((row) => [row, Math.min(own.foods[row]!.max ?? 100, caps.get(row)?.max ?? 100)]),
  );
  return { eater, formulation, best, open, foods, most, rows };
}

/** The best mix that suits all without additions. */
function mixForAll(problem: Problem, eaters: readonly Eater[], options: SharingOptions): Shares | undefined {
  let formulation: Formulation;
  try {
    formulation = new Formulation(forAnimals(problem, eaters).problem, options);
  } catch (error) {
    if (error instanceof ProblemError) return undefined;
    throw error;
  }
  try {
    // Whether there is any is asked first: why there is none would take long to answer, and nobody asks.
    if (!formulation.feasible()) return undefined;
    const result = formulation.solve();
    return result.status === 'optimal' ? result.shares : undefined;
  } finally {
    formulation.dispose();
  }
}

/** The program over base and additions. Columns: base shares, then every animal's additions. */
class Blend {
  /** Rows in `problem.foods` of what may be in the base: foods that all may eat. */
  readonly baseRows: readonly number[];
  private readonly problem: Problem;
  private readonly options: SharingOptions;
  /** Animal and row in `problem.foods` of each addition, and the most it can weigh, g to 100 g of base. */
  private readonly added: readonly { readonly animal: number; readonly row: number; readonly most: number }[];
  private readonly animals: number;
  private readonly rows: LinearModel['rows'];

  constructor(problem: Problem, fed: readonly Fed[], options: SharingOptions) {
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
        f.rows.map((side) => ({
          coefficients: this.row((row, isBase, of) => (isBase || of === animal ? (side.get(row) ?? 0) : 0)),
          min: 0,
        })),
      ),
      ...fed.map((_, animal) => ({
        coefficients: this.row((_row, isBase, of) => (!isBase && of === animal ? 1 : 0)),
        max: MOST_ADDED,
      })),
    ];
  }

  /** Fewest additions, then lightest, then the best base; undefined where no base and additions keep the rules. */
  solve(): Found | undefined {
    if (this.baseRows.length === 0) return undefined;
    const few = this.fewest();
    if (!few) return undefined;
    const light = this.lightest(few.chosen);
    const x = this.bestBase(light.chosen, light.x);
    return { x, proved: few.proved && light.proved };
  }

  base(x: readonly number[]): Shares {
    const shares = this.problem.foods.map((f) => [f.id, 0] as [string, number]);
    this.baseRows.forEach((row, column) => {
      shares[row]![1] = clean(x[column]!);
    });
    return parts(Object.fromEntries(shares));
  }

  /** Of each animal, g to 100 g of base by food id. */
  additions(x: readonly number[]): Record<string, number>[] {
    return Array.from({ length: this.animals }, (_, animal) =>
      Object.fromEntries(
        this.added.flatMap((a, j) => {
          const grams = clean(x[this.baseRows.length + j]!);
          return a.animal === animal && grams > 0 ? [[this.problem.foods[a.row]!.id, grams]] : [];
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
  private fewest(): { chosen: ReadonlySet<number>; proved: boolean } | undefined {
    const all = new Set(this.added.keys());
    const any = this.lightestOf(all);
    if (!any) return undefined;
    // Dropping what can be dropped, lightest first, gives a set to beat.
    let chosen = this.used(any);
    const byWeight = [...chosen].sort(
      (a, b) => any[this.baseRows.length + a]! - any[this.baseRows.length + b]!,
    );
    for (const j of byWeight) {
      const rest = new Set([...chosen].filter((other) => other !== j));
      if (chosen.has(j) && this.lightestOf(rest)) chosen = rest;
    }
    if (chosen.size === 0) return { chosen, proved: true };
    const fewer = this.choose('number', chosen.size - 1, MOST_ADDED);
    return { chosen: fewer.chosen ?? chosen, proved: fewer.proved };
  }

  /** As many additions that weigh least together, and the base with them. */
  private lightest(chosen: ReadonlySet<number>): {
    chosen: ReadonlySet<number>;
    x: readonly number[];
    proved: boolean;
  } {
    const x = this.lightestOf(chosen)!;
    if (chosen.size === 0) return { chosen, x, proved: true };
    const weight = this.weightOf(x);
    // Nothing lighter has an addition heavier than what all weigh so far.
    const answer = this.choose('weight', chosen.size, weight);
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
  ): { chosen?: ReadonlySet<number>; proved: boolean } {
    const m = this.added.length;
    const n = this.baseRows.length;
    const most = this.added.map((a) => Math.min(a.most, heaviest));
    const flags = (value: (j: number) => number) => [
      ...new Array<number>(n + m).fill(0),
      ...this.added.map((_, j) => value(j)),
    ];
    const rows = [
      ...this.rows.map((r) => ({ ...r, coefficients: [...r.coefficients, ...this.added.map(() => 0)] })),
      ...this.added.map((_, j) => {
        const coefficients = flags((k) => (k === j ? most[j]! : 0));
        coefficients[n + j] = -1;
        return { coefficients, min: 0 };
      }),
      { coefficients: flags(() => 1), max: size },
      // What every animal gets of a food belongs in the base.
      ...this.baseRows.map((row) => ({
        coefficients: flags((j) => (this.added[j]!.row === row ? 1 : 0)),
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
        timeLimitSeconds: PATIENCE[by] * (this.options.seconds ?? SECONDS),
      });
      if (status === 'infeasible') return { proved: true };
      const chosen = new Set(this.added.flatMap((_, j) => (x[n + m + j]! > 0.5 ? [j] : [])));
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
      const cost = this.row((row, isBase) => (foods[row]!.price_per_kg ?? 0) * (isBase ? this.animals : 1));
      answer = this.ask({ cost, rows: [...this.rows, weight], upper });
    } else {
      const wants =
        objective === 'varied'
          ? this.baseRows.map(() => 100 / n)
          : wantedShares(this.baseRows.map((row) => foods[row]!.want));
      const off = new Array<number>(n).fill(0);
      const apart = this.baseRows.flatMap((_, i) =>
        [1, -1].map((sign) => {
          const coefficients = new Array<number>(upper.length + n).fill(0);
          coefficients[i] = sign;
          coefficients[upper.length + i] = 1;
          return { coefficients, min: sign * wants[i]! };
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
    return new Set(this.added.flatMap((_, j) => (x[this.baseRows.length + j]! > DUST ? [j] : [])));
  }

  private weightOf(x: readonly number[]): number {
    return this.added.reduce((sum, _, j) => sum + x[this.baseRows.length + j]!, 0);
  }
}

const clean = (value: number) => (value > DUST ? value : 0);

/** Scaled to add up to 100. */
function parts(amounts: Shares): Shares {
  const total = Object.values(amounts).reduce((sum, v) => sum + v, 0);
  return Object.fromEntries(Object.entries(amounts).map(([id, v]) => [id, (v * 100) / total]));
}

/** A base, and for each animal what is added. */
interface Way {
  readonly base: Shares;
  readonly additions: readonly Readonly<Record<string, number>>[];
  readonly proved: boolean;
}

function shared(problem: Problem, fed: readonly Fed[], way: Way, oneMix: Shares | null): SharedMix {
  const { base, additions, proved } = way;
  const blended = base !== oneMix;
  const animals = fed.map((f, k): SharedAnimal => {
    const added = additions[k]!;
    const shares = parts(
      Object.fromEntries(problem.foods.map(({ id }) => [id, base[id]! + (added[id] ?? 0)])),
    );
    const { id, name } = f.eater;
    return { id, name, additions: added, shares, cost: costOf(problem, f, shares) };
  });
  const grams = additions.flatMap((a) => Object.values(a));
  const breaches = fed.flatMap(({ eater, formulation }, k) =>
    formulation.evaluate(animals[k]!.shares).breaches.map((b) => `For ${eater.name}: ${b.sentence}`),
  );
  return {
    status: 'shared',
    base,
    animals,
    weighings: grams.length,
    weight: grams.reduce((sum, v) => sum + v, 0),
    one_mix: oneMix,
    unverified: blended && problem.drop_one ? [...breaches, NOT_DROPPED] : breaches,
    proved,
    notes: [...(proved ? [] : [OUT_OF_TIME]), ...(blended && problem.aims?.length ? [AIMS_LEFT] : [])],
    sentence: sharedSentence(problem, fed, animals),
  };
}

function costOf({ foods }: Problem, { best, open }: Fed, shares: Shares): SharingCost {
  const wants = wantedShares(open.map((row) => foods[row]!.want));
  const apart = (mix: Shares, from: (row: number, i: number) => number) =>
    open.reduce((sum, row, i) => sum + Math.abs(mix[foods[row]!.id]! - from(row, i)), 0) / 2;
  const own = best.shares;
  const priced = foods.every(
    (f) => f.price_per_kg !== undefined || (shares[f.id]! === 0 && own[f.id]! === 0),
  );
  const price = (mix: Shares) =>
    foods.reduce((sum, f) => sum + ((f.price_per_kg ?? 0) * mix[f.id]!) / 100, 0);
  return {
    different: apart(shares, (row) => own[foods[row]!.id]!),
    further: apart(shares, (_, i) => wants[i]!) - apart(own, (_, i) => wants[i]!),
    ...(priced && { dearer: price(shares) - price(own) }),
  };
}

function sharedSentence(problem: Problem, fed: readonly Fed[], animals: readonly SharedAnimal[]): string {
  const costs = animals.flatMap(({ name, cost }) => {
    const words = costWords(problem, cost);
    return words ? [`${name} ${words}`] : [];
  });
  const cost = costs.length > 0 ? joined(costs) : 'no animal anything';
  const extras = animals.flatMap(({ name, additions }, k) => {
    const given = Object.entries(additions).map(
      ([id, grams]) => `${figure(grams)} g of ${fed[k]!.foods.find((f) => f.id === id)!.name}`,
    );
    return given.length > 0 ? [`${name} gets ${joined(given)}`] : [];
  });
  if (extras.length === 0) return `Sharing one mix costs ${cost}; nothing has to be weighed apart.`;
  return `Sharing one base costs ${cost}; on 100 g of it ${extras.join('; ')}.`;
}

function costWords({ objective }: Problem, { different, further, dearer }: SharingCost): string | undefined {
  if (objective === 'cheapest' && dearer !== undefined)
    return dearer > WORTH_SAYING.money ? `${figure(dearer)} more per kg` : undefined;
  const [percent, of] =
    objective === 'nearest' ? [further, 'the wanted shares'] : [different, 'its own best mix'];
  return percent > WORTH_SAYING.percent ? `${figure(percent)} % of ${of}` : undefined;
}

function aloneSentence(without: readonly { readonly name: string; readonly verdict: string }[]): string {
  return without.map(({ name, verdict }) => `${name} has no mix even alone. ${verdict}`).join(' ');
}

function apartSentence(fed: readonly Fed[], baseRows: readonly number[]): string {
  const names = joined(fed.map((f) => f.eater.name));
  const why =
    baseRows.length === 0
      ? `There is no food that ${names} may all eat`
      : `No base can be made to suit ${names}, even with ${MOST_ADDED} g of any food added to 100 g of it`;
  return `${why}; each has a mix of its own.`;
}
