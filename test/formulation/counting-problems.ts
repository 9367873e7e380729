/**
 * Problems with counting rules and aims drawn from the real tables, for tests: repeatable from a seed. Most are drawn
 * around a mix of a few foods that keeps their rules or nearly keeps them, so that what is counted decides.
 */
import type { ReferenceFood } from '../../src/foods/reference.ts';
import type { Aim, Beside, Ingredient, Objective, Rule } from '../../src/formulation/problem/problem.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';
import { crudeAmount } from './crude-amount.ts';
import { type DrawnProblem, randomFrom } from './problems.ts';

export interface CountingProblem extends DrawnProblem {
  least_grams?: number | undefined;
  aims?: Aim[];
}

const TAGS: readonly Tag[] = [
  'PROCNT',
  'FAT',
  'FIBTG',
  'CA',
  'P',
  'MG',
  'K',
  'NA',
  'FE',
  'ZN',
  'ASH',
  'CHOCDF',
];
const GROUPS = ['seed', 'legume', 'herb'];
/** Enumeration with a quadratic program at every node stays quick up to here. */
const MOST_FOODS_SQUARED = 8;
const MOST_FOODS = 15;
const BATCH = 300;

/** 4 to 15 foods (to 8 for the squared objectives), 1 to 6 plain rules, 0 to 3 counting rules, 0 to 3 aims. */
export function drawCountingProblem(
  pool: readonly ReferenceFood[],
  seed: number,
  most: { foods?: number; objective?: Objective } = {},
): CountingProblem {
  const random = randomFrom(seed * 7 + 11);
  for (;;) {
    const problem = draw(pool, random, most);
    const open = problem.foods.filter((f) => !f.refused);
    const reach = open.reduce((s, f) => s + (f.max ?? 100), 0);
    const need = open.reduce((s, f) => s + (f.min ?? 0), 0);
    // The format refuses these outright: no case for a solver.
    if (open.length > 1 && reach >= 100.01 && need <= 99.99) return problem;
  }
}

