/** What was typed and not saved is not lost without a word: the keeper is asked before a screen or the page is left. */
import type { Dialog, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { axeFindings, type Bench, openBench, PHONE } from './harness.ts';
import { householdAt } from './household-at.ts';

let bench: Bench;
let page: Page;

beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench?.close());
beforeEach(async () => {
  page = await bench.page(PHONE);
  await page.goto(`${bench.url}/#/today`);
  await page.evaluate(`location.hash = '#/animals/new'`);
  await page.getByLabel('Name', { exact: true }).fill('Clover');
});

const question = () => page.getByRole('alertdialog', { name: 'Something typed here is not saved' });
const hash = () => page.evaluate('location.hash');
const toFoods = () => page.locator('a[href="#/foods"]').first();

test('a link to another screen asks; to stay leaves all as it was, to leave goes there', async () => {
  await toFoods().click();
  await question().waitFor();
  expect(await axeFindings(page)).toEqual([]);
  // What is safe has the focus, and Escape is the same.
  expect(await page.evaluate('document.activeElement.textContent')).toBe('Stay here');
  await page.keyboard.press('Escape');
  await question().waitFor({ state: 'detached' });
  expect(await hash()).toBe('#/animals/new');
  expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe('Clover');
  await toFoods().focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Leave without saving' }).click();
  await page.locator('.foods-screen').waitFor();
  expect(await hash()).toBe('#/foods');
  expect((await householdAt(bench.url)).animals.some((a) => a.name === 'Clover')).toBe(false);
});

test('so do the way back of the browser, and another press on the same screen', async () => {
  for (const leave of ['history.back()', `location.hash = '#/animals'`]) {
    await page.evaluate(leave);
    await question().waitFor();
    await page.getByRole('button', { name: 'Stay here' }).click();
    await question().waitFor({ state: 'detached' });
    expect(await hash()).toBe('#/animals/new');
    expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe('Clover');
  }
});

test('closing the page asks by the browser, and a field that was emptied again asks nothing', async () => {
  const asked = new Promise<Dialog>((heard) => page.once('dialog', heard));
  const closing = page.close({ runBeforeUnload: true });
  const dialog = await asked;
  expect(dialog.type()).toBe('beforeunload');
  await dialog.dismiss();
  await closing;
  await page.getByLabel('Name', { exact: true }).fill('');
  await toFoods().click();
  await page.locator('.foods-screen').waitFor();
});

test('Cancel is an answer already, and what is saved is left unasked', async () => {
  await page.getByRole('button', { name: 'Cancel' }).click();
  await page.getByLabel('Name', { exact: true }).waitFor({ state: 'detached' });
  expect(await question().count()).toBe(0);
});
