/**
 * Least amounts for laboratory hamsters, mice, gerbils and rats as the National Research Council states them, per kg of
 * diet at 10 % moisture; as printed.
 */
import { perKilogram as need, type PerKilogram } from './per-kilogram.ts';

const FOLIC_ACID = 'stated as folic acid, compared with total folate';
const TOCOPHEROL = 'stated as vitamin E, compared with alpha-tocopherol';

/**
 * Hamster, from memory of the edition of 1978: chapter 5 of that of 1995, as far as it could be read, has no table of
 * needs. The 4 mg of vitamin K that it gave were menadione, which food tables do not hold: see {@link NRC_HAMSTER_K}.
 */
export const NRC_HAMSTER: readonly PerKilogram[] = [
  need('PROCNT', 150, 'g'),
  need('FAT', 50, 'g'),
  need('ARG', 7.6, 'g'),
  need('HIS', 4.0, 'g'),
  need('ILE', 8.9, 'g'),
  need('LEU', 13.9, 'g'),
  need('LYS', 12.0, 'g'),
  need('MET', 3.2, 'g'),
  need('PHE', 8.3, 'g'),
  need('THR', 7.0, 'g'),
  need('TRP', 3.4, 'g'),
  need('TYR', 5.7, 'g'),
  need('VAL', 9.1, 'g'),
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
  need('VITD', 2484, 'IU'),
  need('TOCPHA', 3, 'mg', TOCOPHEROL),
  need('BIOT', 0.6, 'mg'),
  need('THIA', 20, 'mg'),
  need('RIBF', 15, 'mg'),
  need('NIA', 90, 'mg'),
  need('PANTAC', 40, 'mg'),
  need('VITB6A', 6, 'mg'),
  need('VITB12', 20, 'ug'),
  need('FOL', 2, 'mg', FOLIC_ACID),
  need('CHOLN', 2000, 'mg'),
];

/** Phylloquinone for hamsters: what the chapter of 1995 calls safe and adequate, by analogy with a strain of rats. */
export const NRC_HAMSTER_K = need(
  'VITK1',
  11,
  'mg',
  'phylloquinone; the 4 mg found enough for growth there were menadione, which is another substance and is not counted here',
);

/** Mouse, 1995, table 3-3; protein is the need of growth. Its chloride and molybdenum are in no food table. */
export const NRC_MOUSE: readonly PerKilogram[] = [
  need('PROCNT', 180, 'g', 'for growth'),
  need('FAT', 50, 'g', 'stated as lipid'),
  need('F18D2CN6', 6.8, 'g'),
  need('ARG', 3.0, 'g'),
  need('HIS', 2.0, 'g'),
  need('ILE', 4.0, 'g'),
  need('LEU', 7.0, 'g'),
  need('LYS', 4.0, 'g'),
  need('MET', 5.0, 'g', 'cystine may stand for a half of it or more, which is not credited here: stricter'),
  need('PHE', 7.6, 'g', 'tyrosine may stand for half of it, which is not credited here: stricter'),
  need('THR', 4.0, 'g'),
  need('TRP', 1.0, 'g'),
  need('VAL', 5.0, 'g'),
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
  need('TOCPHA', 22, 'mg', 'stated as RRR-alpha-tocopherol'),
  need('VITK1', 1, 'mg', 'stated as phylloquinone, by the need of the rat'),
  need('BIOT', 0.2, 'mg'),
  need('CHOLN', 2000, 'mg', 'stated as choline bitartrate, compared with choline: stricter'),
  need('FOL', 0.5, 'mg', FOLIC_ACID),
  need('NIA', 15, 'mg'),
  need('PANTAC', 16, 'mg', 'stated as the calcium salt'),
  need('RIBF', 7, 'mg'),
  need('THIA', 5, 'mg', 'stated as the hydrochloride'),
  need('VITB6A', 8, 'mg', 'stated as the hydrochloride; 1 mg is enough to keep a grown mouse'),
  need('VITB12', 10, 'ug'),
];

