/**
 * Foods that may take another's place with every rule kept, and how much of each.
 *
 * A swap takes out all of one food and gives another the share s, on top of what it has; the other foods keep their
 * proportions to each other and together take what is left of 100. All shares are then straight lines in s, so each
 * rule bounds s from one side (a confidence, from one or both, by a square root), and the shares that keep everything
 * are one span, worked out without a solver. The share proposed is the one in the span nearest to what was taken out.
 *
 * Counting rules (`count`) are not looked at.
 */
import type { Reference, ReferenceFood } from '../../foods/reference.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import { applyCautions, isCautioned, NO_CAUTIONS } from '../amounts/apply-cautions.ts';
import { type FoodAmounts, foodAmounts } from '../amounts/food-amounts.ts';
import { eitherOf, figure, joined } from '../explain/sentences.ts';
import type { Problem, Shares } from '../problem/problem.ts';
import { type HalfSpace, linearBounds, Ration, words } from '../solve/bounds.ts';
import { besideAmounts, sdsFromMean } from '../solve/build-ration.ts';
import { boundsWithout } from '../solve/drop-one.ts';
import { NO_SHARE, SOLVER_TOLERANCE, WHOLE_MIX } from '../solve/tolerances.ts';
import { DAMPEST } from './remedies.ts';

/** Less than this of a food, percent, is neither swapped nor proposed. */
const SMALLEST = 0.005;
const PER_FOOD = 5;

export interface SubstituteQuestion {
  /** Most swaps named for a food: so many of the keeper's own foods, and as many of the tables. 5 unless given. */
  readonly perFood?: number;
  /** Ids of the foods to replace; all foods of the mix unless given. */
  readonly foods?: readonly string[];
}

export interface SubstituteParts {
  readonly reference: Reference;
  /** What is fed beside the mix, where its shares were chosen; as the problem writes them unless given. */
  readonly beside?: Ration['beside'];
}

/** One food in another's place. */
export interface Swap {
  /** Id of one of the problem's own foods; or else `ref`. */
  readonly id?: string;
  /** Reference number of a food of the tables. */
  readonly ref?: string;
  readonly name: string;
  readonly group?: string;
  /** Whether the mix holds it already; `share` then comes on top. */
  readonly inMix: boolean;
  /** What it takes, percent of the mix: the share in the span nearest to the one taken out. */
  readonly share: number;
  /** The span: with every share in it, and with none outside, all rules and bounds are kept. */
  readonly low: number;
  readonly high: number;
  /** Its share in the mix after the swap, percent. */
  readonly becomes: number;
  /** Ruled nutrients of it that nobody knows (own foods only): they count as the least they can be. */
  readonly unsure: readonly Tag[];
  readonly sentence: string;
}

export interface Substitutable {
  /** Id of the food. */
  readonly food: string;
  /** Its share, percent of the mix. */
  readonly share: number;
  /** Own foods first, then foods of the tables; the share nearest to the one taken out first. */
  readonly swaps: readonly Swap[];
  readonly sentence: string;
}

/** All foods that take part: those of the problem that may be fed, then the candidates of the tables. */
interface Pantry {
  readonly foods: readonly FoodAmounts[];
  /** By column; undefined for the problem's own foods. */
  readonly refs: readonly (string | undefined)[];
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** Least share where the food is used at all. */
  readonly used: Float64Array;
  /** Most that a caution allows; advice keeps to it even where the problem only reports cautions. */
  readonly advised: Float64Array;
  readonly spaces: readonly HalfSpace[];
  /** Rows that must also be kept when any one food of the mix is left. */
  readonly leaving: readonly HalfSpace[];
}

/**
 * What can replace each food of a mix.
 *
 * Candidates are the problem's own foods that are neither refused nor blocked by a caution, and the plain foods of the
 * tables that are dry enough, of which every ruled amount is known, and that the caution list neither blocks nor caps.
 * Where a confidence is asked, swapped mixes keep it.
 * @param shares percent by food id, 100 in all; a food left out counts as 0
 * @throws RangeError where the shares of foods that may be fed are not 100 in all, or a food asked for is none of them
 */
