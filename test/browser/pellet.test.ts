/** Packs of pellets: bought, fed, weighed, run out; and a recall, which reaches every screen and is taken back. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { feedingId } from '../../src/care/model.ts';
import type { Household } from '../../src/household/model.ts';
import type { Batch, Lot } from '../../src/kitchen/model.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt, putAt } from './household-at.ts';
import { story } from './story.ts';

const PELLET = 'demo-pellet';
const ANIMAL = 'demo-animal';

async function clean(page: Page): Promise<void> {
  expect(await axeFindings(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
}

describe.each([
  ['on a phone', PHONE],
  ['at a desk', DESKTOP],
] as const)('%s', (_, size) => {
  let bench: Bench;
  let page: Page;
  const kept = () => householdAt(bench.url);
  const theLot = async () => (await kept()).lots.find((l) => l.food === PELLET)!;
  const open = async (place: string) => {
    await page.goto(`${bench.url}/#/${place}`);
    await page.reload();
  };
  const left = () => page.getByTestId('pellet-left');
  const lasts = () => page.getByRole('region', { name: 'What is left' });

  story();
  beforeAll(async () => {
    bench = await openBench();
    page = await bench.page(size);
    await page.addInitScript('window.print = () => { window.printed = (window.printed ?? 0) + 1; };');
    await page.clock.setFixedTime(new Date('2026-03-10T10:00:00'));
  });
  afterAll(() => bench?.close());

  test('the pellet stands on the list for the days of the batch, and is bought without a word of freezing', async () => {
    await open('shopping');
    await page.getByRole('heading', { name: 'Fed beside the mix' }).waitFor();
    const line = page.locator(`.shop-line#shop-${PELLET}`);
    await line.getByText('300 g', { exact: true }).waitFor();
    await page.getByText('For 50 days, the days that this batch lasts').waitFor();
    await line.getByRole('checkbox').check();
    await page.getByRole('button', { name: 'Only what is ticked (1)' }).click();
    await page.getByText('In your stock: Invented pellet, 300 g.').waitFor();
    await line.waitFor({ state: 'detached' });
    await clean(page);
    expect(await theLot()).toMatchObject({ grams: 300, form: 'dry', cold: [], boughtOn: '2026-03-10' });
    expect((await theLot()).overruled).toBeUndefined();
  });

  test('it has its own group in the stock, and no place in the freezer', async () => {
    await open('cupboard');
    const group = page.getByRole('region', { name: 'Fed beside the mix' });
    await group.getByText('Lasts 50 days, until 29 April. Buy more by 22 April.').waitFor();
    await group.getByText('in use: fed next').waitFor();
    await page.getByText('No pack has to be frozen now').waitFor();
    await clean(page);
    await group.getByRole('link', { name: /^Invented pellet/ }).click();
    await left().getByText('300 g', { exact: true }).waitFor();
    expect(await page.getByText('Freezing against insects').count()).toBe(0);
    await page.getByRole('button', { name: 'Opened today' }).click();
    await expect.poll(async () => (await theLot()).openedOn).toBe('2026-03-10');
    await clean(page);
  });

  test('what was fed of it is less, and days without a note are an estimate that says so', async () => {
    const lot = (await theLot()).id;
    await putAt(bench.url, 'feedings', {
      id: feedingId(ANIMAL, '2026-03-10'),
      animalId: ANIMAL,
      on: '2026-03-10',
      at: '2026-03-10T18:00:00.000Z',
      beside: [{ food: PELLET, grams: 10, lot }],
    });
    await open(`cupboard/${lot}`);
    await left().getByText('290 g left of 300 g', { exact: true }).waitFor();
    await page.clock.setFixedTime(new Date('2026-03-14T10:00:00'));
    await page.reload();
    // Three days of 6 g without a note.
    await left().getByText('about 272 g left of 300 g', { exact: true }).waitFor();
    await page.getByText(/10 g noted as fed since\. 18 g more for days without a note/).waitFor();
    await lasts().getByText('Lasts about 45 days, until 28 April. Buy more by 21 April.').waitFor();
    await clean(page);
  });

  test('it is weighed in two presses, and that may be taken back', async () => {
    const field = page.getByLabel('Weigh what is left');
    await field.click();
    await field.fill('250');
    await field.press('Enter');
    await page.getByText('250 g left, noted.').waitFor();
    await left().getByText('250 g left of 300 g', { exact: true }).waitFor();
    await lasts().getByText('Lasts 41 days, until 24 April. Buy more by 17 April.').waitFor();
    expect((await theLot()).left).toEqual({ grams: 250, on: '2026-03-14' });
    await page.getByRole('button', { name: 'Undo' }).click();
    await left().getByText('about 272 g left of 300 g', { exact: true }).waitFor();
    await field.fill('30');
    await field.press('Enter');
    await lasts().getByText('Lasts 5 days, until 19 March. Buy more now.').waitFor();
    await clean(page);
  });

  test('its days stand in the calendar, and in the file for other calendars', async () => {
    await open('calendar');
    const beside = page.getByRole('region', { name: 'What is fed beside the mix' });
    await beside.getByText('Buy Invented pellet now').waitFor();
    await beside.getByText('Thursday, 19 March').waitFor();
    await beside.getByText('30 g left, 6 g fed a day.').waitFor();
    await clean(page);
    const waiting = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the calendar file' }).click();
    const file = readFileSync(await (await waiting).path(), 'utf8');
    expect(file).toMatch(/SUMMARY:Invented pellet runs out\r\n/);
    expect(file).toMatch(/SUMMARY:Buy Invented pellet\r\n/);
    expect(file).toContain('DTSTART;VALUE=DATE:20260319');
    // What is left is no longer enough for the batch, so it stands on the list again, less what is there.
    await open('shopping');
    await page.locator(`.shop-line#shop-${PELLET}`).getByText('270 g', { exact: true }).waitFor();
    await page.locator(`.shop-line#shop-${PELLET}`).getByText('30 g more in your stock').waitFor();
  });

  test('a recalled pack is told on its page and on the animal’s, and is no stock', async () => {
    const { id } = await theLot();
    await open(`cupboard/${id}`);
    await page.getByRole('button', { name: 'Stop using it…' }).click();
    await page.getByRole('radio', { name: 'Recalled' }).check();
    await page.getByRole('button', { name: 'Stop using it and show where it went' }).click();
    const reach = page.getByRole('region', { name: 'Where it went' });
    await reach.getByText('10 g on 1 day, 10 March to 10 March').waitFor();
    await reach.getByText('Keep the pack and its number').waitFor();
    await clean(page);
    await open(`animals/${ANIMAL}/food`);
    const stops = page.getByTestId('animal-stops');
    await stops.getByText(/is not used any more: recalled\. It was fed from/).waitFor();
    await stops.getByText(/See a vet when an animal that ate of it/).waitFor();
    await clean(page);
    await open('shopping');
    await page.locator(`.shop-line#shop-${PELLET}`).getByText('300 g', { exact: true }).waitFor();
    await open('calendar');
    await page
      .getByRole('region', { name: 'What is fed beside the mix' })
      .getByText('Buy Invented pellet now')
      .waitFor();
    // All gone: nothing is told any more.
    await open(`cupboard/${id}`);
    await page.getByRole('button', { name: 'All gone' }).click();
    await page.getByText('Noted: nothing is left of it.').waitFor();
    await open(`animals/${ANIMAL}`);
    await page.getByRole('heading', { name: /Bramble/, level: 2 }).waitFor();
    expect(await stops.count()).toBe(0);
    await open(`cupboard/${id}`);
    await page.getByRole('button', { name: 'It was a mistake: use it again' }).click();
    await expect.poll(async () => (await theLot()).barred).toBeUndefined();
  });

  describe('a recalled pack of a food of the mix', () => {
    let house: Household;
    let batch: Batch;
    const pack = (about: Partial<Lot> = {}): Lot => ({
      id: 'millet-pack',
      food: 'millet',
      name: 'Millet, brown bag',
      grams: 500,
      form: 'dried',
      boughtOn: '2026-03-01',
      frozen: false,
      cold: [],
      ...about,
    });
    const barred = { why: 'recalled: metal in the hall', on: '2026-03-14' };
    const stop = () => page.getByTestId('record-stop');

    test('reaches the record in the place of its verdict, and its labels', async () => {
      house = await kept();
      const mix = house.mixes[0]!;
      const grams = 15;
      batch = {
        id: 'spring',
        mixId: mix.id,
        name: 'Spring mix',
        problem: { ...mix.problem, rules: mix.problem.rules.filter((r) => !('nutrient' in r)) },
        shares: mix.shares,
        order: mix.problem.foods.map((f) => f.id),
        grams: 300,
        pours: mix.problem.foods.map(({ id: food }, i) => ({
          food,
          lots: food === 'millet' ? [{ lot: 'millet-pack', grams }] : [],
          target: grams,
          grams,
          at: `2026-03-12T09:${String(i).padStart(2, '0')}:00.000Z`,
        })),
        animalIds: [ANIMAL],
        startedAt: '2026-03-12T09:00:00.000Z',
        finishedAt: '2026-03-12T10:00:00.000Z',
      };
      await putAt(bench.url, 'lots', pack());
      await putAt(bench.url, 'batches', batch);
      await open('weigh/spring');
      await page.getByTestId('record-state').waitFor();
      expect(await page.getByTestId('record-state').getAttribute('data-state')).not.toBe('out');
      await page
        .getByText(/Bramble: 6 g of the mix/)
        .first()
        .waitFor();

      await putAt(bench.url, 'lots', pack({ barred }));
      await open('weigh/spring');
      await stop().getByText('Do not feed: recalled').waitFor();
      await stop()
        .getByText(/It holds 15 g of Millet, brown bag, not used since 14 March 2026: recalled/)
        .waitFor();
      expect(await page.getByTestId('record-state').count()).toBe(0);
      expect(await page.getByText(/a day/).count()).toBe(0);
      expect(await page.getByText(/[Ii]n range/).count()).toBe(0);
      await clean(page);
      for (const button of ['Print the label for the jar', 'Print the large label']) {
        await page.getByRole('button', { name: button }).click();
        const paper = page.locator('.print-sheet');
        await page.emulateMedia({ media: 'print' });
        await paper.getByText('Do not feed', { exact: true }).waitFor();
        const said = (await paper.textContent()) ?? '';
        expect(said).toContain('Millet, brown bag: recalled: metal in the hall');
        expect(said).not.toMatch(/[Ii]n range|of the mix.*a day/);
        await page.emulateMedia({ media: null });
      }
    });

    test('and the list of batches, the calendar, the first page and the animal', async () => {
      await open('weigh');
      await page.getByText('do not feed', { exact: true }).waitFor();
      await open('calendar');
      await page.getByTestId('plan-stop').getByText('Batch 1: Do not feed: recalled').waitFor();
      await page.getByText(/^Batch 1 is not fed any more.*does not count as food in hand/).waitFor();
      expect(await page.getByText(/^Batch 1 runs out/).count()).toBe(0);
      await clean(page);
      await open('today');
      await page
        .getByText(/Millet, brown bag/)
        .first()
        .waitFor();
      await open(`animals/${ANIMAL}`);
      await page.getByTestId('animal-stops').getByText('Do not feed: recalled').waitFor();
      await clean(page);
      await page.getByTestId('animal-stops').getByRole('link', { name: 'batch 1' }).click();
      await stop().waitFor();
    });

    test('a batch of which nothing is left says that it was in it, and is not told any more', async () => {
      await open('weigh/spring');
      await stop().getByRole('button', { name: 'Nothing is left of it' }).click();
      await stop().getByText('Nothing is left of it. It was in it.').waitFor();
      await clean(page);
      const left = async () => (await kept()).batches.find((b) => b.id === 'spring')?.left;
      await expect.poll(left).toEqual({ grams: 0, on: '2026-03-14' });
      await open(`animals/${ANIMAL}`);
      await page.getByRole('heading', { name: /Bramble/, level: 2 }).waitFor();
      expect(await page.getByTestId('animal-stops').count()).toBe(0);
      await putAt(bench.url, 'batches', batch);
    });

    test('where no pack was named it is said as perhaps, and the verdict stays beside it', async () => {
      const unnamed = {
        ...batch,
        id: 'unnamed',
        pours: batch.pours.map((p) => ({ ...p, lots: [] })),
        startedAt: '2026-03-13T09:00:00.000Z',
        finishedAt: '2026-03-13T10:00:00.000Z',
      };
      await putAt(bench.url, 'batches', unnamed);
      await open('weigh/unnamed');
      await stop().getByText('Perhaps not to be fed: a recalled pack may be in it').waitFor();
      await page.getByTestId('record-state').waitFor();
      await clean(page);
      await open('calendar');
      await page.getByText(/^Batch 2 may hold a pack that is not used any more/).waitFor();
      await page.getByText(/^Batch 2 runs out/).waitFor();
      await page.getByTestId('plan-stop').getByText('Batch 1: Do not feed: recalled').waitFor();
      await putAt(bench.url, 'batches', { ...unnamed, left: { grams: 0, on: '2026-03-14' } });
    });

    test('with the bar taken off, all is as it was', async () => {
      await open('cupboard/millet-pack');
      await page.getByRole('button', { name: 'It was a mistake: use it again' }).click();
      await expect
        .poll(async () => (await kept()).lots.find((l) => l.id === 'millet-pack')?.barred)
        .toBeUndefined();
      await open('weigh/spring');
      await page.getByTestId('record-state').waitFor();
      expect(await stop().count()).toBe(0);
      await open('calendar');
      await page.getByText(/^Batch 1 runs out/).waitFor();
      await open(`animals/${ANIMAL}`);
      await page.getByRole('heading', { name: /Bramble/, level: 2 }).waitFor();
      expect(await page.getByTestId('animal-stops').count()).toBe(0);
    });

    test('in German nothing breaks', async () => {
      await putAt(bench.url, 'lots', pack({ barred }));
      await page.evaluate(`localStorage['pouchful.manner'] = '{"language":"de"}'`);
      const { id } = await theLot();
      for (const [place, said] of [
        ['weigh/spring', 'Nicht füttern: zurückgerufen'],
        ['calendar', 'Was neben der Mischung gefüttert wird'],
        [`animals/${ANIMAL}`, 'Nicht füttern: zurückgerufen'],
        [`cupboard/${id}`, 'Wiegen, was noch da ist'],
        ['shopping', 'Neben der Mischung gefüttert'],
      ] as const) {
        await open(place);
        await page.getByText(said).first().waitFor();
        await clean(page);
      }
      expect(bench.complaints).toEqual([]);
    });
  });
});
