/** Whatever fails round the page (storage, worker, table, server, an update, a record), it says so and offers a way on. */
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import type { RecordsPage } from '../../src/household/records.ts';
import { type Bench, openBench } from './harness.ts';
import { expectShown, failure, goTo, SCREENS } from './screens.ts';

let bench: Bench;
let page: Page;

beforeAll(async () => {
  bench = await openBench({ margin: true });
});
afterAll(() => bench?.close());
afterEach(async () => {
  await page?.context().close();
});

/** A page that is opened with the browser prepared. @param prepare runs before any script of the page */
async function open(prepare?: string, address = '#/today'): Promise<Page> {
  page = await bench.page();
  if (prepare) await page.addInitScript({ content: prepare });
  await page.goto(`${bench.url}/${address}`);
  return page;
}

async function everyScreen(): Promise<void> {
  for (const screen of SCREENS) {
    await goTo(page, `/${screen}`);
    await expectShown(page, screen);
    expect(await failure(page), screen).toBe('');
  }
}

/** Scripts for the browser, run before those of the page. */
const OFF = `for (const name of ['localStorage', 'sessionStorage'])
  Object.defineProperty(window, name, { get() { throw new DOMException('denied', 'SecurityError'); } })`;
const FULL = `Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); }`;
const holding = (text: string) => `Storage.prototype.getItem = () => ${JSON.stringify(text)}`;
const KEYS = `const keys = ['outbox', 'unsent', 'maker', 'typed', 'tab'].map((name) => 'pouchful.' + name + '.x');
  Object.defineProperty(Storage.prototype, 'length', { get: () => keys.length });
  Storage.prototype.key = (i) => keys[i]`;

describe('storage of the browser', () => {
  test.each([
    ['switched off', OFF],
    ['full', FULL],
    ['that holds what is no JSON', holding('{"a":[[[')],
    ['that holds JSON of another shape', holding('[{"id":7},null,"x"]')],
    ['that holds an object', holding('{"__proto__":1,"pours":{}}')],
    ['that holds null', holding('null')],
    ['whose every key holds rubbish', `${holding(`\u0000${'x'.repeat(10_000)}`)}; ${KEYS}`],
  ])('%s leaves every screen', async (_, prepare) => {
    await open(prepare);
    await expectShown(page, 'today');
    await everyScreen();
  });

  test('that takes nothing is told once something should be kept', async () => {
    await open(FULL, '#/shopping');
    await page.getByText('Prices and sellers').click();
    await page.getByText('Least left over', { exact: false }).first().click();
    await page.getByText('keeps nothing more for this page').waitFor();
  });
});

describe('the worker', () => {
  test('that cannot be loaded is told, and runs once it is started again', async () => {
    page = await bench.page();
    await page.route('**/assets/formulation.worker*', (route) => route.abort());
    await page.goto(`${bench.url}/#/mix`);
    await page.getByText('has stopped').first().waitFor();
    await page.locator('[data-testid="verdict"][data-state="fault"]').waitFor();
    await everyScreen();
    await goTo(page, '/mix');
    await page.unroute('**/assets/formulation.worker*');
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.waitForSelector(
      '[data-testid="verdict"][data-state="out"], [data-testid="verdict"][data-state="in"]',
    );
    await page.getByRole('button', { name: 'Try again' }).waitFor({ state: 'detached' });
  });

  test.each([
    ['the table of foods', '**/reference.bin', 500, 'table of foods'],
    ['a table of foods that is gone', '**/reference.bin', 404, 'table of foods'],
    ['a damaged table of foods', '**/reference.bin', 200, 'table of foods'],
    ['the solver', '**/assets/*.wasm', 500, 'part that works out mixes'],
  ])('without %s says so, and goes on once it is there', async (_, url, status, words) => {
    page = await bench.page();
    await page.route(url, (route) => route.fulfill({ status, body: 'rubbish' }));
    await page.goto(`${bench.url}/#/mix`);
    await page.locator('.trouble', { hasText: words }).waitFor();
    await everyScreen();
    await goTo(page, '/mix');
    await page.unroute(url);
    await page.locator('.trouble').getByRole('button', { name: 'Try again' }).click();
    await page.waitForSelector(
      '[data-testid="verdict"][data-state="out"], [data-testid="verdict"][data-state="in"]',
    );
  });
});

test.each([
  '#/%E0%A4%A',
  '#/foods/%',
  '#/cupboard/%00',
  '#/mix/<img src=x>',
  '#////',
  '#',
  '#/weigh/__proto__',
  '#/targets/constructor',
  '#/foods/toString',
])('the address %s shows a screen', async (address) => {
  await open(undefined, address);
  await expectShown(page, address);
  expect(await failure(page)).toBe('');
});

