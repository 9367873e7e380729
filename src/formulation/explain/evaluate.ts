/** How given shares stand: contents and how sure they are, rules kept or broken, and a verdict in one sentence. */

import { normalBelow } from '../../nutrition/normal.ts';
import { countedName, NUTRIENTS, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import type { CountedAmount, FoodAmounts } from '../amounts/food-amounts.ts';
import type { NutrientRule, Problem } from '../problem/problem.ts';
import type { Breach, CautionNote, Doubt, Evaluation, NutrientLine } from '../problem/result.ts';
import { type Bound, dryPart, type Ration, valueAt } from '../solve/bounds.ts';
import { AT_BOUND } from '../solve/tolerances.ts';
import { elementAt } from '../solve/vectors.ts';
import { reservationsAbout } from './certainty.ts';
import { breaks, isWhole, roomTo } from './in-range.ts';
import { bindingSentence, breachSentence, capital, joined } from './sentences.ts';
import { verdictOf } from './verdict.ts';

/** @param x shares of the open foods, percent; content is per 100 g of what they weigh together */
export function evaluate(
  problem: Problem,
  ration: Ration,
  bounds: readonly Bound[],
  x: ArrayLike<number>,
  cautions: readonly CautionNote[],
): Evaluation {
  const total = Array.from(x).reduce((sum, v) => sum + v, 0);
  const shares = total > 0 ? Float64Array.from(x, (v) => (v * 100) / total) : Float64Array.from(x);
  const nutrients = contents(problem, ration, shares);
  const { breaches, binding } = standing(bounds, shares);
  const { estimated, unsure } = doubts(problem, ration);
  const in_range_chance = chances(problem, nutrients, ration, shares);
  const all_in_range_chance = Object.values(in_range_chance).reduce((all, p) => all * p, 1);
  const whole = isWhole(total) && breaches.length === 0;
  // Only of a mix that breaks no rule is it asked how sure that is.
  const reservations = whole ? reservationsAbout(problem, ration, shares, all_in_range_chance) : undefined;
  const told: Omit<Evaluation, 'verdict'> = {
    total,
    nutrients,
    in_range_chance,
    all_in_range_chance,
    in_range: !whole ? 'no' : reservations ? 'not surely' : 'surely',
    ...(reservations && { reservations }),
    ruled: ruledBy(problem),
    breaches,
    binding,
    estimated,
    unsure,
    cautions,
  };
  return { ...told, verdict: verdictOf(told).sentence };
}

/** Content of every nutrient that is known of anything fed, or that a rule names. */
function contents(problem: Problem, ration: Ration, x: Float64Array): Evaluation['nutrients'] {
  const named = new Set(
    problem.rules.flatMap((r) => ('nutrient' in r ? [r.nutrient] : 'ratio' in r ? r.ratio : [])),
  );
  const out: Partial<Record<Tag, NutrientLine>> = {};
  for (const { tag } of NUTRIENTS) {
    const line = content(tag, ration, x);
    if (named.has(tag) || line.coverage > 0) out[tag] = line;
  }
  return out;
}

function content(tag: Tag, ration: Ration, x: Float64Array): NutrientLine {
  const mix = new Sums();
  for (const [i, food] of ration.foods.entries()) {
    const share = elementAt(x, i);
    if (share !== 0) mix.add(food.amount(tag), share / 100);
  }
  const whole = mix.times(ration.mixPart);
  for (const { food, part } of ration.beside) whole.add(food.amount(tag), part);
  return {
    mix: mix.value,
    ration: whole.value,
    low: whole.low,
    high: whole.high,
    coverage: Math.min(100, whole.known),
    low_mix: mix.low,
    high_mix: mix.high,
    coverage_mix: Math.min(100, mix.known),
    sd_mix: Math.sqrt(mix.squares),
    sd_ration: Math.sqrt(whole.squares),
  };
}

/** What parts of foods come to together, foods independent. */
class Sums {
  value = 0;
  low = 0;
  high = 0;
  /** Percent by weight of which the amount is known or estimated. */
  known = 0;
  squares = 0;

  times(part: number): Sums {
    const sums = new Sums();
    sums.value = part * this.value;
    sums.low = part * this.low;
    sums.high = part * this.high;
    sums.known = part * this.known;
    sums.squares = part * part * this.squares;
    return sums;
  }

  add({ status, value, low, high, sd }: CountedAmount, part: number): void {
    this.value += part * value;
    this.low += part * low;
    this.high += part * high;
    if (status !== 'unknown') this.known += 100 * part;
    this.squares += (part * sd) ** 2;
  }
}

function standing(bounds: readonly Bound[], x: Float64Array): Pick<Evaluation, 'breaches' | 'binding'> {
  const breaches: Breach[] = [];
  const binding: Evaluation['binding'][number][] = [];
  for (const b of bounds) {
    const { pointer, bound, side } = b;
    const actual = b.value(x);
    if (breaks(b, actual)) {
      breaches.push({
        pointer,
        sentence: capital(say().sentence(breachSentence(b, actual))),
        actual,
        bound,
        side,
      });
    } else if (roomTo(b, actual) <= AT_BOUND) {
      binding.push({ pointer, sentence: bindingSentence(b) });
    }
  }
  return { breaches, binding };
}

/** Chance of each ruled nutrient lying within all its windows, foods independent and normal; the least over its rules. */
function chances(
  problem: Problem,
  nutrients: Evaluation['nutrients'],
  ration: Ration,
  x: Float64Array,
): Evaluation['in_range_chance'] {
  const out: Partial<Record<Tag, number>> = {};
  const dry = (on: 'mix' | 'ration', side: 'min' | 'max') => valueAt(ration.line(on, dryPart(side)), x);
  for (const rule of problem.rules) {
    if (!('nutrient' in rule)) continue;
    const line = nutrients[rule.nutrient];
    if (!line) throw new Error(`a rule names ${rule.nutrient}, whose content was not worked out`);
    const on = rule.on ?? 'mix';
    const per = (side: 'min' | 'max') => (rule.basis === 'DM' ? dry(on, side) : 1);
    const mean = line[on];
    const sd = on === 'mix' ? line.sd_mix : line.sd_ration;
    const chance = within(
      mean,
      sd,
      (rule.min ?? Number.NEGATIVE_INFINITY) * per('min'),
      (rule.max ?? Number.POSITIVE_INFINITY) * per('max'),
    );
    out[rule.nutrient] = Math.min(out[rule.nutrient] ?? 1, chance);
  }
  return out;
}

function within(mean: number, sd: number, min: number, max: number): number {
  const close = 1e-9 * Math.max(1, Math.abs(mean));
  if (sd === 0) return mean >= min - close && mean <= max + close ? 1 : 0;
  return normalBelow((max - mean) / sd) - normalBelow((min - mean) / sd);
}

/** Rules that rest on estimates, and on amounts that nobody knows. */
export function doubts(problem: Problem, ration: Ration): Pick<Evaluation, 'estimated' | 'unsure'> {
  const estimated: Doubt[] = [];
  const unsure: Doubt[] = [];
  problem.rules.forEach((rule, i) => {
    const tags: readonly Tag[] = 'nutrient' in rule ? countedBy(rule) : 'ratio' in rule ? rule.ratio : [];
    const fed = rule.on === 'ration' ? [...ration.foods, ...ration.beside.map((b) => b.food)] : ration.foods;
    for (const tag of new Set(tags)) {
      const of = (status: CountedAmount['status']) => fed.filter((f) => f.amount(tag).status === status);
      const guessed = of('estimated');
      const unknown = of('unknown');
      const pointer = `/rules/${i}`;
      if (guessed.length > 0) {
        const sentence = say().foods.estimate(countedName(tag), names(guessed));
        estimated.push({ pointer, nutrient: tag, foods: guessed.map((f) => f.id), sentence });
      }
      if (unknown.length > 0)
        unsure.push({
          pointer,
          nutrient: tag,
          foods: unknown.map((f) => f.id),
          sentence: unknownSentence(tag, unknown),
        });
    }
  });
  return { estimated, unsure };
}

/** The amounts that a nutrient rule rests on: one of dry matter rests on the moisture too. */
function countedBy({ nutrient, basis }: NutrientRule): Tag[] {
  return basis === 'DM' ? [nutrient, 'WATER'] : [nutrient];
}

function unknownSentence(tag: Tag, foods: readonly FoodAmounts[]): string {
  const t = say().foods;
  const bounded = foods.every((f) => f.amount(tag).low > 0);
  if (tag === 'FIBTG' && bounded) return t.crudeAsLeast(names(foods));
  if (tag === 'WATER') return t.water(names(foods));
  return (bounded ? t.onlyLeast : t.unknown)(countedName(tag), names(foods));
}

function names(foods: readonly FoodAmounts[]): string {
  const all = foods.map((f) => f.name);
  return joined(all.length <= 3 ? all : [...all.slice(0, 2), say().foods.more(all.length - 2)]);
}

const say = () => words().formulation;

/** What the rules on nutrients are about, those on the whole ration first. */
function ruledBy({ rules }: Problem): Evaluation['ruled'] {
  return (['ration', 'mix'] as const).flatMap((on) => {
    const tags = rules.flatMap((r) => ('nutrient' in r && (r.on ?? 'mix') === on ? [r.nutrient] : []));
    return tags.length > 0 ? [{ on, nutrients: [...new Set(tags)] }] : [];
  });
}
