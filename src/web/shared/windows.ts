/** What the window pictures show: one view for each nutrient or ratio rule. */
import type { Composition } from '../../foods/food.ts';
import type { NutrientRule, Problem, RatioRule } from '../../formulation/problem/problem.ts';
import type { Evaluation } from '../../formulation/problem/result.ts';
import { countedName, nutrient, type Tag, unitWord } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';

export interface WindowView extends Contents {
  readonly key: string;
  readonly title: string;
  /** Unit with its basis, for people. */
  readonly unit: string;
  readonly min?: number;
  readonly max?: number;
  readonly on: 'mix' | 'ration';
  readonly chance?: number;
  readonly estimated: boolean;
  readonly unsure: boolean;
  readonly state: WindowState;
  readonly source?: string;
  /** The same bounds held against the other measure of fibre, where no rule of its own names that one. */
  readonly otherFibre?: OtherReading;
}

export type WindowState = 'in' | 'out' | 'unknown';

/** Contents per 100 g as the rule counts them, each where it lies on the picture. */
export interface Contents {
  readonly mix?: number;
  readonly ration?: number;
  readonly pellet?: number;
  /** The pellet's figure is the least it can be: crude fibre for dietary fibre, or the part that is known. */
  readonly pelletAtLeast?: boolean;
  /** Least and most the ration may hold: unknown amounts and two standard deviations together. */
  readonly low?: number;
  readonly high?: number;
  readonly coverage?: number;
}

/** What a rule on one measure of fibre would say of the other. */
export interface OtherReading extends Contents {
  readonly tag: Tag;
  readonly title: string;
  readonly state: WindowState;
}

const SLACK = 1e-4;

/** The two measures of fibre, each the other reading of a bound that only says "fibre". */
const OTHER_FIBRE: Partial<Record<Tag, Tag>> = { FIBC: 'FIBTG', FIBTG: 'FIBC' };

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
  const ruled = new Set(problem.rules.flatMap((r) => ('nutrient' in r ? [r.nutrient] : [])));
  return problem.rules.flatMap((rule, i) => {
    if ('ratio' in rule) return [ratioView(rule, i, at, pellet)];
    if (!('nutrient' in rule)) return [];
    const view = nutrientView(rule, i, at, { pellet, least });
    const other = OTHER_FIBRE[rule.nutrient];
    if (!other || ruled.has(other)) return [view];
    const contents = contentsOf(other, rule, at, { pellet, least });
    const state = stateOf(contents[view.on], rule);
    return [{ ...view, otherFibre: { ...contents, tag: other, title: nutrient(other).name, state } }];
  });
}

/** What is fed beside the mix, per 100 g as fed: amounts known, and amounts known only from below. */
interface BesideAmounts {
  readonly pellet: Composition | undefined;
  readonly least: Composition | undefined;
}

function nutrientView(
  rule: NutrientRule,
  i: number,
  at: Evaluation | undefined,
  beside: BesideAmounts,
): WindowView {
  const { unit } = nutrient(rule.nutrient);
  const t = words().shared.limits;
  return finished(rule, i, at, {
    title: countedName(rule.nutrient),
    unit: rule.basis === 'DM' ? t.per100Dry(unitWord(unit)) : t.per100(unitWord(unit)),
    ...contentsOf(rule.nutrient, rule, at, beside),
    chance: at?.in_range_chance[rule.nutrient],
  });
}

/** Contents of one nutrient on the basis of a rule. */
function contentsOf(
  tag: Tag,
  { basis }: NutrientRule,
  at: Evaluation | undefined,
  { pellet, least }: BesideAmounts,
): Contents {
  const line = at?.nutrients[tag];
  const water = at?.nutrients.WATER;
  const per = (value: number | undefined, moisture: number | undefined) =>
    value === undefined || basis !== 'DM' ? value : value / (1 - (moisture ?? 0) / 100);
  const own = pellet?.[tag] ?? least?.[tag];
  const spread = line ? 2 * line.sd_ration : 0;
  return {
    mix: per(line?.mix, water?.mix),
    ration: per(line?.ration, water?.ration),
    pellet: per(own, pellet?.WATER),
    pelletAtLeast: own !== undefined && pellet?.[tag] === undefined,
    low: per(line && Math.max(0, line.low - spread), water?.ration),
    high: per(line && line.high + spread, water?.ration),
    coverage: line?.coverage,
  };
}

function ratioView(rule: RatioRule, i: number, at: Evaluation | undefined, pellet?: Composition): WindowView {
  const t = words().shared.limits;
  const [over, under] = rule.ratio;
  const [a, b] = [at?.nutrients[over], at?.nutrients[under]];
  const divided = (x?: number, y?: number) => (x === undefined || !y ? undefined : x / y);
  return finished(rule, i, at, {
    title: t.ratio(nutrient(over).name, nutrient(under).name),
    unit: t.toOne,
    mix: divided(a?.mix, b?.mix),
    ration: divided(a?.ration, b?.ration),
    pellet: divided(pellet?.[over], pellet?.[under]),
    low: divided(a?.low, b?.high),
    high: divided(a?.high, b?.low),
    coverage: a && b && Math.min(a.coverage, b.coverage),
  });
}

type Drawn = Contents & Pick<WindowView, 'title' | 'unit' | 'chance'>;

function finished(
  rule: NutrientRule | RatioRule,
  i: number,
  at: Evaluation | undefined,
  drawn: Drawn,
): WindowView {
  const on = rule.on ?? 'mix';
  const { min, max } = rule;
  const pointer = `/rules/${i}`;
  const about = (d: { pointer: string }) => d.pointer === pointer || d.pointer.startsWith(`${pointer}/`);
  const state = stateOf(drawn[on], rule);
  return {
    ...drawn,
    key: pointer,
    min,
    max,
    on,
    source: rule.source,
    estimated: at?.estimated.some(about) ?? false,
    // Of a mix that breaks no rule it is known which missing figures can break one.
    unsure: (at?.in_range === 'no' ? at.unsure : at?.reservations?.unproven)?.some(about) ?? false,
    state: state === 'in' && at?.breaches.some(about) ? 'out' : state,
  };
}

/** Where a content lies; a hair past the bound, as rounding leaves it, is no breach. */
function stateOf(value: number | undefined, { min, max }: Pick<NutrientRule, 'min' | 'max'>): WindowState {
  if (value === undefined) return 'unknown';
  const tight = SLACK * Math.max(1, Math.abs(value));
  const out = (min !== undefined && value < min - tight) || (max !== undefined && value > max + tight);
  return out ? 'out' : 'in';
}

/** A number with as many decimals as its size deserves. */
export function figure(value: number): string {
  const size = Math.abs(value);
  return words().figures.fixed(value, size >= 100 ? 0 : size >= 10 ? 1 : 2);
}

/** "17 to 19", "at least 4", "at most 7". */
export function boundsText(min?: number, max?: number): string {
  const t = words().shared.limits;
  if (min !== undefined && max !== undefined) return t.between(min, max);
  if (min !== undefined) return t.least(min);
  if (max !== undefined) return t.most(max);
  return t.none;
}
