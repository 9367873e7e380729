/** Entering a food from its label: pasted or typed as printed, by keyboard alone, every line accounted for. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { labelSpread } from '../../src/foods/variation.ts';
import type { OwnFood } from '../../src/household/model.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt, putAt } from './household-at.ts';
import { story } from './story.ts';

/** Invented; "Fasern" may mean either fibre, so it is asked. */
const GERMAN = `Wiesenkorn Haferflocken
Gehalte:
Rohprotein min. 13,5 %
Rohfett 6,2 %
Fasern max. 9 %
Rohasche 2,1 %
Feuchtigkeit 10 %
Calcium 0,06 %
Vitamin A 800 IE/kg`;

/** Invented; "vitamin O" is none. */
const AMERICAN = `Nutrition Facts
Serving size 40g
Amount per serving
Calories 150
Total Fat 2.5g
Sodium 8mg
Total Carbohydrate 27g
Dietary Fiber 4g
Protein 5g
Vitamin O 12 mg
% Daily Value`;

const INGREDIENTS = 'Rolled oats, peas, sugar, minerals, preservative BHA';

let bench: Bench;

beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench?.close());

async function foods(): Promise<readonly OwnFood[]> {
  return (await householdAt(bench.url)).foods;
}
const foodCalled = async (name: string) => (await foods()).find((f) => f.name === name);

/** What a screen reader would call the place the keyboard is at. */
const HERE = `(() => {
  const at = document.activeElement;
  const label = at?.labels?.[0]?.textContent ?? at?.getAttribute('aria-label') ?? at?.textContent ?? '';
  return label.trim();
})()`;

