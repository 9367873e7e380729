/** What is pressed is seen as pressed at once: read in the same task, before any timer or later event. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Bench, openBench } from './harness.ts';

let bench: Bench;
let page: Page;
beforeAll(async () => {
  bench = await openBench();
  page = await bench.page();
});
afterAll(() => bench?.close());

/** Presses a radio and reads its state before anything else can run. */
async function pressed(name: string | RegExp): Promise<boolean> {
  const radio = page.getByRole('radio', { name });
  await radio.waitFor();
  return radio.evaluate((input: { click(): void; checked: boolean }) => {
    input.click();
    return input.checked;
  });
}

test('a radio whose choice is saved stays where it was pressed', async () => {
  await page.goto(`${bench.url}/#/shopping`);
  await page.getByText('Change how much').click();
  expect(await pressed('In days')).toBe(true);
  expect(await pressed('By weight')).toBe(true);
  await page.goto(`${bench.url}/#/calendar`);
  expect(await pressed(/^I begin on another day/)).toBe(true);
  expect(await pressed(/^It is ready by a day I choose/)).toBe(true);
  expect(bench.complaints).toEqual([]);
});
