/**
 * The target profiles that come with Pouchful. Each bound says where it comes from; a keeper's own profiles
 * stand beside these and have the same shape.
 */

import type { Tag } from '../nutrition/nutrients.ts';
import { NRC_HAMSTER, NRC_MOUSE, type PerKilogram } from './nrc.ts';
import type { TargetBound, TargetProfile } from './profile.ts';

const COMMON_PRACTICE = 'common practice, no source';

/** Range of common practice for an adult hamster's whole ration, as fed, fibre read as one measure or the other. */
function adultHamster(fibre: 'FIBTG' | 'FIBC'): TargetBound[] {
  const within = (nutrient: Tag, min: number, max: number): TargetBound => {
    return { nutrient, min, max, basis: 'as fed', source: COMMON_PRACTICE };
  };
  return [within('PROCNT', 17, 19), within('FAT', 4, 7), within(fibre, 6, 15)];
}

/** Dry matter of the diets for which the NRC states its needs: 10 % moisture. */
const NRC_DRY_PART = 0.9;

/** Rounds to 6 significant digits, so that a bound reads as a figure and not as a division. */
const rounded = (value: number): number => Number(value.toPrecision(6));

function lowerBounds(needs: readonly PerKilogram[], citation: string): TargetBound[] {
  return needs.map(({ nutrient, perKg, unit, inTagUnitPer100g, note }) => ({
    nutrient,
    min: rounded(inTagUnitPer100g / NRC_DRY_PART),
    basis: 'DM',
    source: `${citation}: ${perKg} ${unit} per kg diet at 10 % moisture, divided by 0.9 to dry matter${note ? `; ${note}` : ''}`,
  }));
}

/** Every profile that comes with Pouchful, the default first. */
export const PROFILES: readonly TargetProfile[] = [
  {
    id: 'hamster-adult',
    name: 'Adult hamster',
    species: 'hamster',
    lifeStage: 'adult',
    fibre: 'FIBTG',
    about:
      'Protein 17-19 %, fat 4-7 %, fibre 6-15 % of the whole ration as fed. Fibre is read as dietary fibre, which food tables give; a label prints crude fibre, which is never more.',
    bounds: adultHamster('FIBTG'),
  },
  {
    id: 'hamster-adult-crude',
    name: 'Adult hamster, fibre as on labels',
    species: 'hamster',
    lifeStage: 'adult',
    fibre: 'FIBC',
    about:
      'Protein 17-19 %, fat 4-7 %, fibre 6-15 % of the whole ration as fed. Fibre is read strictly as crude fibre, the measure on pet food labels; food tables rarely give it, so more of it is estimated.',
    bounds: adultHamster('FIBC'),
  },
  {
    id: 'hamster-nrc',
    name: 'Hamster, NRC needs',
    species: 'hamster',
    lifeStage: 'growth and adult',
    fibre: 'none',
    about:
      'Least amounts of the National Research Council for laboratory hamsters, written down from memory of an earlier edition. Confirm them before relying on them.',
    bounds: lowerBounds(
      NRC_HAMSTER,
      'NRC, Nutrient Requirements of Laboratory Animals, earlier edition (hamster), from memory, confirm before relying on it',
    ),
  },
  {
    id: 'mouse-nrc',
    name: 'Mouse, NRC needs',
    species: 'mouse',
    lifeStage: 'growth',
    fibre: 'none',
    about:
      'Least amounts of the National Research Council for growing laboratory mice (1995, table 3-3), for diets of 3.8-4.1 kcal per g. A second view where figures for hamsters are missing.',
    bounds: lowerBounds(
      NRC_MOUSE,
      'NRC 1995, Nutrient Requirements of Laboratory Animals, 4th rev. ed., doi 10.17226/4758, table 3-3 (mouse)',
    ),
  },
];

/** The profile with that id, or undefined. */
export function profile(id: string): TargetProfile | undefined {
  return PROFILES.find((p) => p.id === id);
}
