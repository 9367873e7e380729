/** The keeper's real job on the mix screen, done in a real browser. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE, pressIfThere } from './harness.ts';
import { householdAt } from './household-at.ts';
import { story } from './story.ts';

let bench: Bench;
let page: Page;

story();
beforeAll(async () => {
  bench = await openBench();
  page = await bench.page();
  await page.addInitScript(RECORD_QUESTIONS);
  await page.goto(`${bench.url}/#/mix`);
});
afterAll(() => bench?.close());

/** Keeps what the page asks of the formulation worker, as "drag {problem}", in `window.asked`. */
const RECORD_QUESTIONS = `
  window.asked = [];
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (message, ...rest) {
    if (message.type === 'APPLY')
      window.asked.push(message.path.join('.') + ' ' + JSON.stringify(message.argumentList[0]?.value));
    return post.call(this, message, ...rest);
  };`;

const asked = async () => (await page.evaluate('window.asked')) as string[];

const verdictIs = (state: string, on = page) =>
  on.waitForSelector(`[data-testid="verdict"][data-state="${state}"]`);
const saved = (on = page) => on.getByText('Saved', { exact: true }).waitFor();
const share = (name: string) => page.getByLabel(`Share of ${name}`, { exact: true });
const slider = (name: string) =>
  page.getByRole('slider', { name: new RegExp(`Share of ${name} in percent`) });

/** Every share on the screen, by food name. */
async function shares(): Promise<Record<string, number>> {
  const boxes = await page.locator('.share-row .number input').all();
  const named = boxes.map(async (box) => {
    const row = box.locator('xpath=ancestor::li[1]');
    return [(await row.getAttribute('data-food')) ?? '', Number(await box.inputValue())] as const;
  });
  return Object.fromEntries(await Promise.all(named));
}

