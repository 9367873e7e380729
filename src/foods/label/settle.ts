/**
 * Settles each attached figure: its tag, its quantity, its number. What print and answers do not settle becomes a
 * question, and the amount stays open until it is answered.
 */

import { perHundred } from '../../nutrition/amount.ts';
import { nutrient, nutrientWord, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import type { Questions } from './ask.ts';
import { asBound } from './attachment.ts';
import type { Draft } from './draft.ts';
import type { Figure } from './figure.ts';
import type { NumberReading } from './numbers.ts';
import type { PrintedUnit, Quantity, ReadAmount } from './reading.ts';
import { askBasis, askIngredient, askPercent, columnOf } from './settle-questions.ts';
import { inTagUnit, unitFits } from './units.ts';

/** What the whole label says, beside the one figure. */
interface Surroundings {
  /** Weight of a serving, when the label defines exactly one. */
  readonly serving: number | undefined;
  /** The decimal mark other figures of the label show; undefined when none or both do. */
  readonly decimalMark: ',' | '.' | undefined;
  /** Whether another figure shows three decimals with that mark. */
  readonly threeDecimals: boolean;
  /** What "fibre" without a word before it means on this label, where the kind of label settles it. */
  readonly fibre: 'FIBTG' | 'FIBC' | undefined;
}

/** Energy of pure fat, Merrill and Watt 1973 (USDA Handbook 74): no food holds more, kcal/100 g. */
const MOST_ENERGY = 902;
/** Below this, a figure of energy with three decimals is no food; iceberg lettuce, SR28 11252, has 14 kcal/100 g. */
const LEAST_ENERGY = 5;

/** The amount, or why the figure cannot be one. */
export function settle(draft: Draft, around: Surroundings, questions: Questions): ReadAmount | string {
  const { name, line } = draft;
  const t = words().label.reading;
  const open: string[] = [];
  const notes: string[] = [];
  if (name.reason) return name.reason;
  const { unit } = draft.figure;
  const fitting = name.tags.filter((tag) => unitFits(tag, unit));
  const [first] = fitting;
  if (first === undefined) return misfit(draft);
  if (unit === '%' && isTraceInPercent(first)) return t.why.traceInPercent(draft.heard);
  if (draft.per.kind === 'energy') return t.why.noWeight(draft.heard, draft.per.text);

  const tag = tagOf(draft, fitting, first, around, questions, open);
  if (draft.percentUnclear && askPercent(draft, tag, questions, open) === 'daily') return t.why.daily;
  if (draft.ingredient && askIngredient(draft, questions, open) === 'ingredient') return t.why.listShare;
  const column = columnOf(draft, tag, questions, open);
  if (column?.prepared !== undefined) return t.why.notSold(draft.heard, column.text);
  const figure: Figure = column?.bound ? asBound(draft.figure, column.bound) : draft.figure;
  const basis = draft.unclear === undefined ? undefined : askBasis(draft.unclear, line, questions, open);
  if (basis === 'none') return t.why.basisUnsaid(draft.heard);
  const attached = column?.per ?? draft.per;
  const based: Quantity = basis === 'dry matter' ? { ...attached, basis } : attached;
  const columnOpen = draft.columns !== undefined && column === undefined;
  const per = columnOpen ? based : quantityOf(based, around, questions, open);
  if (figure.about) notes.push(t.notes.about);
  const pick = (read: NumberReading | undefined) =>
    read && pickReading(read, { ...draft, figure }, tag, per, around, questions, open, notes);
  const value = pick(figure.value);
  const low = pick(figure.low);
  const high = pick(figure.high);
  const least = value?.value ?? low?.value;
  if (least !== undefined && per.grams !== undefined && !possible(least, unit, tag, per.grams, true))
    return per.kind === 'percent'
      ? t.why.tooMuch(draft.heard, least, unit)
      : t.why.tooMuchPer(draft.heard, least, unit, per.grams);
  const unread = (read: NumberReading | undefined, got: unknown) => read !== undefined && got === undefined;
  const whole = !unread(figure.value, value) && !unread(figure.low, low) && !unread(figure.high, high);
  const lows = low?.value ?? (figure.under ? 0 : undefined);
  return {
    line,
    tag,
    ...(whole && value && { value: value.value }),
    ...(whole && lows !== undefined && { low: lows }),
    ...(whole && high && { high: high.value }),
    rounding: Math.max(value?.rounding ?? 0, low?.rounding ?? 0, high?.rounding ?? 0),
    unit,
    per,
    heard: draft.heard,
    ...(name.mark === 'salt' && { as: 'salt' as const }),
    ...(notes.length > 0 && { note: [...new Set(notes)].join('; ') }),
    open: [...new Set(open)],
  };
}

function tagOf(
  { name, heard }: Draft,
  fitting: readonly Tag[],
  first: Tag,
  around: Surroundings,
  questions: Questions,
  open: string[],
): Tag {
  if (fitting.length === 1) return first;
  if (name.called === 'fibre' && around.fibre) return around.fibre;
  const id = `name:${name.called}`;
  const chosen = questions.choose(id, fitting, () => ({
    message: words().label.reading.ask.which(heard, fitting.map(nutrientWord)),
    options: fitting.map((t) => ({ answer: t, label: nutrient(t).name })),
  }));
  if (chosen === undefined) open.push(id);
  return (chosen as Tag | undefined) ?? first;
}

function misfit({ name, heard, figure }: Draft): string {
  if (name.tags.includes('TOCPHA') && figure.unit === 'IU')
    return words().label.reading.why.vitaminForm(heard);
  return words().label.reading.why.wrongUnit(heard, figure.unit);
}

/** Vitamins and trace elements are never printed as percent of weight. */
function isTraceInPercent(tag: Tag): boolean {
  return nutrient(tag).group === 'vitamin' || ['FE', 'ZN', 'CU', 'MN', 'SE', 'ID'].includes(tag);
}

function quantityOf(per: Quantity, around: Surroundings, questions: Questions, open: string[]): Quantity {
  if (per.grams !== undefined) return per;
  if (per.kind === 'serving' && around.serving !== undefined) return { ...per, grams: around.serving };
  const { kind, text } = per;
  const id = kind === 'unknown' ? 'per' : kind === 'serving' ? 'serving' : `${kind}:${text}`;
  const options = [{ answer: '100', label: '100 g' }];
  if (around.serving !== undefined)
    options.push({
      answer: String(around.serving),
      label: words().label.reading.ask.serving(around.serving),
    });
  const t = words().label.reading.ask;
  const grams = questions.measure(id, 'grams', () => {
    if (kind === 'unknown') return { message: t.perWhat, options };
    if (kind === 'serving') return { message: t.servingGrams(text), options: [] };
    const message = kind === 'volume' ? t.volume(text) : t.other(text);
    return { message, options: [] };
  });
  if (grams === undefined) {
    open.push(id);
    return per;
  }
  return { ...per, grams };
}

function pickReading(
  read: NumberReading,
  draft: Draft,
  tag: Tag,
  per: Quantity,
  around: Surroundings,
  questions: Questions,
  open: string[],
  notes: string[],
): { value: number; rounding: number } | undefined {
  const [value, grouped] = read.readings;
  const [rounding, groupedRounding] = read.rounding;
  const decimal = { value, rounding };
  if (grouped === undefined || groupedRounding === undefined) return decimal;
  const thousands = { value: grouped, rounding: groupedRounding };
  const both = [decimal, thousands];
  const mark = read.text.includes(',') ? ',' : '.';
  const { grams } = per;
  const { unit } = draft.figure;
  const [fit, ...others] = both.filter(
    (reading) => grams === undefined || possible(reading.value, unit, tag, grams),
  );
  if (fit && others.length === 0 && grams !== undefined) {
    notes.push(words().label.reading.notes.onlyReading(read.text, fit.value));
    return fit;
  }
  // Three decimals where the label has fewer elsewhere may be thousands in a number copied from another print.
  if (around.decimalMark && (around.decimalMark !== mark || around.threeDecimals)) {
    const meant = around.decimalMark === mark ? decimal : thousands;
    notes.push(words().label.reading.notes.byMark(read.text, meant.value, around.decimalMark));
    return meant;
  }
  const id = `number:${draft.line}:${read.text}`;
  const answers = both.map((reading) => String(reading.value));
  const chosen = questions.choose(id, answers, () => ({
    line: draft.line,
    message: words().label.reading.ask.number(read.text, draft.figure.unit, draft.heard, answers),
    options: answers.map((answer) => ({ answer, label: `${answer} ${draft.figure.unit}` })),
  }));
  const meant = both.find((reading) => String(reading.value) === chosen);
  if (!meant) open.push(id);
  return meant;
}

/** @param most whether only the most that a food can hold counts, and not the least that its energy can be */
function possible(amount: number, printed: PrintedUnit, tag: Tag, grams: number, most = false): boolean {
  const content = perHundred(inTagUnit(amount, printed, tag), grams);
  const { unit } = nutrient(tag);
  if (unit === 'kcal') return (most || content >= LEAST_ENERGY) && content <= MOST_ENERGY;
  if (unit === 'IU') return true;
  return content <= { g: 100, mg: 1e5, ug: 1e8 }[unit] * (1 + 1e-9);
}
