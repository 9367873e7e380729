/** What sharing a base costs an animal, in words. */
import type { SharingCost } from '../../../../formulation/advice/shared-base.ts';

/** What sharing costs an animal, in a sentence. */
export function costWords({ different, dearer }: SharingCost): string {
  const price =
    dearer === undefined || Math.abs(dearer) < 0.005
      ? ''
      : `, and it is ${Math.abs(dearer).toFixed(2)} ${dearer > 0 ? 'dearer' : 'cheaper'} per kg`;
  if (different < 0.05) return `Its mix is as the best mix of its own would be${price}.`;
  return `${figure(different)} % of its mix is other food than in the best mix of its own${price}.`;
}

/** Two decimals where they say something. */
export function figure(value: number): string {
  return String(Number(value.toFixed(value < 1 ? 2 : 1)));
}
