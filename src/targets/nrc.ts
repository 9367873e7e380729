/**
 * Needs of laboratory hamsters and mice as the National Research Council states them: per kg of diet at 10 %
 * moisture. Amounts here are as printed; {@link PerKilogram.inTagUnitPer100g} is the same in the tagname's unit.
 */
import { nutrient as nutrientOf, type Tag, type Unit } from '../nutrition/nutrients.ts';

export interface PerKilogram {
  readonly nutrient: Tag;
  readonly perKg: number;
  readonly unit: Unit;
  /** The need per 100 g of diet (10 % moisture), in the tagname's unit. */
  readonly inTagUnitPer100g: number;
  readonly note?: string;
}

/** How many of the smaller unit make one of the larger: exact factors, so that 0.72 mg is 720 ug and not 719.99. */
const STEPS: Partial<Record<Unit, number>> = { g: 0, mg: 3, ug: 6 };

function need(nutrient: Tag, perKg: number, unit: Unit, note?: string): PerKilogram {
  const to = nutrientOf(nutrient).unit;
  const steps = stepsBetween(unit, to);
  // A mass and IU do not convert, and a profile must not pretend so.
  if (steps === undefined) throw new RangeError(`${nutrient} is in ${to}, which ${unit} does not convert to`);
  const power = steps - 1;
  const inTagUnitPer100g = power < 0 ? perKg / 10 ** -power : perKg * 10 ** power;
  return { nutrient, perKg, unit, inTagUnitPer100g, ...(note && { note }) };
}

/** Powers of ten from one unit to another; undefined where they do not convert. */
function stepsBetween(from: Unit, to: Unit): number | undefined {
  if (from === to) return 0;
  const [start, end] = [STEPS[from], STEPS[to]];
  return start === undefined || end === undefined ? undefined : end - start;
}

const FOLIC_ACID = 'stated as folic acid, compared with total folate';
const TOCOPHEROL = 'stated as vitamin E, compared with alpha-tocopherol';
const PHYLLOQUINONE = 'stated as vitamin K, compared with phylloquinone';

/** Hamster, from memory of an earlier edition. */
export const NRC_HAMSTER: readonly PerKilogram[] = [
  need('PROCNT', 150, 'g'),
  need('FAT', 50, 'g'),
  need('CA', 5.9, 'g'),
  need('P', 3.0, 'g'),
  need('MG', 0.6, 'g'),
  need('K', 6.1, 'g'),
  need('NA', 1.5, 'g'),
  need('CU', 1.6, 'mg'),
  need('FE', 140, 'mg'),
  need('MN', 3.65, 'mg'),
  need('ZN', 9.2, 'mg'),
  need('ID', 1.6, 'mg'),
  need('SE', 0.1, 'mg'),
  need('VITA_IU', 3636, 'IU'),
  need('VITD_IU', 2484, 'IU'),
  need('TOCPHA', 3, 'mg', TOCOPHEROL),
  need('VITK1', 4, 'mg', PHYLLOQUINONE),
  need('THIA', 20, 'mg'),
  need('RIBF', 15, 'mg'),
  need('NIA', 90, 'mg'),
  need('PANTAC', 40, 'mg'),
  need('VITB6A', 6, 'mg'),
  need('VITB12', 20, 'ug'),
  need('FOL', 2, 'mg', FOLIC_ACID),
  need('CHOLN', 2000, 'mg'),
];

/** Mouse, 1995, table 3-3; protein is the need of growth. */
export const NRC_MOUSE: readonly PerKilogram[] = [
  need('PROCNT', 180, 'g', 'for growth'),
  need('FAT', 50, 'g', 'stated as lipid'),
  need('F18D2CN6', 6.8, 'g'),
  need('CA', 5.0, 'g'),
  need('P', 3.0, 'g'),
  need('MG', 0.5, 'g'),
  need('K', 2.0, 'g'),
  need('NA', 0.5, 'g'),
  need('CU', 6, 'mg'),
  need('FE', 35, 'mg'),
  need('MN', 10, 'mg'),
  need('ZN', 10, 'mg'),
  need('ID', 150, 'ug'),
  need('SE', 150, 'ug'),
  need('VITA_RAE', 0.72, 'mg', 'stated as retinol, compared with retinol activity'),
  need('VITD', 0.025, 'mg'),
  need('TOCPHA', 22, 'mg', TOCOPHEROL),
  need('VITK1', 1, 'mg', PHYLLOQUINONE),
  need('BIOT', 0.2, 'mg'),
  need('CHOLN', 2000, 'mg'),
  need('FOL', 0.5, 'mg', FOLIC_ACID),
  need('NIA', 15, 'mg'),
  need('PANTAC', 16, 'mg'),
  need('RIBF', 7, 'mg'),
  need('THIA', 5, 'mg'),
  need('VITB6A', 8, 'mg'),
  need('VITB12', 10, 'ug'),
];
