/** Two browsers on one household: what one changes the other shows at once, and nothing of either is lost. */
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Lot } from '../../src/kitchen/model.ts';
import { lotOf } from '../kitchen/cupboards.ts';
import { axeFindings, DESKTOP, overflow, PHONE } from './harness.ts';
import { deleteAt, householdAt, putAt } from './household-at.ts';
import { MortalServer } from './killed.ts';
import { PATIENCE_MS } from './patience.ts';
import { story } from './story.ts';

const server = new MortalServer();
let browser: Browser;
let desktop: Page;
let phone: Page;
let contexts: BrowserContext[];

story();
beforeAll(async () => {
  await server.start();
  browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
  });
  const devices = await Promise.all(
    [DESKTOP, PHONE].map(async (viewport) => {
      const context = await browser.newContext({ viewport });
      return { context, page: await pageOf(context) };
    }),
  );
  contexts = devices.map((d) => d.context);
  [desktop, phone] = devices.map((d) => d.page) as [Page, Page];
});
afterAll(async () => {
  await browser?.close();
  await server.end();
});

async function pageOf(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE_MS);
  return page;
}
const at = (page: Page, place: string) => page.goto(`${server.url}/#/${place}`);
const share = (page: Page, name: string) => page.getByLabel(`Share of ${name}`, { exact: true });
const mixAt = async () => (await householdAt(server.url)).mixes[0]!;
const lotAt = async () => (await householdAt(server.url)).lots.find((l) => l.id === 'oats') as Lot;
const asked = (page: Page) => page.getByRole('alert', { name: 'Changed in two places' });

async function lotForm(page: Page) {
  await at(page, 'cupboard/oats');
  await page.getByRole('button', { name: 'Change', exact: true }).click();
  return page.getByLabel('Seller');
}
const saveLot = (page: Page) => page.getByRole('button', { name: /^Save/ }).click();

test('a share moved on one is moved on the other, and undo takes back only what was done here', async () => {
  await at(desktop, 'mix');
  await at(phone, 'mix');
  await share(phone, 'Maize').waitFor();
  await share(desktop, 'Maize').fill('7');
  await desktop.keyboard.press('Enter');
  await expect.poll(() => share(phone, 'Maize').inputValue()).toBe('7');
  // The phone gives the mix a name meanwhile; the desktop takes its share back.
  const { name } = await mixAt();
  await putAt(server.url, 'mixes', { ...(await mixAt()), name: `${name}, renamed` });
  await desktop.getByRole('heading', { name: `Mix: ${name}, renamed` }).waitFor();
  await desktop.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect.poll(() => share(phone, 'Maize').inputValue()).not.toBe('7');
  expect((await mixAt()).name).toBe(`${name}, renamed`);
});

test('what is typed over a number or a name that changed meanwhile is asked about first', async () => {
  const batch = desktop.getByLabel('Batch', { exact: true });
  await at(desktop, 'mix');
  const settings = desktop.getByRole('region', { name: 'Settings' });
  if (!(await batch.isVisible())) await settings.getByText('Settings').click();
  await batch.fill('450');
  const stood = await mixAt();
  await putAt(server.url, 'mixes', { ...stood, problem: { ...stood.problem, batch_grams: 500 } });
  // The field keeps what is typed; the table beside it shows that the change has come.
  await desktop.getByText(/500 g/).first().waitFor();
  await batch.press('Enter');
  await desktop.getByText(/Batch was changed to 500 elsewhere while you typed/).waitFor();
  expect((await mixAt()).problem.batch_grams).toBe(500);
  await batch.press('Escape');
  expect(await batch.inputValue()).toBe('500');
  await batch.fill('450');
  await batch.press('Enter');
  await expect.poll(async () => (await mixAt()).problem.batch_grams).toBe(450);

  const name = desktop.getByRole('textbox', { name: 'Mix', exact: true });
  await name.fill('Typed here');
  await putAt(server.url, 'mixes', { ...(await mixAt()), name: 'Named elsewhere' });
  await desktop.getByRole('heading', { name: 'Mix: Named elsewhere' }).waitFor();
  await name.press('Enter');
  await desktop.getByText(/The name was changed to Named elsewhere elsewhere/).waitFor();
  expect((await mixAt()).name).toBe('Named elsewhere');
  await name.press('Enter');
  await expect.poll(async () => (await mixAt()).name).toBe('Typed here');
});

test('an animal changed on one is changed on the other', async () => {
  await at(desktop, 'animals/demo-animal');
  await at(phone, 'animals/demo-animal');
  await desktop.getByRole('button', { name: 'Edit', exact: true }).click();
  await desktop.getByLabel('Food a day').fill('8,5');
  await desktop.getByRole('button', { name: 'Save animal' }).click();
  await phone.getByText('8.5 g', { exact: true }).waitFor();
});

