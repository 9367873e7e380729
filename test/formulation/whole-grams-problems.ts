/**
 * Problems for whole grams, with every kind of rule in one: repeatable from a seed. Foods and amounts are invented.
 * Rules are drawn around a mix, tight ones too, so that most problems have a mix; small batches and coarse scales are
 * among them, so that many of those mixes have no whole grams.
 */
import type { Beside, Ingredient, Objective, Rule } from '../../src/formulation/problem/problem.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';
import { randomFrom } from './problems.ts';

interface Described {
  readonly composition: Partial<Record<Tag, number>>;
  readonly sd?: Partial<Record<Tag, number>>;
}

export interface GramsProblem {
  foods: (Ingredient & Described)[];
  rules: Rule[];
  beside: (Beside & Described)[];
  objective: Objective;
  confidence: number;
  batch_grams: number;
  scale_step_grams: number;
  least_grams?: number;
  drop_one?: boolean;
}

const TAGS = ['PROCNT', 'FAT', 'ASH', 'CA', 'P', 'MG'] as const;
const GROUPS = ['seed', 'legume', 'herb'];
const BATCHES = [
  [30, 5],
  [40, 5],
  [50, 5],
  [50, 5],
  [60, 5],
  [100, 5],
  [100, 10],
  [40, 2],
  [100, 2],
  [30, 1],
  [60, 1],
  [100, 1],
  [150, 1],
  [300, 1],
  [300, 2],
  [500, 5],
  [20, 0.1],
] as const;

