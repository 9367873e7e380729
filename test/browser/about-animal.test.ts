/** What an animal is: its age, health and picture; that it died or moved away; the keeper's card and what follows from it. */
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
  /** Hosts that the page asked anything of. */
  const asked = new Set<string>();

  beforeAll(async () => {
    bench = await openBench();
    page = await bench.page(size, size === PHONE);
    page.on('request', (r) => r.url().startsWith('http') && asked.add(new URL(r.url()).origin));
    await page.goto(`${bench.url}/#/animals/demo-animal`);
  });
  afterAll(() => bench?.close());

  const animal = async () => (await householdAt(bench.url)).animals[0]!;

  test('the weights of its kind stand beside it, with their source', async () => {
    await page
      .getByText(/Grown animals of this kind \(golden hamster\) weigh about 120 to 180 g.*NRC 1995/)
      .waitFor();
    await page.getByRole('link', { name: 'weigh it' }).waitFor();
  });

  test('the form asks the age in months or the day, and hints at the life stage; the rest is behind one press', async () => {
    await page.getByRole('button', { name: 'Edit' }).click();
    await page.getByLabel('How old is it?').selectOption({ label: 'About, by its age' });
    await page.getByLabel('Age in months').fill('20');
    await page.keyboard.press('Tab');
    await page.getByText(/At this age most keepers count it as old \(common practice, no source\)/).waitFor();
    await page.getByLabel('Age in months').fill('15');
    await page.keyboard.press('Tab');
    await page.getByText(/At this age most keepers/).waitFor({ state: 'detached' });
    expect(await page.getByLabel('Sex').isVisible()).toBe(false);
    await page.getByText('More about it').click();
    await page.getByLabel('Sex').selectOption('female');
    await page.getByLabel('Does it have a running wheel?').selectOption('yes');
    await page.getByLabel('Weight of the tub').fill('210');
    await page.getByLabel('Notes').fill('Shy in the morning.');
    await clean(page);
    await page.getByRole('button', { name: 'Save animal' }).click();
    await page.getByText('about 1 year 3 months', { exact: true }).waitFor();
    await page.getByText('Shy in the morning.').waitFor();
    await expect.poll(animal).toMatchObject({ sex: 'female', wheel: true, tub: 210, born: { about: true } });
    expect(await animal()).not.toHaveProperty('room');
  });

  test('a day of birth that has not come is refused', async () => {
    await page.getByRole('button', { name: 'Edit' }).click();
    await page.getByLabel('How old is it?').selectOption({ label: 'I know the day' });
    await page.getByLabel('Born on').fill('2099-01-01');
    await page.getByRole('button', { name: 'Save animal' }).click();
    await page.getByText('That day has not come yet.').waitFor();
    await page.getByRole('button', { name: 'Cancel' }).click();
    await page.getByText('about 1 year 3 months', { exact: true }).waitFor();
  });

  test('diabetes brings the cautions of dwarf hamsters, while it lasts', async () => {
    await page.getByRole('button', { name: 'Note something' }).click();
    await page.getByLabel('What is it?').selectOption('diabetes');
    await page.getByLabel('In your words').fill('drinks a lot');
    await page.getByText('A vet said so').click();
    await clean(page);
    await page.getByRole('button', { name: 'Note it' }).click();
    await page.getByText(/sugary foods are held as low as for dwarf hamsters/).waitFor();
    await expect
      .poll(async () => (await animal()).conditions)
      .toMatchObject([{ what: 'diabetes', vet: true, note: 'drinks a lot' }]);
    await clean(page);
    await page.goto(`${bench.url}/#/foods/sr28:09298`);
    const caution = page.getByText(/Sugary dried fruit for dwarf hamsters and animals prone to diabetes/);
    await caution.waitFor();
    await page.goto(`${bench.url}/#/animals/demo-animal`);
    await page.getByRole('button', { name: 'Diabetes, or prone to it: it is over' }).click();
    await page.getByText('Diabetes, or prone to it: over as of today.').waitFor();
    await page.goto(`${bench.url}/#/foods/sr28:09298`);
    await page.getByRole('heading', { name: 'Raisins', level: 2 }).waitFor();
    await caution.waitFor({ state: 'detached' });
    await page.goto(`${bench.url}/#/animals/demo-animal`);
    await page.getByText('Earlier', { exact: true }).click();
    await page.getByRole('button', { name: 'Remove from the record: Diabetes, or prone to it' }).click();
    await expect.poll(async () => (await animal()).conditions).toEqual([]);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(async () => (await animal()).conditions?.length).toBe(1);
  });

  test('nursing offers the life stage that goes with it', async () => {
    await page.getByRole('button', { name: 'Note something' }).click();
    await page.getByLabel('What is it?').selectOption('nursing');
    await page.getByLabel('How many young?').fill('6');
    await page.getByRole('button', { name: 'Note it' }).click();
    await page.getByText(/6 young, what you think/).waitFor();
    await page.getByRole('button', { name: 'Set its life stage to “pregnant or nursing”' }).click();
    await page.getByText('golden hamster, pregnant or nursing').last().waitFor();
    await expect.poll(async () => (await animal()).lifeStage).toBe('breeding');
  });

  test('a picture is made small, shown, taken away and brought back, and goes nowhere else', async () => {
    await page.getByText('Add a picture').click();
    await page.getByLabel('Choose a picture').setInputFiles({
      name: 'notes.txt',
      mimeType: 'text/plain',
      buffer: Buffer.from('no picture'),
    });
    await page.getByText('“notes.txt” could not be read as a picture.', { exact: false }).waitFor();
    await page
      .getByLabel('Choose a picture')
      .setInputFiles({ name: 'bramble.png', mimeType: 'image/png', buffer: await noise(page) });
    const picture = page.getByRole('img', { name: 'Picture of Bramble' });
    await picture.waitFor();
    await page.getByText('The picture is kept.').waitFor();
    await expect.poll(async () => (await householdAt(bench.url)).photos.length).toBe(1);
    const [photo] = (await householdAt(bench.url)).photos;
    const bytes = Buffer.from(photo!.jpeg, 'base64');
    expect(bytes.length).toBeLessThanOrEqual(60_000);
    expect(bytes.length).toBeGreaterThan(5_000);
    expect([...bytes.subarray(0, 2)]).toEqual([0xff, 0xd8]);
    await clean(page);
    await page.getByRole('button', { name: 'Remove the picture' }).click();
    await picture.waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Bring it back' }).click();
    await picture.waitFor();
    await expect.poll(async () => (await householdAt(bench.url)).photos).toEqual([photo]);
    await page.goto(`${bench.url}/#/animals`);
    await page.locator('.food-list img').waitFor();
    expect([...asked]).toEqual([bench.url]);
  });

  test('one that died keeps its record, in a group at the end, and is in no mix', async () => {
    await putAt(bench.url, 'animals', { ...(await animal()), id: 'sorrel', name: 'Sorrel', conditions: [] });
    const [mix] = (await householdAt(bench.url)).mixes;
    await putAt(bench.url, 'mixes', { ...mix!, animalIds: ['demo-animal', 'sorrel'] });
    await page.goto(`${bench.url}/#/animals/sorrel`);
    await page.getByRole('button', { name: 'It died or moved away' }).click();
    await page.getByRole('radio', { name: 'It died' }).check();
    await page.getByLabel('On which day?').fill('2099-01-01');
    await page.getByRole('button', { name: 'Note it' }).click();
    await page.getByText('That day has not come yet.').waitFor();
    await page.getByLabel('On which day?').fill('2026-01-05');
    await clean(page);
    await page.getByRole('button', { name: 'Note it' }).click();
    await page
      .getByText(/Died on 5 January/)
      .last()
      .waitFor();
    await clean(page);
    await expect
      .poll(async () => (await householdAt(bench.url)).animals[1]?.gone)
      .toEqual({ how: 'died', on: '2026-01-05' });
    await page.goto(`${bench.url}/#/animals`);
    await page.getByRole('heading', { name: 'No longer here' }).waitFor();
    expect(await page.locator('.gone-group + .food-list a').count()).toBe(1);
    await page.goto(`${bench.url}/#/mix`);
    await page
      .getByText(/Mix for Bramble|for Bramble/)
      .first()
      .waitFor();
    expect(await page.getByText('Sorrel').count()).toBe(0);
    // The mix still names it, for when that was a mistake.
    expect((await householdAt(bench.url)).mixes[0]?.animalIds).toEqual(['demo-animal', 'sorrel']);
    await page.goto(`${bench.url}/#/animals/sorrel`);
    await page.getByRole('button', { name: 'It is here after all' }).click();
    await page
      .getByText(/Died on/)
      .first()
      .waitFor({ state: 'detached' });
    await expect.poll(async () => (await householdAt(bench.url)).animals[1]?.gone).toBeUndefined();
    await page.goto(`${bench.url}/#/mix`);
    await page
      .getByText(/Sorrel/)
      .first()
      .waitFor();
  });

  test('an allergy is said where foods are looked at, bought and kept', async () => {
    await page.goto(`${bench.url}/#/foods/sr28:12120`);
    await page.getByText('Whole, this is large and hard.', { exact: false }).waitFor();
    expect(await page.getByText(/You are allergic/).count()).toBe(0);
    await page.goto(`${bench.url}/#/animals`);
    await page.getByRole('link', { name: 'Your vet and your allergies' }).click();
    await page.getByLabel('Name of the vet').fill('Invented vet');
    await page.getByLabel('Phone of the vet').fill('call me');
    await page.getByText('nuts', { exact: true }).click();
    await page.getByText('gluten', { exact: true }).click();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText(/Write a phone number/).waitFor();
    await page.getByLabel('Phone of the vet').fill('+49 (0)12 345-6');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText('Saved.', { exact: true }).waitFor();
    await clean(page);
    await expect
      .poll(async () => (await householdAt(bench.url)).keeper)
      .toEqual([
        {
          id: 'keeper',
          vet: { name: 'Invented vet', phone: '+49 (0)12 345-6' },
          allergies: ['nuts', 'gluten'],
        },
      ]);
    await page.goto(`${bench.url}/#/foods/sr28:12120`);
    await page.getByText('You are allergic to this: nuts.').waitFor();
    await clean(page);
    await page.goto(`${bench.url}/#/foods/demo-pellet`);
    await page.getByText(/Whether it holds nuts or gluten is not known/).waitFor();
    await page.goto(`${bench.url}/#/shopping`);
    await page.getByText('allergy: gluten').first().waitFor();
    await clean(page);
    await putAt(bench.url, 'lots', {
      ...{ id: 'worms', food: 'pub:mealworm-dried', name: 'Mealworms', grams: 100, form: 'dry' },
      ...{ boughtOn: '2026-01-02', frozen: false, cold: [] },
    });
    await page.goto(`${bench.url}/#/cupboard/worms`);
    await page.getByText(/Wash your hands after touching insects/).waitFor();
    await clean(page);
  });

  test('in German nothing is wider than the window', async () => {
    await page.evaluate(`localStorage['pouchful.manner'] = '{"language":"de"}'`);
    for (const at of [
      'animals/demo-animal',
      'animals/new',
      'household/card',
      'foods/sr28:12120',
      'animals',
    ]) {
      await page.goto(`${bench.url}/#/${at}`);
      await page.reload();
      await page.locator('main').waitFor();
      await page.getByRole('link', { name: 'Tiere' }).first().waitFor();
      await clean(page);
    }
  });

  test('the browser had nothing to complain of', () => {
    expect(bench.complaints).toEqual([]);
  });
});

/** A large picture that packs badly, as a photo does. */
async function noise(page: Page): Promise<Buffer> {
  const url = (await page.evaluate(`(() => {
    const canvas = document.createElement('canvas');
    canvas.width = 1600; canvas.height = 1200;
    const brush = canvas.getContext('2d');
    for (let y = 0; y < 1200; y += 8)
      for (let x = 0; x < 1600; x += 8) {
        const at = (x * 7919 + y * 104729) % 997;
        brush.fillStyle = 'rgb(' + at % 256 + ',' + (at * 3) % 256 + ',' + (at * 7) % 256 + ')';
        brush.fillRect(x, y, 8, 8);
      }
    return canvas.toDataURL('image/png');
  })()`)) as string;
  return Buffer.from(url.slice(url.indexOf(',') + 1), 'base64');
}
