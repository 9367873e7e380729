/** What a household keeps. Stored by `store.ts`, sent by the server, shown by the web client. */
import type { Condition, Feeding, Gone, Keeper, Note, Photo, Trial, Weighing } from '../care/model.ts';
import type { Evidenced } from '../foods/evidence.ts';
import type { Problem } from '../formulation/problem/problem.ts';
import type { Batch, Day, DryingRun, Kitchen, Lot, Offer, Pour } from '../kitchen/model.ts';
import type { LifeStage } from '../targets/life-stage.ts';
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
  /** One of the life stages that `targets/life-stage.ts` lists. */
  readonly lifeStage: LifeStage;
  /** What it needs; the mixes made for it keep these bounds. */
  readonly profileId: string;
  /** Ids of foods it will not eat, as mixes name them: they leave every mix made for it. */
  readonly refuses: readonly string[];
  /** What it is fed a day, g as weighed; absent where nobody has said. */
  readonly dailyGrams?: number;
  /** Day of birth, or about that day; absent where nobody knows. */
  readonly born?: { readonly on: Day; readonly about?: true };
  readonly sex?: 'female' | 'male';
  /** What it is in, and what a vet has said of it; those that are over stay on record. */
  readonly conditions?: readonly Condition[];
  /** It has a running wheel. Absent where nobody has said. */
  readonly wheel?: boolean;
  /** Degrees Celsius of the room, where it is cold. */
  readonly room?: number;
  /** It lives by daylight and so sees the days grow short; the lamp's light keeps the seasons from it where false. */
  readonly daylight?: boolean;
  /** g of the tub it is weighed in; absent where it is weighed without one. */
  readonly tub?: number;
  /** What it weighs in health, g, as the keeper or a vet says. */
  readonly usualGrams?: number;
  /** Ids of foods that it knows from elsewhere: they need no trial. */
  readonly knows?: readonly string[];
  readonly notes?: string;
  /** Its record stays; nothing is due for it any more. */
  readonly gone?: Gone;
  readonly invented: boolean;
}

/** A mix as it stood once, kept under a name to go back to or to compare with. */
export interface MixVersion {
  readonly id: string;
  readonly mixId: string;
  readonly name: string;
  readonly problem: Problem;
  readonly shares: Readonly<Record<string, number>>;
  /** ISO 8601 time at which it was kept, UTC. */
  readonly keptAt: string;
}

/** A mix being made: the problem it must solve and the shares it stands at. */
export interface Mix {
  readonly id: string;
  readonly name: string;
  /** The animals it is made for; foods that one of them refuses are out. */
  readonly animalIds: readonly string[];
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
  readonly versions: readonly MixVersion[];
  readonly lots: readonly Lot[];
  readonly offers: readonly Offer[];
  readonly dryingRuns: readonly DryingRun[];
  readonly batches: readonly Batch[];
  /** One entry at most: what the kitchen has. */
  readonly kitchen: readonly Kitchen[];
  readonly weighings: readonly Weighing[];
  readonly feedings: readonly Feeding[];
  readonly trials: readonly Trial[];
  readonly notes: readonly Note[];
  readonly photos: readonly Photo[];
  /** One entry at most: whom to call, and what the keeper cannot touch. */
  readonly keeper: readonly Keeper[];
}

/** The kinds of objects a household keeps, by the name of their list. */
export type Kind = keyof Household;

/** All kinds, in an order in which each names only what stands before it, but for lots dried at home. */
export const KINDS = [
  'foods',
  'profiles',
  'animals',
  'mixes',
  'versions',
  'lots',
  'offers',
  'dryingRuns',
  'batches',
  'kitchen',
  'weighings',
  'feedings',
  'trials',
  'notes',
  'photos',
  'keeper',
] as const satisfies readonly Kind[];

/** One object of a kind, known by its id. */
export type Kept<K extends Kind> = Household[K][number];

/** One entry at the scale, to be added to a batch, whoever else poured meanwhile. */
export interface PourEntry {
  /** In the order in which they were poured. */
  readonly pours: readonly Pour[];
  /** g that there are of each food from now on, where that was said with it: there is no more of one. */
  readonly stock?: Batch['stock'];
}
