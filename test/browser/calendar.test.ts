/** The calendar and the first page: a plan forwards and backwards, a step moved, a file saved, the next thing said. */
import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Kind } from '../../src/household/model.ts';
import type { Batch, Lot } from '../../src/kitchen/model.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { deleteAt, householdAt, putAt } from './household-at.ts';
import { story } from './story.ts';

async function clean(page: Page): Promise<void> {
  expect(await axeFindings(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
}

const cold = (days: readonly string[], done = 0): Lot['cold'] =>
  (['freeze', 'thaw', 'freeze', 'thaw'] as const).map((kind, i) => ({
    kind,
    from: days[i]!,
    to: days[i + 1]!,
    ...(i < done && { doneOn: days[i + 1]! }),
  }));

const lot = (food: string, name: string, about: Partial<Lot> = {}): Lot => ({
  id: `lot-${food}`,
  food,
  name,
  grams: 500,
  form: 'dry',
  boughtOn: '2026-03-08',
  frozen: false,
  cold: [],
  ...about,
});

describe.each([
  ['at a desk', DESKTOP],
  ['on a phone', PHONE],
] as const)('%s', (_, size) => {
  let bench: Bench;
  let page: Page;
  const kept = () => householdAt(bench.url);
  const keep = <T extends { id: string }>(kind: Kind, object: T) => putAt(bench.url, kind, object);
  const open = async (place: string) => {
    await page.goto(`${bench.url}/#/${place}`);
    await page.reload();
  };
  const step = (id: string) => page.locator(`[data-step="${id}"]`);
  const change = async (id: string) => {
    await step(id)
      .getByRole('button', { name: /^Change the day/ })
      .click();
    await step(id).getByLabel('Another day').waitFor();
  };
  const put = async (id: string, day: string) => {
    await step(id).getByLabel('Another day').fill(day);
    await step(id).getByRole('button', { name: 'Move it there' }).click();
  };
  const pins = async () => (await kept()).kitchen[0]?.next?.pins;

  story();
  beforeAll(async () => {
    bench = await openBench();
    page = await bench.page(size);
    await page.clock.setFixedTime(new Date('2026-03-10T10:00:00'));
  });
  afterAll(() => bench?.close());

  test('a newcomer is told what to do first, and what is made up', async () => {
    await page.goto(`${bench.url}/`);
    await page.getByText('First mix is not in range yet. Make it fit first.').waitFor();
    await page
      .getByText(/What you see is an example: the animal, its pellet and the mix are made up/)
      .waitFor();
    await page.getByText(/Not veterinary advice/).waitFor();
    await clean(page);
    await page.getByRole('link', { name: 'Go to Mixes and press “Make it fit”' }).click();
    await page.getByRole('button', { name: 'Make it fit', exact: true }).first().click();
    await page.locator('[data-testid="verdict"][data-state="in"]').waitFor();
    await page.getByRole('link', { name: 'Now', exact: true }).click();
    await page.getByText('Buy and freeze 18 foods today.').waitFor();
    expect(await page.getByRole('link', { name: 'Go to the shopping list' }).getAttribute('href')).toBe(
      '#/shopping',
    );
  });

  test('forwards from today: four turns in the cold, the scale, the change of food', async () => {
    await open('calendar');
    await page.getByText(/It takes 31 days. This sets the pace: buy, freeze \(4\), thaw \(4\)/).waitFor();
    await page.getByText('On 10 April the animals are used to batch 1.').waitFor();
    await step('thaw-2:dry-goods').getByText('22 March to 26 March').waitFor();
    await step('weigh').getByText('26 March to 27 March').waitFor();
    expect(await page.locator('.cal-picture').isVisible()).toBe(size === DESKTOP);
    await clean(page);
  });

  test('a step put on another day takes along what waits for it; a day that cannot be says which can', async () => {
    await change('thaw-1:dry-goods');
    await put('thaw-1:dry-goods', '2026-03-12');
    await page
      .getByText(/Thaw \(1 of 2\).* cannot begin on 12 March.*The first day possible is 14 March/)
      .waitFor();
    await clean(page);
    await put('thaw-1:dry-goods', '2026-03-17');
    await page
      .getByText(/now begins on 17 March\. With it: freeze 2 to 21 March, thaw 2 to 25 March/)
      .waitFor();
    await step('weigh').getByText('29 March to 30 March').waitFor();
    await step('thaw-1:dry-goods').getByRole('button', { name: 'A day later' }).click();
    await step('weigh').getByText('30 March to 31 March').waitFor();
    await expect.poll(pins).toEqual([{ step: 'thaw-1:dry-goods', day: '2026-03-18' }]);
    await open('calendar');
    await step('weigh').getByText('30 March to 31 March').waitFor();
    await step('thaw-1:dry-goods').getByText('your day').waitFor();
    await change('weigh');
    await put('weigh', '2026-03-20');
    await step('weigh').getByRole('button', { name: 'Take 26 March' }).click();
    await step('weigh').getByText('26 March to 27 March').waitFor();
    await page.getByText(/Weigh out now begins on 26 March\. With it: thaw \(1 of 2\)/).waitFor();
    await clean(page);
    await page.getByRole('button', { name: 'Take back the days you chose' }).click();
    await step('thaw-1:dry-goods').getByText('14 March to 18 March').waitFor();
    await expect.poll(pins).toEqual([]);
  });

  test('steps may take other days', async () => {
    await page.getByText('How long each step takes').click();
    const field = page.getByLabel('Changing over');
    await field.fill('0');
    await field.press('Enter');
    await page.getByText('On 27 March batch 1 is weighed out.').waitFor();
    await page.getByLabel('Freezing, each time').fill('2');
    await page.getByLabel('Freezing, each time').press('Enter');
    await page.getByText(/shorter than common practice/).waitFor();
    await clean(page);
    for (const label of ['Changing over', 'Freezing, each time']) {
      await page.getByLabel(label).fill('');
      await page.getByLabel(label).press('Enter');
    }
    await page.getByText('On 10 April the animals are used to batch 1.').waitFor();
  });

  test('with a batch that is fed, the first page says when it runs out and by when to begin', async () => {
    const house = await kept();
    const [mix] = house.mixes;
    const ids = mix!.problem.foods.map((f) => f.id);
    const batch: Batch = {
      id: 'batch-of-march',
      mixId: mix!.id,
      name: mix!.name,
      problem: mix!.problem,
      shares: mix!.shares,
      order: ids,
      grams: 300,
      pours: ids.map((food) => ({
        food,
        lots: [],
        target: (3 * mix!.shares[food]!) as number,
        grams: 3 * mix!.shares[food]!,
        at: '2026-03-01T09:00:00Z',
      })),
      animalIds: mix!.animalIds,
      startedAt: '2026-03-01T09:00:00Z',
      finishedAt: '2026-03-01T11:00:00Z',
    };
    await keep('batches', batch);
    await open('today');
    // 300 g at 6 g a day from 1 March.
    await page.getByText('Batch 1 runs out on 20 April; buy and freeze 18 foods by 20 March.').waitFor();
    await page
      .getByText(/300 g of batch 1 were made on 1 March; .* about 246 g should be left today/)
      .waitFor();
    await clean(page);
    const left = page.getByLabel('Weigh what is left of batch 1');
    await left.fill('210');
    await left.press('Enter');
    await page.getByText('Batch 1 runs out on 14 April; buy and freeze 18 foods by 14 March.').waitFor();
    await expect.poll(async () => (await kept()).batches[0]!.left).toEqual({ grams: 210, on: '2026-03-10' });
    // The way back is that of the last press, also before the server has answered it.
    let answer = () => {};
    const held = new Promise<void>((go) => {
      answer = go;
    });
    let sent = 0;
    await page.route('**/api/batches/*', async (route) => {
      sent += 1;
      await held;
      await route.continue();
    });
    await page.getByRole('button', { name: 'All eaten' }).click();
    await page.getByText('Buy and freeze 18 foods today.').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText(/Batch 1 runs out on 14 April/).waitFor();
    answer();
    await expect.poll(() => sent).toBe(2);
    await page.unroute('**/api/batches/*');
    await clean(page);
    await expect.poll(async () => (await kept()).batches[0]!.left).toEqual({ grams: 210, on: '2026-03-10' });
  });

  test('backwards from the day on which it runs out, and from a day that is too soon', async () => {
    await open('calendar');
    await page.getByRole('radio', { name: /It is ready when batch 1 runs out, 14 April/ }).check();
    await step('freeze-1:dry-goods').getByText('14 March to 18 March').waitFor();
    await page.getByText('It fits, with 4 days to spare.').waitFor();
    await page.getByRole('radio', { name: /ready by a day I choose/ }).check();
    await page.getByLabel('All done by').fill('2026-04-05');
    await page
      .getByText(/It does not fit: the animals are used to batch 2 on 10 April, 5 days after 5 April/)
      .waitFor();
    await clean(page);
    await open('calendar');
    expect(await page.getByLabel('All done by').inputValue()).toBe('2026-04-05');
    await page.getByRole('radio', { name: /^I begin today/ }).check();
    await step('freeze-1:dry-goods').getByText('10 March to 14 March').waitFor();
  });

  test('lots keep their days in the freezer, in the calendar as in the cupboard', async () => {
    const foods = (await kept()).mixes[0]!.problem.foods;
    const days = ['2026-03-08', '2026-03-12', '2026-03-16', '2026-03-21', '2026-03-25'];
    const oatsName = foods.find((f) => f.id === 'rolled-oats')!.name!;
    await keep('lots', lot('rolled-oats', oatsName, { grams: 900, cold: cold(days) }));
    await keep(
      'lots',
      lot('millet', 'Millet', {
        cold: cold(['2026-03-21', '2026-03-24', '2026-03-27', '2026-03-30', '2026-04-02']),
      }),
    );
    const [kitchen] = (await kept()).kitchen;
    await keep('kitchen', { ...kitchen!, freezer: { grams: 1000, celsius: -18 } });
    await open('calendar');
    const oats = 'dry-goods-2026-03-08';
    await step(`freeze-1:${oats}`).getByText('8 March to 12 March, has begun').waitFor();
    await step(`thaw-1:${oats}`).getByText('12 March to 16 March').waitFor();
    await step(`freeze-2:${oats}`).getByText('16 March to 21 March').waitFor();
    await change(`freeze-2:${oats}`);
    await step(`freeze-2:${oats}`).getByRole('button', { name: 'A day later' }).click();
    await page.getByText(/on 21 March 1.4 kg would lie in the freezer, and it has room for 1 kg/).waitFor();
    await clean(page);
    await step(`freeze-2:${oats}`).getByRole('button', { name: 'Take 30 March' }).waitFor();
    await step(`freeze-2:${oats}`).getByRole('button', { name: 'Close' }).click();
    await change(`thaw-1:${oats}`);
    await put(`thaw-1:${oats}`, '2026-03-11');
    await page.getByText(/freeze 1 before it lasts until 12 March/).waitFor();
    await step(`thaw-1:${oats}`).getByRole('button', { name: 'Close' }).click();
    await change(`thaw-2:${oats}`);
    await step(`thaw-2:${oats}`).getByRole('button', { name: 'A day later' }).click();
    await page.getByText(/Thaw \(2 of 2\): Rolled oats now begins on 22 March/).waitFor();
    await expect
      .poll(async () => (await kept()).lots.find((l) => l.food === 'rolled-oats')!.cold.map((s) => s.from))
      .toEqual(['2026-03-08', '2026-03-12', '2026-03-16', '2026-03-22']);
    await open('cupboard/cold');
    await page.getByText('900 g, ready on 26 March').waitFor();
    await open('today');
    await page.getByText(/Batch 1 runs out on 14 April; buy and freeze 16 foods by 14 March/).waitFor();
    await page.clock.setFixedTime(new Date('2026-03-12T10:00:00'));
    await open('today');
    await page.getByText(/Rolled oats has been frozen or thawed long enough: tick off the step/).waitFor();
    await clean(page);
    await page.clock.setFixedTime(new Date('2026-03-10T10:00:00'));
  });

  test('the plan is saved as a calendar file, also where the page is not a secure one', async () => {
    await page.addInitScript('delete Crypto.prototype.randomUUID');
    await open('calendar');
    expect(await page.evaluate('typeof crypto.randomUUID')).toBe('undefined');
    await page.getByText('With a reminder at 9').click();
    const waiting = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the calendar file' }).click();
    const download = await waiting;
    expect(download.suggestedFilename()).toBe('pouchful-batch-2.ics');
    const calendar = new ICAL.Component(ICAL.parse(readFileSync(await download.path(), 'utf8')));
    const events = calendar.getAllSubcomponents('vevent').map((e) => new ICAL.Event(e));
    const weigh = events.find((e) => e.summary === 'Weigh out: batch 2')!;
    expect(weigh.startDate.isDate).toBe(true);
    // The last that is through the cold: the foods to be bought or the millet.
    const millet = events.find((e) => /^Thaw \(2 of 2\): Millet/.test(e.summary))!;
    expect(millet.startDate.toString()).toBe('2026-03-30');
    expect(weigh.startDate.toString() >= millet.endDate.toString()).toBe(true);
    expect(weigh.component.getAllSubcomponents('valarm')).toHaveLength(1);
    await page.getByText(/Saved as pouchful-batch-2.ics/).waitFor();
  });

  test('by keyboard: a step is opened, moved and closed', async () => {
    await step('weigh')
      .getByRole('button', { name: /^Change the day/ })
      .focus();
    await page.keyboard.press('Enter');
    await step('weigh')
      .getByText(/^Begins on/)
      .waitFor();
    await step('weigh').getByRole('button', { name: 'A day later' }).focus();
    await page.keyboard.press('Enter');
    await page.getByText(/Weigh out now begins on/).waitFor();
    await expect.poll(() => page.evaluate('document.activeElement?.textContent')).toBe('A day later');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect.poll(() => step('weigh').locator('.cal-move').count()).toBe(0);
    expect(bench.complaints).toEqual([]);
  });

  test('a household without a mix is told to start one', async () => {
    await deleteAt(bench.url, 'mixes', 'demo-mix');
    await open('calendar');
    await page.getByRole('heading', { name: 'No mix yet' }).waitFor();
    await page.clock.setFixedTime(new Date('2026-03-12T10:00:00'));
    await open('today');
    const next = page.getByRole('region', { name: 'Next' });
    await next.getByRole('heading', { name: 'No mix yet' }).waitFor();
    // What is due of what is in stock is told all the same.
    await page.getByText(/Rolled oats has been frozen or thawed long enough: tick off the step/).waitFor();
    await clean(page);
    await page.getByRole('button', { name: 'Start a mix' }).click();
    await page.getByTestId('verdict').waitFor();
    await page.getByRole('link', { name: 'Now', exact: true }).click();
    await page.getByText('My mix has no food yet.').waitFor();
    await open('calendar');
    await page.getByText(/My mix has no food with a share yet/).waitFor();
    await clean(page);
  });
});
