/** Two goals of a mix against each other, in the units that a keeper thinks in. */

import type { Goal } from '../../../../formulation/advice/frontier.ts';
import { effectiveFoods } from '../../../../formulation/explain/diversity.ts';
import { capital } from '../../../../formulation/explain/sentences.ts';
import type { Ingredient, Problem, Shares } from '../../../../formulation/problem/problem.ts';
import type { Evaluation } from '../../../../formulation/problem/result.ts';
import { words as nutrientWords, unitWords } from '../../../../formulation/solve/bounds.ts';
import { wantedShares } from '../../../../formulation/solve/build-ration.ts';
import { groupName } from '../../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../../words/words.ts';

/** A goal, and what is printed of it. */
export interface TradeGoal {
  readonly key: string;
  readonly goal: Goal;
  /** What it measures: the same for "less" and "more" of one thing. */
  readonly measures: string;
  /** In a list of goals: "less fat of the ration". */
  readonly name: string;
  /** Over an axis: "Fat of the ration". */
  readonly axis: string;
  readonly unit: string;
  /** Which way along the axis the goal lies. */
  readonly better: 'less' | 'more';
  /** The better direction in a word: "cheaper". */
  readonly betterWord: string;
}

/** A mix that is best in one goal for what it is in the other. */
export interface TradePoint {
  readonly shares: Shares;
  /** Both goals in the unit of their axis. */
  readonly a: number;
  readonly b: number;
}

/** What the measures are worked out from. */
export interface TradeMix {
  readonly problem: Problem;
  /** Ids of the foods that may be used: neither refused nor kept out by a caution. */
  readonly open: readonly string[];
  /** Group of each food, also where the food has it from the tables. */
  readonly groups: Readonly<Record<string, string | undefined>>;
}

/** The goals that a mix can be asked: cost only where every price is known, contents that a rule names. */
export function tradeGoals({ problem, open, groups }: TradeMix): TradeGoal[] {
  const t = words().tradeOff.goals;
  const foods = openOf(problem, open);
  const goals: TradeGoal[] = [
    {
      key: 'near',
      measures: 'near',
      goal: { aim: 'near' },
      name: t.near,
      axis: t.nearAxis,
      unit: '%',
      better: 'less',
      betterWord: t.nearer,
    },
    {
      key: 'varied',
      measures: 'varied',
      goal: { aim: 'varied' },
      name: t.varied,
      axis: t.variedAxis,
      unit: t.foods,
      better: 'more',
      betterWord: t.moreVaried,
    },
  ];
  if (foods.length > 0 && foods.every((f) => f.price_per_kg !== undefined)) {
    goals.unshift({
      key: 'cheap',
      measures: 'cheap',
      goal: { aim: 'cheap' },
      name: t.cheap,
      axis: t.cheapAxis,
      unit: t.perKg,
      better: 'less',
      betterWord: t.cheaper,
    });
  }
  const both = (measures: string, what: string, unit: string, goal: (aim: 'less' | 'more') => Goal) => {
    for (const better of ['less', 'more'] as const) {
      goals.push({
        key: `${better} ${measures}`,
        measures,
        goal: goal(better),
        name: t[better](what),
        axis: capital(what),
        unit,
        better,
        betterWord: better === 'less' ? t.lessWord : t.moreWord,
      });
    }
  };
  const seen = new Set<string>();
  for (const rule of problem.rules) {
    if (!('nutrient' in rule)) continue;
    const { nutrient, on = 'mix' } = rule;
    const key = `${nutrient} ${on}`;
    if (seen.has(key)) continue;
    seen.add(key);
    both(key, (on === 'mix' ? t.ofMix : t.ofRation)(nutrientWords(nutrient)), unitWords(nutrient), (aim) => ({
      aim,
      nutrient,
      on,
    }));
  }
  const used = new Set(foods.flatMap((f) => groups[f.id] ?? []));
  if (used.size > 1) {
    for (const group of used) {
      const what = t.group(inSentence(groupName(group)));
      both(`group ${group}`, what, '%', (aim) => ({ aim, group }));
    }
  }
  return goals;
}

/** What is worth looking at first: cost against variety; without prices fat, or else any content, against nearness. */
export function usualPair(goals: readonly TradeGoal[]): readonly [TradeGoal, TradeGoal] {
  const of = (test: (g: TradeGoal) => boolean) => goals.find(test);
  const near = of((g) => g.key === 'near')!;
  const varied = of((g) => g.key === 'varied')!;
  const cheap = of((g) => g.key === 'cheap');
  if (cheap) return [cheap, varied];
  const content =
    of((g) => isLessFat(g) && g.goal.on === 'ration') ??
    of(isLessFat) ??
    of((g) => 'nutrient' in g.goal && g.better === 'less');
  return content ? [content, near] : [varied, near];
}

