/**
 * Cuts a printed ingredient list into its ingredients: at commas and semicolons, with what stands in brackets
 * nested under the ingredient before it, and percentages read. Every piece keeps its place in the paste.
 */
import { fold } from '../cautions/words.ts';

export interface Item {
  /** The name as printed, without percentage and bracket; the same as the paste from `start` to `end`. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** Percent by weight as printed, where it is printed and not above 100. */
  readonly percent?: number;
  /** What stands in brackets behind it, in order. */
  readonly parts?: readonly Item[];
  /** 1 for the first of its list: labels print the heaviest first. */
  readonly place: number;
}

/** An item with what only the reading of flags needs. */
export interface Piece {
  readonly item: Item;
  /** Places of its own words, without those in brackets. */
  readonly own: readonly (readonly [start: number, end: number])[];
  /** True where a colon follows: what comes next are its members. */
  readonly heading: boolean;
  readonly parts: readonly Piece[];
}

export interface Split {
  readonly pieces: readonly Piece[];
  /** What was printed and could not be read: brackets without a partner, numbers without a name. */
  readonly unread: readonly string[];
}

interface Draft {
  own: [number, number][];
  parts: Draft[];
  heading: boolean;
}

/** Deeper brackets than this are read as if they were commas: no list is printed so, but a paste may be anything. */
const DEEPEST = 8;
/** Words before a colon that say that the list begins. */
const LISTS = new Set(
  'ingredients composition zusammensetzung zutaten ingredienten samenstelling composicion ingredientes'.split(
    ' ',
  ),
);
/** Those, and others that are no ingredient. */
const HEADINGS = new Set([
  ...LISTS,
  ...'ingredient contains additives enthalt inhaltsstoffe zusatzstoffe ingredientien bevat'.split(' '),
  ...'toevoegingsmiddelen contient additifs contiene aditivos'.split(' '),
]);

/** Cuts a paste into pieces. Never throws; takes time in proportion to the length of the paste. */
export function splitList(text: string): Split {
  const unread: string[] = [];
  const drafts = draftsOf(text, unread);
  return { pieces: finish(text, drafts, unread), unread };
}

function draftsOf(text: string, unread: string[]): Draft[] {
  const outermost: Draft[] = [];
  const lists = [outermost];
  const open: (Draft | undefined)[] = [undefined];
  let tooDeep = 0;
  /** The run of words that goes on while only blanks and words follow. */
  let run: [number, number] | undefined;
  const current = (): Draft => {
    const had = open.at(-1);
    if (had) return had;
    const made: Draft = { own: [], parts: [], heading: false };
    (lists.at(-1) ?? outermost).push(made);
    open[open.length - 1] = made;
    return made;
  };
  const close = () => {
    open[open.length - 1] = undefined;
  };
  const shut = () => {
    close();
    const members = lists.pop();
    open.pop();
    for (const member of members ?? []) current().parts.push(member);
  };
  for (let i = 0; i < text.length; i++) {
    const char = text.charAt(i);
    if (isBlank(char)) continue;
    if ('([{'.includes(char)) {
      run = undefined;
      if (lists.length > DEEPEST) {
        tooDeep++;
        close();
        continue;
      }
      current();
      lists.push([]);
      open.push(undefined);
    } else if (')]}'.includes(char)) {
      run = undefined;
      if (tooDeep > 0) {
        tooDeep--;
        close();
      } else if (lists.length > 1) shut();
      else unread.push(char);
    } else if (isSeparator(text, i, char)) {
      run = undefined;
      close();
    } else if (char === ':' && !(isDigit(text[i - 1]) && isDigit(text[i + 1]))) {
      if (open.at(-1)) current().heading = true;
      run = undefined;
      close();
    } else if (run) run[1] = i + 1;
    else {
      run = [i, i + 1];
      current().own.push(run);
    }
  }
  if (lists.length > 1) unread.push('(');
  while (lists.length > 1) shut();
  return outermost;
}

function isBlank(char: string): boolean {
  return char === ' ' || (char !== '\n' && /\s/.test(char));
}

