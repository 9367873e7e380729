/** A batch beside the scale, on a phone: from the first gram to the last, through closed pages, a wrong pour and a lost network. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Batch } from '../../src/kitchen/model.ts';
import { axeFindings, type Bench, openBench, overflow, PHONE, pressIfThere } from './harness.ts';
import { householdAt, putAt } from './household-at.ts';
import { story } from './story.ts';

let bench: Bench;
let page: Page;
/** Address of the batch at hand. */
let here: string;

story();
beforeAll(async () => {
  bench = await openBench();
  page = await bench.page(PHONE);
  await page.goto(`${bench.url}/#/mix`);
});
afterAll(() => bench?.close());

const reading = () => page.getByRole('textbox', { name: 'The scale shows, in g' });
const press = (name: string | RegExp) => page.getByRole('button', { name }).click();
const text = async (id: string, on = page) => (await on.getByTestId(id).textContent()) ?? '';
const total = async () => Number.parseFloat(await text('running-total'));
const status = () => text('weigh-status');
const foodNow = async () => (await page.locator('#weigh-food').textContent()) ?? '';
const target = async () => Number.parseFloat(await text('target'));
/** What stands on the page: food, weight, tolerance, total, state. */
const standing = async () => [
  await foodNow(),
  await target(),
  await text('tolerance'),
  await total(),
  await status(),
];

async function kept(): Promise<readonly Batch[]> {
  return (await householdAt(bench.url)).batches;
}

/** Pours so many grams and waits for what comes after. */
async function pour(grams: number) {
  const before = await total();
  await reading().fill(String(grams));
  await press(/^Poured/);
  await expect.poll(total).toBeCloseTo(before + grams, 6);
}

/** Where a question is asked before the batch becomes another, it is answered by its first way. */
async function agreed() {
  if ((await status()) !== '? Your choice is needed') return;
  await page.locator('.weigh-ask .button').first().click();
  await expect.poll(status).not.toBe('? Your choice is needed');
}

/** Closes the page and goes on from another device. */
async function reopened() {
  await page.context().close();
  page = await bench.page(PHONE);
  await page.goto(here);
  await page.getByTestId('running-total').waitFor();
}

/** A batch that would have to become another is asked about; here it stays, out of range. */
async function keptAsItIs() {
  await page.locator('.weigh-ask, .weigh-lost').first().waitFor();
  await pressIfThere(page.getByRole('button', { name: /^Keep .* and leave it out of range$/ }));
  await expect.poll(status).toBe('! Out of range');
}

async function looksRight() {
  expect(await overflow(page)).toBe(0);
  expect(await axeFindings(page)).toEqual([]);
}

async function begin() {
  await page.goto(`${bench.url}/#/weigh`);
  await press(/^Begin with/);
  await page.getByTestId('target').waitFor();
  here = page.url();
}

describe('before the first gram', () => {
  test('a mix out of range is not weighed out', async () => {
    await press('Weigh out a batch');
    await page.getByText('Make the mix fit first; then it can be weighed out.').waitFor();
    expect(await page.getByRole('button', { name: /^Begin with/ }).isDisabled()).toBe(true);
    await looksRight();
  });

  test('from a mix in range a batch is begun and kept at once', async () => {
    await page.getByRole('link', { name: 'Back to the mix' }).click();
    await page.locator('.verdict .big-button').click();
    await page.waitForSelector('[data-testid="verdict"][data-state="in"]');
    await page.getByText('Saved', { exact: true }).waitFor();
    await press('Weigh out a batch');
    await page.getByRole('button', { name: 'Begin with 300 g' }).waitFor();
    await looksRight();
    await begin();
    const [batch] = await kept();
    expect(batch).toMatchObject({ name: 'First mix', grams: 300, pours: [] });
    expect(await status()).toBe('= As planned');
    expect(await text('tolerance')).toMatch(/keeps the ration in range/);
    await looksRight();
  });
});

