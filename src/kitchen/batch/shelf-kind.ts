/**
 * How a food keeps, by its kind: shelf life and safe moisture (`shelf-life.json`, each with its source or the words
 * "common practice, no source").
 */

import type { Lot } from '../model.ts';
import data from './shelf-life.json' with { type: 'json' };

export type ShelfKind =
  | 'nut'
  | 'nut in shell'
  | 'oil seed'
  | 'crushed oil seed'
  | 'grain'
  | 'crushed grain'
  | 'legume'
  | 'vegetable'
  | 'fruit'
  | 'herb'
  | 'animal'
  | 'other';

/** Where a mix or a lot is kept. */
export type Place = 'cupboard' | 'freezer';

interface ShelfLife {
  readonly kind: string;
  /** Months. */
  readonly cupboard: number;
  /** In the cupboard once it is opened, as it is in a mix; as long as closed where absent. */
  readonly opened?: number;
  readonly freezer: number;
  readonly source: string;
}

/** What an ingredient is like in the jar. */
export interface StoredFood {
  readonly food: string;
  readonly name: string;
  readonly group?: string;
  /** Percent of the mix. */
  readonly share: number;
  /** g per 100 g as weighed; absent where unknown. */
  readonly fat?: number;
  readonly water?: number;
  /** Lots it came from; empty where the keeper keeps none. */
  readonly lots: readonly Lot[];
}

/** From so much fat on, g per 100 g, a seed is an oil seed (common practice, no source: grains hold 1 to 7, oats most). */
const OILY = 15;

const CRUSHED =
  /\b(ground|crushed|milled|meal|flour|flakes?|flaked|rolled|chopped|cracked|kibbled|powder|puree)\b/i;

const IN_SHELL = /\b(in (the |its )?shell|unshelled)\b/i;

/** How a food keeps, by its group, its fat and what its name says was done to it. A seed of unknown fat counts as oily. */
export function shelfKindOf(food: Pick<StoredFood, 'group' | 'fat' | 'name'>): ShelfKind {
  const { group, fat, name } = food;
  const crushed = CRUSHED.test(name);
  switch (group) {
    case 'seed':
      if (fat === undefined || fat >= OILY) return crushed ? 'crushed oil seed' : 'oil seed';
      return crushed ? 'crushed grain' : 'grain';
    case 'nut':
      return crushed ? 'crushed oil seed' : IN_SHELL.test(name) ? 'nut in shell' : 'nut';
    case 'legume':
      return crushed ? 'crushed grain' : 'legume';
    case 'vegetable':
    case 'fruit':
    case 'herb':
    case 'animal':
      return group;
    default:
      return 'other';
  }
}

/** Shelf life by kind. */
export const lifeOf = new Map((data.kinds as readonly ShelfLife[]).map((life) => [life.kind, life]));

const dryOf = new Map(data.dryEnough.map((row) => [row.kind, row]));

/** Most moisture at which a food keeps, g of water per 100 g, and its source. */
export function safeBelow(food: Pick<StoredFood, 'group' | 'fat' | 'name'>): {
  readonly most: number;
  readonly source: string;
} {
  const { most, source } = dryOf.get(shelfKindOf(food))!;
  return { most, source };
}
