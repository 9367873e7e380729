/** A server open to the home network: a first browser is paired by the terminal's link, a phone by a code; it weighs and is put out. */
import { networkInterfaces } from 'node:os';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { RecordsPage } from '../../src/household/records.ts';
import type { Batch } from '../../src/kitchen/model.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { story } from './story.ts';

let bench: Bench;
let desk: Page;
let phone: Page;

story();
beforeAll(async () => {
  bench = await openBench({ lan: true, margin: true });
  desk = await bench.page();
  phone = await bench.page(PHONE);
});
afterAll(() => bench?.close());

/** Where a phone of the same network finds the server; on a machine without a network, as the machine itself does. */
function networkUrl(): string {
  const all = Object.values(networkInterfaces()).flatMap((one) => one ?? []);
  const address = all.find(({ family, internal }) => family === 'IPv4' && !internal)?.address ?? '127.0.0.1';
  return `http://${address}:${new URL(bench.url).port}`;
}

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true }).click();
const named = (page: Page, name: string) => page.getByRole('listitem', { name, exact: true });

async function looksRight(page: Page) {
  expect(await overflow(page)).toBe(0);
  expect(await axeFindings(page)).toEqual([]);
}

/** What a page is answered, with the cookie that it has. */
const status = (page: Page, path: string) =>
  page.evaluate(async (p) => (await fetch(p)).status, path) as Promise<number>;

async function batches(): Promise<Batch[]> {
  const kept = (await desk.evaluate(async () => (await fetch('/api/records')).json())) as RecordsPage;
  return kept.records.flatMap(({ kind, body }) => (kind === 'batches' && body ? [body as Batch] : []));
}

test('the link of the terminal pairs the browser of this machine', async () => {
  const [link = ''] = /http:\/\/localhost:\d+\/#pair=\S+/.exec(bench.said()) ?? [];
  await desk.goto(link);
  await desk.getByRole('heading', { name: 'Pair this device' }).waitFor();
  expect(await status(desk, '/api/records')).toBe(401);
  await desk.getByText('The link brought the code along.').waitFor();
  await looksRight(desk);
  await desk.getByLabel('What is this device called?').fill('Desk');
  await press(desk, 'Pair this device');
  await desk.getByRole('heading', { name: 'Now', exact: true }).waitFor();
  expect(desk.url()).not.toContain('pair=');
  expect(bench.said()).toContain('"Desk" is paired.');
  expect(await status(desk, '/api/records')).toBe(200);
});

test('a phone that is not paired sees the pairing page alone, and a wrong code lets nobody in', async () => {
  await phone.goto(`${networkUrl()}/#/weigh`);
  await phone.getByRole('heading', { name: 'Pair this device' }).waitFor();
  expect(await phone.getByRole('navigation').count()).toBe(0);
  await press(phone, 'Pair this device');
  await phone.getByText('Type the code.').waitFor();
  await phone.getByLabel('Pairing code').fill('2222-2222');
  await phone.getByLabel('What is this device called?').fill('Kitchen phone');
  await press(phone, 'Pair this device');
  await phone.getByRole('alert').filter({ hasText: 'no such code' }).waitFor();
  await looksRight(phone);
  expect(await status(phone, '/api/records')).toBe(401);
});

test('a code that a paired device shows lets the phone in', async () => {
  await desk.goto(`${bench.url.replace('127.0.0.1', 'localhost')}/#/household/devices`);
  await named(desk, 'Desk').getByText('this device').waitFor();
  await desk.getByText('The connection is not encrypted').waitFor();
  await press(desk, 'Pair a device');
  await desk.getByRole('img', { name: 'QR code that pairs a device' }).waitFor();
  for (const size of [DESKTOP, PHONE]) {
    await desk.setViewportSize(size);
    await looksRight(desk);
  }
  await desk.setViewportSize(DESKTOP);
  const code = (await desk.getByLabel('Code', { exact: true }).textContent()) ?? '';
  await phone.getByLabel('Pairing code').fill(code.toLowerCase().replace('-', ' '));
  await press(phone, 'Pair this device');
  await phone
    .getByRole('heading', { name: /^Weigh out/ })
    .first()
    .waitFor();
  await desk.getByText('Kitchen phone is paired.').waitFor();
  await named(desk, 'Kitchen phone').waitFor();
  expect(await desk.getByLabel('Code', { exact: true }).count()).toBe(0);
});

test('the phone weighs a food with it', async () => {
  await phone.goto(`${networkUrl()}/#/mix`);
  await press(phone, 'Make it fit');
  await phone.waitForSelector('[data-testid="verdict"][data-state="in"]');
  await phone.getByText('Saved', { exact: true }).waitFor();
  await press(phone, 'Weigh out a batch');
  await press(phone, /^Begin with/);
  const grams = Number.parseFloat((await phone.getByTestId('target').textContent()) ?? '');
  await phone.getByRole('textbox', { name: 'The scale shows, in g' }).fill(String(grams));
  await press(phone, /^Poured|, right$/);
  await expect
    .poll(async () => Number.parseFloat((await phone.getByTestId('running-total').textContent()) ?? ''))
    .toBe(grams);
  expect((await batches()).map(({ pours }) => pours.map((p) => p.grams))).toEqual([[grams]]);
});

test('a device is named anew, and put out: at once it is out', async () => {
  await press(desk, 'Rename Kitchen phone');
  await desk.getByLabel('Name of the device').fill('Scale phone');
  await press(desk, 'Save name');
  await named(desk, 'Scale phone').waitFor();
  await press(desk, 'Remove Scale phone');
  await desk.getByRole('group', { name: 'Remove Scale phone?' }).waitFor();
  await looksRight(desk);
  await desk.getByRole('group').getByRole('button', { name: 'Remove Scale phone' }).click();
  await expect.poll(() => named(desk, 'Scale phone').count()).toBe(0);
  expect(await status(phone, '/api/records')).toBe(401);
  // The phone's page hears of it by itself.
  await phone.getByRole('heading', { name: 'Pair this device' }).waitFor();
  await looksRight(phone);
  expect(await status(desk, '/api/records')).toBe(200);
});

test('where this machine alone is served nobody is asked, and the devices say how to open it', async () => {
  const alone = await openBench({ margin: true });
  try {
    const page = await alone.page(PHONE);
    await page.goto(`${alone.url}/#/household/devices`);
    await page.getByText('Only the computer that runs Pouchful can open the household.').waitFor();
    expect(await page.getByRole('button', { name: 'Pair a device' }).count()).toBe(0);
    await looksRight(page);
    expect(alone.complaints).toEqual([]);
  } finally {
    await alone.close();
  }
});
