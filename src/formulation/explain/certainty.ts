/**
 * How sure it is that a mix which breaks no rule is in range: what of it rests on figures that nobody knows, and what the
 * bags leave to chance.
 */
import { normalBelow } from '../../nutrition/normal.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import type { CountedAmount, FoodAmounts } from '../amounts/food-amounts.ts';
import type { NutrientRule, Problem, RatioRule } from '../problem/problem.ts';
import type { OpenFigure, Reservations, Unproven } from '../problem/result.ts';
import { type Ration, valueAt } from '../solve/bounds.ts';
import { AT_BOUND } from '../solve/tolerances.ts';
import { elementAt } from '../solve/vectors.ts';

/** All rules at once must hold with this chance for a mix to be surely in range (common practice, no source). */
const SURE = 0.8;

/**
 * What keeps a mix that breaks no rule from being surely in range; undefined where nothing does.
 * @param x shares of the open foods, percent, 100 in all
 * @param chance that every ruled nutrient is in range at once
 */
export function reservationsAbout(
  problem: Problem,
  ration: Ration,
  x: Float64Array,
  chance: number,
): Reservations | undefined {
  const contents = problem.rules.flatMap((rule, i) =>
    'nutrient' in rule || 'ratio' in rule
      ? [{ rule, pointer: `/rules/${i}`, at: new Content(rule, ration, x) }]
      : [],
  );
  const no_spread = contents.length > 0 && !contents.some(({ at }) => at.spread(0) > 0);
  const together = contents.reduce(
    (all, { rule, at }) => ('ratio' in rule ? all * at.chance() : all),
    chance,
  );
  const unproven = contents.flatMap(({ pointer, at }) => at.unproven(pointer));
  const unlikely = !no_spread && together < SURE;
  if (unproven.length === 0 && !no_spread && !unlikely) return undefined;
  return { unproven, no_spread, ...(unlikely && { chance: together }) };
}

type Counted = (a: CountedAmount) => number;
const value: Counted = (a) => a.value;
const sd: Counted = (a) => a.sd;
/**
 * An end of what an amount may be. Where its spread is known, that speaks for it, unless the value is no more than what a
 * label guarantees from the other side: "at least 4" says nothing of how much more it is.
 */
const least: Counted = (a) =>
  a.status === 'known' || (a.sd > 0 && a.guaranteed !== 'most') ? a.value : a.low;
const most: Counted = (a) =>
  a.status === 'known' || (a.sd > 0 && a.guaranteed !== 'least') ? a.value : a.high;

/** Something fed, with the grams of it in 100 g of what a rule counts. */
interface Part {
  readonly food: FoodAmounts;
  readonly weight: number;
  readonly beside: boolean;
}

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
   * Bounds that amounts which are not known, wherever they lie, can carry it past. An unknown amount that counts as the
   * least it can be is on the safe side of a least bound, and not of a most.
   */
  unproven(pointer: string): Unproven[] {
    const { rule } = this;
    const on = rule.on ?? 'mix';
    const nutrients = 'ratio' in rule ? rule.ratio : [rule.nutrient];
    return (['min', 'max'] as const).flatMap((side) => {
      const bound = rule[side];
      if (bound === undefined) return [];
      const past = this.past(side, bound);
      const slack = AT_BOUND * Math.max(1, Math.abs(bound));
      if (!(past > slack)) return [];
      return [
        { pointer, on, nutrients, side, bound, figures: this.openFigures(side, bound, { past, slack }) },
      ];
    });
  }

  /** How far it may lie past a bound at the worst, in the content's unit; 0 or less where it cannot. */
  private past(side: 'min' | 'max', bound: number): number {
    return side === 'min' ? -this.over(bound, least, most) : this.over(bound, most, least);
  }

  /** The figures that are open at the end that is worse, the weightiest first. @param p.past see {@link past}, above 0 */
  private openFigures(
    side: 'min' | 'max',
    bound: number,
    p: { readonly past: number; readonly slack: number },
  ): OpenFigure[] {
    const [top, bottom] = this.tags();
    const up = side === 'max' ? 1 : -1;
    const found = this.parts().flatMap((part) => {
      const at = (tag: Tag, end: 'most' | 'least', factor: number) => {
        const amount = part.food.amount(tag);
        const worst = end === 'most' ? most(amount) : least(amount);
        const other = end === 'most' ? amount.low : amount.high;
        const reach = part.weight * factor * Math.abs(worst - other);
        if (!(reach > 0)) return [];
        // At its other end the figure gives back `reach`; where that is more than what is missing, part of it suffices.
        const needed = p.past / (part.weight * factor);
        const suffices = end === 'most' ? Math.max(other, worst - needed) : Math.min(other, worst + needed);
        const enough = reach >= p.past - p.slack ? suffices : undefined;
        const figure: OpenFigure = {
          food: part.food.id,
          name: part.food.name,
          beside: part.beside,
          nutrient: tag,
          end,
          ...(end === 'most' && amount.guaranteed === 'least' && { guaranteed: amount.low }),
          ...(end === 'least' && amount.guaranteed === 'most' && { guaranteed: amount.high }),
          ...(enough !== undefined && { enough }),
        };
        return [{ figure, reach }];
      };
      const inTop = at(top, up > 0 ? 'most' : 'least', 1);
      if (bottom === undefined) return inTop;
      // Much dry matter is little water, so the end of the water is the other one of the bottom's.
      const dry = bottom === 'WATER';
      return [
        ...inTop,
        ...at(bottom, up > 0 === dry ? 'most' : 'least', dry ? Math.abs(bound) / 100 : Math.abs(bound)),
      ];
    });
    return found.sort((a, b) => b.reach - a.reach).map(({ figure }) => figure);
  }

  /** What the quotient is of, and by: undefined where it is by 100 g as fed; of dry matter the water. */
  private tags(): readonly [top: Tag, bottom: Tag | undefined] {
    const { rule } = this;
    return 'ratio' in rule ? rule.ratio : [rule.nutrient, rule.basis === 'DM' ? 'WATER' : undefined];
  }

  private parts(): Part[] {
    const { ration, x, rule } = this;
    const on = rule.on ?? 'mix';
    return [
      ...ration.foods.map((food, i) => ({
        food,
        weight: ration.weight(on, elementAt(x, i)),
        beside: false,
      })),
      ...(on === 'mix' ? [] : ration.beside.map(({ food, part }) => ({ food, weight: part, beside: true }))),
    ];
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
