/** New foods in a real browser: a trial from its plan to its verdict, and what that keeps out of which mixes. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt, putAt } from './household-at.ts';
import { story } from './story.ts';

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

  beforeAll(async () => {
    bench = await openBench();
    const house = await householdAt(bench.url);
    const [bramble] = house.animals;
    const [first] = house.mixes;
    await putAt(bench.url, 'animals', { ...bramble!, id: 'hazel', name: 'Hazel' });
    await putAt(bench.url, 'mixes', { ...first!, id: 'hers', name: 'Hazel mix', animalIds: ['hazel'] });
    page = await bench.page(size);
    await at('2026-03-01');
    await page.goto(`${bench.url}/#/mix`);
  });
  afterAll(() => bench?.close());

  const at = (day: string) => page.clock.setFixedTime(new Date(`${day}T10:00:00`));
  const verdictIs = (state: string) => page.waitForSelector(`[data-testid="verdict"][data-state="${state}"]`);
  const makeFit = async () => {
    await page
      .getByRole('region', { name: 'Verdict' })
      .getByRole('button', { name: 'Make it fit', exact: true })
      .click();
    await verdictIs('in');
  };
  const mixNow = async (id: string) => (await householdAt(bench.url)).mixes.find((m) => m.id === id)!;
  const row = (food: string) => page.locator(`.share-row[data-food="${food}"]`);
  const seen = (what: string) => page.getByRole('button', { name: new RegExp(`^${what}`) });
  const openMix = async (name: string) => {
    await page.goto(`${bench.url}/#/mix`);
    const choice = page.getByLabel('Other mixes');
    await choice.selectOption({ label: name });
    await page.getByRole('heading', { level: 1, name: new RegExp(name) }).waitFor();
  };
  const openTrials = async (animal: string) => {
    await page.goto(`${bench.url}/#/animals/${animal}/trials`);
    await page.getByRole('heading', { name: 'New foods', level: 3 }).waitFor();
  };
  const bramble = async () => (await householdAt(bench.url)).animals[0]!.id;

  test('the mix says what its animal never tried, and leads to a trial', async () => {
    await page.getByText('Bramble has never tried 20 foods of this mix.').click();
    await clean(page);
    await page.getByRole('link', { name: 'Try Millet' }).click();
    await page.getByRole('heading', { name: 'Try Millet' }).waitFor();
    await page.getByText(/that is a tenth of a day’s food or so \(common practice, no source\)/).waitFor();
    await page.getByText('Days: Sun 1 Mar, Tue 3 Mar, Thu 5 Mar and Sat 7 Mar').waitFor();
    await clean(page);
    await page.getByRole('button', { name: 'Begin', exact: true }).click();
    await page.getByRole('heading', { name: 'Being tried: Millet' }).waitFor();
    await page.getByText('An offer is due today.').waitFor();
  });

  test('no second food while one is being tried', async () => {
    await page.goto(`${bench.url}/#/animals/${await bramble()}/trials/sr28:11683`);
    await page.getByText(/Millet is being tried now\. Another new food can be tried once/).waitFor();
    expect(await page.getByRole('button', { name: 'Begin', exact: true }).count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Try a new food' }).count()).toBe(0);
  });

  test('three times left, it is refused, and says how sure that is', async () => {
    await openTrials(await bramble());
    await seen('Left').click();
    await page.getByText('Noted for Sun 1 Mar: Left.').waitFor();
    await page.getByText('Not settled yet.').waitFor();
    await page.getByText(/chance that it eats it at least every second time is 25 %/).waitFor();
    for (const day of ['2026-03-03', '2026-03-05']) {
      await at(day);
      await page.reload();
      await page.getByText('An offer is due today.').waitFor();
      await seen('Left').click();
      await page.locator('.seen-choice[aria-pressed="true"]').waitFor();
    }
    await page.getByText('Bramble does not want Millet.').waitFor();
    await page.getByText(/every second time is 6 %/).waitFor();
    await page
      .getByText('It is out of First mix and of every mix made for it, also under another name.')
      .waitFor();
    await page
      .getByRole('img', { name: /^How often it eats it: most likely 20 %, 95 % sure 1 to 60 %/ })
      .waitFor();
    await clean(page);
    await page.getByRole('button', { name: 'End this trial' }).click();
    await page.getByRole('heading', { name: 'Refused' }).waitFor();
  });

  test('what it refused is out of its mix, and is not brought back by advice or under another name', async () => {
    await openMix('First mix');
    await page.getByText('Millet is out: Bramble left it in a trial.').waitFor();
    await makeFit();
    await page.getByText('Saved', { exact: true }).waitFor();
    await row('millet').getByText('refused by Bramble').waitFor();
    await expect.poll(async () => (await mixNow('demo-mix')).shares.millet ?? 0).toBe(0);
    // Added anew it cannot be, neither by its number nor as a food of the keeper's own.
    await page.getByRole('button', { name: 'Add a food' }).click();
    await page.getByLabel('Search foods').fill('millet');
    await page
      .getByRole('button', { name: /^Millet: / })
      .first()
      .waitFor();
    expect(await page.getByRole('button', { name: 'Add Millet', exact: true }).count()).toBe(0);
    await page.getByRole('button', { name: 'Done' }).click();
    const mix = await mixNow('demo-mix');
    const anew = { id: 'anew', name: 'Millet', group: 'seed', composition: { PROCNT: 11, FAT: 4, WATER: 9 } };
    await putAt(bench.url, 'mixes', {
      ...mix,
      problem: { ...mix.problem, foods: [...mix.problem.foods, anew] },
    });
    await page.reload();
    await row('anew').getByText('refused by Bramble').waitFor();
    await makeFit();
    await page.getByText('Saved', { exact: true }).waitFor();
    expect((await mixNow('demo-mix')).shares.anew ?? 0).toBe(0);
    await clean(page);
    // Nor is it among what may take another food's place.
    await page.getByRole('tab', { name: 'If a food is left' }).click();
    const maize = page.locator('.leaving-food[data-food="maize"]');
    await maize.getByRole('button').first().click();
    await maize.locator('.swap-list li').first().waitFor();
    expect(await maize.locator('.swap-list').textContent()).not.toMatch(/millet/i);
  });

  test('in the mix of another animal it stays', async () => {
    await openMix('Hazel mix');
    await page.getByLabel('Share of Millet', { exact: true }).waitFor();
    expect(
      await row('millet')
        .getByText(/refused/)
        .count(),
    ).toBe(0);
  });

  test('what upset one animal is out of every mix at once', async () => {
    await openTrials('hazel');
    await page.getByRole('button', { name: 'Try a new food' }).click();
    await page.getByLabel('Search foods').fill('carrot');
    await page.getByText('Foods that must not be fed are not in this list.').waitFor();
    await page.getByRole('button', { name: 'Choose Carrot, dried', exact: true }).first().click();
    await page.getByRole('button', { name: 'Begin', exact: true }).click();
    await seen('Did not do well').click();
    await page.getByText(/^Stop feeding it\./).waitFor();
    await page.getByText(/See a vet the same day if/).waitFor();
    await clean(page);
    for (const name of ['Hazel mix', 'First mix']) {
      await openMix(name);
      await row('carrot-dried').getByText('not good for Hazel').waitFor();
      await makeFit();
    }
    await page.getByText('Saved', { exact: true }).waitFor();
    for (const id of ['hers', 'demo-mix'])
      await expect.poll(async () => (await mixNow(id)).shares['carrot-dried'] ?? 0).toBe(0);
    await clean(page);
  });

  test('and out of a mix that is made later', async () => {
    const house = await householdAt(bench.url);
    const { animalIds: _, ...mix } = house.mixes.find((m) => m.id === 'hers')!;
    await putAt(bench.url, 'mixes', {
      ...mix,
      id: 'later',
      name: 'Later mix',
      animalIds: [],
      shares: { ...mix.shares, 'carrot-dried': 5 },
    });
    await page.reload();
    await openMix('Later mix');
    await row('carrot-dried').getByText('not good for Hazel').waitFor();
    await makeFit();
    await page.getByText('Saved', { exact: true }).waitFor();
    await expect.poll(async () => (await mixNow('later')).shares['carrot-dried'] ?? 0).toBe(0);
  });

  test('the others get it with a reason alone, the animal itself never', async () => {
    await openMix('First mix');
    await page.getByRole('button', { name: 'Give it to the others, say why … (Carrot, dried)' }).click();
    await page.getByLabel(/^Why the others get it/).fill('They have long eaten it.');
    await page.getByRole('button', { name: 'Give it to the others' }).click();
    await page.getByText(/is in by your choice of 5 March 2026 \(“They have long eaten it\.”\)/).waitFor();
    await page.getByLabel('Share of Carrot, dried', { exact: true }).waitFor();
    await openMix('Hazel mix');
    await row('carrot-dried').getByText('not good for Hazel').waitFor();
    expect(await page.getByRole('button', { name: /^Give it to the others/ }).count()).toBe(0);
  });

  test('a trial that is deleted brings the food back, and can be had back', async () => {
    await openTrials('hazel');
    await page.getByRole('button', { name: /^Carrot, dried 1 offer/ }).click();
    await page.getByRole('button', { name: /^Delete trial: Carrot, dried/ }).click();
    await page.getByText('The trial of Carrot, dried was deleted.').first().waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText(/^Stop feeding it\./).waitFor();
    await page.getByRole('button', { name: /^Carrot, dried 1 offer/ }).click();
    await page.getByRole('button', { name: /^Delete trial: Carrot, dried/ }).click();
    await page.getByText(/^Stop feeding it\./).waitFor({ state: 'detached' });
    await openMix('Hazel mix');
    await page.getByLabel('Share of Carrot, dried', { exact: true }).waitFor();
    await openTrials('hazel');
    await page.getByText('No food has been tried yet.').waitFor();
  });

  test('what it knows is ticked, and stands in no list of new foods', async () => {
    await page.getByLabel('It knows Millet').check();
    await page.getByRole('heading', { name: 'You say it knows' }).waitFor();
    await openMix('Hazel mix');
    await page.getByText('Hazel has never tried 19 foods of this mix.').waitFor();
  });

  test('in German nothing is wider than a phone', async () => {
    await page.evaluate(`localStorage.setItem('pouchful.manner', '{"language":"de"}')`);
    await page.setViewportSize(PHONE);
    await page.goto(`${bench.url}/#/animals/${await bramble()}/trials`);
    await page.reload();
    await page.getByRole('button', { name: /^Millet 3 Male/ }).click();
    await page.getByText('Bramble will das nicht: Millet.').waitFor();
    await clean(page);
    expect(bench.complaints).toEqual([]);
  });
});
