/** The first household of a page while it comes in: which of its lists are whole, and who waits for the others. */
import { KINDS, type Kind } from '../../../household/model.ts';
import type { Section } from '../../../household/records.ts';
import type { Replica } from './replica.ts';

export class FirstHousehold {
  /** What is here of it; undefined before the most of it is, and once it is whole. */
  replica: Replica | undefined;
  /** Lists that are not whole yet, each with what is kept once it is. */
  readonly coming = new Map<Kind, Promise<void>>();
  readonly #come = new Map<Kind, () => void>();

  /** @param sections that are still to come @returns kinds whose lists are to be drawn anew */
  arrived(replica: Replica, sections: readonly Section[]): readonly Kind[] {
    const kinds = sections.filter((section) => section !== 'rest');
    if (kinds.length < sections.length) return [];
    if (replica === this.replica) return this.#came(kinds);
    this.#came([]);
    this.replica = replica;
    for (const kind of kinds) this.coming.set(kind, new Promise((come) => this.#come.set(kind, come)));
    return KINDS;
  }

  /** It is whole. @returns kinds whose lists are to be drawn anew */
  ended(replica: Replica): readonly Kind[] {
    const known = replica === this.replica;
    this.replica = undefined;
    const came = this.#came([]);
    return known ? came : KINDS;
  }

  /** Who waited for a list looks again. @param still kinds that are still to come */
  #came(still: readonly Kind[]): readonly Kind[] {
    const came = [...this.coming.keys()].filter((kind) => !still.includes(kind));
    for (const kind of came) {
      this.coming.delete(kind);
      this.#come.get(kind)?.();
      this.#come.delete(kind);
    }
    return came;
  }
}
