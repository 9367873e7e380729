/** What is pressed while a line of error goes keeps its place: the press is not lost. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { EMPTY } from '../household/empty-household.ts';
import { type Bench, openBench } from './harness.ts';
import { householdAt } from './household-at.ts';

/** High enough that nothing scrolls: a browser that scrolls may hide what moves. */
const TALL = { width: 390, height: 2400 };

let bench: Bench;
let page: Page;
beforeAll(async () => {
  bench = await openBench({ house: EMPTY });
  page = await bench.page(TALL);
});
afterAll(() => bench?.close());

test('a form is saved by one press after its error was mended', async () => {
  await page.goto(bench.url);
  await page.getByLabel('Name').fill('Hazel');
  await page.getByLabel('Name').press('Enter');
  await page
    .getByLabel('The label of your pellet')
    .fill('Crude protein 17 %\nCrude fat min. 4 %\nCrude fibre 9 %\nMoisture 10 %');
  const fat = page.getByLabel('Fat at most');
  await fat.fill('much');
  await fat.press('Tab');
  await page.getByText(/“much” is not a number/).waitFor();
  await fat.fill('5');
  const keep = page.getByRole('button', { name: 'Keep the pellet' });
  await keep.scrollIntoViewIfNeeded();
  const box = await keep.boundingBox();
  if (!box) throw new Error('the button is not drawn');
  // At its lower edge: a button that moves up by a line would no longer be under the finger.
  await page.mouse.move(box.x + box.width / 2, box.y + box.height - 3);
  await page.mouse.down();
  await page.evaluate('new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))');
  expect((await keep.boundingBox())?.y).toBeCloseTo(box.y, 0);
  await page.mouse.up();
  await expect.poll(async () => (await householdAt(bench.url)).foods[0]?.high?.FAT).toBe(5);
});
