/** One page for the vet, to print. */
import type { Animal } from '../../../household/model.ts';

export function VetPart({ animal }: { animal: Animal }) {
  return <p>{animal.name}</p>;
}
