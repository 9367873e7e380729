/** Noting what an animal left, on a phone and at a desk: how many presses it takes, and what it then says of what was eaten. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { plusDays } from '../../src/kitchen/days.ts';
import { dayAt } from '../../src/web/shared/today.ts';
import { fedHousehold, fedOn } from '../household/fed-household.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE, wcagFindings } from './harness.ts';
import { householdAt } from './household-at.ts';
import { story } from './story.ts';

const TODAY = dayAt(Date.now());
const day = (n: number) => plusDays(TODAY, n);
const ANIMAL = 'demo-animal';
/** Presses that noting left-overs may take, the one on the first page among them. */
const MOST = 5;

async function clean(page: Page): Promise<void> {
  expect(await axeFindings(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
}

describe.each([
  ['on a phone', PHONE],
  ['at a desk', DESKTOP],
] as const)('%s', (_, size) => {
  story();
  let bench: Bench;
  let page: Page;
  let presses = 0;

  beforeAll(async () => {
    const fed = [1, 2, 3, 4, 5].map((n) => fedOn(day(-n)));
    bench = await openBench({ house: { ...fedHousehold(TODAY), feedings: fed } });
    page = await bench.page(size, size === PHONE);
    await page.goto(`${bench.url}/#/animals/${ANIMAL}/left`);
    await page.getByRole('heading', { name: 'What did Bramble leave?' }).waitFor();
  });
  afterAll(() => bench?.close());

  const button = (name: string | RegExp) =>
    page.getByRole('button', { name, exact: typeof name === 'string' });
  async function press(name: string | RegExp): Promise<void> {
    presses++;
    await button(name).first().click();
  }
  /** From the first page to this one, by one press. */
  async function fromNow(): Promise<void> {
    await page.goto(`${bench.url}/#/today`);
    await page.getByRole('link', { name: /Left over.*Bramble|Bramble.*Left over/ }).click();
    await page.getByRole('heading', { name: 'What did Bramble leave?' }).waitFor();
    presses = 1;
  }
  const night = (n: number) => page.getByLabel('Of the food from').selectOption(day(n));
  const feeding = async (n: number) => {
    const { feedings } = await householdAt(bench.url);
    return feedings.find((f) => f.on === day(n));
  };
  /** Waits until the server keeps what was left of a night. */
  const keeps = (n: number, left: object | undefined) =>
    expect.poll(async () => (await feeding(n))?.left, { message: `night ${n}` }).toEqual(left);

  test('nothing left takes one press, and can be taken back', async () => {
    await fromNow();
    await page.getByText('Offered: 6 g of the mix and 6 g of Invented pellet, together 12 g.').waitFor();
    await clean(page);
    await press('Nothing left');
    expect(presses).toBeLessThanOrEqual(MOST);
    await page.getByText('Kept: nothing left.').waitFor();
    await keeps(-1, { on: TODAY, bowl: { grams: 0 } });
    await press('Undo');
    await page.getByText('Taken back.').waitFor();
    await keeps(-1, undefined);
    await button('Nothing left').waitFor();
  });

  test('a weight takes its digits and one press more', async () => {
    await fromNow();
    await press('3');
    await press('Decimal point');
    await press('5');
    await press('Keep');
    expect(presses).toBeLessThanOrEqual(MOST);
    await page.getByText('Kept: 3.5 g left.').waitFor();
    await keeps(-1, { on: TODAY, bowl: { grams: 3.5 } });
  });

  test('the hoard is a second question, which one press answers', async () => {
    await page.getByRole('heading', { name: 'Did you look for a hoard?' }).waitFor();
    await clean(page);
    await press('Nothing there');
    await keeps(-1, { on: TODAY, bowl: { grams: 3.5 }, hoard: { grams: 0 } });
    await page.getByText('3.5 g left of 12 g and no hoard').first().waitFor();
  });

  test('then it says what was eaten, food by food and nutrient by nutrient', async () => {
    const result = page.getByRole('region', { name: 'What was eaten' });
    await result
      .getByText(/Of 12 g offered, 8.5 g was taken\. Eaten, with the hoards counted: 8.5 g\./)
      .waitFor();
    const pellet = result.getByRole('row', { name: /^Invented pellet/ });
    // 3.5 g were left, and any of them may have been pellet.
    await pellet.getByText('2.5 g to 6 g of 6 g').waitFor();
    await result.getByRole('region', { name: 'What that means for its food' }).getByText('Protein').waitFor();
    await clean(page);
  });

  test('foods that were mostly left are named by a press each', async () => {
    await night(-2);
    await page.getByText('These were mostly left').waitFor();
    presses = 1;
    await press('Millet');
    await press('Linseed');
    await page.locator('.left-keep-again').click();
    presses++;
    expect(presses).toBeLessThanOrEqual(MOST);
    await keeps(-2, { on: day(-1), bowl: { mostly: ['millet', 'linseed'] } });
    await page.getByText('mostly left: Millet and Linseed').first().waitFor();
  });

  test('what was sorted is kept food by food', async () => {
    await night(-3);
    await press('Weigh it food by food');
    await page.getByLabel('Millet', { exact: true }).fill('0,2');
    await page.getByLabel('Invented pellet', { exact: true }).fill('1.5');
    await clean(page);
    await press('Keep');
    await keeps(-3, { on: day(-2), bowl: { parts: { millet: 0.2, 'demo-pellet': 1.5 }, sorted: true } });
    await page.getByText('Kept: 1.7 g left.').waitFor();
    await press('Found some');
    await press('2');
    await press('Keep');
    await expect.poll(async () => (await feeding(-3))?.left?.hoard).toEqual({ grams: 2 });
  });

  test('nothing typed is told, and more left than offered is kept with a word', async () => {
    await night(-4);
    await press('Keep');
    await page.getByText('Type what was left, or choose a food that was mostly left.').waitFor();
    await page.getByLabel('All that was left').fill('20');
    await press('Keep');
    await keeps(-4, { on: day(-3), bowl: { grams: 20 } });
    await page.getByText(/More was left than was offered/).waitFor();
    await clean(page);
  });

  test('a night is corrected, and deleted with a way back', async () => {
    await page
      .getByRole('button', { name: /^Correct .*/ })
      .nth(3)
      .click();
    await page.getByLabel('All that was left').fill('2');
    await press('Keep');
    await keeps(-4, { on: day(-3), bowl: { grams: 2 } });
    await page
      .getByRole('button', { name: /^Delete what was noted of/ })
      .nth(3)
      .click();
    await page.getByText('Deleted.').waitFor();
    await keeps(-4, undefined);
    await press('Undo');
    await keeps(-4, { on: day(-3), bowl: { grams: 2 } });
  });

  test('where nobody ticked the food off, the usual meal counts and may be changed', async () => {
    await night(-6);
    await page.getByText('Nobody ticked this off, so the usual meal counts.').waitFor();
    await press('Change');
    await page.getByLabel('Mix', { exact: true }).fill('8');
    await page.getByLabel('Mix', { exact: true }).press('Enter');
    await page.getByText('Offered: 8 g of the mix and 6 g of Invented pellet, together 14 g.').waitFor();
    await clean(page);
    await press('Nothing left');
    await expect.poll(async () => (await feeding(-6))?.mix).toEqual({ batchId: 'batch-1', grams: 8 });
    expect((await feeding(-6))?.at).toBeUndefined();
  });

  test('without a connection it is kept on the device, and sent when there is one', async () => {
    await page.context().setOffline(true);
    await night(-5);
    await press('Nothing left');
    await page.getByText('Kept: nothing left.').waitFor();
    expect((await feeding(-5))?.left).toBeUndefined();
    await page.context().setOffline(false);
    await keeps(-5, { on: day(-4), bowl: { grams: 0 } });
  });

  test('a hoard that was found alone is kept without a word of the bowl', async () => {
    await night(-7);
    await page.getByText('More: several nights, or only a hoard').click();
    await press('Nothing there');
    await keeps(-7, { on: day(-6), hoard: { grams: 0 } });
    await page.getByText('left-overs not looked at and no hoard').waitFor();
  });

  test('several nights are looked at together', async () => {
    await night(-9);
    await page.getByText('More: several nights, or only a hoard').click();
    await page.getByLabel('Food of how many nights lay there').selectOption(day(-11));
    await press('Nothing left');
    await keeps(-9, { on: day(-8), since: day(-11), bowl: { grams: 0 } });
    await page
      .getByText(/^nothing left and food since/)
      .first()
      .waitFor();
    // Nobody had said what was offered on the two days before.
    await page.getByText('For 2 of the days nobody said what was offered; they count as nothing.').waitFor();
  });

  test('the browser had nothing to complain of but the lost connection', () => {
    expect(bench.complaints.filter((c) => !/ERR_INTERNET_DISCONNECTED|Failed to fetch/.test(c))).toEqual([]);
  });
});

test.each(['de', 'nl'])('fits a phone in %s, by day and by night', async (language) => {
  const left = { on: TODAY, bowl: { grams: 2.5, mostly: ['millet'] } };
  const house = {
    ...fedHousehold(TODAY),
    feedings: [fedOn(day(-2), { ...left, on: day(-1) }), fedOn(day(-1))],
  };
  const bench = await openBench({ house });
  try {
    const page = await bench.page(PHONE);
    await page.addInitScript(`localStorage.setItem('pouchful.manner', '{"language":"${language}"}')`);
    await page.goto(`${bench.url}/#/animals/${ANIMAL}/left`);
    await page.locator('.left-nutrients dd').first().waitFor();
    await page.locator('.left-nothing').waitFor();
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await wcagFindings(page), colorScheme).toEqual([]);
      expect(await overflow(page)).toBe(0);
    }
  } finally {
    await bench.close();
  }
});
