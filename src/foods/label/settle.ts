/**
 * Settles each attached figure: its tag, its quantity, its number. What print and answers do not settle becomes a
 * question, and the amount stays open until it is answered.
 */
import { perHundred } from '../../nutrition/amount.ts';
import { nutrient, type Tag } from '../../nutrition/nutrients.ts';
import type { Questions } from './ask.ts';
import type { Draft } from './attach.ts';
import type { NumberReading } from './numbers.ts';
import type { Quantity, ReadAmount } from './reading.ts';
import { inTagUnit, unitFits } from './units.ts';

/** What the whole label says, beside the one figure. */
interface Surroundings {
  /** Weight of a serving, when the label defines exactly one. */
  readonly serving: number | undefined;
  /** The decimal mark other figures of the label show; undefined when none or both do. */
  readonly decimalMark: ',' | '.' | undefined;
}

/** Energy of pure fat, Merrill and Watt 1973 (USDA Handbook 74): no food holds more, kcal/100 g. */
const MOST_ENERGY = 902;
/** Below this, a figure of energy with three decimals is no food; iceberg lettuce, SR28 11252, has 14 kcal/100 g. */
const LEAST_ENERGY = 5;

/** The amount, or why the figure cannot be one. */
export function settle(draft: Draft, around: Surroundings, questions: Questions): ReadAmount | string {
  const { name, figure, line } = draft;
  const open: string[] = [];
  const notes: string[] = [];
  if (name.reason) return name.reason;
  const { unit } = figure;
  const fitting = name.tags.filter((tag) => unitFits(tag, unit));
  const [first] = fitting;
  if (first === undefined) return misfit(draft);
  if (unit === '%' && isTraceInPercent(first))
    return `${draft.heard} in % is a share of a daily need, not an amount; write it in mg, µg or IU`;

  let tag = first;
  if (fitting.length > 1) {
    const id = `name:${name.called}`;
    const chosen = questions.choose(id, fitting, () => ({
      message: `"${draft.heard}" may mean ${fitting.map((t) => nutrient(t).name.toLowerCase()).join(' or ')}; which is it?`,
      options: fitting.map((t) => ({ answer: t, label: nutrient(t).name })),
    }));
    if (chosen === undefined) open.push(id);
    else tag = chosen as Tag;
  }
  if (draft.percentUnclear) {
    const id = `percent:${line}:${tag}`;
    const chosen = questions.choose(id, ['weight', 'daily'], () => ({
      line,
      message: `Is the percentage of ${draft.heard} a share of the food's weight, or of a daily intake?`,
      options: [
        { answer: 'weight', label: 'Share of the weight' },
        { answer: 'daily', label: 'Share of a daily intake (then it is no amount)' },
      ],
    }));
    if (chosen === 'daily') return 'a share of a daily intake is no amount';
    if (chosen === undefined) open.push(id);
  }

  const per = quantityOf(draft, tag, around, questions, open);
  if (figure.about) notes.push('printed as approximate');
  const pick = (read: NumberReading | undefined) =>
    read && pickReading(read, draft, tag, per, around, questions, open, notes);
  const value = pick(figure.value);
  const low = pick(figure.low);
  const high = pick(figure.high);
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
    open,
  };
}

function misfit({ name, heard, figure }: Draft): string {
  if (name.tags.includes('TOCPHA') && figure.unit === 'IU')
    return `${heard} in IU depends on the form of the vitamin; write it in mg`;
  return `${heard} is not measured in ${figure.unit}; check the unit`;
}

/** Vitamins and trace elements are never printed as percent of weight. */
function isTraceInPercent(tag: Tag): boolean {
  return nutrient(tag).group === 'vitamin' || ['FE', 'ZN', 'CU', 'MN', 'SE', 'ID'].includes(tag);
}

function quantityOf(
  draft: Draft,
  tag: Tag,
  around: Surroundings,
  questions: Questions,
  open: string[],
): Quantity {
  let { per } = draft;
  if (draft.columns) {
    const { columns, line } = draft;
    const id = `column:${line}:${tag}:${draft.figure.unit}`;
    const answers = columns.map((_, k) => String(k));
    const chosen = questions.choose(id, answers, () => ({
      line,
      message: `The line gives ${draft.heard} once, for ${columns.length} columns; which column is it?`,
      options: columns.map((c, k) => ({ answer: String(k), label: c.text })),
    }));
    const column = chosen === undefined ? undefined : columns[Number(chosen)];
    if (!column) {
      open.push(id);
      return per;
    }
    per = column;
  }
  if (per.grams !== undefined) return per;
  if (per.kind === 'serving' && around.serving !== undefined) return { ...per, grams: around.serving };
  const id = per.kind === 'unknown' ? 'per' : per.kind === 'serving' ? 'serving' : `volume:${per.text}`;
  const options = [{ answer: '100', label: '100 g' }];
  if (around.serving !== undefined)
    options.push({ answer: String(around.serving), label: `a serving of ${around.serving} g` });
  const grams = questions.measure(id, 'grams', () =>
    per.kind === 'unknown'
      ? { message: 'No line says what these amounts are per; how many grams of the food hold them?', options }
      : per.kind === 'serving'
        ? { message: `How many grams is one serving ("${per.text}")?`, options: [] }
        : { message: `How many grams does the food of "${per.text}" weigh?`, options: [] },
  );
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
  const [fit, ...others] = both.filter((reading) => possible(reading.value, draft, tag, per));
  if (fit && others.length === 0 && per.grams !== undefined) {
    notes.push(`${read.text} read as ${fit.value}, the only reading a food can have`);
    return fit;
  }
  if (around.decimalMark) {
    const meant = around.decimalMark === mark ? decimal : thousands;
    notes.push(
      `${read.text} read as ${meant.value}, as the label writes decimals with "${around.decimalMark}"`,
    );
    return meant;
  }
  const id = `number:${draft.line}:${read.text}`;
  const answers = both.map((reading) => String(reading.value));
  const chosen = questions.choose(id, answers, () => ({
    line: draft.line,
    message: `Is ${read.text} ${draft.figure.unit} of ${draft.heard} ${answers.join(' or ')}?`,
    options: answers.map((answer) => ({ answer, label: `${answer} ${draft.figure.unit}` })),
  }));
  const meant = both.find((reading) => String(reading.value) === chosen);
  if (!meant) open.push(id);
  return meant;
}

function possible(amount: number, { figure }: Draft, tag: Tag, per: Quantity): boolean {
  if (per.grams === undefined) return true;
  const content = perHundred(inTagUnit(amount, figure.unit, tag), per.grams);
  const { unit } = nutrient(tag);
  if (unit === 'kcal') return content >= LEAST_ENERGY && content <= MOST_ENERGY;
  if (unit === 'IU') return true;
  return content <= { g: 100, mg: 1e5, ug: 1e8 }[unit];
}
