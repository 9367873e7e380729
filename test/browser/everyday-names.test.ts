/** A newcomer who speaks German types foods as they are called at home, and reads and keeps them under those names. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { EMPTY } from '../household/empty-household.ts';
import { axeFindings, type Bench, openBench, overflow, PHONE } from './harness.ts';
import { householdAt } from './household-at.ts';

/** As typed, and what it is: by number and by the name it is then shown and kept under. */
const FOODS = [
  ['Haferflocken, 5 %', 'sr28:08120', 'Haferflocken'],
  ['sonnenblumen kerne', 'sr28:12036', 'Sonnenblumenkerne'],
  ['Möhren', 'sr28:11683', 'Möhren, getrocknet'],
  ['Buchweitzen', 'sr28:20008', 'Buchweizen'],
  ['Leinsamen', 'sr28:12220', 'Leinsamen'],
  ['Haselnüsse', 'sr28:12120', 'Haselnuss'],
  ['getrocknete Petersilie', 'sr28:02029', 'Petersilie, getrocknet'],
  ['Kichererbse', 'sr28:16056', 'Kichererbsen'],
  ['Kuerbiskerne', 'sr28:12014', 'Kürbiskerne'],
  ['Mehlwürmer', 'pub:mealworm-dried', 'Mehlwürmer, getrocknet'],
] as const;

let bench: Bench;
let page: Page;

beforeAll(async () => {
  bench = await openBench({ house: EMPTY });
  page = await bench.page(PHONE);
  await page.addInitScript(`localStorage['pouchful.manner'] = '{"language":"de"}'`);
});
afterAll(() => bench?.close());

test('ten foods typed in German are the right ones, under their German names', async () => {
  await page.goto(bench.url);
  await page.getByRole('button', { name: 'Jetzt machen' }).last().click();
  const box = page.getByLabel('Welche Zutaten hast du?');
  await box.fill(FOODS.map(([typed]) => typed).join('\n'));
  await box.press('Enter');
  await page.getByText('10 Zutaten kamen dazu.').waitFor();
  expect(await page.locator('.start-row strong').allTextContents()).toEqual(FOODS.map(([, , name]) => name));
  await expect
    .poll(async () => (await householdAt(bench.url)).mixes[0]?.problem.foods.map((f) => [f.ref, f.name]))
    .toEqual(FOODS.map(([, ref, name]) => [ref, name]));
  expect(await overflow(page)).toBe(0);
  if (process.env.NAMES_PICTURE) await page.screenshot({ path: process.env.NAMES_PICTURE, fullPage: true });
});

test('What’s inside finds and shows them so, with the name of the table beside', async () => {
  await page.goto(`${bench.url}/#/foods`);
  await page.getByRole('searchbox').fill('havermout');
  const first = page.locator('.food-list a').first();
  await expect.poll(() => first.locator('span').first().textContent()).toBe('Haferflocken');
  expect(await first.locator('small').textContent()).toMatch(/OATS/i);
  await first.click();
  await page.getByRole('heading', { name: 'Haferflocken' }).waitFor();
});

test('help with a word of the trade is large enough to press, and pushes no row apart', async () => {
  const help = page.locator('.food-page .term-help');
  await help.first().waitFor();
  const boxes = await Promise.all((await help.filter({ visible: true }).all()).map((h) => h.boundingBox()));
  expect(boxes.length).toBeGreaterThanOrEqual(3);
  for (const box of boxes) {
    expect(box?.width).toBeGreaterThanOrEqual(24);
    expect(box?.height).toBeGreaterThanOrEqual(24);
  }
  const height = (row: string) =>
    page.evaluate(
      `[...document.querySelectorAll('.food-page tr')].find((r) => r.textContent.startsWith('${row}')).offsetHeight`,
    ) as Promise<number>;
  expect([await height('Rohasche'), await height('Fett')]).toEqual([
    await height('Fett'),
    await height('Fett'),
  ]);
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: /Rohasche/ }).click();
  await page
    .getByText(/verbrannt|verbrennt|Mineral/)
    .first()
    .waitFor();
  expect(await overflow(page)).toBe(0);
  if (process.env.NAMES_PICTURE)
    await page.screenshot({ path: `${process.env.NAMES_PICTURE}.food.png`, fullPage: true });
});
