/** Taking everything out, wiping, bringing it in again; a mix for another keeper; a table of one's own. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import writeExcelFile from 'write-excel-file/node';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt } from './household-at.ts';
import { story } from './story.ts';

const EMPTY_FILE = '{"format":"pouchful-household","version":1,"records":[]}';

describe.each([
  ['desktop', DESKTOP],
  ['phone', PHONE],
])('on a %s', (_name, size) => {
  let bench: Bench;
  let page: Page;

  story();
  beforeAll(async () => {
    bench = await openBench();
    page = await bench.page(size);
    await page.goto(`${bench.url}/#/household/out-and-in`);
  });
  afterAll(() => bench?.close());

  const section = (name: string) => page.getByRole('region', { name, exact: true });
  const choose = (name: string, text: string) =>
    section('Bring in')
      .getByLabel('File', { exact: true })
      .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
  const come = (way: RegExp) => page.getByRole('radio', { name: way }).check();
  const press = (name: string) => page.getByRole('button', { name, exact: true }).click();

  async function saved(link: string): Promise<string> {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      section('Take out').getByRole('link', { name: link }).click(),
    ]);
    return readFileSync(await download.path(), 'utf8');
  }

  let everything = '';

  test('everything is saved as one file', async () => {
    everything = await saved('Save everything as one file');
    expect(JSON.parse(everything).format).toBe('pouchful-household');
    expect(everything).toContain('Bramble');
    expect(await saved('Animals')).toContain('Bramble');
  });

  test('an empty file takes everything away once it was shown what goes', async () => {
    await choose('empty.json', EMPTY_FILE);
    await come(/Replace everything/);
    await section('What would change').getByText('animal “Bramble”').waitFor();
    expect((await householdAt(bench.url)).animals).toHaveLength(1);
    await press('Replace everything');
    await page.getByText(/Brought in from empty\.json: 0 new, 0 changed, 3 gone/).waitFor();
    expect((await householdAt(bench.url)).animals).toEqual([]);
  });

  test('the file brings it in again, to the byte, and the page shows it', async () => {
    await choose('all.json', everything);
    await come(/Replace everything/);
    await section('What would change').getByText('animal “Bramble”').waitFor();
    await press('Replace everything');
    await page.getByText(/Brought in from all\.json: 3 new/).waitFor();
    expect(await saved('Save everything as one file')).toBe(everything);
    await page.locator('header.bar a[href="#/animals"]').click();
    await page.getByText('Bramble').first().waitFor();
    await page.goto(`${bench.url}/#/household/out-and-in`);
  });

  test('wrong files are refused by field, and nothing is written', async () => {
    for (const [text, told] of [
      ['not JSON', /no JSON/],
      [everything.slice(0, -20), /no JSON/],
      ['{"format":"pouchful-household","version":99,"records":[]}', /bring Pouchful up to date/],
      [everything.replace('"kind":"animals"', '"kind":"pets"'), /no kind of record/],
    ] as const) {
      await choose('wrong.json', text);
      await section('Bring in').getByRole('alert').getByText(told).waitFor();
    }
    expect(await (await fetch(`${bench.url}/api/export`)).text()).toBe(everything);
  });

  test('a mix goes to another keeper and comes in beside what is here', async () => {
    const text = await saved('Save as a file');
    expect(text).not.toContain('Bramble');
    await choose('mix.json', text);
    await section('Bring in').getByText('Comes in:').waitFor();
    // The demonstration's mix keeps no margin: that is the sender's choice.
    const margin = page.getByRole('checkbox', { name: /How far it keeps from its limits/ });
    await margin.waitFor();
    expect(await margin.isChecked()).toBe(false);
    await press('Bring in');
    await page.getByText('Brought in: First mix').waitFor();
    const { mixes } = await householdAt(bench.url);
    expect(mixes).toHaveLength(2);
    expect(mixes[1]?.problem.margin).toBe(0.9);
  });

  test('both screens are read by a screen reader and fit', async () => {
    expect(await axeFindings(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
  });

  const TABLE =
    'Futtermittel\tAnteil (%)\tRohprotein (%)\tRohfett (%)\tGeheim\nHafer\t60\t11,5\t6,9\tx\nErbsen\t30\t24\t1,5\ty\nMehlwurm\t5\t\t\tz\nSumme\t95\t\t\t';

  test('a pasted table asks what it leaves open', async () => {
    await page.getByRole('link', { name: 'Bring in a table' }).click();
    await page.getByLabel('The table').fill(TABLE);
    await page.getByText('2 questions are open', { exact: false }).waitFor();
    await page.getByLabel('Column “Geheim” holds').selectOption('none');
    await page.getByRole('radio', { name: 'of the food as it is weighed (as fed)' }).check();
    await page.getByRole('checkbox', { name: 'I have looked at the columns' }).check();
    await section('Rows').getByText('4 rows, 1 to be decided').waitFor();
    await page.getByLabel('Mehlwurm becomes').selectOption({ label: 'a food of the tables…' });
    await page.getByLabel('Look in the tables for').fill('mealworm');
    await page
      .getByRole('button', { name: /mealworm/i })
      .first()
      .click();
    await section('What comes in').getByText('The shares of the table come to 95 %').waitFor();
    expect(await axeFindings(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
  });

  test('and becomes foods of one’s own and a mix, as it was shown', async () => {
    const before = await householdAt(bench.url);
    await press('Bring them to 100 %');
    await section('What comes in').getByText('2 foods of your own').waitFor();
    await page.getByLabel('Name of the mix').fill('Winter');
    await section('What comes in').getByRole('button', { name: 'Bring in' }).click();
    await expect
      .poll(async () => (await householdAt(bench.url)).mixes.map((m) => m.name))
      .toContain('Winter');
    const { foods, mixes } = await householdAt(bench.url);
    expect(foods.slice(before.foods.length).map((f) => [f.name, f.composition])).toEqual([
      ['Hafer', { PROCNT: 11.5, FAT: 6.9 }],
      ['Erbsen', { PROCNT: 24, FAT: 1.5 }],
    ]);
    const winter = mixes.find((m) => m.name === 'Winter');
    expect(Object.values(winter?.shares ?? {}).reduce((a, b) => a + b, 0)).toBeCloseTo(100, 6);
    // Where the browser goes with it: the mix itself.
    await expect.poll(() => page.url()).toContain(`#/mix/${winter?.id}`);
  });

  test('a spreadsheet file is read the same, with percents that are parts of one asked about', async () => {
    const buffer = await writeExcelFile([
      ['Food', 'Share', 'Crude protein (%)'],
      ['Barley', { value: 0.7, format: '0%' }, { value: 0.1, format: '0%' }],
      ['Lentils', { value: 0.3, format: '0%' }, { value: 0.25, format: '0%' }],
    ] as never).toBuffer();
    await page.goto(`${bench.url}/#/household/table`);
    await page.getByRole('radio', { name: /In a file/ }).check();
    await page.getByLabel('File', { exact: true }).setInputFiles({
      name: 'mine.xlsx',
      mimeType: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
      buffer,
    });
    await page.getByText('What are they?').waitFor();
    await page.getByRole('radio', { name: 'parts of one: 0.7 is 70 %' }).check();
    await page.getByRole('radio', { name: /^yes: 0.1 is 10 %/ }).check();
    await page.getByRole('radio', { name: 'of the food as it is weighed (as fed)' }).check();
    await section('Rows').getByText('In 100 g as weighed: protein 10 g').waitFor();
    await page.getByLabel('File', { exact: true }).setInputFiles({
      name: 'photo.xlsx',
      mimeType: 'image/png',
      buffer: Buffer.from('PK\u0003\u0004 no sheet'),
    });
    await page.getByRole('alert').getByText('could not be read as a spreadsheet').waitFor();
  });

  test('nothing was complained of but what was refused', () => {
    expect(bench.complaints.filter((c) => !/status of 4\d\d/.test(c))).toEqual([]);
  });
});
