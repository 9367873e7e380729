/**
 * A month of five animals, entered by thumb on a phone: weighed most days, fed, left-overs, a food refused, one that did not
 * do well, a note, a new batch. Then every screen is opened at both widths, and the papers are looked at.
 * With MONTH_PICTURES=<folder> it leaves pictures and the printed pages.
 */
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoHousehold } from '../../src/household/demo.ts';
import type { Animal, Household } from '../../src/household/model.ts';
import { plusDays } from '../../src/kitchen/days.ts';
import type { Batch } from '../../src/kitchen/model.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt } from './household-at.ts';
import { failure, SCREENS, settled } from './screens.ts';
import { story } from './story.ts';

const PICTURES = process.env.MONTH_PICTURES;
/** The days grow short: a winter white loses weight and is healthy. */
const FIRST = '2026-10-05';
const DAYS = 30;
const LONG = 300_000;

const demo = demoHousehold();
const [bramble] = demo.animals as [Animal];
const [mix] = demo.mixes as [Household['mixes'][number]];
const kinds = [
  ['bramble', 'Bramble', 'golden hamster', 145, 12],
  ['clover', 'Clover', "Campbell's hamster", 42, 6],
  ['sorrel', 'Sorrel', 'winter white hamster', 38, 6],
  ['teasel', 'Teasel', 'Roborovski hamster', 23, 4],
  ['yarrow', 'Yarrow', 'gerbil', 70, 7],
] as const;
const animals = kinds.map(
  ([id, name, species, , dailyGrams]): Animal => ({
    ...bramble,
    id,
    name,
    species,
    dailyGrams,
    born: { on: '2025-09-01', about: true },
    daylight: true,
  }),
);
const ids = animals.map((a) => a.id);
const named = Object.entries(mix.shares).filter(([, share]) => share > 0);
const made = '2026-09-10T09:00:00Z';
const firstBatch: Batch = {
  id: 'first',
  mixId: 'five',
  name: 'Mix for five',
  problem: mix.problem,
  shares: mix.shares,
  order: [],
  grams: 900,
  pours: named.map(([food, share]) => ({ food, lots: [], target: 9 * share, grams: 9 * share, at: made })),
  animalIds: ids,
  startedAt: made,
  finishedAt: made,
};
const house: Household = {
  ...demo,
  animals,
  mixes: [{ ...mix, id: 'five', name: 'Mix for five', animalIds: ids }],
  batches: [firstBatch],
  keeper: [{ id: 'keeper', vet: { name: 'The practice by the mill', phone: '012 345 678' } }],
};

