/** Every screen, opened with every odd record that the household accepts: none is white, and none has failed. */
import fc from 'fast-check';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Household, Kind } from '../../src/household/model.ts';
import { draws } from '../draws.ts';
import { household } from '../household/arbitraries.ts';
import { type Bench, openBench } from './harness.ts';
import { expectShown, failure, goTo, SCREENS } from './screens.ts';

/** In the order in which one names another. */
const KINDS: readonly Kind[] = [
  'foods',
  'profiles',
  'animals',
  'mixes',
  'versions',
  'lots',
  'dryingRuns',
  'offers',
  'batches',
  'kitchen',
];

/** Rooms of a screen that are opened beside it. */
const ROOMS = ['cupboard/cold', 'cupboard/new', 'drying/dryer', 'mix/change', 'mix/why', 'household/changes'];

/** What is drawn is the same in every run. */
const SEED = 20261128;
const HOUSES = fc.sample(household, { numRuns: draws(20, 4), seed: SEED });

describe.each(HOUSES.map((house, i) => [i, house] as const))('household %d', (_, house) => {
  let bench: Bench;
  let page: Page;
  const kept: string[] = [];

  beforeAll(async () => {
    bench = await openBench({ margin: true });
    for (const kind of KINDS) for (const body of house[kind]) await put(kind, body);
    page = await bench.page();
    await page.goto(`${bench.url}/#/today`);
  });
  afterAll(() => bench?.close());

  async function put(kind: Kind, body: Household[Kind][number]): Promise<void> {
    const answer = await fetch(`${bench.url}/api/${kind}/${encodeURIComponent(body.id)}`, {
      method: 'PUT',
      headers: { 'content-type': 'application/json', 'if-none-match': '*' },
      body: JSON.stringify(body),
    });
    // What names a thing that was never there is refused, with words; all else is accepted.
    expect(answer.status, await answer.clone().text()).toBeLessThan(500);
    if (answer.ok) kept.push(`${kind}/${body.id}`);
  }

  const PLACE: Partial<Record<Kind, string>> = {
    foods: 'foods',
    profiles: 'targets',
    animals: 'animals',
    lots: 'cupboard',
    dryingRuns: 'drying',
    batches: 'weigh',
  };

  test('no screen is white, and none has failed', async () => {
    const details = kept.flatMap((record) => {
      const [kind = '', id = ''] = record.split(/\/(.*)/s);
      const place = PLACE[kind as Kind];
      return place ? [`${place}/${encodeURIComponent(id)}`] : [];
    });
    for (const address of [...SCREENS, ...ROOMS, ...details]) {
      await goTo(page, `/${address}`);
      await expectShown(page, address);
      expect(await failure(page), address).toBe('');
      expect(await page.getByText('cannot be shown (').count(), address).toBe(0);
      expect(await page.locator('main').textContent(), address).not.toMatch(/\bNaN\b|Infinity|\[object /);
    }
    expect(bench.complaints.filter((c) => !c.startsWith('Failed to load resource'))).toEqual([]);
  });

  test('the same with each of its mixes at hand', async () => {
    for (const { id } of house.mixes.filter((m) => kept.includes(`mixes/${m.id}`))) {
      await page.evaluate(`localStorage.setItem('pouchful.mix', ${JSON.stringify(id)})`);
      await page.reload();
      for (const screen of ['today', 'mix', 'calendar', 'shopping', 'weigh']) {
        await goTo(page, `/${screen}`);
        await expectShown(page, `${screen} of ${id}`);
        expect(await failure(page), `${screen} of ${id}`).toBe('');
      }
    }
  });
});
