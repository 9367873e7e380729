/** The animals that live here: those that died or were given away stay on record alone. */
import type { Animal } from '../../model.ts';

export function isHere(animal: Pick<Animal, 'gone'>): boolean {
  return animal.gone === undefined;
}

/** Those of some animals that live here, in the order of the household. @param ids as a mix or a batch names them */
export function hereAmong<A extends Pick<Animal, 'id' | 'gone'>>(
  animals: readonly A[],
  ids: readonly string[],
): A[] {
  return animals.filter((a) => isHere(a) && ids.includes(a.id));
}

/** Whether some animals lived here, and none of them does any more. One that was deleted tells nothing. */
export function areAllGone(animals: readonly Pick<Animal, 'id' | 'gone'>[], ids: readonly string[]): boolean {
  const known = animals.filter((a) => ids.includes(a.id));
  return known.length > 0 && !known.some(isHere);
}
