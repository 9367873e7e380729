/**
 * Whether two foods are one to an animal, whatever ids mixes, own foods and the tables give them. An animal that left a
 * food, or did not do well on it, must not get it again under another name, so that this looks further than the cupboard
 * does (`same-food.ts`): an equal name is enough, and after an upset the other forms of the food count too.
 */
import { PAIRS } from '../../../foods/forms/pairs.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import type { Household, OwnFood } from '../../model.ts';
import { foodKeys } from './same-food.ts';
import { sameProblems } from './same-problems.ts';

/** A food as a mix, a trial or a list of ids names it. */
export interface NamedFood {
  readonly id: string;
  readonly ref?: string;
  readonly name?: string;
}

/** What a food is known by: foods that have one of them in common are the same. */
export interface Marks {
  readonly marks: readonly string[];
  /** Numbers of the tables, and names, by which advice would name it. */
  readonly tables: readonly string[];
}

type Kept = Pick<Household, 'foods' | 'mixes' | 'batches' | 'kitchen'>;

interface Alike {
  /** Of a food in its form. */
  marksOf(food: NamedFood): Marks;
  /** Of a food in every form: raw, dried, and whatever of the keeper's own was made of it. */
  inAllForms(food: NamedFood): Marks;
  /** A food with its name and number, as far as anything of the household tells them. */
  known(food: NamedFood): NamedFood;
}

/** What the household knows of its foods. */
export function alike(house: Kept): Alike {
  const { foods, kitchen } = house;
  const { mixes, batches } = sameProblems(house);
  return made(foods, mixes, batches, kitchen);
}

const made = remembered(
  (foods: Kept['foods'], mixes: Kept['mixes'], batches: Kept['batches'], kitchen: Kept['kitchen']): Alike => {
    const keyOf = foodKeys({ foods, mixes, batches });
    const own = new Map(foods.map((f) => [f.id, f]));
    const named = new Map<string, NamedFood>();
    for (const { problem } of [...mixes, ...batches])
      for (const f of [...problem.foods, ...problem.beside]) if (!named.has(f.id)) named.set(f.id, f);
    const mine = foods.map((food) => ({
      food,
      marks: [mark(food.id), mark(keyOf(food.id)), nameMark(food.name)],
    }));
    const dried = kitchen[0]?.driedAtHome ?? [];

    function known({ id, ...said }: NamedFood): NamedFood {
      const there = own.get(id);
      const { ref = undefined, name = undefined } = there
        ? { ref: said.ref, name: there.name }
        : { ref: said.ref ?? named.get(id)?.ref, name: said.name ?? named.get(id)?.name };
      return { id, ...(ref !== undefined && { ref }), ...(name !== undefined && { name }) };
    }

    /** Places of own foods by a mark of theirs. */
    const withMark = new Map<string, number[]>();
    for (const [place, { marks }] of mine.entries())
      for (const m of marks) {
        const places = withMark.get(m);
        if (places) places.push(place);
        else withMark.set(m, [place]);
      }

    /** With every own food that is the same by what `also` says, or by mark or key. */
    function gathered(food: NamedFood, rows: readonly string[], also?: (f: OwnFood) => boolean): Marks {
      const { id, ref, name } = known(food);
      // A trial keeps the name it was begun with: an own food that was deleted since is known by that.
      const names = [name, food.name].flatMap((n) => (n === undefined ? [] : [n]));
      const tables = [...(ref === undefined ? [] : [ref]), ...rows, ...names];
      const marks = new Set([id, keyOf(id), ...(ref === undefined ? [] : [ref]), ...rows].map(mark));
      for (const n of names) marks.add(nameMark(n));
      // Against what the food is itself, not against what was gathered: else one label would lead to the next.
      marks.delete(NO_NAME);
      const places = new Set([...marks].flatMap((m) => withMark.get(m) ?? []));
      if (also) for (const [place, one] of mine.entries()) if (also(one.food)) places.add(place);
      for (const place of [...places].sort((a, b) => a - b)) {
        const one = mine[place];
        if (one) marks.add(mark(one.food.id)).add(nameMark(one.food.name));
      }
      marks.delete(NO_NAME);
      return { marks: [...marks], tables: [...new Set([...tables, keyOf(id)])] };
    }

    function inAllForms(food: NamedFood): Marks {
      const { id, ref } = known(food);
      const rows = new Set([id, keyOf(id), ...(ref === undefined ? [] : [ref]), ...sourcesOf(own.get(id))]);
      for (const row of [...rows])
        for (const p of PAIRS) {
          if (p.fresh === row) rows.add(p.dried);
          if (p.dried === row) rows.add(p.fresh);
        }
      for (const d of dried) {
        if (rows.has(d.food) || rows.has(keyOf(d.food))) rows.add(d.fresh);
        if (rows.has(d.fresh)) rows.add(d.food);
      }
      return gathered(food, [...rows], (f) => sourcesOf(f).some((r) => rows.has(r)));
    }

    return { marksOf: (food) => gathered(food, []), inAllForms, known };
  },
);

function sourcesOf(food: OwnFood | undefined): string[] {
  return food?.evidence?.sources?.flatMap((s) => s.ref ?? []) ?? [];
}

/** Whether a food, as it is named, is the one with these marks. */
export function isMarked(food: NamedFood, { marks }: Pick<Marks, 'marks'>): boolean {
  return ownMarks(food).some((m) => marks.includes(m));
}

/** What a food is known by as it is named, without what the household knows of it. */
export function ownMarks({ id, ref, name }: NamedFood): string[] {
  const named = nameMark(name ?? '');
  return [mark(id), ...(ref === undefined ? [] : [mark(ref)]), ...(named === NO_NAME ? [] : [named])];
}

/** Ids that mixes make of numbers of the tables ("sr28-20038") are the same as those. */
const mark = (id: string) => id.replace(/[^\p{L}\p{N}]+/gu, '-');

const NO_NAME = 'name ';

/** A name as it sounds. */
function nameMark(name: string): string {
  const said = name
    .toLowerCase()
    .normalize('NFKC')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  return `${NO_NAME}${said}`;
}
