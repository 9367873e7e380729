/** The animals that live here: those that died or were given away stay on record alone. */
import type { Animal } from '../../model.ts';

export function isHere(animal: Pick<Animal, 'gone'>): boolean {
  return animal.gone === undefined;
}
