/** Backups: one now, going back to it, one as a file; records that cannot be read. */
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeFindings, type Bench, openBench, overflow, PHONE } from './harness.ts';
import { story } from './story.ts';

let bench: Bench;
let page: Page;
let phone: Page;

story();
beforeAll(async () => {
  bench = await openBench();
  page = await bench.page();
  phone = await bench.page(PHONE);
});
afterAll(() => bench?.close());

const rows = (of: Page) => of.getByRole('list', { name: 'Backups, newest first' }).getByRole('listitem');
/** The household's file, beside the folder of its backups. */
async function file(): Promise<string> {
  const { folder } = (await (await fetch(`${bench.url}/api/backups`)).json()) as { folder: string };
  return join(dirname(folder), 'household.sqlite');
}

test('one is saved on a press, and had as a file', async () => {
  await page.goto(`${bench.url}/#/household/backups`);
  await page.getByRole('button', { name: 'Save a backup now' }).click();
  await page.getByText('Saved and checked.').waitFor();
  const newest = rows(page).first();
  expect(await newest.textContent()).toContain('made by you');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    newest.getByRole('link', { name: /^Download/ }).click(),
  ]);
  const copy = new Database(await download.path(), { readonly: true });
  expect(copy.prepare("SELECT count(*) FROM records WHERE kind = 'animals'").pluck().get()).toBe(1);
  copy.close();
  expect(await axeFindings(page)).toEqual([]);
});

test('going back asks first, and every open page shows the old state', async () => {
  await phone.goto(`${bench.url}/#/animals/demo-animal`);
  const name = phone.getByRole('heading', { name: 'Bramble' }).first();
  await name.waitFor();
  const { records } = (await (await fetch(`${bench.url}/api/records?after=0`)).json()) as {
    records: { kind: string; id: string; version: number; body: object }[];
  };
  const animal = records.find((r) => r.kind === 'animals');
  const put = await fetch(`${bench.url}/api/animals/demo-animal`, {
    method: 'PUT',
    headers: { 'content-type': 'application/json', 'if-match': `"${animal?.version}"` },
    body: JSON.stringify({ ...animal?.body, name: 'Thistle' }),
  });
  expect(put.status).toBe(200);
  await phone.getByRole('heading', { name: 'Thistle' }).first().waitFor();
  await rows(page)
    .first()
    .getByRole('button', { name: /^Go back/ })
    .click();
  const asked = page.getByRole('group', { name: /^Go back to how everything was/ });
  await asked.getByRole('button', { name: 'Leave it as it is' }).click();
  await asked.waitFor({ state: 'hidden' });
  await rows(page)
    .first()
    .getByRole('button', { name: /^Go back/ })
    .click();
  await asked.getByRole('button', { name: 'Go back' }).click();
  await page.getByText('How things were before is saved as a backup').waitFor();
  await name.waitFor();
  expect(await rows(page).first().textContent()).toContain('before going back to an older one');
});

test('it fits a phone', async () => {
  await phone.goto(`${bench.url}/#/household/backups`);
  await rows(phone).first().waitFor();
  await rows(phone)
    .first()
    .getByRole('button', { name: /^Go back/ })
    .click();
  expect(await overflow(phone)).toBe(0);
  expect(await axeFindings(phone)).toEqual([]);
});

test('a record that cannot be read is shown raw, and deleted on a press', async () => {
  const db = new Database(await file());
  db.exec('UPDATE records SET body = \'{"id": "demo-animal", broken\' WHERE id = \'demo-animal\'');
  db.close();
  await page.reload();
  const item = page.getByRole('listitem', { name: 'animal “demo-animal”' });
  await item.getByText('Its raw text').click();
  await item.getByText('{"id": "demo-animal", broken').waitFor();
  expect(await axeFindings(page)).toEqual([]);
  await phone.reload();
  await phone.getByRole('listitem', { name: 'animal “demo-animal”' }).waitFor();
  expect(await overflow(phone)).toBe(0);
  await item.getByRole('button', { name: 'Delete' }).click();
  await item.getByRole('button', { name: 'Delete it' }).click();
  await item.waitFor({ state: 'hidden' });
  await page.getByRole('heading', { name: 'Backups' }).waitFor();
  expect(bench.complaints).toEqual([]);
});
