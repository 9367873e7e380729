/**
 * What a keeper's own food rests on: every source that says something of it, the keeper's choices among them, and
 * what was borrowed from a similar food. What the food is taken to hold always follows from these.
 */
import type { Tag } from '../nutrition/nutrients.ts';
import type { Composition, Figures, FoodGroup } from './food.ts';
import type { Borrowed } from './similar.ts';
import { resolve } from './sources/resolve.ts';
import type { FoodSource } from './sources/source.ts';

/** An amount that no source gives, taken from a similar food; per 100 g as fed. */
export interface Lent extends Borrowed {
  /** Reference number of the food that lends it. */
  readonly from: string;
  readonly name: string;
}

export interface Evidence {
  readonly sources?: readonly FoodSource[];
  /** By nutrient, the id of the one source that counts; a nutrient not named here takes the mean of all. */
  readonly choices?: Partial<Record<Tag, string>>;
  readonly borrowed?: Partial<Record<Tag, Lent>>;
  /** The printed list of ingredients, as pasted. */
  readonly ingredients?: string;
}

/** Figures with what they rest on. */
export interface Evidenced extends Figures {
  readonly group?: FoodGroup;
  readonly evidence?: Evidence;
}

/**
 * The food with other evidence and the figures that follow from it. A borrowed amount counts only where no source
 * gives a value, and goes as soon as it is taken back. Figures without any source are kept as they were typed.
 */
export function withEvidence<F extends Evidenced>(food: F, evidence: Evidence): F {
  const sources = evidence.sources ?? [];
  const there = (id: string) => sources.some((s) => s.id === id);
  const choices = Object.fromEntries(
    Object.entries(evidence.choices ?? {}).filter(([, id]) => there(id)),
  ) as Partial<Record<Tag, string>>;
  const told = sources.length > 0 ? resolve(sources, choices, food.group) : typed(food);
  const composition: Composition = { ...told.composition };
  const sd: Composition = { ...told.sd };
  for (const [tag, lent] of Object.entries(evidence.borrowed ?? {}) as [Tag, Lent][]) {
    if (told.composition[tag] !== undefined) continue;
    composition[tag] = lent.value;
    sd[tag] = lent.sd;
  }
  return { ...food, composition, sd, low: told.low, high: told.high, evidence: { ...evidence, choices } };
}

/** Names of the foods that lent an amount which counts, by nutrient. */
export function lenders(food: Evidenced): Partial<Record<Tag, string>> {
  const lent = Object.entries(food.evidence?.borrowed ?? {}) as [Tag, Lent][];
  return Object.fromEntries(
    lent
      .filter(([tag, b]) => food.composition[tag] === b.value)
      .map(([tag, b]) => [tag, `${b.name} (${b.from})`]),
  );
}

/** The figures of a food without sources, less what it borrowed. */
function typed(food: Evidenced): Figures {
  const borrowed = lenders(food);
  const own = (amounts: Composition = {}): Composition =>
    Object.fromEntries(Object.entries(amounts).filter(([tag]) => !(tag in borrowed)));
  return { composition: own(food.composition), sd: own(food.sd), low: food.low, high: food.high };
}