export function substitutes(
  problem: Problem,
  { reference, beside }: SubstituteParts,
  shares: Shares,
  { perFood = PER_FOOD, foods }: SubstituteQuestion = {},
): Substitutable[] {
  const pantry = pantryOf(problem, reference, beside);
  const x = Float64Array.from(pantry.foods, (f, k) => (pantry.refs[k] ? 0 : (shares[f.id] ?? 0)));
  const total = x.reduce((sum, v) => sum + v, 0);
  if (!(Math.abs(total - 100) <= WHOLE_MIX)) {
    throw new RangeError(
      `shares: the foods that may be fed add up to ${Number(total.toFixed(4))} %, not 100 %; balance the mix first`,
    );
  }
  for (const id of foods ?? []) {
    if (!pantry.foods.some((f, k) => f.id === id && !pantry.refs[k]))
      throw new RangeError(`foods: "${id}" is no food of the problem that may be fed; give one that is`);
  }
  const ruled = ruledTags(problem);
  const mix = pantry.foods.flatMap((_, k) => (x[k]! > NO_SHARE ? [k] : []));
  // Foods that must be in and are not: no swap keeps the rules, unless it brings in the only one.
  const missing = pantry.foods.flatMap((_, k) =>
    x[k]! <= NO_SHARE && pantry.lower[k]! > SOLVER_TOLERANCE ? [k] : [],
  );
  return pantry.foods.flatMap((food, i): Substitutable[] => {
    const share = x[i]!;
    if (pantry.refs[i] || share < SMALLEST || (foods && !foods.includes(food.id))) return [];
    if (pantry.lower[i]! > NO_SHARE) {
      const sentence = `${food.name} must be at least ${figure(pantry.lower[i]!)} % of the mix, so nothing can replace it.`;
      return [{ food: food.id, share, swaps: [], sentence }];
    }
    const found = pantry.foods.flatMap((_, j): Found[] => {
      const barred = j === i || missing.some((k) => k !== j);
      const span = barred ? undefined : spanOf(pantry, x, mix, i, j);
      if (!span || span[1] < SMALLEST) return [];
      const proposed = Math.min(span[1], Math.max(span[0], share));
      return proposed < SMALLEST ? [] : [{ column: j, span, share: proposed }];
    });
    const first = (table: boolean) =>
      found
        .filter(({ column }) => (pantry.refs[column] !== undefined) === table)
        .sort((a, b) => nearer(pantry, i, share, a, b))
        .slice(0, perFood);
    const swaps = [...first(false), ...first(true)].map((f) => swapOf(pantry, x, i, f, ruled));
    const sentence =
      swaps.length > 0
        ? `${food.name} ${figure(share)} % can be replaced by ${eitherOf(swaps.slice(0, 3).map((s) => s.name))}.`
        : `No other food can take the place of ${food.name} with every rule kept; balance the mix without it to see why.`;
    return [{ food: food.id, share, swaps, sentence }];
  });
}

/** Shares after a swap: all of `food` out, `share` percent more of `other`, the rest in their proportions. */
export function swapped(shares: Shares, food: string, other: string, share: number): Record<string, number> {
  const before = shares[other] ?? 0;
  const rest = Object.entries(shares).reduce(
    (sum, [id, v]) => sum + (id === food || id === other ? 0 : v),
    0,
  );
  const scale = rest > NO_SHARE ? (100 - before - share) / rest : 0;
  const out = Object.fromEntries(Object.entries(shares).map(([id, v]) => [id, v * scale]));
  if (food in out) out[food] = 0;
  out[other] = before + share;
  return out;
}

interface Found {
  readonly column: number;
  readonly span: readonly [number, number];
  readonly share: number;
}

