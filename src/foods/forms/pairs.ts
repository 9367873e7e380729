/** Foods that the USDA table holds both fresh and dried; `pairs.json` names every such pair. */
import listed from './pairs.json' with { type: 'json' };

export type Kind = 'vegetable' | 'herb' | 'fungus' | 'fruit' | 'nut' | 'animal';

/** A fresh and a dried row of one plant or animal. */
export interface Pair {
  /** Rows of one plant are left out together when the model is checked. */
  readonly plant: string;
  readonly kind: Kind;
  readonly fresh: string;
  readonly dried: string;
}

export const PAIRS = listed as readonly Pair[];
