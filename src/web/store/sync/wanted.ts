/**
 * Which of the lists that come last are wanted: those that the screen draws from are fetched at once. The others come once
 * the screen has had time to stand, since they would be in the way of what it is waiting for.
 */
import type { Section } from '../../../household/records.ts';

export class Wanted {
  readonly #wanted = new Set<Section>(['rest']);
  /** Lists whose turn it was before anybody wanted them. */
  readonly #waiting = new Map<Section, { readonly ready: Promise<void>; go(): void }>();
  readonly #later: number;

  /** @param later when a list that nobody wants comes all the same, ms after it was its turn */
  constructor(later: number) {
    this.#later = later;
  }

  /** From here on they are fetched at once. */
  want(sections: readonly Section[]): void {
    for (const section of sections) {
      this.#wanted.add(section);
      this.#waiting.get(section)?.go();
    }
  }

  /** Ready once a section may be fetched. */
  mayCome(section: Section): Promise<void> {
    if (this.#wanted.has(section)) return Promise.resolve();
    const known = this.#waiting.get(section);
    if (known) return known.ready;
    let go = () => {};
    const ready = new Promise<void>((come) => {
      go = come;
    });
    this.#waiting.set(section, { ready, go });
    setTimeout(() => this.want([section]), this.#later);
    return ready;
  }
}
