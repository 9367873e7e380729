/**
 * Nutrients by INFOODS tagname, each with the unit in which an amount per 100 g is written.
 * The list covers every column of the USDA SR28 abbreviated table, crude fibre (FIBC), the amino acids, and the
 * few further ones that target profiles name. Tagnames and units: INFOODS, "Tagnames for food
 * components" (FAO); `VITA_IU` and `VITD_IU` follow INFOODS' `VITA` and `VITD` with the unit told apart.
 *
 * An amino acid is in mg per 100 g, the unit INFOODS gives it (Klensin and others 1989, archive.unu.edu/unupress/
 * unupbooks/80734e: "MET", "THR", "TRP", "TYR", "VAL" in mg; the tags of the others by the same list and by IFCT).
 * USDA writes them in g and marks that with the ending `_G`. `CYS` is cystine, with half-cystine in it.
 */

export type Unit = 'g' | 'mg' | 'ug' | 'kcal' | 'IU';
export type NutrientGroup = 'proximate' | 'carbohydrate' | 'mineral' | 'vitamin' | 'fat' | 'amino acid';

const rows = [
  ['WATER', 'g', 'proximate', 'Moisture'],
  ['ENERC_KCAL', 'kcal', 'proximate', 'Energy'],
  ['PROCNT', 'g', 'proximate', 'Protein'],
  ['FAT', 'g', 'proximate', 'Fat'],
  ['ASH', 'g', 'proximate', 'Ash'],
  ['CHOCDF', 'g', 'carbohydrate', 'Carbohydrate by difference'],
  ['FIBTG', 'g', 'carbohydrate', 'Dietary fibre'],
  ['FIBC', 'g', 'carbohydrate', 'Crude fibre'],
  ['FIBND', 'g', 'carbohydrate', 'Neutral detergent fibre'],
  ['FIBAD', 'g', 'carbohydrate', 'Acid detergent fibre'],
  ['FIBINS', 'g', 'carbohydrate', 'Insoluble fibre'],
  ['FIBSOL', 'g', 'carbohydrate', 'Soluble fibre'],
  ['STARCH', 'g', 'carbohydrate', 'Starch'],
  ['SUGAR', 'g', 'carbohydrate', 'Sugars'],
  ['CA', 'mg', 'mineral', 'Calcium'],
  ['FE', 'mg', 'mineral', 'Iron'],
  ['MG', 'mg', 'mineral', 'Magnesium'],
  ['P', 'mg', 'mineral', 'Phosphorus'],
  ['K', 'mg', 'mineral', 'Potassium'],
  ['NA', 'mg', 'mineral', 'Sodium'],
  ['ZN', 'mg', 'mineral', 'Zinc'],
  ['CU', 'mg', 'mineral', 'Copper'],
  ['MN', 'mg', 'mineral', 'Manganese'],
  ['SE', 'ug', 'mineral', 'Selenium'],
  ['ID', 'ug', 'mineral', 'Iodine'],
  ['VITC', 'mg', 'vitamin', 'Vitamin C'],
  ['THIA', 'mg', 'vitamin', 'Thiamin'],
  ['RIBF', 'mg', 'vitamin', 'Riboflavin'],
  ['NIA', 'mg', 'vitamin', 'Niacin'],
  ['PANTAC', 'mg', 'vitamin', 'Pantothenic acid'],
  ['VITB6A', 'mg', 'vitamin', 'Vitamin B6'],
  ['FOL', 'ug', 'vitamin', 'Folate, total'],
  ['FOLAC', 'ug', 'vitamin', 'Folic acid'],
  ['FOLFD', 'ug', 'vitamin', 'Folate, food'],
  ['FOLDFE', 'ug', 'vitamin', 'Folate, dietary equivalents'],
  ['CHOLN', 'mg', 'vitamin', 'Choline'],
  ['VITB12', 'ug', 'vitamin', 'Vitamin B12'],
  ['BIOT', 'ug', 'vitamin', 'Biotin'],
  ['VITA_IU', 'IU', 'vitamin', 'Vitamin A (IU)'],
  ['VITA_RAE', 'ug', 'vitamin', 'Vitamin A (retinol activity)'],
  ['RETOL', 'ug', 'vitamin', 'Retinol'],
  ['CARTA', 'ug', 'vitamin', 'Alpha-carotene'],
  ['CARTB', 'ug', 'vitamin', 'Beta-carotene'],
  ['CRYPX', 'ug', 'vitamin', 'Beta-cryptoxanthin'],
  ['LYCPN', 'ug', 'vitamin', 'Lycopene'],
  ['LUT+ZEA', 'ug', 'vitamin', 'Lutein and zeaxanthin'],
  ['TOCPHA', 'mg', 'vitamin', 'Vitamin E'],
  ['VITD', 'ug', 'vitamin', 'Vitamin D'],
  ['VITD_IU', 'IU', 'vitamin', 'Vitamin D (IU)'],
  ['VITK1', 'ug', 'vitamin', 'Vitamin K1'],
  ['FASAT', 'g', 'fat', 'Saturated fat'],
  ['FAMS', 'g', 'fat', 'Monounsaturated fat'],
  ['FAPU', 'g', 'fat', 'Polyunsaturated fat'],
  ['F18D2CN6', 'g', 'fat', 'Linoleic acid'],
  ['F18D3N3', 'g', 'fat', 'Alpha-linolenic acid'],
  ['CHOLE', 'mg', 'fat', 'Cholesterol'],
  ['TRP', 'mg', 'amino acid', 'Tryptophan'],
  ['THR', 'mg', 'amino acid', 'Threonine'],
  ['ILE', 'mg', 'amino acid', 'Isoleucine'],
  ['LEU', 'mg', 'amino acid', 'Leucine'],
  ['LYS', 'mg', 'amino acid', 'Lysine'],
  ['MET', 'mg', 'amino acid', 'Methionine'],
  ['CYS', 'mg', 'amino acid', 'Cystine'],
  ['PHE', 'mg', 'amino acid', 'Phenylalanine'],
  ['TYR', 'mg', 'amino acid', 'Tyrosine'],
  ['VAL', 'mg', 'amino acid', 'Valine'],
  ['ARG', 'mg', 'amino acid', 'Arginine'],
  ['HIS', 'mg', 'amino acid', 'Histidine'],
  ['ALA', 'mg', 'amino acid', 'Alanine'],
  ['ASP', 'mg', 'amino acid', 'Aspartic acid'],
  ['GLU', 'mg', 'amino acid', 'Glutamic acid'],
  ['GLY', 'mg', 'amino acid', 'Glycine'],
  ['PRO', 'mg', 'amino acid', 'Proline'],
  ['SER', 'mg', 'amino acid', 'Serine'],
] as const;

