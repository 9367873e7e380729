/** Records by the animal they are of, sorted out once for a list. */
import { groupedBy } from '../../../kitchen/grouped-by.ts';
import { remembered } from '../../../kitchen/remembered.ts';

interface OfAnimal {
  readonly animalId: string;
}

type Sorted = ReadonlyMap<string, readonly OfAnimal[]>;

/** How the list before was sorted out, by its first record: most changes leave that in its place. */
const before = new WeakMap<OfAnimal, Sorted>();

/** What is of one animal is the same list as before where none of it has changed: what follows from it still stands. */
const sorted = remembered((list: readonly OfAnimal[]): Sorted => {
  const now = groupedBy(list, (one) => one.animalId);
  const [first] = list;
  if (first === undefined) return now;
  const was = before.get(first);
  const kept = new Map([...now].map(([id, own]) => [id, sameAs(was?.get(id), own)]));
  before.set(first, kept);
  return kept;
});

function sameAs(was: readonly OfAnimal[] | undefined, now: readonly OfAnimal[]): readonly OfAnimal[] {
  return was?.length === now.length && was.every((one, i) => one === now[i]) ? was : now;
}

const NONE: readonly OfAnimal[] = [];

/** In the order of the list. @param list one of the household's, which is never written to */
export function ofAnimal<T extends OfAnimal>(list: readonly T[], animalId: string): readonly T[] {
  return (sorted(list).get(animalId) ?? NONE) as readonly OfAnimal[] as readonly T[];
}
