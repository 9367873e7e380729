/**
 * How sure it is that a mix which breaks no rule is in range. Three states, told apart everywhere: surely in range; in
 * range on the average, or if missing figures turn out well; not in range.
 */
import { normalBelow } from '../../nutrition/normal.ts';
import type { CountedAmount, FoodAmounts } from '../amounts/food-amounts.ts';
import type { NutrientRule, Problem, RatioRule } from '../problem/problem.ts';
import { type Ration, valueAt } from '../solve/bounds.ts';
import { AT_BOUND } from '../solve/tolerances.ts';
import { elementAt } from '../solve/vectors.ts';

/** All rules at once must hold with this chance for a mix to be surely in range (common practice, no source). */
const SURE = 0.8;

/** Why a mix that breaks no rule is not surely in range. */
export interface Reservations {
  /** Chance that all rules hold at once, foods being as varied as they are; absent where it is high enough. */
  readonly chance?: number;
  /** How much the figures vary is known of nothing that a rule rests on, so no chance can be told. */
  readonly noSpread: boolean;
  /** Pointers of rules that amounts which nobody knows may break. */
  readonly missing: readonly string[];
}

/**
 * What keeps a mix that breaks no rule from being surely in range.
 * @param x shares of the open foods, percent, 100 in all
 * @param chance that every ruled nutrient is in range at once
 */
export function reservationsAbout(
  problem: Problem,
  ration: Ration,
  x: Float64Array,
  chance: number,
): Reservations {
  const contents = problem.rules.flatMap((rule, i) =>
    'nutrient' in rule || 'ratio' in rule
      ? [{ rule, pointer: `/rules/${i}`, at: new Content(rule, ration, x) }]
      : [],
  );
  const noSpread = contents.length > 0 && !contents.some(({ at }) => at.spread(0) > 0);
  const together = contents.reduce(
    (all, { rule, at }) => ('ratio' in rule ? all * at.chance() : all),
    chance,
  );
  return {
    missing: contents.filter(({ at }) => at.mayBreak()).map(({ pointer }) => pointer),
    noSpread,
    ...(!noSpread && together < SURE && { chance: together }),
  };
}

/** Whether there is nothing to be said against a mix. */
export function isSure({ chance, noSpread, missing }: Reservations): boolean {
  return chance === undefined && !noSpread && missing.length === 0;
}

type Counted = (a: CountedAmount) => number;
const value: Counted = (a) => a.value;
const sd: Counted = (a) => a.sd;
/** An end of what an amount may be; where its spread is known, that speaks for it. */
const least: Counted = (a) => (a.status === 'known' || a.sd > 0 ? a.value : a.low);
const most: Counted = (a) => (a.status === 'known' || a.sd > 0 ? a.value : a.high);

/** What a rule bounds, as a quotient: a content by what it is counted in (100 g as fed, dry matter, another content). */
class Content {
  private readonly rule: NutrientRule | RatioRule;
  private readonly ration: Ration;
  private readonly x: Float64Array;

  constructor(rule: NutrientRule | RatioRule, ration: Ration, x: Float64Array) {
    this.rule = rule;
    this.ration = ration;
    this.x = x;
  }

  /**
   * Whether amounts that are not known, wherever they lie, can carry it past a bound. An unknown amount that counts as
   * the least it can be is on the safe side of a least bound, and not of a most.
   */
  mayBreak(): boolean {
    const { min, max } = this.rule;
    const slack = (bound: number) => AT_BOUND * Math.max(1, Math.abs(bound));
    return (
      (min !== undefined && this.over(min, least, most) < -slack(min)) ||
      (max !== undefined && this.over(max, most, least) > slack(max))
    );
  }

  /** Chance of lying within the bounds, foods and both contents independent and normal. */
  chance(): number {
    const above = (bound: number) => {
      const spread = this.spread(bound);
      const mean = this.over(bound, value, value);
      return spread > 0 ? normalBelow(mean / spread) : Number(mean >= -AT_BOUND);
    };
    const { min, max } = this.rule;
    return Math.max(0, (min === undefined ? 1 : above(min)) - (max === undefined ? 0 : above(max)));
  }

  /** Standard deviation of {@link over}, foods independent. */
  spread(bound: number): number {
    const { ration, x, rule } = this;
    const of = (f: FoodAmounts) =>
      Math.hypot(this.top(f, sd), 'ratio' in rule ? bound * this.bottom(f, sd) : 0);
    const on = rule.on ?? 'mix';
    const beside = on === 'mix' ? [] : ration.beside.map((b) => b.part * of(b.food));
    return Math.hypot(...ration.line(on, of).w.map((w, i) => w * elementAt(x, i)), ...beside);
  }

  /** The content less `bound` times what it is counted in: at least 0 where a least is kept, at most 0 where a most is. */
  private over(bound: number, top: Counted, bottom: Counted): number {
    const line = this.ration.line(
      this.rule.on ?? 'mix',
      (f) => this.top(f, top) - bound * this.bottom(f, bottom),
    );
    return valueAt(line, this.x);
  }

  private top(f: FoodAmounts, counted: Counted): number {
    return counted(f.amount('ratio' in this.rule ? this.rule.ratio[0] : this.rule.nutrient));
  }

  private bottom(f: FoodAmounts, counted: Counted): number {
    const { rule } = this;
    if ('ratio' in rule) return counted(f.amount(rule.ratio[1]));
    if (rule.basis !== 'DM') return 1;
    // Much dry matter is little water.
    const water = f.amount('WATER');
    return 1 - (counted === most ? least(water) : counted === least ? most(water) : counted(water)) / 100;
  }
}
