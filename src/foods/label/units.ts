/** Units as labels print them, and how they become the units of the tagnames. */
import { gramsPer, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import type { PrintedUnit } from './reading.ts';

/** Spellings, without case. "Cal" alone is left out: it may be a calorie or a kilocalorie. */
export const UNIT_SPELLINGS: readonly (readonly [PrintedUnit, string])[] = [
  ['g', 'g|gr|gram|grams|gramm|gramme|grammes|gramo|gramos'],
  ['mg', 'mg|milligram|milligrams|milligramm|milligrammes|miligramos'],
  ['ug', 'ug|μg|µg|mcg|microgram|micrograms|mikrogramm|microgrammes|microgramos'],
  ['IU', 'iu|ie|ui|i.u.|i.e.|u.i.'],
  ['kJ', 'kj|kilojoule|kilojoules'],
  ['MJ', 'mj'],
  ['kcal', 'kcal|kilocalories|kilocalorie|kilokalorien|kilocalorías'],
  ['ppm', 'ppm'],
];

/** kJ in a kcal: the thermochemical calorie, as Regulation (EU) 1169/2011 rounds it in use. */
const KJ_PER_KCAL = 4.184;

/** Salt in sodium: "salt = sodium x 2.5", Regulation (EU) 1169/2011, Annex I, point 11. */
export const SALT_PER_SODIUM = 2.5;

const MASS: Partial<Record<PrintedUnit, number>> = { g: 1, mg: 1e3, ug: 1e6, '%': 1, '‰': 1, ppm: 1e3 };

/** Whether an amount of `tag` may be printed in `unit`. */
export function unitFits(tag: Tag, unit: PrintedUnit): boolean {
  const own = nutrient(tag).unit;
  if (own === 'kcal') return unit === 'kcal' || unit === 'kJ' || unit === 'MJ';
  if (own === 'IU') return unit === 'IU';
  return unit in MASS;
}

/**
 * A number in a printed unit as one in the unit of the tagname, the quantity left as it is.
 * @throws RangeError for a unit that does not fit; {@link unitFits} tells before
 */
export function inTagUnit(amount: number, unit: PrintedUnit, tag: Tag): number {
  if (unit === 'kcal' || unit === 'IU') return amount;
  if (unit === 'kJ') return amount / KJ_PER_KCAL;
  if (unit === 'MJ') return (amount * 1000) / KJ_PER_KCAL;
  // Divide by how many make a gram, so that 12 mg stays exactly 12 mg.
  const perGram = MASS[unit];
  const grams = gramsPer(nutrient(tag).unit);
  if (perGram === undefined || grams === undefined) throw new RangeError(`${tag} is not measured in ${unit}`);
  const own = Math.round(1 / grams);
  return own >= perGram ? amount * (own / perGram) : amount / (perGram / own);
}

/** Grams that a unit itself is a share of: percent of 100, per mille and ppm of 1000 g. Undefined for the rest. */
export function ownQuantity(unit: PrintedUnit): number | undefined {
  return { '%': 100, '‰': 1000, ppm: 1000 }[unit as string];
}
