/**
 * Names as keepers and packs write them, in five languages: word orders, brackets, plurals, slips of spelling and lines of
 * ingredient lists. Under the id of each caution stand the names that must run into it, and those that must not.
 */
import { describe, expect, it } from 'vitest';
import { cautionsFor } from './find.ts';

type Names = Readonly<Record<string, readonly string[]>>;

/** By the id of the caution. */
const MUST: Names = {
  'onion-family': [
    'Onions, dried',
    'Zwiebeln (getrocknet)',
    'Oignons séchés',
    'Gedroogde uien',
    'Cebolla seca',
  ],
};
/** By the id of the caution that must not be found; others may be. */
const MUST_NOT: Names = {
  'onion-family': ['Onion-free herb mix'],
};
/** Names that run into no caution at all. */
const NONE: readonly string[] = ['Hafer'];

const idsOf = (name: string) => cautionsFor({ name }).map((hit) => hit.caution.id);
const rows = (names: Names) =>
  Object.entries(names).flatMap(([id, list]) => list.map((name) => [id, name] as const));

describe('names that must run into a caution', () => {
  it.each(rows(MUST))('%s: %s', (id, name) => expect(idsOf(name)).toContain(id));
});

describe('names that must not', () => {
  it.each(rows(MUST_NOT))('%s: %s', (id, name) => expect(idsOf(name)).not.toContain(id));
  it.each(NONE)('%s', (name) => expect(idsOf(name)).toEqual([]));
});
