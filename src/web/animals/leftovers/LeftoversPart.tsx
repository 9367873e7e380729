/** What it left, and so what it ate. */
import type { Animal } from '../../../household/model.ts';

export function LeftoversPart({ animal }: { animal: Animal }) {
  return <p>{animal.name}</p>;
}
