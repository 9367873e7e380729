/**
 * The items of a line as parts: amounts with their names, headings, sections, and what was missed. Within one part
 * everything must be understood, or the whole part is missed: an unknown word beside a figure may change what the
 * figure means. What stands before any name is a heading, and keeps every word of it.
 */

import { figureAhead, shareAhead } from './ahead.ts';
import { type Ahead, dailyAlone, type Figure, readFigure } from './figure.ts';
import type { Item, Name } from './match.ts';
import type { Atom, Basis, Bound, LineParts, Part, PrintedQuantity, Section } from './part.ts';
import { basisAt, type FoundQuantity, findQuantity, isEnergyUnit, isRole, isSign } from './per.ts';
import type { PrintedUnit } from './reading.ts';
import { mayChangeMeaning } from './suspect.ts';
import type { Role } from './words.ts';

const NO_NAME = 'a figure without a nutrient before it; put the name and its figure on one line';
const TRACES = 'traces are no figure; leave it out, or write the most it can be, such as "<0.1 g"';
const SHARED = 'share one figure; give each its own';
const ADVICE = 'advice for use or a weight of the pack, no analysis';
const CUT = 'a name follows the figure and has none of its own; put a comma between, or each on its own line';
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
const SECTIONS: readonly (readonly [Role, Section])[] = [
  ['ingredients', 'ingredients'],
  ['composition', 'composition'],
  ['additives', 'additives'],
  ['constituents', 'constituents'],
  ['heading', 'analysis'],
  ['subheading', 'vitamins'],
];

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
  private bound: Bound | undefined;
  private strict = false;
  private about = false;
  private between = false;
  private hint: PrintedUnit | undefined;
  private per: PrintedQuantity | undefined;
  private basis: Basis | undefined;
  private shareNext: 'daily' | undefined;
  /** The heading being read: what is known in it, and the words that are not. */
  private atoms: Atom[] = [];
  private words: string[] = [];
  private leads = false;
  private forWords = false;
  private headingEnd = -1;
  private tainted = false;
  /** A comma ends the heading. */
  private listed = false;
  /** A name came right after an amount, with nothing between. */
  private runsOn = false;

  constructor(items: readonly Item[], text: string) {
    this.items = items;
    this.text = text;
    this.hasText = items.some((i) => i.kind === 'name' || i.kind === 'word' || i.kind === 'odd');
    this.firstHeading = items.findIndex((i) => SECTIONS.some(([role]) => isRole(i, role)));
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
    const found = this.mayBeQuantity(item) ? findQuantity(items, this.i) : undefined;
    if (found && !(found.bare && (this.name || !this.bareColumnHere(found.next))))
      return this.takeQuantity(found);
    if (item.kind === 'number') return this.takeFigure();
    if (item.kind === 'unit') return this.takeUnit(item);
    if (isRole(item, 'product') && item.kind === 'role' && item.roles.size === 1) return this.takeWord(item);
    this.i++;
    if (item.kind === 'noise') return undefined;
    if (item.kind === 'role') return this.takeRole(item);
    return this.takeSign(item);
  }

  private mayBeQuantity(item: Item): boolean {
    return item.kind === 'role' || item.kind === 'number' || isSign(item, '/');
  }

  private takeWord(item: Item): string | undefined {
    // "5 g per 100 g" and then a word that is not known: it may hold for the whole line.
    this.tainted = this.figures.at(-1)?.per !== undefined;
    if (this.name)
      return `"${item.text.slice(0, 40)}" is not known here; give the nutrient and its figure alone`;
    this.words.push(item.text);
    this.i++;
    return undefined;
  }

  private unknownWords(): string {
    return `"${this.words.join(' ').slice(0, 40)}" is not known here; give the nutrient and its figure alone`;
  }

  private takeName(item: Item & { kind: 'name' }): string | undefined {
    if (!this.name && this.words.length > 0) return this.unknownWords();
    const last = this.figures.at(-1);
    if (item.name.tags[0] === 'ENERC_KCAL' && last && !this.parted) {
      const next = this.items[this.i + 1];
      // "3500 kcal ME/kg" and "30 % energy".
      if (isEnergyUnit(this.items[this.i - 1]) && (isSign(next, '/') || isRole(next, 'per'))) {
        this.i++;
        return undefined;
      }
      if (last.unit === '%' && !figureAhead(this.items, this.i + 1)) {
        last.share = 'energy';
        this.i += isPercent(next) ? 2 : 1;
        return undefined;
      }
    }
    if (!this.name && this.atoms.length > 0) this.close();
    const pending = this.figures.length === 0 && !this.parted ? this.name : undefined;
    if (this.figures.length > 0 || this.parted) {
      if (this.bound) return 'a minimum or maximum stands before a name, not before its figure';
      const amount = this.figures.length > 0;
      this.close();
      this.runsOn = amount;
      this.start = this.i;
    }
    if (pending) {
      const shared = pending.tags.filter((tag) => item.name.tags.includes(tag));
      if (shared.length === 0) return `"${this.heard.slice(0, 60)}" and "${item.text}" ${SHARED}`;
      if (shared.length < pending.tags.length) this.name = item.name;
      this.heard += ` ${item.text}`;
    } else {
      this.name = item.name;
      this.heard = item.text;
    }
    this.i++;
    return undefined;
  }

  private takeQuantity(found: FoundQuantity): string | undefined {
    const last = this.figures.findLast((figure) => !figure.share);
    const { quantity } = found;
    const share = this.atoms.at(-1);
    const glued = !this.items[this.i]?.gap && !isSign(this.items[this.i - 1], '|');
    this.i = found.next;
    if (found.size) {
      this.parts.push({ kind: 'serving size', quantity });
    } else if (this.name && last && !this.parted) {
      if (found.basisOnly) {
        if (last.basis && last.basis !== quantity.basis) return 'one figure has two bases; give it one';
        last.basis = quantity.basis;
      } else if (last.per) return 'one figure has two quantities; give it one';
      else last.per = quantity;
    } else if (this.name && !this.parted) {
      if (found.basisOnly) {
        if (this.basis && this.basis !== quantity.basis) return 'one figure has two bases; give it one';
        this.basis = quantity.basis;
      } else if (this.per) return 'one figure has two quantities; give it one';
      else this.per = quantity;
    } else {
      if (this.name) this.close();
      // "% RI per serving": what the shares of a daily intake are per heads no amounts of its own.
      const repeats = share?.kind === 'share' && glued && this.atoms.some((a) => isSame(a, quantity));
      if (!repeats) this.atoms.push(quantity);
    }
    return undefined;
  }

  /** A weight alone ("100 g") heads a column only where the line says nothing of nutrients and names another quantity or a heading. */
  private bareColumnHere(next: number): boolean {
    if (this.hasText) return false;
    if (this.atoms.length > 0) return true;
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
      if (this.words.length > 0) return this.unknownWords();
      const next = dailyAlone(items, this.i);
      if (next === undefined) return NO_NAME;
      this.i = next;
      return undefined;
    }
    const read = readFigure(items, this.i, this.ahead(this.name));
    if (typeof read === 'string') return read;
    if (this.basis) read.figure.basis = this.basis;
    this.bound = this.basis = this.per = this.shareNext = undefined;
    this.strict = this.about = this.between = this.parted = false;
    this.figures.push(read.figure);
    this.i = read.next;
    return undefined;
  }

  private ahead(name: Name): Ahead {
    const { hint, bound, strict, about, between, per, shareNext: share } = this;
    return {
      hint: hint ?? (name.mark === 'calories' ? 'kcal' : undefined),
      printedHint: hint !== undefined,
      bound,
      strict,
      about,
      between,
      per,
      share,
    };
  }

  private takeUnit(item: Item & { kind: 'unit' }): string | undefined {
    const { items } = this;
    const share = item.unit === '%' ? shareAhead(items, this.i) : undefined;
    if (share && share.of === 'daily' && this.name) {
      this.i = share.next;
      if (this.figures.length === 0) this.shareNext = 'daily';
      return undefined;
    }
    if (!this.name) {
      const basis = item.unit === '%' ? basisAt(items, this.i) : undefined;
      if (basis) {
        this.atoms.push({ kind: 'percent', basis: basis.basis, text: this.textOf(this.i, basis.next) });
        this.i = basis.next;
      } else if (share?.of === 'unknown' && this.atoms.length === 0) {
        // "% of XY" over a label may be a basis.
        this.leads = true;
        this.i = share.next - 1;
      } else if (share) {
        this.atoms.push({ kind: 'share', of: share.of, text: this.textOf(this.i, share.next) });
        this.i = share.next;
      } else this.i++;
      return undefined;
    }
    const last = this.figures.at(-1);
    if (last?.unit === '%' && (isEnergyUnit(item) || share?.of === 'energy')) {
      last.share = 'energy';
      this.i = share?.next ?? this.i + 1;
      return undefined;
    }
    this.i++;
    if (last || (this.hint && this.hint !== item.unit))
      return `"${item.text}" is one unit too many; write each figure with its own unit after it`;
    this.hint = item.unit;
    return undefined;
  }

  private takeRole(item: Item & { kind: 'role' }): string | undefined {
    if (!this.name && this.words.length === 0 && this.atoms.length === 0 && item.roles.has('per')) {
      if (LEADS.has(item.text.toLowerCase())) this.leads = true;
      else this.forWords = this.i === 1;
    } else if (!this.name && LEADS.has(item.text.toLowerCase()))
      this.leads ||= this.words.length === 0 && this.atoms.length === 0;
    const has = (role: Role) => item.roles.has(role);
    const next = this.items[this.i];
    const last = this.figures.at(-1);
    const section = SECTIONS.find(([role]) => has(role));
    if (section) {
      this.close();
      this.parts.push({ kind: 'section', section: section[1] });
      if (has('mean')) this.atoms.push({ kind: 'bound', side: 'mean', text: item.text });
      return undefined;
    }
    if (has('break')) {
      this.close();
      return undefined;
    }
    if (has('advice') && !this.name) {
      this.close();
      this.start = this.i - 1;
      return ADVICE;
    }
    if (has('daily') || has('energy share')) {
      const of = has('daily') ? 'daily' : 'energy';
      if (last && !this.parted) {
        if (last.unit === '%') last.share = of;
        else if (of === 'energy')
          return `"${item.text}" is not known here; give the nutrient and its figure alone`;
      } else if (this.name) this.shareNext = 'daily';
      else this.atoms.push({ kind: 'share', of, text: item.text });
      return undefined;
    }
    if (has('traces') && this.name && !last) return TRACES;
    if (has('low') || has('high')) return this.takeBound(item, has('low') ? 'low' : 'high');
    if (has('between') && this.name) {
      this.between = true;
      return undefined;
    }
    if (has('mean') && !this.name && next?.kind !== 'number')
      this.atoms.push({ kind: 'bound', side: 'mean', text: item.text });
    if (has('about')) {
      if (isSign(next, '.')) this.i++;
      if (item.text === '±') return '± is not known here; write the range, such as "16-18 %"';
      this.about = true;
    }
    return undefined;
  }

  private takeBound(item: Item, side: Bound): string | undefined {
    const last = this.figures.at(-1);
    if (isSign(this.items[this.i], '.')) this.i++;
    const next = this.items[this.i];
    const ahead = isSign(next, ':') || next?.kind === 'noise' ? this.items[this.i + 1] : next;
    const prefix = ahead?.kind === 'number' || ahead?.kind === 'odd' || isRole(ahead, 'about');
    if (!this.name && !prefix) {
      if (next?.kind === 'name' && this.words.length === 0) {
        // "Min. protein 16 %": it may hold for the names after it too, and a bound is true of a value.
        if (this.atoms.length > 0) this.close();
        this.parts.push({
          kind: 'heading',
          atoms: [{ kind: 'bound', side, text: item.text }],
          words: [],
          text: item.text,
          lineOnly: true,
        });
      } else this.atoms.push({ kind: 'bound', side, text: item.text });
      return undefined;
    }
    const prefixed = this.parts.some((p) => p.kind === 'heading' && p.lineOnly);
    if (this.name && last && (isSign(next, ':') || (prefixed && next?.kind === 'name'))) {
      // "Min: protein 15 % - Max: fibre 18 %": the word belongs to what comes, not to what was.
      this.close();
      this.start = this.i;
      return this.takeBound(item, side);
    }
    if (prefix || !last || this.parted) {
      if (this.bound) return 'two of minimum and maximum before one figure; use one';
      this.bound = side;
      this.strict = item.text === '<';
      return undefined;
    }
    if (last.low && last.high) return undefined;
    if (!last.value) return 'two of minimum and maximum beside one figure; use one';
    last[side] = last.value;
    last.value = undefined;
    return undefined;
  }

  private takeSign(item: Item): string | undefined {
    if (
      isSign(item, '-–—−+') &&
      this.items[this.i]?.kind === 'number' &&
      (this.items[this.i] as { glued?: boolean }).glued
    )
      return 'a plus or minus before a figure; an amount is 0 or more';
    // "30 g + 125 ml" is no weight of the food alone.
    if (isSign(item, '+') && !this.name && this.atoms.length > 0) this.words.push('+');
    if (isSign(item, ',') && this.goesOnAsBound()) return undefined;
    if (isSign(item, ':') && !this.name) this.close();
    if (isSign(item, ':=-–—&')) return undefined;
    if (isSign(item, '/')) {
      if (this.figures.length > 0 && this.items[this.i]?.kind === 'number') return undefined;
      if (this.name && this.figures.length === 0) return undefined;
    }
    if (isSign(item, '|') && (this.name || this.atoms.length > 0)) return undefined;
    // "Moisture, max. 12 %", but not "protein, 12 % fat": there the figure is that of the next name.
    if (this.name && this.figures.length === 0 && isSign(item, ',') && !this.nameFollows())
      this.parted = true;
    else {
      this.listed = isSign(item, ',;');
      this.close();
      this.runsOn = this.listed = false;
      if (isSign(item, ';')) this.endLineBound();
    }
    return undefined;
  }

  /** "Protein (min. 14 %, max. 16 %)": the other bound of the same name. */
  private goesOnAsBound(): boolean {
    const last = this.figures.at(-1);
    const next = this.items[this.i];
    const side = last?.low && !last.high ? 'high' : last?.high && !last.low ? 'low' : undefined;
    return side !== undefined && isRole(next, side) && next?.kind === 'role' && !this.nameFollows();
  }

  /** A semicolon ends what a bound before a name holds for. */
  private endLineBound(): void {
    const ended = this.parts.findLast((p) => p.kind === 'heading' && p.lineOnly);
    if (ended?.kind === 'heading' && ended.atoms.length > 0)
      this.parts.push({ kind: 'heading', atoms: [], words: [], text: ';', lineOnly: true });
  }

  /** Whether what stands after a comma is a name or a figure with a name of its own. */
  private nameFollows(): boolean {
    const { items } = this;
    let i = this.i;
    if (items[i]?.kind === 'name' || items[i]?.kind === 'word') return true;
    while (items[i] && !isSign(items[i], ',;|•·.') && items[i]?.kind !== 'name') i++;
    return items[i]?.kind === 'name';
  }

  /** Ends the part; a figure without a name has been missed before this. */
  private close(): void {
    if (!this.name) this.closeHeading();
    else if (this.figures.length > 0)
      this.parts.push({ kind: 'amount', name: this.name, heard: this.heard, figures: this.figures });
    else {
      this.bare.push(this.heard);
      const before = this.parts.at(-1);
      if (this.runsOn && before?.kind === 'amount') {
        this.parts.pop();
        this.parts.push({
          kind: 'missed',
          text: `${before.heard} ... ${this.heard}`,
          why: CUT,
          taints: true,
        });
      }
      if (this.hint === '%' && this.name.tags[0] === 'ENERC_KCAL') {
        const text = `${this.heard} %`;
        this.parts.push({ kind: 'heading', atoms: [{ kind: 'share', of: 'energy', text }], words: [], text });
      }
      const lost = this.per?.text ?? this.basis;
      if (lost !== undefined)
        this.parts.push({ kind: 'missed', text: lost, why: `"${this.heard}" has no figure`, taints: true });
    }
    this.runsOn = false;
    this.reset();
  }

  private closeHeading(): void {
    const { atoms, words } = this;
    if (atoms.length === 0 && words.length === 0) return;
    const text = this.textOf(this.start, this.i);
    this.headingEnd = atoms.length > 0 ? this.i : -1;
    this.parts.push({
      kind: 'heading',
      atoms,
      words,
      text,
      ...(this.forWords && { forWords: true }),
      ...(this.leads && { leads: true }),
      ...((this.listed || isSign(this.items[this.start - 1], ',;')) && { listed: true }),
    });
  }

  /** Gives up the part: from where it began to the next separator. */
  private miss(why: string): void {
    const { items } = this;
    const { words } = this;
    // What heads the line stays a heading, though the figure after it cannot be read.
    if (this.atoms.length > 0) this.closeHeading();
    while (this.i < items.length && !this.ends(this.i)) this.i++;
    const inner = items.slice(this.start, this.i);
    const text = this.textOf(this.start, this.i);
    const numbered = inner.some((i) => i.kind === 'number' || i.kind === 'odd');
    const per = why !== ADVICE && isHeadingByWeight(inner);
    const taints =
      why !== ADVICE &&
      (per ||
        this.tainted ||
        why.endsWith(SHARED) ||
        inner.some(mayChangeMeaning) ||
        (words.length > 0 && isEnergyHeading(inner)));
    // A heading that was not understood: what it may say goes on to the lines after it.
    const named = items.some((i) => i.kind === 'name');
    // "per 100 g" and then a name and words with no figure: what the name is part of was not understood.
    const goesOn = !numbered && this.headingEnd === this.start && inner.length > 0;
    const heads = per || goesOn || (taints && (!named || !numbered));
    if (heads) {
      const energy: Atom[] = isEnergyHeading(inner) ? [{ kind: 'share', of: 'energy', text }] : [];
      const atoms: Atom[] = per ? [{ kind: 'each', text }] : energy;
      const leads = numbered || goesOn;
      this.parts.push({
        kind: 'heading',
        atoms,
        words: [text],
        text,
        ...(leads && { leads }),
      });
    }
    if (numbered || why === TRACES || taints || goesOn)
      this.parts.push({
        kind: 'missed',
        text,
        why,
        ...(heads && { heads }),
        ...(taints && { taints }),
        ...(isShareOfStrange(inner) && { strangeShare: true }),
      });
    this.reset();
  }

  private ends(i: number): boolean {
    const item = this.items[i];
    return isSign(item, ',;|•·.') || isRole(item, 'break') || (i > this.start && isSection(item));
  }

  private textOf(from: number, to: number): string {
    let first = Number.POSITIVE_INFINITY;
    let last = 0;
    for (const { at, end } of this.items.slice(from, to)) {
      first = Math.min(first, at);
      last = Math.max(last, end);
    }
    return this.text.slice(first, last).trim();
  }

  private reset(): void {
    this.name = this.bound = this.hint = this.per = this.basis = this.shareNext = undefined;
    this.heard = '';
    this.figures = [];
    this.atoms = [];
    this.words = [];
    this.parted = this.strict = this.about = this.between = this.leads = this.forWords = this.tainted = false;
    this.start = this.i;
  }
}

