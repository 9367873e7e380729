/**
 * One batch on a phone, from nothing to the label on the jar: balance, shop, freeze, dry, weigh, print, and trace a bag
 * to the animal. The clock is moved from day to day. With BOWL_PICTURES=<folder> every station leaves a picture.
 */
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Kind } from '../../src/household/model.ts';
import type { Offer } from '../../src/kitchen/model.ts';
import { axeFindings, type Bench, openBench, overflow, PHONE } from './harness.ts';
import { householdAt, putAt } from './household-at.ts';
import { story } from './story.ts';

const PICTURES = process.env.BOWL_PICTURES;
let bench: Bench;
let page: Page;
let taken = 0;

story();
beforeAll(async () => {
  bench = await openBench({ margin: true });
  page = await bench.page(PHONE);
});
afterAll(() => bench?.close());

const kept = () => householdAt(bench.url);
const button = (name: string | RegExp) => page.getByRole('button', { name });
const link = (name: string | RegExp) => page.getByRole('link', { name });

/** Opens the page anew on a day, at ten in the morning. */
async function onDay(day: string, place: string) {
  await page.clock.setFixedTime(new Date(`${day}T10:00:00`));
  await page.goto('about:blank');
  await page.goto(`${bench.url}/#/${place}`);
}

/** A station of the way: looked at by the checker of accessible pages, and by people where they ask for pictures. */
async function station(name: string) {
  expect(await overflow(page), name).toBe(0);
  expect(await axeFindings(page), name).toEqual([]);
  taken += 1;
  if (PICTURES)
    await page.screenshot({
      path: join(PICTURES, `${String(taken).padStart(2, '0')}-${name}.png`),
      fullPage: true,
    });
}

const put = (kind: Kind, thing: Offer) => putAt(bench.url, kind, thing);

test('who looks at the example is sent to the mix, and makes it fit', async () => {
  await onDay('2026-03-02', 'today');
  await page.getByText('First mix is not in range yet. Make it fit first.').waitFor();
  await page.getByText(/What you see is an example/).waitFor();
  await station('newcomer');
  await link('Go to Mixes and press “Make it fit”').click();
  await button('Make it fit').click();
  await page.locator('[data-testid=verdict][data-state=in]').waitFor();
  await page.getByText('Saved', { exact: true }).waitFor();
  await station('balanced');
});

test('the shopping list of 60 days, with carrots to dry, is bought in whole packs', async () => {
  await page.goto(`${bench.url}/#/shopping`);
  await page.getByText('Change how much').click();
  await page.getByRole('radio', { name: 'In days' }).check();
  await page.getByLabel('Days it is to last').fill('60');
  await page.getByLabel('Days it is to last').press('Enter');
  await page.locator('.shop-size', { hasText: '360 g of the mix' }).waitFor();
  const carrot = page.locator('#shop-carrot-dried');
  await carrot.getByRole('combobox').selectOption('I dry it');
  await carrot.getByText(/^gives .* dried$/).waitFor();
  const foods = (await kept()).mixes[0]!.problem.foods;
  for (const [i, { id }] of foods.entries()) {
    if (id === 'carrot-dried') continue;
    const offer = { food: id, packGrams: 250, price: 2 + i / 10, form: 'dry' } as const;
    await put('offers', { ...offer, id: `mill-${id}`, seller: 'Alder Mill' });
  }
  const fresh = { food: 'carrot-dried', packGrams: 1000, price: 1.5, form: 'fresh' } as const;
  await put('offers', { ...fresh, id: 'market', seller: 'Market' });
  // The pellet that is fed beside it is on the list too.
  const pellet = { food: 'demo-pellet', packGrams: 250, price: 4, form: 'dry' } as const;
  await put('offers', { ...pellet, id: 'pellet', seller: 'Alder Mill' });
  await onDay('2026-03-02', 'shopping');
  await page.getByText('Prices and sellers').click();
  const sum = page.getByRole('region', { name: 'Prices', exact: true });
  await sum
    .getByText(/^€\d+\.\d\d$/)
    .first()
    .waitFor();
  await station('shopping');
  for (const seller of ['Alder Mill', 'Market']) {
    await page
      .getByRole('button', { name: new RegExp(`^(Bought|All bought).*${seller}`) })
      .first()
      .click();
    // Of what is fresh nothing is asked.
    if (seller === 'Alder Mill') await button('Put into my stock').click();
    await expect
      .poll(async () => (await kept()).lots.filter((l) => l.seller === seller).length)
      .toBeGreaterThan(0);
  }
  await expect.poll(async () => (await kept()).lots.length).toBe(21);
  await page
    .getByText(/Nothing to buy: all of it is in your stock/)
    .first()
    .waitFor();
  await station('bought');
});

test('the dry goods go through the cold twice, every step ticked off on its day', async () => {
  await page.goto(`${bench.url}/#/cupboard/cold`);
  await page.getByLabel('Room for dry goods').fill('10');
  await page.getByLabel('Temperature').fill('-18');
  await page.getByLabel('Temperature').press('Enter');
  await button('Plan the freezing').click();
  await expect.poll(async () => (await kept()).lots.filter((l) => l.cold.length === 4).length).toBe(17);
  await station('cold-planned');
  await page.goto(`${bench.url}/#/calendar`);
  await page.getByRole('heading', { name: 'Step by step' }).waitFor();
  await station('calendar');
  for (const day of ['2026-03-06', '2026-03-10', '2026-03-14', '2026-03-18']) {
    await onDay(day, 'cupboard/cold');
    await button('Tick off all 17 that have lasted long enough').click();
    await expect
      .poll(async () => (await kept()).lots.filter((l) => l.cold.some((s) => s.doneOn === day)).length)
      .toBe(17);
  }
  await expect
    .poll(async () => (await kept()).lots.every((l) => l.cold.every((s) => s.doneOn !== undefined)))
    .toBe(true);
});

