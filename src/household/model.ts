/** What a household keeps. Stored by `store.ts`, sent by the server, shown by the web client. */
import type { Evidenced } from '../foods/evidence.ts';
import type { Problem } from '../formulation/problem.ts';
import type { TargetProfile } from '../targets/profile.ts';

/** A food of the keeper's own, or a complete pellet; amounts per 100 g as fed, and what they rest on. */
export interface OwnFood extends Evidenced {
  readonly id: string;
  readonly name: string;
  /** "mix" foods can go into a mix; "pellet" is a complete food fed beside it. */
  readonly kind: 'mix' | 'pellet';
  readonly pricePerKg?: number;
  /** Where the figures come from, in the keeper's words. */
  readonly source: string;
  /** Made up for the demonstration. */
  readonly invented: boolean;
}

export interface Animal {
  readonly id: string;
  readonly name: string;
  readonly species: string;
  readonly invented: boolean;
}

/** A mix being made: the problem it must solve and the shares it stands at. */
export interface Mix {
  readonly id: string;
  readonly name: string;
  readonly animalId?: string;
  readonly profileId: string;
  readonly problem: Problem;
  /** Percent by food id as last seen on the screen; may be out of range or not add up to 100. */
  readonly shares: Readonly<Record<string, number>>;
  /** Foods whose share the keeper holds where it is. */
  readonly held: readonly string[];
  /** ISO 8601 time of the last save, UTC. */
  readonly updatedAt: string;
}

export interface Household {
  readonly foods: readonly OwnFood[];
  readonly profiles: readonly TargetProfile[];
  readonly animals: readonly Animal[];
  readonly mixes: readonly Mix[];
}
