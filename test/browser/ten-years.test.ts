/**
 * A household after ten years, in a real browser: every screen draws a part of what is kept, and all of it can be
 * reached from there.
 */
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tenYears } from '../household/ten-years.ts';
import { axeFindings, type Bench, openBench, PHONE } from './harness.ts';
import { SCREENS } from './ten-years-screens.ts';

/** A screen draws no more than this, whatever is kept. */
const MOST_NODES = 2000;

const house = tenYears({ until: new Date().toISOString().slice(0, 10) });
let bench: Bench;
let page: Page;
beforeAll(async () => {
  bench = await openBench({ house });
  page = await bench.page();
});
afterAll(async () => {
  expect(bench.complaints).toEqual([]);
  await bench.close();
});

const nodes = async () => Number(await page.evaluate("document.querySelectorAll('*').length"));
async function open(hash: string, ready: string) {
  // Anew each time: a change of the address alone would leave what another screen drew.
  await page.goto('about:blank');
  await page.goto(`${bench.url}/#/${hash}`);
  await page.locator(ready).first().waitFor();
}
/** Presses a button of an end of a list until there is none more. @returns how often */
async function pressAll(name: RegExp, within: Page | Locator = page): Promise<number> {
  const button = within.getByRole('button', { name });
  for (let times = 0; ; times++) {
    if ((await button.count()) === 0) return times;
    await button.press('Enter');
    expect(await nodes()).toBeLessThan(MOST_NODES);
  }
}

describe('every screen', () => {
  for (const { hash, ready } of SCREENS)
    it(`draws a part: ${hash}`, async () => {
      await open(hash, ready);
      expect(await nodes()).toBeLessThan(MOST_NODES);
    });

  it('is had in answers of at most 200 kB', async () => {
    const other = await bench.page();
    const sizes: number[] = [];
    const read: Promise<void>[] = [];
    other.on('response', (answer) => {
      // The stream of changes has no end.
      if (!answer.url().includes('/api/') || answer.url().endsWith('/api/events')) return;
      read.push(
        answer.body().then((body) => {
          sizes.push(body.length);
        }),
      );
    });
    await other.goto(`${bench.url}/#/cupboard`);
    await other.locator('.lot-food').first().waitFor();
    await Promise.all(read);
    expect(sizes.reduce((sum, n) => sum + n, 0)).toBeGreaterThan(5_000_000);
    expect(Math.max(...sizes)).toBeLessThanOrEqual(200_000);
  });

  it('draws a part on a phone, with nothing serious for axe', async () => {
    const phone = await bench.page(PHONE);
    for (const hash of ['cupboard', 'weigh', 'foods']) {
      await phone.goto(`${bench.url}/#/${hash}`);
      await phone.locator('.parts').first().waitFor();
      expect(await axeFindings(phone)).toEqual([]);
    }
  });
});

describe('what is not drawn', () => {
  it('is found: a lot used up years ago, by its name', async () => {
    const [old] = house.lots;
    if (!old) throw new Error('no lot');
    await open('cupboard', '.lot-food');
    expect(await page.locator(`a[href="#/cupboard/${old.id}"]`).count()).toBe(0);
    await page.getByLabel('Search packs').fill(old.name);
    await page.locator(`a[href="#/cupboard/${old.id}"]`).click();
    await page.locator('.lot-page h2').getByText(old.name).waitFor();
  });

  it('is reached by the keyboard, part after part, to the last lot that is used up', async () => {
    await open('cupboard', '.lot-food');
    await page.getByRole('button', { name: /^Show the .* used-up packs$/ }).press('Enter');
    const usedUp = page
      .locator('section.lot-food')
      .filter({ has: page.getByRole('heading', { name: 'Used up' }) });
    const count = usedUp.getByRole('status');
    await usedUp.getByText(/^Showing 40 of 1\d{3}$/).waitFor();
    expect(await pressAll(/^Show \d+ more$/, usedUp)).toBeGreaterThan(40);
    const first = house.lots.findLast((l) => l.boughtOn === house.lots[0]?.boughtOn);
    expect(await page.locator(`a[href="#/cupboard/${first?.id}"]`).count()).toBe(1);
    // The keyboard stands at the end of the list, not at the top of the page.
    expect(await count.evaluate((p) => p === p.ownerDocument.activeElement)).toBe(true);
    await usedUp.getByRole('button', { name: 'Back to the first 40' }).press('Enter');
    await usedUp.getByText(/^Showing 40 of 1\d{3}$/).waitFor();
  });

  it('is reached on the scale: the first batch of all', async () => {
    await open('weigh', '.weigh-batches');
    const first = house.batches.find((b) => b.mixId === 'demo-mix');
    await pressAll(/^Show \d+ more$/);
    await page.locator(`a[href="#/weigh/${first?.id}"]`).click();
    await page.getByTestId('record-state').waitFor();
  });

  it('is there in a lot’s own page, and the lot stands in the list beside it', async () => {
    await open('cupboard/lot-30', '.lot-page h2');
    await page.locator('.finder a[aria-current]').first().waitFor();
  });

  it('is chosen from a long list by a part of its name', async () => {
    await open('cupboard/new', '.lot-form h2');
    const choice = page.getByLabel('Food', { exact: true });
    const food = house.foods.findLast((f) => f.kind === 'mix');
    if (!food) throw new Error('no food');
    expect(await choice.locator('option').count()).toBeLessThan(200);
    await page.getByLabel('Food: list those with').fill(food.name);
    await choice.selectOption(food.id);
    expect(await choice.inputValue()).toBe(food.id);
  });
});