describe('a mix is balanced and moved', () => {
  test('the first mix opens out of range, on fat', async () => {
    await verdictIs('out');
    expect(await page.getByTestId('verdict').textContent()).toMatch(/^Out of range\..*fat/i);
    expect(await page.locator('.window.out').count()).toBe(1);
  });

  test('one press brings it in range, and grams add up to the batch', async () => {
    await page
      .getByRole('region', { name: 'Verdict' })
      .getByRole('button', { name: 'Make it fit', exact: true })
      .click();
    await verdictIs('in');
    await expect.poll(() => page.locator('.grams.about').count()).toBe(0);
    const grams = await page.locator('.grams').allTextContents();
    expect(grams.reduce((sum, g) => sum + Number.parseFloat(g), 0)).toBe(300);
  });

  test('a share moved by keyboard takes the others with it and stays in range', async () => {
    const before = await shares();
    await slider('Millet').focus();
    for (let i = 0; i < 12; i++) await page.keyboard.press('ArrowRight');
    await expect
      .poll(async () => Number(await share('Millet').inputValue()))
      .toBeCloseTo(before.millet! + 1.2, 1);
    const others = ({ millet: _, ...rest }: Record<string, number>) => rest;
    await expect.poll(async () => others(await shares())).not.toEqual(others(before));
    await verdictIs('in');
    const after = await shares();
    const total = Object.values(after).reduce((a, b) => a + b, 0);
    expect(Math.abs(total - 100)).toBeLessThan(1.1);
  });

  test('how a moved mix stands comes with the move and is not asked for again', async () => {
    await expect.poll(() => page.locator('.grams.about').count()).toBe(0);
    await page.evaluate('window.asked = []');
    const before = Number(await share('Millet').inputValue());
    await slider('Millet').press('ArrowRight');
    // Grams are the last to be asked for, once the mix stands still.
    await expect.poll(async () => (await asked()).some((q) => q.startsWith('grams '))).toBe(true);
    expect(Number(await share('Millet').inputValue())).toBeCloseTo(before + 0.1, 1);
    const questions = await asked();
    const move = questions.find((q) => q.startsWith('drag '))!;
    expect(questions).toContain(move.replace('drag', 'grams'));
    expect(questions).not.toContain(move.replace('drag', 'evaluate'));
  });

  test('a typed share beyond the span is brought to the span, and the screen says so', async () => {
    await share('Sunflower seed, shelled').fill('60,5');
    await page.keyboard.press('Enter');
    // So much would empty other foods, and cannot be had either: the row says both before it does anything.
    const ask = page.locator('.share-row[data-food="sunflower-seed-shelled"] [data-ask="empties"]');
    await ask.getByText(/^60\.5 % here would leave nothing of /).waitFor();
    await ask.getByText(/^It would not come to 60\.5 %: .+\.$/).waitFor();
    await ask.getByRole('button', { name: 'Take it' }).click();
    await page.getByText(/^Wanted 60\.5 %, got [\d.]+ %: .+/).waitFor();
    await expect
      .poll(async () => Number(await share('Sunflower seed, shelled').inputValue()))
      .toBeLessThanOrEqual(15);
    await verdictIs('in');
  });

  test('a held food stays while another moves', async () => {
    await page.getByRole('button', { name: 'Hold Millet where it is' }).click();
    const held = await share('Millet').inputValue();
    await slider('Rolled oats').focus();
    for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowLeft');
    await verdictIs('in');
    expect(await share('Millet').inputValue()).toBe(held);
    expect(await share('Millet').isDisabled()).toBe(true);
  });

  test('undo takes the last step back', async () => {
    const kept = async (food: string) => (await householdAt(bench.url)).mixes[0]?.shares[food];
    // The step before is done, and then this one: neither is still on its way.
    const put = Number(await slider('Rolled oats').inputValue());
    await expect.poll(() => kept('rolled-oats')).toBeCloseTo(put, 1);
    const before = await share('Maize').inputValue();
    await share('Maize').fill('9');
    await page.keyboard.press('Enter');
    await expect.poll(() => share('Maize').inputValue()).toBe('9');
    await expect.poll(() => kept('maize')).toBeCloseTo(9);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => share('Maize').inputValue()).toBe(before);
  });

  test('a press of undo always changes something', async () => {
    const undo = page.getByRole('button', { name: 'Undo' });
    await page
      .getByRole('region', { name: 'Verdict' })
      .getByRole('button', { name: 'Make it fit', exact: true })
      .click();
    await expect.poll(() => page.locator('.grams.about').count()).toBe(0);
    // Nothing is left to change for these two.
    for (let i = 0; i < 2; i++) {
      await page.evaluate('window.asked = []');
      await page
        .getByRole('region', { name: 'Verdict' })
        .getByRole('button', { name: 'Make it fit', exact: true })
        .click();
      await expect.poll(async () => (await asked()).some((q) => q.startsWith('solve '))).toBe(true);
      await verdictIs('in');
    }
    const before = await shares();
    await undo.click();
    await expect.poll(shares).not.toEqual(before);
    await page.getByRole('button', { name: 'Redo' }).click();
    await expect.poll(shares).toEqual(before);
    await undo.click();
  });

  test('a reload keeps shares and holds', async () => {
    await saved();
    const before = await shares();
    await page.reload();
    await verdictIs('in');
    expect(await shares()).toEqual(before);
    expect(await share('Millet').isDisabled()).toBe(true);
  });
});

