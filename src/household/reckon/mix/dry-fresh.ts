/**
 * Fresh foods in a dry mix: they mould, and take the mix with them. Which they are, and the mix with the dried form of
 * each in its place.
 */
import { onCrudeProtein } from '../../../foods/crude-protein.ts';
import type { Food } from '../../../foods/food.ts';
import { driedForm } from '../../../foods/forms/dried-composition.ts';
import { PAIRS } from '../../../foods/forms/pairs.ts';
import type { ReferenceFood } from '../../../foods/reference.ts';
import { fedFigures } from '../../../formulation/problem/fed-figures.ts';
import type { Ingredient, Problem } from '../../../formulation/problem/problem.ts';
import type { DriedAtHome } from '../../../kitchen/model.ts';
import type { Mix } from '../../model.ts';
import { driedFrom, PLANNED_MOISTURE, withDried } from '../foods/fresh-food.ts';
import { isFresh } from './beside.ts';
import { ingredientFromReference, removeFood, withProblem } from './mix-edits.ts';

type Known = ReadonlyMap<string, ReferenceFood>;

/** Foods of the mix that are fresh, cooked or live by their figures; a food of unknown moisture is not among them. */
export function freshFoods({ foods }: Problem, known: Known): Ingredient[] {
  return foods.filter((f) => !f.refused && isFresh(fedFigures(f, tableOf(f, known)).composition.WATER));
}

/** Reference numbers of the dried foods that stand measured in the tables beside the fresh foods of a mix. */
export function measuredDried({ foods }: Problem): string[] {
  const refs = new Set(foods.flatMap((f) => (f.ref !== undefined && plain(f) ? [f.ref] : [])));
  return [...new Set(PAIRS.filter((p) => refs.has(p.fresh)).map((p) => p.dried))];
}

/**
 * The mix with the dried form of every fresh food in its place: as the tables have it measured, else worked out from
 * the fresh food by its dry matter, at the moisture that home-dried food is planned with. The shares, limits and wishes
 * stay as they are: they are percent of the mix as it is weighed, so of dried food from now on. Price and what is at
 * home were those of the fresh food and go.
 * @param dryName the dried food's name, from that of the fresh one
 */
export function withDriedForms(mix: Mix, known: Known, dryName: (fresh: string) => string): Mix {
  return freshFoods(mix.problem, known).reduce((m, food) => replaced(m, food, known, dryName), mix);
}

/**
 * How foods are dried at home, with the fresh foods of a mix among them: each dried form is made of its fresh food.
 * @param mix with the fresh foods still in it @param all as it stands
 */
export function homeDried(
  mix: Mix,
  known: Known,
  dryName: (fresh: string) => string,
  all: readonly DriedAtHome[],
): DriedAtHome[] {
  return freshFoods(mix.problem, known).reduce(
    (list, food) => {
      const dried = measured(food, known) ?? workedOut(food, known, dryName);
      const { id } = placeOf(mix, food, dried) ?? dried;
      const there = list.some((d) => d.food === id);
      return there ? list : withDried(list, id, driedFrom(undefined, food.ref ?? food.id));
    },
    [...all],
  );
}

/** The food of the mix that is the dried form already. */
function placeOf(mix: Mix, fresh: Ingredient, dried: Ingredient): Ingredient | undefined {
  const others = mix.problem.foods.filter((f) => f.id !== fresh.id);
  return others.find((f) => f.id === dried.id || (f.ref !== undefined && f.ref === dried.ref));
}

function replaced(mix: Mix, food: Ingredient, known: Known, dryName: (fresh: string) => string): Mix {
  const dried = measured(food, known) ?? workedOut(food, known, dryName);
  const there = placeOf(mix, food, dried);
  if (there) {
    const share = (mix.shares[there.id] ?? 0) + (mix.shares[food.id] ?? 0);
    const next = removeFood(mix, food.id);
    return { ...next, shares: { ...next.shares, [there.id]: share } };
  }
  const { price_per_kg: _, on_hand_grams: __, ...asked } = figuresOff(food);
  const { [food.id]: share = 0, ...shares } = mix.shares;
  const { foods, rules, aims } = mix.problem;
  const renamed = <T extends object>(part: T): T =>
    'food' in part && part.food === food.id ? { ...part, food: dried.id } : part;
  return {
    ...withProblem(mix, {
      foods: foods.map((f) =>
        f.id === food.id ? { ...asked, ...dried, group: food.group ?? dried.group } : f,
      ),
      rules: rules.map(renamed),
      ...(aims && { aims: aims.map(renamed) }),
    }),
    shares: { ...shares, [dried.id]: share },
    held: mix.held.map((id) => (id === food.id ? dried.id : id)),
  };
}

/** The dried food as the tables have it, one that keepers use before others. */
function measured(food: Ingredient, known: Known): Ingredient | undefined {
  if (!plain(food)) return undefined;
  const rows = PAIRS.flatMap((p) => (p.fresh === food.ref ? (known.get(p.dried) ?? []) : []));
  const row = rows.find((r) => r.plain) ?? rows[0];
  return row && ingredientFromReference(row);
}

function workedOut(food: Ingredient, known: Known, dryName: (fresh: string) => string): Ingredient {
  const row = tableOf(food, known);
  const name = food.name ?? row?.name ?? food.id;
  const proteinFactor = food.composition?.PROCNT === undefined ? row?.proteinFactor : food.protein_factor;
  const fresh: Food = {
    ...fedFigures(food, row),
    ...(proteinFactor !== undefined && { proteinFactor }),
    ref: food.ref ?? food.id,
    name,
    source: row?.source ?? name,
    ...(row?.group && { group: row.group }),
  };
  const { composition, sd, low, high } = driedForm(onCrudeProtein(fresh), PLANNED_MOISTURE);
  const bounds = { ...(low && { low }), ...(high && { high }) };
  return { id: `${food.id}-dried`, name: dryName(name), composition, sd, ...bounds };
}

/** Whether a food's figures are the table's alone. */
function plain({ composition, low, high }: Ingredient): boolean {
  return !composition && !low && !high;
}

/** What is asked of a food, without what it is made of. */
function figuresOff(food: Ingredient): Omit<Ingredient, 'composition' | 'low' | 'high' | 'sd' | 'ref'> {
  const { composition: _, sd: __, low: ___, high: ____, ref: _____, protein_factor: ______, ...asked } = food;
  return asked;
}

function tableOf({ ref }: Ingredient, known: Known): ReferenceFood | undefined {
  return ref === undefined ? undefined : known.get(ref);
}
