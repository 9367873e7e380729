/** An amount as a publication prints it, per kg of diet, and the same per 100 g in the unit of the tagname. */
import { isUnitVitamin, microgramsOf } from '../nutrition/international-units.ts';
import { nutrient as nutrientOf, type Tag, type Unit } from '../nutrition/nutrients.ts';

export interface PerKilogram {
  readonly nutrient: Tag;
  readonly perKg: number;
  readonly unit: Unit;
  /** The same per 100 g of that diet, in the tagname's unit. */
  readonly inTagUnitPer100g: number;
  readonly note?: string;
}

/** How many of the smaller unit make one of the larger: exact factors, so that 0.72 mg is 720 ug and not 719.99. */
const STEPS: Partial<Record<Unit, number>> = { g: 0, mg: 3, ug: 6 };

/**
 * @param perKg as printed, per kg of diet
 * @throws RangeError where the unit does not convert to the tagname's
 */
export function perKilogram(nutrient: Tag, perKg: number, unit: Unit, note?: string): PerKilogram {
  return {
    nutrient,
    perKg,
    unit,
    inTagUnitPer100g: inTagUnit(nutrient, perKg, unit),
    ...(note && { note }),
  };
}

function inTagUnit(tag: Tag, perKg: number, from: Unit): number {
  const to = nutrientOf(tag).unit;
  if (from === 'IU' && to === 'ug' && isUnitVitamin(tag)) return microgramsOf(perKg, tag) / 10;
  const steps = stepsBetween(from, to);
  // A mass and IU do not convert, and a profile must not pretend so.
  if (steps === undefined) throw new RangeError(`${tag} is in ${to}, which ${from} does not convert to`);
  const power = steps - 1;
  return power < 0 ? perKg / 10 ** -power : perKg * 10 ** power;
}

/** Powers of ten from one unit to another; undefined where they do not convert. */
function stepsBetween(from: Unit, to: Unit): number | undefined {
  if (from === to) return 0;
  const [start, end] = [STEPS[from], STEPS[to]];
  return start === undefined || end === undefined ? undefined : end - start;
}
