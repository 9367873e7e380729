/** Two goals of a mix against each other, in the units that a keeper thinks in. */
import type { Goal } from '../../../../formulation/advice/frontier.ts';
import { effectiveFoods } from '../../../../formulation/explain/diversity.ts';
import { capital, figure } from '../../../../formulation/explain/sentences.ts';
import type { Ingredient, Problem, Shares } from '../../../../formulation/problem/problem.ts';
import type { Evaluation } from '../../../../formulation/problem/result.ts';
import { unitWords, words } from '../../../../formulation/solve/bounds.ts';
import { wantedShares } from '../../../../formulation/solve/build-ration.ts';
import { groupName } from '../../../../household/reckon/mix/mix-edits.ts';

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
  const foods = openOf(problem, open);
  const goals: TradeGoal[] = [
    {
      key: 'near',
      measures: 'near',
      goal: { aim: 'near' },
      name: 'near to what I want',
      axis: 'How much of the mix differs from the wanted shares',
      unit: '%',
      better: 'less',
      betterWord: 'nearer',
    },
    {
      key: 'varied',
      measures: 'varied',
      goal: { aim: 'varied' },
      name: 'varied',
      axis: 'Variety: as varied as so many foods in equal parts',
      unit: 'foods',
      better: 'more',
      betterWord: 'more varied',
    },
  ];
  if (foods.length > 0 && foods.every((f) => f.price_per_kg !== undefined)) {
    goals.unshift({
      key: 'cheap',
      measures: 'cheap',
      goal: { aim: 'cheap' },
      name: 'cheap',
      axis: 'Price',
      unit: 'per kg',
      better: 'less',
      betterWord: 'cheaper',
    });
  }
  const both = (measures: string, what: string, unit: string, goal: (aim: 'less' | 'more') => Goal) => {
    for (const better of ['less', 'more'] as const) {
      goals.push({
        key: `${better} ${measures}`,
        measures,
        goal: goal(better),
        name: `${better} ${what}`,
        axis: capital(what),
        unit,
        better,
        betterWord: better,
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
    both(key, `${words(nutrient)} of the ${on}`, unitWords(nutrient), (aim) => ({ aim, nutrient, on }));
  }
  const used = new Set(foods.flatMap((f) => groups[f.id] ?? []));
  if (used.size > 1) {
    for (const group of used) {
      const what = `${inSentence(groupName(group))} in the mix`;
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
    of((g) => g.key === 'less FAT ration') ??
    of((g) => g.key.startsWith('less FAT')) ??
    of((g) => 'nutrient' in g.goal && g.better === 'less');
  return content ? [content, near] : [varied, near];
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

/** A value on an axis, for people: "5.25 per kg", "11.4 foods in equal parts". */
function valueWords(goal: TradeGoal, value: number): string {
  return `${figure(value)} ${unitOf(goal)}`;
}

/** What stands after a value: "per kg", "foods in equal parts". */
export function unitOf({ goal, unit }: TradeGoal): string {
  return goal.aim === 'varied' ? 'foods in equal parts' : unit;
}

/** What a point is, said in one breath: "fat of the ration 4 %, as varied as 12 foods in equal parts". */
export function pointWords(
  [first, second]: readonly [TradeGoal, TradeGoal],
  { a, b }: Pick<TradePoint, 'a' | 'b'>,
): string {
  const words = [`${short(first)} ${valueWords(first, a)}`, `${short(second)} ${valueWords(second, b)}`];
  return words.map(inSentence).join(', ');
}

/** What an axis measures, in a few words: for a table's head and a point's name. */
export function short({ goal, axis }: TradeGoal): string {
  if (goal.aim === 'near') return 'Differs from the wanted shares by';
  if (goal.aim === 'varied') return 'As varied as';
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

const inSentence = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