/** Presses Tab until the keyboard is at a place of that name. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  const passed: string[] = [];
  for (let presses = 0; presses < 40; presses++) {
    await page.keyboard.press('Tab');
    const here = (await page.evaluate(HERE)) as string;
    if (name.test(here)) return;
    passed.push(here.slice(0, 30));
  }
  throw new Error(`Tab does not lead to ${name}; it passed ${passed.join(' | ')}`);
}

async function newFood(size = DESKTOP): Promise<Page> {
  const page = await bench.page(size);
  await page.goto(`${bench.url}/#/foods/new`);
  await page.getByRole('heading', { name: 'New food' }).waitFor();
  return page;
}
const lineOf = (page: Page, text: string) => page.locator('.label-line').filter({ hasText: text });
const figureOf = (page: Page, name: string) =>
  page.locator('.label-figures').getByRole('row', { name }).first().locator('td').first();

describe('by keyboard alone', () => {
  story();
  let page: Page;
  let kept: OwnFood | undefined;

  beforeAll(async () => {
    page = await bench.page();
    await page.goto(`${bench.url}/#/foods`);
    await page.getByRole('button', { name: 'New food' }).waitFor();
  });

  test('a German label goes in, a question is answered and the food is kept, in under a minute', async () => {
    const { keyboard } = page;
    const began = performance.now();
    await tabTo(page, /^New food$/);
    await keyboard.press('Enter');
    await page.getByRole('heading', { name: 'New food' }).waitFor();
    await tabTo(page, /^Name$/);
    await keyboard.type('Oats, Wiesenkorn');
    await tabTo(page, /^Kind$/);
    await keyboard.type('Food');
    await tabTo(page, /^Group$/);
    await keyboard.type('Seeds');
    await tabTo(page, /^The label, as printed$/);
    await keyboard.insertText(GERMAN);
    await page.getByText('One question is open').waitFor();
    await tabTo(page, /^Dietary fibre$/);
    await keyboard.press('ArrowDown');
    await page.getByText('Questions, all answered').waitFor();
    await tabTo(page, /^Ingredient list/);
    await keyboard.insertText(INGREDIENTS);
    await tabTo(page, /^Save food$/);
    await keyboard.press('Enter');
    await page.locator('.food-page h2').waitFor();
    const seconds = (performance.now() - began) / 1000;
    expect(seconds).toBeLessThan(60);
    await expect.poll(() => page.evaluate(HERE)).toBe('Oats, Wiesenkorn');
    kept = await foodCalled('Oats, Wiesenkorn');
    expect(kept).toMatchObject({ kind: 'mix', group: 'seed', source: 'label' });
  });

  test('values, bounds and their source are kept exactly', () => {
    const composition = { FAT: 6.2, ASH: 2.1, WATER: 10, CA: 60, VITA_IU: 80 };
    const bounds = { low: { PROCNT: 13.5 }, high: { FIBC: 9 } };
    expect(kept?.composition).toEqual(composition);
    expect(kept).toMatchObject(bounds);
    expect(kept?.low).toEqual(bounds.low);
    expect(kept?.high).toEqual(bounds.high);
    const now = new Date();
    const two = (n: number) => String(n).padStart(2, '0');
    const sd = Object.fromEntries(
      (Object.entries(composition) as [Tag, number][]).flatMap(([tag, value]) => {
        const spread = labelSpread(value, tag, 'food');
        return spread ? [[tag, spread.sd]] : [];
      }),
    );
    expect(Object.keys(sd)).toContain('FAT');
    expect(kept?.evidence?.ingredients).toBe(INGREDIENTS);
    expect(kept?.evidence?.sources).toEqual([
      {
        id: expect.stringMatching(/.+/),
        name: 'label',
        date: `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
        basis: 'as fed',
        composition,
        sd,
        ...bounds,
        printed: GERMAN,
      },
    ]);
  });

  test('edited again, the label is there, and figures that rest on an answer stand as they were saved', async () => {
    await page.getByRole('button', { name: 'Edit', exact: true }).click();
    expect(await page.getByLabel('The label, as printed').inputValue()).toBe(GERMAN);
    await page.getByText('as you saved them').waitFor();
    expect(await figureOf(page, 'Crude fibre').textContent()).toBe('at most 9 g');
    await page.getByLabel('Price per kg').fill('4.2');
    await page.getByRole('button', { name: 'Save food' }).click();
    await page.locator('.food-page h2').waitFor();
    const again = await foodCalled('Oats, Wiesenkorn');
    expect(again?.pricePerKg).toBe(4.2);
    expect(again?.evidence).toEqual(kept?.evidence);
    expect(again?.composition).toEqual(kept?.composition);
  });
});

describe('what is understood is shown', () => {
  story();
  test('a US label is brought from its serving to 100 g; the line that is not understood says so', async () => {
    const page = await newFood();
    await page.getByLabel('The label, as printed').fill(AMERICAN);
    await expect.poll(() => figureOf(page, 'Protein').textContent()).toBe('12.5 g');
    expect(await figureOf(page, 'Sodium').textContent()).toBe('20 mg');
    const row = page.locator('.label-figures').getByRole('row', { name: 'Protein' });
    expect(await row.textContent()).toContain('5 g in 40 g');
    expect(await lineOf(page, 'Vitamin O').textContent()).toMatch(
      /✕.*Vitamin O 12 mg.*Not understood: .*not known here/,
    );
    expect(await lineOf(page, 'Protein 5g').textContent()).toMatch(/✓.*Read/);
    await page.getByText('Moisture is unknown, so nothing can be shown in dry matter').waitFor();
  });

  test('a guarantee is a bound; it stays one in the fields, and is kept as one', async () => {
    const page = await newFood();
    await page.getByLabel('Name', { exact: true }).fill('Meadow pellet');
    await page.getByLabel('Kind').selectOption('pellet');
    await page.getByLabel('The label, as printed').fill('Crude protein min. 14 %\nCrude fat 5 %');
    await expect.poll(() => figureOf(page, 'Protein').textContent()).toBe('at least 14 g');
    await page.getByText('Fill in fields').click();
    await page.getByText('2 amounts were carried over from the label').waitFor();
    expect(await page.getByLabel('Protein', { exact: true }).inputValue()).toBe('14');
    expect(await page.getByLabel('Protein: exact or a limit').inputValue()).toBe('least');
    await page.getByLabel('Crude fibre', { exact: true }).fill('8');
    await page.getByLabel('Crude fibre: exact or a limit').selectOption('at most');
    await page.getByRole('button', { name: 'Save food' }).click();
    await page.locator('.food-page h2').waitFor();
    const kept = await foodCalled('Meadow pellet');
    expect(kept).toMatchObject({ kind: 'pellet', composition: { FAT: 5 } });
    expect(kept?.low).toEqual({ PROCNT: 14 });
    expect(kept?.high).toEqual({ FIBC: 8 });
    expect(kept?.evidence?.sources?.[0]?.sd).toEqual({ FAT: labelSpread(5, 'FAT', 'feed')?.sd });
  });

  test('ten times off is seen beside the food of that name, and does not forbid saving', async () => {
    const page = await newFood();
    await page.getByLabel('Name', { exact: true }).fill('Oats');
    await page.getByLabel('Group').selectOption('seed');
    await page.getByLabel('The label, as printed').fill('Protein 1.69 g per 100 g\nFat 6.9 g per 100 g');
    await page.getByText(/1\.69 g protein.*Oats.*ten times too low/).waitFor();
    await page.getByRole('button', { name: 'Save food' }).click();
    await page.locator('.food-page h2').waitFor();
  });

  test('parts over 100 g forbid saving, and say what to check', async () => {
    const page = await newFood();
    await page.getByLabel('Name', { exact: true }).fill('Heavy');
    await page.getByLabel('The label, as printed').fill('Protein 70 %\nFat 40 %');
    await page.getByRole('alert').filter({ hasText: 'add up to 110 g' }).waitFor();
    await page.getByRole('button', { name: 'Save food' }).click();
    await page.getByRole('alert').filter({ hasText: 'Not saved yet' }).waitFor();
    expect(await foodCalled('Heavy')).toBeUndefined();
  });

  test('a name on the caution list is answered while it is typed', async () => {
    const page = await newFood();
    await page.getByLabel('Name', { exact: true }).fill('Onion flakes');
    await page.locator('.own-form .caution-card').getByText('Never feed').waitFor();
  });
});

describe('a food kept before', () => {
  story();
  async function edit(id: string): Promise<Page> {
    const page = await bench.page();
    await page.goto(`${bench.url}/#/foods/${id}`);
    await page.getByRole('button', { name: 'Edit', exact: true }).click();
    return page;
  }

  test('without sources, it is edited as one typed source, and the mix that uses it follows', async () => {
    const page = await edit('demo-pellet');
    expect(await page.getByLabel('Protein', { exact: true }).inputValue()).toBe('17');
    await page.getByLabel('Protein: exact or a limit').selectOption('at least');
    await page.getByRole('button', { name: 'Save food' }).click();
    await page.locator('.food-page h2').waitFor();
    const kept = (await foods()).find((f) => f.id === 'demo-pellet');
    expect(kept?.composition).toEqual({ FAT: 4, FIBC: 9, WATER: 10, ASH: 6.5, CA: 900, P: 650 });
    expect(kept?.low).toEqual({ PROCNT: 17 });
    expect(kept?.evidence?.sources?.map((s) => s.name)).toEqual(['invented label: no such pellet is sold']);
    const inMix = async () => {
      const house = await householdAt(bench.url);
      return house.mixes[0]?.problem.beside.find((b) => b.id === 'demo-pellet');
    };
    await expect.poll(inMix).toMatchObject({ low: { PROCNT: 17 }, composition: { FAT: 4 } });
    expect((await inMix())?.composition).toEqual(kept?.composition);
  });

  test('with several sources, only what is said of the food itself is edited', async () => {
    const source = { name: 'first bag', basis: 'as fed', composition: { FAT: 5 }, sd: { FAT: 0.4 } } as const;
    const sources = [
      { ...source, id: 'a' },
      { ...source, id: 'b', name: 'second bag', composition: { FAT: 6 } },
    ];
    const food = {
      id: 'two-bags',
      name: 'Two bags',
      kind: 'mix',
      composition: { FAT: 5 },
      sd: {},
      source: 'labels',
      invented: true,
      evidence: { sources, choices: { FAT: 'a' } },
    };
    await putAt(bench.url, 'foods', food);
    const page = await edit('two-bags');
    await page.getByText('rest on 2 sources').waitFor();
    expect(await page.getByLabel('The label, as printed').count()).toBe(0);
    await page.getByLabel('Group').selectOption('seed');
    await page.getByRole('button', { name: 'Save food' }).click();
    await page.locator('.food-page h2').waitFor();
    const kept = (await foods()).find((f) => f.id === 'two-bags');
    expect(kept).toMatchObject({ group: 'seed', composition: { FAT: 5 }, source: 'labels' });
    expect(kept?.evidence).toEqual(food.evidence);
  });
});

describe('the list of ingredients', () => {
  story();
  test('found words are marked and explained; where nothing is found, that is no guarantee', async () => {
    const page = await newFood();
    const list = page.getByLabel('Ingredient list, as printed (optional)');
    await list.fill(INGREDIENTS);
    const flags = page.getByRole('list', { name: 'Found in the ingredients' });
    await flags.waitFor();
    expect(await flags.textContent()).toMatch(/BHA/);
    expect(await flags.textContent()).toMatch(/sugar/);
    expect(await page.locator('mark').allTextContents()).toEqual(expect.arrayContaining(['sugar', 'BHA']));
    await list.fill('Rolled oats, peas');
    await page.getByText('Nothing on our lists was found; that is no guarantee.').waitFor();
  });
});

describe.each([
  ['desktop', DESKTOP],
  ['phone', PHONE],
])('on a %s', (_name, size) => {
  story();
  test.each([
    ['Paste the label', 'paste'],
    ['Fill in fields', 'fields'],
  ])('“%s” is accessible, does not scroll sideways and is easy to touch', async (way) => {
    const page = await newFood(size);
    await page.getByLabel('Name', { exact: true }).fill('Onion flakes');
    await page.getByLabel('The label, as printed').fill(`${GERMAN}\n${'x'.repeat(90)} 12\nVitamin O 12 mg`);
    await page.getByLabel('Ingredient list, as printed (optional)').fill(INGREDIENTS);
    await page.getByText('One question is open').waitFor();
    await page.locator('mark').first().waitFor();
    await page.getByText(way, { exact: true }).click();
    expect(await overflow(page)).toBe(0);
    expect(await page.locator('.detail').evaluate((e) => e.scrollWidth - e.clientWidth)).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
    const small = await page
      .locator(
        '.own-form :is(button, select, summary, textarea, label.radio, input:not([type="radio"])):visible',
      )
      .evaluateAll((all) =>
        all.flatMap((e) => {
          const { width, height } = e.getBoundingClientRect();
          return width < 44 || height < 44 ? [`${e.tagName} ${e.textContent} ${width} x ${height}`] : [];
        }),
      );
    expect(small).toEqual([]);
  });
});

test('the browser had nothing to complain of', () => {
  expect(bench.complaints).toEqual([]);
});
