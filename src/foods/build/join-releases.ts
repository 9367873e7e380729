/**
 * The two releases of the USDA table made one, food by food, by NDB number. Release 28 is the newer and has the say;
 * release 26 adds what the abbreviated table of release 28 has no column for.
 */
import type { Tag } from '../../nutrition/nutrients.ts';
import type { Composition } from '../food.ts';
import type { Sr26Amount, Sr26Food } from './sr26.ts';
import type { TableRow } from './table.ts';

/** A part may differ by this between the releases before the figures count as those of another sample. */
const SAME_WITHIN = 0.03;

/** Parts are printed in g to two decimals: two that differ by the last digit are the same. */
const LAST_DIGIT = 0.011;

/**
 * What release 28 does not print, and the part of the food that each figure is a part of. Amino acids come with the
 * protein they were measured in, fatty acids with the fat. Where that part differs between the releases by more than
 * 3 %, the newer figure is of other samples: the old figures are then left out and not rescaled, since a mean of other
 * samples says nothing of how its parts would have moved.
 */
const FILLED: readonly (readonly [part: Tag, tags: readonly Tag[]])[] = [
  [
    'PROCNT',
    [
      'TRP',
      'THR',
      'ILE',
      'LEU',
      'LYS',
      'MET',
      'CYS',
      'PHE',
      'TYR',
      'VAL',
      'ARG',
      'HIS',
      'ALA',
      'ASP',
      'GLU',
      'GLY',
      'PRO',
      'SER',
    ],
  ],
  ['FAT', ['F18D2CN6', 'F18D3N3']],
  ['CHOCDF', ['STARCH']],
];

/**
 * A row of release 28 with what release 26 knows besides.
 *
 * - Figures that release 28 has a column for are its own: where it prints none, it has withdrawn what release 26 had.
 * - The nitrogen factor is that of release 26. A factor belongs to a kind of food and not to a sample, so it is kept
 *   where the protein moved.
 * - The standard deviation of an amount is taken where both releases print the same amount, within 3 %: then it is
 *   of the samples that the figure is of.
 * - The name is the full description, where the abbreviated table prints a shortened one.
 * - Being in release 26, as this project keeps it, makes it a plain food that advice may bring in.
 */
export function joined(row: TableRow, older: Sr26Food): TableRow {
  const composition: Composition = { ...row.composition };
  for (const [part, tags] of FILLED) {
    if (!sameAmount(row.composition[part], older.amounts.get(part)?.value, LAST_DIGIT)) continue;
    for (const tag of tags) {
      const amount = older.amounts.get(tag);
      if (amount) composition[tag] = amount.value;
    }
  }
  return {
    ...row,
    tableName: older.name,
    tableGroup: older.group,
    composition,
    suggestible: true,
    sd: sdsOf(composition, older.amounts),
    ...(older.proteinFactor !== undefined && { proteinFactor: older.proteinFactor }),
    ...(older.scientific !== undefined && { scientific: older.scientific }),
    ...(older.refuseDescription !== undefined && { refuseDescription: older.refuseDescription }),
  };
}

function sdsOf(composition: Composition, amounts: ReadonlyMap<Tag, Sr26Amount>): Composition {
  const sd: Composition = {};
  for (const [tag, amount] of amounts) {
    const value = composition[tag];
    // An amount of 0 with a spread is a limit of detection; the mean of the samples was not 0.
    if (amount.sd !== undefined && value !== undefined && value > 0 && sameAmount(value, amount.value))
      sd[tag] = amount.sd;
  }
  return sd;
}

function sameAmount(newer: number | undefined, older: number | undefined, slack = 0): boolean {
  if (newer === undefined || older === undefined) return false;
  return Math.abs(newer - older) <= Math.max(slack, SAME_WITHIN * newer);
}
