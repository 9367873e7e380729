/** One picture of one animal: events chosen in it and in its list, moved through time, and notes written beside it. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Feeding, feedingId } from '../../src/care/model.ts';
import { demoHousehold } from '../../src/household/demo.ts';
import type { Household } from '../../src/household/model.ts';
import type { Batch } from '../../src/kitchen/model.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt } from './household-at.ts';
import { story } from './story.ts';

const DAY_MS = 86_400_000;
const BRAMBLE = 'demo-animal';
const GERMAN = `localStorage.setItem('pouchful.manner', '{"language":"de"}')`;
const demo = demoHousehold();
const foods = demo.mixes[0]!.problem.foods.map((f) => f.id);
const pellet = demo.foods[0]!;

const at = (daysAgo: number) => new Date(Date.now() - daysAgo * DAY_MS).toISOString();
const day = (daysAgo: number) => at(daysAgo).slice(0, 10);

function batch(id: string, daysAgo: number, of: readonly string[]): Batch {
  const { id: mixId, name, problem, shares } = demo.mixes[0]!;
  return {
    ...{ id, mixId, name, problem, shares, order: of, grams: 220, animalIds: [BRAMBLE] },
    pours: of.map((food) => ({ food, lots: [], target: 11, grams: 11, at: at(daysAgo) })),
    startedAt: at(daysAgo + 0.01),
    finishedAt: at(daysAgo),
  };
}
function fed(daysAgo: number, batchId: string, left: number): Feeding {
  return {
    id: feedingId(BRAMBLE, day(daysAgo)),
    animalId: BRAMBLE,
    on: day(daysAgo),
    mix: { batchId, grams: 6 },
    beside: [{ food: pellet.id, grams: 6 }],
    left: { on: day(daysAgo - 1), bowl: { grams: left }, hoard: { grams: 0 } },
  };
}

/** Weighed each day; other food since twelve days ago, of which more is left. */
function house(days: number): Household {
  return {
    ...demo,
    batches: [batch('old', 40, foods.slice(0, 10)), batch('new', 12, foods.slice(1, 11))],
    weighings: Array.from({ length: days }, (_, i) => ({
      id: `weighing-${i}`,
      animalId: BRAMBLE,
      at: at(i + 1),
      grams: 142 + ((i * 7) % 5) - 2,
    })),
    feedings: Array.from({ length: 20 }, (_, i) =>
      fed(i + 1, i + 1 <= 12 ? 'new' : 'old', i + 1 <= 12 ? 4 : 1),
    ),
    trials: [
      {
        id: 'trial',
        animalId: BRAMBLE,
        food: foods[15]!,
        name: 'Chickpea',
        days: [day(10), day(8)],
        offerings: [{ on: day(10), seen: 'upset', note: 'Loose droppings.' }],
      },
    ],
    notes: [{ id: 'note', animalId: BRAMBLE, on: day(9), kind: 'vet', text: 'Teeth are fine.' }],
  };
}