test('a lot barred on one stays barred, though the other saves a form that was opened before', async () => {
  await putAt(server.url, 'lots', lotOf({ id: 'oats', food: 'rolled-oats', name: 'Rolled oats' }));
  const seller = await lotForm(phone);
  await seller.fill('Alder Mill');
  await putAt(server.url, 'lots', { ...(await lotAt()), barred: { why: 'recalled', on: '2026-03-01' } });
  // What is being typed stays in its field.
  await expect.poll(async () => (await lotAt()).barred?.why).toBe('recalled');
  expect(await seller.inputValue()).toBe('Alder Mill');
  await saveLot(phone);
  await phone.getByText('Alder Mill').waitFor();
  await expect.poll(lotAt).toMatchObject({ seller: 'Alder Mill', barred: { why: 'recalled' } });
});

test('the same changed on both is shown side by side, and the keeper chooses', async () => {
  const here = await lotForm(phone);
  await at(desktop, 'cupboard/oats');
  // A form opened before the phone's seller came would rightly ask on the desktop already.
  await desktop.getByText('Alder Mill').waitFor();
  const there = await lotForm(desktop);
  await here.fill('Birch');
  await there.fill('Cedar');
  await saveLot(desktop);
  await expect.poll(async () => (await lotAt()).seller).toBe('Cedar');
  await saveLot(phone);
  const row = asked(phone).getByRole('row', { name: /^Seller/ });
  await expect.poll(() => row.getByRole('cell').allTextContents()).toEqual(['Birch', 'Cedar']);
  expect(await axeFindings(phone)).toEqual([]);
  expect(await overflow(phone)).toBe(0);
  expect((await lotAt()).seller).toBe('Cedar');
  await asked(phone).getByRole('button', { name: 'Keep mine' }).click();
  await expect.poll(async () => (await lotAt()).seller).toBe('Birch');
  await asked(phone).waitFor({ state: 'detached' });
  await desktop.getByText('Birch').waitFor();
});

test('a form stays though its lot is deleted elsewhere, and the keeper is asked', async () => {
  const seller = await lotForm(phone);
  await seller.fill('Elder');
  await deleteAt(server.url, 'lots', 'oats');
  await desktop.getByText('Birch').waitFor({ state: 'detached' });
  expect(await seller.inputValue()).toBe('Elder');
  await saveLot(phone);
  await asked(phone).getByRole('button', { name: 'Keep it with my change' }).click();
  await expect.poll(async () => (await lotAt())?.seller).toBe('Elder');
});

test('what is changed while the server is down is kept, and is sent when it is there again', async () => {
  await at(desktop, 'mix');
  await share(desktop, 'Maize').waitFor();
  await at(phone, 'mix');
  await share(phone, 'Millet').waitFor();
  await server.kill();
  await share(desktop, 'Maize').fill('6');
  await desktop.keyboard.press('Enter');
  await desktop.getByText('Not sent yet: 1 change, kept on this device.').waitFor();
  expect(await axeFindings(desktop)).toEqual([]);
  await server.start();
  await expect.poll(async () => (await mixAt()).shares.maize).toBeCloseTo(6);
  await expect.poll(() => share(phone, 'Maize').inputValue()).toBe('6');
  await desktop.getByText(/^Not sent yet/).waitFor({ state: 'detached' });
});

test('the same though the page is closed meanwhile', async () => {
  await server.kill();
  await share(desktop, 'Maize').fill('4');
  await desktop.keyboard.press('Enter');
  await desktop.getByText('Not sent yet: 1 change, kept on this device.').waitFor();
  await desktop.close();
  await server.start();
  desktop = await pageOf(contexts[0]!);
  await at(desktop, 'today');
  await expect.poll(async () => (await mixAt()).shares.maize).toBeCloseTo(4);
  await expect.poll(() => share(phone, 'Maize').inputValue()).toBe('4');
});

test('where the device keeps nothing, that is said, and leaving the page asks', async () => {
  const page = await pageOf(contexts[1]!);
  await page.addInitScript(`Storage.prototype.setItem = () => { throw new Error('no room') }`);
  await at(page, 'mix');
  await share(page, 'Maize').waitFor();
  await server.kill();
  await share(page, 'Maize').fill('9');
  await page.keyboard.press('Enter');
  await page.getByText('This device cannot keep them, so leave this page open.').waitFor();
  const asks = page.waitForEvent('dialog');
  await page.close({ runBeforeUnload: true });
  const dialog = await asks;
  expect(dialog.type()).toBe('beforeunload');
  await dialog.dismiss();
  await server.start();
  await expect.poll(async () => (await mixAt()).shares.maize).toBeCloseTo(9);
});
