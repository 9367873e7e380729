/**
 * The target profiles that come with Pouchful. Each bound says where it comes from; a keeper's own profiles
 * stand beside these and have the same shape.
 */
import type { Tag } from '../nutrition/nutrients.ts';
import { NRC_HAMSTER, NRC_HAMSTER_K, NRC_MOUSE, NRC_MOUSE_BREEDING } from './nrc.ts';
import type { PerKilogram } from './per-kilogram.ts';
import type { TargetBound, TargetProfile } from './profile.ts';
import { CALCIUM_TO_PHOSPHORUS, MOST_RETINOL, MOST_SELENIUM, MOST_VITAMIN_D } from './upper-limits.ts';

const COMMON_PRACTICE = 'common practice, no source';
const PRACTICE = 'Protein 17-19 %, fat 4-7 %, fibre 6-15 % of the whole ration as fed.';

/** Range of common practice for an adult hamster's whole ration, as fed, fibre read as one measure or the other. */
function adultHamster(fibre: 'FIBTG' | 'FIBC'): TargetBound[] {
  const within = (nutrient: Tag, min: number, max: number): TargetBound => {
    return { nutrient, min, max, basis: 'as fed', source: COMMON_PRACTICE };
  };
  return [within('PROCNT', 17, 19), within('FAT', 4, 7), within(fibre, 6, 15)];
}

/** Dry matter of the diets for which the NRC states its needs: 10 % moisture. */
const NRC_DRY_PART = 0.9;
const NRC_1995 = 'NRC 1995, Nutrient Requirements of Laboratory Animals, 4th rev. ed., doi 10.17226/4758';
const NRC_1995_MOUSE = `${NRC_1995}, table 3-3 (mouse)`;
const NRC_1978 =
  'NRC 1978, Nutrient Requirements of Laboratory Animals, 3rd rev. ed. (hamster), from memory, confirm before relying on it';
const NRC_1995_HAMSTER = `${NRC_1995}, chapter 5 (hamster), read in a Dutch rendering`;

/** Rounds to 6 significant digits, so that a bound reads as a figure and not as a division. */
const rounded = (value: number): number => Number(value.toPrecision(6));

function leastAmounts(needs: readonly PerKilogram[], citation: string): TargetBound[] {
  return needs.map(({ nutrient, perKg, unit, inTagUnitPer100g, note }) => ({
    nutrient,
    min: rounded(inTagUnitPer100g / NRC_DRY_PART),
    basis: 'DM',
    source: `${citation}: ${perKg} ${unit} per kg diet at 10 % moisture, divided by 0.9 to dry matter${note ? `; ${note}` : ''}`,
  }));
}

/** Energy of the diets for which the figures for mice hold: 3.8 to 4.1 kcal ME per g at 10 % moisture. */
const MOUSE_ENERGY: TargetBound = {
  nutrient: 'ENERC_KCAL',
  min: rounded(380 / NRC_DRY_PART),
  max: rounded(410 / NRC_DRY_PART),
  basis: 'DM',
  source: `${NRC_1995_MOUSE}: 3.8 to 4.1 kcal ME per g at 10 % moisture, divided by 0.9 to dry matter; in a diet richer or poorer in energy the other figures would be others`,
};

/** Bounds with upper limits: one on a nutrient bounded on the same basis closes that bound, any other stands last. */
function limited(bounds: readonly TargetBound[], limits: readonly TargetBound[]): TargetBound[] {
  const same = (a: TargetBound, b: TargetBound) =>
    a.nutrient !== undefined && a.nutrient === b.nutrient && a.basis === b.basis;
  const closed = bounds.map((bound) => {
    const limit = limits.find((l) => same(l, bound));
    return limit ? { ...bound, max: limit.max, source: `${bound.source}. At most: ${limit.source}` } : bound;
  });
  return [...closed, ...limits.filter((l) => !bounds.some((b) => same(l, b)))];
}

const mouse = (needs: readonly PerKilogram[]): TargetBound[] =>
  limited(
    [...leastAmounts(needs, NRC_1995_MOUSE), MOUSE_ENERGY],
    [MOST_SELENIUM, MOST_VITAMIN_D, CALCIUM_TO_PHOSPHORUS],
  );

const NO_FIGURES_FOR = 'Most calcium and most sugar: no figures.';

/** Every profile that comes with Pouchful, the default first. */
export const PROFILES: readonly TargetProfile[] = [
  {
    id: 'hamster-adult-crude',
    name: 'Adult hamster',
    species: 'hamster',
    lifeStage: 'adult',
    fibre: 'FIBC',
    about: `${PRACTICE} Fibre is read as crude fibre, the measure that pet food labels, keepers and veterinary texts mean; food tables rarely give it, so much of it is estimated from dietary fibre.`,
    bounds: adultHamster('FIBC'),
  },
  {
    id: 'hamster-adult',
    name: 'Adult hamster, dietary fibre',
    species: 'hamster',
    lifeStage: 'adult',
    fibre: 'FIBTG',
    about: `${PRACTICE} Fibre is read as total dietary fibre, which food tables give; a label prints crude fibre, which is never more and often less than half of it.`,
    bounds: adultHamster('FIBTG'),
  },
  {
    id: 'hamster-adult-limits',
    name: 'Adult hamster, with limits',
    species: 'hamster',
    lifeStage: 'adult',
    fibre: 'FIBC',
    about: `${PRACTICE} Fibre is crude fibre. Calcium is bound to phosphorus, and retinol, vitamin D and selenium have a most. ${NO_FIGURES_FOR}`,
    bounds: limited(adultHamster('FIBC'), [
      CALCIUM_TO_PHOSPHORUS,
      MOST_RETINOL,
      MOST_VITAMIN_D,
      MOST_SELENIUM,
    ]),
  },
  {
    id: 'hamster-nrc',
    name: 'Hamster, NRC needs',
    species: 'hamster',
    lifeStage: 'growth and adult',
    fibre: 'none',
    about: `Least amounts of the National Research Council for laboratory hamsters, written down from memory of the edition of 1978; of linoleic acid and of energy none is known here. ${NO_FIGURES_FOR}`,
    bounds: limited(
      [...leastAmounts(NRC_HAMSTER, NRC_1978), ...leastAmounts([NRC_HAMSTER_K], NRC_1995_HAMSTER)],
      [MOST_SELENIUM, MOST_RETINOL, CALCIUM_TO_PHOSPHORUS],
    ),
  },
  {
    id: 'mouse-nrc',
    name: 'Mouse, NRC needs',
    species: 'mouse',
    lifeStage: 'growth',
    fibre: 'none',
    about: `Least amounts of the National Research Council for growing laboratory mice (1995, table 3-3), for diets of 3.8-4.1 kcal per g. Its chloride and molybdenum are in no food table. ${NO_FIGURES_FOR}`,
    bounds: mouse(NRC_MOUSE),
  },
  {
    id: 'mouse-nrc-breeding',
    name: 'Mouse, NRC needs, pregnant or nursing',
    species: 'mouse',
    lifeStage: 'pregnant or nursing',
    fibre: 'none',
    about: `Least amounts of the National Research Council for laboratory mice (1995, table 3-3), with what its notes ask for pregnant and nursing mice of magnesium, copper, zinc and pantothenic acid. ${NO_FIGURES_FOR}`,
    bounds: mouse(NRC_MOUSE_BREEDING),
  },
];

/** The profile with that id, or undefined. */
export function profile(id: string): TargetProfile | undefined {
  return PROFILES.find((p) => p.id === id);
}