describe('from the first gram to the last', () => {
  test('closed after each of the first three pours, it stands at the last poured food on another device', async () => {
    for (let n = 1; n <= 3; n++) {
      const food = await foodNow();
      // The second food is poured grossly wrong.
      await pour(n === 2 ? Math.round(1.5 * (await target())) : await target());
      await agreed();
      const before = await standing();
      await reopened();
      expect(await standing()).toEqual(before);
      expect(await page.locator('.weigh-list li', { hasText: food }).first().getAttribute('data-state')).toBe(
        'poured',
      );
      expect((await kept())[0]!.pours).toHaveLength(n);
      if (n === 2) {
        expect(await status()).toMatch(/^(↻ Corrected|▲ Grown)/);
        expect(await page.getByRole('region', { name: 'After the last pour' }).textContent()).toMatch(
          /instead of/,
        );
        await looksRight();
      }
    }
  });

  test('nothing is lost while the server does not answer', async () => {
    await page.route('**/api/batches/**', (route) => route.abort());
    const [food, grams, before] = [await foodNow(), await target(), await total()];
    await press(`${grams} g, right`);
    await page.getByText('1 pour waits to be sent.').waitFor();
    // It counts here at once, and the next food is asked for.
    await expect.poll(total).toBe(before + grams);
    await expect.poll(foodNow).not.toBe(food);
    await looksRight();
    // Closed and opened again on this device, the entry still waits.
    await page.reload();
    await page.getByText('1 pour waits to be sent.').waitFor();
    expect(await total()).toBe(before + grams);
    expect((await kept())[0]!.pours).toHaveLength(3);
    await page.unroute('**/api/batches/**');
    await pressIfThere(page.getByRole('button', { name: 'Try now' }));
    await expect.poll(async () => (await kept())[0]!.pours.length).toBe(4);
    await page.getByText('1 pour waits to be sent.').waitFor({ state: 'hidden' });
    expect(await total()).toBe(before + grams);
  });

  test('a scale that shows the whole bowl is read as such, and refuses less than lay there', async () => {
    await page.getByLabel('all in the bowl').check();
    const shown = await target();
    const before = await total();
    expect(shown).toBeGreaterThan(before);
    await reading().fill('1');
    await press(/^Poured/);
    await page.getByText(/less than the .* that lay in the bowl/).waitFor();
    await reading().fill(String(shown));
    await press(/^Poured/);
    await expect.poll(total).toBe(shown);
    await page.getByLabel('this food alone (set to zero first)').check();
    const there = await text('target');
    await page.reload();
    await expect.poll(() => text('target')).toBe(there);
  });

  test('an entry written wrong is taken back', async () => {
    const before = await standing();
    await pour((await target()) + 3);
    await press(/^Take back the last entry/);
    await expect.poll(total).toBe(before[3]);
    await page.getByTestId('target').waitFor();
    expect(await standing()).toEqual(before);
  });

  test('the rest as asked for ends in range, with a record', async () => {
    const finish = page.getByRole('button', { name: 'Finish the batch' });
    for (let n = 0; n < 40 && !(await finish.isVisible()); n++) {
      await pour(await target());
      await agreed();
      await page.locator('[data-testid="target"], .weigh-step[aria-label="All is poured"]').waitFor();
    }
    expect(await status()).toMatch(/^(↻ Corrected|▲ Grown)/);
    await looksRight();
    const verdict = (await page.getByTestId('end-verdict').locator('strong').textContent()) ?? '';
    await page.getByLabel('Made by (optional)').fill('Robin');
    await finish.click();
    expect(await text('record-state')).toMatch(/^ ?In range if|Surely in range/);
    expect(await text('record-state')).toContain(verdict);
    await page.getByText('made by Robin').waitFor();
    const [batch] = await kept();
    const poured = batch!.pours.reduce((sum, p) => sum + p.grams, 0);
    const rows = page.getByRole('region', { name: 'What is in it' }).locator('tbody tr td:nth-child(2)');
    const grams = (await rows.allTextContents()).map(Number);
    expect(grams.reduce((a, b) => a + b, 0)).toBeCloseTo(poured, 6);
    expect(batch).toMatchObject({ madeBy: 'Robin' });
    expect(batch!.accepted).toBeUndefined();
    await page
      .getByRole('row', { name: /^Crude protein/ })
      .first()
      .waitFor();
    await looksRight();
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await axeFindings(page)).toEqual([]);
    await page.emulateMedia({ media: 'print', colorScheme: 'light' });
    expect(await page.locator('.weigh-label').isVisible()).toBe(true);
    expect(await page.getByRole('heading', { name: 'What it holds' }).isVisible()).toBe(false);
    await page.emulateMedia({ media: 'screen' });
  });
});

