import { expect, it } from 'vitest';
import { EMPTY } from '../../../test/household/empty-household.ts';
import { lotOf } from '../../../test/kitchen/cupboards.ts';
import type { Household, Mix } from '../../household/model.ts';
import { collisionWords, namesIn } from './conflict-words.ts';

const house: Household = {
  ...EMPTY,
  lots: [lotOf({ id: 'l1', name: 'Oats of March' })],
  animals: [
    {
      id: 'a1',
      name: 'Bramble',
      species: 'golden hamster',
      lifeStage: 'adult',
      profileId: 'p1',
      refuses: [],
      invented: true,
    },
  ],
};
const names = namesIn(house);

it('names fields as forms do, and says days, yes and no, and nothing', () => {
  const mine = lotOf({ id: 'l1', seller: 'Alder Mill', openedOn: '2026-03-01', frozen: true });
  const theirs = lotOf({ id: 'l1', bestBefore: '2026-09-01' });
  const pointers = ['/seller', '/openedOn', '/bestBefore', '/frozen'];
  expect(collisionWords(pointers, mine, theirs, names)).toEqual([
    { field: 'Seller', mine: 'Alder Mill', theirs: 'nothing' },
    { field: 'Opened', mine: '1 March 2026', theirs: 'nothing' },
    { field: 'Best before', mine: 'nothing', theirs: '1 September 2026' },
    { field: 'Kept in the freezer', mine: 'yes', theirs: 'no' },
  ]);
});

it('finds the same thing in both lists, wherever it stands, and calls it by its name', () => {
  const kitchen = (...sellers: { seller: string; delivery?: number }[]) => ({
    id: 'kitchen' as const,
    sellers,
  });
  const mine = kitchen({ seller: 'Alder Mill', delivery: 2 }, { seller: 'Birch', delivery: 3 });
  const theirs = kitchen({ seller: 'Birch', delivery: 4 }, { seller: 'Alder Mill', delivery: 2 });
  expect(collisionWords(['/sellers/1/delivery'], mine, theirs, names)).toEqual([
    { field: 'Sellers, Birch, delivery', mine: '3', theirs: '4' },
  ]);
});

it('says ids by the names of what they are', () => {
  const kitchen = (lot: string) => ({ id: 'kitchen' as const, next: { mixId: lot, pins: [] } });
  expect(collisionWords(['/next/mixId'], kitchen('l1'), kitchen('a1'), names)).toMatchObject([
    { mine: 'Oats of March', theirs: 'Bramble' },
  ]);
});

it('shortens what is long', () => {
  const [long] = collisionWords(
    ['/seller'],
    lotOf({ id: 'l', seller: 'x'.repeat(5000) }),
    lotOf({ id: 'l' }),
    names,
  );
  expect(long?.mine).toHaveLength(301);
});

it('says of what hangs together only what is not the same in both', () => {
  const mix = (shares: Record<string, number>) => ({ id: 'm', name: 'Mix', shares }) as unknown as Mix;
  const mine = mix({ oats: 50, millet: 30, l1: 20 });
  const theirs = mix({ oats: 50, millet: 25, l1: 25 });
  expect(collisionWords(['/shares'], mine, theirs, names)).toEqual([
    { field: 'Shares, percent', mine: 'millet 30, Oats of March 20', theirs: 'millet 25, Oats of March 25' },
  ]);
});