/** Nearest share first; among those as near, of the same group first, then the one with the most room. */
function nearer({ foods }: Pantry, i: number, share: number, a: Found, b: Found): number {
  const off = (f: Found) => Math.abs(f.share - share);
  const apart = off(a) - off(b);
  if (Math.abs(apart) > 1e-9) return apart;
  const alien = (f: Found) => (foods[f.column]!.group === foods[i]!.group ? 0 : 1);
  return alien(a) - alien(b) || b.span[1] - b.span[0] - (a.span[1] - a.span[0]);
}

function swapOf(pantry: Pantry, x: Float64Array, i: number, found: Found, ruled: readonly Tag[]): Swap {
  const { foods, refs } = pantry;
  const { column, share } = found;
  const [low, high] = found.span;
  const food = foods[column]!;
  const had = x[column]!;
  const inMix = had > NO_SHARE;
  const unsure = ruled.filter((tag) => food.amount(tag).status === 'unknown');
  return {
    ...(refs[column] ? { ref: refs[column] } : { id: food.id }),
    name: food.name,
    ...(food.group === undefined ? {} : { group: food.group }),
    inMix,
    share,
    low,
    high,
    becomes: had + share,
    unsure,
    sentence: swapSentence(
      foods[i]!.name,
      x[i]!,
      food.name,
      inMix ? had : undefined,
      share,
      low,
      high,
      unsure,
    ),
  };
}

function swapSentence(
  out: string,
  taken: number,
  name: string,
  had: number | undefined,
  share: number,
  low: number,
  high: number,
  unsure: readonly Tag[],
): string {
  const said = shareFigures(share, low, high);
  const span =
    said.low === said.high
      ? ' (and no other share)'
      : said.low === 0
        ? ` (up to ${said.high} %)`
        : ` (${said.low} to ${said.high} %)`;
  const much =
    had === undefined
      ? `${name}, ${said.share} %${span}`
      : `more ${name}, ${said.share} % on top of its ${figure(had)} %${span}`;
  const doubt = unsure.length > 0 ? ` Its ${joined(unsure.map(words))} is not known.` : '';
  return `${out} ${figure(taken)} % can be replaced by ${much}.${doubt}`;
}

/** Rounded to what people read, with as many decimals as it takes for the rounded share to lie in the span. */
function shareFigures(share: number, low: number, high: number) {
  for (let decimals = 1; decimals <= 4; decimals++) {
    const unit = 10 ** decimals;
    const up = Math.ceil(low * unit - 1e-6) / unit;
    const down = Math.floor(high * unit + 1e-6) / unit;
    if (up > down) continue;
    return { share: Math.min(down, Math.max(up, Math.round(share * unit) / unit)), low: up, high: down };
  }
  const rounded = Number(share.toFixed(4));
  return { share: rounded, low: rounded, high: rounded };
}

/**
 * The shares s of food j, on top of what it has, that keep everything once all of food i is out; undefined for none.
 * With rest = 100 - x_i - x_j, the others are scaled by t(s) = (100 - x_j - s) / rest.
 */
