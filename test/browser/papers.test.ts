/** What a batch prints: the sheet to weigh by and the label, each on one page, dark on white whatever the screen shows. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import type { Kind } from '../../src/household/model.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import type { Batch, Lot } from '../../src/kitchen/model.ts';
import { weighedMixes } from '../kitchen/weighing-mixes.ts';
import { type Bench, DESKTOP, openBench } from './harness.ts';
import { putAt } from './household-at.ts';

let bench: Bench;
let page: Page;
let batch: Batch;
let planned: Readonly<Record<string, number>>;
/** Where pictures go, for people who want to look at them. */
const PICTURES = process.env.PAPER_PICTURES;

const put = (kind: Kind, thing: Lot | Batch) => putAt(bench.url, kind, thing);

beforeAll(async () => {
  const mix = weighedMixes(loadReference(), await loadHighs(), 0)[0]!;
  planned = mix.planned;
  batch = { ...mix.batch, mixId: 'demo-mix', animalIds: ['demo-animal'] };
  expect(Object.keys(planned).length).toBe(20);
  // After the reckoning, which takes longer than a server keeps a connection that is idle.
  bench = await openBench();
  // A lot of every food, with a name as long as shops make them.
  for (const food of batch.order) {
    const name = `${batch.problem.foods.find((f) => f.id === food)!.name}, organic, resealable bag`;
    const lot: Lot = {
      id: `lot-${food}`,
      food,
      name,
      grams: 500,
      form: 'dried',
      boughtOn: '2026-03-01',
      frozen: false,
      cold: [],
    };
    await put('lots', lot);
  }
  await put('batches', { ...batch, id: 'running', name: 'Spring mix for Bramble' });
  const pours = batch.order.map((food, i) => ({
    food,
    lots: [{ lot: `lot-${food}`, grams: planned[food]! }],
    target: planned[food]!,
    grams: planned[food]!,
    at: new Date(Date.UTC(2026, 2, 14, 10, i)).toISOString(),
  }));
  await put('batches', {
    ...batch,
    id: 'finished',
    name: 'Spring mix for Bramble',
    pours,
    madeBy: 'Robin Underhill',
    finishedAt: '2026-03-14T11:00:00.000Z',
  });
  page = await bench.page(DESKTOP);
  await page.addInitScript('window.print = () => { window.printed = true; };');
});
afterAll(() => bench?.close());

/** Pages of what the page prints; Chromium writes one page object for each. */
async function pages(format: 'A4' | 'Letter'): Promise<number> {
  const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
  return pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

/** Text on paper, the ink and what it stands on. */
async function printed() {
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  const seen = (await page.evaluate(`(() => {
    const shown = [...document.querySelectorAll('body *')].filter((e) => e.checkVisibility() && e.children.length === 0 && e.textContent.trim());
    const sheet = document.querySelector('.print-sheet');
    const light = (c) => { const [r, g, b, a = 1] = c.match(/[\\d.]+/g).map(Number); return a === 0 ? 255 : Math.min(r, g, b); };
    return {
      outside: shown.filter((e) => !sheet.contains(e)).map((e) => e.textContent.trim()),
      pale: shown.filter((e) => light(getComputedStyle(e).color) > 90).map((e) => e.textContent),
      ground: [document.documentElement, document.body, sheet].map((e) => light(getComputedStyle(e).backgroundColor)),
      text: sheet.innerText,
      height: sheet.firstElementChild.getBoundingClientRect().height,
      width: sheet.firstElementChild.getBoundingClientRect().width,
    };
  })()`)) as {
    outside: string[];
    pale: string[];
    ground: number[];
    text: string;
    height: number;
    width: number;
  };
  await page.emulateMedia({ media: null, colorScheme: 'light' });
  return seen;
}

async function picture(name: string) {
  if (!PICTURES) return;
  for (const [format, width, height] of [
    ['a4', 711, 1040],
    ['letter', 733, 973],
  ] as const) {
    await page.setViewportSize({ width, height });
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    await page.screenshot({ path: `${PICTURES}/${name}-${format}.png`, fullPage: true });
    await page.emulateMedia({ media: null, colorScheme: 'light' });
  }
  await page.setViewportSize(DESKTOP);
}

describe('the sheet to weigh by', () => {
  test('of 20 foods stands on one page, with all that is needed beside the scale', async () => {
    await page.goto(`${bench.url}/#/weigh/running`);
    await page.getByTestId('target').waitFor();
    const asked = performance.now();
    await page.getByRole('button', { name: 'Print the sheet to weigh by' }).click();
    await expect.poll(() => page.evaluate('Boolean(window.printed)')).toBe(true);
    expect(performance.now() - asked).toBeLessThan(15_000);
    await picture('sheet');
    expect([await pages('A4'), await pages('Letter')]).toEqual([1, 1]);
    const { text, outside, pale, ground } = await printed();
    expect(outside).toEqual([]);
    expect(pale).toEqual([]);
    expect(Math.min(...ground)).toBe(255);
    expect(text).toContain('Spring mix for Bramble');
    expect(text).toMatch(/\d+ to \d+/);
    expect(text).toContain('resealable bag, 1 March 2026');
    const rows = page.locator('.weigh-sheet tbody tr');
    expect(await rows.count()).toBe(20);
    let reading = 0;
    for (const [i, food] of batch.order.entries()) {
      const cells = await rows.nth(i).locator('td').allTextContents();
      reading += planned[food]!;
      expect([Number(cells[1]), Number(cells[3]), cells[4]]).toEqual([planned[food], reading, '']);
      const [low, high] = cells[2]!.split(' to ').map(Number);
      expect(low).toBeLessThanOrEqual(planned[food]!);
      expect(high).toBeGreaterThanOrEqual(planned[food]!);
    }
  });
});

describe('the label', () => {
  test('of 20 foods stands on one page, no larger than a postcard', async () => {
    await page.goto(`${bench.url}/#/weigh/finished`);
    await page.getByTestId('record-state').waitFor();
    await picture('label');
    expect([await pages('A4'), await pages('Letter')]).toEqual([1, 1]);
    const { text, outside, pale, ground, width, height } = await printed();
    expect(outside).toEqual([]);
    expect(pale).toEqual([]);
    expect(Math.min(...ground)).toBe(255);
    const mm = 25.4 / 96;
    expect(width * mm).toBeLessThanOrEqual(149);
    expect(height * mm).toBeLessThanOrEqual(130);
    // Whether it is in range is said once, in words and as a shape.
    expect(await page.locator('.print-sheet [data-testid="label-verdict"] svg').count()).toBe(1);
    expect(text.match(/[Ii]n range if|Surely in range|Out of range/g)).toHaveLength(1);
    for (const words of ['14 March 2026', 'Robin Underhill', 'Batch finished', '±', 'Bramble'])
      expect(text).toContain(words);
    // What is said of three pulses is said once.
    const sentences = text.split(/(?<=\.)\s+/).filter((s) => s.length > 30);
    expect(new Set(sentences).size).toBe(sentences.length);
  });
});

test('the browser had nothing to complain of', () => {
  expect(bench.complaints).toEqual([]);
});