describe('what cannot be saved', () => {
  test('is said, and accepted only with a reason', async () => {
    await begin();
    await pour(450);
    await keptAsItIs();
    expect(await status()).toBe('! Out of range');
    await page.getByRole('heading', { name: /cannot be brought into range/ }).waitFor();
    expect(await page.getByTestId('target').isVisible()).toBe(true);
    await page.getByText(/^Or go on below/).waitFor();
    await looksRight();
    await press('Accept as it is and finish');
    await page.getByText('Write the reason; it is kept with the batch.').waitFor();
    await page.getByLabel('Accept the bowl as it is, because').fill('For the compost');
    await press('Accept as it is and finish');
    expect(await text('record-state')).toMatch(/^ ?Out of range/);
    expect((await kept())[1]).toMatchObject({ accepted: { note: 'For the compost' } });
    await looksRight();
  });

  test('a batch begun again closes the old one and stands first in the list', async () => {
    await begin();
    await pour(450);
    await keptAsItIs();
    await press('Start again');
    await press('Yes, empty the bowl and start again');
    await expect.poll(total).toBe(0);
    expect(page.url()).not.toBe(here);
    await page.getByRole('link', { name: 'All batches' }).click();
    const running = page.getByRole('region', { name: 'Being weighed' }).getByRole('link');
    // The old one is closed once the server has it.
    await expect.poll(() => running.count()).toBe(1);
    expect(await page.getByRole('region', { name: 'Finished' }).getByRole('link').count()).toBe(3);
    await looksRight();
    await running.click();
    expect(await status()).toBe('= As planned');
  });

  test('two devices on one batch: what both pour is in it, and what is typed on one stays', async () => {
    const other = await bench.page(PHONE);
    await other.goto(page.url());
    await other.getByTestId('target').waitFor();
    const otherTotal = async () => Number.parseFloat(await text('running-total', other));
    const food = await foodNow();
    const typed = other.getByRole('textbox', { name: 'The scale shows, in g' });
    await typed.fill('5');
    await pour(await target());
    const first = await total();
    await expect.poll(otherTotal).toBe(first);
    expect(await foodNow()).not.toBe(food);
    expect(await typed.inputValue()).toBe('5');
    expect(await other.locator('#weigh-food').textContent()).toBe(food);
    await other.getByRole('button', { name: /^Poured/ }).click();
    await expect.poll(otherTotal).toBe(first + 5);
    await expect.poll(total).toBe(first + 5);
  });
});