function draw(
  pool: readonly ReferenceFood[],
  random: () => number,
  most: { foods?: number; objective?: Objective },
): CountingProblem {
  const pick = <T>(list: readonly T[]) => list[Math.floor(random() * list.length)]!;
  const between = (low: number, high: number) => low + (high - low) * random();
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1));
  const round = (v: number) => Number(v.toPrecision(4));
  const chance = (p: number) => random() < p;

  const kind = random();
  const objective = most.objective ?? (kind < 0.6 ? 'cheapest' : kind < 0.8 ? 'nearest' : 'varied');
  const limit = Math.min(
    most.foods ?? MOST_FOODS,
    objective === 'cheapest' ? MOST_FOODS : MOST_FOODS_SQUARED,
  );
  const chosen = [...new Set(Array.from({ length: whole(4, limit) }, () => pick(pool)))];
  const n = chosen.length;

  // A mix of a few foods that the rules are drawn around.
  const members = whole(1, Math.min(n, 6));
  const weights = chosen.map((_, i) => (i < members ? between(0.3, 1) : 0));
  const sum = weights.reduce((s, w) => s + w, 0);
  const mix = weights.map((w) => (100 * w) / sum);
  const smallest = Math.min(...mix.filter((v) => v > 0));

  const foods: Ingredient[] = chosen.map((f, i) => {
    const share = mix[i]!;
    const max = chance(0.25) ? round(Math.min(100, share * between(0.9, 2) + between(5, 30))) : undefined;
    const min = chance(0.06) ? round(Math.min(share * between(0.2, 0.9), max ?? 100)) : undefined;
    const used = share > 0 ? share * between(0.4, chance(0.1) ? 1.5 : 1) : between(3, 35);
    return {
      id: `f${i}`,
      ref: f.ref,
      group: pick(GROUPS),
      price_per_kg: round(0.5 + 20 * random()),
      ...(max === undefined ? {} : { max }),
      ...(min === undefined || min === 0 ? {} : { min }),
      ...(chance(0.3) ? { want: round((200 / n) * random()) } : {}),
      ...(chance(0.4) ? { if_used: round(Math.min(100, used)) } : {}),
      ...(chance(0.35) ? { liked: true } : {}),
      ...(chance(0.5) ? { on_hand_grams: whole(0, 150) } : {}),
      ...(share === 0 && chance(0.05) && min === undefined ? { refused: true } : {}),
    };
  });
  const beside: Beside[] = chance(0.5)
    ? [{ id: 'pellet', ref: pick(pool).ref, share_of_ration: round(between(20, 70)) }]
    : [];

  const rules: Rule[] = [];
  const shift = chance(0.85) ? 0.02 : 0.3;
  const tightness = between(0.03, 0.4);
  /** Bounds around a value: sometimes beside it, sometimes on one side only. */
  const window = (value: number, end: number) => {
    const centre = Math.abs(value) * (1 + shift * (random() - 0.5));
    const sides = random();
    const bounds: { min?: number; max?: number } = {};
    if (sides < 0.7)
      bounds.min = round(Math.max(0, Math.min(end * 0.99, centre * (1 - tightness * random()))));
    if (sides > 0.3) bounds.max = round(Math.min(end, centre * (1 + tightness * random())));
    if (bounds.min !== undefined && bounds.max !== undefined && bounds.min > bounds.max)
      bounds.max = bounds.min;
    return bounds;
  };
  const fed = (beside[0]?.share_of_ration ?? 0) / 100;
  const pellet = pool.find((f) => f.ref === beside[0]?.ref);
  const content = (tag: Tag, on: 'mix' | 'ration') => {
    const ofMix = chosen.reduce((s, f, i) => s + (mix[i]! / 100) * crudeAmount(f, tag)!, 0);
    return on === 'mix' || !pellet ? ofMix : (1 - fed) * ofMix + fed * crudeAmount(pellet, tag)!;
  };
  for (let k = whole(1, 6); k > 0; k--) {
    const on = pellet && chance(0.5) ? 'ration' : 'mix';
    const sort = random();
    if (sort < 0.15) {
      const group = pick(GROUPS);
      const share = foods.reduce((s, f, i) => s + (f.group === group ? mix[i]! : 0), 0);
      rules.push({ group, ...window(share, 100) });
    } else if (sort < 0.22) {
      const i = whole(0, n - 1);
      if (!foods[i]!.refused) rules.push({ food: `f${i}`, ...window(mix[i]! + 1, 100) });
    } else if (sort < 0.35) {
      const [top, bottom] = [pick(TAGS), pick(TAGS)];
      rules.push({
        ratio: [top, bottom],
        on,
        ...window(content(top, on) / Math.max(0.01, content(bottom, on)), 1e6),
      });
    } else {
      const nutrient = pick(TAGS);
      rules.push({
        nutrient,
        on,
        ...window(content(nutrient, on), 1e6),
        ...(chance(0.15) ? { basis: 'DM' } : {}),
      });
    }
  }

  for (let k = whole(0, 3); k > 0; k--) {
    const group = chance(0.5) ? pick(GROUPS) : undefined;
    const counted = foods.flatMap((f, i) =>
      (group === undefined || f.group === group) && !f.refused ? [i] : [],
    );
    const used = counted.filter((i) => mix[i]! > 0).length;
    const asked = random();
    const bounds: { min?: number; max?: number } = {};
    // Mostly what the mix has; at times a food more or less; seldom more than there are.
    if (asked < 0.65)
      bounds.min = Math.max(0, used + (chance(0.15) ? 1 : 0) + (chance(0.05) ? counted.length : 0));
    if (asked > 0.4) bounds.max = Math.max(0, used - (chance(0.15) ? 1 : 0));
    if (bounds.min !== undefined && bounds.max !== undefined && bounds.min > bounds.max)
      bounds.max = bounds.min;
    const at_least = round(
      Math.min(100, Math.max(0.5, chance(0.85) ? smallest * between(0.3, 1.05) : between(2, 50))),
    );
    rules.push({ count: { ...(group === undefined ? {} : { group }), at_least }, ...bounds });
  }

  const simple: Aim[] = (['liked', 'cupboard', 'few', 'few to buy', 'cheap'] as const).map((aim) => ({
    aim,
  }));
  const measured = (): Aim => {
    const aim = chance(0.5) ? 'less' : 'more';
    const sort = random();
    if (sort < 0.6) return { aim, nutrient: pick(TAGS), ...(pellet && chance(0.5) ? { on: 'ration' } : {}) };
    return sort < 0.8 ? { aim, group: pick(GROUPS) } : { aim, food: `f${whole(0, n - 1)}` };
  };
  const aims: Aim[] = [];
  for (let k = chance(0.35) ? 0 : whole(1, 3); k > 0; k--) {
    const drawn = chance(0.7) ? pick(simple) : measured();
    if (aims.some((a) => a.aim === drawn.aim)) continue;
    const unit = drawn.aim === 'few' || drawn.aim === 'few to buy' ? 1 : round(between(0.1, 5));
    aims.push(chance(0.3) ? { ...drawn, give: unit } : drawn);
  }

  return {
    foods,
    rules,
    beside,
    objective,
    ...(aims.length > 0 ? { aims } : {}),
    ...(chance(0.3)
      ? { least_grams: round((BATCH / 100) * (chance(0.8) ? smallest * between(0.2, 1) : between(5, 40))) }
      : {}),
    confidence: 0,
    batch_grams: BATCH,
    scale_step_grams: 1,
  };
}
