/** What a sitter has to know of every animal that lives here. */
import { conditionsNow, isIn } from '../../../care/animal/conditions.ts';
import { type SpeciesKind, speciesKind } from '../../../care/animal/species.ts';
import { portionsOf } from '../../../care/feeding/portions.ts';
import type { Condition } from '../../../care/model.ts';
import type { Animal, Household } from '../../model.ts';
import type { Circumstances } from '../calendar/circumstances.ts';
import { dailyMeal, type MealStop } from './daily-meal.ts';
import { isHere } from './here.ts';
import { type OutRule, refusedBy } from './out-foods.ts';
import { weightsOf } from './weight-of.ts';

export interface SitterEntry {
  readonly animal: Animal;
  /** What it is fed a day, in whole steps of the scale; g are absent where they are not known. */
  readonly foods: readonly {
    readonly kind: 'mix' | 'old' | 'beside';
    readonly name: string;
    readonly grams?: number;
  }[];
  /** g a day in all; absent where one of them is not known. */
  readonly together?: number;
  /** What it weighs, g; absent where nobody knows. */
  readonly weight?: number;
  readonly conditions: readonly Condition[];
  /** Foods that upset it, by name: it must not have them. */
  readonly never: readonly string[];
  /** Foods it refuses, by name: it leaves them lying. */
  readonly leaves: readonly string[];
  /** It has diabetes or is prone to it, as dwarf hamsters are: nothing sugary. */
  readonly noSugar: boolean;
  /** Why it should not be fed that; that it refuses a part of it is no reason for a sitter. */
  readonly stop?: MealStop;
}

/** Kinds that the list of cautions keeps from sugar. */
const PRONE: readonly SpeciesKind[] = ['campbells', 'winter-white', 'roborovski', 'chinese', 'dwarf'];

/** In the order in which the animals are kept; those that are gone have no entry. */
export function sitterCard(
  house: Household,
  under: Pick<Circumstances, 'today' | 'dayAt' | 'chosenFor'> & Partial<Pick<Circumstances, 'table'>>,
): SitterEntry[] {
  return house.animals.filter(isHere).map((animal) => entryOf(house, animal, under));
}

function entryOf(house: Household, animal: Animal, under: Parameters<typeof sitterCard>[1]): SitterEntry {
  const meal = dailyMeal(house, animal, under);
  const fed = [
    ...(meal?.mix ? [{ kind: 'mix' as const, name: meal.mix.batch.name, grams: meal.mix.grams }] : []),
    ...(meal?.old ? [{ kind: 'old' as const, name: meal.old.batch.name, grams: meal.old.grams }] : []),
    ...(meal?.beside ?? []).map((b) => ({ kind: 'beside' as const, name: b.name, grams: b.grams })),
  ];
  const known = fed.flatMap((f) => f.grams ?? []);
  const [whole = []] = portionsOf(known, 1, meal?.mix?.batch.problem.scale_step_grams ?? 1);
  const rest = [...whole];
  const foods = fed.map(({ grams, ...food }) => {
    const shown = grams === undefined ? undefined : rest.shift();
    return { ...food, ...(shown !== undefined && { grams: shown }) };
  });
  const weight = weightsOf(house, animal, under).trend.at(-1)?.grams ?? animal.usualGrams;
  const conditions = conditionsNow(animal);
  const out = refusedBy(house, animal);
  const names = (why: readonly OutRule['why'][]) => [
    ...new Set(out.filter((r) => why.includes(r.why)).map((r) => r.name)),
  ];
  const never = names(['upset']);
  return {
    animal,
    foods,
    ...(foods.length > 0 &&
      known.length === foods.length && { together: whole.reduce((sum, g) => sum + g, 0) }),
    ...(weight !== undefined && { weight }),
    conditions,
    never,
    leaves: names(['list', 'refused']).filter((name) => !never.includes(name)),
    noSugar: isIn(animal, 'diabetes') || PRONE.includes(speciesKind(animal.species)),
    ...(meal?.stop && meal.stop.why !== 'refused' && { stop: meal.stop }),
  };
}