function isLessFat(of: TradeGoal): of is TradeGoal & { goal: { on?: string } } {
  const { goal } = of;
  return 'nutrient' in goal && goal.aim === 'less' && goal.nutrient === 'FAT';
}

/**
 * A mix on the axis of a goal; undefined where that cannot be told.
 * @param value the goal's own number, where the formulation told it
 */
export function measure(
  { goal }: TradeGoal,
  { problem, open, groups }: TradeMix,
  shares: Shares,
  value: number | undefined,
): number | undefined {
  const foods = openOf(problem, open);
  const share = (f: Ingredient) => shares[f.id] ?? 0;
  if (goal.aim === 'varied') return effectiveFoods(foods.map(share));
  if (goal.aim === 'near') {
    const wants = wantedShares(foods.map((f) => f.want));
    const apart = foods.reduce((sum, f, i) => sum + Math.abs(share(f) - wants[i]!), 0);
    return apart / 2;
  }
  if (goal.aim === 'cheap') {
    let price = 0;
    for (const f of problem.foods) {
      if (share(f) <= 0) continue;
      if (f.price_per_kg === undefined) return undefined;
      price += (share(f) * f.price_per_kg) / 100;
    }
    return price;
  }
  if ('group' in goal) {
    return problem.foods.reduce((sum, f) => sum + (groups[f.id] === goal.group ? share(f) : 0), 0);
  }
  return value;
}

/** The points of a frontier on the two axes. */
export function tradePoints(
  frontier: readonly { readonly a: number; readonly b: number; readonly shares: Shares }[],
  [first, second]: readonly [TradeGoal, TradeGoal],
  mix: TradeMix,
): TradePoint[] {
  return frontier.flatMap(({ a, b, shares }) => {
    const at = [measure(first, mix, shares, a), measure(second, mix, shares, b)];
    return at[0] === undefined || at[1] === undefined ? [] : [{ shares, a: at[0], b: at[1] }];
  });
}

/** Where the mix as it stands lies; undefined where one of the two cannot be told. */
export function presentPoint(
  [first, second]: readonly [TradeGoal, TradeGoal],
  mix: TradeMix,
  shares: Shares,
  evaluation: Evaluation | undefined,
): TradePoint | undefined {
  const content = ({ goal }: TradeGoal) =>
    'nutrient' in goal ? evaluation?.nutrients[goal.nutrient]?.[goal.on ?? 'mix'] : undefined;
  const a = measure(first, mix, shares, content(first));
  const b = measure(second, mix, shares, content(second));
  return a === undefined || b === undefined ? undefined : { shares, a, b };
}

/** What stands after a value: "per kg", "foods in equal parts". */
export function unitOf({ goal, unit }: TradeGoal): string {
  return goal.aim === 'varied' ? words().tradeOff.goals.equalFoods : unit;
}

/** What a point is, said in one breath: "fat of the ration 4 %, as varied as 12 foods in equal parts". */
export function pointWords(
  [first, second]: readonly [TradeGoal, TradeGoal],
  { a, b }: Pick<TradePoint, 'a' | 'b'>,
): string {
  const t = words().tradeOff.goals;
  const value = (goal: TradeGoal, v: number) => inSentence(t.value(short(goal), v, unitOf(goal)));
  return t.both(value(first, a), value(second, b));
}

/** What an axis measures, in a few words: for a table's head and a point's name. */
export function short({ goal, axis }: TradeGoal): string {
  if (goal.aim === 'near') return words().tradeOff.goals.nearShort;
  if (goal.aim === 'varied') return words().tradeOff.goals.variedShort;
  return axis;
}

/** Contents among the two of which figures are missing: the picture then counts only what is known. */
export function unknownIn(pair: readonly TradeGoal[], evaluation: Evaluation | undefined): TradeGoal[] {
  const missing = ({ goal }: TradeGoal) => {
    if (!('nutrient' in goal)) return false;
    const line = evaluation?.nutrients[goal.nutrient];
    return line !== undefined && (goal.on === 'ration' ? line.coverage : line.coverage_mix) < 99.95;
  };
  return pair.filter(missing);
}

function openOf({ foods }: Problem, open: readonly string[]): readonly Ingredient[] {
  return foods.filter((f) => open.includes(f.id));
}

const inSentence = (text: string) => words().wishes.within(text);
