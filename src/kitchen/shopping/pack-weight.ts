/**
 * Weights as packs print them, in grams: "500 g", "1.5 kg", "1,5 kg", "12 x 40 g", "2 lb 4 oz".
 *
 * The pound and the ounce are the avoirdupois ones, exact by definition: 1 lb = 453.59237 g, 1 oz = 1/16 lb =
 * 28.349523125 g (international yard and pound agreement, 1 July 1959; NIST Handbook 44, Appendix C).
 */

import { words } from '../../words/words.ts';

export type WeightUnit = 'mg' | 'g' | 'kg' | 'oz' | 'lb';

/** Grams in one of each unit; the last two are exact (see above). */
export const GRAMS_IN: Readonly<Record<WeightUnit, number>> = {
  mg: 0.001,
  g: 1,
  kg: 1000,
  oz: 28.349523125,
  lb: 453.59237,
};

/** Words that people write for the units. "#" for a pound is left out: too many other things are written so. */
const WORDS: Readonly<Record<string, WeightUnit>> = {
  mg: 'mg',
  milligram: 'mg',
  milligrams: 'mg',
  g: 'g',
  gr: 'g',
  gram: 'g',
  grams: 'g',
  gramme: 'g',
  grammes: 'g',
  kg: 'kg',
  kgs: 'kg',
  kilo: 'kg',
  kilos: 'kg',
  kilogram: 'kg',
  kilograms: 'kg',
  oz: 'oz',
  ounce: 'oz',
  ounces: 'oz',
  lb: 'lb',
  lbs: 'lb',
  pound: 'lb',
  pounds: 'lb',
};

/** Text that is no weight; the message quotes it and shows what may be written. */
export class WeightError extends Error {
  readonly text: string;
  constructor(text: string, why: string) {
    super(words().shopping.weight.wrong(text, why));
    this.name = 'WeightError';
    this.text = text;
  }
}

/** Grams in an amount of some unit. Throws RangeError unless `amount` is a finite number of at least 0. */
export function toGrams(amount: number, unit: WeightUnit): number {
  return checked(amount) * GRAMS_IN[unit];
}

function checked(amount: number): number {
  if (!(Number.isFinite(amount) && amount >= 0))
    throw new RangeError(`a weight must be 0 or more, not ${amount}`);
  return amount;
}

interface PackWeight {
  /** g in all. */
  readonly grams: number;
  /** How many inner packs: 12 for "12 x 40 g", else 1. */
  readonly count: number;
  /** g in one inner pack. */
  readonly each: number;
}

const NUMBER = String.raw`\d+(?:[.,]\d+)?|[.,]\d+`;
const PART = new RegExp(String.raw`^(${NUMBER})\s*([a-z]+)\.?\s*`, 'i');
const TIMES = /^(\d+)\s*[x×*]\s*/i;

/**
 * Reads a weight as a pack prints it. One comma or point is the decimal mark. A mark with three digits behind it
 * before kg or lb ("1,500 kg") is read as a decimal too: 1.5 kg, as kitchen scales print it. Before g and mg it could
 * as well be a thousand, so it is refused rather than guessed at.
 * @throws WeightError when the text is no weight, has no unit, is 0, or could be read in two ways
 */
export function readPack(text: string): PackWeight {
  const t = words().shopping.weight;
  const fail = (why: string): never => {
    throw new WeightError(text, why);
  };
  let rest = text.trim();
  if (rest === '') fail(t.empty(t.examples));
  const times = TIMES.exec(rest);
  const count = times ? Number(times[1]) : 1;
  if (times) rest = rest.slice(times[0].length);
  if (count === 0) fail(t.noPacks);
  let each = 0;
  let last: WeightUnit | undefined;
  while (rest !== '') {
    const part = PART.exec(rest);
    if (!part) {
      if (new RegExp(`^(?:${NUMBER})$`).test(rest)) fail(t.noUnit(t.examples));
      fail(t.notOne(rest, t.examples));
    }
    const [whole, figures, word] = part as unknown as [string, string, string];
    const unit = WORDS[word.toLowerCase()];
    if (unit === undefined) return fail(isVolume(word) ? t.volume(word) : t.unknownUnit(word));
    if (last !== undefined && !(last === 'lb' && unit === 'oz')) fail(t.unitAfter(last, unit));
    if ((unit === 'g' || unit === 'mg') && /^[1-9]\d{0,2}[.,]\d{3}$/.test(figures))
      fail(
        t.twoWays(
          `${figures} ${unit}`,
          `${figures.replace(/[.,]/, '')} ${unit}`,
          `${words().figures.number(Number(figures.replace(',', '.')), 3)} ${unit}`,
        ),
      );
    each += Number(figures.replace(',', '.')) * GRAMS_IN[unit];
    last = unit;
    rest = rest.slice(whole.length);
  }
  if (last === undefined) fail(t.empty(t.examples));
  if (!(each > 0)) fail(t.nothing);
  if (!Number.isFinite(each * count)) fail(t.tooLarge);
  return { grams: each * count, count, each };
}

/** Whether a word names a volume, which says nothing about a weight. */
const isVolume = (word: string) => /^(?:ml|cl|dl|l|litres?|liters?|cups?|pints?|floz)$/i.test(word);

/** Grams as people write them: "0.5 g", "40 g", "1.25 kg"; at most three figures behind the point. */
export function sayGrams(grams: number): string {
  const g = checked(grams);
  const { number, massUnit, weight } = words().figures;
  if (massUnit === 'oz') return weight(g);
  // Decide on the rounded figure, or 999.6 g would be said as "1000 g".
  if (Math.round(g * 10) / 10 >= 1000) return `${number(g / 1000, 3)} kg`;
  return `${number(g, g < 10 ? 2 : 1)} g`;
}