/** Whether a share's "per" repeats that of a column before it. */
function isSame(atom: Atom, { kind, grams, text }: PrintedQuantity): boolean {
  if (atom.kind === 'share' || atom.kind === 'bound' || kind === 'percent') return false;
  if (kind === 'each') return atom.text.includes(text.split(' ').at(-1) ?? text);
  return kind === 'serving' ? atom.kind === 'serving' || atom.grams !== 100 : atom.grams === grams;
}

/** "pur 100 g", "per portin (25 g)": a heading by its weight, with a slip in it. */
function isHeadingByWeight(items: readonly Item[]): boolean {
  const per = isRole(items[0], 'per');
  return items.some(
    (i, k) =>
      (i.kind === 'number' || i.kind === 'odd') &&
      ((per && k <= 2) ||
        (i.text === '100' && isGram(items[k + 1]) && items.every((n) => n.kind !== 'name'))),
  );
}

function isPercent(item: Item | undefined): boolean {
  return item?.kind === 'unit' && item.unit === '%';
}

function isGram(item: Item | undefined): boolean {
  return item?.kind === 'unit' && item.unit === 'g';
}

/** A percentage beside a word that is not known: "oats 30 %", "30 % oats". */
function isShareOfStrange(items: readonly Item[]): boolean {
  return items.some((i) => i.kind === 'word') && items.some((i) => i.kind === 'unit' && i.unit === '%');
}

function isSection(item: Item | undefined): boolean {
  return SECTIONS.some(([role]) => isRole(item, role));
}

/** "Energy from protein": energy named without an energy, so that what follows may be shares of it. */
function isEnergyHeading(items: readonly Item[]): boolean {
  return items.some((i) => i.kind === 'name' && i.name.tags[0] === 'ENERC_KCAL') && !items.some(isEnergyUnit);
}
