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
  await page.goto(`${bench.url}/#/targets/hamster-adult-crude`);
});
afterAll(() => bench?.close());

test('a profile shows bounds, unit, fibre and source', async () => {
  await page.getByRole('heading', { name: 'Adult hamster' }).waitFor();
  expect(await page.getByRole('row', { name: /^Crude protein/ }).textContent()).toMatch(
    /17 to 19 g per 100 g as fed.*no source/,
  );
  await page.getByText(/means crude fibre, as pet food labels print it/).waitFor();
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole('link', { name: /^Adult hamster, dietary fibre/ }).click();
  await page.getByText(/means total dietary fibre/).waitFor();
  await page.getByRole('link', { name: /^Adult hamster (in this mix )?hamster, adult/ }).click();
  await page.getByText(/means crude fibre, as pet food labels print it/).waitFor();
});

test('limits are bound with their source, calcium against phosphorus', async () => {
  await page.getByRole('link', { name: /^Adult hamster, with limits/ }).click();
  expect(await page.getByRole('row', { name: /^Calcium to phosphorus/ }).textContent()).toContain(
    '1 to 2 for each 1',
  );
  expect(await page.getByRole('row', { name: /^Selenium/ }).textContent()).toMatch(
    /at most 56\.818.*2020\/2117/,
  );
  expect(await page.getByRole('button', { name: 'Use in the mix' }).isDisabled()).toBe(false);
  await page.getByRole('link', { name: /^Adult hamster (in this mix )?hamster, adult/ }).click();
});

test('figures from memory say so, also in a copy, until they are changed or confirmed', async () => {
  await page.getByRole('link', { name: /^Hamster, NRC needs from memory/ }).click();
  await page.getByRole('heading', { name: 'From memory' }).waitFor();
  expect(await page.getByRole('button', { name: 'Use in the mix' }).isDisabled()).toBe(true);
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'Copy and edit' }).click();
  await page.getByLabel('Iron, at least').fill('10');
  await page.keyboard.press('Tab');
  // Another figure is not what the source said.
  expect(await page.getByLabel('Source of iron').inputValue()).toBe('own choice');
  expect(await page.getByLabel('Source of zinc').inputValue()).toContain('from memory');
  await page.getByLabel('Zinc, counted').selectOption('per 1000 kcal');
  expect(await page.getByLabel('Source of zinc').inputValue()).toBe('own choice');
  expect(await page.getByRole('button', { name: 'Confirm the figures' }).isDisabled()).toBe(true);
  await page.getByRole('button', { name: 'Save these needs' }).click();
  await page.getByText('Saved', { exact: true }).waitFor();
  await page.getByLabel('I have checked these figures against').fill('the printed edition');
  await page.getByRole('button', { name: 'Confirm the figures' }).click();
  await page.getByRole('heading', { name: 'From memory' }).waitFor({ state: 'detached' });
  await page
    .getByText(/you checked it against the printed edition on/)
    .first()
    .waitFor();
  expect(await page.getByRole('button', { name: 'Use in the mix' }).isDisabled()).toBe(false);
  await page.getByRole('link', { name: /^Adult hamster (in this mix )?hamster, adult/ }).click();
});

test('a copy is edited, saved and used in the mix', async () => {
  await page.getByRole('button', { name: 'Copy and edit' }).click();
  await page.getByLabel('Name').fill('Bramble in autumn');
  await page.getByLabel('Fat, at most').fill('8,5');
  await page.keyboard.press('Tab');
  // What is typed and not saved is not left without a word.
  await page.getByRole('link', { name: 'Mixes', exact: true }).click();
  await page.getByRole('alertdialog', { name: 'Something typed here is not saved' }).waitFor();
  await page.getByRole('button', { name: 'Stay here' }).click();
  expect(await page.getByLabel('Name').inputValue()).toBe('Bramble in autumn');
  await page.getByLabel('Add a nutrient').selectOption('CA');
  await page.getByLabel('Calcium, at least').fill('300');
  await page.keyboard.press('Tab');
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'Save these needs' }).click();
  await page.getByText('Saved', { exact: true }).waitFor();
  await page.reload();
  expect(await page.getByLabel('Fat, at most').inputValue()).toBe('8.5');
  expect(await page.getByLabel('Calcium, at least').inputValue()).toBe('300');
  await page.getByRole('button', { name: 'Use in the mix' }).click();
  await page.getByRole('link', { name: 'Mixes', exact: true }).click();
  await page.getByText('Bramble in autumn').first().waitFor();
  await page.locator('[data-window="Calcium"]').waitFor();
  expect(await page.locator('[data-window="Fat"]').textContent()).toContain('4 to 8.5 g');
  await page.getByRole('button', { name: 'Make it fit', exact: true }).click();
  await page.waitForSelector('[data-testid="verdict"][data-state="in"]');
});

test('it works on a phone', async () => {
  const phone = await bench.page(PHONE);
  await phone.goto(`${bench.url}/#/targets`);
  await phone.getByRole('button', { name: 'Copy and edit' }).waitFor();
  expect(await overflow(phone)).toBe(0);
  expect(await axeFindings(phone)).toEqual([]);
  await phone.goto(`${bench.url}/#/targets/hamster-nrc`);
  await phone.getByRole('heading', { name: 'From memory' }).waitFor();
  expect(await overflow(phone)).toBe(0);
  expect(await axeFindings(phone)).toEqual([]);
});

test('the browser had nothing to complain of', () => {
  expect(bench.complaints).toEqual([]);
});
