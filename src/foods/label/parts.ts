/**
 * The items of a line as parts: amounts with their names, headings, sections, and what was missed. Within one part
 * everything must be understood, or the whole part is missed: an unknown word beside a figure may change what the
 * figure means. What stands before any name is a heading, and keeps every word of it.
 */

import { figureAhead, nameAfterComma, shareAhead, spanOf } from './ahead.ts';
import { AmountDraft } from './amount-draft.ts';
import { dailyAlone, readFigure } from './figure.ts';
import { HeadingDraft } from './heading-draft.ts';
import type { Item } from './match.ts';
import { missedParts } from './missed.ts';
import type { LineParts, Part } from './part.ts';
import {
  basisAt,
  type FoundQuantity,
  findQuantity,
  isEnergyUnit,
  isOnlyPer,
  isPercent,
  isRole,
  isSign,
} from './per.ts';
import type { Bound } from './quantity.ts';
import { notKnown, reasons } from './reasons.ts';
import { sectionOf } from './sections.ts';
import type { Role } from './words.ts';

/** Words of a weight or a measure, which beside a figure say what it is per. */
const MEASURES: readonly Role[] = ['piece', 'serving', 'kilogram', 'pound', 'ounce'];

/** Reads the parts of one line, brackets already opened. `text` is the whole line, for quoting. */
export function readParts(items: readonly Item[], text: string): LineParts {
  return new PartReader(items, text).read();
}

class PartReader {
  private readonly items: readonly Item[];
  private readonly text: string;
  private readonly hasText: boolean;
  private readonly firstSection: number;
  private readonly parts: Part[] = [];
  private readonly bare: string[] = [];
  private i = 0;
  /** Where the part being read begins. */
  private start = 0;
  private heading = new HeadingDraft();
  private amount: AmountDraft | undefined;
  private bound: Bound | undefined;
  private strict = false;
  private about = false;
  private tainted = false;
  /** Where the last heading ended. */
  private headingEnd = -1;
  /** A name came right after an amount, with nothing between. */
  private runsOn = false;

  constructor(items: readonly Item[], text: string) {
    this.items = items;
    this.text = text;
    this.hasText = items.some((i) => i.kind === 'name' || i.kind === 'word' || i.kind === 'odd');
    this.firstSection = items.findIndex((i) => sectionOf(i) !== undefined);
  }

  read(): LineParts {
    const { items } = this;
    for (let item = items[this.i]; item; item = items[this.i]) {
      const why = this.step(item);
      if (why !== undefined) this.miss(why);
    }
    this.close();
    return { parts: this.parts, bare: this.bare };
  }

  /** Takes one or more items; gives a reason when the part cannot be understood. */
  private step(item: Item): string | undefined {
    const { items } = this;
    if (item.kind === 'name') return this.takeName(item);
    if (item.kind === 'odd') return item.why;
    if (item.kind === 'word') return this.takeWord(item);
    const mayBe = item.kind === 'role' || item.kind === 'number' || isSign(item, '/');
    const found = mayBe ? findQuantity(items, this.i) : undefined;
    if (found && !(found.bare && (this.amount || !this.bareColumnHere(found.next))))
      return this.takeQuantity(found);
    if (item.kind === 'number') return this.takeFigure();
    if (item.kind === 'unit') return this.takeUnit(item);
    if (isRole(item, 'product') && item.kind === 'role' && item.roles.size === 1) return this.takeWord(item);
    this.i++;
    if (item.kind === 'noise') return undefined;
    if (item.kind === 'role') return this.takeRole(item);
    return this.takeSign(item);
  }

  private takeWord(item: Item): string | undefined {
    // "5 g per 100 g" and then a word that is not known: it may hold for the whole line.
    this.tainted = this.amount?.last?.per !== undefined;
    if (this.amount) return notKnown(item.text);
    this.heading.words.push(item.text);
    this.i++;
    return undefined;
  }

  private takeName(item: Item & { kind: 'name' }): string | undefined {
    const { amount } = this;
    if (!amount && this.heading.words.length > 0) return notKnown(this.heading.words.join(' '));
    if (item.name.tags[0] === 'ENERC_KCAL' && amount && this.takesEnergyWord(amount)) return undefined;
    if (amount && amount.figures.length === 0 && !amount.parted) {
      const why = amount.takeName(item);
      if (why === undefined) this.i++;
      return why;
    }
    if (amount && this.bound) return reasons().boundBeforeName;
    const runsOn = amount !== undefined && amount.figures.length > 0;
    const { bound, strict, about } = this;
    if (amount || !this.heading.isEmpty) this.close();
    else this.start = Math.min(this.start, this.i);
    this.bound = bound;
    this.strict = strict;
    this.about = about;
    this.runsOn = runsOn;
    this.amount = new AmountDraft(item);
    this.i++;
    return undefined;
  }

