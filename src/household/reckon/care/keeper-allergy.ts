/** What of a food the keeper is allergic to, as far as that is known. */
import { type AllergensFound, allergensOf, type Handled } from '../../../care/hands/allergens.ts';
import type { Allergen } from '../../../care/model.ts';
import type { Household } from '../../model.ts';

export interface KeeperAllergy {
  readonly holds: readonly Allergen[];
  readonly traces: readonly Allergen[];
  /** Of these nobody knows whether they are in it. */
  readonly unknown: readonly Allergen[];
}

/** Undefined where the keeper has said no allergy, or the food has nothing to do with one. */
export function keeperAllergy(
  { keeper }: Pick<Household, 'keeper'>,
  food: () => Handled,
): KeeperAllergy | undefined {
  const { allergies = [] } = keeper[0] ?? {};
  if (allergies.length === 0) return undefined;
  const found: AllergensFound = allergensOf(food());
  const holds = allergies.filter((a) => found.holds.includes(a));
  const traces = allergies.filter((a) => found.traces.includes(a));
  const unknown = found.known ? [] : allergies.filter((a) => !holds.includes(a) && !traces.includes(a));
  return holds.length + traces.length + unknown.length > 0 ? { holds, traces, unknown } : undefined;
}
