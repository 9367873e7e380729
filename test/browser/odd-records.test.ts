/** Every screen, opened with every odd record that the household accepts: none is white, and none has failed. */
import fc from 'fast-check';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Kind } from '../../src/household/model.ts';
import { draws } from '../draws.ts';
import { household, NAMED } from '../household/arbitraries.ts';
import { putHousehold } from '../household/put-household.ts';
import { type Bench, openBench } from './harness.ts';
import { expectShown, failure, goTo, SCREENS, settled } from './screens.ts';

/** Rooms of a screen that are opened beside it. */
const ROOMS = [
  'cupboard/cold',
  'cupboard/new',
  'drying/dryer',
  'mix/change',
  'mix/why',
  'animals/sitter',
  'household/card',
  'household/changes',
];

/** Parts of the page of one animal. */
const OF_AN_ANIMAL = ['weight', 'food', 'left', 'trials', 'life', 'vet'];

/** Where one record of a kind is shown by itself. */
const DETAILS: Partial<Record<Kind, string>> = {
  foods: 'foods',
  profiles: 'targets',
  animals: 'animals',
  lots: 'cupboard',
  dryingRuns: 'drying',
  batches: 'weigh',
};

/** What is drawn is the same in every run. */
const SEED = 20261128;
const HOUSES = fc.sample(household, { numRuns: draws(20, 4), seed: SEED });

describe.each(HOUSES.map((house, i) => [i, house] as const))('household %d', (_, house) => {
  let bench: Bench;
  let page: Page;
  let refused: string[];

  beforeAll(async () => {
    bench = await openBench({ margin: true });
    refused = await putHousehold(house, NAMED, (path, init) => fetch(`${bench.url}${path}`, init));
    page = await bench.page();
    await page.goto(`${bench.url}/#/today`);
  });
  afterAll(() => bench?.close());

  test('is accepted whole', () => {
    expect(refused).toEqual([]);
  });

  test('no screen is white, and none has failed', async () => {
    const details = Object.entries(DETAILS).flatMap(([kind, place]) =>
      house[kind as Kind].map(({ id }) => `${place}/${encodeURIComponent(id)}`),
    );
    const ofAnimals = house.animals.flatMap(({ id }) =>
      OF_AN_ANIMAL.map((part) => `animals/${encodeURIComponent(id)}/${part}`),
    );
    for (const address of [...SCREENS, ...ROOMS, ...details, ...ofAnimals]) {
      await goTo(page, `/${address}`);
      await expectShown(page, address);
      await settled(page);
      expect(await failure(page), address).toBe('');
      expect(await page.getByText('cannot be shown (').count(), address).toBe(0);
      expect(await page.locator('main').textContent(), address).not.toMatch(/\bNaN\b|Infinity|\[object /);
    }
    expect(bench.complaints.filter((c) => !c.startsWith('Failed to load resource'))).toEqual([]);
  });

  test('the same with each of its mixes at hand', async () => {
    for (const { id } of house.mixes) {
      await page.evaluate(`localStorage.setItem('pouchful.mix', ${JSON.stringify(id)})`);
      await page.reload();
      for (const screen of ['today', 'mix', 'calendar', 'shopping', 'weigh']) {
        await goTo(page, `/${screen}`);
        await expectShown(page, `${screen} of ${id}`);
        await settled(page);
        expect(await failure(page), `${screen} of ${id}`).toBe('');
      }
    }
  });
});
