/** Preferences as linear costs: of shares, of foods used or bought, and of what comes out of the cupboard. */

import { words as texts } from '../../words/words.ts';
import type { FoodAmounts } from '../amounts/food-amounts.ts';
import type { Aim, Problem } from '../problem/problem.ts';
import type { Ration } from './bounds.ts';
import { groupWord, valueAt, words } from './bounds.ts';
import { NO_SHARE } from './tolerances.ts';
import { elementAt } from './vectors.ts';

/** How far, relatively, an aim may fall short of its best so that the solver's last digits do not rule. */
const AIM_SLACK = 1e-6;

export interface AimLine {
  readonly aim: Aim;
  /** What one percent of each food costs, where the aim is about shares. */
  readonly shares?: Float64Array;
  /** What each food costs that is used, is bought, or what a percent out of the cupboard costs. */
  readonly used?: number;
  readonly bought?: number;
  readonly fromCupboard?: number;
  /** Added to the costs above. */
  readonly constant: number;
  /** 1 where the aim's own number is made least, -1 where it is made most. */
  readonly sign: 1 | -1;
  /** How far it may fall short, in its own unit. */
  readonly give: number;
  /** The aim's own number: percent of the mix, number of foods, price per kg, or content. */
  value(x: ArrayLike<number>): number;
}

/** What an aim's number is: "the number of foods", "the fat of the ration". */
export function aimWords(aim: Aim): string {
  const { aim: t, subject } = texts().formulation;
  switch (aim.aim) {
    case 'liked':
      return t.liked;
    case 'cupboard':
      return t.cupboard;
    case 'few':
      return t.few;
    case 'few to buy':
      return t.fewToBuy;
    case 'cheap':
      return t.cheap;
    default:
      if ('nutrient' in aim) return t.of(subject[aim.on ?? 'mix'](words(aim.nutrient)));
      return t.of(subject.food('group' in aim ? groupWord(aim.group) : aim.food));
  }
}

/** What the cupboard holds of each food, percent of the batch; by column. */
export function onHandOf(problem: Problem, open: readonly number[]): Float64Array {
  return Float64Array.from(
    open,
    (row) => (100 * (elementAt(problem.foods, row).on_hand_grams ?? 0)) / problem.batch_grams,
  );
}

/** @param open rows in `problem.foods` of the columns */
export function aimLines(problem: Problem, ration: Ration, open: readonly number[]): AimLine[] {
  const onHand = onHandOf(problem, open);
  const foods = open.map((row) => elementAt(problem.foods, row));
  return (problem.aims ?? []).map((aim) => {
    const give = aim.give ?? 0;
    const line = (sign: 1 | -1, w: Float64Array, c = 0): AimLine => ({
      aim,
      sign,
      give,
      shares: w.map((v) => sign * v),
      constant: sign * c,
      value: (x) => valueAt({ w, c }, x),
    });
    const count = (x: ArrayLike<number>, beyond: ArrayLike<number>) =>
      Array.from(x).filter((v, i) => v > elementAt(beyond, i) + NO_SHARE).length;
    switch (aim.aim) {
      case 'liked':
        return line(
          -1,
          Float64Array.from(foods, (f) => Number(f.liked === true)),
        );
      case 'cheap':
        return line(
          1,
          Float64Array.from(foods, (f) => (f.price_per_kg ?? 0) / 100),
        );
      case 'cupboard':
        return {
          aim,
          sign: -1,
          give,
          fromCupboard: -1,
          constant: 0,
          value: (x) => onHand.reduce((sum, s, i) => sum + Math.min(s, elementAt(x, i)), 0),
        };
      case 'few': {
        const none = new Float64Array(open.length);
        return { aim, sign: 1, give, used: 1, constant: 0, value: (x) => count(x, none) };
      }
      case 'few to buy':
        return { aim, sign: 1, give, bought: 1, constant: 0, value: (x) => count(x, onHand) };
      default: {
        const sign = aim.aim === 'less' ? 1 : -1;
        if ('nutrient' in aim) {
          const { w, c } = ration.line(aim.on ?? 'mix', (f) => f.amount(aim.nutrient).value);
          return line(sign, w, c);
        }
        const counts = (f: FoodAmounts) => ('group' in aim ? f.group === aim.group : f.id === aim.food);
        return line(
          sign,
          Float64Array.from(ration.foods, (f) => Number(counts(f))),
        );
      }
    }
  });
}

/** The most that an aim's cost (its number times its sign) may come to, once its best is known. */
export function allowance(line: AimLine, best: number): number {
  return best + line.give + AIM_SLACK * Math.max(1, Math.abs(best));
}
