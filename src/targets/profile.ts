/** A target profile: what the animal needs, each bound with its basis and the line it comes from. */
import type { Tag } from '../nutrition/nutrients.ts';

export interface TargetBound {
  /** A nutrient, or a ratio of two. */
  readonly nutrient?: Tag;
  readonly ratio?: readonly [Tag, Tag];
  /** Per 100 g of the ration on the stated basis, unit of the tagname; a plain number for a ratio. */
  readonly min?: number;
  readonly max?: number;
  readonly basis: 'as fed' | 'DM';
  /** Publication with place, or "common practice, no source"; says "from memory" where it is. */
  readonly source: string;
}

export interface TargetProfile {
  readonly id: string;
  readonly name: string;
  readonly species: string;
  readonly lifeStage: string;
  /** Which fibre the profile's fibre bound means. */
  readonly fibre: 'FIBTG' | 'FIBC' | 'none';
  readonly about: string;
  readonly bounds: readonly TargetBound[];
}
