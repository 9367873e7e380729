/** Two changes of the same thing, in plain words side by side. */
import { pointerSteps } from '../../formulation/problem/json-pointer.ts';
import { same } from '../../household/merge/merge-record.ts';
import type { Household, Kind } from '../../household/model.ts';
import { dayInWords, isDay } from '../../kitchen/days.ts';
import type { Body } from './sync/change.ts';

export const KIND_WORDS: Record<Kind, string> = {
  foods: 'The food',
  profiles: 'The target',
  animals: 'The animal',
  mixes: 'The mix',
  versions: 'The version',
  lots: 'The lot',
  offers: 'The offer',
  dryingRuns: 'The drying run',
  batches: 'The batch',
  kitchen: 'What the kitchen has',
};

/** What forms call the fields, by their stored names. */
const FIELDS: Readonly<Record<string, string>> = {
  name: 'Name',
  species: 'Species',
  lifeStage: 'Life stage',
  profileId: 'Target',
  refuses: 'What it refuses',
  dailyGrams: 'Food a day, g',
  animalIds: 'Animals',
  shares: 'Shares, percent',
  held: 'Held shares',
  problem: 'Mix',
  foods: 'Foods',
  rules: 'Rules',
  beside: 'Fed beside',
  min: 'at least',
  max: 'at most',
  want: 'wanted',
  batch_grams: 'Batch, g',
  scale_step_grams: 'Step of the scale, g',
  confidence: 'Confidence',
  objective: 'Aim',
  price_per_kg: 'Price of a kilogram',
  pricePerKg: 'Price of a kilogram',
  food: 'Food',
  grams: 'Weight, g',
  form: 'Form',
  boughtOn: 'Bought',
  openedOn: 'Opened',
  bestBefore: 'Best before',
  frozen: 'Kept in the freezer',
  seller: 'Seller',
  price: 'Price',
  packGrams: 'Weight of a pack, g',
  cold: 'Steps in the freezer',
  barred: 'Barred',
  overruled: 'Weighed out without the cold',
  moisture: 'Water, %',
  bounds: 'Bounds',
  source: 'Source',
  evidence: 'Where the figures come from',
  composition: 'What it holds per 100 g',
  sd: 'Standard deviations',
  group: 'Group',
  kind: 'Kind',
  pours: 'What was poured',
  stock: 'What there is of each food, g',
  left: 'What is left',
  finishedAt: 'Finished',
  madeBy: 'Made by',
  accepted: 'Accepted out of range',
  givenUp: 'Given up',
  checks: 'Looks',
  sample: 'Sample',
  gramsAfter: 'Weight after, g',
  endedAt: 'Ended',
  driedAtHome: 'Dried at home',
  sellers: 'Sellers',
  stepDays: 'Days of each step',
  next: 'Next batch',
  freezer: 'Freezer',
  dryer: 'Dryer',
  pins: 'Days chosen for steps',
  why: 'why',
  on: 'on',
  note: 'note',
};
const LONGEST = 300;

export type Names = (id: string) => string | undefined;
type Fields = Readonly<Record<string, unknown>>;

/** What ids are called in the household. */
export function namesIn(house: Household): Names {
  const named = [house.foods, house.profiles, house.animals, house.mixes, house.lots].flat();
  const names = new Map<string, string>(named.map(({ id, name }) => [id, name]));
  for (const food of house.mixes.flatMap((m) => m.problem.foods))
    if (food.name !== undefined && !names.has(food.id)) names.set(food.id, food.name);
  return (id) => names.get(id);
}

/** One thing that both changed differently. */
export interface Collision {
  readonly field: string;
  readonly mine: string;
  readonly theirs: string;
}

/** @param pointers JSON pointers into the two records */
export function collisionWords(
  pointers: readonly string[],
  mine: Body,
  theirs: Body,
  names: Names,
): Collision[] {
  return pointers.map((pointer) => {
    let [here, there]: unknown[] = [mine, theirs];
    const words: string[] = [];
    for (const step of pointerSteps(pointer)) {
      if (Array.isArray(here) && Array.isArray(there)) {
        const at = Number(step);
        const item: unknown = here[at] ?? there[at];
        words.push(itemName(item, names));
        here = here.find((other) => keyOf(other) === keyOf(item));
        there = there.find((other) => keyOf(other) === keyOf(item));
      } else {
        words.push(fieldWords(step, names));
        here = (here as Fields | undefined)?.[step];
        there = (there as Fields | undefined)?.[step];
      }
    }
    const [mineLeft, theirsLeft] = differing(here, there);
    return {
      field: words.join(', '),
      mine: valueWords(mineLeft, names),
      theirs: valueWords(theirsLeft, names),
    };
  });
}

/** What a form calls a field, or the household the id that stands in its place. */
export function fieldWords(step: string, names: Names): string {
  return FIELDS[step] ?? names(step) ?? plain(step);
}

/** Of two things with fields, those that are not the same in both. */
function differing(here: unknown, there: unknown): readonly [unknown, unknown] {
  if (!isFields(here) || !isFields(there)) return [here, there];
  const left = (one: Fields, other: Fields) =>
    Object.fromEntries(Object.entries(one).filter(([key, value]) => !same(value, other[key])));
  return [left(here, there), left(there, here)];
}

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A value as one would say it, shortened where it is long. */
export function valueWords(value: unknown, names: Names): string {
  const words = said(value, names);
  return words.length > LONGEST ? `${words.slice(0, LONGEST)}…` : words;
}

function said(value: unknown, names: Names): string {
  if (value === undefined || value === null || value === '') return 'nothing';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return String(Number(value.toFixed(2)));
  if (typeof value === 'string') return isDay(value) ? dayInWords(value) : (names(value) ?? value);
  if (Array.isArray(value))
    return value.length === 0 ? 'nothing' : value.map((item) => said(item, names)).join('; ');
  const entries = Object.entries(value as Fields).filter(([, v]) => v !== undefined);
  if (entries.length === 0) return 'nothing';
  return entries.map(([key, v]) => `${FIELDS[key] ?? names(key) ?? plain(key)} ${said(v, names)}`).join(', ');
}

/** What tells an item of a list from the others. */
function keyOf(item: unknown): string {
  if (typeof item !== 'object' || item === null) return String(item);
  const { id, food, seller, step, at, nutrient, ratio, group } = item as Fields;
  return JSON.stringify([id ?? food ?? seller ?? step ?? at ?? null, nutrient, ratio, group]);
}

export function itemName(item: unknown, names: Names): string {
  if (typeof item !== 'object' || item === null) return said(item, names);
  const { name, id, food, seller, step, nutrient, group } = item as Fields;
  const found = [name, id, food, seller, step, nutrient, group].find((w) => typeof w === 'string');
  return typeof found === 'string' ? (names(found) ?? found) : 'one of them';
}

/** "trimLoss" as "trim loss". */
function plain(key: string): string {
  return key
    .replace(/_/g, ' ')
    .replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
}