function isSeparator(text: string, i: number, char: string): boolean {
  if (';•·|\n'.includes(char)) return true;
  if (char === ',') return !isDecimalComma(text, i);
  // A full stop after a whole word ends an ingredient; one after "ca" or "St" does not.
  return (
    char === '.' &&
    /[\p{L}%)]{1}$/u.test(text.slice(i - 1, i)) &&
    /^(\s+\p{Lu}|\s*$)/u.test(text.slice(i + 1, i + 4)) &&
    !/(^|[\s(])\p{L}{1,3}$/u.test(text.slice(Math.max(0, i - 4), i))
  );
}

/** "12,5 %" and "1,000 IU", but not "B1,B2" and not "E 320,321". */
function isDecimalComma(text: string, i: number): boolean {
  if (!isDigit(text[i - 1]) || !isDigit(text[i + 1])) return false;
  return !/E[\s-]?\d{3}$/i.test(text.slice(Math.max(0, i - 5), i));
}

function isDigit(char: string | undefined): boolean {
  return char !== undefined && char >= '0' && char <= '9';
}

const PERCENT =
  /(?:(?:min|mind|max|ca|approx|env)\.?\s*|[<>≥≤~]\s*)?(?<![\d.,])(\d{1,3}(?:[.,]\d{1,3})?)\s*%/iu;
const EDGE = /[\s.:*–-]/;

const NONE: Piece[] = [];

interface Percent {
  readonly value: number;
  readonly text: string;
}

function finish(text: string, drafts: readonly Draft[], unread: string[], owner?: Percent[]): Piece[] {
  let pieces: Piece[] = [];
  for (const draft of drafts) {
    const percents: Percent[] = [];
    const parts = draft.parts.length > 0 ? finish(text, draft.parts, unread, percents) : NONE;
    const own = draft.own
      .map(([start, end]) => trimPercent(text, start, end, percents))
      .filter(([start, end]) => start < end);
    const words = own.map(([start, end]) => text.slice(start, end)).join(' ');
    const [head] = own;
    const tail = own.at(-1);
    if (!head || !tail || !/\p{L}/u.test(words)) {
      // Brackets with nothing before them: their content stands for itself.
      for (const part of parts) pieces.push({ ...part, item: { ...part.item, place: pieces.length + 1 } });
      if (owner && parts.length === 0) owner.push(...percents);
      else unread.push(...percents.map((percent) => percent.text));
      if (/\d/.test(words)) unread.push(words);
      continue;
    }
    const [start] = head;
    const [, end] = tail;
    const name = text.slice(start, end);
    if (draft.heading && isHeading(name)) {
      // What stands before the first heading is the name of the product.
      if (!owner && pieces.length <= 3 && LISTS.has(lastWord(name))) {
        unread.push(...pieces.map((piece) => piece.item.text));
        pieces = [];
      }
      continue;
    }
    // Two percentages on one name: which is meant cannot be told.
    const [percent, ...others] = percents;
    if (others.length > 0) unread.push(...percents.map((each) => each.text));
    const item: Item = {
      text: name,
      start,
      end,
      ...(percent && others.length === 0 && { percent: percent.value }),
      ...(parts.length > 0 && { parts: parts.map((part) => part.item) }),
      place: pieces.length + 1,
    };
    pieces.push({ item, own, heading: draft.heading, parts });
  }
  return pieces;
}

function lastWord(name: string): string {
  return (
    fold(name.slice(-40))
      .split(/[^\p{L}]+/u)
      .filter((word) => word !== '')
      .at(-1) ?? ''
  );
}

function isHeading(name: string): boolean {
  if (HEADINGS.has(lastWord(name))) return true;
  const words = fold(name.slice(0, 60)).split(/[^\p{L}]+/u);
  const [first = ''] = words;
  return name.length < 60 && words.length <= 4 && HEADINGS.has(first);
}

/** Reads a percentage in a run and takes it off where it stands at either end. */
function trimPercent(text: string, start: number, end: number, found: Percent[]): [number, number] {
  const run = text.slice(start, end);
  const match = run.includes('%') ? PERCENT.exec(run) : null;
  let [first, last] = [0, run.length];
  if (match) {
    const [printed, figure = ''] = match;
    const value = Number.parseFloat(figure.replace(',', '.'));
    if (value <= 100) {
      found.push({ value, text: printed.trim() });
      const after = match.index + printed.length;
      if (match.index === 0) first = after;
      else if (after === run.length) last = match.index;
    }
  }
  while (first < last && EDGE.test(run.charAt(first))) first++;
  while (first < last && EDGE.test(run.charAt(last - 1))) last--;
  return [start + first, start + last];
}
