/** Weights, food, trials and notes on one time axis. */
import type { Animal } from '../../../household/model.ts';

export function LifePart({ animal }: { animal: Animal }) {
  return <p>{animal.name}</p>;
}
