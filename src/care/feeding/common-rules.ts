/** What an animal is commonly fed a day: rules of thumb, beside which the figures of `daily-amount.ts` stand. */
import { type SpeciesKind, speciesKind } from '../animal/species.ts';

export interface CommonRule {
  /** g of dry food a day, mix and pellet together, of a grown animal. */
  readonly low: number;
  readonly high: number;
  /** What to write down to begin with, g. */
  readonly grams: number;
  /** "handouts": handouts of vets commonly say so; "practice": keepers do so; "memory": the same, from memory. No source. */
  readonly source: 'handouts' | 'practice' | 'memory';
}

const GOLDEN: readonly CommonRule[] = [
  { low: 10, high: 12, grams: 12, source: 'handouts' },
  { low: 8, high: 12, grams: 10, source: 'practice' },
];
const DWARF: readonly CommonRule[] = [{ low: 5, high: 8, grams: 6, source: 'memory' }];

/** For Roborovski and Chinese hamsters none is known here. */
const BY_KIND: Readonly<Partial<Record<SpeciesKind, readonly CommonRule[]>>> = {
  golden: GOLDEN,
  hamster: GOLDEN,
  dwarf: DWARF,
  campbells: DWARF,
  'winter-white': DWARF,
  mouse: [{ low: 3, high: 5, grams: 4, source: 'memory' }],
  gerbil: [{ low: 5, high: 8, grams: 7, source: 'memory' }],
  rat: [{ low: 15, high: 20, grams: 18, source: 'memory' }],
};

/** For a grown animal, the most common first; empty where none is known. */
export function commonRules(kind: SpeciesKind): readonly CommonRule[] {
  return BY_KIND[kind] ?? [];
}

/** What to begin with where nobody has weighed it; undefined for other species and ages. @param species as it is kept */
export function dailySuggestion(
  species: string,
  lifeStage: string,
): (CommonRule & { readonly source: 'handouts' | 'memory' }) | undefined {
  if (lifeStage !== 'adult') return undefined;
  return commonRules(speciesKind(species)).flatMap((rule) =>
    rule.source === 'practice' ? [] : [{ ...rule, source: rule.source }],
  )[0];
}
