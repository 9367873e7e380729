/** Cautions in the mix, minerals and vitamins beside a target, forms of a food, its sources, and borrowing. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Mix, OwnFood } from '../../src/household/model.ts';
import { axeFindings, type Bench, openBench, overflow, PHONE } from './harness.ts';
import { householdAt } from './household-at.ts';
import { story } from './story.ts';

let bench: Bench;
let page: Page;

beforeAll(async () => {
  bench = await openBench();
  page = await bench.page();
});
afterAll(() => bench?.close());

const house = () => householdAt(bench.url);
const foodCalled = async (name: string): Promise<OwnFood> =>
  (await house()).foods.find((f) => f.name === name)!;
const cell = (nutrient: string) => page.getByRole('row', { name: nutrient }).first().locator('td');

async function show(ref: string, name: RegExp) {
  await page.goto(`${bench.url}/#/foods/${ref}`);
  await page.getByRole('heading', { level: 2, name }).waitFor();
}

describe('minerals and vitamins', () => {
  story();
  test('say what the mix brings, what only the pellet does, and what cannot be told', async () => {
    await page.goto(`${bench.url}/#/mix`);
    await page.getByText('Minerals and vitamins').click();
    const calcium = page.locator('[data-nutrient=CA]');
    await calcium.getByText('meets the needs').waitFor();
    // The invented label gives 900 mg as fed at 10 % moisture.
    expect(await calcium.textContent()).toContain('pellet1000');
    await page.getByText(/there the animal depends on the pellet/).waitFor();
    const iron = page.locator('[data-nutrient=FE]');
    expect(await iron.textContent()).toContain('cannot tell');
    expect(await iron.textContent()).toMatch(/ration ?at least/);
    expect(await iron.textContent()).toContain('pelletunknown');
    await page.locator('[data-nutrient="CA:P"]').waitFor();
  });

  test('can be compared with another target, and fit a phone', async () => {
    await page.getByLabel('Compared with').selectOption('mouse-nrc');
    await page.locator('[data-nutrient=BIOT]').getByText('cannot tell').waitFor();
    const phone = await bench.page(PHONE);
    await phone.goto(`${bench.url}/#/mix`);
    await phone.getByRole('button', { name: 'Nutrients', exact: true }).click();
    await phone.getByText('Minerals and vitamins').click();
    await phone.locator('[data-nutrient=CA]').waitFor();
    expect(await overflow(phone)).toBe(0);
    expect(await axeFindings(phone)).toEqual([]);
    await phone.close();
  });
});

describe('cautions', () => {
  story();
  test('a food never to be fed says why, and cannot be added', async () => {
    await show('sr28:11284', /Onion/);
    await page.getByText(/Never feed: Onion family/).waitFor();
    expect(await page.getByRole('button', { name: 'Add to mix' }).isDisabled()).toBe(true);
  });

  test('a limited food is capped until the keeper notes why more is fed; the note is kept', async () => {
    await show('sr28:12061', /almond/i);
    await page.getByRole('button', { name: 'Add to mix' }).click();
    await page.goto(`${bench.url}/#/mix`);
    const row = page.locator('[data-food=sr28-12061]');
    await row.getByText('limit 1 %').waitFor();
    await row.getByRole('button', { name: /^More about/ }).click();
    await row.getByText(/Only a little, at most 1 % of the mix/).waitFor();
    await row.getByRole('button', { name: /^More than 1 %: go ahead/ }).click();
    await page.keyboard.insertText('the vet wants it');
    expect(await axeFindings(page)).toEqual([]);
    await page.keyboard.press('Enter');
    await row.getByText('limit lifted').waitFor();
    const kept = async () => {
      const { problem } = (await house()).mixes[0] as Mix;
      return problem.foods.find((f) => f.ref === 'sr28:12061')?.override;
    };
    await expect.poll(async () => (await kept())?.note).toBe('the vet wants it');
    expect(await kept()).toMatchObject({ caution: 'almond', on: expect.stringMatching(/^\d{4}-\d\d-\d\d$/) });
    await row.getByRole('button', { name: 'Keep the limit after all' }).click();
    await row.getByText('limit 1 %').waitFor();
    await row.getByRole('button', { name: 'Remove from mix' }).click();
  });
});

describe('forms, sources and gaps', () => {
  story();
  test('a dried form follows from the fresh food, with its doubt, and says how much to buy', async () => {
    await show('sr28:11124', /Carrot/);
    await page.getByRole('button', { name: /^Make its dried/ }).click();
    await page.getByLabel('Moisture of the result').fill('4');
    await page.keyboard.press('Tab');
    // 100 g at 4 % from 88.29 % water: 100 x 96 / 11.71, and 11 % trimmed off (USDA SR28 11124).
    await page.getByText(/takes 820 g ready to dry, 921 g as bought/).waitFor();
    await page.getByRole('button', { name: /^Keep “/ }).click();
    await page.getByRole('heading', { level: 2, name: /dried/ }).waitFor();
    const kept = (await house()).foods.find((f) => /dried/.test(f.name))!;
    expect(kept.composition.PROCNT).toBeCloseTo(7.62, 2);
    expect(kept.sd.PROCNT).toBeGreaterThan(1);
    expect(kept.evidence?.sources?.[0]?.ref).toBe('sr28:11124');
  });

  test('what no source supports is said, not guessed', async () => {
    await show('sr28:11124', /Carrot/);
    await page.getByRole('button', { name: /^Make its dried/ }).click();
    await page.getByLabel('Form', { exact: true }).selectOption('sprouted');
    await page.getByText(/No published factors say what sprouting changes/).waitFor();
    expect(await page.getByRole('button', { name: /^Keep “/ }).count()).toBe(0);
  });

  test('a second source is combined, shown, and may be followed alone', async () => {
    const { id, name } = (await house()).foods.find((f) => /dried/.test(f.name))!;
    await page.goto(`${bench.url}/#/foods/${id}`);
    await page.getByRole('button', { name: 'Add a source' }).click();
    await page.getByLabel('The source is').selectOption('table');
    await page.getByLabel('Search the reference tables').fill('carrot dehydrated');
    await page.getByRole('button', { name: /NDB 11683, as a source/ }).click();
    await page.getByLabel('How the sources agree on').selectOption('PROCNT');
    const picture = page.getByRole('img', { name: /together/ });
    await picture.waitFor();
    const between = async () => (await foodCalled(name)).composition.PROCNT!;
    await expect.poll(between).toBeGreaterThan(7.63);
    expect(await between()).toBeLessThan(8.1);
    await page.getByLabel('What counts').selectOption({ label: 'USDA SR28 and SR26, NDB 11683 alone' });
    await expect.poll(between).toBe(8.1);
    expect(await axeFindings(page)).toEqual([]);
  });

  test('a gap is filled from a similar food by choice, marked, and given back with one press', async () => {
    await show('sr28:20031', /Millet/);
    await page.getByRole('button', { name: /^Keep as an own food/ }).click();
    await page.getByRole('button', { name: 'Edit', exact: true }).waitFor();
    await page.locator('summary', { hasText: 'Vitamins' }).click();
    const kept = async () => (await house()).foods.find((f) => f.name === 'Millet')!;
    const before = (await kept()).composition;
    expect(before.CHOLN).toBeUndefined();
    await page.getByRole('button', { name: 'Borrow choline from a similar food' }).click();
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Borrow .* from / })
      .first()
      .click();
    await expect.poll(async () => (await kept()).composition.CHOLN).toBeGreaterThan(0);
    expect((await kept()).evidence?.borrowed?.CHOLN?.from).toMatch(/:/);
    await cell('Choline').getByText('borrowed').waitFor();
    await page.getByRole('button', { name: 'Take back the borrowed choline' }).click();
    await expect.poll(async () => (await kept()).composition).toEqual(before);
  });

  test('fits a phone', async () => {
    const phone = await bench.page(PHONE);
    await phone.goto(`${bench.url}/#/foods/sr28:11124`);
    await phone.getByRole('button', { name: /^Make its dried/ }).click();
    await phone.getByText(/ready to dry/).waitFor();
    expect(await overflow(phone)).toBe(0);
    expect(await axeFindings(phone)).toEqual([]);
    expect(bench.complaints).toEqual([]);
  });
});
