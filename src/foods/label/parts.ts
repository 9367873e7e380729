/**
 * The items of a line as parts: amounts with their names, quantities, and what was missed. Within one part everything
 * must be understood, or the whole part is missed: an unknown word beside a figure may change what the figure means.
 */

import { type Ahead, dailyAlone, type Figure, readFigure } from './figure.ts';
import type { Item, Name } from './match.ts';
import type { Column, LineParts, Part } from './part.ts';
import { findQuantity, isRole, isSign } from './per.ts';
import type { PrintedUnit, Quantity } from './reading.ts';
import type { Role } from './words.ts';

const NO_NAME = 'a figure without a nutrient before it; put the name and its figure on one line';
const TRACES = 'traces are no figure; leave it out, or write the most it can be, such as "<0.1 g"';

/** Reads the parts of one line, brackets already opened. `text` is the whole line, for quoting. */
export function readParts(items: readonly Item[], text: string): LineParts {
  return new PartReader(items, text).read();
}

class PartReader {
  private readonly items: readonly Item[];
  private readonly text: string;
  private readonly hasText: boolean;
  private readonly firstHeading: number;
  private readonly parts: Part[] = [];
  private readonly bare: string[] = [];
  private i = 0;
  /** Where the part being read begins, and the items it has taken. */
  private start = 0;
  private name: Name | undefined;
  private heard = '';
  private figures: Figure[] = [];
  private parted = false;
  private bound: 'low' | 'high' | undefined;
  private strict = false;
  private about = false;
  private hint: PrintedUnit | undefined;
  private per: Quantity | undefined;
  private dailyNext = false;
  private columns: Column[] = [];

  constructor(items: readonly Item[], text: string) {
    this.items = items;
    this.text = text;
    this.hasText = items.some((i) => i.kind === 'name' || i.kind === 'word' || i.kind === 'odd');
    this.firstHeading = items.findIndex((i) => isRole(i, 'heading'));
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
    if (item.kind === 'word')
      return `"${item.text.slice(0, 40)}" is not known here; give the nutrient and its figure alone`;
    const found = this.mayBeQuantity(item) ? findQuantity(items, this.i) : undefined;
    if (found && !(found.bare && (this.name || !this.bareColumnHere(found.next))))
      return this.takeQuantity(found);
    if (item.kind === 'number') return this.takeFigure();
    if (item.kind === 'unit') return this.takeUnit(item);
    this.i++;
    if (item.kind === 'noise') return undefined;
    if (item.kind === 'role') return this.takeRole(item);
    return this.takeSign(item);
  }

  private mayBeQuantity(item: Item): boolean {
    return item.kind === 'role' || item.kind === 'number' || isSign(item, '/');
  }

  private takeName(item: Item & { kind: 'name' }): string | undefined {
    if (!this.name && this.columns.length > 0) this.close();
    const pending = this.figures.length === 0 && !this.parted ? this.name : undefined;
    if (this.figures.length > 0 || this.parted) {
      if (this.bound) return 'a minimum or maximum stands before a name, not before its figure';
      this.close();
      this.start = this.i;
    }
    if (pending) {
      const shared = pending.tags.filter((tag) => item.name.tags.includes(tag));
      if (shared.length === 0)
        return `"${this.heard.slice(0, 60)}" and "${item.text}" share one figure; give each its own`;
      if (shared.length < pending.tags.length) this.name = item.name;
      this.heard += ` ${item.text}`;
    } else {
      this.name = item.name;
      this.heard = item.text;
    }
    this.i++;
    return undefined;
  }

  private takeQuantity(found: NonNullable<ReturnType<typeof findQuantity>>): string | undefined {
    const last = this.figures.findLast((figure) => !figure.daily);
    this.i = found.next;
    if (found.size) {
      this.parts.push({ kind: 'serving size', quantity: found.quantity });
    } else if (this.name && last && !this.parted) {
      if (found.basisOnly) last.dryMatter = found.quantity.basis === 'dry matter';
      else if (last.per) return 'one figure has two quantities; give it one';
      else last.per = found.quantity;
    } else if (this.name && !this.parted) {
      if (this.per) return 'one figure has two quantities; give it one';
      this.per = found.quantity;
    } else {
      this.close();
      this.columns.push(found.quantity);
      this.start = this.i;
    }
    return undefined;
  }

  /** A weight alone ("100 g") heads a column only where the line says nothing of nutrients and names another quantity or a heading. */
  private bareColumnHere(next: number): boolean {
    if (this.hasText) return false;
    if (this.columns.length > 0) return true;
    const rest = this.items.slice(next, next + 4);
    return (
      (this.firstHeading >= 0 && this.firstHeading < this.i) ||
      rest.some(
        (i, k) =>
          isRole(i, 'per') || isRole(i, 'serving') || findQuantity(rest, k)?.quantity.kind === 'grams',
      )
    );
  }

  private takeFigure(): string | undefined {
    const { items } = this;
    if (isRole(items[this.i + 1], 'serving count') || isRole(items[this.i - 1], 'serving count')) {
      this.i++;
      this.start = this.i;
      return undefined;
    }
    if (!this.name) {
      const next = dailyAlone(items, this.i);
      if (next === undefined) return NO_NAME;
      this.i = next;
      return undefined;
    }
    const read = readFigure(items, this.i, this.ahead(this.name));
    if (typeof read === 'string') return read;
    this.bound = undefined;
    this.strict = this.about = this.dailyNext = this.parted = false;
    this.per = undefined;
    this.figures.push(read.figure);
    this.i = read.next;
    return undefined;
  }

