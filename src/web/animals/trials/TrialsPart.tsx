/** New foods, offered one at a time. */
import type { Animal } from '../../../household/model.ts';

export function TrialsPart({ animal }: { animal: Animal }) {
  return <p>{animal.name}</p>;
}