/** An INFOODS tagname known to Pouchful. */
export type Tag = (typeof rows)[number][0];

export interface Nutrient {
  readonly tag: Tag;
  /** Unit of an amount per 100 g. */
  readonly unit: Unit;
  readonly group: NutrientGroup;
  readonly name: string;
}

/** Every nutrient, in reading order. */
export const NUTRIENTS: readonly Nutrient[] = rows.map(([tag, unit, group, name]) => ({
  tag,
  unit,
  group,
  name,
}));

const byTag = new Map<string, Nutrient>(NUTRIENTS.map((n) => [n.tag, n]));

/** Whether `text` is a tagname known here. */
export function isTag(text: string): text is Tag {
  return byTag.has(text);
}

/** The nutrient behind a tagname. */
export function nutrient(tag: Tag): Nutrient {
  return byTag.get(tag)!;
}

/**
 * What rules, targets and mixes count, by name: protein is crude protein there (nitrogen x 6.25), whatever factor the
 * table of a food used.
 */
export function countedName(tag: Tag): string {
  return tag === 'PROCNT' ? 'Crude protein' : nutrient(tag).name;
}

/** The tagname nearest in spelling, for error messages; undefined when none is near. */
export function nearestTag(text: string): Tag | undefined {
  const upper = text.toUpperCase();
  return NUTRIENTS.find(
    (n) =>
      n.tag === upper ||
      n.name.toUpperCase() === upper ||
      (upper.length > 2 && n.tag.startsWith(upper.slice(0, 3))),
  )?.tag;
}

/** Grams in one unit; undefined for units that are no mass (kcal, IU). */
export function gramsPer(unit: Unit): number | undefined {
  return { g: 1, mg: 1e-3, ug: 1e-6, kcal: undefined, IU: undefined }[unit];
}

/** A unit as it is written for people. */
export function unitWord(unit: Unit): string {
  return unit === 'ug' ? 'µg' : unit;
}