  /** "3500 kcal ME/kg" and "30 % energy": the name behind a figure says more of it. */
  private takesEnergyWord({ last, parted }: AmountDraft): boolean {
    if (!last || parted) return false;
    const next = this.items[this.i + 1];
    if (isEnergyUnit(this.items[this.i - 1]) && (isSign(next, '/') || isRole(next, 'per'))) this.i++;
    else if (last.unit === '%' && !figureAhead(this.items, this.i + 1)) {
      last.share = 'energy';
      this.i += isPercent(next) ? 2 : 1;
    } else return false;
    return true;
  }

  private takeQuantity(found: FoundQuantity): string | undefined {
    const { quantity } = found;
    const { amount } = this;
    const glued = !this.items[this.i]?.gap && !isSign(this.items[this.i - 1], '|');
    this.i = found.next;
    if (found.size) this.parts.push({ kind: 'serving size', quantity });
    else if (amount && !amount.parted && !amount.isEnergyShare) return amount.takeQuantity(found);
    else {
      if (amount) this.close();
      this.heading.takeQuantity(quantity, glued);
    }
    return undefined;
  }

  /** A weight alone ("100 g") heads a column only where the line says nothing of nutrients and names another quantity or a heading. */
  private bareColumnHere(next: number): boolean {
    if (this.hasText) return false;
    if (this.heading.atoms.length > 0) return true;
    const rest = this.items.slice(next, next + 4);
    return (
      (this.firstSection >= 0 && this.firstSection < this.i) ||
      rest.some(
        (i, k) =>
          isRole(i, 'per') || isRole(i, 'serving') || findQuantity(rest, k)?.quantity.kind === 'grams',
      )
    );
  }

  private takeFigure(): string | undefined {
    const { items, amount } = this;
    if (isRole(items[this.i + 1], 'serving count') || isRole(items[this.i - 1], 'serving count')) {
      this.i++;
      this.start = this.i;
      return undefined;
    }
    if (!amount) {
      if (this.heading.words.length > 0) return notKnown(this.heading.words.join(' '));
      const next = dailyAlone(items, this.i);
      if (next === undefined) return reasons().noName;
      this.i = next;
      return undefined;
    }
    const read = readFigure(items, this.i, amount.ahead(this.bound, this.strict, this.about));
    if (typeof read === 'string') return read;
    this.bound = undefined;
    this.strict = this.about = false;
    amount.takeFigure(read.figure);
    this.i = read.next;
    return undefined;
  }

  private takeUnit(item: Item & { kind: 'unit' }): string | undefined {
    const { items, amount } = this;
    const share = item.unit === '%' ? shareAhead(items, this.i) : undefined;
    if (!amount) return this.takeHeadingUnit(item, share);
    const { last } = amount;
    if (share?.of === 'daily') {
      this.i = share.next;
      if (!last) amount.shareNext = 'daily';
      return undefined;
    }
    if (last?.unit === '%' && (isEnergyUnit(item) || share?.of === 'energy')) {
      last.share = 'energy';
      this.i = share?.next ?? this.i + 1;
      return undefined;
    }
    this.i++;
    if (last || (amount.hint && amount.hint !== item.unit)) return reasons().unitTooMany(item.text);
    amount.hint = item.unit;
    return undefined;
  }

  private takeHeadingUnit(item: Item & { kind: 'unit' }, share: ReturnType<typeof shareAhead>): undefined {
    const { items, heading } = this;
    const basis = item.unit === '%' ? basisAt(items, this.i) : undefined;
    const textTo = (next: number) => spanOf(items.slice(this.i, next), this.text);
    if (basis) {
      heading.atoms.push({ kind: 'percent', basis: basis.basis, text: textTo(basis.next) });
      this.i = basis.next;
    } else if (share?.of === 'unknown' && heading.atoms.length === 0) {
      // "% of XY" over a label may be a basis.
      heading.leads = true;
      this.i = share.next - 1;
    } else if (share) {
      heading.atoms.push({ kind: 'share', of: share.of, text: textTo(share.next) });
      this.i = share.next;
    } else this.i++;
  }

