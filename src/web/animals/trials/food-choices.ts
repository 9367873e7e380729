/** Foods that an animal may be offered in a trial: those of mixes, the keeper's own, and the tables'. */
import { cautionSpecies } from '../../../care/animal/conditions.ts';
import { cautionsFor } from '../../../foods/cautions/find.ts';
import { tableNote } from '../../../foods/food-name.ts';
import { neverFedIn } from '../../../foods/ingredients/never-fed.ts';
import { printedTexts } from '../../../foods/printed-texts.ts';
import type { ReferenceFood } from '../../../foods/reference.ts';
import type { Animal, Household } from '../../../household/model.ts';
import { type FoodStanding, foodStanding } from '../../../household/reckon/care/food-standing.ts';
import { groupName, OTHER } from '../../../household/reckon/mix/mix-edits.ts';
import { mixesOf } from '../../../household/reckon/mix/refusals.ts';
import { words } from '../../../words/words.ts';

export interface Choosable {
  /** As a trial names it: its number in the tables, or its id. */
  readonly id: string;
  readonly name: string;
  /** What else helps to choose: its group, where it is from. */
  readonly note: string;
  readonly standing: FoodStanding;
}

type Caution = ReturnType<typeof cautionsFor>[number]['caution'];

/** What is to be known of a food before it is offered; `never` where it must not be. */
export interface Advised {
  readonly cautions: readonly Caution[];
  readonly never: boolean;
}

/**
 * What the caution list says of a food, and of what its own pack prints.
 * @param table its row, where it is one of the tables'
 */
export function adviceOn(
  house: Pick<Household, 'foods'>,
  animal: Animal,
  food: { readonly id: string; readonly name: string },
  table: ReferenceFood | undefined,
): Advised {
  const species = cautionSpecies(animal);
  const own = house.foods.find((f) => f.id === food.id);
  const named = table
    ? { ref: table.ref, name: food.name, tableName: table.tableName }
    : { name: own?.name ?? food.name };
  const listed = own ? neverFedIn(printedTexts(own.evidence), species) : [];
  const all = [...cautionsFor(named, species), ...listed].map((hit) => hit.caution);
  return { cautions: [...new Set(all)], never: all.some((c) => c.severity === 'never') };
}

/** Foods of the animal's mixes, then of others, then the keeper's own: each food once, by its number where it has one. */
export function namedFoods(house: Household, animal: Animal): { id: string; name: string; note: string }[] {
  const t = words().trials.choose;
  const own = mixesOf(house.mixes, animal.id);
  const mixes = [...own, ...house.mixes.filter((m) => !own.includes(m))];
  const all = [
    ...mixes.flatMap((m) =>
      m.problem.foods.map((f) => ({
        id: f.ref ?? f.id,
        name: f.name ?? f.id,
        note: `${groupName(f.group ?? OTHER)} · ${t.inMix}`,
      })),
    ),
    ...house.foods.map((f) => ({ id: f.id, name: f.name, note: f.kind === 'pellet' ? t.pellet : t.own })),
  ];
  return all.filter((f, k) => all.findIndex((other) => other.id === f.id) === k);
}

/**
 * What may be chosen, narrowed by what was typed. What must never be fed is not among it.
 * @param found rows of the tables that were found for it
 */
export function choosable(
  house: Household,
  animal: Animal,
  query: string,
  found: readonly ReferenceFood[],
  tables: ReadonlyMap<string, ReferenceFood>,
): Choosable[] {
  const typed = query.trim().toLowerCase();
  const named = namedFoods(house, animal).filter((f) => f.name.toLowerCase().includes(typed));
  const there = new Set(named.map((f) => f.id));
  const rows = found
    .filter((f) => !there.has(f.ref))
    .map((f) => ({
      id: f.ref,
      name: f.name,
      note: [groupName(f.group ?? OTHER), f.plain ? '' : tableNote(f)].filter(Boolean).join(' · '),
    }));
  const rowOf = new Map(found.map((f) => [f.ref, f]));
  return [...named, ...rows].flatMap((food) => {
    const table = rowOf.get(food.id) ?? tables.get(food.id);
    if (adviceOn(house, animal, food, table).never) return [];
    return [{ ...food, standing: foodStanding(house, animal, { id: food.id, name: food.name }) }];
  });
}

/** The name of a food by the id that a trial or an address has; undefined where nothing here names it. */
export function nameOfFood(
  house: Household,
  animal: Animal,
  id: string,
  table: ReferenceFood | undefined,
): string | undefined {
  return namedFoods(house, animal).find((f) => f.id === id)?.name ?? table?.name;
}
