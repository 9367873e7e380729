/**
 * A newcomer's way from an empty household to the printed sheet to weigh by: with the mouse, with the keyboard alone and
 * by touch, on a desk and on a phone. What they do is counted: a press, a key, a paste and a field filled in are one each.
 * With NEWCOMER_PICTURES=<folder> every station leaves a picture.
 */
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { EMPTY } from '../household/empty-household.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt } from './household-at.ts';
import { story } from './story.ts';

const PICTURES = process.env.NEWCOMER_PICTURES;
const LABEL = 'Crude protein 17 %\nCrude fat min. 4 %\nCrude fibre max. 10 %\nMoisture 10 %';
/** As a keeper writes: plurals, words apart, shares for some. */
const FOODS = [
  'oats, 5 %',
  'millet',
  '4% maize',
  'buckwheat',
  'brown rice',
  'barley',
  'sunflower seeds 4 %',
  'linseed',
  'sesame',
  'pumpkin seeds',
  'hemp seed',
  'dried carrot',
  'parsely',
  'nettle',
  'dandelion',
  'rose hips',
  'lentils',
  'red lentils',
  'split peas',
  'chick peas',
  'mung bean',
  'carob',
  'meal worm',
  'egg',
  'hazel nut',
  'shrimp',
];
const MOST_TO_MIX = 50;
const MOST_TO_SHEET = 90;
/** A place further on than this is out of reach by Tab. */
const MOST_TABS = 40;

type Manner = 'mouse' | 'keyboard' | 'touch';
const WAYS = (['mouse', 'keyboard', 'touch'] as const).flatMap((manner) =>
  [DESKTOP, PHONE].map((size) => [manner, size.width, size] as const),
);

/** Hands that count what they do. */
class Hands {
  actions = 0;
  readonly #page: Page;
  readonly #manner: Manner;

  constructor(page: Page, manner: Manner) {
    this.#page = page;
    this.#manner = manner;
  }

  async key(name: string): Promise<void> {
    this.actions++;
    await this.#page.keyboard.press(name);
  }

