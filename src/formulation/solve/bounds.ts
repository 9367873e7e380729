/**
 * Rules as half-spaces. A rule with both ends is two bounds, and so is a food with a least and a most share:
 * each bound can collide, be loosened and be named on its own, by JSON pointer.
 */
import { FOOD_GROUPS } from '../../foods/food.ts';
import { countedWord, nutrient, type Tag, unitWord } from '../../nutrition/nutrients.ts';
import { words as texts } from '../../words/words.ts';
import type { Caps } from '../amounts/apply-cautions.ts';
import type { FoodAmounts } from '../amounts/food-amounts.ts';
import type { CountRule, On, Problem, RatioRule, Rule } from '../problem/problem.ts';
import { jointCapBounds } from './joint-caps.ts';
import { dot, elementAt } from './vectors.ts';

export interface Spread {
  readonly q: Float64Array;
  readonly q0: number;
}

/** `g . x >= h` over the shares x (percent): a bound's half-space, or a tangent plane of what is curved. */
export interface Row {
  readonly g: Float64Array;
  readonly h: number;
}

/** A bound's row, scaled so that the largest |g| is 1. */
export interface HalfSpace extends Row {
  /** Where a confidence is asked, z x sd of each share's part, scaled as the row is: then `g . x - spread >= h`. */
  readonly cone?: Spread;
  /** What one unit of the scaled row is in the bound's own unit. */
  readonly scale: number;
}

/** One bound of one rule, or of one food's share, as it is spoken of. */
export interface Bound {
  readonly pointer: string;
  readonly side: 'min' | 'max';
  readonly bound: number;
  /** What the bound is about: "fat of the ration". */
  readonly subject: string;
  /** Unit printed after the bound. */
  readonly unit: string;
  /** Why it stands, where no rule of the keeper's put it there: a caution. Such a bound is not loosened. */
  readonly because?: string;
  /** What is asked, where subject and bound do not say it. */
  readonly says?: string;
  /** Pointer of the rule's bound that this one asks again of what is eaten when a food is left. */
  readonly restsOn?: string;
  /** Whether a confidence is asked of it, so that `value` is not the average. */
  readonly varies?: boolean;
  /** The actual content, ratio, share or number, at the safe end where a confidence is asked. */
  value(x: ArrayLike<number>): number;
}

/** A bound that is linear in the shares. */
export interface LinearBound extends Bound {
  /** The half-space for a given bound; the row of a ratio or of a dry-matter rule changes with the bound. */
  halfSpace(bound: number): HalfSpace;
  /** What one percent of a further food adds to the row of {@link halfSpace}, before that is scaled. */
  coefficient(bound: number, food: FoodAmounts): number;
}

/** A linear expression over the shares: constant + sum of w x share. */
export interface Line {
  readonly w: Float64Array;
  readonly c: number;
}

/** What is fed, as lines over the shares: of the mix (shares/100) or of the ration (with what is fed beside). */
export class Ration {
  readonly foods: readonly FoodAmounts[];
  readonly beside: readonly { readonly food: FoodAmounts; readonly part: number }[];
  /** The mix's part of the ration, 0 to 1. */
  readonly mixPart: number;

  constructor(foods: readonly FoodAmounts[], beside: readonly { food: FoodAmounts; part: number }[]) {
    this.foods = foods;
    this.beside = beside;
    this.mixPart = 1 - beside.reduce((sum, b) => sum + b.part, 0);
  }

  /** What one percent of a food in the mix adds to a content. */
  weight(on: On, amount: number): number {
    return ((on === 'mix' ? 1 : this.mixPart) * amount) / 100;
  }

  /** Content of something counted per food, as a line over the shares. */
  line(on: On, of: (food: FoodAmounts) => number): Line {
    const w = new Float64Array(this.foods.length);
    for (const [i, f] of this.foods.entries()) w[i] = this.weight(on, of(f));
    return {
      w,
      c: on === 'mix' ? 0 : this.beside.reduce((sum, b) => sum + b.part * of(b.food), 0),
    };
  }
}

/** Value of a line at given shares. */
export function valueAt(line: Line, x: ArrayLike<number>): number {
  let sum = line.c;
  for (let i = 0; i < line.w.length; i++) sum += line.w[i]! * x[i]!;
  return sum;
}

/** Least dry part of a food, so that a content of nothing in nothing is none. */
const HARDLY_ANY = 1e-9;

/**
 * The part of a food that is not water, up to 1. Unknown moisture counts at the end that is worse for the keeper: for a
 * least of dry matter as the least it can be, since that leaves the most to be filled; for a most as the greatest.
 */
export const dryPart = (side: 'min' | 'max') => (f: FoodAmounts) => {
  const { status, value, high } = f.amount('WATER');
  return Math.max(HARDLY_ANY, 1 - (status === 'unknown' && side === 'max' ? high : value) / 100);
};

/**
 * All linear bounds of a problem: of its rules first, then those of its foods and of what a caution allows of them.
 * @param openFoods row in `problem.foods` of each column
 */
