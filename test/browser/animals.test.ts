/** Keeping an animal: what it is, the target it starts from, its mixes, and what it refuses. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt } from './household-at.ts';
import { story } from './story.ts';

const ADULT = 'hamster-adult-crude';
const DIETARY = 'hamster-adult';

let bench: Bench;

beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench?.close());

async function clean(page: Page): Promise<void> {
  expect(await axeFindings(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
}

describe.each([
  ['at a desk', DESKTOP, 'Hazel'],
  ['on a phone', PHONE, 'Sorrel'],
] as const)('%s', (_, size, name) => {
  story();
  let page: Page;
  const target = () => page.getByLabel('Needs', { exact: true });

  beforeAll(async () => {
    page = await bench.page(size);
    await page.goto(`${bench.url}/#/mix`);
    await page.getByRole('link', { name: /^(Animals|Pets)$/ }).click();
  });

  test('the invented animal is there, said to be invented', async () => {
    await page.getByRole('link', { name: /^Bramble invented/ }).click();
    await page.getByRole('heading', { name: /Bramble/, level: 2 }).waitFor();
    await page.getByText('12 g', { exact: true }).waitFor();
    expect(await page.getByRole('checkbox', { name: 'First mix' }).isChecked()).toBe(true);
    await clean(page);
    if (size === PHONE) await page.getByRole('link', { name: 'All animals' }).click();
  });

  test('the target of a new animal follows its life stage until one is chosen', async () => {
    await page.getByRole('button', { name: 'New animal' }).click();
    await page.getByLabel('Name').fill(name);
    expect(await target().inputValue()).toBe(ADULT);
    await page.getByLabel('Life stage').selectOption('growing');
    expect(await target().inputValue()).toBe(ADULT);
    await page.getByText(/needed between 15 and 20 % protein .*Banta/).waitFor();
    await page.getByLabel('Species', { exact: true }).selectOption('mouse');
    await page.getByLabel('Life stage').selectOption('breeding');
    expect(await target().inputValue()).toBe('mouse-nrc-breeding');
    await page.getByLabel('Species', { exact: true }).selectOption('dwarf hamster');
    await page.getByText(/No figures for dwarf hamsters are in the program/).waitFor();
    await page.getByText(/No figures for pregnant or nursing animals are in the program/).waitFor();
    await page.getByLabel('Life stage').selectOption('old');
    expect(await target().inputValue()).toBe(ADULT);
    await page.getByText(/ask a vet whether the adult ranges/).waitFor();
    await page.getByLabel('Species', { exact: true }).selectOption('gerbil');
    expect(await target().inputValue()).toBe('gerbil');
    await page.getByText(/Only magnesium is a gerbil’s own figure/).waitFor();
    await page.getByLabel('Species', { exact: true }).selectOption('golden hamster');
    await target().selectOption('hamster-nrc');
    await page.getByText(/are from memory\. A mix can follow it once/).waitFor();
    await target().selectOption(DIETARY);
    await page.getByLabel('Life stage').selectOption('growing');
    expect(await target().inputValue()).toBe(DIETARY);
    await clean(page);
    await page.getByRole('button', { name: 'Use “Adult hamster”' }).click();
    expect(await target().inputValue()).toBe(ADULT);
    expect(await page.getByRole('button', { name: /^Use “/ }).count()).toBe(0);
    await target().selectOption(DIETARY);
  });

  test('a wrong amount is not kept, a right one is', async () => {
    await page.getByLabel('Food a day').fill('a lot');
    await page.getByRole('button', { name: 'Save animal' }).click();
    await page.getByText(/“a lot” is not a number/).waitFor();
    await page.getByLabel('Food a day').fill('9,5');
    await page.getByRole('button', { name: 'Save animal' }).click();
    await page.getByRole('heading', { name, level: 2 }).waitFor();
    await page.getByText('golden hamster, growing').last().waitFor();
    await page.getByText('9.5 g', { exact: true }).waitFor();
  });

  test('a refused food names the mix it leaves', async () => {
    await page.getByRole('checkbox', { name: 'First mix' }).click();
    await page.getByRole('checkbox', { name: 'First mix', checked: true }).waitFor();
    await page.getByLabel('A food it will not eat').selectOption({ label: 'Nettle leaf, dried' });
    await page.getByRole('button', { name: 'Refuses it' }).click();
    await page.getByRole('listitem').filter({ hasText: 'Nettle leaf, dried out of First mix' }).waitFor();
    await page.getByLabel('A food it will not eat').selectOption({ label: 'Millet' });
    // The keyboard does as well as the pointer.
    await page.getByRole('button', { name: 'Refuses it' }).press('Enter');
    await page.getByRole('button', { name: 'Take back Millet' }).press('Enter');
    await page.getByRole('button', { name: 'Take back Millet' }).waitFor({ state: 'detached' });
    await clean(page);
  });

  test('everything is there after opening the page again', async () => {
    // The mix is saved by itself, a moment after its last change.
    await expect.poll(() => animalsOfMix()).toHaveLength(2);
    await expect.poll(() => refusals()).toEqual([['nettle-leaf-dried']]);
    await page.reload();
    await page.getByRole('heading', { name, level: 2 }).waitFor();
    await page.getByText('9.5 g', { exact: true }).waitFor();
    await page.getByRole('link', { name: 'Adult hamster, dietary fibre' }).waitFor();
    expect(await page.getByRole('checkbox', { name: 'First mix' }).isChecked()).toBe(true);
    await page.getByText('out of First mix').waitFor();
    expect(await page.getByRole('button', { name: /^Take back/ }).count()).toBe(1);
  });

  test('an edit offers the matching target and keeps what was refused', async () => {
    await page.getByRole('button', { name: 'Edit' }).click();
    expect(await page.getByRole('button', { name: /^Use “/ }).count()).toBe(0);
    await page.getByLabel('Life stage').selectOption('adult');
    await page.getByRole('button', { name: 'Use “Adult hamster”' }).click();
    await page.getByRole('button', { name: 'Save animal' }).click();
    await page.getByRole('link', { name: 'Adult hamster', exact: true }).waitFor();
    await page.getByRole('button', { name: 'Take back Nettle leaf, dried' }).waitFor();
  });

  test('an address of an animal that is not there shows no other in its place', async () => {
    await page.goto(`${bench.url}/#/animals/not-here/weight`);
    await page.getByText(/^No animal is kept at this address\./).waitFor();
    expect(await page.locator('.animal-page').count()).toBe(0);
    await clean(page);
    await page.goBack();
    await page.getByRole('heading', { name: new RegExp(name), level: 2 }).waitFor();
  });

  test('deleting asks once, and leaves the mix without the animal', async () => {
    await page.getByRole('button', { name: 'Delete', exact: true }).click();
    await page.getByText(`Delete ${name} for good?`).waitFor();
    await clean(page);
    await page.keyboard.press('Escape');
    await page.getByText(`Delete ${name} for good?`).waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Delete', exact: true }).click();
    await page.getByRole('button', { name: `Delete ${name}` }).click();
    await page.getByRole('link', { name: new RegExp(`^${name}`) }).waitFor({ state: 'detached' });
    await expect.poll(() => animalsOfMix()).toEqual(['demo-animal']);
    // Once it is gone the page goes back to the others.
    await page.waitForURL(/#\/animals$/);
    await page.reload();
    await page.getByRole('link', { name: /^Bramble/ }).waitFor();
    expect(await page.getByRole('link', { name: new RegExp(`^${name}`) }).count()).toBe(0);
    await clean(page);
  });

  async function household() {
    return householdAt(bench.url);
  }
  async function animalsOfMix(): Promise<readonly string[]> {
    return (await household()).mixes[0]!.animalIds;
  }
  async function refusals(): Promise<readonly (readonly string[])[]> {
    return (await household()).animals.filter((a) => a.name === name).map((a) => a.refuses);
  }
});

test('the browser had nothing to complain of', () => {
  expect(bench.complaints).toEqual([]);
});
