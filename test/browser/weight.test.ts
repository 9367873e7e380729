/** Weighing an animal: one press, a tub, an unlikely figure asked about, all taken back, and kept without a connection. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Weighing } from '../../src/care/model.ts';
import { demoHousehold } from '../../src/household/demo.ts';
import type { Household } from '../../src/household/model.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt } from './household-at.ts';
import { story } from './story.ts';

const DAY_MS = 86_400_000;
const BRAMBLE = 'demo-animal';
const GERMAN = `localStorage.setItem('pouchful.manner', '{"language":"de"}')`;

/** Twenty weighings of some 142 g, the last of them yesterday. */
function weighed(): readonly Weighing[] {
  return Array.from({ length: 20 }, (_, i) => ({
    id: `weighing-${i}`,
    animalId: BRAMBLE,
    at: new Date(Date.now() - (20 - i) * DAY_MS).toISOString(),
    grams: 142 + ((i * 7) % 5) - 2,
  }));
}
function house(weighings: readonly Weighing[]): Household {
  return { ...demoHousehold(), weighings };
}

const keptAt = async (bench: Bench) =>
  (await householdAt(bench.url)).weighings.filter((w) => !w.id.startsWith('weighing-'));
const newest = async (bench: Bench) => (await keptAt(bench)).sort((a, b) => (a.at < b.at ? 1 : -1))[0];

