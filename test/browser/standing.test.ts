/** How sure a mix is told to be, in words and shape, and fibre read both ways in one picture. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { story } from './story.ts';

describe.each([
  ['desktop', DESKTOP],
  ['phone', PHONE],
])('%s', (_name, size) => {
  let bench: Bench;
  let page: Page;

  story();
  beforeAll(async () => {
    bench = await openBench({ margin: true });
    page = await bench.page(size);
    await page.goto(`${bench.url}/#/mix`);
  });
  afterAll(() => bench?.close());

  const verdict = () => page.getByTestId('verdict');
  const balance = () => page.getByRole('button', { name: 'Make it fit', exact: true }).click();

  test('balanced with its margin, the mix is surely in range', async () => {
    await balance();
    await page.waitForSelector('[data-testid="verdict"][data-state="in"][data-sure="true"]');
    expect(await verdict().textContent()).toMatch(/^Surely in range\. Crude protein, fat and crude fibre/);
    expect(await page.locator('.verdict.sure').count()).toBe(1);
  });

  test('fibre is read as crude and as dietary fibre in one picture, with what each says', async () => {
    const fibre = page.locator('.window[data-window="Crude fibre"]');
    expect(await fibre.locator('svg').getAttribute('aria-label')).toMatch(
      /^Crude fibre, 6 to 15 .*: in range.*Read as dietary fibre: in range\. ration [\d.]+, mix [\d.]+, pellet 9\.00\.$/,
    );
    expect(await fibre.locator('svg text', { hasText: 'Read as dietary fibre: in range' }).count()).toBe(1);
    expect(await fibre.locator('.mark').count()).toBe(6);
  });

  test('without it the mix stands at a bound, and is in range on the average only', async () => {
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByLabel('How sure to be').selectOption({ label: 'Averages are enough' });
    await balance();
    await page.waitForSelector('[data-testid="verdict"][data-state="in"][data-sure="false"]');
    expect(await verdict().textContent()).toMatch(
      /^In range on the average\..* with a chance of [345]\d %\.$/,
    );
    // Advice that is worked out anew is paler meanwhile.
    await expect.poll(() => page.locator('[aria-busy="true"]').count()).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
  });

  test('the browser had nothing to complain of', () => {
    expect(bench.complaints).toEqual([]);
  });
});