/** 4 to `most` foods. */
export function drawGramsProblem(seed: number, most = 15): GramsProblem {
  const random = randomFrom(seed * 13 + 5);
  const between = (low: number, high: number) => low + (high - low) * random();
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1));
  const pick = <T>(list: readonly T[]) => list[Math.floor(random() * list.length)]!;
  const chance = (p: number) => random() < p;
  const round = (v: number) => Number(v.toPrecision(4));

  const n = whole(4, most);
  const [batch, step] = pick(BATCHES);
  const confidence = chance(0.3) ? pick([0.5, 0.8, 0.9]) : 0;
  const described = (): Described => {
    const composition = {
      WATER: round(between(4, 14)),
      PROCNT: round(between(5, 35)),
      FAT: round(between(1, 30)),
      ASH: round(between(1, 8)),
      CA: round(between(10, 900)),
      P: round(between(50, 900)),
      MG: round(between(20, 400)),
    };
    const spread = (v: number) => round(v * between(0.02, 0.2));
    return {
      composition,
      ...(confidence > 0
        ? {
            sd: {
              PROCNT: spread(composition.PROCNT),
              FAT: spread(composition.FAT),
              CA: spread(composition.CA),
              MG: spread(composition.MG),
            },
          }
        : {}),
    };
  };

  // The mix that the rules are drawn around; with counting some foods are out of it.
  const counting = chance(0.3);
  const members = counting ? whole(2, n) : n;
  const weights = Array.from({ length: n }, (_, i) => (i < members ? between(0.15, 1) : 0));
  const sum = weights.reduce((s, w) => s + w, 0);
  const mix = weights.map((w) => (100 * w) / sum);
  const smallest = Math.min(...mix.filter((v) => v > 0));
  const ifUsed = chance(0.3);

  const foods = mix.map((share, i): GramsProblem['foods'][number] => ({
    id: `f${i}`,
    name: `Food ${i}`,
    group: pick(GROUPS),
    price_per_kg: round(between(1, 20)),
    ...described(),
    ...(chance(0.5) ? { want: round((200 / n) * random()) } : {}),
    ...(chance(0.2) ? { max: round(Math.min(100, share * between(1, 2) + between(1, 10))) } : {}),
    ...(chance(0.1) && share > 0 ? { min: round(share * between(0.3, 1)) } : {}),
    ...(ifUsed && chance(0.6)
      ? { if_used: round(share > 0 ? share * between(0.4, 1) : between(2, 25)) }
      : {}),
  }));
  const shareOpen = chance(0.2);
  const beside: GramsProblem['beside'] = [];
  if (chance(0.5) || shareOpen) {
    const share = round(between(20, 60));
    beside.push({
      id: 'pellet',
      name: 'Pellet',
      share_of_ration: share,
      ...described(),
      ...(shareOpen
        ? { share_min: round(share * between(0.5, 1)), share_max: round(share * between(1, 1.4)) }
        : {}),
    });
  }
  const fed = (beside[0]?.share_of_ration ?? 0) / 100;
  const content = (of: (f: Described) => number, on: 'mix' | 'ration') => {
    const mixed = foods.reduce((s, f, i) => s + (mix[i]! / 100) * of(f), 0);
    return on === 'mix' || !beside[0] ? mixed : (1 - fed) * mixed + fed * of(beside[0]);
  };

  const rules: Rule[] = [];
  const tightness = pick([0.01, 0.03, 0.1, 0.3]);
  const window = (value: number, spread = 0, most = Number.POSITIVE_INFINITY) => {
    const sides = random();
    const centre = value * (1 + 0.3 * tightness * (random() - 0.5));
    return {
      ...(sides < 0.75 ? { min: round(Math.max(0, centre * (1 - tightness * random()) - spread)) } : {}),
      ...(sides > 0.25 ? { max: Math.min(most, round(centre * (1 + tightness * random()) + spread)) } : {}),
    };
  };
  const z = confidence > 0 ? 1.5 : 0;
  for (let k = whole(1, 7); k > 0; k--) {
    const on = beside.length > 0 && chance(0.5) ? 'ration' : 'mix';
    const kind = random();
    if (kind < 0.13) {
      const group = pick(GROUPS);
      const part = on === 'ration' ? 1 - fed : 1;
      rules.push({
        group,
        on,
        ...window(
          foods.reduce((s, f, i) => s + (f.group === group ? part * mix[i]! : 0), 0),
          0.1,
          100,
        ),
      });
    } else if (kind < 0.2) {
      const i = whole(0, n - 1);
      rules.push({ food: `f${i}`, ...window(mix[i]!, 0.1, 100) });
    } else if (kind < 0.37) {
      const [top, bottom] = pick([
        ['CA', 'P'],
        ['PROCNT', 'FAT'],
        ['CA', 'MG'],
      ] as const);
      rules.push({
        ratio: [top, bottom],
        on,
        ...window(content((f) => f.composition[top]!, on) / content((f) => f.composition[bottom]!, on)),
      });
    } else {
      const nutrient = pick(TAGS);
      const dry = chance(0.25);
      const value = content((f) => f.composition[nutrient]!, on);
      const base = dry ? content((f) => 1 - f.composition.WATER! / 100, on) : 1;
      const spread = z * Math.hypot(...foods.map((f, i) => (mix[i]! / 100) * (f.sd?.[nutrient] ?? 0)));
      rules.push({ nutrient, on, ...window(value / base, spread), ...(dry ? { basis: 'DM' as const } : {}) });
    }
  }
  if (counting) {
    for (let k = whole(1, 2); k > 0; k--) {
      const group = chance(0.4) ? pick(GROUPS) : undefined;
      const used = foods.filter((f, i) => mix[i]! > 0 && (group === undefined || f.group === group)).length;
      const at_least = round(smallest * between(0.3, 1));
      const sides = random();
      rules.push({
        count: { ...(group === undefined ? {} : { group }), at_least },
        ...(sides < 0.6 ? { min: used } : {}),
        ...(sides > 0.4 ? { max: used } : {}),
      });
    }
  }
  return {
    foods,
    rules,
    beside,
    objective: pick(['nearest', 'varied', 'cheapest'] as const),
    confidence,
    batch_grams: batch,
    scale_step_grams: step,
    ...(chance(0.15) ? { least_grams: round((batch / 100) * smallest * between(0.3, 1)) } : {}),
    ...(chance(0.3) ? { drop_one: true } : {}),
  };
}
