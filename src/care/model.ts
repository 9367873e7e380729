/**
 * What the keeper writes down of an animal: weighings, what it was fed and what it left, trials of new foods, notes, a
 * picture. These are the records as they stand in the keeper's file.
 */
import type { Day, Moment, Overruled } from '../kitchen/model.ts';

/** One body weight. */
export interface Weighing {
  readonly id: string;
  readonly animalId: string;
  readonly at: Moment;
  /** g of the animal alone. */
  readonly grams: number;
  /** g of the tub it sat in, already taken off `grams`; absent where it was weighed without one. */
  readonly tub?: number;
  /** The figure looked unlikely, and the keeper said that it is right. */
  readonly sure?: true;
  readonly note?: string;
}

/** What one animal was fed on one day, and what it left of that. One record a day and animal; see `feedingId`. */
export interface Feeding {
  readonly id: string;
  readonly animalId: string;
  /** The day on which it was offered. */
  readonly on: Day;
  /** When it was ticked off; absent where only left-overs were noted. */
  readonly at?: Moment;
  /** The mix that was offered; absent where none was. */
  readonly mix?: {
    /** The batch it came from; absent where nobody knows. */
    readonly batchId?: string;
    /** g as weighed. */
    readonly grams: number;
  };
  /** What was offered beside it: pellet, fresh food, treats. */
  readonly beside: readonly OfferedBeside[];
  readonly left?: WeighBack;
}

/** One food offered beside the mix. */
export interface OfferedBeside {
  /** Id of the food, as mixes name it. */
  readonly food: string;
  /** The pack it came from; absent where nobody keeps packs of it. */
  readonly lot?: string;
  /** g as weighed. */
  readonly grams: number;
}

/**
 * What was found after a night (the trade's word: weigh-back). It is known as a whole, or food by food, or only by which
 * foods were mostly left. What lies in a hoard is not eaten.
 */
export interface WeighBack {
  /** The day on which it was looked for. */
  readonly on: Day;
  /** The first day of which the remains were taken together; that of the feeding where absent. */
  readonly since?: Day;
  /** Where it was fed: bowl and floor. Absent where nobody looked. */
  readonly bowl?: Remains;
  /** Found in hoards, taken out and counted. Absent where nobody looked: then a hoard may hold food. */
  readonly hoard?: Remains;
  readonly note?: string;
}

/** What lay there. `grams: 0` says that nothing did. */
export interface Remains {
  /** g in all, as weighed; absent where nobody weighed it. */
  readonly grams?: number;
  /** g of each food that was sorted out; what is not named was sorted too and nothing of it was left, if `sorted`. */
  readonly parts?: Readonly<Record<string, number>>;
  /** All of it was sorted: `parts` names everything there was. */
  readonly sorted?: true;
  /** Foods that were mostly left, by eye. */
  readonly mostly?: readonly string[];
}

/** What one look at a food on offer showed. */
export const SEEN = ['first', 'eaten', 'hoarded', 'left', 'upset'] as const;

/** "first": eaten before the known food; "upset": loose droppings, bloating or another sign that it did not do well. */
export type Seen = (typeof SEEN)[number];

/** One time a new food was offered. */
export interface Offering {
  readonly on: Day;
  readonly seen: Seen;
  /** g offered, and g left of them; absent where nobody weighed. */
  readonly grams?: number;
  readonly left?: number;
  readonly note?: string;
}

/** A new food, offered to one animal some times beside one it knows. */
export interface Trial {
  readonly id: string;
  readonly animalId: string;
  /** Id of the food, as mixes name it, or its number in the tables. */
  readonly food: string;
  readonly name: string;
  /** The known food it is offered beside, by id and name. */
  readonly beside?: { readonly food: string; readonly name: string };
  /** g to offer each time. */
  readonly grams?: number;
  /** Days on which it is to be offered, in order. */
  readonly days: readonly Day[];
  readonly offerings: readonly Offering[];
  /** Ended before all its days, or after them. */
  readonly endedOn?: Day;
  /** After an upset: the keeper feeds it to others all the same, with the reason. */
  readonly others?: Overruled;
}

/** What the keeper or a vet saw or said, in words. */
export interface Note {
  readonly id: string;
  readonly animalId: string;
  readonly on: Day;
  readonly kind: 'seen' | 'vet';
  readonly text: string;
}

/** A small picture of an animal; its id is the animal's. */
export interface Photo {
  readonly id: string;
  /** JPEG, base64. */
  readonly jpeg: string;
}

/** What a keeper may be allergic to among foods and their dust. */
export const ALLERGENS = [
  'nuts',
  'peanut',
  'sesame',
  'insects',
  'egg',
  'milk',
  'fish',
  'gluten',
  'soya',
] as const;

export type Allergen = (typeof ALLERGENS)[number];

/** Whom to call, and what the keeper cannot touch. One entry at most. */
export interface Keeper {
  readonly id: 'keeper';
  readonly vet?: { readonly name?: string; readonly phone?: string; readonly emergency?: string };
  readonly allergies?: readonly Allergen[];
  /** The home lies south of the equator: seasons are the other way round. */
  readonly south?: true;
  /** What a sitter has to know beside the food, in words. */
  readonly forSitter?: string;
}

/** What a vet has said of an animal, or what it is in. */
export const CONDITIONS = ['pregnant', 'nursing', 'diabetes', 'teeth', 'weight', 'old', 'other'] as const;

export interface Condition {
  readonly what: (typeof CONDITIONS)[number];
  /** Since when. */
  readonly since: Day;
  /** The last day on which it held; absent while it holds. */
  readonly until?: Day;
  /** Of a nursing animal: how many young. */
  readonly young?: number;
  /** A vet said so; what the keeper thinks where absent. */
  readonly vet?: true;
  readonly note?: string;
}

/** How and when an animal left the household; its record stays. */
export interface Gone {
  readonly how: 'died' | 'given away';
  readonly on: Day;
}

/** The id of what an animal was fed on a day: two devices that note the same day write the same record. */
export function feedingId(animalId: string, on: Day): string {
  return `${on}.${animalId}`.slice(0, 100);
}
