/** A heading as it is read: what is known in it, and every word that is not. */
import type { Item } from './match.ts';
import type { Atom, Part } from './part.ts';
import { isRole } from './per.ts';
import type { PrintedQuantity } from './quantity.ts';

/** Words before what amounts are of; "for" and the like rather say whom the food is for. */
const LEADS = new Set([
  'in',
  'on',
  'auf',
  'sur',
  'op',
  'sobre',
  'en',
  'dans',
  'bezogen',
  'calculated',
  'expressed',
]);

export class HeadingDraft {
  readonly atoms: Atom[] = [];
  readonly words: string[] = [];
  /** It begins with "in", "on" and the like. */
  leads = false;
  private forWords = false;

  get isEmpty(): boolean {
    return this.atoms.length === 0 && this.words.length === 0;
  }

  /** A word such as "in" or "for" that nothing known follows. @param first whether it begins the line */
  takeLead(item: Item, first: boolean): void {
    if (!this.isEmpty) return;
    if (LEADS.has(item.text.toLowerCase())) this.leads = true;
    else if (isRole(item, 'per')) this.forWords = first;
  }

  /** @param glued whether no gap as between columns stands before it */
  takeQuantity(quantity: PrintedQuantity, glued: boolean): void {
    // "% RI per serving": what the shares of a daily intake are per heads no amounts of its own.
    const repeats =
      this.atoms.at(-1)?.kind === 'share' && glued && this.atoms.some((a) => isSame(a, quantity));
    if (!repeats) this.atoms.push(quantity);
  }

  /** @param listed whether a comma parts it from what stands beside it */
  part(text: string, listed: boolean): Part {
    return {
      kind: 'heading',
      atoms: this.atoms,
      words: this.words,
      text,
      ...(this.forWords && { forWords: true }),
      ...(this.leads && { leads: true }),
      ...(listed && { listed: true }),
    };
  }
}

/** Whether a share's "per" repeats that of a column before it. */
function isSame(atom: Atom, { kind, grams, text }: PrintedQuantity): boolean {
  if (atom.kind === 'share' || atom.kind === 'bound' || kind === 'percent') return false;
  if (kind === 'each') return atom.text.includes(text.split(' ').at(-1) ?? text);
  return kind === 'serving' ? atom.kind === 'serving' || atom.grams !== 100 : atom.grams === grams;
}
