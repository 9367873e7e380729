/** Records by the animal they are of, sorted out once for a list. */
import { groupedBy } from '../../../kitchen/grouped-by.ts';
import { remembered } from '../../../kitchen/remembered.ts';

interface OfAnimal {
  readonly animalId: string;
}

const sorted = remembered((list: readonly OfAnimal[]) => groupedBy(list, (one) => one.animalId));

/** In the order of the list. @param list one of the household's, which is never written to */
export function ofAnimal<T extends OfAnimal>(list: readonly T[], animalId: string): readonly T[] {
  return (sorted(list).get(animalId) ?? []) as readonly OfAnimal[] as readonly T[];
}
