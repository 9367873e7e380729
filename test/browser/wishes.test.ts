/** Wishes in a real browser: what is wished in order, rules that count, and the whole ration beside the mix. */
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { story } from './story.ts';

describe.each([
  ['desktop', DESKTOP],
  ['phone', PHONE],
])('on a %s', (_name, size) => {
  let bench: Bench;
  let page: Page;

  story();
  beforeAll(async () => {
    bench = await openBench();
    page = await bench.page(size);
    await page.goto(`${bench.url}/#/mix`);
    await verdictIs('out');
    await wishes();
  });
  afterAll(() => bench?.close());

  const verdictIs = (state: string) => page.waitForSelector(`[data-testid="verdict"][data-state="${state}"]`);
  const wishes = () => page.getByRole('tab', { name: 'Wishes' }).click();
  const list = () => page.locator('.wish legend').allTextContents();
  const wish = (words: string | RegExp) => page.locator('.wish', { hasText: words });
  const beside = (id: string) => page.locator(`[data-beside="${id}"]`);
  const focused = () => page.evaluate('document.activeElement?.getAttribute("aria-label")');
  const saved = () => page.getByText('Saved', { exact: true }).waitFor();
  const balance = () => page.getByRole('button', { name: 'Make it fit by these wishes' }).click();
  const shares = () =>
    page
      .locator('.share-row .number input')
      .evaluateAll((fields) => fields.map((f) => Number((f as unknown as { value: string }).value)));

  /** Counting can take seconds where the machine is busy. */
  const soon = <T>(ask: () => T) => expect.poll(ask);

  async function type(field: Locator, words: string) {
    await field.fill(words);
    await field.press('Enter');
  }
  async function clean() {
    expect(await overflow(page)).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
  }

  test('a liked food and what the cupboard holds are written in a food’s details', async () => {
    await page.getByRole('button', { name: 'More about Maize' }).click();
    const row = page.locator('.share-row[data-food="maize"]');
    await row.getByRole('checkbox', { name: 'Liked' }).check();
    await type(row.getByLabel('At home'), '45');
    await type(row.getByLabel('If used, at least'), '2');
    await clean();
    await page.getByRole('button', { name: 'More about Maize' }).click();
  });

  test('wishes are added, each with what it comes to in the balanced mix', async () => {
    await page.getByRole('button', { name: 'Add wish' }).click();
    await page.getByLabel('Another wish').selectOption('less');
    await page.getByLabel('Of what').selectOption({ label: 'Fat' });
    await page.getByRole('button', { name: 'Add wish' }).click();
    await page.getByLabel('Another wish').selectOption('few to buy');
    await page.getByRole('button', { name: 'Add wish' }).click();
    expect(await list()).toEqual([
      '1. As much of the liked foods as possible',
      '2. Less fat in the whole ration',
      '3. Few foods to buy',
    ]);
    await wish('liked').getByText('In the best mix: 15 % of the mix').waitFor();
    await wish('Less fat')
      .getByText(/In the best mix: [4-7](\.\d+)? g in 100 g of the whole ration/)
      .waitFor();
    await wish('Few foods')
      .getByText(/In the best mix: \d+ foods to buy/)
      .waitFor();
    await clean();
  });

  test('what is wished already, or cannot be worked out, is refused in words beside the field', async () => {
    await page.getByLabel('Another wish').selectOption('few to buy');
    await page.getByRole('button', { name: 'Add wish' }).click();
    await page.getByRole('alert').getByText('is wished already').waitFor();
    await page.getByLabel('Another wish').selectOption('cheap');
    await page.getByRole('button', { name: 'Add wish' }).click();
    await page.getByRole('alert').getByText('needs the price of every food').waitFor();
    expect(await list()).toHaveLength(3);
    await verdictIs('out');
  });

  test('the order is changed from the keyboard, and the keyboard stays with the wish', async () => {
    await wish('Less fat').getByRole('button', { name: 'Move up' }).focus();
    await page.keyboard.press('Enter');
    await soon(async () => (await list())[0]).toBe('1. Less fat in the whole ration');
    await page.getByText('“Less fat in the whole ration” is wish 1 of 3 now.').waitFor();
    // At the top there is no further up: the keyboard waits on the way back.
    await soon(focused).toBe('Move down: Less fat in the whole ration');
    await page.keyboard.press('Enter');
    await soon(async () => (await list())[1]).toBe('2. Less fat in the whole ration');
    await soon(focused).toBe('Move down: Less fat in the whole ration');
    await page.keyboard.press('Enter');
    await soon(focused).toBe('Move up: Less fat in the whole ration');
    await page.keyboard.press('Enter');
    await soon(async () => (await list())[1]).toBe('2. Less fat in the whole ration');
    await soon(focused).toBe('Move up: Less fat in the whole ration');
  });

  test('a wish may give way for what follows', async () => {
    await type(wish('liked').getByLabel('May give way by'), '3');
    await balance();
    await verdictIs('in');
    await wish('liked').getByText('In the best mix: 12 % of the mix').waitFor();
    await soon(() => page.getByLabel('Share of Maize', { exact: true }).inputValue()).toBe('12');
  });

  test('a wish is removed, and the keyboard goes to the next', async () => {
    await wish('Less fat').getByRole('button', { name: 'Remove' }).focus();
    await page.keyboard.press('Enter');
    await soon(list).toHaveLength(2);
    await soon(focused).toBe('Remove: Few foods to buy');
    await page.keyboard.press('Enter');
    await soon(list).toHaveLength(1);
  });

  test('several foods are fed beside, a fresh one by grams a day', async () => {
    await page.getByRole('button', { name: 'Settings' }).click();
    await beside('demo-pellet').getByLabel('Given as').selectOption('grams');
    await beside('demo-pellet').getByText('Grams a day need the whole ration of a day').waitFor();
    await page.getByRole('button', { name: 'Use 12 g' }).click();
    await soon(() => page.getByLabel('Whole ration of a day').inputValue()).toBe('12');
    await page.getByRole('button', { name: 'Add what is fed beside' }).click();
    await page.getByRole('searchbox', { name: 'Search foods' }).fill('cucumber');
    await page
      .getByRole('button', { name: /^Add .*cucumber/i })
      .first()
      .click();
    await clean();
    await page.getByRole('button', { name: 'Done' }).click();
    const cucumber = page.locator('.ration-row', { hasText: /cucumber/i });
    expect(await cucumber.getByRole('checkbox', { name: /Fresh/ }).isChecked()).toBe(true);
    await cucumber.getByText('a slice of cucumber does not lower the protein').waitFor();
    await cucumber.getByLabel('Given as').selectOption('grams');
    await type(cucumber.getByLabel('Grams a day'), '6');
    await cucumber.getByText(/Counted dry, that is 2\.\d+ % of the whole ration/).waitFor();
    const parts = page.getByRole('list', { name: 'Parts of the whole ration' });
    await parts.getByText('This mix').waitFor();
    expect(await parts.textContent()).toMatch(/This mix 47\.\d %.*Invented pellet 50 %.*2\.\d %/);
    await page.getByText(/50\s% Invented pellet; 2\.\d\s% .*cucumber.*; and 47\.\d\s% mix/i).waitFor();
    await clean();
  });

  test('more than the whole ration is refused beside the field and never lost', async () => {
    const field = beside('demo-pellet').getByLabel('Share of the whole ration');
    await type(field, '99');
    await beside('demo-pellet')
      .getByText(/99 is too high/)
      .waitFor();
    expect(await field.inputValue()).toBe('99');
    await beside('demo-pellet')
      .getByText(/what else is fed leaves no more/)
      .waitFor();
    await type(field, '50');
    const day = page.getByLabel('Whole ration of a day');
    await type(day, '0.1');
    await page.getByText(/Whole ration of a day: 0.1 is too low/).waitFor();
    await type(day, '12');
    await verdictIs('in');
  });

  test('the pellet’s share may be chosen, and what was chosen is said with how far it could go', async () => {
    const pellet = beside('demo-pellet');
    await type(pellet.getByLabel('May be from'), '30');
    await type(pellet.getByLabel('to', { exact: true }), '70');
    await pellet
      .getByText(/Chosen: 50 %. A mix keeps every rule from \d+(\.\d+)? to \d+(\.\d+)? %/)
      .waitFor();
    await clean();
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await axeFindings(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'light' });
  });

  test('where what is wanted fits no mix, the nearest share that does is chosen and counts everywhere', async () => {
    await page.getByRole('button', { name: 'Add what is fed beside' }).click();
    await page.getByRole('searchbox', { name: 'Search foods' }).fill('walnut');
    await page.getByRole('button', { name: 'Add Walnut', exact: true }).first().click();
    await page.getByRole('button', { name: 'Done' }).click();
    const walnut = page.locator('.ration-row', { hasText: 'Walnut' });
    await type(walnut.getByLabel('Share of the whole ration'), '20');
    await type(walnut.getByLabel('May be from'), '0');
    await walnut.getByText(/Chosen: \d(\.\d+)? %/).waitFor();
    const parts = page.getByRole('list', { name: 'Parts of the whole ration' });
    expect(await parts.textContent()).toMatch(/Walnut \d(\.\d)? %/);
    await page.getByText('“Pellet” stands for all that is fed beside the mix').waitFor({ state: 'attached' });
    await walnut.getByRole('button', { name: 'Remove Walnut from the ration' }).click();
    await page.getByText('Walnut is no longer fed beside the mix.').waitFor();
    await page
      .getByRole('region', { name: 'Verdict' })
      .getByRole('button', { name: 'Make it fit', exact: true })
      .click();
    await verdictIs('in');
  });

  test('a rule that counts is kept in every mix', async () => {
    await type(page.getByLabel('How many', { exact: true }), '18');
    await type(page.getByLabel('Share of each'), '6');
    await page.getByRole('alert').getByText('come to 108 %').waitFor();
    await type(page.getByLabel('Share of each'), '3');
    await page.locator('.count legend', { hasText: 'At least 18 foods with 3 % each' }).waitFor();
    await balance();
    await verdictIs('in');
    await soon(async () => (await shares()).filter((v) => v >= 3).length).toBeGreaterThanOrEqual(18);
    await page.locator('.count legend', { hasText: 'kept' }).and(page.locator(':has(.chip.in)')).waitFor();
    await type(page.locator('.count').getByLabel('With each'), '9');
    await page.getByRole('alert').getByText('come to 162 %').waitFor();
    expect(await page.locator('.count legend').first().textContent()).toContain('with 3 % each');
  });

  test('the least weight is offered at the scale step, and can be more', async () => {
    await page.getByRole('button', { name: 'Use the scale step, 1 g' }).click();
    await soon(() => page.getByLabel('No food under').inputValue()).toBe('1');
    await type(page.getByLabel('No food under'), '500');
    await page.getByText(/No food under: 500 is too high/).waitFor();
    await type(page.getByLabel('No food under'), '10');
    await balance();
    await verdictIs('in');
    // 10 g of a batch of 300 g.
    await soon(async () => (await shares()).filter((v) => v > 0 && v < 3.3).length).toBe(0);
    await clean();
  });

  test('a reload keeps all of it', async () => {
    await saved();
    await page.reload();
    await verdictIs('in');
    await page.getByRole('button', { name: 'Settings' }).click();
    expect(await beside('demo-pellet').getByLabel('May be from').inputValue()).toBe('30');
    expect(await page.getByLabel('Grams a day').inputValue()).toBe('6');
    await page.getByRole('button', { name: 'Settings' }).click();
    await wishes();
    expect(await list()).toEqual(['1. As much of the liked foods as possible']);
    expect(await wish('liked').getByLabel('May give way by').inputValue()).toBe('3');
    expect(await page.locator('.count').count()).toBe(1);
    expect(await page.getByLabel('No food under').inputValue()).toBe('10');
  });

  test('the browser had nothing to complain of', () => {
    expect(bench.complaints).toEqual([]);
  });
});
