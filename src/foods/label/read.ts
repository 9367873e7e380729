/** Reads a pasted or typed label: tokens, words, parts, quantities, then questions. Pure, and never throws. */

import { nutrient } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { Questions } from './ask.ts';
import { attach, type Missed } from './attach.ts';
import { openBrackets } from './brackets.ts';
import { askCarbohydrate, askDifferences, askMoisture } from './compare.ts';
import type { AttachableLine } from './context.ts';
import { carbohydrateStyle, fibreOf, isPerServing } from './label-kind.ts';
import { layOut } from './layout.ts';
import { type Item, match } from './match.ts';
import { readNumber } from './numbers.ts';
import type { Atom } from './part.ts';
import { readParts } from './parts.ts';
import { isRole } from './per.ts';
import {
  type Answers,
  LANGUAGES,
  type LabelReading,
  type Language,
  type Left,
  type ReadAmount,
  type ReadLine,
} from './reading.ts';
import { settle } from './settle.ts';

interface Scanned extends AttachableLine {
  readonly figures: boolean;
  /** A name that holds a digit ("vitamin B12"). */
  readonly numbered: boolean;
  /** Its name or figure is read with another line. */
  readonly taken: boolean;
}

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
  let threeDecimals = false;
  let dailyLabel = false;
  const matched = text.split(/\r\n|[\r\n\u2028\u2029\u0085\v\f]/).map((line) => {
    const { items, languages } = match(line);
    for (const set of languages) for (const l of set) tally.set(l, (tally.get(l) ?? 0) + 1 / set.size);
    for (const [i, item] of items.entries()) {
      dailyLabel ||= isRole(item, 'daily');
      if (item.kind !== 'number' || items[i + 1]?.kind !== 'unit' || !/[.,]/.test(item.text)) continue;
      const read = readNumber(item.text);
      if (typeof read === 'string' || !read.decimalMark) continue;
      marks.add(read.decimalMark);
      threeDecimals ||= /[.,]\d{3}$/.test(item.text);
    }
    return { items: openBrackets(items), text: line };
  });
  const scanned = layOut(matched).map(({ items, text: laid, taken }, k): Scanned => {
    const own = matched[k];
    const has = (kind: Item['kind']) => own?.items.some((i) => i.kind === kind) ?? false;
    return {
      figures: has('number') || has('odd'),
      numbered: own?.items.some((i) => i.kind === 'name' && /\p{N}/u.test(i.text)) ?? false,
      strange: has('word'),
      taken,
      ...readParts(items, laid),
      text: own?.text ?? '',
    };
  });
  const language = leading(tally);
  const attached = attach(scanned, dailyLabel, isPerServing(text));
  const questions = new Questions(answers);
  const servings = new Set(attached.servings);
  const around = {
    serving: servings.size === 1 ? [...servings][0] : undefined,
    decimalMark: marks.size === 1 ? [...marks][0] : undefined,
    threeDecimals,
    fibre: fibreOf(scanned),
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
      account(line, amountsOf.get(i) ?? [], missedOf.get(i) ?? [], attached.left.get(i)),
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
  left: ReadonlySet<Left> | undefined,
): ReadLine {
  const { text, parts } = line;
  const t = words().label.reading.line;
  const notes = amounts.slice(0, MOST_TOLD).map(inWords);
  const quantities = parts.flatMap((p) =>
    p.kind === 'heading' ? p.atoms.map(atomInWords) : p.kind === 'serving size' ? [p.quantity.text] : [],
  );
  if (quantities.length > 0) notes.push(t.amountsAre(quantities.slice(0, MOST_TOLD).join(', ')));
  for (const what of left ?? []) notes.push(t.left[what]);
  for (const m of missed.slice(0, MOST_TOLD)) notes.push(t.notRead(m.text.slice(0, 80), m.why));
  const kind =
    amounts.length > 0
      ? 'amount'
      : quantities.length > 0
        ? 'quantity'
        : missed.length > 0
          ? 'unread'
          : 'ignored';
  if (kind === 'ignored' && notes.length === 0) {
    if (text.trim() === '') notes.push(t.blank);
    else if (line.taken) notes.push(t.together);
    else if (line.numbered || (line.bare.length > 0 && !line.strange && !line.figures))
      return {
        text,
        kind: 'unread',
        note: t.noFigure,
        missed: [],
      };
    else notes.push(line.figures ? t.counts : t.nothing);
  }
  const [only, ...others] = missed;
  const whole = only && others.length === 0 && notes.length === 1 && only.text === text.trim();
  return {
    text,
    kind,
    note: notes.join('; '),
    ...(whole && { why: only.why }),
    missed: missed.map((m) => m.text),
  };
}

function inWords(a: ReadAmount): string {
  const { figures, label } = words();
  const t = label.reading.line;
  const name =
    a.as === undefined ? nutrient(a.tag).name : { salt: t.salt, 'available carbohydrate': t.available }[a.as];
  const figure =
    a.value !== undefined
      ? figures.number(a.value, 6)
      : a.low !== undefined && a.high !== undefined
        ? t.range(a.low, a.high)
        : a.low !== undefined
          ? t.least(a.low)
          : a.high !== undefined
            ? t.most(a.high)
            : t.aFigure;
  const amount = `${name} ${figure} ${a.unit}`;
  const per = a.unit === '%' || a.per.grams === undefined ? amount : t.per(amount, a.per.grams);
  const based = a.per.basis === 'dry matter' ? t.inDry(per) : per;
  return a.open.length > 0 ? t.open(based) : a.note ? t.noted(based, a.note) : based;
}

function leading(tally: ReadonlyMap<Language, number>): Language | undefined {
  const sorted = LANGUAGES.map((l) => [l, tally.get(l) ?? 0] as const).sort((a, b) => b[1] - a[1]);
  const [first, second] = sorted;
  return first && second && first[1] > second[1] + 1e-9 ? first[0] : undefined;
}

function atomInWords(atom: Atom): string {
  if (atom.kind !== 'share') return atom.text;
  const t = words().label.reading.line;
  return atom.of === 'daily' ? t.dailyShare : atom.of === 'energy' ? t.energyShare : atom.text;
}
