/**
 * Thirty pours on a phone whose connection comes and goes, the page loaded anew among them: all of them are in sight all the
 * time, and there once, in the order in which they were made.
 */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import type { Pour } from '../../src/kitchen/model.ts';
import { randomFrom } from '../formulation/problems.ts';
import { weighedMixes } from '../kitchen/weighing-mixes.ts';
import { type Bench, openBench, PHONE } from './harness.ts';
import { householdAt, putAt } from './household-at.ts';
import { PATIENCE_MS } from './patience.ts';

const POURS = 30;
/** Pours from one loading of the page to the next: each finds some that were not sent, or not answered. */
const LOADED_EVERY = 9;
let bench: Bench;
let page: Page;

beforeAll(async () => {
  const { batch } = weighedMixes(loadReference(), await loadHighs(), 0)[0]!;
  bench = await openBench();
  for (const id of ['phone', 'tabs']) await putAt(bench.url, 'batches', { ...batch, id, mixId: 'demo-mix' });
  page = await bench.page(PHONE);
});
afterAll(() => bench?.close());

const onDisk = async (id = 'phone') => (await householdAt(bench.url)).batches.find((b) => b.id === id)!.pours;
const total = async (on = page) =>
  Number.parseFloat((await on.getByTestId('running-total').textContent()) ?? '');

test(`${POURS} pours with the connection cut at random and the page loaded anew are all there once, in order`, async () => {
  const random = randomFrom(30);
  /** 0: there; 1: nobody answers; 2: it is written, and the answer is lost on its way. */
  let line = 0;
  await page.route('**/api/**', async (route) => {
    if (line === 0 || route.request().method() === 'GET') return route.continue();
    if (line === 2) await route.fetch().catch(() => {});
    return route.abort().catch(() => {});
  });
  await page.goto(`${bench.url}/#/weigh/phone`);
  await page.getByTestId('target').waitFor();
  const made: Pick<Pour, 'food' | 'grams'>[] = [];
  let told = 0;
  let waited = 0;
  let unsent = 0;
  for (let n = 0; n < POURS; n++) {
    line = n === 0 ? 1 : n === POURS - 1 ? 2 : Math.floor(random() * 3);
    if (n % LOADED_EVERY === LOADED_EVERY - 1) {
      unsent += n - (await onDisk()).length;
      await page.reload();
      await page.getByTestId('target').waitFor();
    }
    // A food of 20 is poured in two goes at times, so that there are thirty.
    await expect.poll(() => total()).toBe(told);
    const name = await page.locator('#weigh-food').textContent();
    const target = Number.parseFloat((await page.getByTestId('target').textContent()) ?? '');
    const half = target > 1 && n < 2 * (POURS - 20);
    const grams = half ? Math.ceil(target / 2) : target;
    if (half) {
      await page.getByRole('textbox', { name: /^The scale shows/ }).fill(String(grams));
      await page.getByRole('button', { name: `Poured: ${grams} g` }).click();
    } else await page.getByRole('button', { name: `${target} g, right` }).click();
    told += grams;
    made.push({ food: name ?? '', grams });
    await expect.poll(() => total()).toBe(told);
    await page.locator('[data-testid=target], .weigh-step[aria-label="All is poured"]').first().waitFor();
    if (await page.getByTestId('waits').isVisible()) waited += 1;
  }
  line = 0;
  await expect.poll(async () => (await onDisk()).length).toBe(POURS);
  await page.getByTestId('waits').waitFor({ state: 'hidden' });
  const kept = await onDisk();
  expect(kept.map((p) => p.grams)).toEqual(made.map((p) => p.grams));
  expect(new Set(kept.map((p) => p.at)).size).toBe(POURS);
  expect([...kept].sort((a, b) => (a.at < b.at ? -1 : 1))).toEqual(kept);
  expect(await total()).toBe(told);
  expect(waited).toBeGreaterThan(3);
  expect(unsent).toBeGreaterThan(1);
});

test('a tab that was opened from another leaves it its pours, and takes them over once it is closed', async () => {
  const first = await bench.page(PHONE);
  let there = false;
  await first.context().route('**/api/**', (route) => {
    if (there || route.request().method() === 'GET') return route.continue();
    return route.abort().catch(() => {});
  });
  /** Pours what is asked for. @returns g */
  async function pour(on: Page): Promise<number> {
    const before = await total(on);
    const target = Number.parseFloat((await on.getByTestId('target').textContent()) ?? '');
    await on.getByRole('button', { name: `${target} g, right` }).click();
    await expect.poll(() => total(on)).toBe(before + target);
    return target;
  }
  const slots = () => first.evaluate("Object.keys(localStorage).filter((k) => k.includes('unsent')).sort()");
  await first.goto(`${bench.url}/#/weigh/tabs`);
  await first.getByTestId('target').waitFor();
  const poured = [await pour(first), await pour(first)];
  const left = await slots();
  const opened = first.context().waitForEvent('page');
  // With its session storage, as a tab that is doubled has it.
  await first.evaluate('void window.open(location.href)');
  const second = await opened;
  await second.getByTestId('target').waitFor();
  poured.push(await pour(second));
  expect(await slots()).toEqual(expect.arrayContaining(left as string[]));
  poured.push(await pour(first));
  expect((await onDisk('tabs')).length).toBe(0);
  await first.close({ runBeforeUnload: true });
  const all = poured.reduce((sum, grams) => sum + grams, 0);
  await expect.poll(() => total(second), { timeout: PATIENCE_MS }).toBe(all);
  await second.reload();
  await second.getByTestId('running-total').waitFor();
  expect(await total(second)).toBe(all);
  there = true;
  await expect.poll(async () => (await onDisk('tabs')).length, { timeout: PATIENCE_MS }).toBe(poured.length);
  await second.getByTestId('waits').waitFor({ state: 'hidden' });
  expect((await onDisk('tabs')).map((p) => p.grams).sort()).toEqual([...poured].sort());
  expect(await total(second)).toBe(all);
});
