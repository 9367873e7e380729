/**
 * The first page for all animals and batches: ticked off in one press, on the scale and at the left-overs in few, what cannot
 * wait above the rest, and nothing where nothing is due. With NOW_PICTURES=<folder> every station leaves a picture.
 */
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { feedingId } from '../../src/care/model.ts';
import { demoHousehold } from '../../src/household/demo.ts';
import type { Animal, Household } from '../../src/household/model.ts';
import type { Batch } from '../../src/kitchen/model.ts';
import { EMPTY } from '../household/empty-household.ts';
import { type Bench, DESKTOP, openBench, overflow, PHONE, wcagFindings } from './harness.ts';
import { householdAt, putAt } from './household-at.ts';
import { story } from './story.ts';

const PICTURES = process.env.NOW_PICTURES;
const DAY = '2026-03-10';
const demo = demoHousehold();
const [bramble] = demo.animals as [Animal];
const [mix] = demo.mixes as [Household['mixes'][number]];
const clover: Animal = {
  ...bramble,
  id: 'clover',
  name: 'Clover',
  species: 'winter white hamster',
  dailyGrams: 7,
};
const sorrel: Animal = { ...bramble, id: 'sorrel', name: 'Sorrel', gone: { how: 'died', on: '2026-02-01' } };

const batchOf = (id: string, on: string, animalIds: string[], about: Partial<Batch> = {}): Batch => ({
  id,
  mixId: mix.id,
  name: mix.name,
  problem: mix.problem,
  shares: mix.shares,
  order: [],
  grams: 300,
  pours: [
    { food: 'millet', lots: [{ lot: 'millet', grams: 300 }], target: 300, grams: 300, at: `${on}T09:00:00Z` },
  ],
  animalIds,
  startedAt: `${on}T09:00:00Z`,
  finishedAt: `${on}T11:00:00Z`,
  ...about,
});
const house: Household = {
  ...demo,
  animals: [bramble, clover, sorrel],
  mixes: [
    { ...mix, animalIds: [bramble.id] },
    { ...mix, id: 'winter', name: 'Winter mix', animalIds: [clover.id] },
  ],
  batches: [
    batchOf('b', '2026-02-10', [bramble.id]),
    batchOf('w', '2026-03-08', [clover.id], {
      mixId: 'winter',
      name: 'Winter mix',
      grams: 14,
      pours: [
        {
          food: 'millet',
          lots: [{ lot: 'other', grams: 14 }],
          target: 14,
          grams: 14,
          at: '2026-03-08T09:00:00Z',
        },
      ],
    }),
  ],
  lots: ['millet', 'other'].map((id) => ({
    id,
    food: 'millet',
    name: 'Millet',
    grams: 400,
    form: 'dried',
    boughtOn: '2026-02-01',
    frozen: false,
    cold: [],
  })),
};

let bench: Bench;