function spanOf(
  pantry: Pantry,
  x: Float64Array,
  mix: readonly number[],
  i: number,
  j: number,
): readonly [number, number] | undefined {
  const { lower, upper, used, advised, spaces, leaving } = pantry;
  const had = x[j]!;
  const rest = 100 - x[i]! - had;
  const alone = rest <= NO_SHARE;
  const t0 = alone ? 0 : (100 - had) / rest;
  const t1 = alone ? 0 : 1 / rest;
  const s = new Span(alone ? 100 - had : 0, 100 - had);
  s.keep(had - Math.max(lower[j]!, used[j]!), 1);
  s.keep(Math.min(upper[j]!, advised[j]!) - had, -1);
  for (const k of mix) {
    if (k === i || k === j || alone) continue;
    const share = x[k]!;
    const least = Math.max(lower[k]!, used[k]!);
    s.keep(share * t0 - least, -share * t1);
    s.keep(upper[k]! - share * t0, share * t1);
  }
  for (let r = 0; r < spaces.length && !s.empty; r++) {
    const { g, h, cone } = spaces[r]!;
    const others = sumOver(mix, g, x, i, j);
    const p = others * t0 + g[j]! * had - h;
    const q = g[j]! - others * t1;
    if (!cone) {
      s.keep(p, q);
      continue;
    }
    let squares = 0;
    for (const k of mix) if (k !== i && k !== j) squares += (cone.q[k]! * x[k]!) ** 2;
    const own = cone.q[j]! ** 2;
    s.keepBeyondRoot(p, q, {
      constant: cone.q0 ** 2 + squares * t0 * t0 + own * had * had,
      linear: 2 * own * had - 2 * squares * t0 * t1,
      square: squares * t1 * t1 + own,
    });
  }
  for (let r = 0; r < leaving.length && !s.empty; r++) {
    const { g, h } = leaving[r]!;
    const others = sumOver(mix, g, x, i, j);
    // Of the foods that keep their proportions, the one that the row can spare least decides for all of them.
    let most = 0;
    for (const k of mix) if (k !== i && k !== j) most = Math.max(most, g[k]! * x[k]!);
    s.keep((others - most) * t0 + g[j]! * had - h, g[j]! - (others - most) * t1);
    s.keep(others * t0 - h, -others * t1);
  }
  return s.empty ? undefined : [s.low, s.high];
}

/** What the foods that keep their proportions add to a row now. */
function sumOver(mix: readonly number[], g: Float64Array, x: Float64Array, i: number, j: number): number {
  let sum = 0;
  for (const k of mix) if (k !== i && k !== j) sum += g[k]! * x[k]!;
  return sum;
}

/** A span of s that conditions narrow. */
class Span {
  low: number;
  high: number;

  constructor(low: number, high: number) {
    this.low = low;
    this.high = high;
  }

  /** Ends that have crossed by no more than the arithmetic's own error are one point. */
  get empty(): boolean {
    return this.low > this.high + SOLVER_TOLERANCE;
  }

  /** Keeps the s with p + q s >= 0. */
  keep(p: number, q: number): void {
    const room = p + SOLVER_TOLERANCE;
    if (Math.abs(q) <= 1e-13) {
      if (room < 0) this.none();
    } else if (q > 0) this.low = Math.max(this.low, -room / q);
    else this.high = Math.min(this.high, -room / q);
  }

  /**
   * Keeps the s with p + q s >= sqrt(v(s)), v a quadratic that is nowhere negative. The root is convex, so these s are
   * one span; it ends where the square of the line meets v.
   */
  keepBeyondRoot(p: number, q: number, v: Quadratic): void {
    const room = p + SOLVER_TOLERANCE;
    const a = q * q - v.square;
    const b = 2 * room * q - v.linear;
    const c = room * room - v.constant;
    this.keep(p, q);
    if (a === 0) {
      if (Math.abs(b) <= 1e-15) {
        if (c < 0) this.none();
      } else if (b > 0) this.low = Math.max(this.low, -c / b);
      else this.high = Math.min(this.high, -c / b);
      return;
    }
    const inner = b * b - 4 * a * c;
    if (inner < 0) {
      if (a < 0) this.none();
      return;
    }
    // The two ends without cancellation (Press et al., Numerical Recipes, 5.6).
    const half = -(b + (b < 0 ? -1 : 1) * Math.sqrt(inner)) / 2;
    const ends = half === 0 ? [0, 0] : [half / a, c / half];
    const [first, last] = [Math.min(...ends), Math.max(...ends)];
    if (a < 0) {
      this.low = Math.max(this.low, first);
      this.high = Math.min(this.high, last);
    } else if (q > 0) this.low = Math.max(this.low, last);
    else this.high = Math.min(this.high, first);
  }

  none(): void {
    this.low = Number.POSITIVE_INFINITY;
  }
}

