/** What a grown animal weighs, by kind. */
import type { SpeciesKind } from '../animal/species.ts';

export interface WeightRange {
  /** g */
  readonly low: number;
  readonly high: number;
  readonly source: string;
  /** Of one sex, where the source tells them apart. */
  readonly of?: Readonly<Record<'female' | 'male', { readonly low: number; readonly high: number }>>;
}

const NRC = 'NRC 1995, Nutrient Requirements of Laboratory Animals, table 5-1; doi 10.17226/4758';

const BIOLOGY =
  'The Biology and Medicine of Rabbits and Rodents, as the animal centre of National Cheng Kung University gives it (animal.ncku.edu.tw)';

/** g of a grown animal; undefined where no figure is kept. */
export const ADULT_WEIGHTS: Readonly<Partial<Record<SpeciesKind, WeightRange>>> = {
  golden: { low: 120, high: 180, source: NRC },
  campbells: { low: 30, high: 50, source: NRC },
  'winter-white': { low: 25, high: 45, source: NRC },
  chinese: { low: 28, high: 40, source: NRC },
  roborovski: { low: 20, high: 25, source: 'from memory' },
  gerbil: {
    low: 70,
    high: 110,
    source: `${BIOLOGY}: females 70-100 g, males 80-110 g`,
    of: { female: { low: 70, high: 100 }, male: { low: 80, high: 110 } },
  },
  mouse: {
    low: 20,
    high: 40,
    source: 'humane-endpoints.info, physiological parameters: males 20-40 g, females 25-40 g',
    of: { female: { low: 25, high: 40 }, male: { low: 20, high: 40 } },
  },
  rat: {
    low: 250,
    high: 520,
    source: `${BIOLOGY}: females 250-300 g, males 450-520 g`,
    of: { female: { low: 250, high: 300 }, male: { low: 450, high: 520 } },
  },
};
