/** Its weights: the last, the trend, and what to look into. */
import type { Animal } from '../../../household/model.ts';

export function WeightPart({ animal }: { animal: Animal }) {
  return <p>{animal.name}</p>;
}
