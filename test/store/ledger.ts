/**
 * Who set which value of what, and what they had seen in its place. Nobody ever sets a value a second time, so whatever the
 * store does can be told: a value that comes back was brought back by who had not seen the newer one, and one that takes
 * the place of another must have been set by who had seen that.
 */

type Value = string | number | undefined;

export class Ledger {
  /** What went wrong, in words. */
  readonly broken: string[] = [];
  /** Every value that ever stood, by place. */
  readonly #stood = new Map<string, Set<Value>>();
  readonly #set = new Map<Value, { author: number; seen: Set<Value> }>();
  /** What was chosen where both were shown: place, the value that gives way, the one that stands. */
  readonly #chosen = new Set<string>();
  /** Values that must come to stand. */
  readonly #due = new Map<Value, { at: string; author: number }>();

  /** An author sets a value at a place. @param seen what they saw there */
  set(author: number, at: string, value: Value, seen: Value): void {
    // Who sees a value knows that it stands in the place of what its author saw.
    this.#set.set(value, { author, seen: new Set([seen, ...(this.#set.get(seen)?.seen ?? [])]) });
    // What the same author set before and did not send yet gives way, and what they took over and saw.
    for (const [earlier, due] of this.#due)
      if (due.at === at && (due.author === author || earlier === seen)) this.#due.delete(earlier);
    this.#due.set(value, { at, author });
  }

  /** What was set at places that begin so need not come to stand: refused, deleted, or given way by choice. */
  excuse(places: string, author?: number): void {
    for (const [value, due] of this.#due)
      if (due.at.startsWith(places) && (author === undefined || due.author === author))
        this.#due.delete(value);
  }

  /** Both values were shown, and this one was chosen. */
  chose(at: string, value: Value, before: Value): void {
    this.#chosen.add(`${at} ${before} ${value}`);
    // Whoever goes on from there has seen both.
    this.#set.get(value)?.seen.add(before);
  }

  /** A value stands where another stood. @param isNew whether nothing of the record was there */
  stands(at: string, value: Value, before: Value, isNew: boolean): void {
    const stood = this.#stood.get(at) ?? new Set();
    this.#stood.set(at, stood);
    if (!isNew && value !== before && !this.#chosen.has(`${at} ${before} ${value}`)) {
      if (stood.has(value)) this.broken.push(`${at} went back from ${before} to ${value}`);
      const author = this.#set.get(value);
      const own = author && this.#set.get(before)?.author === author.author;
      if (author && !own && !author.seen.has(before))
        this.broken.push(`${at}: ${value} was written over ${before}, unseen`);
    }
    stood.add(value);
    this.#due.delete(value);
  }

  /** Values that never came to stand. */
  lost(): string[] {
    return [...this.#due].map(([value, { at }]) => `${at}: ${value}`);
  }
}
