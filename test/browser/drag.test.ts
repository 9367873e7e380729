/** A slider that is dragged by hand: everything follows while it moves, and it is kept when it is let go or the page left. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { houseToDrag, measureDrag } from './drag-timing.ts';
import { type Bench, DESKTOP, openBench } from './harness.ts';
import { householdAt } from './household-at.ts';
import { story } from './story.ts';

const FOOD = 'millet';
let bench: Bench;
let page: Page;

story();
beforeAll(async () => {
  bench = await openBench({ house: houseToDrag() });
  page = await bench.page();
  await page.goto(`${bench.url}/#/mix`);
});
afterAll(() => bench?.close());

const row = (food: string) => page.locator(`.share-row[data-food="${food}"]`);
const share = async (food = FOOD) => Number(await row(food).locator('.number input').inputValue());
const kept = async () => (await householdAt(bench.url)).mixes[0]!.shares;
const windows = () => page.locator('.windows .value').allTextContents();

/** Takes hold of the thumb and brings it so far to the right, in percent of the mix. */
async function drag(by: number) {
  const thumb = (await row(FOOD).locator('.thumb').boundingBox())!;
  const track = (await row(FOOD).locator('.track').boundingBox())!;
  const top = Number(await row(FOOD).locator('input[type="range"]').getAttribute('max'));
  const [x, y] = [thumb.x + thumb.width / 2, thumb.y + thumb.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + (by / top) * track.width, y, { steps: 8 });
}

async function total(): Promise<number> {
  const boxes = await page.locator('.share-row .number input').all();
  const all = await Promise.all(boxes.map((box) => box.inputValue()));
  return all.reduce((sum, text) => sum + Number(text), 0);
}

/** Shares of the other foods that are drawn within the window. */
async function sharesInSight(): Promise<number[]> {
  const rows = await page.locator(`.share-row:not([data-food="${FOOD}"])`).all();
  const seen: number[] = [];
  for (const each of rows) {
    const box = await each.boundingBox();
    if (box && box.y > 0 && box.y + box.height < DESKTOP.height)
      seen.push(Number(await each.locator('.number input').inputValue()));
  }
  return seen;
}

test('while it moves, the others and the ranges follow, and nothing is kept yet', async () => {
  await page.getByRole('region', { name: 'Verdict' }).getByRole('button', { name: 'Make it fit' }).click();
  await page.locator('[data-testid="verdict"][data-state="in"]').waitFor();
  await page.getByText('Saved', { exact: true }).waitFor();
  const [before, ranges, stood] = [await share(), await windows(), await kept()];
  const others = await sharesInSight();
  await drag(4);
  await expect.poll(share).toBeCloseTo(before + 4, 0);
  await expect.poll(sharesInSight).not.toEqual(others);
  await expect.poll(windows).not.toEqual(ranges);
  expect(await kept()).toEqual(stood);
});

test('let go it is kept, and is one step to take back', async () => {
  const moved = await share();
  const stood = await kept();
  await page.mouse.up();
  await expect.poll(async () => (await kept())[FOOD]).toBeCloseTo(moved, 1);
  // What was out of sight follows now: the shares shown are all of the mix again.
  await expect.poll(async () => Math.abs((await total()) - 100)).toBeLessThan(1.6);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect.poll(async () => (await kept())[FOOD]).toBeCloseTo(stood[FOOD]!, 6);
});

test('a page that is left with the hand on the slider has kept where it was', async () => {
  await drag(3);
  const moved = Number(await row(FOOD).locator('input[type="range"]').inputValue());
  await expect.poll(share).toBeCloseTo(moved, 1);
  await page.reload();
  await expect.poll(async () => (await kept())[FOOD]).toBeCloseTo(moved, 1);
  await expect.poll(share).toBeCloseTo(moved, 1);
  await page.mouse.up();
});

test('the keyboard goes on where the hand let go', async () => {
  await page.locator('[data-testid="verdict"][data-state="in"]').waitFor();
  await drag(-1);
  await page.mouse.up();
  const put = Number(await row(FOOD).locator('input[type="range"]').inputValue());
  await page.keyboard.press('ArrowRight');
  await expect.poll(async () => (await kept())[FOOD]).toBeCloseTo(put + 0.1, 1);
});

test('what the last move of a hand comes to is shown, and how long it took can be measured', async () => {
  await page.locator('[data-testid="verdict"][data-state="in"]').waitFor();
  const { moves, work } = await measureDrag(page, { food: FOOD, by: -2, legs: 1, steps: 8 });
  expect(moves.at(-1)?.shown).toBeGreaterThan(0);
  expect(work.all).toBeGreaterThan(0);
});

test('the browser had nothing to complain of', () => {
  expect(bench.complaints).toEqual([]);
});
