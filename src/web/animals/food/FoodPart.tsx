/** What it is fed a day, and how long that lasts. */
import type { Animal } from '../../../household/model.ts';

export function FoodPart({ animal }: { animal: Animal }) {
  return <p>{animal.name}</p>;
}