describe('what the server answers', () => {
  const records = '**/api/records*';

  test.each([
    ['a page of another program', { status: 200, contentType: 'text/html', body: '<h1>Router</h1>' }],
    ['JSON of another shape', { status: 200, contentType: 'application/json', body: '{"hello":[1,2]}' }],
    ['a list', { status: 200, contentType: 'application/json', body: '[]' }],
    ['null', { status: 200, contentType: 'application/json', body: 'null' }],
    ['half an answer', { status: 200, contentType: 'application/json', body: '{"records":[{"kind":"lo' }],
    ['an error', { status: 500, contentType: 'application/json', body: '{"message":"the disk is gone"}' }],
    [
      'records that are none',
      {
        status: 200,
        contentType: 'application/json',
        body: '{"records":[null,7,{"kind":"nothing","id":"x"},{"kind":"lots"}],"seq":1,"more":false,"epoch":"e"}',
      },
    ],
  ])('where it is %s, is told, and the household opens once it is one', async (_, answer) => {
    page = await bench.page();
    await page.route(records, (route) => route.fulfill(answer));
    await page.goto(`${bench.url}/#/today`);
    await page.locator('main h1', { hasNotText: 'Opening' }).waitFor();
    await expectShown(page, 'odd answer');
    await page.unroute(records);
    await page.reload();
    await page.getByRole('heading', { name: 'Now', exact: true }).waitFor();
  });

  test('where a record is broken, takes down no more than what shows it', async () => {
    page = await bench.page();
    await page.route(records, async (route) => {
      const answer = await route.fetch();
      const told = (await answer.json()) as RecordsPage;
      const broken = [
        [
          'dryingRuns',
          { id: 'old', startedAt: '0001-01-01T00:00:00Z', lot: 'none', checks: [], gramsBefore: 1e308 },
        ],
        ['dryingRuns', { id: 'bare' }],
        ['lots', { id: 'bare-lot', food: 'millet', name: 'Bare', boughtOn: 'yesterday', grams: '5' }],
        ['batches', { id: 'bare-batch', name: 'Bare', startedAt: 'never' }],
        ['animals', { id: 'bare-animal', name: 'Bare' }],
        ['foods', { id: 'bare-food', name: 'Bare', kind: 'mix' }],
        ['weighings', { id: 'bare-weighing', animalId: 'demo-animal', at: 'never' }],
        ['feedings', { id: 'bare-feeding', animalId: 'demo-animal', on: 'yesterday', mix: 6 }],
        ['trials', { id: 'bare-trial', animalId: 'demo-animal', food: 'millet' }],
        ['notes', { id: 'bare-note', animalId: 'demo-animal' }],
        ['photos', { id: 'demo-animal', jpeg: 'no picture' }],
        ['keeper', { id: 'keeper', vet: 'Dr Bare', allergies: 'all' }],
      ] as const;
      const records = broken.map(([kind, body], i) => ({
        kind,
        id: body.id,
        version: 1,
        seq: told.seq + i + 1,
        place: told.seq + i + 1,
        body,
      }));
      await route.fulfill({
        response: answer,
        json: told.more ? told : { ...told, records: [...told.records, ...records] },
      });
    });
    await page.goto(`${bench.url}/#/today`);
    let failed = 0;
    for (const screen of [
      ...SCREENS,
      'drying/old',
      'drying/bare',
      'cupboard/bare-lot',
      'weigh/bare-batch',
      'animals/bare-animal',
      ...['', '/weight', '/food', '/left', '/trials', '/life', '/vet'].map((p) => `animals/demo-animal${p}`),
      'animals/sitter',
      'household/card',
      'foods/bare-food',
    ]) {
      await goTo(page, `/${screen}`);
      await expectShown(page, screen);
      if ((await failure(page)) === '') continue;
      failed += 1;
      await page.getByRole('button', { name: 'Copy the report' }).click();
      expect(await page.locator('.report').textContent()).toContain(`Screen: ${screen.split('/')[0]}`);
      expect(await page.getByRole('link', { name: 'look at what was changed' }).count()).toBe(1);
    }
    // What failed is told; what has nothing to do with it is there.
    expect(failed).toBeGreaterThan(0);
    await goTo(page, '/targets');
    await page.getByRole('heading', { name: 'Needs', exact: true }).waitFor();
    expect(await failure(page)).toBe('');
    await page.unroute(records);
    await goTo(page, '/today');
    await page.reload();
    await page.getByRole('heading', { name: 'Now', exact: true }).waitFor();
  });
});

describe('an update', () => {
  test('is told by asking, and what was typed is there after it', async () => {
    page = await bench.page();
    await page.route('**/api/events', (route) =>
      route.fulfill({
        contentType: 'text/event-stream',
        body: 'event: hello\ndata: {"seq":0,"epoch":"","build":"another"}\n\n',
      }),
    );
    await page.goto(`${bench.url}/#/animals/new`);
    await page.getByLabel('Name').fill('Clover the second');
    await page.getByText('Pouchful was updated').waitFor();
    await page.unroute('**/api/events');
    await page.locator('.trouble').getByRole('button', { name: 'Reload' }).click();
    await page.getByText('this was typed and may not be kept').waitFor();
    expect(await page.locator('.typed').textContent()).toContain('Clover the second');
    await page.getByRole('button', { name: 'I do not need it any more' }).click();
    await page.reload();
    await page.getByLabel('Name').waitFor();
    expect(await page.locator('.typed').count()).toBe(0);
    expect(await page.getByText('Pouchful was updated').count()).toBe(0);
  });

  test('whose program is gone leaves words, not a white page', async () => {
    page = await bench.page();
    await page.route('**/assets/*.js', (route) =>
      route.fulfill({ status: 404, body: 'There is no such file.' }),
    );
    await page.goto(`${bench.url}/`);
    await page.getByRole('heading', { name: 'Pouchful could not be loaded' }).waitFor({ state: 'visible' });
    await page.unroute('**/assets/*.js');
    await page.getByRole('link', { name: 'load the page again' }).click();
    await page.getByRole('heading', { name: 'Now', exact: true }).waitFor();
  });

  test('whose worker is gone says that there is a newer one', async () => {
    page = await bench.page();
    await page.route('**/assets/formulation.worker*', (route) => route.fulfill({ status: 404, body: '' }));
    let opened = false;
    await page.route(`${bench.url}/`, async (route) => {
      if (!opened) {
        opened = true;
        return route.continue();
      }
      const answer = await route.fetch();
      const html = (await answer.text()).replace(/(pouchful-build" content=)"[^"]*"/, '$1"another"');
      return route.fulfill({ response: answer, body: html });
    });
    await page.goto(`${bench.url}/`);
    await page.getByText('Pouchful was updated').waitFor();
  });
});
