/** Mixes to formulate, drawn from the reference table: as many foods and rules as asked for, repeatable from a seed. */
import type { Reference, ReferenceFood } from '../../src/foods/reference.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import type { Ingredient, Objective, Problem, Rule } from '../../src/formulation/problem/problem.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';
import { crudeAmount } from '../../test/formulation/crude-amount.ts';
import { fullyKnown, randomFrom } from '../../test/formulation/problems.ts';

export interface Asked {
  readonly foods: number;
  readonly rules: number;
  readonly seed: number;
  readonly objective?: Objective;
  /** How far a rule's ends lie from what the mix has that it is drawn around, as a part of it: up to this. */
  readonly room?: number;
  readonly confidence?: number;
  /** Exactly so many foods are in, each with at least 1 percent. */
  readonly count?: number;
}

const TAGS: readonly Tag[] = ['PROCNT', 'FAT', 'FIBTG', 'CA', 'P', 'MG', 'K', 'FE', 'ZN', 'ASH', 'CHOCDF'];
const RATIOS: readonly (readonly [Tag, Tag])[] = [
  ['CA', 'P'],
  ['K', 'MG'],
  ['PROCNT', 'FAT'],
  ['ZN', 'FE'],
];
const GROUPS = ['seed', 'vegetable', 'legume', 'herb', 'animal'];
/** More water than this keeps no mix of dry foods. */
const DRY = 15;
const PELLET = 50;
const ROOM = 0.12;

/** Foods that a dry mix can be made of, every ruled amount of which is known. */
export const poolOf = (reference: Reference): ReferenceFood[] =>
  fullyKnown(reference).filter((f) => (f.composition.WATER ?? 100) <= DRY);

/**
 * A problem that can be kept: its rules are windows around what some mix of its foods has, beside a pellet that is half
 * of the ration. The mix is drawn at random, so that the shares that are wanted, even ones, mostly break some rule.
 */
export function drawn(pool: readonly ReferenceFood[], asked: Asked, reference: Reference): Problem {
  const random = randomFrom(asked.seed * 7919 + asked.foods * 31 + asked.rules);
  const pick = <T>(list: readonly T[]): T => {
    const found = list[Math.floor(random() * list.length)];
    if (found === undefined) throw new RangeError('nothing to draw from');
    return found;
  };
  const between = (low: number, high: number) => low + (high - low) * random();
  const figures = (value: number) => Number(value.toPrecision(5));
  const chosen = new Set<ReferenceFood>();
  while (chosen.size < asked.foods) chosen.add(pick(pool));
  const refs = [...chosen];
  const members = asked.count ?? refs.length;
  const weights = refs.map((_, i) => (i < members ? between(0.3, 1) : 0));
  const sum = weights.reduce((a, b) => a + b, 0);
  // Of a counted mix every food that is in has its percent, and some room above it.
  const floor = asked.count === undefined ? 0 : 1.2;
  const shares = weights.map((w) => (w === 0 ? 0 : floor + ((100 - floor * members) * w) / sum));
  const foods = refs.map(
    (food, i): Ingredient => ({
      id: `f${i}`,
      ref: food.ref,
      group: pick(GROUPS),
      price_per_kg: figures(between(0.5, 20)),
      max: figures(Math.max(5, 3 * (shares[i] ?? 0))),
    }),
  );
  const pellet = pick(pool);
  const content = (tag: Tag, on: 'mix' | 'ration') => {
    const mixed = refs.reduce((s, f, i) => s + ((shares[i] ?? 0) / 100) * (crudeAmount(f, tag) ?? 0), 0);
    return on === 'mix' ? mixed : ((100 - PELLET) * mixed + PELLET * (crudeAmount(pellet, tag) ?? 0)) / 100;
  };
  const window = (value: number) => {
    const room = () => between(0.02, asked.room ?? ROOM);
    return { min: figures(value * (1 - room())), max: figures(value * (1 + room())) };
  };
  const rules = Array.from({ length: asked.rules }, (): Rule => {
    const kind = random();
    const on = random() < 0.5 ? 'ration' : 'mix';
    if (kind < 0.15) {
      const group = pick(GROUPS);
      const share = foods.reduce((s, f, i) => s + (f.group === group ? (shares[i] ?? 0) : 0), 0);
      return { group, min: figures(share * 0.8), max: figures(Math.min(100, share * 1.2 + 1)) };
    }
    if (kind < 0.3) {
      const [top, bottom] = pick(RATIOS);
      return { ratio: [top, bottom], on, ...window(content(top, on) / content(bottom, on)) };
    }
    const nutrient = pick(TAGS);
    return { nutrient, on, ...window(content(nutrient, on)) };
  });
  const { problem } = parseProblem(
    {
      foods,
      rules: [
        ...rules,
        ...(asked.count === undefined
          ? []
          : [{ count: { at_least: 1 }, min: asked.count, max: asked.count }]),
      ],
      beside: [{ id: 'pellet', ref: pellet.ref, share_of_ration: PELLET }],
      objective: asked.objective ?? 'nearest',
      ...(asked.confidence !== undefined && { confidence: asked.confidence, variation: 'published' }),
    },
    reference,
  );
  return problem;
}