  private takeRole(item: Item & { kind: 'role' }): string | undefined {
    const has = (role: Role) => item.roles.has(role);
    const { amount, heading } = this;
    const next = this.items[this.i];
    if (!amount) heading.takeLead(item, this.i === 1);
    const section = sectionOf(item);
    if (section || has('break')) {
      this.close();
      if (section) this.parts.push({ kind: 'section', section });
      if (section && has('mean')) this.heading.atoms.push({ kind: 'bound', side: 'mean', text: item.text });
      return undefined;
    }
    if (has('advice') && !amount) {
      this.close();
      this.start = this.i - 1;
      return reasons().advice;
    }
    if (has('daily') || has('energy share')) return this.takeShare(item, has('daily') ? 'daily' : 'energy');
    if (has('traces') && amount && !amount.last) return reasons().traces;
    if (has('low') || has('high')) return this.takeBound(item, has('low') ? 'low' : 'high');
    if (has('between') && amount) {
      amount.between = true;
      return undefined;
    }
    if (has('mean') && !amount && next?.kind !== 'number')
      heading.atoms.push({ kind: 'bound', side: 'mean', text: item.text });
    if (has('about')) {
      if (isSign(next, '.')) this.i++;
      if (item.text === '±') return reasons().plusOrMinus;
      this.about = true;
      return undefined;
    }
    return this.takeMeasure(item);
  }

  /** A measure or a "per" that is part of no quantity: it is never passed over. */
  private takeMeasure(item: Item): string | undefined {
    const measure = MEASURES.some((role) => isRole(item, role));
    if (this.amount) {
      if (!measure && !isOnlyPer(item)) return undefined;
      this.tainted = true;
      return notKnown(item.text);
    }
    if (!measure) return undefined;
    const next = this.items[this.i];
    // A cell of its own: the whole line, or a column after the first.
    const alone = next === undefined || isSign(next, ':');
    const cell = this.i === 1 ? alone : item.gap === true || isSign(this.items[this.i - 2], '|');
    const ends = alone || next.gap === true || isSign(next, '|');
    if (cell && ends && !this.hasText) this.heading.atoms.push({ kind: 'each', text: item.text });
    else this.heading.words.push(item.text);
    return undefined;
  }

  private takeShare(item: Item, of: 'daily' | 'energy'): string | undefined {
    const { amount } = this;
    const last = amount?.last;
    if (amount && last && !amount.parted) {
      if (last.unit === '%') last.share = of;
      else if (of === 'energy') return notKnown(item.text);
    } else if (amount) amount.shareNext = 'daily';
    else this.heading.atoms.push({ kind: 'share', of, text: item.text });
    return undefined;
  }

  private takeBound(item: Item, side: Bound): string | undefined {
    if (isSign(this.items[this.i], '.')) this.i++;
    const { amount, heading } = this;
    const last = amount?.last;
    const next = this.items[this.i];
    const ahead = isSign(next, ':') || next?.kind === 'noise' ? this.items[this.i + 1] : next;
    const prefix = ahead?.kind === 'number' || ahead?.kind === 'odd' || isRole(ahead, 'about');
    if (!amount && (!prefix || isSign(next, ':'))) {
      const atom = { kind: 'bound', side, text: item.text } as const;
      if (next?.kind !== 'name' || heading.words.length > 0) heading.atoms.push(atom);
      else {
        // "Min. protein 16 %": it may hold for the names after it too, and a bound is true of a value.
        if (heading.atoms.length > 0) this.close();
        this.parts.push({ kind: 'heading', atoms: [atom], words: [], text: item.text, lineOnly: true });
      }
      return undefined;
    }
    const prefixed = this.parts.some((p) => p.kind === 'heading' && p.lineOnly);
    if (last && (isSign(next, ':') || (prefixed && next?.kind === 'name'))) {
      // "Min: protein 15 % - Max: fibre 18 %": the word belongs to what comes, not to what was.
      this.close();
      return this.takeBound(item, side);
    }
    if (amount && last && !prefix && !amount.parted) return amount.boundLast(side);
    if (this.bound) return reasons().twoBoundsBefore;
    this.bound = side;
    this.strict = item.text === '<';
    return undefined;
  }

