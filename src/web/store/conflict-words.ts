/** Two changes of the same thing, in plain words side by side. */

import { pointerSteps } from '../../formulation/problem/json-pointer.ts';
import { same } from '../../household/merge/merge-record.ts';
import type { Household } from '../../household/model.ts';
import { dayInWords, isDay } from '../../kitchen/days.ts';
import { words } from '../../words/words.ts';
import type { Body } from './sync/change.ts';

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
    const place: string[] = [];
    for (const step of pointerSteps(pointer)) {
      if (Array.isArray(here) && Array.isArray(there)) {
        const at = Number(step);
        const item: unknown = here[at] ?? there[at];
        place.push(itemName(item, names));
        here = here.find((other) => keyOf(other) === keyOf(item));
        there = there.find((other) => keyOf(other) === keyOf(item));
      } else {
        place.push(fieldWords(step, names));
        here = (here as Fields | undefined)?.[step];
        there = (there as Fields | undefined)?.[step];
      }
    }
    const [mineLeft, theirsLeft] = differing(here, there);
    return {
      field: place.join(', '),
      mine: valueWords(mineLeft, names),
      theirs: valueWords(theirsLeft, names),
    };
  });
}

/** What a form calls a field, or the household the id that stands in its place. */
export function fieldWords(step: string, names: Names): string {
  const { fields } = words().household;
  return Object.hasOwn(fields, step) ? fields[step as keyof typeof fields] : (names(step) ?? plain(step));
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
  const whole = said(value, names);
  return whole.length > LONGEST ? `${whole.slice(0, LONGEST)}…` : whole;
}

function said(value: unknown, names: Names): string {
  const { store, figures } = words();
  const t = store.value;
  if (value === undefined || value === null || value === '') return t.nothing;
  if (typeof value === 'boolean') return value ? t.yes : t.no;
  if (typeof value === 'number') return figures.number(value);
  if (typeof value === 'string') return isDay(value) ? dayInWords(value) : (names(value) ?? value);
  if (Array.isArray(value))
    return value.length === 0 ? t.nothing : value.map((item) => said(item, names)).join('; ');
  const entries = Object.entries(value as Fields).filter(([, v]) => v !== undefined);
  if (entries.length === 0) return t.nothing;
  return entries.map(([key, v]) => `${fieldWords(key, names)} ${said(v, names)}`).join(', ');
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
  return typeof found === 'string' ? (names(found) ?? found) : words().store.value.oneOfThem;
}

/** "trimLoss" as "trim loss". */
function plain(key: string): string {
  return key
    .replace(/_/g, ' ')
    .replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
}
