/** Finding a food, reading it, and keeping one's own from its label. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt } from './household-at.ts';
import { story } from './story.ts';

let bench: Bench;
let page: Page;

beforeAll(async () => {
  bench = await openBench();
  page = await bench.page();
  await page.goto(`${bench.url}/#/foods`);
});
afterAll(() => bench?.close());

const cell = (nutrient: string) => page.getByRole('row', { name: nutrient }).first().locator('td');

describe('reference foods', () => {
  story();
  test('“oats” finds oats, plain foods first', async () => {
    await page.getByRole('searchbox', { name: 'Search foods' }).fill('oats');
    await page.getByRole('heading', { name: 'Reference foods' }).waitFor();
    const first = page.locator('.food-list').nth(1).getByRole('link').first();
    await expect.poll(() => first.textContent()).toMatch(/^Oats|^Rolled oats/);
  });

  test('words of other languages find, and what the tables lack is said', async () => {
    const search = page.getByRole('searchbox', { name: 'Search foods' });
    await search.fill('Haferflocken');
    const first = page.locator('.food-list').nth(1).getByRole('link').first();
    await expect.poll(() => first.textContent()).toMatch(/^Rolled oats/);
    await search.fill('wheat flakes');
    await page.getByText('The tables have no wheat flakes. The nearest is Wheat, soft.').waitFor();
    await expect.poll(() => first.textContent()).toMatch(/^Wheat, soft/);
    await search.fill('brewers yeast');
    await page.getByText(/^The tables have no brewer's yeast\./).waitFor();
    await search.fill('oats');
    await expect.poll(() => page.getByText(/^The tables have no/).count()).toBe(0);
  });

  test('amounts follow the quantity and the basis; unknown is never 0', async () => {
    await page.goto(`${bench.url}/#/foods/sr28:20038`);
    await page.getByRole('heading', { name: 'Oats', exact: true }).waitFor();
    expect(await cell('Protein').textContent()).toContain('16.9 g');
    expect(await cell('Crude fibre').textContent()).toMatch(/^unknown/);
    await page.getByLabel('Amounts per').fill('250');
    await page.keyboard.press('Enter');
    await expect.poll(() => cell('Protein').textContent()).toContain('42.2 g');
    await page.getByLabel('Amounts per').fill('100');
    await page.keyboard.press('Enter');
    await page.getByLabel('Of', { exact: true }).selectOption('dry matter');
    // 16.89 / (1 - 0.0822)
    await expect.poll(() => cell('Protein').textContent()).toContain('18.4 g');
  });
});

describe('own foods', () => {
  story();
  test('a label for 250 g, with a decimal comma, is kept per 100 g', async () => {
    await page.getByRole('button', { name: 'New food' }).click();
    await page.getByLabel('Name').fill('Barley flakes, own label');
    await page.getByLabel('Group').selectOption('seed');
    await page.getByLabel('Fill in fields').check();
    await page.getByLabel('Amounts are for').fill('250');
    await page.getByLabel('Protein', { exact: true }).fill('27,5');
    await page.getByLabel('Fat', { exact: true }).fill('6.25');
    await page.getByText('= 11 g in 100 g as fed').waitFor();
    await page.getByRole('button', { name: 'Save food' }).click();
    await page.getByRole('heading', { name: 'Barley flakes, own label' }).waitFor();
    expect(await cell('Protein').textContent()).toContain('11.0 g');
    expect(await cell('Fat').textContent()).toContain('2.50 g');
    expect(await cell('Ash').textContent()).toMatch(/^unknown/);
    await page.reload();
    await page.getByRole('heading', { name: 'Barley flakes, own label' }).waitFor();
    const house = await householdAt(bench.url);
    const kept = house.foods.find((f) => f.name.startsWith('Barley flakes'));
    expect(kept?.composition).toEqual({ PROCNT: 11, FAT: 2.5 });
  });

  test('dry matter needs the moisture, and is converted by it', async () => {
    await page.getByRole('button', { name: 'Edit' }).click();
    await page.getByLabel('Of', { exact: true }).selectOption('dry matter');
    await page
      .getByText(/need the moisture/)
      .first()
      .waitFor();
    await page.getByLabel('Moisture', { exact: true }).fill('10');
    await page.getByLabel('Protein', { exact: true }).fill('20');
    await page.keyboard.press('Tab');
    await page.getByText('= 18 g in 100 g as fed').waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole('button', { name: 'Save food' }).click();
    await expect.poll(() => cell('Protein').textContent()).toContain('18.0 g');
  });

  test('parts over 100 % are refused with the way out', async () => {
    await page.getByRole('button', { name: 'Edit' }).click();
    await page.getByLabel('Protein', { exact: true }).fill('70');
    await page.getByLabel('Fat', { exact: true }).fill('40');
    await page.getByRole('button', { name: 'Save food' }).click();
    const alert = page.getByRole('alert').filter({ hasText: 'add up to' });
    await alert.waitFor();
    expect(await alert.textContent()).toMatch(/protein 70.*fat 40.*[Cc]heck/);
    await page.getByRole('button', { name: 'Cancel' }).click();
  });

  test('it goes into the mix, where the verdict still stands', async () => {
    await page.getByRole('button', { name: 'Add to mix' }).click();
    await page.getByRole('link', { name: 'Mixes', exact: true }).click();
    await page.getByLabel('Share of Barley flakes, own label', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Make it fit', exact: true }).click();
    await page.waitForSelector('[data-testid="verdict"][data-state="in"]');
  });

  const uses = async (food: string) => {
    const house = await householdAt(bench.url);
    const { id } = house.foods.find((f) => f.name.startsWith(food)) ?? {};
    return house.mixes.some((m) => m.problem.foods.some((f) => f.id === id || f.name?.startsWith(food)));
  };

  test('deleting it asks first, and says which mixes use it', async () => {
    await page.goto(`${bench.url}/#/foods`);
    await page.getByRole('link', { name: /Barley flakes/ }).click();
    await page.getByRole('button', { name: 'Delete', exact: true }).click();
    await page.getByText(/The mix First mix uses it\. It is taken out there first/).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByText(/It is taken out there first/).waitFor({ state: 'detached' });
    expect(await uses('Barley flakes')).toBe(true);
  });

  test('it goes out of the mix and is deleted, and comes back with one press', async () => {
    await page.getByRole('button', { name: 'Delete', exact: true }).click();
    await page.getByRole('button', { name: 'Take it out and delete it' }).click();
    await page.getByText('Barley flakes, own label is deleted.').waitFor();
    await expect.poll(() => page.getByRole('link', { name: /Barley flakes/ }).count()).toBe(0);
    await expect.poll(() => uses('Barley flakes')).toBe(false);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('heading', { name: 'Barley flakes, own label', level: 2 }).waitFor();
    await expect.poll(() => uses('Barley flakes')).toBe(true);
    expect(await cell('Protein').textContent()).toContain('18');
  });

  test('one whose list names chocolate says that it stays out of every mix, and does', async () => {
    await page.getByRole('button', { name: 'Edit' }).click();
    await page.getByLabel('Ingredient list, as printed (optional)').fill('barley, dark chocolate, no onion');
    await page.getByRole('button', { name: 'Save food' }).click();
    await page.getByText('Stays out of every mix').waitFor();
    await page.getByText(/names “chocolate” \(Chocolate and cocoa\): never to be fed/).waitFor();
    const listed = async () => {
      const { mixes } = await householdAt(bench.url);
      return mixes.flatMap((m) => m.problem.foods.flatMap((f) => f.ingredients ?? []));
    };
    await expect.poll(listed).toEqual(['barley, dark chocolate, no onion']);
  });
});

describe.each([
  ['desktop', DESKTOP],
  ['phone', PHONE],
])('the screens on a %s', (_name, size) => {
  story();
  test.each(['foods', 'foods/sr28:20038', 'foods/new'])(
    '%s is accessible and does not scroll sideways',
    async (place) => {
      const other = await bench.page(size);
      await other.goto(`${bench.url}/#/${place}`);
      await other
        .locator(place === 'foods' ? '.food-list a' : '.detail h2')
        .first()
        .waitFor();
      expect(await overflow(other)).toBe(0);
      expect(await axeFindings(other)).toEqual([]);
    },
  );
});

test('the browser had nothing to complain of', () => {
  expect(bench.complaints).toEqual([]);
});
