/**
 * The target profiles that come with Pouchful. Each bound says where it comes from; a keeper's own profiles
 * stand beside these and have the same shape.
 */
import type { Tag } from '../nutrition/nutrients.ts';
import { type Words, words } from '../words/words.ts';
import {
  NRC_GERBIL_MAGNESIUM,
  NRC_HAMSTER,
  NRC_HAMSTER_K,
  NRC_MOUSE,
  NRC_MOUSE_BREEDING,
  NRC_RAT,
  NRC_RAT_FAT,
  NRC_RAT_THIAMIN,
} from './nrc.ts';
import { type PerKilogram, perKilogram } from './per-kilogram.ts';
import type { TargetBound, TargetProfile } from './profile.ts';
import { CALCIUM_TO_PHOSPHORUS, MOST_RETINOL, MOST_SELENIUM, MOST_VITAMIN_D } from './upper-limits.ts';

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

/** Ranges of another animal, each saying so. */
const borrowed = (bounds: readonly TargetBound[], from: string, to: string): TargetBound[] =>
  bounds.map((b) => ({ ...b, source: `${b.source}: ${from}'s, taken for want of a figure for ${to}s` }));

const NRC_1995_GERBIL = `${NRC_1995}, chapter 6 (gerbil), as quoted on another page`;
const NRC_1995_RAT = `${NRC_1995}, chapter 2 (rat), as quoted on another page`;
const NRC_1978_RAT =
  'NRC 1978, Nutrient Requirements of Laboratory Animals, 3rd rev. ed. (rat), as printed in a newsletter (Robbins 2007)';
const NRC_1995_RAT_MEMORY = `${NRC_1995}, table 2-2 (rat), from memory, confirm before relying on it`;
const GOETTSCH =
  'least protein on which rats grew, bred and nursed well over generations, of casein (Goettsch 1960, J. Nutr. 70:307-312, abstract)';

const RAT: readonly TargetBound[] = [
  ...leastAmounts(
    [perKilogram('PROCNT', 163, 'g', 'its moisture is not stated and taken as 10 %')],
    GOETTSCH,
  ),
  ...leastAmounts(NRC_RAT_FAT, NRC_1978_RAT),
  ...leastAmounts([NRC_RAT_THIAMIN], NRC_1995_RAT),
];

/** A profile whose name and description are said in the language spoken. */
function published(
  id: keyof Words['targets']['profiles'],
  profile: Omit<TargetProfile, 'id' | 'name' | 'about'>,
): TargetProfile {
  return {
    id,
    get name() {
      return words().targets.profiles[id].name;
    },
    get about() {
      return words().targets.profiles[id].about;
    },
    ...profile,
  };
}

/** Every profile that comes with Pouchful, the default first. */
export const PROFILES: readonly TargetProfile[] = [
  published('hamster-adult-crude', {
    species: 'hamster',
    lifeStage: 'adult',
    fibre: 'FIBC',
    bounds: adultHamster('FIBC'),
  }),
  published('hamster-adult', {
    species: 'hamster',
    lifeStage: 'adult',
    fibre: 'FIBTG',
    bounds: adultHamster('FIBTG'),
  }),
  published('hamster-adult-limits', {
    species: 'hamster',
    lifeStage: 'adult',
    fibre: 'FIBC',
    bounds: limited(adultHamster('FIBC'), [
      CALCIUM_TO_PHOSPHORUS,
      MOST_RETINOL,
      MOST_VITAMIN_D,
      MOST_SELENIUM,
    ]),
  }),
  published('hamster-nrc', {
    species: 'hamster',
    lifeStage: 'growth and adult',
    fibre: 'none',
    bounds: limited(
      [...leastAmounts(NRC_HAMSTER, NRC_1978), ...leastAmounts([NRC_HAMSTER_K], NRC_1995_HAMSTER)],
      [MOST_SELENIUM, MOST_RETINOL, CALCIUM_TO_PHOSPHORUS],
    ),
  }),
  published('mouse-nrc', {
    species: 'mouse',
    lifeStage: 'growth',
    fibre: 'none',
    bounds: mouse(NRC_MOUSE),
  }),
  published('mouse-nrc-breeding', {
    species: 'mouse',
    lifeStage: 'pregnant or nursing',
    fibre: 'none',
    bounds: mouse(NRC_MOUSE_BREEDING),
  }),
  published('gerbil', {
    species: 'gerbil',
    lifeStage: 'adult',
    fibre: 'FIBC',
    bounds: limited(
      [
        ...borrowed(adultHamster('FIBC'), 'hamster', 'gerbil'),
        ...leastAmounts([NRC_GERBIL_MAGNESIUM], NRC_1995_GERBIL),
      ],
      [MOST_SELENIUM, MOST_VITAMIN_D, CALCIUM_TO_PHOSPHORUS],
    ),
  }),
  published('rat', {
    species: 'rat',
    lifeStage: 'growth and adult',
    fibre: 'none',
    bounds: limited(RAT, [MOST_SELENIUM, MOST_VITAMIN_D, CALCIUM_TO_PHOSPHORUS]),
  }),
  published('rat-nrc', {
    species: 'rat',
    lifeStage: 'growth',
    fibre: 'none',
    bounds: limited(leastAmounts(NRC_RAT, NRC_1995_RAT_MEMORY), [
      MOST_SELENIUM,
      MOST_VITAMIN_D,
      CALCIUM_TO_PHOSPHORUS,
    ]),
  }),
];

/** The profile with that id, or undefined. */
export function profile(id: string): TargetProfile | undefined {
  return PROFILES.find((p) => p.id === id);
}