  private takeSign(item: Item): string | undefined {
    const { amount, heading } = this;
    const next = this.items[this.i];
    if (isSign(item, '-–—−+') && next?.kind === 'number' && next.glued) return reasons().plusMinus;
    // "30 g + 125 ml" is no weight of the food alone.
    if (isSign(item, '+') && !amount && heading.atoms.length > 0) heading.words.push('+');
    if (isSign(item, ',') && this.goesOnAsBound()) return undefined;
    const over = !amount || (amount.isEnergyShare && next?.kind !== 'number');
    if (isSign(item, ':') && over) this.close();
    if (isSign(item, ':=-–—&')) return undefined;
    const waits = amount !== undefined && amount.figures.length === 0;
    if (isSign(item, '/') && (waits || (amount && next?.kind === 'number'))) return undefined;
    if (isSign(item, '|') && (amount || heading.atoms.length > 0)) return undefined;
    // "Moisture, max. 12 %", but not "protein, 12 % fat": there the figure is that of the next name.
    if (amount && waits && isSign(item, ',') && !nameAfterComma(this.items, this.i)) amount.parted = true;
    else {
      this.close(isSign(item, ',;'));
      if (isSign(item, ';')) this.endLineBound();
    }
    return undefined;
  }

  /** "Protein (min. 14 %, max. 16 %)": the other bound of the same name. */
  private goesOnAsBound(): boolean {
    const last = this.amount?.last;
    const side = last?.low && !last.high ? 'high' : last?.high && !last.low ? 'low' : undefined;
    return side !== undefined && isRole(this.items[this.i], side) && !nameAfterComma(this.items, this.i);
  }

  /** A semicolon ends what a bound before a name holds for. */
  private endLineBound(): void {
    const ended = this.parts.findLast((p) => p.kind === 'heading' && p.lineOnly);
    if (ended?.kind === 'heading' && ended.atoms.length > 0)
      this.parts.push({ kind: 'heading', atoms: [], words: [], text: ';', lineOnly: true });
  }

  /** Ends the part; a figure without a name has been missed before this. @param listed whether a comma ends it */
  private close(listed = false): void {
    const { amount } = this;
    if (!amount) this.closeHeading(listed);
    else if (amount.figures.length === 0) this.closeBare(amount);
    else this.parts.push({ kind: 'amount', name: amount.name, heard: amount.heard, figures: amount.figures });
    this.reset();
  }

  private closeHeading(listed: boolean): void {
    const { heading } = this;
    if (heading.isEmpty) return;
    this.headingEnd = heading.atoms.length > 0 ? this.i : -1;
    const before = this.items[this.start - 1];
    const text = spanOf(this.items.slice(this.start, this.i), this.text);
    this.parts.push(heading.part(text, listed || isSign(before, ',;')));
  }

  /** A name without a figure; what stood beside it, or the amount it ran on from, is not sure then. */
  private closeBare({ heard, isEnergyShare, per, basis }: AmountDraft): void {
    this.bare.push(heard);
    const before = this.parts.at(-1);
    if (this.runsOn && before?.kind === 'amount') {
      this.parts.pop();
      this.parts.push({
        kind: 'missed',
        text: `${before.heard} ... ${heard}`,
        why: reasons().cut,
        taints: true,
      });
    }
    if (isEnergyShare) {
      const text = `${heard} %`;
      this.parts.push({ kind: 'heading', atoms: [{ kind: 'share', of: 'energy', text }], words: [], text });
    }
    const lost = per?.text ?? basis;
    if (lost !== undefined)
      this.parts.push({ kind: 'missed', text: lost, why: reasons().noFigureFor(heard), taints: true });
  }

  /** Gives up the part: from where it began to the next separator. */
  private miss(why: string): void {
    const { items, heading } = this;
    // What heads the line stays a heading, though the figure after it cannot be read.
    if (heading.atoms.length > 0) this.closeHeading(false);
    while (this.i < items.length && !this.ends(this.i)) this.i++;
    const inner = items.slice(this.start, this.i);
    const missed = missedParts({
      inner,
      text: spanOf(inner, this.text),
      why,
      tainted: this.tainted,
      strange: heading.words.length > 0,
      named: items.some((i) => i.kind === 'name'),
      afterHeading: this.headingEnd === this.start,
    });
    this.parts.push(...missed);
    this.reset();
  }

  private ends(i: number): boolean {
    const item = this.items[i];
    const section = i > this.start && sectionOf(item) !== undefined;
    return section || isSign(item, ',;|•·.') || isRole(item, 'break');
  }

  private reset(): void {
    this.amount = undefined;
    this.heading = new HeadingDraft();
    this.bound = undefined;
    this.strict = this.about = this.tainted = this.runsOn = false;
    this.start = this.i;
  }
}
