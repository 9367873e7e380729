/**
 * An invented household for the first run: one animal, one pellet, one mix that is not yet fit to feed.
 * The foods and their figures are real (reference tables); the animal, the label and the shares are made up.
 * At even shares only fat is out of range, so there is one thing to mend.
 */
import type { Composition } from '../foods/food.ts';
import { labelSpread } from '../foods/variation.ts';
import type { Ingredient, Problem, Rule } from '../formulation/problem/problem.ts';
import { rulesFrom } from '../formulation/problem/rules-from-profile.ts';
import type { Tag } from '../nutrition/nutrients.ts';
import { PROFILES } from '../targets/profiles.ts';
import type { Animal, Household, OwnFood } from './model.ts';
import { EXAMPLE } from './reckon/example.ts';
import { MARGIN } from './reckon/mix/mix-edits.ts';

/** The profile that the mix and the animal keep to. */
const DEFAULT_PROFILE = 'hamster-adult-crude';

const SHARE = 5;

const FOODS: readonly (readonly [ref: string, name: string, group: string])[] = [
  ['sr28:08120', 'Rolled oats', 'seed'],
  ['sr28:20031', 'Millet', 'seed'],
  ['sr28:20014', 'Maize', 'seed'],
  ['sr28:20036', 'Brown rice', 'seed'],
  ['sr28:12036', 'Sunflower seed, shelled', 'seed'],
  ['sr28:12220', 'Linseed', 'seed'],
  ['sr28:12023', 'Sesame seed', 'seed'],
  ['pub:hemp-seed-whole', 'Hemp seed, whole', 'seed'],
  ['sr28:11683', 'Carrot, dried', 'vegetable'],
  ['sr28:11931', 'Red sweet pepper, freeze-dried', 'vegetable'],
  ['sr28:11634', 'Green sweet pepper, freeze-dried', 'vegetable'],
  ['pub:nettle-leaf-dried', 'Nettle leaf, dried', 'vegetable'],
  ['sr28:02017', 'Dill, dried', 'vegetable'],
  ['sr28:02066', 'Spearmint, dried', 'vegetable'],
  ['sr28:16069', 'Lentils, raw dry', 'legume'],
  ['sr28:16085', 'Split peas, raw dry', 'legume'],
  ['sr28:16056', 'Chickpeas, raw dry', 'legume'],
  ['sr28:16055', 'Carob flour', 'legume'],
  ['pub:mealworm-dried', 'Dried mealworm', 'animal'],
  ['sr28:01133', 'Egg, dried', 'animal'],
];

const SPLIT_SOURCE = 'starting split, common practice, no source';

const SPLIT: readonly Rule[] = [
  { group: 'seed', min: 30, max: 50, on: 'mix', source: SPLIT_SOURCE },
  { group: 'vegetable', min: 20, max: 40, on: 'mix', source: SPLIT_SOURCE },
  { group: 'legume', min: 10, max: 30, on: 'mix', source: SPLIT_SOURCE },
  { group: 'animal', min: 5, max: 15, on: 'mix', source: SPLIT_SOURCE },
];

const LABEL: Composition = { PROCNT: 17, FAT: 4, FIBC: 9, WATER: 10, ASH: 6.5, CA: 900, P: 650 };

const PELLET: OwnFood = {
  id: EXAMPLE.food,
  name: 'Invented pellet',
  kind: 'pellet',
  composition: LABEL,
  // A label's figures spread as far as the law lets them.
  sd: Object.fromEntries(
    (Object.entries(LABEL) as [Tag, number][]).flatMap(([tag, value]) => {
      const spread = labelSpread(value, tag, 'feed');
      return spread ? [[tag, spread.sd]] : [];
    }),
  ),
  source: 'invented label: no such pellet is sold',
  invented: true,
};

const ANIMAL: Animal = {
  id: EXAMPLE.animal,
  name: 'Bramble',
  species: 'golden hamster',
  lifeStage: 'adult',
  profileId: DEFAULT_PROFILE,
  refuses: [],
  // Veterinary handouts commonly say that an adult golden hamster eats some 10-12 g of dry food a day.
  dailyGrams: 12,
  invented: true,
};

/** The problem of the invented mix, every food named; what `pouchful demo` prints. */
export function demoProblem(): Problem {
  const profile = PROFILES.find((p) => p.id === DEFAULT_PROFILE);
  if (!profile) throw new Error(`no profile ${DEFAULT_PROFILE}`);
  return {
    foods: FOODS.map(
      ([ref, name, group]): Ingredient => ({ id: idOf(name), name, ref, group, max: 15, want: SHARE }),
    ),
    rules: [...rulesFrom(profile), ...SPLIT],
    beside: [
      {
        id: PELLET.id,
        name: PELLET.name,
        share_of_ration: 50,
        composition: PELLET.composition,
        sd: PELLET.sd,
      },
    ],
    objective: 'nearest',
    confidence: 0,
    margin: MARGIN,
    variation: 'published',
    cautions: 'apply',
    species: ANIMAL.species,
    batch_grams: 300,
    scale_step_grams: 1,
  };
}

/** The invented household. @param updatedAt ISO 8601 time for the mix's last save */
export function demoHousehold(updatedAt = '2026-01-01T00:00:00.000Z'): Household {
  const problem = demoProblem();
  return {
    foods: [PELLET],
    profiles: [],
    animals: [ANIMAL],
    mixes: [
      {
        id: EXAMPLE.mix,
        name: 'First mix',
        animalIds: [ANIMAL.id],
        profileId: DEFAULT_PROFILE,
        problem,
        shares: Object.fromEntries(problem.foods.map((f) => [f.id, SHARE])),
        held: [],
        updatedAt,
      },
    ],
    versions: [],
    lots: [],
    offers: [],
    dryingRuns: [],
    batches: [],
    kitchen: [],
    weighings: [],
    feedings: [],
    trials: [],
    notes: [],
    photos: [],
    keeper: [],
  };
}

/** "Carrot, dried" to "carrot-dried": an id that reads plainly in a JSON pointer. */
function idOf(name: string): string {
  return name.toLowerCase().replace(/[^a-z]+/g, '-');
}
