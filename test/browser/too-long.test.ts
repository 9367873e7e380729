/** What the household does not take is told, and stands in the way of nothing else. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Bench, openBench } from './harness.ts';
import { householdAt } from './household-at.ts';

let bench: Bench;
let page: Page;

beforeAll(async () => {
  bench = await openBench();
  page = await bench.page();
});
afterAll(() => bench?.close());

const mixAt = async () => (await householdAt(bench.url)).mixes[0]!;

test('a name of more letters than fit is told, and what is changed after it is kept', async () => {
  const before = await mixAt();
  await page.goto(`${bench.url}/#/mix`);
  const name = page.locator('.mix-name input');
  // The field itself takes no more than fits.
  await name.fill('x'.repeat(250));
  expect(await name.inputValue()).toBe('x'.repeat(200));
  await page.getByText('No more fits: 200 letters at most.').waitFor();
  // A server that takes less than this page does.
  await page.route('**/api/mixes/**', (route) =>
    String(route.request().postDataJSON()?.body?.name ?? route.request().postData()).includes('xxx')
      ? route.fulfill({
          status: 400,
          contentType: 'application/json',
          body: JSON.stringify({ field: '/name', message: 'has too many letters' }),
        })
      : route.continue(),
  );
  await name.press('Enter');
  await page.getByText('taken back').first().waitFor();
  const slider = page.getByLabel('Share of Maize', { exact: true });
  await slider.press('ArrowUp');
  await slider.press('Enter');
  await expect.poll(async () => (await mixAt()).shares, { timeout: 20_000 }).not.toEqual(before.shares);
  expect((await mixAt()).name).toBe(before.name);
}, 60_000);
