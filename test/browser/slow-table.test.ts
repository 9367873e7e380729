/** The mix while the table of foods is still on its way, or never comes: what is typed into a share stays. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Bench, openBench } from './harness.ts';
import { householdAt, putAt } from './household-at.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench?.close());

const share = (page: Page) => page.locator('.share-row[data-food="maize"] .number input');
const mixAt = async () => (await householdAt(bench.url)).mixes[0]!;

/** Counts the rows of foods that are taken off the page, in `window.rowsGone`. */
const COUNT_ROWS_GONE = `
  window.rowsGone = 0;
  new MutationObserver((changes) => {
    for (const { removedNodes } of changes)
      for (const node of removedNodes)
        if (node.nodeType === 1)
          window.rowsGone += node.matches('.share-row') ? 1 : node.querySelectorAll('.share-row').length;
  }).observe(document, { childList: true, subtree: true });`;

test('where the table never comes, a share that was typed is kept alone', async () => {
  const page = await bench.page();
  let fail = () => {};
  const failed = new Promise<void>((done) => {
    fail = done;
  });
  await page.route('**/reference.bin', async (route) => {
    await failed;
    await route.abort();
  });
  await page.goto(`${bench.url}/#/mix`);
  await share(page).fill('9');
  fail();
  await page.locator('[data-testid="verdict"][data-state="fault"]').waitFor();
  expect(await share(page).inputValue()).toBe('9');
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await mixAt()).shares.maize).toBe(9);
  expect(await share(page).inputValue()).toBe('9');
});

test('where the table says the groups, no row is made twice: what is typed into one stays, and the keyboard there', async () => {
  const mix = await mixAt();
  const foods = mix.problem.foods.map(({ group: _, name: __, ...food }) => food);
  await putAt(bench.url, 'mixes', { ...mix, problem: { ...mix.problem, foods } });
  const page = await bench.page();
  await page.addInitScript(COUNT_ROWS_GONE);
  let come = () => {};
  const came = new Promise<void>((done) => {
    come = done;
  });
  await page.route('**/reference.bin', async (route) => {
    await came;
    await route.continue();
  });
  await page.goto(`${bench.url}/#/mix`);
  await page.getByRole('region', { name: 'Verdict' }).waitFor();
  come();
  await share(page).fill('7');
  await page.locator('[data-testid="verdict"]:not([data-state="working"])').waitFor();
  expect(await page.evaluate('window.rowsGone')).toBe(0);
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await mixAt()).shares.maize).toBe(7);
});