async function open(bench: Bench, page: Page): Promise<void> {
  await page.goto(`${bench.url}/#/animals/${BRAMBLE}/weight`);
  await page.getByRole('region', { name: /^Weigh Bramble/ }).waitFor();
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
  const pad = () => page.getByRole('group', { name: 'What the scale shows' });
  const other = () => page.getByRole('textbox', { name: /^Another weight/ });
  const list = () => page.getByRole('region', { name: 'Earlier weighings' });

  beforeAll(async () => {
    bench = await openBench({ house: house(weighed()) });
    page = await bench.page(size, size === PHONE);
    await open(bench, page);
  });
  afterAll(() => bench?.close());

  test('one press on the pad keeps a weight, says so, and the pad stays where it is', async () => {
    const key = pad().getByRole('button', { name: '143 g', exact: false });
    const before = await key.boundingBox();
    await key.click();
    await page.getByText('143 g kept.', { exact: true }).waitFor();
    expect(await key.boundingBox()).toEqual(before);
    await expect.poll(() => keptAt(bench)).toMatchObject([{ animalId: BRAMBLE, grams: 143 }]);
    await page.getByText(/^Weighed today at \d\d:\d\d: 143 g\.$/).waitFor();
    await clean(page);
  });

  test('it is taken back by one more', async () => {
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back.').waitFor();
    await expect.poll(() => keptAt(bench)).toEqual([]);
    await page.getByText(/^Weighed yesterday/).waitFor();
  });

  test('an unlikely one that is right is kept as said to be right, and told what to do', async () => {
    await other().fill('112');
    await other().press('Enter');
    await page.getByText(/has lost that much, see a vet today/).waitFor();
    await page.getByRole('button', { name: 'It is right' }).click();
    await page.getByText(/^112 g kept/).waitFor();
    await expect.poll(async () => await newest(bench)).toMatchObject({ grams: 112, sure: true });
    // A loss of a fifth, said to be right, is no matter of waiting.
    await page
      .getByText(/^See a vet today\./)
      .first()
      .waitFor();
    await clean(page);
    await page.getByRole('button', { name: 'Undo' }).first().click();
    await expect.poll(() => keptAt(bench)).toEqual([]);
    await page
      .getByText(/^See a vet today\./)
      .first()
      .waitFor({ state: 'detached' });
  });

  test('the likeliest is marked, and every key is large enough for a thumb', async () => {
    expect(await pad().getByRole('button').count()).toBe(15);
    expect(
      await pad()
        .getByRole('button', { name: /\(the likeliest\)$/ })
        .count(),
    ).toBe(1);
    for (const key of await pad().getByRole('button').all()) {
      const box = (await key.boundingBox())!;
      expect(box.height).toBeGreaterThanOrEqual(48);
      expect(box.width).toBeGreaterThanOrEqual(48);
    }
  });

  test('another weight is typed and kept by Enter; what is no number is not', async () => {
    await other().fill('a lot');
    await other().press('Enter');
    await page.getByText(/“a lot” is not a number/).waitFor();
    await other().fill('140,5');
    await other().press('Enter');
    await page.getByText('140.5 g kept.').waitFor();
    expect(await other().inputValue()).toBe('');
    await expect.poll(async () => (await newest(bench))?.grams).toBe(140.5);
  });

  test('an unlikely one is asked about before it counts, and can be corrected', async () => {
    await other().fill('412');
    await page.getByRole('button', { name: 'Keep', exact: true }).click();
    const asked = page.getByRole('group', { name: /^412 g\? Earlier today it was 140\.5 g\.$/ });
    await asked.waitFor();
    expect(await keptAt(bench)).toHaveLength(1);
    await clean(page);
    await asked.getByRole('button', { name: 'Correct it' }).press('Enter');
    await expect.poll(() => page.evaluate('document.activeElement?.value')).toBe('412');
    await other().fill('141');
    await other().press('Enter');
    await page.getByText(/^141 g kept/).waitFor();
    await expect.poll(async () => (await newest(bench))?.grams).toBe(141);
    expect((await newest(bench))?.sure).toBeUndefined();
  });

  test('with a tub the pad shows what the scale shows, and the tub is taken off', async () => {
    await page.getByRole('checkbox', { name: 'Weighed in a tub' }).click();
    await page.getByRole('textbox', { name: 'Weight of the empty tub' }).fill('38');
    await page.getByRole('button', { name: 'Keep the tub’s weight' }).click();
    await page.getByText('Press what the scale shows with the tub in it. Its 38 g are taken off.').waitFor();
    await pad()
      .getByRole('button', { name: /^181 g → 143 g/ })
      .click();
    await page.getByText(/^143 g kept/).waitFor();
    await expect.poll(async () => await newest(bench)).toMatchObject({ grams: 143, tub: 38 });
    await expect.poll(async () => (await householdAt(bench.url)).animals[0]!.tub).toBe(38);
    await other().fill('30');
    await other().press('Enter');
    await page.getByText(/no more than the tub alone weighs/).waitFor();
    await clean(page);
    await other().fill('');
    await page.getByRole('checkbox', { name: 'Weighed in a tub' }).click();
    await expect.poll(async () => (await householdAt(bench.url)).animals[0]!.tub).toBeUndefined();
    await page.getByText('One press keeps the weight.', { exact: false }).waitFor();
  });

  test('a weighing of another day is added, corrected and deleted, each with a way back', async () => {
    const day = new Date(Date.now() - 3 * DAY_MS).toISOString().slice(0, 10);
    await list().getByRole('button', { name: 'Add one of another day' }).click();
    await list().getByRole('textbox', { name: 'Weight', exact: true }).fill('139');
    await list()
      .getByLabel('Day')
      .fill(new Date(Date.now() + 2 * DAY_MS).toISOString().slice(0, 10));
    await list().getByRole('button', { name: 'Save' }).click();
    await list()
      .getByText(/lies ahead/)
      .waitFor();
    await list().getByLabel('Day').fill(day);
    await list().getByLabel('Time').fill('04:05');
    await clean(page);
    await list().getByRole('button', { name: 'Save' }).click();
    await list().getByText('139 g added.').waitFor();
    const added = async () => (await keptAt(bench)).find((w) => w.grams === 139);
    await expect.poll(async () => (await added()) !== undefined).toBe(true);
    expect(new Date((await added())!.at).getMinutes()).toBe(5);

    await list()
      .getByRole('button', { name: /^Correct 139 g/ })
      .click();
    await list().getByRole('textbox', { name: 'Weight', exact: true }).fill('412');
    await list().getByRole('button', { name: 'Save' }).click();
    await list().getByRole('button', { name: 'Correct it' }).click();
    await list().getByRole('textbox', { name: 'Weight', exact: true }).fill('140');
    await list().getByRole('button', { name: 'Save' }).click();
    await list().getByText('Now 140 g.').waitFor();
    await expect.poll(added).toBeUndefined();
    await list().getByRole('button', { name: 'Undo' }).click();
    await expect.poll(async () => (await added())?.grams).toBe(139);

    await list()
      .getByRole('button', { name: /^Delete 139 g/ })
      .click();
    await list().getByText('139 g deleted.').waitFor();
    await expect.poll(added).toBeUndefined();
    await list().getByRole('button', { name: 'Undo' }).click();
    await expect.poll(async () => (await added())?.grams).toBe(139);
  });

  test('the picture is read by keyboard and as a table, in each span of time', async () => {
    const picture = page.getByRole('slider', { name: 'One weighing in the picture' });
    await picture.focus();
    await picture.press('Home');
    const first = await picture.getAttribute('aria-valuetext');
    expect(first).toMatch(/g\. Trend/);
    await picture.press('ArrowRight');
    await expect.poll(() => picture.getAttribute('aria-valuetext')).not.toBe(first);
    await page.getByText('The same as a table').click();
    await page.getByRole('columnheader', { name: 'Trend' }).waitFor();
    for (const span of ['Quarter', 'Year', 'Month']) {
      await page.getByRole('radio', { name: span }).check({ force: true });
      await picture.waitFor();
      await clean(page);
    }
  });

  test('without a connection a weight is kept all the same, and sent later', async () => {
    const before = (await keptAt(bench)).length;
    await page.context().setOffline(true);
    await pad()
      .getByRole('button', { name: /^144 g/ })
      .click();
    await page.getByText(/^144 g kept/).waitFor();
    await page.getByText(/^Weighed today at .*: 144 g\.$/).waitFor();
    expect(await keptAt(bench)).toHaveLength(before);
    await page.context().setOffline(false);
    await expect.poll(async () => (await newest(bench))?.grams).toBe(144);
  });
});

