/** What mends a mix that cannot be, sorted for a keeper: what was asked gives way before what the animal needs. */
import { pointerSteps } from '../../../formulation/problem/json-pointer.ts';
import type { Addition, Change, Remedy, Statement } from '../../../formulation/problem/result.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { Mix } from '../../model.ts';
import { addFood, patchFood } from './mix-edits.ts';
import { isLimitOfTarget, withChanges } from './own-limits.ts';

interface SortedRemedies {
  /** Changes to what the keeper asked for: shares, groups, numbers of foods, amounts, safety against a food left. */
  readonly asked: readonly Remedy[];
  /** Foods to add. */
  readonly foods: readonly Addition[];
  /** Changes to nutrients and ratios: the target itself is widened. */
  readonly target: readonly Remedy[];
}

/**
 * Those remedies that this mix can take, sorted. Left out are changes to a rule that only an animal of the mix brings,
 * and to the share of a food that is held: that is let go of, not loosened.
 * @param keptRules so many rules are the mix's own; those after them come from its animals
 */
export function sortedRemedies(remedies: readonly Remedy[], mix: Mix, keptRules: number): SortedRemedies {
  const possible = remedies.filter((r) =>
    changesOf(r).every((c) => !isForeign(c.pointer, keptRules) && !heldAt(mix, c.pointer)),
  );
  const ofTarget = (r: Remedy) => changesOf(r).some((c) => isLimitOfTarget(mix.problem, c.pointer));
  return {
    asked: possible.filter((r) => r.kind !== 'add' && !ofTarget(r)),
    foods: possible.filter((r) => r.kind === 'add'),
    target: possible.filter(ofTarget),
  };
}

/** The mix with a remedy taken. A food comes in at 0 %; a limit of the target becomes the keeper's own. @param on that day */
export function withRemedy(mix: Mix, remedy: Remedy, on: Day): Mix {
  return remedy.kind === 'add' ? addFood(mix, remedy.food) : withChanges(mix, changesOf(remedy), on);
}

/** What a remedy writes; nothing where it adds a food. */
export function changesOf(remedy: Remedy): readonly Change[] {
  return remedy.kind === 'loosen' ? [remedy] : remedy.kind === 'add' ? [] : remedy.changes;
}

/** Whether a pointer names a rule that an animal of the mix brings. */
export function isForeign(pointer: string, keptRules: number): boolean {
  const [list, row] = pointerSteps(pointer);
  return list === 'rules' && Number(row) >= keptRules;
}

/** The held food whose least or most share a pointer names. */
export function heldAt(mix: Mix, pointer: string): string | undefined {
  const [list, row, bound] = pointerSteps(pointer);
  if (list !== 'foods' || (bound !== 'min' && bound !== 'max')) return undefined;
  const id = mix.problem.foods[Number(row)]?.id;
  return id !== undefined && mix.held.includes(id) ? id : undefined;
}

/**
 * Foods whose least shares together may be what collides: those of all foods that have one, where the conflict names
 * one. Only where there are several; of a single one the formulation says how far it must give way.
 */
export function insisted(mix: Mix, conflict: readonly Statement[]): string[] {
  const named = conflict.some(({ pointer }) => /^\/foods\/\d+\/min$/.test(pointer) && !heldAt(mix, pointer));
  if (!named) return [];
  const foods = mix.problem.foods.filter((f) => !f.refused && (f.min ?? 0) > 0 && !mix.held.includes(f.id));
  return foods.length > 1 ? foods.map((f) => f.id) : [];
}

/** The mix with least shares turned into wished shares: as much of each as the rules allow, and no more insisted on. */
export function wishedInstead(mix: Mix, ids: readonly string[]): Mix {
  return ids.reduce((m, id) => {
    const food = m.problem.foods.find((f) => f.id === id);
    return patchFood(m, id, { min: undefined, want: Math.max(food?.min ?? 0, food?.want ?? 0) });
  }, mix);
}
