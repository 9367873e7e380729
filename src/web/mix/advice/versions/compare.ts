/** Two mixes side by side, as rows for a picture: foods, ruled contents, price, chance and variety. */
import { effectiveFoods } from '../../../../formulation/explain/diversity.ts';
import type {
  Ingredient,
  NutrientRule,
  Problem,
  RatioRule,
} from '../../../../formulation/problem/problem.ts';
import type { Evaluation } from '../../../../formulation/problem/result.ts';
import { type WindowView, windowViews } from '../../../shared/windows.ts';

/** One of the two: a mix at given shares, and how it stands. */
export interface ComparedMix {
  readonly problem: Problem;
  /** Percent by food id. */
  readonly shares: Readonly<Record<string, number>>;
  readonly evaluation: Evaluation;
}

/** The same thing of the first and of the second mix. */
interface Pair<T> {
  readonly a: T;
  readonly b: T;
}

export interface FoodRow {
  readonly key: string;
  /** The food as the second mix describes it, or the first where the second has it not. */
  readonly food: Ingredient;
  /** Share in each mix, percent; 0 where it holds none of it. */
  readonly share: Pair<number>;
  /** Second less first, percentage points. */
  readonly difference: number;
  /** Whether both mixes hold some of it, or which of them does. */
  readonly within: 'both' | 'a' | 'b';
}

/** How one mix stands against one rule; bounds are absent where it has no such rule. */
export interface RuleStanding {
  readonly min?: number;
  readonly max?: number;
  /** Content of what the rule is on, in the row's unit; undefined where nothing is known of it. */
  readonly value: number | undefined;
  /** Figures are missing for a part, so it may hold more. */
  readonly atLeast: boolean;
  readonly state: WindowView['state'] | 'unasked';
  /** The content rests on missing figures: it may be more. */
  readonly unsure: boolean;
  /** Chance of lying in the window; undefined where no rule asks, for ratios, and where figures are missing. */
  readonly chance: number | undefined;
}

export interface WindowRow {
  readonly key: string;
  readonly title: string;
  readonly unit: string;
  readonly on: 'mix' | 'ration';
  readonly at: Pair<RuleStanding>;
}

/** Price of a kilogram of the mix, or the foods without a price that keep it from being known. */
export type Price =
  | { readonly perKg: number; readonly missing?: undefined }
  | { readonly perKg?: undefined; readonly missing: readonly Ingredient[] };

/** What is told of a whole mix in one figure each. */
export interface Whole {
  readonly foods: number;
  /** {@link effectiveFoods}; undefined for a mix of nothing. */
  readonly variety: number | undefined;
  readonly price: Price;
  /** Chance that all windows are kept at once; undefined where none is asked for. */
  readonly allChance: number | undefined;
  /** Some ruled content rests on missing figures, so the chance holds as far as known. */
  readonly unsure: boolean;
  /** Rules and bounds that are broken. */
  readonly broken: number;
  /** Sum of the shares, percent. */
  readonly total: number;
}

export interface Comparison {
  /** Foods of either mix, those of which the second holds more first, by how much. */
  readonly foods: readonly FoodRow[];
  /** Nutrient and ratio rules of either mix, in the second's order, then those of the first alone. */
  readonly windows: readonly WindowRow[];
  readonly whole: Pair<Whole>;
}

/** A share below this is none, percent: as verdicts count it. */
const USED = 0.005;
/** Amounts known for this part of the weight, percent, count as known for all. */
const WHOLE = 99.5;

/**
 * Foods are the same where their id is, or else their reference number; rules where they bind the same content of
 * the same thing on the same basis.
 */
export function compareMixes(a: ComparedMix, b: ComparedMix): Comparison {
  return { foods: foodRows(a, b), windows: windowRows(a, b), whole: { a: whole(a), b: whole(b) } };
}

/** Share of a food as fed: none of a refused food, nor of one that must not be fed. */
function fed({ shares, evaluation }: ComparedMix, food: Ingredient): number {
  const share = shares[food.id] ?? 0;
  const out = food.refused || evaluation.cautions.some((c) => c.food === food.id && c.applied === 'blocked');
  return out || share <= USED ? 0 : share;
}

function foodRows(a: ComparedMix, b: ComparedMix): FoodRow[] {
  const known = new Set(b.problem.foods.map((f) => f.id));
  const twins = new Map<string, Ingredient>();
  for (const food of a.problem.foods) twins.set(`id ${food.id}`, food);
  for (const food of a.problem.foods) {
    if (food.ref && !known.has(food.id)) twins.set(`ref ${food.ref}`, food);
  }
  const paired = new Set<string>();
  const rows: FoodRow[] = [];
  const add = (food: Ingredient, share: Pair<number>) => {
    if (share.a === 0 && share.b === 0) return;
    const within = share.a === 0 ? 'b' : share.b === 0 ? 'a' : 'both';
    rows.push({ key: food.id, food, share, difference: share.b - share.a, within });
  };
  for (const food of b.problem.foods) {
    const byRef = food.ref ? twins.get(`ref ${food.ref}`) : undefined;
    const twin = twins.get(`id ${food.id}`) ?? (byRef && !paired.has(byRef.id) ? byRef : undefined);
    if (twin) paired.add(twin.id);
    add(food, { a: twin ? fed(a, twin) : 0, b: fed(b, food) });
  }
  for (const food of a.problem.foods) {
    if (!paired.has(food.id)) add(food, { a: fed(a, food), b: 0 });
  }
  return rows.sort((x, y) => y.difference - x.difference || y.share.b - x.share.b);
}