/** constant + linear s + square s^2. */
interface Quadratic {
  readonly constant: number;
  readonly linear: number;
  readonly square: number;
}

function ruledTags(problem: Problem): Tag[] {
  return [
    ...new Set(
      problem.rules.flatMap((r) => ('nutrient' in r ? [r.nutrient] : 'ratio' in r ? [...r.ratio] : [])),
    ),
  ];
}

function pantryOf(problem: Problem, reference: Reference, beside: Ration['beside'] | undefined): Pantry {
  const advice = applyCautions({ ...problem, cautions: 'apply' }, reference);
  const { blocked, caps } = problem.cautions === 'apply' ? advice : NO_CAUTIONS;
  const open = problem.foods.flatMap((f, row) => (f.refused || blocked.has(row) ? [] : [row]));
  const own = open.map((row) => foodAmounts(problem.foods[row]!, reference, problem.variation));
  const tables = candidates(problem, reference);
  const foods = [...own, ...tables.map((t) => t.stocked)];
  const ration = new Ration(
    foods,
    beside ??
      besideAmounts(problem, reference).map((stocked, row) => ({
        stocked,
        part: problem.beside[row]!.share_of_ration / 100,
      })),
  );
  const byColumn = (of: (row: number) => number, further: number) =>
    Float64Array.from(foods, (_, k) => (k < open.length ? of(open[k]!) : further));
  const weighable = (100 * (problem.least_grams ?? 0)) / problem.batch_grams;
  const rows = (sides: ReturnType<typeof linearBounds>) => sides.map((s) => s.halfSpace(s.bound));
  return {
    foods,
    refs: [...own.map(() => undefined), ...tables.map((t) => t.food.ref)],
    lower: byColumn((row) => problem.foods[row]!.min ?? 0, 0),
    upper: byColumn((row) => Math.min(problem.foods[row]!.max ?? 100, caps.get(row)?.max ?? 100), 100),
    used: byColumn((row) => Math.max(problem.foods[row]!.if_used ?? 0, weighable), weighable),
    advised: byColumn((row) => (advice.blocked.has(row) ? 0 : (advice.caps.get(row)?.max ?? 100)), 100),
    spaces: rows(linearBounds(problem, ration, [], sdsFromMean(problem), new Map())),
    leaving: problem.drop_one ? rows(boundsWithout(problem, ration)) : [],
  };
}

interface Candidate {
  readonly food: ReferenceFood;
  readonly stocked: FoodAmounts;
}

const kept = new WeakMap<Reference, Map<string, readonly Candidate[]>>();

/** Plain foods that are dry enough and free of cautions; gathered once for a species. */
function plainDryFoods(problem: Problem, reference: Reference): readonly Candidate[] {
  const lists = kept.get(reference) ?? new Map<string, readonly Candidate[]>();
  kept.set(reference, lists);
  const key = JSON.stringify([problem.variation, problem.species]);
  let foods = lists.get(key);
  if (!foods) {
    foods = reference
      .plainFoods()
      .filter((f) => (f.composition.WATER ?? 100) <= DAMPEST && !isCautioned(f.ref, problem, reference))
      .map((food) => ({
        food,
        stocked: foodAmounts(
          { id: food.ref, ref: food.ref, group: food.group },
          reference,
          problem.variation,
        ),
      }));
    lists.set(key, foods);
  }
  return foods;
}

/** Foods of the tables that the problem does not name yet, refused ones included, and that no missing figure blurs. */
function candidates(problem: Problem, reference: Reference): Candidate[] {
  const refs = new Set(problem.foods.map((f) => f.ref));
  const names = new Set(problem.foods.map((f) => f.name?.toLowerCase()));
  const ruled = ruledTags(problem);
  return plainDryFoods(problem, reference).filter(
    ({ food, stocked }) =>
      !refs.has(food.ref) &&
      !names.has(food.name.toLowerCase()) &&
      ruled.every((tag) => stocked.amount(tag).status !== 'unknown'),
  );
}