export function linearBounds(
  problem: Problem,
  ration: Ration,
  openFoods: readonly number[],
  z: number,
  caps: Caps,
): LinearBound[] {
  const bounds: LinearBound[] = [];
  problem.rules.forEach((rule, i) => {
    // How many foods a mix has is no half-space: see counting.ts.
    if ('count' in rule) return;
    for (const side of ['min', 'max'] as const) {
      const bound = rule[side];
      if (bound !== undefined) bounds.push(ruleBound(rule, `/rules/${i}/${side}`, side, bound, ration, z));
    }
  });
  openFoods.forEach((row, column) => {
    const food = elementAt(problem.foods, row);
    const bounded = (pointer: string, side: 'min' | 'max', bound: number) =>
      shareBound(pointer, side, bound, elementAt(ration.foods, column), column, openFoods.length);
    for (const side of ['min', 'max'] as const) {
      const bound = food[side];
      if (bound === undefined || bound === (side === 'min' ? 0 : 100)) continue;
      bounds.push(bounded(`/foods/${row}/${side}`, side, bound));
    }
    const cap = caps.each.get(row);
    if (cap) bounds.push({ ...bounded(`/foods/${row}`, 'max', cap.max), because: cap.reason });
  });
  const shares = (counts: (f: FoodAmounts) => boolean) =>
    shareLine(ration, 'mix', (f) => (counts(f) ? 100 : 0));
  return [
    ...bounds,
    ...jointCapBounds(caps.together, ration.foods, openFoods, (pointer, max, subject, counts) =>
      lineBound(pointer, 'max', max, subject, '%', shares(counts), () => 0),
    ),
  ];
}

function ruleBound(
  rule: Exclude<Rule, CountRule>,
  pointer: string,
  side: 'min' | 'max',
  bound: number,
  ration: Ration,
  z: number,
): LinearBound {
  const on = rule.on ?? 'mix';
  if ('group' in rule) {
    const of = (f: FoodAmounts) => (f.group === rule.group ? 100 : 0);
    const subject = say().group[on](groupWord(rule.group));
    return lineBound(pointer, side, bound, subject, '%', shareLine(ration, on, of), (f) =>
      ration.weight(on, of(f)),
    );
  }
  if ('food' in rule) {
    const name = ration.foods.find((f) => f.id === rule.food)?.name ?? rule.food;
    const of = (f: FoodAmounts) => (f.id === rule.food ? 100 : 0);
    const subject = say().foodIn[on](name);
    return lineBound(pointer, side, bound, subject, '%', shareLine(ration, on, of), (f) =>
      ration.weight(on, of(f)),
    );
  }
  if ('ratio' in rule) {
    const [top, bottom] = rule.ratio;
    const subject = say()[on](ratioWords(rule));
    return quotientBound(
      pointer,
      side,
      bound,
      subject,
      '',
      ration,
      on,
      (f) => f.amount(top).value,
      denominatorOf(bottom),
    );
  }
  const tag = rule.nutrient;
  const unit = unitWords(tag, rule.basis === 'DM');
  const subject = say()[on](countedWord(tag));
  const spread = z > 0 ? spreadOf(tag, on, ration, z) : undefined;
  const of = (f: FoodAmounts) => f.amount(tag).value;
  if (rule.basis === 'DM')
    return quotientBound(pointer, side, bound, subject, unit, ration, on, of, dryPart(side), spread);
  const weight = (f: FoodAmounts) => ration.weight(on, of(f));
  return lineBound(pointer, side, bound, subject, unit, ration.line(on, of), weight, spread);
}

/** An unknown denominator of a ratio counts as the largest amount known of such foods. */
export const denominatorOf = (tag: Tag) => (f: FoodAmounts) => {
  const amount = f.amount(tag);
  return amount.status === 'unknown' ? f.largest(tag) : amount.value;
};

/** z x sd of each food's part in the content, and of what is fed beside. */
function spreadOf(tag: Tag, on: On, ration: Ration, z: number): Spread | undefined {
  const { w } = ration.line(on, (f) => z * f.amount(tag).sd);
  const beside = on === 'mix' ? [] : ration.beside.map((b) => z * b.part * b.food.amount(tag).sd);
  const q0 = Math.hypot(...beside);
  return q0 === 0 && w.every((v) => v === 0) ? undefined : { q: w, q0 };
}

/** How far a half-space is missed at given shares, scaled; at most 0 where it is kept. */
export function shortfall(space: Pick<HalfSpace, 'g' | 'h' | 'cone'>, x: ArrayLike<number>): number {
  return space.h - dot(space.g, x) + (space.cone ? spreadAt(space.cone, x) : 0);
}

/** The tangent plane at x of a half-space with a cone; undefined where x has no spread, and no plane is needed. */
export function tangent({ g, h, cone }: HalfSpace, x: ArrayLike<number>): Row | undefined {
  const length = cone ? spreadAt(cone, x) : 0;
  if (!cone || length === 0) return undefined;
  return { g: g.map((v, i) => v - (cone.q[i]! ** 2 * x[i]!) / length), h: h + cone.q0 ** 2 / length };
}

