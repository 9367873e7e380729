/** While it is proven which foods are in the best mix, the screen answers; the proof tells, is stopped, and is dropped. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { story } from './story.ts';
import { countingHousehold } from './two-lanes-house.ts';

describe.each([
  ['desktop', DESKTOP],
  ['phone', PHONE],
])('on a %s', (_name, size) => {
  let bench: Bench;
  let page: Page;

  story();
  beforeAll(async () => {
    bench = await openBench({ house: countingHousehold() });
    page = await bench.page(size);
    await page.goto(`${bench.url}/#/mix`);
  });
  afterAll(() => bench?.close());

  const soFar = () => page.locator('.verdict .so-far');
  const runs = () => soFar().getByRole('button', { name: 'Stop here' });
  const maize = () => page.locator('.share-row[data-food="maize"]');
  const share = async () =>
    Number(await maize().getByRole('textbox', { name: 'Share of Maize' }).inputValue());
  const verdict = () => page.getByTestId('verdict');
  const workers = () => page.workers().length;
  const makeFit = () => page.locator('.verdict .big-button', { hasText: 'Make it fit' }).click();

  test('it is told what is found so far, and how much better it may get', async () => {
    await soFar()
      .getByText(
        /Best found so far: a mix that keeps every limit\. It may get more varied by at most \d+ %\./,
      )
      .waitFor();
    await runs().waitFor();
    expect(workers()).toBe(2);
    expect(await overflow(page)).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
  });

  test('meanwhile a share moves, and how the mix stands is there at once', async () => {
    const before = await share();
    const [was, told] = [await verdict().getAttribute('data-state'), await verdict().textContent()];
    expect(was).toBe('out');
    await maize().getByRole('slider').focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(share).toBeCloseTo(before + 0.1, 5);
    await expect.poll(() => verdict().textContent()).not.toBe(told);
    // The proof is where it was.
    expect(await runs().count()).toBe(1);
    expect(workers()).toBe(2);
  });

  test('meanwhile a food is found', async () => {
    await page.getByRole('button', { name: 'Add a food' }).click();
    await page.getByRole('searchbox').fill('parsley dried');
    await page
      .getByRole('button', { name: /parsley/i })
      .first()
      .waitFor();
    expect(await page.locator('.so-far').count()).toBe(1);
    expect(workers()).toBe(2);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await page.getByRole('searchbox').waitFor({ state: 'detached' });
  });

  test('stopped, what was found stays, is said not to be proven, and is what the mix is made of', async () => {
    await runs().click();
    await soFar().getByText('it is not proven that there is no better one').waitFor();
    await soFar().getByText('It may get more varied by at most').waitFor();
    await expect.poll(workers).toBe(1);
    await makeFit();
    await page.waitForSelector('[data-testid="verdict"][data-state="in"]');
    await page.getByText('It is the best found before you stopped; there may be a better one.').waitFor();
    expect(await overflow(page)).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
  });

  test('it goes on where the keeper says so, and is dropped when the rules change', async () => {
    await soFar().getByRole('button', { name: 'Go on looking' }).click();
    await runs().waitFor();
    await expect.poll(workers).toBe(2);
    const [proving] = page.workers().slice(-1);
    const dropped = new Promise((ended) => proving?.on('close', ended));
    await page.getByRole('button', { name: 'More about Maize' }).click();
    await maize().getByLabel('At most').fill('9');
    await maize().getByLabel('At most').press('Enter');
    await dropped;
  });

  test('“Make it fit” waits for the best mix, and takes what is found where it is stopped', async () => {
    await makeFit();
    await soFar().getByText('Best found so far').waitFor();
    await runs().click();
    await page.getByText('It is the best found before you stopped; there may be a better one.').waitFor();
    await page.waitForSelector('[data-testid="verdict"][data-state="in"]');
    expect(await share()).toBeLessThanOrEqual(9);
  });

  test('the browser had nothing to complain of', () => {
    expect(bench.complaints).toEqual([]);
  });
});