describe('a household with little to go by', () => {
  test('asks about a first weight that no animal of the kind has, and then offers the pad', async () => {
    const bench = await openBench({ house: house([]) });
    try {
      const page = await bench.page(PHONE, true);
      await open(bench, page);
      await page.getByText('Bramble has not been weighed yet.').waitFor();
      const field = page.getByRole('textbox', { name: 'Another weight' });
      await field.fill('1420');
      await field.press('Enter');
      await page.getByRole('group', { name: /^1420 g\?/ }).waitFor();
      await page.getByRole('button', { name: 'Correct it' }).click();
      await field.fill('142');
      await field.press('Enter');
      await page.getByText('142 g kept.').waitFor();
      await page.getByRole('button', { name: '142 g (the likeliest)' }).waitFor();
      await clean(page);
    } finally {
      await bench.close();
    }
  });

  test('shows what was kept and looks unlikely as a question, which is answered once', async () => {
    const wrong: Weighing = {
      id: 'wrong',
      animalId: BRAMBLE,
      at: new Date(Date.now() - 3 * DAY_MS).toISOString(),
      grams: 412,
    };
    const bench = await openBench({ house: house([...weighed(), wrong]) });
    try {
      const page = await bench.page(DESKTOP);
      await open(bench, page);
      const asked = page.getByRole('region', { name: 'Is this right?' });
      await asked.getByText(/^412 g on .* is far from the weights around it/).waitFor();
      await clean(page);
      await asked.getByRole('button', { name: /^It is right/ }).click();
      await asked.getByText('412 g counts from now on.').waitFor();
      const kept = async () => (await householdAt(bench.url)).weighings.find((w) => w.id === 'wrong');
      await expect.poll(async () => (await kept())?.sure).toBe(true);
      await asked.getByRole('button', { name: 'Undo' }).click();
      await expect.poll(async () => (await kept())?.sure).toBeUndefined();
    } finally {
      await bench.close();
    }
  });

  test('is readable in German on a phone', async () => {
    const bench = await openBench({ house: house(weighed()) });
    try {
      const page = await bench.page(PHONE, true);
      await page.addInitScript(GERMAN);
      await page.goto(`${bench.url}/#/animals/${BRAMBLE}/weight`);
      await page.getByRole('region', { name: 'Bramble wiegen' }).waitFor();
      await page
        .getByRole('group', { name: 'Was die Waage zeigt' })
        .getByRole('button', { name: /^143 g/ })
        .click();
      await page.getByText('143 g behalten.').waitFor();
      await page.getByRole('checkbox', { name: 'In einer Dose gewogen' }).click();
      await page.getByRole('button', { name: 'Eine von einem anderen Tag eintragen' }).click();
      await clean(page);
    } finally {
      await bench.close();
    }
  });
});