async function openOn(page: Page, day = DAY, hash = 'today'): Promise<void> {
  await page.clock.setFixedTime(new Date(`${day}T19:00:00`));
  await page.goto(`${bench.url}/#/${hash}`);
  await page.reload();
}
async function clean(page: Page, name: string): Promise<void> {
  if (PICTURES) await page.screenshot({ path: join(PICTURES, `${name}.png`), fullPage: true });
  expect(await wcagFindings(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
}
const animals = (page: Page) => page.getByRole('region', { name: 'Your animals today' });
const kept = () => householdAt(bench.url);

describe.each([
  ['at a desk', DESKTOP],
  ['on a phone', PHONE],
] as const)('two animals of two mixes, %s', (where, size) => {
  story();
  let page: Page;

  beforeAll(async () => {
    bench = await openBench({ house });
    page = await bench.page(size);
    await openOn(page);
  });
  afterAll(() => bench?.close());

  test('each has a line; who died has none; nobody who never ticks or weighs is told that it is due', async () => {
    const region = animals(page);
    await region.getByText('Nothing is due for your animals today.').waitFor();
    expect(await region.locator('.today-name').allTextContents()).toEqual(['Bramble', 'Clover']);
    await region.getByRole('button', { name: 'Fed: 6 g mix, 6 g pellet: Bramble' }).waitFor();
    await region.getByRole('button', { name: 'Fed: 3.5 g mix, 3.5 g pellet: Clover' }).waitFor();
    // The batch of the mix that is not at hand.
    const first = page.getByRole('region', { name: 'Look at this first' });
    expect(await first.count()).toBe(0);
    await page.getByText(/Winter mix of 8 March runs out on 12 March/).waitFor();
    await clean(page, `quiet-${where}`);
  });

  test('one press ticks off, another takes it back', async () => {
    const region = animals(page);
    await region.getByRole('button', { name: /^Fed: .*: Bramble$/ }).click();
    await expect
      .poll(async () => (await kept()).feedings)
      .toEqual([
        {
          id: feedingId(bramble.id, DAY),
          animalId: bramble.id,
          on: DAY,
          at: expect.any(String),
          mix: { batchId: 'b', grams: 6 },
          beside: [{ food: expect.any(String), grams: 6 }],
        },
      ]);
    await region.getByRole('button', { name: 'Undo: Bramble' }).click();
    await region.getByRole('button', { name: /^Fed: .*: Bramble$/ }).waitFor();
    await expect.poll(async () => (await kept()).feedings).toEqual([]);
  });

  test('one press ticks off all of them', async () => {
    const region = animals(page);
    await region.getByRole('button', { name: 'All 2 fed as planned' }).click();
    await region.getByRole('button', { name: 'Undo: Clover' }).waitFor();
    await expect.poll(async () => (await kept()).feedings.length).toBe(2);
    expect(await region.getByRole('button', { name: /^All/ }).count()).toBe(0);
    await clean(page, `fed-${where}`);
  });

  test('the next day the keeper who ticked is asked again', async () => {
    await openOn(page, '2026-03-11');
    const region = animals(page);
    await region.getByRole('button', { name: /^Fed: .*: Bramble$/ }).waitFor();
    expect(await region.getByText('Nothing is due').count()).toBe(0);
  });

  test('weighing is one press away; a week after the last it is due, until it is put off', async () => {
    await putAt(bench.url, 'weighings', {
      id: 'w1',
      animalId: bramble.id,
      at: '2026-03-04T10:00:00.000Z',
      grams: 140,
    });
    await openOn(page, '2026-03-11');
    const region = animals(page);
    await region.getByText('Time to weigh it again: last on 4 March.').waitFor();
    await clean(page, `due-${where}`);
    await region.getByRole('link', { name: 'Weigh: Bramble' }).click();
    await expect.poll(() => page.url()).toMatch(/#\/animals\/demo-animal\/weight$/);
    await page.goBack();
    await region.getByRole('button', { name: 'Not today: Bramble' }).click();
    await region.getByText('Time to weigh it again').waitFor({ state: 'detached' });
    await page.reload();
    await region.getByRole('link', { name: 'Weigh: Bramble' }).waitFor();
    expect(await region.getByText('Time to weigh it again').count()).toBe(0);
    await openOn(page, '2026-03-12');
    await region.getByText('Time to weigh it again: last on 4 March.').waitFor();
  });

  test('left-overs of last night are one press away', async () => {
    await animals(page).getByRole('link', { name: 'Left over: Clover' }).click();
    await expect.poll(() => page.url()).toMatch(/#\/animals\/clover\/left$/);
    await page.goBack();
  });

  test('a trial of a new food is told on its day', async () => {
    await putAt(bench.url, 'trials', {
      id: 't',
      animalId: clover.id,
      food: 'linseed',
      name: 'Linseed',
      grams: 1,
      beside: { food: 'millet', name: 'Millet' },
      days: ['2026-03-12'],
      offerings: [],
    });
    await animals(page).getByText('Offer 1 g of Linseed today, beside Millet.').waitFor();
  });

  test('what may do harm stands first, then what has run out', async () => {
    const lot = (await kept()).lots.find((l) => l.id === 'millet');
    await putAt(bench.url, 'lots', { ...lot!, barred: { why: 'recalled', on: '2026-03-11' } });
    const first = page.getByRole('region', { name: 'Look at this first' });
    await first.getByText(/Millet is not to be used any more/).waitFor();
    await expect
      .poll(() => first.getByRole('listitem').allTextContents())
      .toEqual([
        expect.stringMatching(/Millet is not to be used any more \(recalled\)/),
        expect.stringMatching(/Winter mix of 8 March runs out today/),
      ]);
    // Above everything else on the page.
    const order = await page
      .locator('main section')
      .evaluateAll((all) =>
        (all as { getAttribute(name: string): string | null }[]).map((s) => s.getAttribute('aria-label')),
      );
    expect(order[0]).toBe('Look at this first');
    expect(order.indexOf('Next')).toBeGreaterThan(order.indexOf('Your animals today'));
    await clean(page, `pressing-${where}`);
  });

  test('what is left of another batch can be said, and taken back', async () => {
    await page.getByText('What is left of other batches').click();
    const left = page.locator('.today-others');
    await left.getByRole('button', { name: 'All eaten' }).click();
    await expect.poll(async () => (await kept()).batches.find((b) => b.id === 'w')?.left?.grams).toBe(0);
    await left.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(async () => (await kept()).batches.find((b) => b.id === 'w')?.left).toBeUndefined();
  });

  test('without the server a tick waits on the device, and is sent later', async () => {
    // Bramble's only batch holds the pack that is stopped: there is nothing of it to tick off.
    expect(
      await animals(page)
        .getByRole('button', { name: /^Fed: .*: Bramble$/ })
        .count(),
    ).toBe(0);
    await page.context().setOffline(true);
    await animals(page)
      .getByRole('button', { name: /^Fed: .*: Clover$/ })
      .click();
    await animals(page).getByRole('button', { name: 'Undo: Clover' }).waitFor();
    await page.context().setOffline(false);
    await expect
      .poll(async () => (await kept()).feedings.some((f) => f.id === feedingId(clover.id, '2026-03-12')))
      .toBe(true);
  });

  test('in German too', async () => {
    await page.evaluate(`localStorage.setItem('pouchful.manner', '{"language":"de"}')`);
    await openOn(page, '2026-03-12');
    await page.getByRole('region', { name: 'Deine Tiere heute' }).getByText('Clover').waitFor();
    await clean(page, `german-${where}`);
    expect(bench.complaints.filter((c) => !c.startsWith('Failed to load resource'))).toEqual([]);
  });
});

describe('from the first page on a phone, by presses counted', () => {
  let page: Page;
  let presses: number;

  /** Taps by finger, the first page's own links included; nothing else counts or is done. */
  async function press(what: Locator): Promise<void> {
    await what.tap();
    presses += 1;
  }

  beforeAll(async () => {
    bench = await openBench({
      house: {
        ...house,
        weighings: [{ id: 'w1', animalId: bramble.id, at: '2026-03-04T10:00:00.000Z', grams: 140 }],
      },
    });
    page = await bench.page(PHONE, true);
  });
  afterAll(() => bench?.close());
  beforeEach(async () => {
    presses = 0;
    await openOn(page);
    await animals(page).waitFor();
  });

  test('an animal is weighed in three at most', async () => {
    await press(animals(page).getByRole('link', { name: 'Weigh: Bramble' }));
    await press(page.getByRole('button', { name: /^141 g/ }));
    await expect
      .poll(async () => (await kept()).weighings.map((w) => w.grams).sort((a, b) => a - b))
      .toEqual([140, 141]);
    expect(presses).toBeLessThanOrEqual(3);
  });

  test('two foods that were mostly left are noted in five at most', async () => {
    await press(animals(page).getByRole('link', { name: 'Left over: Bramble' }));
    const chips = page.getByRole('group', { name: 'These were mostly left' }).getByRole('button');
    await chips.first().waitFor();
    await press(chips.nth(0));
    await press(chips.nth(1));
    await press(page.getByRole('button', { name: 'Keep' }).last());
    await expect
      .poll(async () => (await kept()).feedings.flatMap((f) => f.left?.bowl?.mostly?.length ?? []))
      .toEqual([2]);
    expect(presses).toBeLessThanOrEqual(5);
  });
});

describe('a newcomer', () => {
  beforeAll(async () => {
    bench = await openBench({ house: { ...EMPTY } });
  });
  afterAll(() => bench?.close());

  test('sees the first steps and nothing above them', async () => {
    const page = await bench.page(PHONE);
    await openOn(page);
    const start = page.locator('section.start');
    await start.waitFor();
    expect(await page.locator('main section').first().getAttribute('class')).toBe('start');
    expect(await animals(page).count()).toBe(0);
  });
});
