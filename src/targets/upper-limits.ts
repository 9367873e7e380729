/**
 * The most that is known to be safe or allowed of single nutrients. For calcium and sugars no figure for hamsters or
 * mice was found, so none is set; {@link CALCIUM_TO_PHOSPHORUS} bounds calcium against phosphorus.
 */
import { iuOf } from '../nutrition/international-units.ts';
import type { TargetBound } from './profile.ts';

/** Dry matter of the feed for which the law states its limits: 12 % moisture. */
const FEED_DRY_PART = 0.88;

/** Least and most calcium for one part of phosphorus. */
export const CALCIUM_TO_PHOSPHORUS: TargetBound = {
  ratio: ['CA', 'P'],
  min: 1,
  max: 2,
  basis: 'as fed',
  source: 'common practice, no source',
};

/** 0.5 mg of selenium in a kg of complete feed, of whatever kind of animal. */
export const MOST_SELENIUM: TargetBound = {
  nutrient: 'SE',
  max: rounded(50 / FEED_DRY_PART),
  basis: 'DM',
  source:
    'most allowed in complete feed of all species: 0.5 mg per kg in all at 12 % moisture, divided by 0.88 to dry matter (Commission Implementing Regulation (EU) 2020/2117, annex)',
};

/** 2,000 IU of vitamin D3 in a kg of complete feed. */
export const MOST_VITAMIN_D: TargetBound = {
  nutrient: 'VITD',
  max: rounded(5 / FEED_DRY_PART),
  basis: 'DM',
  source:
    'most allowed in complete feed of pigs: 2000 IU of vitamin D3 per kg, 0.025 ug each, at 12 % moisture, divided by 0.88 to dry matter (Commission Implementing Regulation (EU) 2017/1492, annex); taken for want of a figure for the species',
};

const MOST_RETINOL_UG = 1200;

/** 40,000 IU of vitamin A as retinol in a kg of diet; carotenes of plants do not count. */
export const MOST_RETINOL: TargetBound = {
  nutrient: 'RETOL',
  max: MOST_RETINOL_UG,
  basis: 'as fed',
  source: `golden hamster: testes stayed sound at 4000 but less than ${iuOf(MOST_RETINOL_UG * 10, 'RETOL')} IU of vitamin A per kg diet, 0.3 ug of retinol each (Shaw 1979, thesis, University of Surrey, abstract)`,
};

function rounded(value: number): number {
  return Number(value.toPrecision(6));
}
