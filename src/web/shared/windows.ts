/** What the window pictures show: one view for each nutrient or ratio rule. */
import type { Composition } from '../../foods/food.ts';
import type { NutrientRule, Problem, RatioRule } from '../../formulation/problem/problem.ts';
import type { Evaluation } from '../../formulation/problem/result.ts';
import { nutrient, unitWord } from '../../nutrition/nutrients.ts';

export interface WindowView {
  readonly key: string;
  readonly title: string;
  /** Unit with its basis, for people. */
  readonly unit: string;
  readonly min?: number;
  readonly max?: number;
  readonly on: 'mix' | 'ration';
  readonly mix?: number;
  readonly ration?: number;
  readonly pellet?: number;
  /** The pellet's figure is the least it can be: crude fibre for dietary fibre, or the part that is known. */
  readonly pelletAtLeast?: boolean;
  /** Least and most the ration may hold: unknown amounts and two standard deviations together. */
  readonly low?: number;
  readonly high?: number;
  readonly chance?: number;
  readonly coverage?: number;
  readonly estimated: boolean;
  readonly unsure: boolean;
  readonly state: 'in' | 'out' | 'unknown';
  readonly source?: string;
}

const SLACK = 1e-4;

/**
 * @param pellet composition of what is fed beside the mix, per 100 g as fed
 * @param least amounts of it that are known only from below
 */
export function windowViews(
  problem: Problem,
  at: Evaluation | undefined,
  pellet: Composition | undefined,
  least?: Composition,
): WindowView[] {
  return problem.rules.flatMap((rule, i) => {
    if ('nutrient' in rule) return [nutrientView(rule, i, at, pellet, least)];
    if ('ratio' in rule) return [ratioView(rule, i, at, pellet)];
    return [];
  });
}

function nutrientView(
  rule: NutrientRule,
  i: number,
  at: Evaluation | undefined,
  pellet?: Composition,
  least?: Composition,
): WindowView {
  const { name, unit } = nutrient(rule.nutrient);
  const line = at?.nutrients[rule.nutrient];
  const water = at?.nutrients.WATER;
  const dm = rule.basis === 'DM';
  const per = (value: number | undefined, moisture: number | undefined) =>
    value === undefined || !dm ? value : value / (1 - (moisture ?? 0) / 100);
  const own = pellet?.[rule.nutrient] ?? least?.[rule.nutrient];
  const atLeast = own !== undefined && pellet?.[rule.nutrient] === undefined;
  const spread = line ? 2 * line.sd_ration : 0;
  return finished(rule, i, at, {
    title: name,
    unit: `${unitWord(unit)} per 100 g${dm ? ' dry matter' : ''}`,
    mix: per(line?.mix, water?.mix),
    ration: per(line?.ration, water?.ration),
    pellet: per(own, pellet?.WATER),
    pelletAtLeast: atLeast,
    low: per(line && Math.max(0, line.low - spread), water?.ration),
    high: per(line && line.high + spread, water?.ration),
    chance: at?.in_range_chance[rule.nutrient],
    coverage: line?.coverage,
  });
}

function ratioView(rule: RatioRule, i: number, at: Evaluation | undefined, pellet?: Composition): WindowView {
  const [over, under] = rule.ratio;
  const [a, b] = [at?.nutrients[over], at?.nutrients[under]];
  const divided = (x?: number, y?: number) => (x === undefined || !y ? undefined : x / y);
  return finished(rule, i, at, {
    title: `${nutrient(over).name} to ${nutrient(under).name.toLowerCase()}`,
    unit: 'to 1',
    mix: divided(a?.mix, b?.mix),
    ration: divided(a?.ration, b?.ration),
    pellet: divided(pellet?.[over], pellet?.[under]),
    low: divided(a?.low, b?.high),
    high: divided(a?.high, b?.low),
    coverage: a && b && Math.min(a.coverage, b.coverage),
  });
}

type Drawn = Pick<
  WindowView,
  'title' | 'unit' | 'mix' | 'ration' | 'pellet' | 'pelletAtLeast' | 'low' | 'high' | 'chance' | 'coverage'
>;

function finished(
  rule: NutrientRule | RatioRule,
  i: number,
  at: Evaluation | undefined,
  drawn: Drawn,
): WindowView {
  const on = rule.on ?? 'mix';
  const value = drawn[on];
  const { min, max } = rule;
  const pointer = `/rules/${i}`;
  const about = (d: { pointer: string }) => d.pointer === pointer || d.pointer.startsWith(`${pointer}/`);
  const tight = SLACK * Math.max(1, Math.abs(value ?? 0));
  const breached =
    at?.breaches.some(about) ||
    (value !== undefined &&
      ((min !== undefined && value < min - tight) || (max !== undefined && value > max + tight)));
  return {
    ...drawn,
    key: pointer,
    min,
    max,
    on,
    source: rule.source,
    estimated: at?.estimated.some(about) ?? false,
    unsure: at?.unsure.some(about) ?? false,
    state: value === undefined ? 'unknown' : breached ? 'out' : 'in',
  };
}

/** A number with as many decimals as its size deserves. */
export function figure(value: number): string {
  const size = Math.abs(value);
  return value.toFixed(size >= 100 ? 0 : size >= 10 ? 1 : 2);
}

/** "17 to 19", "at least 4", "at most 7". */
export function boundsText(min?: number, max?: number): string {
  if (min !== undefined && max !== undefined) return `${trimmed(min)} to ${trimmed(max)}`;
  if (min !== undefined) return `at least ${trimmed(min)}`;
  if (max !== undefined) return `at most ${trimmed(max)}`;
  return 'no bounds';
}

function trimmed(value: number): string {
  return String(Number(value.toFixed(3)));
}