/** Length of the spread at given shares: z x sd of the content. */
function spreadAt(spread: Spread, x: ArrayLike<number>): number {
  let sum = spread.q0 * spread.q0;
  for (let i = 0; i < spread.q.length; i++) sum += (spread.q[i]! * x[i]!) ** 2;
  return Math.sqrt(sum);
}

/** A bound whose content is one line over the shares. */
function lineBound(
  pointer: string,
  side: 'min' | 'max',
  bound: number,
  subject: string,
  unit: string,
  line: Line,
  weight: (food: FoodAmounts) => number,
  spread?: Spread,
): LinearBound {
  const sign = side === 'min' ? 1 : -1;
  const halfSpace = (b: number) => scaled(line.w, sign, sign * (b - line.c), spread);
  const coefficient = (_: number, food: FoodAmounts) => sign * weight(food);
  const value = (x: ArrayLike<number>) => valueAt(line, x) - (spread ? sign * spreadAt(spread, x) : 0);
  const varies = spread !== undefined;
  return { pointer, side, bound, subject, unit, varies, halfSpace, coefficient, value };
}

/** A bound of one food's own share. It says nothing about foods that come in later. */
function shareBound(
  pointer: string,
  side: 'min' | 'max',
  bound: number,
  food: FoodAmounts,
  column: number,
  columns: number,
): LinearBound {
  const sign = side === 'min' ? 1 : -1;
  return {
    pointer,
    side,
    bound,
    subject: say().food(food.name),
    unit: '%',
    varies: false,
    halfSpace(b) {
      const g = new Float64Array(columns);
      g[column] = sign;
      return { g, h: sign * b, scale: 1 };
    },
    coefficient: () => 0,
    value: (x) => elementAt(x, column),
  };
}

/** A bound whose content is a quotient: `top - bound x bottom` against 0, linear for each bound. */
export function quotientBound(
  pointer: string,
  side: 'min' | 'max',
  bound: number,
  subject: string,
  unit: string,
  ration: Ration,
  on: On,
  top: (f: FoodAmounts) => number,
  bottom: (f: FoodAmounts) => number,
  spread?: Spread,
): LinearBound {
  const sign = side === 'min' ? 1 : -1;
  const halfSpace = (b: number) => {
    const line = ration.line(on, (f) => top(f) - b * bottom(f));
    return scaled(line.w, sign, -sign * line.c, spread);
  };
  const coefficient = (b: number, food: FoodAmounts) =>
    sign * ration.weight(on, top(food) - b * bottom(food));
  const over = ration.line(on, top);
  const under = ration.line(on, bottom);
  const value = (x: ArrayLike<number>) =>
    (valueAt(over, x) - (spread ? sign * spreadAt(spread, x) : 0)) / valueAt(under, x);
  const varies = spread !== undefined;
  return { pointer, side, bound, subject, unit, varies, halfSpace, coefficient, value };
}

function scaled(w: Float64Array, sign: number, h: number, spread?: Spread): HalfSpace {
  let scale = 0;
  for (const v of w) scale = Math.max(scale, Math.abs(v));
  // A rule that no share can move (all amounts unknown, or nothing but pellet fed) keeps its row as it is.
  if (scale === 0) scale = Math.max(1, Math.abs(h));
  const cone = spread && { q: spread.q.map((v) => v / scale), q0: spread.q0 / scale };
  return { g: w.map((v) => (sign * v) / scale), h: h / scale, scale, cone };
}

/** A share counts foods of the mix alone, never what is fed beside it. */
function shareLine(ration: Ration, on: On, of: (f: FoodAmounts) => number): Line {
  return { w: ration.line(on, of).w, c: 0 };
}

const say = () => texts().formulation.subject;

/** "calcium to phosphorus". */
export function ratioWords({ ratio: [top, bottom] }: Pick<RatioRule, 'ratio'>): string {
  return texts().nutrition.ratio(countedWord(top), countedWord(bottom));
}

/** A nutrient's name in the middle of a sentence. */
export function words(tag: Tag): string {
  return countedWord(tag);
}

/** The unit printed after a content: "%" for grams per 100 g. */
export function unitWords(tag: Tag, dryMatter = false): string {
  const { unit } = nutrient(tag);
  const t = texts().formulation;
  if (unit === 'g') return dryMatter ? t.percentDry : t.percent;
  return (dryMatter ? t.per100Dry : t.per100)(unitWord(unit));
}

/** A group by its name, in the language spoken: a group of the tables has one there, another stands as it is written. */
export function groupWord(group: string): string {
  const { language } = texts().figures.manner;
  // Problems and answers of the machine interface are in English and name a group as they write it.
  return language === 'en' ? group : (FOOD_GROUPS[group as keyof typeof FOOD_GROUPS] ?? group);
}
