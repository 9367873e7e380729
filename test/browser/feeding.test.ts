/** How much an animal is fed, its portions, and the card for a sitter on one page of paper. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Animal, Household } from '../../src/household/model.ts';
import { batch, demo, house, lot } from '../kitchen/calendar-house.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt, putAt } from './household-at.ts';
import { story } from './story.ts';

const DAY = 86_400_000;
const ago = (days: number) => new Date(Date.now() - days * DAY).toISOString();
const bramble = demo.animals[0]!;
const mix = demo.mixes[0]!;

/** Some of it is in every batch. */
const MILLET = lot('millet', { id: 'bag', name: 'Millet, bag', grams: 500, boughtOn: ago(60).slice(0, 10) });

/** The demonstration's mix, weighed out and fed since yesterday, with an older batch before it. */
function fedHouse(animals: readonly Animal[]): Household {
  const animalIds = animals.map((a) => a.id);
  const pours = mix.problem.foods.map((f) => ({
    food: f.id,
    lots: f.id === 'millet' ? [{ lot: 'bag', grams: 60 }] : [],
    target: 60,
    grams: 60,
    at: ago(2),
  }));
  const even = Object.fromEntries(mix.problem.foods.map((f) => [f.id, 100 / mix.problem.foods.length]));
  const made = (id: string, name: string, days: number) =>
    batch(id, ago(days).slice(0, 10), {
      name,
      animalIds,
      pours,
      shares: even,
      order: pours.map((p) => p.food),
      startedAt: ago(days + 0.1),
      finishedAt: ago(days),
    });
  return house({
    animals,
    mixes: [{ ...mix, animalIds, shares: even }],
    lots: [MILLET],
    batches: [made('old', 'Autumn mix', 40), made('new', 'Winter mix', 2)],
    weighings: animals.map((a) => ({
      id: `w-${a.id}`,
      animalId: a.id,
      at: ago(1),
      grams: a.id === 'moss' ? 23 : 160,
    })),
  });
}