describe('ways back and out', () => {
  test('too much poured may be taken out again, and a batch be given up', async () => {
    await begin();
    await pour(450);
    await page
      .getByRole('button', { name: /(^Take .* out again$)|( g taken out$)/ })
      .first()
      .click();
    await pressIfThere(page.locator('.weigh-ask').getByRole('button', { name: / g taken out$/ }));
    await expect.poll(status).not.toMatch(/Out of range|choice/);
    const spooned = (await kept()).at(-1)!;
    expect(spooned.pours.map((p) => Math.sign(p.grams))).toEqual([1, -1]);
    await looksRight();
    await press('Give up this batch');
    await press('Yes, give it up');
    await page.getByText('Given up; not to be fed').waitFor();
    const closed = (await kept()).at(-1)!;
    expect(closed.finishedAt).toBeDefined();
    expect(closed.givenUp?.note).toBe('no reason was written');
    expect(closed.accepted).toBeUndefined();
    expect(await text('record-state')).toBe('! Given up: not to be fed');
    expect(await page.getByRole('button', { name: /^Print the .*label/ }).count()).toBe(0);
    await looksRight();
  });

  test('another food may be poured than the one asked for, and one may run out half-way', async () => {
    await begin();
    const asked = await foodNow();
    await page.getByLabel('Another food went in, or goes first').selectOption({ index: 4 });
    const other = await foodNow();
    expect(other).not.toBe(asked);
    await looksRight();
    await press(`Back to ${asked}`);
    expect(await foodNow()).toBe(asked);
    await page
      .getByLabel('Another food went in, or goes first')
      .selectOption('A food that is not in this mix');
    await page.getByText(/Take it out again, all of it/).waitFor();
    expect(await foodNow()).toBe(asked);
    await looksRight();
    await page.getByLabel('Another food went in, or goes first').selectOption({ index: 4 });
    await pour(await target());
    expect(await page.locator('.weigh-list li', { hasText: other }).getAttribute('data-state')).toBe(
      'poured',
    );
    expect(await foodNow()).toBe(asked);

    await press('There is no more of it');
    await page.getByText(/^Write first what the scale shows/).waitFor();
    await reading().fill('2');
    await press('There is no more of it');
    await page.getByText(`No more of ${asked}: it is not asked for again.`).waitFor();
    // What the page shows may still be on its way.
    await expect.poll(async () => Object.values((await kept()).at(-1)!.stock ?? {})).toEqual([2]);
    await press(/^Take back the last entry/);
    await page.getByText(`No more of ${asked}`).waitFor({ state: 'hidden' });
    await expect.poll(async () => (await kept()).at(-1)!.stock).toBeUndefined();
  });

  test('a scale that reads in other steps is said while weighing, and the targets follow', async () => {
    await page.getByLabel('The scale reads in steps of').selectOption('0.1');
    await expect.poll(() => text('target')).toMatch(/^\d+\.\d g$/);
    expect((await kept()).at(-1)!.problem.scale_step_grams).toBe(0.1);
    expect((await kept()).at(-1)!.pours).toHaveLength(1);
    await page.getByLabel('The scale reads in steps of').selectOption('2');
    await expect.poll(async () => (await target()) % 2).toBe(0);
    await press('Give up this batch');
    await page.getByLabel('Why (optional; it is kept with the batch)').fill('Knocked over');
    await press('Yes, give it up');
    await page.getByText('Given up; not to be fed: Knocked over').waitFor();
  });

  test('a pack not through its freezing is not taken; why is said, and the keeper may go ahead on record', async () => {
    // Dried egg is asked for first, and needs no freezing; linseed comes next.
    const food = 'linseed';
    const lot = { id: 'grain', food, name: 'Grain', grams: 500, form: 'dry', boughtOn: '2026-01-01' };
    await putAt(bench.url, 'lots', { ...lot, frozen: false, cold: [] });
    await page.goto(`${bench.url}/#/weigh`);
    await page.reload();
    await page.getByText(/Grain was bought dry and has not been frozen and thawed/).waitFor();
    await looksRight();
    await press('Weigh Grain out without freezing…');
    await page.getByLabel(/^Go ahead, say why/).fill('Frozen by the shop');
    await press('Use it without freezing');
    await page.getByText(/has not been frozen and thawed/).waitFor({ state: 'hidden' });
    await begin();
    await pour(await target());
    await page.getByText(/^From Grain/).waitFor();
    await page.getByText(/went ahead on .*Frozen by the shop/).waitFor();
    await pour(await target());
    const grams = (await kept()).at(-1)!.pours[1]!.grams;
    expect((await kept()).at(-1)!.pours[1]!.lots).toEqual([{ lot: 'grain', grams }]);
  });

  test('a batch without a first pour is deleted', async () => {
    const before = (await kept()).length;
    await begin();
    expect(await kept()).toHaveLength(before + 1);
    await press('Give up this batch');
    await press('Yes, delete it');
    await page.getByRole('heading', { name: 'A new batch' }).waitFor();
    expect(await kept()).toHaveLength(before);
  });
});

test('the browser had nothing to complain of but the network that was cut', () => {
  expect(bench.complaints.filter((c) => !/ERR_FAILED/.test(c))).toEqual([]);
});
