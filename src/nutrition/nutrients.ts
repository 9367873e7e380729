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
import { words } from '../words/words.ts';

export type Unit = 'g' | 'mg' | 'ug' | 'kcal' | 'IU';
export type NutrientGroup = 'proximate' | 'carbohydrate' | 'mineral' | 'vitamin' | 'fat' | 'amino acid';

const rows = [
  ['WATER', 'g', 'proximate'],
  ['ENERC_KCAL', 'kcal', 'proximate'],
  ['PROCNT', 'g', 'proximate'],
  ['FAT', 'g', 'proximate'],
  ['ASH', 'g', 'proximate'],
  ['CHOCDF', 'g', 'carbohydrate'],
  ['FIBTG', 'g', 'carbohydrate'],
  ['FIBC', 'g', 'carbohydrate'],
  ['FIBND', 'g', 'carbohydrate'],
  ['FIBAD', 'g', 'carbohydrate'],
  ['FIBINS', 'g', 'carbohydrate'],
  ['FIBSOL', 'g', 'carbohydrate'],
  ['STARCH', 'g', 'carbohydrate'],
  ['SUGAR', 'g', 'carbohydrate'],
  ['CA', 'mg', 'mineral'],
  ['FE', 'mg', 'mineral'],
  ['MG', 'mg', 'mineral'],
  ['P', 'mg', 'mineral'],
  ['K', 'mg', 'mineral'],
  ['NA', 'mg', 'mineral'],
  ['ZN', 'mg', 'mineral'],
  ['CU', 'mg', 'mineral'],
  ['MN', 'mg', 'mineral'],
  ['SE', 'ug', 'mineral'],
  ['ID', 'ug', 'mineral'],
  ['VITC', 'mg', 'vitamin'],
  ['THIA', 'mg', 'vitamin'],
  ['RIBF', 'mg', 'vitamin'],
  ['NIA', 'mg', 'vitamin'],
  ['PANTAC', 'mg', 'vitamin'],
  ['VITB6A', 'mg', 'vitamin'],
  ['FOL', 'ug', 'vitamin'],
  ['FOLAC', 'ug', 'vitamin'],
  ['FOLFD', 'ug', 'vitamin'],
  ['FOLDFE', 'ug', 'vitamin'],
  ['CHOLN', 'mg', 'vitamin'],
  ['VITB12', 'ug', 'vitamin'],
  ['BIOT', 'ug', 'vitamin'],
  ['VITA_IU', 'IU', 'vitamin'],
  ['VITA_RAE', 'ug', 'vitamin'],
  ['RETOL', 'ug', 'vitamin'],
  ['CARTA', 'ug', 'vitamin'],
  ['CARTB', 'ug', 'vitamin'],
  ['CRYPX', 'ug', 'vitamin'],
  ['LYCPN', 'ug', 'vitamin'],
  ['LUT+ZEA', 'ug', 'vitamin'],
  ['TOCPHA', 'mg', 'vitamin'],
  ['VITD', 'ug', 'vitamin'],
  ['VITD_IU', 'IU', 'vitamin'],
  ['VITK1', 'ug', 'vitamin'],
  ['FASAT', 'g', 'fat'],
  ['FAMS', 'g', 'fat'],
  ['FAPU', 'g', 'fat'],
  ['F18D2CN6', 'g', 'fat'],
  ['F18D3N3', 'g', 'fat'],
  ['CHOLE', 'mg', 'fat'],
  ['TRP', 'mg', 'amino acid'],
  ['THR', 'mg', 'amino acid'],
  ['ILE', 'mg', 'amino acid'],
  ['LEU', 'mg', 'amino acid'],
  ['LYS', 'mg', 'amino acid'],
  ['MET', 'mg', 'amino acid'],
  ['CYS', 'mg', 'amino acid'],
  ['PHE', 'mg', 'amino acid'],
  ['TYR', 'mg', 'amino acid'],
  ['VAL', 'mg', 'amino acid'],
  ['ARG', 'mg', 'amino acid'],
  ['HIS', 'mg', 'amino acid'],
  ['ALA', 'mg', 'amino acid'],
  ['ASP', 'mg', 'amino acid'],
  ['GLU', 'mg', 'amino acid'],
  ['GLY', 'mg', 'amino acid'],
  ['PRO', 'mg', 'amino acid'],
  ['SER', 'mg', 'amino acid'],
] as const;

/** An INFOODS tagname known to Pouchful. */
export type Tag = (typeof rows)[number][0];

export interface Nutrient {
  readonly tag: Tag;
  /** Unit of an amount per 100 g. */
  readonly unit: Unit;
  readonly group: NutrientGroup;
  /** As it stands in a row, in the language spoken. */
  readonly name: string;
}

/** Every nutrient, in reading order. */
export const NUTRIENTS: readonly Nutrient[] = rows.map(([tag, unit, group]) => ({
  tag,
  unit,
  group,
  get name() {
    return capital(nutrientWord(tag));
  },
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

/** The name of a nutrient as it stands within a sentence, in the language spoken. */
export function nutrientWord(tag: Tag): string {
  return words().nutrition.names[tag];
}

/**
 * What rules, targets and mixes count, by name within a sentence: protein is crude protein there (nitrogen x 6.25),
 * whatever factor the table of a food used.
 */
export function countedWord(tag: Tag): string {
  return tag === 'PROCNT' ? words().nutrition.counted : nutrientWord(tag);
}

/** The same at the beginning of a row. */
export function countedName(tag: Tag): string {
  return capital(countedWord(tag));
}

function capital(text: string): string {
  return text.charAt(0).toLocaleUpperCase() + text.slice(1);
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
  return words().nutrition.units[unit];
}
