/**
 * Every bound of a problem asked over the whole ration: percent of the ration of each food of the mix and of each food
 * beside it. There the shares beside need not be settled first, and all rules are linear: a content of the mix is a
 * quotient over the mix's own foods.
 */
import { words } from '../../words/words.ts';
import type { Caps } from '../amounts/apply-cautions.ts';
import type { FoodAmounts } from '../amounts/food-amounts.ts';
import type { CountRule, Problem, Rule } from '../problem/problem.ts';
import { groupWord, type LinearBound, quotientBound, Ration } from './bounds.ts';
import { type CountBound, countBoundsOf } from './counting.ts';
import { whenLeft } from './drop-one.ts';
import type { RuleSet } from './integer-question.ts';
import { jointCapBounds } from './joint-caps.ts';
import { measureOf } from './measure.ts';
import { elementAt } from './vectors.ts';

/** The mix has to be something: least part of the ration, percent. */
const LEAST_MIX = 1;

export interface RationQuestion {
  readonly problem: Problem;
  /** Rows in `problem.foods` of the foods that may be used, and those foods. */
  readonly open: readonly number[];
  readonly foods: readonly FoodAmounts[];
  readonly beside: readonly FoodAmounts[];
  readonly caps: Caps;
  /** Standard deviations that a bound keeps from the mean. */
  readonly z: number;
}

/** Columns: the foods of the mix, then those beside it. */
export interface WholeRation extends RuleSet {
  /** Columns of the mix: a share of the mix is percent of what they hold together. */
  readonly mix: readonly number[];
}

export function wholeRationOf(question: RationQuestion): WholeRation {
  const { problem, open, foods, beside } = question;
  const ration = new Ration([...foods, ...beside], []);
  const mix = [...foods.keys()];
  const shares = (of: (b: Problem['beside'][number]) => number) => problem.beside.map(of);
  const ofMix = onlyMix(beside);
  return {
    mix,
    lower: Float64Array.from([...foods.map(() => 0), ...shares((b) => b.share_min ?? b.share_of_ration)]),
    upper: Float64Array.from([...foods.map(() => 100), ...shares((b) => b.share_max ?? b.share_of_ration)]),
    bounds: [...ruleBounds(question, ration), ...foodBounds(question, ration)],
    given: [
      quotientBound(
        '',
        'min',
        LEAST_MIX,
        words().formulation.subject.theMix,
        '%',
        ration,
        'mix',
        ofMix(() => 100),
        () => 1,
      ),
    ],
    counts: countBoundsOf(problem, open, foods).map((count) => overRation(count, mix)),
  };
}

type PerFood = (food: FoodAmounts) => number;

/** What counts for foods of the mix alone; a food that comes in later is one of them. */
function onlyMix(beside: readonly FoodAmounts[]): (of: PerFood) => PerFood {
  const apart = new Set(beside);
  return (of) => (f) => (apart.has(f) ? 0 : of(f));
}

function ruleBounds({ problem, foods, beside, z }: RationQuestion, ration: Ration): LinearBound[] {
  const ofMix = onlyMix(beside);
  const all = (of: PerFood) => of;
  const asked: LinearBound[] = [];
  const whenOneIsLeft: LinearBound[] = [];
  for (const [i, rule] of problem.rules.entries()) {
    if ('count' in rule) continue;
    const { subject, unit, top, bottom, sd } = measured(rule, foods);
    const on = rule.on ?? 'mix';
    const fed = on === 'ration' ? all : ofMix;
    const spread =
      sd && z > 0
        ? {
            q: ration.line(
              'mix',
              fed((f) => z * sd(f)),
            ).w,
            q0: 0,
          }
        : undefined;
    for (const side of ['min', 'max'] as const) {
      const bound = rule[side];
      if (bound === undefined) continue;
      const pointer = `/rules/${i}/${side}`;
      const words = `${subject} ${'food' in rule ? 'in' : 'of'} the ${on}`;
      // A share counts foods of the mix alone.
      const counted = 'nutrient' in rule || 'ratio' in rule ? fed(top) : ofMix(top);
      const ask = (over: PerFood, under: PerFood, cone?: typeof spread) =>
        quotientBound(pointer, side, bound, words, unit, ration, 'mix', over, under, cone);
      const under = bottom(side);
      asked.push(ask(counted, fed(under), spread));
      if (!problem.drop_one || !('nutrient' in rule || 'ratio' in rule)) continue;
      for (const food of foods) {
        const eaten =
          (of: PerFood): PerFood =>
          (f) =>
            f === food ? 0 : of(f);
        whenOneIsLeft.push(whenLeft(ask(eaten(fed(top)), eaten(fed(under))), food));
      }
    }
  }
  return [...asked, ...whenOneIsLeft];
}

/** What a rule bounds, as one content over another, and its standard deviation. */
function measured(rule: Exclude<Rule, CountRule>, foods: readonly FoodAmounts[]) {
  if ('nutrient' in rule) return { ...measureOf(rule), sd: (f: FoodAmounts) => f.amount(rule.nutrient).sd };
  if ('ratio' in rule) return { ...measureOf(rule), sd: undefined };
  const t = words().formulation.subject;
  const counts = (f: FoodAmounts) => ('group' in rule ? f.group === rule.group : f.id === rule.food);
  const subject =
    'group' in rule
      ? t.groupShare(groupWord(rule.group))
      : t.food(foods.find((f) => f.id === rule.food)?.name ?? rule.food);
  return {
    subject,
    unit: '%',
    top: (f: FoodAmounts) => (counts(f) ? 100 : 0),
    bottom: () => () => 1,
    sd: undefined,
  };
}

function foodBounds({ problem, open, foods, beside, caps }: RationQuestion, ration: Ration): LinearBound[] {
  const ofMix = onlyMix(beside);
  const joint = jointCapBounds(caps.together, foods, open, (pointer, max, subject, counts) =>
    quotientBound(
      pointer,
      'max',
      max,
      subject,
      '%',
      ration,
      'mix',
      (f) => (counts(f) ? 100 : 0),
      ofMix(() => 1),
    ),
  );
  const alone = open.flatMap((row, column) => {
    const food = elementAt(foods, column);
    const share = (f: FoodAmounts) => (f === food ? 100 : 0);
    const ask = (pointer: string, side: 'min' | 'max', bound: number) =>
      quotientBound(
        pointer,
        side,
        bound,
        words().formulation.subject.food(food.name),
        '%',
        ration,
        'mix',
        share,
        ofMix(() => 1),
      );
    const { min = 0, max = 100 } = elementAt(problem.foods, row);
    const cap = caps.each.get(row);
    return [
      ...(min > 0 ? [ask(`/foods/${row}/min`, 'min', min)] : []),
      ...(max < 100 ? [ask(`/foods/${row}/max`, 'max', max)] : []),
      ...(cap ? [{ ...ask(`/foods/${row}`, 'max', cap.max), because: cap.reason }] : []),
    ];
  });
  return [...alone, ...joint];
}

/** A counting bound judged by shares of the mix, where those of the whole ration are given. */
function overRation(count: CountBound, mix: readonly number[]): CountBound {
  return {
    ...count,
    value: (x) => {
      const whole = mix.reduce((sum, i) => sum + elementAt(x, i), 0);
      return count.value(mix.map((i) => (100 * elementAt(x, i)) / whole));
    },
  };
}