describe('settings', () => {
  test('confidence and target are followed by the mix', async () => {
    // From a mix that does not hang on how many of the moves before were overtaken.
    await page
      .getByRole('region', { name: 'Verdict' })
      .getByRole('button', { name: 'Make it fit', exact: true })
      .click();
    await page.getByText('It fits: every limit is kept.', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByLabel('How sure to be').selectOption('0.8');
    await page
      .locator('.window-note', { hasText: /([89]\d|100) % chance/ })
      .nth(1)
      .waitFor();
    await page.getByLabel('Batch').fill('500');
    await page.keyboard.press('Enter');
    await page.getByText('a batch of 500 g').waitFor();
    await saved();
  });

  test('a failed save stays in sight and is tried again', async () => {
    await page.route('**/api/mixes/**', (route) =>
      route.fulfill({ status: 500, json: { field: '', message: 'disk full' } }),
    );
    const heard = bench.complaints.length;
    await page.getByLabel('Batch').fill('400');
    await page.keyboard.press('Enter');
    await page.getByRole('alert').getByText('disk full').waitFor();
    await page.unroute('**/api/mixes/**');
    await pressIfThere(page.getByRole('button', { name: 'Try now' }));
    await saved();
    bench.complaints.splice(heard);
    await page.reload();
    await page.getByText('a batch of 400 g').waitFor();
  });
});

describe('rules that collide', () => {
  test('the conflict is named and a remedy mends it with one press', async () => {
    await page.getByRole('button', { name: 'Range of Seeds and grains' }).click();
    await page.getByLabel('Group at most').fill('95');
    await page.keyboard.press('Enter');
    await page.getByLabel('Group at least').fill('85');
    await page.keyboard.press('Enter');
    await verdictIs('none');
    expect(await page.getByTestId('verdict').textContent()).toContain('No mix can keep these rules');
    await page.locator('.conflict li').first().waitFor();
    expect(await page.locator('.conflict li').count()).toBeGreaterThan(1);
    const findings = await axeFindings(page);
    expect(findings).toEqual([]);
    await page.locator('.remedy-list button').first().click();
    await verdictIs('in');
  });
});

describe('foods come and go', () => {
  test('a food is found, added and removed', async () => {
    await page.getByRole('button', { name: 'Add a food' }).click();
    await page.getByRole('searchbox', { name: 'Search foods' }).fill('quinoa');
    await page
      .getByRole('button', { name: /^Add .*quinoa/i })
      .first()
      .click();
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole('button', { name: 'Done' }).click();
    await verdictIs('in');
    const more = page.getByRole('button', { name: /More about .*quinoa/i });
    await more.click();
    await page.getByRole('button', { name: 'Remove from mix' }).click();
    await expect.poll(() => more.count()).toBe(0);
    await verdictIs('in');
  });

  test('the dialog stays still while one types, and keeps the keyboard until Escape', async () => {
    await page.getByRole('button', { name: 'Add a food' }).click();
    const field = page.getByRole('searchbox', { name: 'Search foods' });
    const place = async () => {
      const [dialog, search] = [await page.getByRole('dialog').boundingBox(), await field.boundingBox()];
      return { dialog, search };
    };
    const focused = () => field.evaluate((f: { matches(s: string): boolean }) => f.matches(':focus'));
    await page.getByText(/^\d+ foods$/).waitFor();
    const before = await place();
    for (const typed of ['q', 'quinoa', 'zzqqxx', 'camomile']) {
      await field.fill(typed);
      await page.getByText(/^\d+ foods$/).waitFor();
      expect(await place(), typed).toEqual(before);
    }
    // Enter takes the first, and the keyboard stays where it is.
    await field.fill('amaranth grain');
    await page.getByRole('button', { name: 'Add Amaranth grain', exact: true }).waitFor();
    await page.getByText(/^\d+ foods?$/).waitFor();
    await field.press('Enter');
    await page.getByText('Amaranth grain was added.').waitFor();
    expect(await focused()).toBe(true);
    await field.fill('rye');
    await page.getByRole('button', { name: 'Add Rye', exact: true }).click();
    await page.getByText('Rye was added.').waitFor();
    expect(await focused()).toBe(true);
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    for (const name of ['Amaranth grain', 'Rye']) {
      await page.getByRole('button', { name: `More about ${name}`, exact: true }).click();
      await page.getByRole('button', { name: 'Remove from mix' }).click();
    }
    await verdictIs('in');
  });

  test('one food is one food', async () => {
    await page.getByRole('button', { name: 'Add a food' }).click();
    await page.getByRole('searchbox', { name: 'Search foods' }).fill('sr28:20038');
    await page.getByText('1 food', { exact: true }).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
  });

  test('the way to a new food is short by keyboard', async () => {
    await page.getByRole('button', { name: 'Skip to content' }).press('Enter');
    const add = page.getByRole('button', { name: 'Add a food' });
    let tabs = 0;
    for (; tabs < 20; tabs++) {
      if (await add.evaluate((b: { matches(s: string): boolean }) => b.matches(':focus'))) break;
      await page.keyboard.press('Tab');
    }
    expect(tabs).toBeLessThan(15);
  });

  test('a refused food leaves the mix and can be offered again', async () => {
    await page.getByRole('button', { name: 'More about Carob flour' }).click();
    await page.getByRole('button', { name: 'Mark as refused' }).click();
    await page.locator('.share-row.refused').waitFor();
    await verdictIs('in');
    await page.getByRole('button', { name: 'Offer again' }).click();
    await share('Carob flour').waitFor();
  });
});

test('no mix follows a target from memory before it is confirmed', async () => {
  await page.reload();
  await page.getByRole('button', { name: 'Settings' }).click();
  const target = page.getByLabel('Needs to follow');
  const before = await target.inputValue();
  await target.selectOption('hamster-nrc');
  await page
    .getByRole('status')
    .getByText(/are from memory\. A mix can follow it once/)
    .waitFor();
  expect(await target.inputValue()).toBe(before);
  await page.getByRole('link', { name: 'Look at them' }).click();
  const use = page.getByRole('button', { name: 'Use in the mix' });
  expect(await use.isDisabled()).toBe(true);
  await page.getByRole('button', { name: 'Confirm the figures' }).click();
  await page.getByText(/Say what you checked them against/).waitFor();
  await page.getByLabel('I have checked these figures against').fill('the printed edition');
  await page.keyboard.press('Enter');
  await page
    .getByText(/you checked it against the printed edition on/)
    .first()
    .waitFor();
  await page.reload();
  await use.click();
  await page.getByRole('link', { name: 'Mixes', exact: true }).click();
});

test('needs that rest on missing figures can be left out together, after a step that says whose they are', async () => {
  await verdictIs('none');
  const all = page.getByRole('button', { name: /^Do this: Leave out all/ });
  const step = page.getByRole('alertdialog', { name: /^Limits of Bramble’s needs “Hamster, NRC needs”/ });
  await all.press('Enter');
  expect(await step.getByRole('listitem').count()).toBeGreaterThan(5);
  await step
    .getByText(/Source of the limit: NRC 1978/)
    .first()
    .waitFor();
  await page.keyboard.press('Escape');
  await step.waitFor({ state: 'detached' });
  await all.press('Enter');
  await step.getByRole('button', { name: 'Make them my own limits' }).press('Enter');
  await expect.poll(() => all.count()).toBe(0);
  // The list goes, and with it the button that was pressed.
  await expect.poll(() => page.locator(':focus').textContent()).toBe('Make it fit');
  const gone = page.getByRole('list', { name: 'Limits that you changed' }).getByRole('listitem');
  await gone
    .first()
    .getByText(/left out by you on \d+ [A-Z]/)
    .waitFor();
  const many = await gone.count();
  expect(many).toBeGreaterThan(5);
  await gone.first().getByRole('button').press('Enter');
  await expect.poll(() => gone.count()).toBe(many - 1);
  // Advice that is worked out anew is paler meanwhile.
  await expect.poll(() => page.locator('[aria-busy="true"]').count()).toBe(0);
  expect(await axeFindings(page)).toEqual([]);
});

describe('mixes come and go', () => {
  const name = () => page.getByRole('textbox', { name: 'Mix', exact: true });

  test('a new mix is empty, says so, and has no verdict in red', async () => {
    const first = await name().inputValue();
    await page.getByRole('button', { name: 'New mix' }).click();
    await verdictIs('new');
    await page.getByText('This mix is empty. Add your first food.').waitFor();
    await page.getByRole('button', { name: 'Add your first food' }).waitFor();
    expect(await page.locator('.verdict.out, .verdict.none, .window.out').count()).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
    await name().fill('Second try');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Add your first food' }).click();
    await page.getByRole('searchbox', { name: 'Search foods' }).fill('lentils');
    await page.getByRole('button', { name: 'Add Lentils, raw dry', exact: true }).click();
    await page.keyboard.press('Escape');
    await page.getByText('One food is in this mix.').waitFor();
    await verdictIs('new');
    await page.getByRole('button', { name: 'Delete', exact: true }).click();
    await page.getByText('The mix “Second try” was deleted.').waitFor();
    await expect.poll(() => name().inputValue()).toBe(first);
    await page.locator('.mix-deleted').getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => name().inputValue()).toBe('Second try');
    await page.getByText('One food is in this mix.').waitFor();
    await page.getByRole('button', { name: 'Delete', exact: true }).click();
    await expect.poll(() => name().inputValue()).toBe(first);
  });
});

describe.each([
  ['desktop', DESKTOP],
  ['phone', PHONE],
  ['small phone', { width: 360, height: 640 }],
])('the screen on a %s', (_name, size) => {
  test('has no serious accessibility finding and no sideways scroll', async () => {
    const other = await bench.page(size);
    await other.goto(`${bench.url}/#/mix`);
    await other.waitForSelector('[data-testid="verdict"]:not([data-state="working"])');
    if (size.width < 900) {
      await other.getByRole('button', { name: 'Nutrients', exact: true }).click();
      await other.getByRole('heading', { name: /^Ranges/ }).waitFor();
    }
    expect(await overflow(other)).toBe(0);
    expect(await axeFindings(other)).toEqual([]);
    await other.emulateMedia({ colorScheme: 'dark' });
    expect(await axeFindings(other)).toEqual([]);
  });
});

test('the browser had nothing to complain of', () => {
  expect(bench.complaints).toEqual([]);
});
