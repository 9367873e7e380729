/**
 * Which ids mean the same food in the same form. Each mix names its foods with ids of its own, and a form of a food is
 * kept under a new id each time it is made; in the cupboard and on a shopping list it is one food all the same.
 */
import { PAIRS } from '../../../foods/forms/pairs.ts';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import type { Household, OwnFood } from '../../model.ts';
import { sameProblems } from './same-problems.ts';

type Kept = Pick<Household, 'foods' | 'mixes'> & Partial<Pick<Household, 'batches'>>;

const NO_BATCHES: Household['batches'] = [];

/** What all ids of one food have in common. An id that nothing names stands for itself. */
export type FoodKey = (food: string) => string;

/** The same for every id of a food: by its row in the tables, and by its form where it was made from one. */
export function foodKeys(house: Kept): FoodKey {
  const { mixes, batches } = sameProblems({ mixes: house.mixes, batches: house.batches ?? NO_BATCHES });
  const keys = keysOf(house.foods, mixes, batches);
  return (food) => keys.get(food) ?? food;
}

/** Who names an id first says what it is: the keeper's own foods, then mixes, then batches. */
const keysOf = remembered(
  (
    foods: Household['foods'],
    mixes: Household['mixes'],
    batches: Household['batches'],
  ): ReadonlyMap<string, string> => {
    const named = [...mixes, ...batches].flatMap((m) => m.problem.foods);
    const rows = rowsByName(named);
    const keys = new Map<string, string>();
    for (const own of foods) keys.set(own.id, keyOfOwn(own, rows));
    for (const { id, ref } of named) if (ref !== undefined && !keys.has(id)) keys.set(id, ref);
    return keys;
  },
);

/** Rows of the tables that mixes take, by what they are and how they are called. */
function rowsByName(named: readonly Ingredient[]): ReadonlySet<string> {
  // Most batches name the same foods: each name is taken apart once.
  const refs = new Map<string, Set<string>>();
  for (const { id, ref, name = id } of named) {
    if (ref === undefined) continue;
    const names = refs.get(ref);
    if (names) names.add(name);
    else refs.set(ref, new Set([name]));
  }
  return new Set([...refs].flatMap(([ref, names]) => [...names].map((name) => rowKey(ref, name))));
}

/**
 * An own food made from one row is that row's food where it is called like it, or the form of it that its name says;
 * where the tables hold that form too, under the same name, it is theirs. What was typed from a label is like no other.
 */
function keyOfOwn({ id, name, evidence }: OwnFood, rows: ReadonlySet<string>): string {
  const [source, ...others] = evidence?.sources ?? [];
  if (!source?.ref || others.length > 0) return id;
  const { ref } = source;
  const dried = PAIRS.filter((p) => p.fresh === ref).map((p) => p.dried);
  return [ref, ...dried].find((row) => rows.has(rowKey(row, name))) ?? rowKey(ref, name);
}

/** "Carrot, fresh, dried" is the same as "Carrot, dried", in each of the three languages. */
const rowKey = (ref: string, name: string) =>
  `${ref} ${name
    .toLowerCase()
    .replace(/\b(fresh|raw|frisch|roh|verse?|rauwe?)\b/g, ' ')
    .replace(/[\s,]+/g, ' ')
    .trim()}`;