  /** By keyboard: goes on by Tab until the place has the focus. */
  async #reach(place: Locator): Promise<void> {
    await place.waitFor();
    for (let n = 0; !(await isFocused(place)); n++) {
      if (n === MOST_TABS) throw new Error(`${place} is not reached by ${MOST_TABS} tabs`);
      await this.key('Tab');
    }
  }

  async press(place: Locator): Promise<void> {
    if (this.#manner === 'keyboard') {
      await this.#reach(place);
      return this.key('Enter');
    }
    this.actions++;
    await (this.#manner === 'touch' ? place.tap() : place.click());
  }

  /** Types or pastes a text into a field that is empty. */
  async write(field: Locator, text: string): Promise<void> {
    if (this.#manner === 'keyboard') await this.#reach(field);
    else if (!(await isFocused(field))) {
      this.actions++;
      await (this.#manner === 'touch' ? field.tap() : field.click());
    }
    this.actions++;
    await this.#page.keyboard.insertText(text);
  }
}

function isFocused(place: Locator): Promise<boolean> {
  return place.evaluate((element: { matches(selector: string): boolean }) => element.matches(':focus'));
}

describe.each(WAYS)('by %s at %i px', (manner, width, size) => {
  let bench: Bench;
  let page: Page;
  let hands: Hands;
  let taken = 0;

  story();
  beforeAll(async () => {
    bench = await openBench({ house: EMPTY });
    page = await bench.page(size, manner === 'touch');
    await page.addInitScript('window.print = () => { window.printed = true; };');
    await page.goto(bench.url);
    hands = new Hands(page, manner);
  });
  afterAll(() => bench?.close());

  const button = (name: string | RegExp) => page.getByRole('button', { name });
  const field = (name: string | RegExp) => page.getByLabel(name);
  /** From the top of a page straight to what is on it. */
  const toContent = async () => {
    if (manner === 'keyboard') await hands.press(button('Skip to content'));
  };

  async function station(name: string) {
    expect(await overflow(page), name).toBe(0);
    expect(await axeFindings(page), name).toEqual([]);
    taken++;
    if (PICTURES)
      await page.screenshot({
        path: join(PICTURES, `${manner}-${width}-${taken}-${name}.png`),
        fullPage: true,
      });
  }

  test('says who the animal is', async () => {
    await page.getByRole('heading', { name: 'Your animal' }).waitFor();
    await station('empty');
    await toContent();
    await hands.write(field('Name'), 'Hazel');
    await hands.key('Enter');
    await expect.poll(async () => (await householdAt(bench.url)).animals.length).toBe(1);
    const [animal] = (await householdAt(bench.url)).animals;
    expect(animal).toMatchObject({
      name: 'Hazel',
      species: 'golden hamster',
      dailyGrams: 12,
      invented: false,
    });
  });

  test('pastes the label of the pellet, and is asked for what it leaves open', async () => {
    await hands.write(field('The label of your pellet'), LABEL);
    await page.getByText(/^Read, in 100 g: .*at least 4/).waitFor();
    await hands.write(field('Fat at most'), '5');
    await hands.write(field('Fibre at least'), '8');
    await station('pellet');
    await hands.press(button('Keep the pellet'));
    await expect.poll(async () => (await householdAt(bench.url)).foods.length).toBe(1);
    const [pellet] = (await householdAt(bench.url)).foods;
    expect(pellet).toMatchObject({
      kind: 'pellet',
      composition: { PROCNT: 17, WATER: 10 },
      low: { FAT: 4, FIBC: 8 },
      high: { FAT: 5, FIBC: 10 },
    });
  });

  test('names 26 foods in one box, which keeps the focus', async () => {
    const box = field('Which foods do you have?');
    await box.waitFor();
    await hands.write(box, FOODS.join('\n'));
    await hands.key('Enter');
    await page.getByText('26 foods were added.').waitFor();
    expect(await isFocused(box)).toBe(true);
    expect(await box.inputValue()).toBe('');
    expect(await page.locator('.start-row').count()).toBe(FOODS.length);
    await station('foods');
  });

  test('makes it fit by one press, in few actions', async () => {
    await hands.press(button('Make it fit'));
    await page.locator('[data-testid=verdict][data-state=in]').waitFor();
    await page.getByText('Saved', { exact: true }).waitFor();
    const [mix] = (await householdAt(bench.url)).mixes;
    expect(mix?.problem.foods).toHaveLength(FOODS.length);
    expect(mix?.problem.foods.filter((f) => f.want !== undefined).map((f) => f.want)).toEqual([5, 4, 4]);
    const shares = Object.values(mix?.shares ?? {});
    expect(shares.reduce((sum, s) => sum + s, 0)).toBeCloseTo(100, 3);
    // Hardly one of them is left out.
    expect(shares.filter((s) => s > 0.2).length).toBeGreaterThanOrEqual(FOODS.length - 2);
    await station('mix');
    expect(hands.actions).toBeLessThan(MOST_TO_MIX);
  });

  test('prints the sheet to weigh by', async () => {
    await hands.press(button('Weigh out a batch'));
    await button(/^Begin with/).waitFor();
    await station('weigh');
    await toContent();
    await hands.press(button(/^Begin with/));
    await button(/^Print the sheet/).waitFor();
    await hands.press(button(/^Print the sheet/));
    await expect.poll(() => page.evaluate('Boolean(window.printed)')).toBe(true);
    expect(await page.locator('.weigh-sheet tbody tr').count()).toBeGreaterThanOrEqual(FOODS.length - 2);
    await station('sheet');
    expect(hands.actions).toBeLessThan(MOST_TO_SHEET);
    if (PICTURES) console.log(`${manner} ${width}: ${hands.actions} actions`);
    expect(bench.complaints).toEqual([]);
  });
});
