/** Language and units: chosen under Household, for this device; nothing that waits or is half typed is lost by it. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeFindings, type Bench, openBench, overflow, PHONE } from './harness.ts';
import { householdAt } from './household-at.ts';

let bench: Bench;
let page: Page;

beforeAll(async () => {
  bench = await openBench();
  page = await bench.page(PHONE);
});
afterAll(() => bench?.close());

const save = (name: string) => page.getByRole('button', { name, exact: true }).click();

test('German, ounces, Fahrenheit and francs are shown before they are chosen, and stay on the device', async () => {
  await page.goto(`${bench.url}/#/household/language`);
  await page.getByLabel('Deutsch').check();
  await page.getByLabel('ounces (oz)').check();
  await page.getByLabel('Fahrenheit (°F)').check();
  await page.getByLabel('Currency').selectOption('CHF');
  const example = page.getByText('It will look like this', { exact: false });
  expect(await example.textContent()).toMatch(/0,76 oz · 140 °F · 4,20.CHF/);
  expect(await axeFindings(page)).toEqual([]);
  await save('Use these');
  await page.getByRole('heading', { name: 'Sprache und Einheiten' }).waitFor();
  expect(await page.evaluate('document.documentElement.lang')).toBe('de-DE');
  expect(await page.getByLabel('Unzen (oz)').isChecked()).toBe(true);
  expect(await page.getByLabel('Währung').inputValue()).toBe('CHF');
  expect(await axeFindings(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
});

test('what waits to be sent is not lost when the language is changed', async () => {
  await page.goto(`${bench.url}/#/mix`);
  await page.route('**/api/mixes/**', (route) => route.abort());
  const name = page.locator('.mix-name input');
  await name.fill('Renamed on the way');
  await name.press('Enter');
  await expect
    .poll(() => page.evaluate(`Object.keys(localStorage).some((k) => k.startsWith('pouchful.unsent.'))`))
    .toBe(true);
  await page.goto(`${bench.url}/#/household/language`);
  await page.getByLabel('Nederlands').check();
  await save('So verwenden');
  await page.getByRole('heading', { name: 'Taal en eenheden' }).waitFor();
  // Sent by the page as it goes, or by the one in the new language.
  await page.unroute('**/api/mixes/**');
  await expect.poll(async () => (await householdAt(bench.url)).mixes[0]?.name).toBe('Renamed on the way');
});

test('what the server refuses it says in the language of the page', async () => {
  const refused = await page.evaluate(
    `fetch('/api/animals/x', { method: 'PUT', headers: { 'accept-language': 'de', 'content-type': 'application/json', 'if-none-match': '*' }, body: '{}' }).then((a) => a.json())`,
  );
  expect(refused).toMatchObject({ field: '/id', message: expect.stringContaining('fehlt') });
});
