/** Reads a pasted or typed label: tokens, words, parts, quantities, then questions. Pure, and never throws. */
import { nutrient } from '../../nutrition/nutrients.ts';
import { Questions } from './ask.ts';
import { type AttachableLine, attach, type Missed } from './attach.ts';
import { openBrackets } from './brackets.ts';
import { askCarbohydrate, askDifferences, askMoisture, type CarbohydrateStyle } from './compare.ts';
import { match } from './match.ts';
import { readNumber } from './numbers.ts';
import { readParts } from './parts.ts';
import {
  type Answers,
  LANGUAGES,
  type LabelReading,
  type Language,
  type ReadAmount,
  type ReadLine,
} from './reading.ts';
import { settle } from './settle.ts';

interface Scanned extends AttachableLine {
  readonly text: string;
  readonly figures: boolean;
  /** A name that holds a digit ("vitamin B12"). */
  readonly numbered: boolean;
  /** Words the table does not know. */
  readonly strange: boolean;
}

const BLANK: Scanned = {
  text: '',
  figures: false,
  numbered: false,
  strange: false,
  parts: [],
  bare: [],
  daily: false,
};
/** How many quantities and amounts of a line its note tells. */
const MOST_TOLD = 40;

/**
 * Reads a label in English, German, French, Dutch or Spanish, for any text at all.
 * @param text the label, line by line
 * @param answers answers to questions of an earlier reading of the same text, by question id
 */
export function readLabel(text: string, answers: Answers = {}): LabelReading {
  const tally = new Map<Language, number>();
  const marks = new Set<',' | '.'>();
  const scanned = text.split(/\r\n|[\r\n\u2028\u2029\u0085\v\f]/).map((line): Scanned => {
    if (line === '') return BLANK;
    const { items, languages } = match(line);
    for (const set of languages) for (const l of set) tally.set(l, (tally.get(l) ?? 0) + 1 / set.size);
    let [figures, numbered, strange, daily] = [false, false, false, false];
    for (const [i, item] of items.entries()) {
      if (item.kind === 'number' || item.kind === 'odd') figures = true;
      else if (item.kind === 'word') strange = true;
      else if (item.kind === 'name') numbered ||= /\p{N}/u.test(item.text);
      else if (item.kind === 'role') daily ||= item.roles.has('daily');
      if (item.kind !== 'number' || items[i + 1]?.kind !== 'unit' || !/[.,]/.test(item.text)) continue;
      const read = readNumber(item.text);
      if (typeof read !== 'string' && read.decimalMark) marks.add(read.decimalMark);
    }
    return { text: line, figures, numbered, strange, daily, ...readParts(openBrackets(items), line) };
  });
  const language = leading(tally);
  const attached = attach(scanned);
  const questions = new Questions(answers);
  const servings = new Set(attached.servings);
  const around = {
    serving: servings.size === 1 ? [...servings][0] : undefined,
    decimalMark: marks.size === 1 ? [...marks][0] : undefined,
  };
  const plainCarbohydrate = new Set<ReadAmount>();
  const missed = [...attached.missed];
  let amounts: readonly ReadAmount[] = attached.drafts.flatMap((draft) => {
    const amount = settle(draft, around, questions);
    if (typeof amount === 'string') {
      missed.push({ line: draft.line, text: draft.heard, why: amount });
      return [];
    }
    if (draft.name.mark === 'carbohydrate') plainCarbohydrate.add(amount);
    return [amount];
  });
  amounts = askCarbohydrate(amounts, plainCarbohydrate, carbohydrateStyle(text, language), questions);
  const fed = askMoisture(amounts, questions);
  amounts = askDifferences(fed.amounts, questions);
  const amountsOf = byLine(amounts);
  const missedOf = byLine(missed);
  return {
    lines: scanned.map((line, i) =>
      account(line, amountsOf.get(i) ?? [], missedOf.get(i) ?? [], attached.daily.has(i)),
    ),
    amounts,
    quantities: attached.quantities,
    questions: questions.list(),
    language,
    ...(fed.moisture !== undefined && { moisture: fed.moisture }),
  };
}

function byLine<T extends { readonly line: number }>(list: readonly T[]): ReadonlyMap<number, readonly T[]> {
  const found = new Map<number, T[]>();
  for (const one of list) {
    const had = found.get(one.line);
    if (had) had.push(one);
    else found.set(one.line, [one]);
  }
  return found;
}

function account(
  line: Scanned,
  amounts: readonly ReadAmount[],
  missed: readonly Missed[],
  daily: boolean,
): ReadLine {
  const { text, parts } = line;
  const notes = amounts.slice(0, MOST_TOLD).map(inWords);
  const quantities = parts.flatMap((p) =>
    p.kind === 'quantity'
      ? p.columns.map((c) => (c === 'daily' ? 'share of a daily intake' : c.text))
      : p.kind === 'serving size'
        ? [p.quantity.text]
        : [],
  );
  if (quantities.length > 0) notes.push(`amounts are ${quantities.slice(0, MOST_TOLD).join(', ')}`);
  if (daily) notes.push('shares of a daily intake left out');
  for (const m of missed.slice(0, MOST_TOLD)) notes.push(`not read: "${m.text.slice(0, 80)}": ${m.why}`);
  const kind =
    amounts.length > 0
      ? 'amount'
      : quantities.length > 0
        ? 'quantity'
        : missed.length > 0
          ? 'unread'
          : 'ignored';
  if (kind === 'ignored' && notes.length === 0) {
    if (text.trim() === '') notes.push('blank');
    else if (line.numbered || (line.bare.length > 0 && !line.strange && !line.figures))
      return {
        text,
        kind: 'unread',
        note: 'a nutrient without a figure; put both on one line',
        missed: [],
      };
    else
      notes.push(
        line.figures ? 'no amount: a count of servings or a share of a daily intake' : 'no figure in it',
      );
  }
  return { text, kind, note: notes.join('; '), missed: missed.map((m) => m.text) };
}

function inWords(a: ReadAmount): string {
  const name = a.as ?? nutrient(a.tag).name;
  const figure =
    a.value !== undefined
      ? `${a.value}`
      : a.low !== undefined && a.high !== undefined
        ? `${a.low} to ${a.high}`
        : a.low !== undefined
          ? `at least ${a.low}`
          : a.high !== undefined
            ? `at most ${a.high}`
            : 'a figure';
  const basis = a.per.basis === 'dry matter' ? ' in dry matter' : '';
  const per = a.unit === '%' ? '' : a.per.grams === undefined ? '' : ` per ${a.per.grams} g`;
  const rest = a.open.length > 0 ? ' (a question is open)' : a.note ? ` (${a.note})` : '';
  return `${name} ${figure} ${a.unit}${per}${basis}${rest}`;
}

function leading(tally: ReadonlyMap<Language, number>): Language | undefined {
  const sorted = LANGUAGES.map((l) => [l, tally.get(l) ?? 0] as const).sort((a, b) => b[1] - a[1]);
  const [first, second] = sorted;
  return first && second && first[1] > second[1] + 1e-9 ? first[0] : undefined;
}

/** Marks of a US label and of a European one; both or neither settle nothing. */
function carbohydrateStyle(text: string, language: Language | undefined): CarbohydrateStyle {
  const american = /daily value|valor diario|%\s?dv\b|serving size|total fat|\bcalories\b/i.test(text);
  const european =
    /\bkJ\b|of which|\bsalt\b|typical values/i.test(text) || (language !== undefined && language !== 'en');
  if (american === european) return undefined;
  return american ? 'with fibre' : 'without fibre';
}
