/** Drying on a phone beside the oven: from the plan to the jar, with a clock that the test moves. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings, type Bench, openBench, overflow, PHONE } from './harness.ts';
import { householdAt } from './household-at.ts';
import { story } from './story.ts';

async function clean(page: Page): Promise<void> {
  expect(await axeFindings(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
}

describe('drying on a phone', () => {
  let bench: Bench;
  let page: Page;
  const kept = () => householdAt(bench.url);
  const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true });
  const field = (name: string) => page.getByLabel(name, { exact: true });
  const status = () => page.locator('main > [role=status]');
  const next = () => page.getByRole('region', { name: 'Next check' });
  const verdict = () => page.getByRole('region', { name: 'Verdict' });
  const run = async () => (await kept()).dryingRuns[0]!;
  const water = async () =>
    (await kept()).mixes[0]!.problem.foods.find((f) => f.id === 'carrot-dried')?.composition?.WATER;

  story();
  beforeAll(async () => {
    bench = await openBench();
    page = await bench.page(PHONE);
    await page.clock.install({ time: new Date('2026-03-10T10:00:00') });
    await page.goto(`${bench.url}/#/drying`);
  });
  afterAll(() => bench?.close());

  test('with nothing fresh it leads to a new lot', async () => {
    await page.getByText(/Nothing fresh is in stock/).waitFor();
    await clean(page);
    await page.getByRole('link', { name: 'Add a new pack' }).click();
    await field('Food').selectOption('Carrot, dried');
    await field('Weight as on the pack').fill('1 kg');
    await field('Name').fill('Carrots of Tuesday');
    await field('Kind').selectOption('Fresh');
    await button('Save the pack').click();
    await page.getByRole('heading', { name: 'Carrots of Tuesday' }).waitFor();
    await page.getByRole('link', { name: 'Drying', exact: true }).click();
    await page.getByRole('link', { name: /^Carrots of Tuesday.* bought/ }).click();
  });

  test('fresh food and dryer are asked for once, and kept', async () => {
    await page.getByRole('heading', { name: 'Which fresh food is it?' }).waitFor();
    await clean(page);
    await page
      .getByRole('button', { name: /^Dry .* from .*carrot/i })
      .first()
      .click();
    await page.getByText(/88\.3 % water \(USDA/).waitFor();
    await button('Keep the dryer').click();
    await page.getByText('Trays is empty: enter a number.').waitFor();
    await field('Trays').fill('1');
    await field('Width').fill('40');
    await field('Length').fill('30');
    await page.getByText('12 dm²', { exact: true }).waitFor();
    await button('Keep the dryer').click();
    await field('Trimmed and ready').waitFor();
    const [kitchen] = (await kept()).kitchen;
    expect(kitchen!.dryer).toEqual({ device: 'oven', trays: 1, trayArea: 12, celsius: 90 });
    expect(kitchen!.driedAtHome).toEqual([{ food: 'carrot-dried', fresh: 'sr28:11124', moisture: 10 }]);
  });

  test('what is typed before the fresh food is loaded stays as it was typed', async () => {
    let loads = () => {};
    const held = new Promise<void>((done) => {
      loads = done;
    });
    await page.route('**/reference.bin', async (route) => {
      await held;
      await route.continue();
    });
    await page.reload();
    await field('Trimmed and ready').fill('880');
    expect(await page.getByText(/Estimate: 11 % is trimmed off/).count()).toBe(0);
    loads();
    await page.getByText(/Estimate: 11 % is trimmed off/).waitFor();
    expect(await field('Trimmed and ready').inputValue()).toBe('880');
    await page.unroute('**/reference.bin');
    await field('Trimmed and ready').fill('');
  });

  test('the plan shows practice and publication, and refuses weights that cannot be', async () => {
    await page.getByText(/Estimate: 11 % is trimmed off/).waitFor();
    await page.getByText('90 °C, 6 h').waitFor();
    await page.getByText('57 to 60 °C, 6 to 16 h').waitFor();
    await page.getByText(/Dry in the oven only where no young children/).waitFor();
    await page.getByText(/never leave it running alone or overnight/).waitFor();
    await clean(page);
    // What is said of chopped vegetables is offered for them alone.
    for (const [kind, way, celsius] of [
      ['Herb or flower', '35 to 46 °C, 2 to 24 h', '46'],
      ['Leafy vegetable', '35 to 50 °C, 4 to 24 h', '50'],
      ['Fruit', '57 to 60 °C, 6 to 36 h', '60'],
    ] as const) {
      await field('Kind').selectOption(kind);
      await page.getByText(way).waitFor();
      expect(await page.getByText('90 °C, 6 h').count()).toBe(0);
      expect(await field('Temperature').inputValue()).toBe(celsius);
    }
    await field('Kind').selectOption('Vegetable, in pieces');
    await page.getByText('90 °C, 6 h').waitFor();
    await field('Taken from the pack').fill('600');
    await field('Trimmed and ready').fill('610');
    await button('Start this load').or(button('Start drying')).click();
    await page.getByText('Trimmed and ready: 610 g is more than the 600 g taken from the pack.').waitFor();
    expect((await kept()).dryingRuns).toEqual([]);
    await field('Trimmed and ready').fill('530');
    await page.getByText('40 g on 1 dm²: 2 loads of 265 g').waitFor();
    await page.getByText('75 g on 1 dm²: one load of 530 g').click();
    await page.getByText('57 to 60 °C, 6 to 16 h').click();
    expect(await field('Temperature').inputValue()).toBe('60');
    await page.getByText('90 °C, 6 h').click();
    await button('Start drying').click();
    await next()
      .getByText(/Look and turn at 12:0\d, in (2 h|1 h 59 min)$/)
      .waitFor();
    await clean(page);
    expect(await run()).toMatchObject({
      gramsTaken: 600,
      gramsBefore: 530,
      celsius: 90,
      hours: 6,
      kind: 'vegetable',
    });
  });

  test('a look falls due on the page, in its title and to a screen reader, also after a reload', async () => {
    expect(await status().textContent()).toBe('');
    expect(await page.title()).toBe('Pouchful');
    await page.clock.fastForward('01:30:00');
    await next()
      .getByText(/Look and turn at 12:0\d, in (30|29) min$/)
      .waitFor();
    await page.clock.fastForward('00:30:10');
    await next()
      .getByText(/Look and turn now: it was due at 12:0\d/)
      .waitFor();
    expect(await status().textContent()).toBe('Look and turn now: Carrots of Tuesday');
    expect(await page.title()).toBe('Look and turn now: Carrots of Tuesday');
    await clean(page);
    await page.reload();
    await next()
      .getByText(/Look and turn now: it was due at 12:0\d/)
      .waitFor();
    await field('Weight at this check, if you weigh it').fill('200');
    await field('Note, if you like').fill('edges curl');
    await page.getByText(/About 6\d(\.\d)? % .* water by now/).waitFor();
    await button('I looked and turned it').click();
    await page.getByText(/200 g, about 6\d.* water · edges curl/).waitFor();
    await expect.poll(() => page.title()).toBe('Pouchful');
    await next()
      .getByText(/Look and turn at 14:0\d, in/)
      .waitFor();
    expect((await run()).checks).toMatchObject([{ grams: 200, note: 'edges curl' }]);
  });

  test('the looks go out as a calendar file', async () => {
    const coming = page.waitForEvent('download');
    await button('Checks as a calendar file').click();
    const download = await coming;
    expect(download.suggestedFilename()).toBe('drying-checks.ics');
    const text = await new Response((await download.createReadStream()) as unknown as ReadableStream).text();
    expect(text.match(/BEGIN:VEVENT/g)).toHaveLength(3);
    expect(text).toContain('Turn and check: Carrots of Tuesday');
    expect(text).toContain('BEGIN:VALARM');
  });

  test('impossible weights are refused beside the field; what is damp makes no lot', async () => {
    await page.clock.fastForward('04:00:00');
    const after = field('Weight after');
    await after.fill('600');
    await button('Weigh it').click();
    await page.getByText(/Weight after \(600 g\) is not below the weight before/).waitFor();
    await clean(page);
    await after.fill('20');
    await button('Weigh it').click();
    await page.getByText(/Weight after \(20 g\) is less than the dry matter of the fresh food/).waitFor();
    expect((await run()).gramsAfter).toBeUndefined();
    await after.fill('90');
    await button('Weigh it').click();
    await page.getByRole('heading', { name: 'Too damp to keep' }).waitFor();
    await verdict()
      .getByText(/about 31 % water, above the 10 % at which it keeps/)
      .waitFor();
    await verdict()
      .getByText(/Damp food moulds in the jar/)
      .waitFor();
    expect(await button('Put it into stock').count()).toBe(0);
    await clean(page);
    await page.reload();
    await page.getByRole('heading', { name: 'Too damp to keep' }).waitFor();
    await expect.poll(async () => (await kept()).lots).toHaveLength(1);
    await button('Dry on').click();
    await page.getByText(/90 g, about 31.* weighed, and dried on/).waitFor();
    await next()
      .getByText(/Look and turn at 18:0\d/)
      .waitFor();
  });

  test('where it is unsure a dried-out sample decides, and the lot comes into the cupboard', async () => {
    await page.clock.fastForward('02:00:00');
    await field('Weight after').fill('66');
    await button('Weigh it').click();
    await page.getByRole('heading', { name: 'Perhaps not dry enough' }).waitFor();
    await page.getByText('Keep it all the same').click();
    await button('Keep it under this note').click();
    await page.getByText('Write a note that says why; it stays with the run.').waitFor();
    await clean(page);
    await page.getByText('Dry out a small sample to be sure').click();
    await field('Sample before').fill('20');
    await field('Sample dried out').fill('21');
    await field('The scale shows steps of').fill('0.1');
    await button('Count with the sample').click();
    await page.getByText(/The dry sample \(21 g\) is heavier/).waitFor();
    await field('Sample dried out').fill('18.8');
    await page.getByText('It held 6 % water.').waitFor();
    await button('Count with the sample').click();
    await page.getByRole('heading', { name: 'Dry enough to keep' }).waitFor();
    await clean(page);
    await button('Put it into stock').click();
    await page
      .getByRole('region', { name: 'Result' })
      .getByText(/In stock as/)
      .waitFor();
    // What the page shows may still be on its way.
    await expect.poll(async () => (await kept()).dryingRuns[0]!.endedAt).toBeDefined();
    const house = await kept();
    expect(house.dryingRuns[0]).toMatchObject({ gramsAfter: 66, sample: { before: 20, dry: 18.8, of: 66 } });
    expect(house.lots[1]).toMatchObject({
      food: 'carrot-dried',
      form: 'dried',
      grams: 66,
      frozen: false,
      driedIn: house.dryingRuns[0]!.id,
    });
    expect(house.lots[1]!.moisture).toBeCloseTo(6, 1);
  });

  test('what it holds now goes into the mix, and can be undone', async () => {
    const mixed = page.getByRole('region', { name: 'In the mix' });
    await mixed.getByRole('row', { name: /^Crude protein/ }).waitFor();
    await clean(page);
    await button('Use it in the mix').click();
    await page.getByText('The mix counts with 6 % water.').waitFor();
    await expect.poll(water).toBeCloseTo(6, 1);
    await button('Undo').click();
    await button('Use it in the mix').waitFor();
    await expect.poll(water).toBeUndefined();
    await button('Use it in the mix').click();
    await expect.poll(water).toBeCloseTo(6, 1);
    await page.reload();
    await page.getByText('The mix counts with 6 % water.').waitFor();
    await page.getByRole('link', { name: 'All of drying' }).click();
    await page.getByText(/530 g became 66 g, 6 % water/).waitFor();
    await page
      .getByText('400 g left of 1 kg')
      .or(page.getByText(/400 g left of/))
      .first()
      .waitFor();
    await clean(page);
    expect(bench.complaints).toEqual([]);
  });

  test('loads follow one another, and the damp one may go into the freezer', async () => {
    await page.getByRole('link', { name: /^Carrots of Tuesday.* bought/ }).click();
    await field('Trimmed and ready').fill('350');
    await page.getByText('40 g on 1 dm²').click();
    await page
      .getByText(/The first of 1|one load of 350 g/)
      .first()
      .waitFor();
    await page.getByText('As I load them').click();
    await field('Weight on 1 dm²').fill('15');
    expect(await field('On the trays now').inputValue()).toBe('175');
    await button('Start this load').click();
    await page.getByRole('heading', { name: 'Carrots of Tuesday, load 1 of 2' }).waitFor();
    await field('Weight after').fill('40');
    // Until the weight is kept, no press is taken that would be lost.
    let answers = () => {};
    const held = new Promise<void>((done) => {
      answers = done;
    });
    await page.route('**/api/dryingRuns/*', async (route) => {
      await held;
      await route.continue();
    });
    await button('Weigh it').click();
    await button('Put it into the freezer').waitFor();
    expect(await button('Put it into the freezer').isDisabled()).toBe(true);
    answers();
    await button('Put it into the freezer').click();
    await page.getByText(/half dried: it is not weighed out till it was dried on/).waitFor();
    const frozen = (await kept()).lots.find((l) => l.frozen)!;
    expect(frozen).toMatchObject({ form: 'fresh', grams: 40 });
    await page.getByRole('link', { name: 'Start load 2 of 2' }).click();
    await page.getByText(/1 load is done\. The rest of what was planned is 200 g/).waitFor();
    expect(await field('Trimmed and ready').inputValue()).toBe('175');
    await clean(page);
    await button('Start drying').click();
    await page.getByRole('heading', { name: 'Carrots of Tuesday, load 2 of 2' }).waitFor();
    await field('Weight after').fill('22');
    await button('Weigh it').click();
    await page.getByText('Keep it all the same').click();
    await field('Why you keep it, and how you watch it').fill('every piece breaks');
    await button('Keep it under this note').click();
    await page.getByText(/though it may be too damp: “every piece breaks”/).waitFor();
    await expect.poll(async () => (await kept()).dryingRuns.at(-1)?.endedAt).toBeDefined();
    const last = (await kept()).dryingRuns.at(-1)!;
    expect(last).toMatchObject({ load: { n: 2, of: 2 }, accepted: { note: 'every piece breaks' } });
    await expect
      .poll(async () => (await kept()).lots.at(-1))
      .toMatchObject({ form: 'dried', driedIn: last.id, grams: 22 });
    expect(bench.complaints).toEqual([]);
  });
});