test('the carrots are dried, weighed and kept', async () => {
  await onDay('2026-03-18', 'drying');
  await link(/^Carrot, dried/)
    .first()
    .click();
  await page.getByLabel('Trays', { exact: true }).fill('4');
  await page.getByLabel('Width', { exact: true }).fill('40');
  await page.getByLabel('Length', { exact: true }).fill('30');
  await button('Keep the dryer').click();
  await page.getByLabel('Taken from the pack').fill('1000');
  await page.getByLabel('Trimmed and ready').fill('880');
  await station('drying-plan');
  await button(/^Start/).click();
  await page.getByRole('region', { name: 'Next check' }).waitFor();
  await station('drying');
  await page.getByLabel('Weight after').fill('109');
  await button('Weigh it').click();
  const verdict = page.getByRole('region', { name: 'Verdict' });
  await verdict.getByRole('heading').first().waitFor();
  await station('dried');
  // What the tables say of raw carrots leaves a doubt: a sample is dried out.
  const sure = button('Put it into stock');
  if (!(await sure.isVisible())) {
    await page.getByText('Keep it all the same').click();
    await page
      .getByLabel('Why you keep it, and how you watch it')
      .fill('every piece breaks; watched in a glass');
    await button('Keep it under this note').click();
  } else await sure.click();
  await expect.poll(async () => (await kept()).lots.find((l) => l.form === 'dried')?.grams).toBe(109);
});

test('all is poured, one food far too much, and the batch ends in range', async () => {
  await onDay('2026-03-19', 'today');
  await page
    .getByText(/Weigh out batch 1/i)
    .first()
    .waitFor();
  await station('today-weigh');
  await page.goto(`${bench.url}/#/weigh`);
  await button('Begin with 360 g').click();
  await page.getByTestId('target').waitFor();
  await station('weigh-first');
  const total = async () => Number.parseFloat((await page.getByTestId('running-total').textContent()) ?? '');
  for (let n = 1; ; n++) {
    const ended = button('Finish the batch');
    await page.getByTestId('target').or(ended).first().waitFor();
    if (await ended.isVisible()) break;
    expect(n).toBeLessThan(60);
    const target = Number.parseFloat((await page.getByTestId('target').textContent()) ?? '');
    const before = await total();
    // The fourth food slips: half as much again.
    const grams = n === 4 ? Math.round(1.5 * target) : target;
    await page.getByRole('textbox', { name: 'The scale shows, in g' }).fill(String(grams));
    await button(/^Poured/).click();
    await expect.poll(total).toBeCloseTo(before + grams, 6);
    if (n === 4) {
      await page.locator('.weigh-told, .weigh-ask').first().waitFor();
      await station('weigh-corrected');
      // Where the batch would have to become another, its first way is taken.
      const way = page.locator('.weigh-ask .button').first();
      if (await way.isVisible()) await way.click();
    }
  }
  await station('weigh-end');
  await page
    .getByLabel(/Made by|Who/)
    .first()
    .fill('Robin');
  await button('Finish the batch').click();
  await page.getByTestId('record-state').waitFor();
  expect(await page.getByTestId('record-state').textContent()).toMatch(/[Ii]n range/);
  expect(await page.getByTestId('record-state').textContent()).not.toContain('Out of range');
  await station('record');
  const [batch] = (await kept()).batches;
  expect(batch).toMatchObject({ madeBy: 'Robin', animalIds: ['demo-animal'] });
  // Every gram is named by its lot.
  for (const pour of batch!.pours)
    expect(pour.lots.reduce((sum, l) => sum + l.grams, 0)).toBeCloseTo(pour.grams, 6);
});

test('the label prints on one page', async () => {
  for (const format of ['A4', 'Letter']) {
    const pdf = await page.pdf({ format, ...(PICTURES && { path: join(PICTURES, `label-${format}.pdf`) }) });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
  }
  if (PICTURES) {
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width: 794, height: 1123 });
    await page.screenshot({ path: join(PICTURES, 'label.png') });
    await page.emulateMedia({ media: 'screen' });
    await page.setViewportSize(PHONE);
  }
});

test('the first page says when it runs out, and a bag is traced to the animal in one step', async () => {
  await onDay('2026-03-25', 'today');
  await page.getByText(/Batch 1 runs out on 19 May/).waitFor();
  await page.getByText(/Change over to batch 1 slowly.*day 7 of 14 days/).waitFor();
  await station('today-fed');
  await link('How much on each day').click();
  await page.getByRole('tab', { name: 'Change-over', selected: true }).waitFor();
  const [batch] = (await kept()).batches;
  const oats = batch!.pours.find((p) => p.food === 'rolled-oats')!.lots[0]!;
  await page.goto(`${bench.url}/#/cupboard/${oats.lot}`);
  await button('Stop using it…').click();
  await page.getByRole('radio', { name: 'Recalled' }).check();
  await button('Stop using it and show where it went').click();
  const reach = page.getByRole('region', { name: 'Where it went' });
  await reach.getByRole('link', { name: batch!.name }).waitFor();
  await reach.getByRole('link', { name: 'Bramble' }).waitFor();
  await station('traced');
  expect(bench.complaints).toEqual([]);
});
