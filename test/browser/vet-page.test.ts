/**
 * The page for the vet, of an animal with as much on record as a page can hold, and of one with nothing: what it says, and that
 * it prints on one page. With VET_PICTURES=<folder> it leaves pictures and the printed pages.
 */
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { feedingId } from '../../src/care/model.ts';
import { demoHousehold } from '../../src/household/demo.ts';
import type { Animal, Household } from '../../src/household/model.ts';
import { plusDays } from '../../src/kitchen/days.ts';
import type { Batch } from '../../src/kitchen/model.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';

const PICTURES = process.env.VET_PICTURES;
const TODAY = '2026-03-10';
const demo = demoHousehold();
const [bramble] = demo.animals as [Animal];
const [mix] = demo.mixes as [Household['mixes'][number]];
const ago = (days: number) => plusDays(TODAY, -days);
const LONG = 'dried and chopped in a warm oven, from the garden behind the house';

function batchOf(id: string, on: string, without: number): Batch {
  const foods = Object.entries(mix.shares).filter(([, share]) => share > 0);
  const used = foods.filter((_, i) => i % 9 !== without);
  return {
    id,
    mixId: mix.id,
    name: `${mix.name} ${id}`,
    problem: {
      ...mix.problem,
      foods: mix.problem.foods.map((f) => ({ ...f, name: `${f.name ?? f.id}, ${LONG}` })),
    },
    shares: mix.shares,
    order: [],
    grams: 300,
    pours: used.map(([food, share]) => ({
      food,
      lots: [],
      target: 3 * share,
      grams: 3 * share,
      at: `${on}T09:00:00Z`,
    })),
    animalIds: [bramble.id],
    startedAt: `${on}T09:00:00Z`,
    finishedAt: `${on}T11:00:00Z`,
  };
}

/** As full as a page gets: more of everything than it has room for. */
const full: Household = {
  ...demo,
  animals: [
    {
      ...bramble,
      name: 'Bramble of the long burrow',
      born: { on: ago(600), about: true },
      sex: 'male',
      usualGrams: 150,
      refuses: mix.problem.foods.slice(0, 11).map((f) => f.id),
      conditions: [
        { what: 'diabetes', since: ago(80), vet: true },
        { what: 'teeth', since: ago(60), until: ago(20) },
        { what: 'other', since: ago(30), note: 'the left eye weeps now and then, mostly in the evening' },
      ],
    },
    { ...bramble, id: 'blank', name: 'Clover', species: 'a jerboa' },
  ],
  batches: [85, 70, 55, 40, 28, 20].map((days, i) => batchOf(`no. ${i + 1}`, ago(days), i)),
  weighings: Array.from({ length: 80 }, (_, i) => ({
    id: `w${i}`,
    animalId: bramble.id,
    at: `${ago(88 - i)}T08:00:00.000Z`,
    grams: Math.round(150 + 3 * Math.sin(i) - Math.max(0, i - 60) * 0.9),
  })),
  feedings: Array.from({ length: 25 }, (_, i) => ({
    id: feedingId(bramble.id, ago(i)),
    animalId: bramble.id,
    on: ago(i),
    at: `${ago(i)}T18:00:00.000Z`,
    mix: { batchId: 'no. 6', grams: 6 },
    beside: [{ food: demo.foods[0]!.id, grams: 6 }],
    ...(i > 0 && i < 9 && { left: { on: ago(i - 1), bowl: { grams: 2 + (i % 3) } } }),
  })),
  trials: Array.from({ length: 5 }, (_, i) => ({
    id: `t${i}`,
    animalId: bramble.id,
    food: 'sr28:12036',
    name: `Seeds no. ${i + 1}, ${LONG}`,
    days: [ago(30 + i)],
    offerings: [
      { on: ago(30 + i), seen: 'eaten' as const },
      { on: ago(27 + i), seen: i === 0 ? ('upset' as const) : ('left' as const) },
    ],
    endedOn: ago(20 + i),
  })),
  notes: Array.from({ length: 9 }, (_, i) => ({
    id: `n${i}`,
    animalId: bramble.id,
    on: ago(3 * i),
    kind: i % 3 === 0 ? ('vet' as const) : ('seen' as const),
    text: 'It slept longer than usual, came out late, took some of the seeds and left the rest of what was scattered for it. '.repeat(
      4,
    ),
  })),
  keeper: [
    {
      id: 'keeper',
      vet: { name: 'The practice by the mill', phone: '012 345 678', emergency: '012 345 679' },
    },
  ],
};

let bench: Bench;

beforeAll(async () => {
  bench = await openBench({ house: full });
});
afterAll(() => bench?.close());

async function openAt(page: Page, id: string): Promise<void> {
  await page.clock.setFixedTime(new Date(`${TODAY}T19:00:00`));
  await page.goto(`${bench.url}/#/animals/${id}/vet`);
  await page.getByRole('button', { name: 'Print this page' }).waitFor();
  await page.locator('.vet-sheet').waitFor();
}

/** Pixels within the margins of the paper. */
const PAPER = { A4: { width: 710, height: 1039 }, Letter: { width: 732, height: 972 } } as const;