  private ahead(name: Name): Ahead {
    const { hint, bound, strict, about, per, dailyNext: daily } = this;
    return {
      hint: hint ?? (name.mark === 'calories' ? 'kcal' : undefined),
      printedHint: hint !== undefined,
      bound,
      strict,
      about,
      per,
      daily,
    };
  }

  private takeUnit(item: Item & { kind: 'unit' }): string | undefined {
    this.i++;
    const next = this.items[this.i];
    if (item.unit === '%' && isRole(next, 'daily')) {
      this.i++;
      if (this.name && this.figures.length === 0) this.dailyNext = true;
      else if (!this.name) this.columns.push('daily');
      return undefined;
    }
    if (!this.name) return undefined;
    if (this.figures.length > 0 || (this.hint && this.hint !== item.unit))
      return `"${item.text}" is one unit too many; write each figure with its own unit after it`;
    this.hint = item.unit;
    return undefined;
  }

  private takeRole(item: Item & { kind: 'role' }): string | undefined {
    const has = (role: Role) => item.roles.has(role);
    const next = this.items[this.i];
    const last = this.figures.at(-1);
    if (has('break') || has('heading')) {
      this.close();
      return undefined;
    }
    if (has('daily')) {
      if (last && !this.parted) {
        if (last.unit === '%') last.daily = true;
      } else if (this.name) this.dailyNext = true;
      else this.columns.push('daily');
      return undefined;
    }
    if (has('traces') && this.name && !last) return TRACES;
    if (has('low') || has('high')) {
      const side = has('low') ? 'low' : 'high';
      const ahead = isSign(next, '.:') || next?.kind === 'noise' ? this.items[this.i + 1] : next;
      const prefix = ahead?.kind === 'number' || ahead?.kind === 'odd' || isRole(ahead, 'about');
      if (isSign(next, '.')) this.i++;
      if (prefix || !last || this.parted) {
        if (this.bound) return 'two of minimum and maximum before one figure; use one';
        this.bound = side;
        this.strict = item.text === '<';
        return undefined;
      }
      if (!last.value) return 'two of minimum and maximum beside one figure; use one';
      last[side] = last.value;
      last.value = undefined;
      return undefined;
    }
    if (has('about')) {
      if (isSign(next, '.')) this.i++;
      if (item.text === '±') return '± is not known here; write the range, such as "16-18 %"';
      this.about = true;
    }
    return undefined;
  }

  private takeSign(item: Item): string | undefined {
    if (
      isSign(item, '-–—−+') &&
      this.items[this.i]?.kind === 'number' &&
      (this.items[this.i] as { glued?: boolean }).glued
    )
      return 'a plus or minus before a figure; an amount is 0 or more';
    if (isSign(item, ':=-–—&')) return undefined;
    if (isSign(item, '/')) {
      if (this.figures.length > 0 && this.items[this.i]?.kind === 'number') return undefined;
      if (this.name && this.figures.length === 0) return undefined;
    }
    if (isSign(item, '|') && this.name) return undefined;
    if (this.name && this.figures.length === 0 && isSign(item, ',')) this.parted = true;
    else this.close();
    return undefined;
  }

  /** Ends the part; a figure without a name has been missed before this. */
  private close(): void {
    if (this.columns.length > 0 && !this.name) {
      const { columns } = this;
      this.columns = [];
      const before = this.parts.at(-1);
      // Columns of one line stand together, whatever parts them.
      if (before?.kind === 'quantity') for (const column of columns) before.columns.push(column);
      else this.parts.push({ kind: 'quantity', columns });
    }
    if (this.name) {
      if (this.figures.length > 0)
        this.parts.push({ kind: 'amount', name: this.name, heard: this.heard, figures: this.figures });
      else this.bare.push(this.heard);
      if (this.per)
        this.parts.push({ kind: 'missed', text: this.per.text, why: `"${this.heard}" has no figure` });
    }
    this.reset();
  }

  /** Gives up the part: from where it began to the next separator. */
  private miss(why: string): void {
    const { items } = this;
    const columns = this.columns;
    this.columns = [];
    if (columns.length > 0) this.parts.push({ kind: 'quantity', columns });
    while (this.i < items.length && !this.ends(this.i)) this.i++;
    const inner = items.slice(this.start, this.i);
    const [first] = inner;
    const last = inner.at(-1);
    if (first && last && (inner.some((i) => i.kind === 'number' || i.kind === 'odd') || why === TRACES))
      this.parts.push({ kind: 'missed', text: this.text.slice(first.at, last.end), why });
    this.reset();
  }

  private ends(i: number): boolean {
    const item = this.items[i];
    return isSign(item, ',;|•·.') || isRole(item, 'break');
  }

  private reset(): void {
    this.name = this.bound = this.hint = this.per = undefined;
    this.heard = '';
    this.figures = [];
    this.parted = this.strict = this.about = this.dailyNext = false;
    this.start = this.i;
  }
}
