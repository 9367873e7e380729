/** Kinds of nutrient that vary alike, for a nutrient whose own variation no table prints. */
import { nutrient, type Tag } from '../nutrition/nutrients.ts';

export type VariationClass =
  | 'moisture'
  | 'macronutrient'
  | 'fibre'
  | 'major mineral'
  | 'trace mineral'
  | 'water-soluble vitamin'
  | 'fat-soluble vitamin'
  | 'fatty acid';

const FIBRE: readonly Tag[] = ['FIBTG', 'FIBC', 'FIBND', 'FIBAD', 'FIBINS', 'FIBSOL'];
const MAJOR: readonly Tag[] = ['CA', 'MG', 'P', 'K', 'NA'];
const FAT_SOLUBLE: readonly Tag[] = [
  'VITA_IU',
  'VITA_RAE',
  'RETOL',
  'CARTA',
  'CARTB',
  'CRYPX',
  'LYCPN',
  'LUT+ZEA',
  'TOCPHA',
  'VITD',
  'VITD_IU',
  'VITK1',
];

/** The kind a nutrient belongs to. */
export function variationClass(tag: Tag): VariationClass {
  if (tag === 'WATER') return 'moisture';
  if (FIBRE.includes(tag)) return 'fibre';
  if (FAT_SOLUBLE.includes(tag)) return 'fat-soluble vitamin';
  switch (nutrient(tag).group) {
    case 'mineral':
      return MAJOR.includes(tag) ? 'major mineral' : 'trace mineral';
    case 'vitamin':
      return 'water-soluble vitamin';
    case 'fat':
      return 'fatty acid';
    default:
      return 'macronutrient';
  }
}

/**
 * What a coefficient of variation is a part of: the amount itself, but for moisture the geometric mean of
 * water and dry matter, since the sd of one is the sd of the other.
 */
export function variationBase(tag: Tag, value: number): number {
  return tag === 'WATER' ? Math.sqrt(Math.max(0, value * (100 - value))) : value;
}
