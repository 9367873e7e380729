/** Problems drawn from the real tables, for tests: repeatable from a seed. */
import { onCrudeProtein } from '../../src/foods/crude-protein.ts';
import type { Reference, ReferenceFood } from '../../src/foods/reference.ts';
import type { Beside, Ingredient, Objective, Rule } from '../../src/formulation/problem/problem.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';
import { crudeAmount } from './crude-amount.ts';

export interface DrawnProblem {
  foods: Ingredient[];
  rules: Rule[];
  beside: Beside[];
  objective: Objective;
  confidence: number;
  batch_grams: number;
  scale_step_grams: number;
}

/** A small repeatable generator of numbers in [0, 1) (mulberry32). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
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
  'THIA',
  'RIBF',
  'NIA',
  'ASH',
  'CHOCDF',
];
const GROUPS = ['seed', 'legume', 'vegetable', 'herb', 'animal'];

/** Foods of both tables whose amounts of every tag in `TAGS` are known. */
export function fullyKnown(reference: Reference): ReferenceFood[] {
  return Array.from({ length: reference.size }, (_, row) => onCrudeProtein(reference.at(row))).filter(
    (f) => f.composition.WATER !== undefined && TAGS.every((t) => f.composition[t] !== undefined),
  );
}

/** 10 to 40 foods, 5 to 15 rules; windows around what even shares give, at random too far or too narrow. */
export function drawProblem(
  pool: readonly ReferenceFood[],
  seed: number,
  objective: Objective,
): DrawnProblem {
  const random = randomFrom(seed);
  const pick = <T>(list: readonly T[]) => list[Math.floor(random() * list.length)]!;
  const round = (v: number) => Number(v.toPrecision(4));
  const count = 10 + Math.floor(random() * 31);
  const chosen = [...new Set(Array.from({ length: count }, () => pick(pool)))];
  const foods: Ingredient[] = chosen.map((f, i) => ({
    id: `f${i}`,
    ref: f.ref,
    group: pick(GROUPS),
    price_per_kg: round(0.5 + 20 * random()),
    ...(random() < 0.3 ? { max: round(100 / count + 40 * random()) } : {}),
    ...(random() < 0.1 ? { min: round((60 / count) * random()) } : {}),
    ...(random() < 0.3 ? { want: round((200 / count) * random()) } : {}),
  }));
  const beside: Beside[] =
    random() < 0.6 ? [{ id: 'pellet', ref: pick(pool).ref, share_of_ration: round(20 + 50 * random()) }] : [];
  const refs = new Map(pool.map((f) => [f.ref, f]));
  const tightness = 0.02 + 0.5 * random();
  const shift = random() < 0.5 ? 0.15 : 0.6;
  const rules: Rule[] = Array.from({ length: 5 + Math.floor(random() * 11) }, () => {
    const kind = random();
    const on = beside.length > 0 && random() < 0.6 ? 'ration' : 'mix';
    if (kind < 0.15) {
      const middle = 100 / GROUPS.length;
      return {
        group: pick(GROUPS),
        ...window(middle, random, tightness * 2, shift * 2, round),
        ...(random() < 0.2 ? { on } : {}),
      };
    }
    if (kind < 0.3) {
      const [top, bottom] = [pick(TAGS), pick(TAGS)];
      const even = (t: Tag) => chosen.reduce((s, f) => s + crudeAmount(f, t)!, 0) / chosen.length;
      return {
        ratio: [top, bottom],
        on,
        ...window(even(top) / Math.max(0.01, even(bottom)), random, tightness, shift, round),
      };
    }
    const tag = pick(TAGS);
    const even = chosen.reduce((s, f) => s + crudeAmount(f, tag)!, 0) / chosen.length;
    const other = on === 'ration' ? crudeAmount(refs.get(beside[0]!.ref!)!, tag)! : even;
    const part = on === 'ration' ? beside[0]!.share_of_ration / 100 : 0;
    const bounds = window(even * (1 - part) + other * part, random, tightness, shift, round);
    return { nutrient: tag, on, ...bounds, ...(random() < 0.2 ? { basis: 'DM' } : {}) };
  });
  return { foods, rules, beside, objective, confidence: 0, batch_grams: 300, scale_step_grams: 1 };
}

function window(
  middle: number,
  random: () => number,
  tightness: number,
  shift: number,
  round: (v: number) => number,
) {
  const centre = Math.abs(middle) * (1 + shift * (random() - 0.5));
  const sides = random();
  const min = sides < 0.75 ? { min: round(Math.max(0, Math.min(90, centre * (1 - tightness)))) } : {};
  const max = sides > 0.25 ? { max: round(Math.max(0, Math.min(100, centre * (1 + tightness)))) } : {};
  return { ...min, ...max };
}