async function open(bench: Bench, page: Page): Promise<void> {
  await page.goto(`${bench.url}/#/animals/${BRAMBLE}/life`);
  await page.getByRole('slider').waitFor();
}
async function clean(page: Page): Promise<void> {
  expect(await axeFindings(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
}

describe.each([
  ['at a desk', DESKTOP],
  ['on a phone', PHONE],
] as const)('%s', (_, size) => {
  story();
  let bench: Bench;
  let page: Page;
  const picture = () => page.getByRole('slider', { name: 'One event in the picture' });
  const words = () => page.getByRole('region', { name: 'What happened, in words' });
  const notes = async () => (await householdAt(bench.url)).notes.filter((n) => n.id !== 'note');

  beforeAll(async () => {
    bench = await openBench({ house: house(60) });
    page = await bench.page(size, size === PHONE);
    await open(bench, page);
  });
  afterAll(() => bench?.close());

  test('a change of food is chosen by keyboard, and what else happened is said beside it', async () => {
    await picture().focus();
    await picture().press('Home');
    await picture().press('ArrowRight');
    const said = () => picture().getAttribute('aria-valuetext');
    await expect
      .poll(said)
      .toMatch(/A new batch of First mix, of other foods\. New in it: .+ No longer in it: /);
    await page.getByText(/^Left over: \d+ % a night before, 33 % from then on\.$/).waitFor();
    await page.getByText(/^2 days after: Chickpea was offered, and the animal did not do well/).waitFor();
    await page.getByText(/^3 days after: From the vet: Teeth are fine\.$/).waitFor();
    await page.getByText(/^Trend of the weight: /).waitFor();
    await page.getByText(/does not say that one caused the other/).waitFor();
    await clean(page);
    await picture().press('ArrowRight');
    await expect.poll(said).toMatch(/Chickpea was offered/);
    await page.getByRole('button', { name: /Event before/ }).press('Enter');
    await expect.poll(said).toMatch(/of other foods/);
  });

  test('an event is chosen by a press in the picture', async () => {
    const box = (await picture().boundingBox())!;
    // The vet's note lies nine days before the right edge of a month of 31.
    const x = 44 + ((box.width - 52) * (31 - 9 - 0.5)) / 31;
    await picture().click({ position: { x, y: box.height / 2 } });
    await expect.poll(() => picture().getAttribute('aria-valuetext')).toMatch(/Teeth are fine/);
  });

  test('the list says the same in words, and shows an event in the picture', async () => {
    await words()
      .getByText(/^Weighed: /)
      .first()
      .waitFor();
    await words().getByText('4 g left of 12 g.').first().waitFor();
    await words()
      .getByRole('button', { name: /^Chickpea was offered/ })
      .click();
    await expect.poll(() => picture().getAttribute('aria-valuetext')).toMatch(/Chickpea was offered/);
    await words()
      .getByRole('button', { name: /^Chickpea was offered/, pressed: true })
      .waitFor();
  });

  test('day, month and year are looked at, and moved back and on', async () => {
    for (const span of ['Day', 'Year', 'Month']) {
      await page.getByRole('radio', { name: span }).check({ force: true });
      await picture().waitFor();
      await clean(page);
    }
    const title = () => page.locator('.window-move p').textContent();
    const before = await title();
    await page.getByRole('button', { name: 'Earlier' }).click();
    await expect.poll(title).not.toBe(before);
    await picture().focus();
    await picture().press('PageDown');
    await expect.poll(title).toBe(before);
    await picture().press('PageUp');
    await page.getByRole('button', { name: 'To today' }).click();
    expect(await page.getByRole('button', { name: 'Later' }).isDisabled()).toBe(true);
  });

  test('a note is written in two presses and its text, changed, deleted, and brought back', async () => {
    await page.getByRole('button', { name: 'Note what you saw' }).click();
    const field = page.getByRole('textbox', { name: 'What you saw' });
    await field.and(page.locator(':focus')).waitFor();
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('The note is still empty.').waitFor();
    await clean(page);
    await field.fill('Sleeps a lot.');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('Noted.', { exact: true }).waitFor();
    await expect.poll(notes).toMatchObject([{ animalId: BRAMBLE, kind: 'seen', text: 'Sleeps a lot.' }]);
    await words().getByRole('button', { name: 'Seen: Sleeps a lot.' }).waitFor();

    await words().getByRole('button', { name: 'Edit the note “Sleeps a lot.”' }).click();
    await words().getByRole('textbox', { name: 'What you saw' }).fill('Sleeps a lot, eats well.');
    await words().getByRole('button', { name: 'Save' }).click();
    await expect.poll(notes).toMatchObject([{ text: 'Sleeps a lot, eats well.' }]);
    await words()
      .getByRole('button', { name: /^Delete the note “Sleeps/ })
      .click();
    await words().getByText('The note is deleted.').waitFor();
    await expect.poll(notes).toEqual([]);
    await words().getByRole('button', { name: 'Undo' }).click();
    await expect.poll(notes).toMatchObject([{ text: 'Sleeps a lot, eats well.' }]);
    await clean(page);
  });
});

test('an animal of which nothing is known yet says so', async () => {
  const bench = await openBench({ house: demo });
  try {
    const page = await bench.page(PHONE, true);
    await page.goto(`${bench.url}/#/animals/${BRAMBLE}/life`);
    await page.getByText(/^Nothing is known of Bramble yet/).waitFor();
    await clean(page);
  } finally {
    await bench.close();
  }
});

test('in German on a phone, with ten years of daily weighings, it is drawn and nothing breaks', async () => {
  const bench = await openBench({ house: house(3650) });
  try {
    const page = await bench.page(PHONE, true);
    await page.addInitScript(GERMAN);
    await open(bench, page);
    await page.getByRole('radio', { name: 'Jahr' }).check({ force: true });
    // A year is drawn by the week: never a mark for each of its days.
    const marks = () => page.locator('.weight-week, .weight-dot').count();
    await expect.poll(marks).toBeLessThanOrEqual(53);
    expect(await marks()).toBeGreaterThan(40);
    await clean(page);
    await page.getByRole('button', { name: 'Notieren, was die Tierarztpraxis sagt' }).click();
    await page.getByRole('textbox', { name: 'Was die Tierarztpraxis sagt' }).waitFor();
    await clean(page);
  } finally {
    await bench.close();
  }
});
