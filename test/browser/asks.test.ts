/** Asks are answered on the food's own row, and what can hurt stands above the foods, in a real browser. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt, putAt } from './household-at.ts';
import { story } from './story.ts';

describe.each([
  ['desktop', DESKTOP],
  ['phone', PHONE],
])('on a %s', (_name, size) => {
  let bench: Bench;
  let page: Page;

  story();
  beforeAll(async () => {
    bench = await openBench({ margin: true });
    const [mix] = (await householdAt(bench.url)).mixes;
    if (!mix) throw new Error('the demonstration has no mix');
    const { problem } = mix;
    const foods = [
      ...problem.foods,
      { id: 'carrot', name: 'Carrot', ref: 'sr28:11124', group: 'vegetable' },
      {
        id: 'treat',
        name: 'Party treat',
        group: 'seed',
        composition: { PROCNT: 10, FAT: 9, FIBC: 5, WATER: 8 },
        ingredients: ['Ingredients: oat flakes, chocolate, dried onion'],
      },
    ];
    await putAt(bench.url, 'mixes', { ...mix, problem: { ...problem, foods } });
    page = await bench.page(size);
    await page.goto(`${bench.url}/#/mix`);
  });
  afterAll(() => bench?.close());

  const hurt = (kind: string) => page.locator(`[data-hurt="${kind}"]`);
  const row = (food: string) => page.locator(`.share-row[data-food="${food}"]`);
  const share = (food: string) => row(food).locator('.number input');

  test('a fresh food and a list with what must not be fed stand above the foods', async () => {
    await hurt('fresh').getByText('Carrot is fresh').waitFor();
    await hurt('listed').getByText('Party treat stays at 0 %').waitFor();
    expect(await overflow(page)).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
  });

  test('one press puts the fresh food in dried', async () => {
    await hurt('fresh').getByRole('button').click();
    await hurt('fresh').waitFor({ state: 'detached' });
    const kept = async () => (await householdAt(bench.url)).mixes[0]?.problem.foods.map((f) => f.ref);
    await expect.poll(kept).not.toContain('sr28:11124');
  });

  test('what must not be fed goes in only with a reason, which is kept and shown', async () => {
    await hurt('listed').getByRole('button').click();
    await page.keyboard.insertText('only for the show');
    await page.keyboard.press('Enter');
    await hurt('gone').getByText('only for the show').waitFor();
    await hurt('gone').getByRole('button', { name: 'Keep it out' }).click();
    await hurt('listed').waitFor();
  });

  test('a wish that was not met says which limit stopped it', async () => {
    await page.locator('.verdict .big-button').click();
    await row('sunflower-seed-shelled')
      .getByText(/^Wanted 5 %, got [\d.]+ %: .*fat would come close to 7 %/)
      .waitFor();
  });

  test('a share that would empty other foods asks first; left, nothing has changed', async () => {
    const before = await share('sunflower-seed-shelled').inputValue();
    const ask = row('sunflower-seed-shelled').locator('[data-ask="empties"]');
    await share('sunflower-seed-shelled').fill('14');
    await page.keyboard.press('Enter');
    await ask.getByText(/^14 % here would leave nothing of /).waitFor();
    expect(await share('sunflower-seed-shelled').inputValue()).toBe(before);
    await ask.getByRole('button', { name: 'Leave it' }).click();
    await ask.waitFor({ state: 'detached' });
    await share('sunflower-seed-shelled').fill('14');
    await page.keyboard.press('Enter');
    await ask.getByRole('button', { name: 'Take it' }).click();
    await row('sunflower-seed-shelled')
      .getByText(/^Wanted 14 %, got [\d.]+ %: .*fat would pass 7 %/)
      .waitFor();
  });

  test('the browser had nothing to complain of', () => {
    expect(bench.complaints).toEqual([]);
  });
});