/** What the notes of that table ask for instead while a mouse is pregnant or nursing. */
const NURSING: readonly PerKilogram[] = [
  need('PROCNT', 180, 'g', 'for reproduction, natural ingredients'),
  need('MG', 0.7, 'g', 'for lactation'),
  need('CU', 8, 'mg', 'for pregnancy and lactation'),
  need('ZN', 30, 'mg', 'for reproduction and lactation'),
  need('PANTAC', 36, 'mg', 'suggested for reproduction and lactation; the calcium salt'),
];

/** Mouse that is pregnant or nursing, 1995, table 3-3 with its notes. */
export const NRC_MOUSE_BREEDING: readonly PerKilogram[] = NRC_MOUSE.map(
  (usual) => NURSING.find((more) => more.nutrient === usual.nutrient) ?? usual,
);

/**
 * Gerbil, 1995, chapter 6, as another page quotes it: more than 1.0 g is needed, for the coat and against fits, and 1.5 g
 * is recommended. The moisture of the diet is not in the quotation.
 */
export const NRC_GERBIL_MAGNESIUM = need(
  'MG',
  1.5,
  'g',
  'recommended; more than 1.0 g was found to be needed; that the diet has 10 % moisture is taken from the other chapters',
);

/** Rat, as a newsletter of 2007 prints it from the edition of 1978, at 10 % moisture. */
export const NRC_RAT_FAT: readonly PerKilogram[] = [need('FAT', 50, 'g'), need('F18D2CN6', 6, 'g')];

/** Rat, the text of chapter 2 of 1995, as another page quotes it. */
export const NRC_RAT_THIAMIN = need(
  'THIA',
  4,
  'mg',
  'for pregnancy and lactation; stated as the hydrochloride',
);

/**
 * Rat, from memory of table 2-2 of 1995; amino acids and protein are the needs of growth. Its chloride and molybdenum are
 * in no food table.
 */
export const NRC_RAT: readonly PerKilogram[] = [
  need('PROCNT', 150, 'g', 'for growth'),
  need('FAT', 50, 'g'),
  need('F18D2CN6', 6, 'g'),
  need('ARG', 4.3, 'g'),
  need('HIS', 2.8, 'g'),
  need('ILE', 6.2, 'g'),
  need('LEU', 10.7, 'g'),
  need('LYS', 9.2, 'g'),
  need('MET', 9.8, 'g', 'cystine may stand for a half of it, which is not credited here: stricter'),
  need('PHE', 10.2, 'g', 'tyrosine may stand for a half of it, which is not credited here: stricter'),
  need('THR', 6.2, 'g'),
  need('TRP', 2.0, 'g'),
  need('VAL', 7.4, 'g'),
  need('CA', 5.0, 'g'),
  need('P', 3.0, 'g'),
  need('MG', 0.5, 'g'),
  need('K', 3.6, 'g'),
  need('NA', 0.5, 'g'),
  need('CU', 5, 'mg'),
  need('FE', 35, 'mg'),
  need('MN', 10, 'mg'),
  need('ZN', 12, 'mg'),
  need('ID', 150, 'ug'),
  need('SE', 150, 'ug'),
  need('VITA_RAE', 0.7, 'mg', 'stated as retinol, compared with retinol activity'),
  need('VITD', 0.025, 'mg'),
  need('TOCPHA', 18, 'mg', 'stated as RRR-alpha-tocopherol'),
  need('VITK1', 1, 'mg', 'stated as phylloquinone'),
  need('BIOT', 0.2, 'mg'),
  need('CHOLN', 750, 'mg'),
  need('FOL', 1, 'mg', FOLIC_ACID),
  need('NIA', 15, 'mg'),
  need('PANTAC', 10, 'mg'),
  need('RIBF', 3, 'mg'),
  need('THIA', 4, 'mg'),
  need('VITB6A', 6, 'mg'),
  need('VITB12', 50, 'ug'),
];