async function clean(page: Page): Promise<void> {
  expect(await axeFindings(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
}

/** Chromium writes one page object for each page of what is printed. */
async function pagesOf(page: Page, format: 'A4' | 'Letter'): Promise<number> {
  const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
  return pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

describe.each([
  ['at a desk', DESKTOP],
  ['on a phone', PHONE],
] as const)('how much it is fed, %s', (_, size) => {
  story();
  let bench: Bench;
  let page: Page;
  const fedNow = async () =>
    (await householdAt(bench.url)).animals.find((a) => a.id === bramble.id)?.dailyGrams;

  beforeAll(async () => {
    const silent: Animal = { ...bramble, id: 'moss', name: 'Moss', species: 'Roborovski hamster' };
    bench = await openBench({ house: fedHouse([{ ...bramble, wheel: true }, silent]) });
    page = await bench.page(size);
  });
  afterAll(() => bench?.close());

  test('equation, intake and common rules stand side by side, each with where it comes from', async () => {
    await page.goto(`${bench.url}/#/animals/${bramble.id}/food`);
    const rows = page.getByRole('list', { name: 'Grams a day, side by side' }).getByRole('listitem');
    await expect.poll(() => rows.count()).toBe(5);
    expect(await rows.getByRole('heading').allTextContents()).toEqual([
      'By the energy it needs',
      'What its kind was seen to eat',
      'Vets’ handouts',
      'What keepers do',
      'What it is fed now',
    ]);
    await rows
      .first()
      .getByText(/^\d+(\.\d)? g to \d+(\.\d)? g$/)
      .waitFor();
    await rows.nth(1).getByText('9.1 g of dry matter a day, on average.').waitFor();
    await page.getByText('Common practice, no source.').waitFor();
    await page.getByText(/golden hamsters with one ate from hardly more to nearly twice as much/).waitFor();
    await page.getByText('Why these figures').click();
    await page
      .getByText(/J\. ?Exp|Archives of Animal Nutrition 37/)
      .first()
      .waitFor();
    await clean(page);
  });

  test('a figure is taken with one press, and given back with another', async () => {
    await page.getByRole('button', { name: 'Take 10 g: What keepers do' }).click();
    await page.getByText('Bramble is now fed 10 g a day.').waitFor();
    await page.getByText(/less than before\. Weigh the animal/).waitFor();
    await expect.poll(fedNow).toBe(10);
    await page.getByRole('button', { name: 'Back to 12 g' }).click();
    await page.getByText('Bramble is fed 12 g a day, mix and pellet together.').waitFor();
    await expect.poll(fedNow).toBe(12);
  });

  test('portions are whole steps of the scale and add up, the old batch among them', async () => {
    await page.getByText('Its food is changing: day 3 of 14.').waitFor();
    await page.getByText('Twice', { exact: true }).click();
    const table = page.getByRole('table');
    await table.getByText('Autumn mix (before)').waitFor();
    const sums = await table.getByRole('row').last().getByRole('cell').allTextContents();
    expect(sums).toEqual(['6 g', '6 g', '12 g']);
    await clean(page);
  });

  test('a kind without figures gets an estimate, said to be one, and no rule that nobody gave', async () => {
    await page.goto(`${bench.url}/#/animals/moss/food`);
    await page.getByText(/There is no figure for this kind/).waitFor();
    expect(await page.getByText('Vets’ handouts').count()).toBe(0);
    await clean(page);
  });

  test('without a weight there is no range, and what is missing is a press away', async () => {
    const kept = await householdAt(bench.url);
    await putAt(bench.url, 'animals', { ...bramble, id: 'sedge', name: 'Sedge', species: 'gerbil' });
    expect(kept.weighings).toHaveLength(2);
    await page.goto(`${bench.url}/#/animals/sedge/food`);
    await page.getByText(/The body weight of Sedge is missing/).waitFor();
    await page.getByText(/it is fed no batch/).waitFor();
    expect(await page.getByText('By the energy it needs').count()).toBe(0);
    await page.getByRole('link', { name: 'Weigh Sedge' }).click();
    await page.waitForURL(/#\/animals\/sedge\/weight/);
  });

  test('a batch with a recalled pack is not shared out', async () => {
    await putAt(bench.url, 'lots', { ...MILLET, barred: { why: 'recalled', on: ago(0).slice(0, 10) } });
    await page.goto(`${bench.url}/#/animals/${bramble.id}/food`);
    await page.getByRole('link', { name: /Do not feed “Winter mix”: it holds Millet, bag/ }).waitFor();
    expect(await page.getByRole('table').count()).toBe(0);
    await clean(page);
  });
});

describe('the card for a sitter', () => {
  const names = ['Bramble', 'Moss', 'Clover', 'Sedge', 'Rowan', 'Teasel', 'Fern', 'Hazel'];
  const animals = (n: number): Animal[] =>
    names.slice(0, n).map((name, i) => ({
      ...bramble,
      id: `animal-${i}`,
      name,
      dailyGrams: 5 + i,
      refuses: ['millet', 'linseed'],
      conditions: i === 1 ? [{ what: 'diabetes', since: '2026-01-01' }] : [],
      ...(i === 7 && { gone: undefined }),
    }));
  const long = 'The spare key hangs behind the door; the wheel squeaks, that is all right. '.repeat(13);

  test.each([1, 3, 8])('of %i animals stands on one page of A4 and of Letter, and says it all', async (n) => {
    const kept = fedHouse(animals(n));
    const bench = await openBench({
      house: {
        ...kept,
        keeper: [
          {
            id: 'keeper',
            vet: { name: 'Dr Alder', phone: '01234 567', emergency: '01234 999' },
            forSitter: long.trim(),
          },
        ],
      },
    });
    try {
      const page = await bench.page(DESKTOP);
      await page.goto(`${bench.url}/#/animals/sitter`);
      await page
        .locator('.sitter-card')
        .getByText(names[n - 1]!, { exact: true })
        .waitFor();
      expect([await pagesOf(page, 'A4'), await pagesOf(page, 'Letter')]).toEqual([1, 1]);
      expect(await page.getByText(/does not fit on one page/).count()).toBe(0);
      await page.emulateMedia({ media: 'print' });
      const printed = (await page.evaluate(
        `[...document.querySelectorAll('body *')].filter((e) => e.checkVisibility() && e.children.length === 0).map((e) => [e.closest('.sitter-paper') !== null, e.textContent.trim()]).filter(([, t]) => t)`,
      )) as [boolean, string][];
      expect(printed.filter(([onPaper]) => !onPaper)).toEqual([]);
      const text = await page.locator('.sitter-paper').textContent();
      for (const part of [...names.slice(0, n), 'Dr Alder', '01234 567', '01234 999', 'Call the vet at once'])
        expect(text).toContain(part);
      expect(text).toContain('the wheel squeaks');
      // Whatever stands on paper is read without a lens.
      const size = Number.parseFloat(
        (await page.evaluate(`getComputedStyle(document.querySelector('.sitter-paper')).fontSize`)) as string,
      );
      expect(size).toBeGreaterThanOrEqual((7.5 * 96) / 72);
    } finally {
      await bench.close();
    }
  });

  test('is read on a phone, keeps the keeper’s own words, and has lines where the vet is not known', async () => {
    const bench = await openBench({ house: { ...fedHouse(animals(2)), keeper: [] } });
    try {
      const page = await bench.page(PHONE);
      await page.goto(`${bench.url}/#/animals`);
      await page.getByRole('link', { name: 'Card for a sitter' }).click();
      await page.getByText(/The vet’s name and numbers are not written down/).waitFor();
      await page
        .locator('.sitter-card')
        .getByText(/anything sweet, fruit too/)
        .waitFor();
      await page.locator('.sitter-card').getByText('Leaves: Millet and Linseed').first().waitFor();
      expect(await page.locator('.sitter-card .card-vet .card-line').count()).toBe(4);
      await page.getByLabel('In your own words').fill('Bites when woken.');
      await page.getByRole('button', { name: 'Keep these words' }).click();
      await expect
        .poll(async () => (await householdAt(bench.url)).keeper[0]?.forSitter)
        .toBe('Bites when woken.');
      await page.locator('.sitter-card').getByText('Bites when woken.').waitFor();
      await clean(page);
    } finally {
      await bench.close();
    }
  });
});
