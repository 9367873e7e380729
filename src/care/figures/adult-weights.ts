/** What a grown animal weighs, by kind. */
import type { SpeciesKind } from '../animal/species.ts';

export interface WeightRange {
  /** g */
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

const NRC = 'NRC 1995, Nutrient Requirements of Laboratory Animals, table 5-1; doi 10.17226/4758';

/** g of a grown animal; undefined where no figure is kept. */
export const ADULT_WEIGHTS: Readonly<Partial<Record<SpeciesKind, WeightRange>>> = {
  golden: { low: 120, high: 180, source: NRC },
  campbells: { low: 30, high: 50, source: NRC },
  'winter-white': { low: 25, high: 45, source: NRC },
  chinese: { low: 28, high: 40, source: NRC },
  roborovski: { low: 20, high: 25, source: 'from memory' },
};