async function printed(page: Page, name: string): Promise<void> {
  const before = page.viewportSize();
  for (const format of ['A4', 'Letter'] as const) {
    await page.setViewportSize(PAPER[format]);
    await page.emulateMedia({ media: 'print' });
    // All of it, and nothing around it that would cut it off.
    const cut = (await page.evaluate(`(() => {
      const sheet = document.querySelector('.vet-sheet');
      const rooms = [];
      for (let e = sheet.parentElement; e; e = e.parentElement) rooms.push(e);
      return {
        bottom: sheet.getBoundingClientRect().bottom + window.scrollY,
        right: Math.max(...[...sheet.querySelectorAll('*')].map((e) => e.getBoundingClientRect().right)),
        cut: rooms.filter((e) => getComputedStyle(e).overflowY !== 'visible' && e.scrollHeight > e.clientHeight + 1 && e !== document.documentElement).map((e) => e.className),
      };
    })()`)) as { bottom: number; right: number; cut: string[] };
    expect(cut.cut, format).toEqual([]);
    expect(cut.bottom, format).toBeLessThanOrEqual(PAPER[format].height);
    expect(cut.right, format).toBeLessThanOrEqual(PAPER[format].width + 1);
    await page.emulateMedia({ media: null });
    const pdf = await page.pdf({
      format,
      ...(PICTURES && { path: join(PICTURES, `${name}-${format}.pdf`) }),
    });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g), format).toHaveLength(1);
  }
  if (before) await page.setViewportSize(before);
}

/** What stands on paper beside the page itself. */
async function outside(page: Page): Promise<string[]> {
  await page.emulateMedia({ media: 'print' });
  const texts = (await page.evaluate(`[...document.querySelectorAll('body *')]
    .filter((e) => e.checkVisibility() && e.children.length === 0 && e.textContent.trim() && !e.closest('.vet-sheet'))
    .map((e) => e.textContent.trim())`)) as string[];
  await page.emulateMedia({ media: null });
  return texts;
}

describe.each([
  ['at a desk', DESKTOP],
  ['on a phone', PHONE],
] as const)('%s', (where, size) => {
  let page: Page;
  beforeAll(async () => {
    page = await bench.page(size);
  });

  test('all that is on record, and one page of paper', async () => {
    await openAt(page, bramble.id);
    const sheet = page.locator('.vet-sheet');
    await sheet.getByText('Made on 10 March 2026 from the keeper’s own records. Not a diagnosis.').waitFor();
    await sheet.getByText('6 g of First mix no. 6, made on 18 February').waitFor();
    await sheet
      .getByText(/Ticked off as fed on 25 of the last 30 days: 6 g of mix and 6 g beside it/)
      .waitFor();
    await sheet.getByText(/Taken, by left-overs of 8 nights: .* of 12 g offered a night/).waitFor();
    await sheet.getByRole('columnheader', { name: 'Taken' }).waitFor();
    await sheet.getByText('The practice by the mill, 012 345 678, emergencies 012 345 679').waitFor();
    await sheet.getByText(/Diabetes, or prone to it, since 20 December 2025 \(a vet said so\)/).waitFor();
    await sheet.getByText('Over: Trouble with its teeth.').waitFor();
    await sheet.getByRole('row', { name: /^Crude protein .* g/ }).waitFor();
    await sheet.getByRole('img', { name: /^Picture of 80 weighings, from / }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
    if (PICTURES) await page.screenshot({ path: join(PICTURES, `full-${where}.png`), fullPage: true });
    await printed(page, `full-${where}`);
    expect(await outside(page)).toEqual([]);
  });

  test('nothing on record is said to be not known, never left out or shown as zero', async () => {
    await openAt(page, 'blank');
    const sheet = page.locator('.vet-sheet');
    await sheet.getByText('What it is fed is not known: no finished batch is fed to it.').waitFor();
    await sheet.getByText('What the food holds is not known').waitFor();
    await sheet.getByText('No weighing in the last 90 days.').waitFor();
    await sheet.getByText('What it eats of that is not known').waitFor();
    await sheet.getByText('Nothing noted in the last 90 days.').waitFor();
    expect(await sheet.getByText('not known', { exact: true }).count()).toBe(3);
    expect(await sheet.textContent()).not.toMatch(/\b0 (g|%)/);
    if (PICTURES) await page.screenshot({ path: join(PICTURES, `blank-${where}.png`), fullPage: true });
    await printed(page, `blank-${where}`);
  });

  test('in German and Dutch it fits too', async () => {
    for (const language of ['de', 'nl']) {
      await page.evaluate(`localStorage.setItem('pouchful.manner', '{"language":"${language}"}')`);
      await page.goto(`${bench.url}/#/animals/${bramble.id}/vet`);
      await page.reload();
      await page.locator('.vet-contents tbody tr').first().waitFor();
      expect(await overflow(page)).toBe(0);
      if (PICTURES)
        await page.screenshot({ path: join(PICTURES, `${language}-${where}.png`), fullPage: true });
      await printed(page, `${language}-${where}`);
    }
    expect(bench.complaints).toEqual([]);
  });
});
