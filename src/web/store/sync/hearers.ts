/** Who waits to hear what becomes of a change, by its slot. */
import type { Change } from './change.ts';
import type { Outcome } from './keeper-parts.ts';

export class Hearers {
  readonly #hearers = new Map<string, ((outcome: Outcome) => void)[]>();

  add(slot: string, heard: ((outcome: Outcome) => void) | undefined): void {
    if (heard) this.#hearers.set(slot, [...(this.#hearers.get(slot) ?? []), heard]);
  }

  /** @returns whether anybody waited for it */
  tell({ slot }: Change, outcome: Outcome): boolean {
    const hearers = this.#hearers.get(slot) ?? [];
    this.#hearers.delete(slot);
    for (const heard of hearers) heard(outcome);
    return hearers.length > 0;
  }
}
