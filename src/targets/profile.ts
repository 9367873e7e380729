/** A target profile: what the animal needs, each bound with its basis and the line it comes from. */
import type { Tag } from '../nutrition/nutrients.ts';

/** That a keeper compared a figure from memory with its publication. */
export interface Confirmation {
  /** What it was compared with, in the keeper's words. */
  readonly against: string;
  /** ISO 8601 date. */
  readonly on: string;
}

export interface TargetBound {
  /** A nutrient, or a ratio of two. */
  readonly nutrient?: Tag;
  readonly ratio?: readonly [Tag, Tag];
  /** Of the ration on the stated basis, unit of the tagname: per 100 g, or per 1000 kcal; a plain number for a ratio. */
  readonly min?: number;
  readonly max?: number;
  readonly basis: 'as fed' | 'DM' | 'per 1000 kcal';
  /** Publication with place, or "common practice, no source"; says "from memory" where it is. */
  readonly source: string;
  readonly confirmed?: Confirmation;
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
