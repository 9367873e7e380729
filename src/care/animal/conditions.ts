/** What an animal is in now, of all that was ever noted of it, and what follows from that. */
import { proneToDiabetes } from '../../foods/cautions/prone.ts';
import type { Condition } from '../model.ts';

interface WithConditions {
  readonly species: string;
  readonly conditions?: readonly Condition[];
}

/** Those that hold: nobody has said that they are over. */
export function conditionsNow({ conditions = [] }: Pick<WithConditions, 'conditions'>): Condition[] {
  return conditions.filter((c) => c.until === undefined);
}

export function isIn(animal: Pick<WithConditions, 'conditions'>, what: Condition['what']): boolean {
  return conditionsNow(animal).some((c) => c.what === what);
}

/** Its species as the caution list reads it: an animal with diabetes, or prone to it, is kept from sugar as dwarfs are. */
export function cautionSpecies(animal: WithConditions): string {
  return isIn(animal, 'diabetes') ? proneToDiabetes(animal.species) : animal.species;
}
