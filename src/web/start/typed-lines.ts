/**
 * What a keeper types or pastes to say which foods they have: one a line, with a share or a weight where they know it.
 * "oats", "oats, 5 %", "5% oats", "oats 15 g", "- oats (5 %)", "oats; millet; peas".
 */

/** One food as it was written. */
export interface TypedFood {
  readonly name: string;
  /** Percent of the mix that is wanted. */
  readonly share?: number;
  /** g that were written. */
  readonly grams?: number;
}

/** Why a line cannot be taken as it stands. */
export type LineFault = 'nameless' | 'unitless' | 'range' | 'over' | 'nothing' | 'long';

export interface TypedLines {
  readonly foods: readonly TypedFood[];
  /** Lines that stay in the box, as typed. */
  readonly left: readonly { readonly text: string; readonly fault: LineFault }[];
}

/** Letters that a food's name may have; the store takes no more. */
const MOST_NAME = 200;
/** How far printed shares may come from 100 by rounding (common practice, no source). */
const NEAR_HUNDRED = 0.5;

const NUMBER = String.raw`\d+(?:[.,]\d+)?`;
const PERCENT = '%|percent|per ?cent|prozent|procent';
/** g in one of each. */
const GRAMS: Readonly<Record<string, number>> = { g: 1, kg: 1000, oz: 28.349523125 };
// A Dutch \"ons\" is 100 g to one and an ounce to another, so it is none.
const MASS = 'kg|kilos?|kilogramm?s?|kilogram|g|gr|gramm?s?|gram|grammes?|oz|ounces?|unzen?';
const UNIT = String.raw`(?:${PERCENT}|(?:${MASS})\b\.?)`;
const AMOUNT = new RegExp(String.raw`(${NUMBER})\s*(${PERCENT}|(?:${MASS})(?![\p{L}])\.?)`, 'giu');
const RANGE = new RegExp(
  String.raw`${NUMBER}\s*(?:${UNIT})?\s*(?:-|–|—|to|bis|tot)\s*${NUMBER}\s*${UNIT}`,
  'iu',
);
const BARE = new RegExp(String.raw`(?:^(${NUMBER})\s+(?=\p{L}))|(?:[\s,:=-](${NUMBER})$)`, 'u');
/** What stands before an item of a list: a dash, a dot, a number with a dot or a bracket. */
const BULLET = /^\s*(?:[-–—•*·]\s+|\d{1,3}[.)]\s+)/u;

/** @param text lines as typed */
export function readTyped(text: string): TypedLines {
  const lines = text
    .split(/\r\n|\r|\n|;/)
    .flatMap(itemsOf)
    .filter((line) => line.trim() !== '');
  const read = lines.map((line) => ({ line, ...readLine(line) }));
  // Numbers without a unit that come to a hundred together are percent.
  const bare = read.flatMap((r) => (r.bare === undefined ? [] : [r.bare]));
  const all = bare.reduce((sum, n) => sum + n, 0);
  const percent = bare.length > 1 && bare.length === read.length && Math.abs(all - 100) <= NEAR_HUNDRED;
  const foods: TypedFood[] = [];
  const left: { text: string; fault: LineFault }[] = [];
  for (const { line, name, share, grams, bare, fault } of read) {
    const wanted = share ?? (percent ? bare : undefined);
    const wrong = fault ?? (bare !== undefined && !percent ? 'unitless' : faultOf(name, wanted, grams));
    if (wrong) left.push({ text: line.trim(), fault: wrong });
    else
      foods.push({
        name,
        ...(wanted !== undefined && { share: wanted }),
        ...(grams !== undefined && { grams }),
      });
  }
  return { foods, left };
}

interface ReadLine {
  readonly name: string;
  readonly share?: number;
  readonly grams?: number;
  /** A number that no unit stands with. */
  readonly bare?: number;
  readonly fault?: LineFault;
}

/** Several foods on one line, each with its amount: "oats 5 %, millet 10 %". A comma alone may belong to a name. */
function itemsOf(line: string): string[] {
  const amounts = [...line.matchAll(AMOUNT)];
  if (amounts.length < 2 || RANGE.test(line)) return [line];
  const parts = line.split(/,(?!\d)|\+|\t/u).map((part) => part.trim());
  const withOne = parts.filter((part) => [...part.matchAll(AMOUNT)].length === 1);
  return withOne.length === amounts.length && parts.length === amounts.length ? parts : [line];
}

function readLine(line: string): ReadLine {
  const plain = line.replace(/\t/g, ' ').replace(BULLET, '').trim();
  if (RANGE.test(plain)) return { name: plain, fault: 'range' };
  const amounts = [...plain.matchAll(AMOUNT)];
  const [amount] = amounts;
  if (amount && amounts.length === 1) {
    const [whole, number = '', unit = ''] = amount;
    const value = Number(number.replace(',', '.'));
    const name = nameIn(plain.replace(whole, ' '));
    return new RegExp(`^(?:${PERCENT})$`, 'iu').test(unit)
      ? { name, share: value }
      : { name, grams: value * gramsIn(unit) };
  }
  if (amounts.length > 1) return bothAmounts(plain, amounts);
  const bare = BARE.exec(plain);
  if (bare)
    return {
      name: nameIn(plain.replace(bare[0], ' ')),
      bare: Number((bare[1] ?? bare[2] ?? '').replace(',', '.')),
    };
  return { name: nameIn(plain) };
}

/** A share and the weight that goes with it: the share counts. Two of one kind cannot both be meant. */
function bothAmounts(plain: string, amounts: readonly RegExpMatchArray[]): ReadLine {
  const shares = amounts.filter(([, , unit = '']) => new RegExp(`^(?:${PERCENT})$`, 'iu').test(unit));
  const [share] = shares;
  const name = nameIn(amounts.reduce((rest, [whole]) => rest.replace(whole, ' '), plain));
  if (!share || shares.length > 1) return { name: plain, fault: 'range' };
  return { name, share: Number((share[1] ?? '').replace(',', '.')) };
}

function gramsIn(unit: string): number {
  const plain = unit.toLowerCase().replace('.', '');
  if (plain.startsWith('k')) return GRAMS.kg ?? 1000;
  return plain.startsWith('g') ? 1 : (GRAMS.oz ?? 1);
}

/** The name without what only held it and the amount together. */
function nameIn(text: string): string {
  return text
    .replace(/\(\s*[,;]?\s*\)|\[\s*\]/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/\s+,/g, ',')
    .replace(/^[\s,:=|–—-]+|[\s,:=|–—-]+$/gu, '');
}

function faultOf(name: string, share: number | undefined, grams: number | undefined): LineFault | undefined {
  if (!/\p{L}/u.test(name)) return 'nameless';
  if (name.length > MOST_NAME) return 'long';
  if (share === 0 || grams === 0) return 'nothing';
  return share !== undefined && share > 100 ? 'over' : undefined;
}

/**
 * Percent of the mix that each food is wanted at. Where every food has a weight they are a recipe, and its weights come
 * to a hundred together; a weight beside foods without one is of the batch.
 * @param batch g
 */
export function wantedOf(foods: readonly TypedFood[], batch: number): (number | undefined)[] {
  const recipe = foods.length > 1 && foods.every((f) => f.grams !== undefined && f.share === undefined);
  const whole = recipe ? foods.reduce((sum, f) => sum + (f.grams ?? 0), 0) : batch;
  return foods.map(({ share, grams }) =>
    share !== undefined
      ? share
      : grams === undefined
        ? undefined
        : Math.min(100, tidy((100 * grams) / whole)),
  );
}

function tidy(value: number): number {
  return Number(value.toFixed(2));
}
