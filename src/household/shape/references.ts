/**
 * What a record names: other records, and foods. What is named must be there when it is named first; what has gone
 * since (a deleted animal, a number that left the tables) stays named where it was.
 */

import { pointerOf } from '../../formulation/problem/json-pointer.ts';
import type { Problem } from '../../formulation/problem/problem.ts';
import type { Batch } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import type { Kept, Kind } from '../model.ts';
import type { Fault } from './fault-words.ts';

/** A thing named in a record. */
export interface Named {
  /** Of a record, its kind; "food" may be an own food, a reference number, or a food as a mix or batch calls it. */
  readonly kind: 'profiles' | 'animals' | 'mixes' | 'lots' | 'dryingRuns' | 'batches' | 'food';
  readonly id: string;
  /** JSON pointer to where it stands. */
  readonly field: string;
}

const NAMING: { readonly [K in Kind]: (body: Kept<K>) => Named[] } = {
  foods: () => [],
  profiles: () => [],
  animals: ({ profileId, refuses, knows = [] }) => [
    { kind: 'profiles', id: profileId, field: '/profileId' },
    ...each('food', refuses, '/refuses'),
    ...each('food', knows, '/knows'),
  ],
  mixes: ({ profileId, animalIds }) => [
    ...each('animals', animalIds, '/animalIds'),
    { kind: 'profiles', id: profileId, field: '/profileId' },
  ],
  versions: ({ mixId }) => [{ kind: 'mixes', id: mixId, field: '/mixId' }],
  lots: ({ food, driedIn }) => [
    { kind: 'food', id: food, field: '/food' },
    ...(driedIn === undefined ? [] : [{ kind: 'dryingRuns', id: driedIn, field: '/driedIn' } as const]),
  ],
  offers: ({ food }) => [{ kind: 'food', id: food, field: '/food' }],
  dryingRuns: ({ lot }) => [{ kind: 'lots', id: lot, field: '/lot' }],
  batches: ({ mixId, animalIds, pours }) => [
    ...(mixId === undefined ? [] : [{ kind: 'mixes', id: mixId, field: '/mixId' } as const]),
    ...each('animals', animalIds, '/animalIds'),
    ...pours.flatMap(({ lots }, i) =>
      lots.map(({ lot }, j) => ({ kind: 'lots', id: lot, field: `/pours/${i}/lots/${j}/lot` }) as const),
    ),
  ],
  kitchen: ({ driedAtHome = [], next }) => [
    ...driedAtHome.flatMap(
      ({ food, fresh }, i) =>
        [
          { kind: 'food', id: food, field: `/driedAtHome/${i}/food` },
          { kind: 'food', id: fresh, field: `/driedAtHome/${i}/fresh` },
        ] as const,
    ),
    ...(next ? [{ kind: 'mixes', id: next.mixId, field: '/next/mixId' } as const] : []),
  ],
  weighings: ofAnimal,
  feedings: (feeding) => [
    ...ofAnimal(feeding),
    ...(feeding.mix?.batchId === undefined
      ? []
      : [{ kind: 'batches', id: feeding.mix.batchId, field: '/mix/batchId' } as const]),
    ...feeding.beside.flatMap(({ food, lot }, i): Named[] => [
      { kind: 'food', id: food, field: `/beside/${i}/food` },
      ...(lot === undefined ? [] : [{ kind: 'lots', id: lot, field: `/beside/${i}/lot` } as const]),
    ]),
  ],
  trials: (trial) => [
    ...ofAnimal(trial),
    { kind: 'food', id: trial.food, field: '/food' },
    ...(trial.beside ? [{ kind: 'food', id: trial.beside.food, field: '/beside/food' } as const] : []),
  ],
  notes: ofAnimal,
  photos: ({ id }) => [{ kind: 'animals', id, field: '/id' }],
  keeper: () => [],
};

function ofAnimal({ animalId }: { animalId: string }): Named[] {
  return [{ kind: 'animals', id: animalId, field: '/animalId' }];
}

const each = (kind: Named['kind'], ids: readonly string[], field: string): Named[] =>
  ids.map((id, i) => ({ kind, id, field: `${field}/${i}` }));

/** What a record names, in the order of its fields. @param body that passes `checkRecord` */
export function referencesOf<K extends Kind>(kind: K, body: Kept<K>): readonly Named[] {
  return NAMING[kind](body);
}

/** What a record names that the one in whose place it comes did not: what must be there. */
export function newReferences<K extends Kind>(
  kind: K,
  body: Kept<K>,
  before: Kept<K> | null,
): readonly Named[] {
  const known = new Set((before ? referencesOf(kind, before) : []).map((n) => `${n.kind} ${n.id}`));
  return referencesOf(kind, body).filter((n) => !known.has(`${n.kind} ${n.id}`));
}

/** The foods that a record gives a name to: others may name them from then on. */
export function foodsNamedBy<K extends Kind>(kind: K, body: Kept<K>): readonly string[] {
  if (kind === 'foods') return [body.id];
  const { problem } = body as { problem?: Problem };
  return problem ? [...problem.foods, ...problem.beside].map((f) => f.id) : [];
}

/**
 * Foods of a batch that its problem does not have: it could be neither judged nor traced.
 * @param before as it stood; what was odd then may stay
 */
export function foodOutOfProblem(batch: Batch, before: Batch | null): Fault | undefined {
  const known = new Set(batch.problem.foods.map((f) => f.id));
  const odd = (b: Batch) => foodsOf(b).filter(({ food }) => !known.has(food));
  const stood = new Set(before ? odd(before).map((o) => o.food) : []);
  const wrong = odd(batch).find(({ food }) => !stood.has(food));
  if (!wrong) return undefined;
  return {
    field: wrong.field,
    message: words().household.refusal.noFoodOfBatch(wrong.food),
  };
}

function foodsOf({ order, shares, pours, stock = {} }: Batch) {
  const keys = (of: object, field: string) =>
    Object.keys(of).map((food) => ({ food, field: `${field}${pointerOf([food])}` }));
  return [
    ...keys(shares, '/shares'),
    ...order.map((food, i) => ({ food, field: `/order/${i}` })),
    ...pours.map(({ food }, i) => ({ food, field: `/pours/${i}/food` })),
    ...keys(stock, '/stock'),
  ];
}
