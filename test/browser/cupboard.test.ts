/** The cupboard: a lot from its pack, through the cold, into a mix, and what it reached once it is barred. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt, putAt } from './household-at.ts';
import { story } from './story.ts';

async function clean(page: Page): Promise<void> {
  expect(await axeFindings(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
}

describe.each([
  ['at a desk', DESKTOP],
  ['on a phone', PHONE],
] as const)('%s', (_, size) => {
  let bench: Bench;
  let page: Page;
  const detail = () => page.getByRole('region', { name: 'Pack', exact: true });
  const heading = (name: string | RegExp) => detail().getByRole('heading', { name, level: 2 }).waitFor();
  const kept = () => householdAt(bench.url);
  const clock = (day: string) => page.clock.setFixedTime(new Date(`${day}T10:00:00`));
  async function list() {
    if (size === PHONE) await page.getByRole('link', { name: 'All of the stock' }).click();
  }

  story();
  beforeAll(async () => {
    bench = await openBench();
    page = await bench.page(size);
    await clock('2026-03-10');
    await page.goto(`${bench.url}/#/cupboard`);
  });
  afterAll(() => bench?.close());

  test('a lot is added with its weight as the pack writes it', async () => {
    await page.getByText(/No pack is kept yet/).waitFor();
    await clean(page);
    await page.getByRole('button', { name: 'Add a pack' }).click();
    await heading('Add a pack');
    await page.getByRole('button', { name: 'Save the pack' }).click();
    await page.getByText('Food is empty: choose what is in the pack.').waitFor();
    await page.getByLabel('Food', { exact: true }).selectOption('Rolled oats');
    const weight = page.getByLabel('Weight as on the pack');
    await weight.fill('480');
    await page.getByText(/Weight "480": the unit is missing/).waitFor();
    await clean(page);
    await weight.fill('12 x 40 g');
    await page.getByText('480 g: 12 packs of 40 g').waitFor();
    expect(await page.getByLabel('Bought', { exact: true }).inputValue()).toBe('2026-03-10');
    await page.getByLabel('Opened').fill('2026-03-01');
    await page.getByText('Opened is before bought: correct one of the two.').waitFor();
    await page.getByLabel('Opened').fill('');
    await page.getByLabel('Best before').fill('2026-09-01');
    await page.getByLabel('Seller').fill('The mill by the brook');
    await page.getByRole('button', { name: 'Save the pack' }).click();
    await heading('Rolled oats');
    await page.getByText('Waits for freezing: no days yet', { exact: true }).waitFor();
    await clean(page);
    const [lot] = (await kept()).lots;
    expect(lot).toMatchObject({ food: 'rolled-oats', grams: 480, bestBefore: '2026-09-01', form: 'dry' });
  });

  test('the cold is planned for the freezer, and a step is ticked off when its days are over', async () => {
    await page.getByRole('link', { name: 'Plan its days in the freezer' }).click();
    await heading('Freezing');
    await page.getByLabel('Room for dry goods').fill('0.4');
    await page.getByLabel('Temperature').fill('-18');
    await page.getByLabel('Temperature').press('Enter');
    await page
      .getByText(/Rolled oats takes 480 g, and the freezer has room for 400 g.* Split it into 2 packs/)
      .waitFor();
    await page.getByLabel('Room for dry goods').fill('3');
    await page.getByLabel('Room for dry goods').press('Enter');
    await page.getByText('Why 4 days in the freezer').click();
    await page.getByText(/In the freezer 4 days, as is common practice/).waitFor();
    await page.getByRole('button', { name: 'Plan the freezing' }).click();
    await page.getByText('10 March to 14 March').waitFor();
    await page.getByText('480 g, ready on 26 March').waitFor();
    await page.getByRole('button', { name: 'Tick off: Freeze, round 1, Rolled oats' }).click();
    await page.getByText(/will have lasted 0 of 4 days on 10 March 2026/).waitFor();
    await clean(page);
    await clock('2026-03-15');
    await page.getByRole('button', { name: 'Tick off: Freeze, round 1, Rolled oats' }).click();
    // A day late: what follows is a day later too.
    await page.getByText('15 March to 19 March').waitFor();
    await detail()
      .getByText(/ready on 27 March/)
      .waitFor();
    await clean(page);
    const house = await kept();
    await detail().getByRole('link', { name: 'Rolled oats' }).click();
    await page.getByText('done on 15 March').waitFor();
    await page.getByText('23 March to 27 March').waitFor();
    expect(house.kitchen[0]?.freezer).toEqual({ grams: 3000, celsius: -18 });
    expect(house.lots[0]!.cold.map((s) => s.doneOn)).toEqual(['2026-03-15', undefined, undefined, undefined]);
  });

  test('a lot is weighed out without the cold only for a reason, which is kept', async () => {
    await list();
    await page
      .getByRole('region', { name: 'Packs' })
      .getByRole('link', { name: /^Rolled oats/ })
      .click();
    await page.getByText('Thawing until 19 March, ready on 27 March', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Use it without freezing…' }).click();
    await page.getByRole('button', { name: 'Use it without freezing', exact: true }).click();
    await page.getByText(/write a note that says why/).waitFor();
    await page.getByLabel(/Go ahead, say why/).fill('Heated by the mill');
    await page.getByRole('button', { name: 'Use it without freezing', exact: true }).click();
    await page.getByText(/“Heated by the mill”/).waitFor();
    await page.getByText('Ready, without freezing here', { exact: true }).waitFor();
    await clean(page);
  });

  test('the mix takes over what the lots hold', async () => {
    await list();
    await page.getByRole('button', { name: 'Use the amounts of the stock in this mix' }).click();
    await page.getByText(/Taken over/).waitFor();
    await expect
      .poll(
        async () => (await kept()).mixes[0]!.problem.foods.find((f) => f.id === 'rolled-oats')?.on_hand_grams,
      )
      .toBe(480);
    await clean(page);
  });

  test('barring a lot shows at once the batch and the animal it reached; all is there after a reload', async () => {
    const house = await kept();
    const [mix] = house.mixes;
    const lot = house.lots[0]!;
    const batch = {
      id: 'batch-of-march',
      mixId: mix!.id,
      name: 'Batch of March',
      problem: mix!.problem,
      shares: mix!.shares,
      order: ['rolled-oats'],
      grams: 300,
      pours: [
        {
          food: 'rolled-oats',
          lots: [{ lot: lot.id, grams: 45 }],
          target: 45,
          grams: 45,
          at: '2026-03-15T10:00:00Z',
        },
      ],
      animalIds: [house.animals[0]!.id],
      startedAt: '2026-03-15T10:00:00Z',
    };
    await putAt(bench.url, 'batches', batch);
    await page.reload();
    await page
      .getByRole('region', { name: 'Packs' })
      .getByRole('link', { name: /^Rolled oats/ })
      .click();
    await page.getByText('435 g of 480 g').waitFor();
    await page.getByRole('button', { name: 'Stop using it…' }).click();
    await page.getByRole('button', { name: 'Stop using it and show where it went' }).click();
    await page.getByText(/The reason is not said/).waitFor();
    await page.getByRole('radio', { name: 'Insects in it' }).check();
    await page.getByLabel(/What you saw/).fill('webs under the lid');
    await clean(page);
    await page.getByRole('button', { name: 'Stop using it and show where it went' }).click();
    const reach = page.getByRole('region', { name: 'Where it went' });
    await reach.getByText(/Batch of March.*45 g of it/).waitFor();
    await reach.getByRole('link', { name: 'Bramble' }).waitFor();
    await reach.getByText(/See a vet when/).waitFor();
    await clean(page);

    await page.getByRole('button', { name: 'Delete', exact: true }).click();
    await page.getByRole('button', { name: 'Delete Rolled oats' }).click();
    await page
      .getByText(/is used by the batch .Batch of March.; mark it as no longer used instead/)
      .waitFor();

    await page.reload();
    await page.getByText('Not used any more, insects in it: webs under the lid', { exact: true }).waitFor();
    await page
      .getByRole('region', { name: 'Where it went' })
      .getByText(/Batch of March/)
      .waitFor();
    const [after] = (await kept()).lots;
    expect(after!.barred).toEqual({ why: 'infested: webs under the lid', on: '2026-03-15' });
    expect(after!.overruled?.note).toBe('Heated by the mill');
    expect(after!.cold[0]!.doneOn).toBe('2026-03-15');
    // The refused deletion is the only complaint there may be.
    expect(bench.complaints.filter((c) => !/409/.test(c))).toEqual([]);
  });
});