describe('a month', () => {
  story();
  let bench: Bench;
  let page: Page;

  beforeAll(async () => {
    bench = await openBench({ house });
    page = await bench.page(PHONE, true);
    await page.goto(`${bench.url}/#/today`);
  });
  afterAll(() => bench?.close());

  const kept = () => householdAt(bench.url);
  const button = (name: string | RegExp) =>
    page.getByRole('button', { name, exact: typeof name === 'string' });
  const now = () => page.getByRole('region', { name: 'Your animals today' });
  const toNow = async () => {
    await page.goto(`${bench.url}/#/today`);
    await now().waitFor();
  };
  async function on(day: number): Promise<void> {
    await page.clock.setFixedTime(new Date(`${plusDays(FIRST, day)}T19:00:00`));
    // A page that stood open is drawn for another day by what is pressed next.
    await page.goto(`${bench.url}/#/animals`);
    await toNow();
  }
  /** Counts the presses from the first page. */
  async function weigh(name: string, grams: number): Promise<void> {
    await now()
      .getByRole('link', { name: new RegExp(`^Weigh: ${name}$`) })
      .tap();
    const field = page.getByRole('textbox', { name: /^Another weight|^Weight/ }).first();
    await field.tap();
    await field.fill(String(grams));
    await field.press('Enter');
    await page.getByText(/^[\d.]+ g kept/).waitFor();
    await toNow();
  }
  async function left(name: string, digits: string): Promise<void> {
    await now()
      .getByRole('link', { name: `Left over: ${name}` })
      .tap();
    await button('Nothing left').waitFor();
    for (const digit of digits) await button(digit).first().tap();
    await button('Keep').first().tap();
    await page.getByText(/^Kept: /).waitFor();
    await toNow();
  }
  async function openTrials(id: string): Promise<void> {
    await page.goto(`${bench.url}/#/animals/${id}/trials`);
    await page.getByRole('heading', { name: 'New foods', level: 3 }).waitFor();
  }
  async function begin(id: string, food: string): Promise<void> {
    await openTrials(id);
    await button('Try a new food').tap();
    await page.getByLabel('Search foods').fill(food);
    await button(/^Choose /)
      .first()
      .tap();
    await button('Begin').tap();
    await page.getByText('An offer is due today.').waitFor();
  }
  async function saw(id: string, what: string): Promise<void> {
    await openTrials(id);
    await button(new RegExp(`^${what}`))
      .first()
      .tap();
  }
  /** Steady but for a little to and fro; the winter white grows lighter. */
  const gramsOn = (i: number, day: number) => {
    const [, , , start] = kinds[i] as (typeof kinds)[number];
    const season = i === 2 ? 1 - 0.003 * day : 1;
    return Math.round(start * season + ((day + i) % 3) - 1);
  };

  test(
    'is entered on a phone, a few presses a day',
    async () => {
      for (let day = 0; day < DAYS; day++) {
        await on(day);
        await button(/^All \d fed as planned$/).tap();
        await button(/^All \d fed as planned$/).waitFor({ state: 'detached' });
        for (const [i, [, name]] of kinds.entries())
          if ((day + i) % 3 === 0) await weigh(name, gramsOn(i, day));
        if (day % 4 === 2) await left('Bramble', '2');
        if (day % 7 === 3) await left('Yarrow', '1');
        if (day === 2) await begin('yarrow', 'quinoa');
        if (day === 2 || day === 4 || day === 6) await saw('yarrow', 'Left');
        if (day === 6) await page.getByText(/^Yarrow does not want/).waitFor();
        if (day === 9) {
          await begin('clover', 'pumpkin');
          await saw('clover', 'Did not do well');
          await page.getByText(/^Stop feeding it\./).waitFor();
        }
        if (day === 11) {
          await page.goto(`${bench.url}/#/animals/teasel/life`);
          await button('Note what you saw').tap();
          await page.getByRole('textbox', { name: 'What you saw' }).fill('Ran less than usual.');
          await button('Save').tap();
          await page.getByText('Noted.', { exact: true }).waitFor();
        }
        if (day === 15) await newBatch();
      }
      await expect.poll(async () => (await kept()).feedings.filter((f) => f.at).length).toBe(5 * DAYS);
      const { weighings, trials, notes, batches, feedings } = await kept();
      expect(weighings.length).toBe(5 * (DAYS / 3));
      expect(trials.map((t) => t.offerings.length).sort()).toEqual([1, 3]);
      expect(notes.length).toBe(1);
      expect(batches.filter((b) => b.finishedAt !== undefined).length).toBe(2);
      expect(feedings.filter((f) => f.left).length).toBeGreaterThan(8);
      expect(bench.complaints).toEqual([]);
    },
    LONG,
  );

  /** What was learnt of foods meanwhile comes into the mix first. */
  async function newBatch(): Promise<void> {
    await page.goto(`${bench.url}/#/mix`);
    await page
      .getByRole('region', { name: 'Verdict' })
      .getByRole('button', { name: 'Make it fit', exact: true })
      .tap();
    await page.waitForSelector('[data-testid="verdict"][data-state="in"]');
    await page.getByText('Saved', { exact: true }).waitFor();
    await page.goto(`${bench.url}/#/weigh`);
    await button(/^Begin with/).tap();
    for (let n = 0; n < 60; n++) {
      const end = button('Finish the batch');
      await page.getByTestId('target').or(end).first().waitFor();
      if (await end.isVisible()) break;
      const before = await page.getByTestId('running-total').textContent();
      await page.locator('.weigh-poured').tap();
      await expect.poll(() => page.getByTestId('running-total').textContent()).not.toBe(before);
    }
    await button('Finish the batch').tap();
    await page.getByTestId('record-state').waitFor();
  }

  test('no healthy animal is told to see a vet, the winter white neither', async () => {
    await toNow();
    expect(
      await page
        .getByRole('region', { name: 'Look at this first' })
        .getByText(/has lost/)
        .count(),
    ).toBe(0);
  });

  describe.each([
    ['on a phone', PHONE],
    ['at a desk', DESKTOP],
  ] as const)('every screen, %s', (where, size) => {
    const parts = ['', '/weight', '/food', '/left', '/trials', '/life', '/vet'];
    const own = ids.flatMap((id) => parts.map((part) => `animals/${id}${part}`));
    test(
      'is clean and no wider than the window',
      async () => {
        await page.setViewportSize(size);
        for (const address of [...SCREENS, 'animals/sitter', ...own]) {
          await page.goto(`${bench.url}/#/${address}`);
          await page.locator('main').waitFor();
          await settled(page);
          expect(await failure(page), address).toBe('');
          expect(await overflow(page), address).toBe(0);
          expect(await axeFindings(page), address).toEqual([]);
          expect(await page.locator('main').textContent(), address).not.toMatch(/\bNaN\b|Infinity|\[object /);
          if (PICTURES)
            await page.screenshot({
              path: join(PICTURES, `${where}-${address.replaceAll('/', '-')}.png`),
              fullPage: true,
            });
        }
        expect(bench.complaints).toEqual([]);
      },
      LONG,
    );
  });

  test('each vet’s page is one page of paper, and the sitter’s card too', async () => {
    for (const address of [...ids.map((id) => `animals/${id}/vet`), 'animals/sitter']) {
      await page.goto(`${bench.url}/#/${address}`);
      await page.locator('main').waitFor();
      await settled(page);
      if (address.endsWith('/vet')) await button('Print this page').waitFor();
      for (const format of ['A4', 'Letter']) {
        const pdf = await page.pdf({
          format,
          ...(PICTURES && { path: join(PICTURES, `${address.replaceAll('/', '-')}-${format}.pdf`) }),
        });
        expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g), `${address} ${format}`).toHaveLength(
          1,
        );
      }
    }
  });
});
