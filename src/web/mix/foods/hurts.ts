/** Cautions on foods of a mix, gathered by food: what must not be fed, by its name or by its own list. */
import type { CautionNote } from '../../../formulation/problem/result.ts';

interface ListedFood {
  /** Id of the food. */
  readonly food: string;
  /** Words of its lists, as printed. */
  readonly found: string;
  /** Ids of the cautions. */
  readonly cautions: readonly string[];
  readonly beside: boolean;
  /** Whether the keeper went ahead with all of them. */
  readonly gone: boolean;
}

/** Foods with something on their own list of ingredients that must not be fed, in the order of the notes. */
export function listedFoods(notes: readonly CautionNote[]): ListedFood[] {
  const listed = notes.filter((n) => n.listed && n.severity === 'never');
  return [...new Set(listed.map((n) => n.food))].map((food) => {
    const own = listed.filter((n) => n.food === food);
    return {
      food,
      found: [...new Set(own.map((n) => n.found))].join(', '),
      cautions: own.map((n) => n.caution),
      beside: own.some((n) => n.pointer.startsWith('/beside/')),
      gone: own.every((n) => n.applied === 'overridden'),
    };
  });
}

/** Ids of foods of the mix that must not be fed for what they are. */
export function neverFed(notes: readonly CautionNote[]): string[] {
  return [...new Set(notes.flatMap((n) => (n.applied === 'blocked' && !n.listed ? [n.food] : [])))];
}
