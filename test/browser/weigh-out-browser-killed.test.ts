/** A weigh-out whose browser is killed (SIGKILL), by itself or with the server: another device goes on where it was. */
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { Batch } from '../../src/kitchen/model.ts';
import { MortalBrowser, MortalServer } from './killed.ts';
import { onDisk, plan, pouredFoods, pouredNext, put } from './killed-batch.ts';

const server = new MortalServer();
let browser: MortalBrowser | undefined;
let page: Page;
let batch: Batch;

beforeAll(() => server.start());
afterEach(async () => {
  await browser?.kill();
  browser = undefined;
});
afterAll(() => server.end());

/** Opens a batch of its own, as it stands, on a phone. */
async function open(id: string, stands: Batch) {
  batch = { ...stands, id, name: id, mixId: 'demo-mix' };
  await put(batch, server);
  await reopen();
}

async function reopen() {
  browser = await MortalBrowser.open(`${server.url}/#/weigh/${batch.id}`);
  page = browser.page;
}

/** Browser, and server where asked, die; another device goes on. */
async function killedAndReopened(serverToo: boolean) {
  await browser?.kill();
  if (serverToo) await server.killAndStart();
  await reopen();
  await page.getByTestId('running-total').waitFor();
}

const text = async (id: string) => (await page.getByTestId(id).textContent()) ?? '';
const total = async () => Number.parseFloat(await text('running-total'));
const target = async () => Number.parseFloat(await text('target'));
const press = (name: string | RegExp) => page.getByRole('button', { name }).click();
const reading = () => page.getByRole('textbox', { name: 'The scale shows, in g' });
async function seen() {
  await page.getByTestId('target').waitFor();
  return [
    await page.locator('#weigh-food').textContent(),
    await text('target'),
    await text('tolerance'),
    await total(),
    await text('weigh-status'),
    await page.locator('.weigh-list li').allTextContents(),
  ];
}
async function pour(grams: number) {
  const before = await total();
  await reading().fill(String(grams));
  await press(/^Poured/);
  await expect.poll(total).toBeCloseTo(before + grams, 6);
}
async function expectTheSame(serverToo: boolean) {
  const before = await seen();
  await killedAndReopened(serverToo);
  expect(await seen()).toEqual(before);
}

test.each([false, true])('before the first pour (server too: %s)', async (serverToo) => {
  await open(`begun-${serverToo}`, plan);
  await expectTheSame(serverToo);
});

test.each([false, true])('after a pour (server too: %s)', async (serverToo) => {
  await open(`poured-${serverToo}`, plan);
  await page.getByTestId('target').waitFor();
  await pour(await target());
  await expectTheSame(serverToo);
});

test('after a pour grossly wrong, by which the rest is corrected', async () => {
  await open('corrected', pouredFoods(plan, 1));
  await page.getByTestId('target').waitFor();
  await pour(Math.round(1.8 * (await target())));
  const way = page.locator('.weigh-ask .button').first();
  if ((await text('weigh-status')) === '? Your choice is needed') await way.click();
  await expect.poll(() => text('weigh-status')).toMatch(/^(↻ Corrected|▲ Grown)/);
  await expectTheSame(false);
});

test('before the keeper has chosen what becomes of a batch that is too heavy', async () => {
  // The last food slips: more lies in the bowl than was planned, and that much would stay.
  const all = pouredFoods(plan, 60);
  const last = all.pours.at(-1)!;
  const pours = [...all.pours.slice(0, -1), { ...last, grams: last.grams + 20 }];
  const inBowl = pours.reduce((sum, p) => sum + p.grams, 0);
  expect(inBowl).toBeGreaterThan(plan.grams);
  await open('asked', { ...all, pours });
  const keep = () => page.getByRole('button', { name: `Keep ${inBowl} g and leave it out of range` });
  await keep().waitFor();
  await killedAndReopened(false);
  await keep().waitFor();
  expect(await text('weigh-status')).toBe('? Your choice is needed');
});

test('after an entry is taken back', async () => {
  await open('taken-back', pouredFoods(plan, 2));
  const before = await seen();
  await pour((await target()) + 2);
  await press(/^Take back the last entry/);
  await expect.poll(total).toBe(before[3]);
  expect(await seen()).toEqual(before);
  await expectTheSame(true);
});

test('in the middle of a save: sent, never answered', async () => {
  await open('unanswered', pouredFoods(plan, 2));
  const before = await seen();
  const { pours } = batch;
  const grams = await target();
  server.freeze();
  await reading().fill(String(grams));
  await press(/^Poured/);
  await page.getByText(/^Saving .*…$/).waitFor();
  await killedAndReopened(true);
  const found = (await onDisk('unanswered', server)).pours.length;
  expect([pours.length, pours.length + 1]).toContain(found);
  if (found === pours.length) expect(await seen()).toEqual(before);
  else expect(await total()).toBe((before[3] as number) + grams);
});

/** All poured, the second food grossly wrong. */
const allPoured = () => pouredFoods(pouredNext(pouredFoods(plan, 1), 1.8)!, 60);

test('when all is poured', async () => {
  await open('full', allPoured());
  const finish = () => page.getByRole('button', { name: 'Finish the batch' });
  await finish().waitFor();
  const all = await total();
  await killedAndReopened(true);
  await finish().waitFor();
  expect(await total()).toBe(all);
});

test('when the batch is finished', async () => {
  await open('finished', allPoured());
  await press('Finish the batch');
  await page.getByTestId('record-state').waitFor();
  await browser?.kill();
  await server.killAndStart();
  await reopen();
  expect(await text('record-state')).toMatch(/[Ii]n range/);
  expect(await text('record-state')).not.toMatch(/Out of range/);
  expect((await onDisk('finished', server)).finishedAt).toBeDefined();
});