function windowRows(a: ComparedMix, b: ComparedMix): WindowRow[] {
  const rulesOf = { a: contentRules(a.problem), b: contentRules(b.problem) };
  const views = {
    a: windowViews(a.problem, a.evaluation, undefined),
    b: windowViews(b.problem, b.evaluation, undefined),
  };
  return [...new Set([...rulesOf.b.keys(), ...rulesOf.a.keys()])].map((key) => {
    const rule = (rulesOf.b.get(key) ?? rulesOf.a.get(key))!.rule;
    const seen = (side: ComparedMix, of: 'a' | 'b'): Drawn => {
      const own = rulesOf[of].get(key);
      const view = own && views[of].find((v) => v.key === `/rules/${own.index}`);
      const coverage = coverageOf(side.evaluation, rule);
      return { rule, coverage, asked: view !== undefined, view: view ?? unasked(side, rule) };
    };
    const drawn = { a: seen(a, 'a'), b: seen(b, 'b') };
    const { title, unit, on } = drawn.b.view;
    return { key, title, unit, on, at: { a: standing(drawn.a), b: standing(drawn.b) } };
  });
}

interface Drawn {
  readonly rule: NutrientRule | RatioRule;
  readonly coverage: number;
  readonly view: WindowView;
  readonly asked: boolean;
}

function standing({ view, asked, coverage, rule }: Drawn): RuleStanding {
  const value = coverage > 0 ? view[view.on] : undefined;
  const told = { value, atLeast: value !== undefined && 'nutrient' in rule && coverage < WHOLE };
  if (!asked) return { ...told, state: 'unasked', unsure: false, chance: undefined };
  const { min, max, unsure, chance } = view;
  const state = value === undefined ? 'unknown' : view.state;
  return { ...told, min, max, state, unsure, chance: unsure ? undefined : chance };
}

/** Percent, by weight, of what the rule is on for which its amounts are known; the lesser of a ratio's two. */
function coverageOf({ nutrients }: Evaluation, rule: NutrientRule | RatioRule): number {
  const tags = 'nutrient' in rule ? [rule.nutrient] : rule.ratio;
  const of = rule.on === 'ration' ? 'coverage' : 'coverage_mix';
  return Math.min(...tags.map((tag) => nutrients[tag]?.[of] ?? 0));
}

/** The content a rule is about, in a mix that has no such rule. */
function unasked({ problem, evaluation }: ComparedMix, rule: NutrientRule | RatioRule): WindowView {
  const { min: _min, max: _max, ...open } = rule;
  const still = { ...evaluation, breaches: [], estimated: [], unsure: [] };
  const [view] = windowViews({ ...problem, rules: [open] }, still, undefined);
  if (!view) throw new Error('a content rule has a window');
  return view;
}

/** Nutrient and ratio rules by what they bind; a second rule on the same content comes second in both mixes. */
function contentRules(problem: Problem): Map<string, { rule: NutrientRule | RatioRule; index: number }> {
  const found = new Map<string, { rule: NutrientRule | RatioRule; index: number }>();
  problem.rules.forEach((rule, index) => {
    if (!('nutrient' in rule || 'ratio' in rule)) return;
    const what = 'nutrient' in rule ? rule.nutrient : rule.ratio.join(':');
    const basis = 'nutrient' in rule && rule.basis === 'DM' ? 'DM' : '';
    let key = [what, rule.on ?? 'mix', basis].join(' ').trim();
    while (found.has(key)) key += '+';
    found.set(key, { rule, index });
  });
  return found;
}

function whole(side: ComparedMix): Whole {
  const { problem, evaluation } = side;
  const used = problem.foods.flatMap((food) => {
    const share = fed(side, food);
    return share > 0 ? [{ food, share }] : [];
  });
  const total = used.reduce((sum, u) => sum + u.share, 0);
  const asked = Object.keys(evaluation.in_range_chance).length > 0;
  const ruled = new Set(problem.rules.flatMap((r, i) => ('nutrient' in r ? [`/rules/${i}`] : [])));
  return {
    foods: used.length,
    variety: effectiveFoods(used.map((u) => u.share)),
    price: priceOf(used, total),
    allChance: asked ? evaluation.all_in_range_chance : undefined,
    unsure: evaluation.unsure.some((d) => ruled.has(d.pointer)),
    broken: evaluation.breaches.length,
    total,
  };
}

/** Per kilogram of what the shares weigh together; known only where every food used has a price. */
function priceOf(used: readonly { food: Ingredient; share: number }[], total: number): Price {
  const missing = used.map((u) => u.food).filter((f) => f.price_per_kg === undefined);
  if (missing.length > 0 || total === 0) return { missing };
  return { perKg: used.reduce((sum, u) => sum + u.share * u.food.price_per_kg!, 0) / total };
}
