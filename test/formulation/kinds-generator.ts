/**
 * Small problems that put the kinds of rule together: confidence, counting, 0 or at least, every food may be left,
 * shares beside that may be chosen, dry matter, ratios. Foods have figures of their own, so no table or estimate takes
 * part. Repeatable from a seed.
 */
import type { Beside, Ingredient, Problem, Rule } from '../../src/formulation/problem/problem.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';
import { problemOf } from './problem-of.ts';
import { randomFrom } from './problems.ts';

/** Nutrients that are ruled, with the range of amounts drawn, per 100 g as fed. */
const RANGES = [
  ['PROCNT', 4, 36],
  ['FAT', 1, 30],
  ['CA', 20, 1200],
  ['P', 100, 800],
  ['MG', 20, 400],
] as const satisfies readonly (readonly [Tag, number, number])[];
const GROUPS = ['seed', 'legume'];

export interface Kinds {
  readonly confidence?: boolean;
  readonly counting?: boolean;
  readonly dropOne?: boolean;
  readonly openShares?: boolean;
}

/** Kinds drawn where they are not said: each in about every other problem. */
export function drawKinds(seed: number, said: Kinds = {}): Problem {
  const random = randomFrom(seed * 31 + 7);
  const chance = (p: number) => random() < p;
  const between = (low: number, high: number) => low + (high - low) * random();
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1));
  const round = (v: number) => Number(v.toPrecision(4));
  const pick = <T>(list: readonly T[]) => list[whole(0, list.length - 1)]!;
  const kinds = {
    confidence: said.confidence ?? chance(0.4),
    counting: said.counting ?? chance(0.4),
    dropOne: said.dropOne ?? chance(0.5),
    openShares: said.openShares ?? chance(0.5),
  };
  const amounts = (): Pick<Ingredient, 'composition' | 'sd'> => {
    const composition: Partial<Record<Tag, number>> = { WATER: round(between(5, 14)) };
    const sd: Partial<Record<Tag, number>> = {};
    for (const [tag, low, high] of RANGES) {
      composition[tag] = round(between(low, high));
      if (chance(0.8)) sd[tag] = round(composition[tag] * between(0.02, 0.2));
    }
    return { composition, sd };
  };
  const n = whole(3, kinds.counting ? 5 : 7);
  const weights = Array.from({ length: n }, () => (chance(0.8) ? between(0.2, 1) : 0.05));
  const sum = weights.reduce((a, b) => a + b, 0);
  const mix = weights.map((w) => (100 * w) / sum);
  const foods: Ingredient[] = mix.map((share, i) => ({
    id: `f${i}`,
    group: pick(GROUPS),
    price_per_kg: round(between(0.5, 20)),
    ...amounts(),
    ...(chance(0.2) ? { max: round(Math.min(100, share + between(5, 40))) } : {}),
    ...(chance(0.15) ? { min: round(share * between(0.2, 0.9)) } : {}),
    ...(chance(0.3) ? { want: round(between(0, 100 / n)) } : {}),
    ...(kinds.counting && chance(0.4) ? { if_used: round(between(3, 25)) } : {}),
  }));
  const beside: Beside[] = Array.from({ length: kinds.openShares ? whole(1, 2) : whole(0, 1) }, (_, i) => {
    const share_of_ration = i === 0 ? whole(30, 60) : whole(2, 10);
    const open = kinds.openShares && (i === 0 || chance(0.5));
    return {
      id: `b${i}`,
      share_of_ration,
      ...amounts(),
      ...(open && chance(0.8) ? { share_min: round(share_of_ration * between(0, 0.9)) } : {}),
      ...(open ? { share_max: round(Math.min(85, share_of_ration * between(1.1, 1.8))) } : {}),
    };
  });
  const fed = beside.reduce((s, b) => s + b.share_of_ration, 0) / 100;
  const content = (tag: Tag, on: 'mix' | 'ration') => {
    const ofMix = foods.reduce((s, f, i) => s + (mix[i]! / 100) * f.composition![tag]!, 0);
    const ofBeside = beside.reduce((s, b) => s + (b.share_of_ration / 100) * b.composition![tag]!, 0);
    return on === 'mix' ? ofMix : (1 - fed) * ofMix + ofBeside;
  };
  const shift = chance(0.5) ? 0.1 : 0.5;
  const window = (value: number, most: number) => {
    const centre = value * (1 + shift * (random() - 0.5));
    const sides = random();
    return {
      ...(sides < 0.7 ? { min: round(Math.min(most * 0.9, centre * between(0.7, 0.98))) } : {}),
      ...(sides > 0.3 ? { max: round(Math.min(most, centre * between(1.02, 1.3))) } : {}),
    };
  };
  const rules = Array.from({ length: whole(2, 5) }, (): Rule => {
    const on = beside.length > 0 && chance(0.6) ? 'ration' : 'mix';
    const sort = random();
    if (sort < 0.12) {
      const group = pick(GROUPS);
      const share = foods.reduce((s, f, i) => s + (f.group === group ? mix[i]! : 0), 0);
      return { group, ...window(share + 1, 100) };
    }
    if (sort < 0.2) {
      const i = whole(0, n - 1);
      return { food: `f${i}`, ...window(mix[i]! + 1, 100) };
    }
    if (sort < 0.45) {
      const [top, bottom] = chance(0.5)
        ? (['CA', 'P'] as const)
        : ([pick(RANGES)[0], pick(RANGES)[0]] as const);
      return { ratio: [top, bottom], on, ...window(content(top, on) / content(bottom, on), 1e6) };
    }
    const [nutrient] = pick(RANGES);
    const dry = chance(0.35);
    const unit = nutrient === 'PROCNT' || nutrient === 'FAT' ? 100 : 1e6;
    const value = content(nutrient, on) / (dry ? 1 - content('WATER', on) / 100 : 1);
    return { nutrient, on, ...window(value, unit), ...(dry ? { basis: 'DM' } : {}) };
  });
  if (kinds.counting) {
    for (let k = whole(0, 2); k > 0; k--) {
      const group = chance(0.5) ? pick(GROUPS) : undefined;
      const number = whole(1, n - 1);
      rules.push({
        count: { ...(group === undefined ? {} : { group }), at_least: round(between(2, 20)) },
        ...(chance(0.6) ? { min: number } : { max: number }),
      });
    }
  }
  return problemOf({
    foods,
    rules,
    beside,
    objective: pick(['nearest', 'cheapest', 'varied'] as const),
    ...(kinds.counting && chance(0.3) ? { least_grams: round(between(5, 40)) } : {}),
    ...(kinds.dropOne ? { drop_one: true } : {}),
    confidence: kinds.confidence ? pick([0.5, 0.8, 0.9]) : 0,
  });
}
