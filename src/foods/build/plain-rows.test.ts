import { describe, expect, it } from 'vitest';
import { loadReference } from '../../household/reference-file.ts';
import { plainRows } from './plain-rows.ts';
import type { TableRow } from './table.ts';

const row = (ndb: string, tableName: string): TableRow => ({
  ref: `sr28:${ndb}`,
  tableName,
  tableGroup: ndb.slice(0, 2),
  composition: {},
  sd: {},
  suggestible: false,
});

describe('a row that only release 28 has', () => {
  const old = [
    row('20001', 'WHEAT, PUFFED, DRY'),
    row('20002', 'WHEAT, PUFFED, CKD'),
    row('11001', 'PEAS, DRY'),
    row('11002', 'PEAS, CKD'),
  ];
  const kept = (...rows: TableRow[]) =>
    plainRows([...old, ...rows], (ndb) => old.some((r) => r.ref.endsWith(ndb)), new Set(['20099']))
      .slice(old.length)
      .map((r) => r.ref.slice('sr28:'.length));

  it('stays where the plain rows of its group use every word of its title', () => {
    expect(kept(row('20003', 'WHEAT, PUFFED'), row('20004', 'PUFFED WHEAT'))).toEqual(['20003', '20004']);
  });

  it('goes where a word is not among theirs: an invented maker, also one with a figure in its name', () => {
    expect(kept(row('20003', 'ZORBLAX, WHEAT, PUFFED'), row('20004', "WHEAT, PUFFED, ZORB'S"))).toEqual([]);
    expect(kept(row('20005', 'Z9 WHEAT, PUFFED'))).toEqual([]);
  });

  it('goes where its words are of another group, in a few titles only', () => {
    expect(kept(row('20003', 'PEAS, DRY'))).toEqual([]);
  });

  it('goes where it is a meal, a baby food or from a restaurant, whatever its words', () => {
    for (const group of ['03', '21', '22', '36']) {
      const like = [row(`${group}001`, 'RICE, CKD'), row(`${group}002`, 'RICE, CKD, HOT')];
      const all = plainRows(
        [...like, row(`${group}003`, 'RICE, CKD')],
        (ndb) => !ndb.endsWith('3'),
        new Set(),
      );
      expect(all).toHaveLength(2);
    }
  });

  it('stays where keepers use it, since its name is made by hand', () => {
    expect(kept(row('20099', 'WHEAT, ZORBLAX'))).toEqual(['20099']);
  });
});

describe('the reference file', () => {
  const reference = loadReference();
  const has = (ndb: string) => reference.get(`sr28:${ndb}`) !== undefined;

  // By number, since their titles name a maker: bran and puffed cereals, a sweet bar, a drink powder, a soya drink, a
  // canned soup, a spread, a tomato juice, a baby rice, a burger, a restaurant dish, a protein powder, an energy drink.
  it.each([
    '08001',
    '08066',
    '19155',
    '14195',
    '16235',
    '06218',
    '01191',
    '31001',
    '03194',
    '21107',
    '36001',
  ])('has no row of a maker or a kitchen: %s', (ndb) => {
    expect(has(ndb)).toBe(false);
  });
  it.each(['01223', '14599', '16215', '42204'])('nor one that release 26 names all the same: %s', (ndb) => {
    expect(has(ndb)).toBe(false);
  });

  it.each([
    ['08122', 'oats, cooked'],
    ['18375', "baker's yeast: plain, if nothing to feed"],
    ['20080', 'whole wheat flour'],
  ])('has plain rows of release 26, which advice may bring in: %s, %s', (ndb) => {
    expect(reference.get(`sr28:${ndb}`)?.suggestible).toBe(true);
  });

  it.each([
    ['11994', 'Chinese broccoli'],
    ['17367', 'imported lamb kidney'],
    ['20650', 'sorghum flour'],
    ['01293', 'Greek yoghurt'],
  ])('has plain rows that are new in release 28, which advice leaves alone: %s, %s', (ndb) => {
    expect(reference.get(`sr28:${ndb}`)?.suggestible).toBe(false);
  });

  it('may bring in every food that keepers use', () => {
    expect(reference.plainFoods().filter((food) => !food.suggestible)).toEqual([]);
  });
});
