/** Reading a target, making one's own from it, and using it in the mix. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeFindings, type Bench, openBench, overflow, PHONE } from './harness.ts';
import { story } from './story.ts';

let bench: Bench;
let page: Page;

story();
beforeAll(async () => {
  bench = await openBench();
  page = await bench.page();
  await page.goto(`${bench.url}/#/targets`);
});
afterAll(() => bench?.close());

test('a profile shows bounds, unit, fibre and source', async () => {
  await page.getByRole('heading', { name: 'Adult hamster' }).waitFor();
  expect(await page.getByRole('row', { name: /^Protein/ }).textContent()).toMatch(
    /17 to 19 g per 100 g as fed.*no source/,
  );
  await page.getByText(/means total dietary fibre/).waitFor();
  expect(await axeFindings(page)).toEqual([]);
});

test('a copy is edited, saved and used in the mix', async () => {
  await page.getByRole('button', { name: 'Copy and edit' }).click();
  await page.getByLabel('Name').fill('Bramble in autumn');
  await page.getByLabel('Fat, at most').fill('8,5');
  await page.getByLabel('Add a nutrient').selectOption('CA');
  await page.getByLabel('Calcium, at least').fill('300');
  await page.keyboard.press('Tab');
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'Save profile' }).click();
  await page.getByText('Saved', { exact: true }).waitFor();
  await page.reload();
  expect(await page.getByLabel('Fat, at most').inputValue()).toBe('8.5');
  expect(await page.getByLabel('Calcium, at least').inputValue()).toBe('300');
  await page.getByRole('button', { name: 'Use in the mix' }).click();
  await page.getByRole('link', { name: 'Mix', exact: true }).click();
  await page.getByText('Bramble in autumn').first().waitFor();
  await page.locator('[data-window="Calcium"]').waitFor();
  expect(await page.locator('[data-window="Fat"]').textContent()).toContain('4 to 8.5 g');
  await page.getByRole('button', { name: 'Balance the mix' }).click();
  await page.waitForSelector('[data-testid="verdict"][data-state="in"]');
});

test('it works on a phone', async () => {
  const phone = await bench.page(PHONE);
  await phone.goto(`${bench.url}/#/targets`);
  await phone.getByRole('button', { name: 'Copy and edit' }).waitFor();
  expect(await overflow(phone)).toBe(0);
  expect(await axeFindings(phone)).toEqual([]);
});

test('the browser had nothing to complain of', () => {
  expect(bench.complaints).toEqual([]);
});
