/** How sure a mix is told to be, in words and shape, and fibre read both ways in one picture. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Beside } from '../../src/formulation/problem/problem.ts';
import { demoHousehold } from '../../src/household/demo.ts';
import type { Household, OwnFood } from '../../src/household/model.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { story } from './story.ts';

describe.each([
  ['desktop', DESKTOP],
  ['phone', PHONE],
])('%s', (_name, size) => {
  let bench: Bench;
  let page: Page;

  story();
  beforeAll(async () => {
    bench = await openBench({ margin: true });
    page = await bench.page(size);
    await page.goto(`${bench.url}/#/mix`);
  });
  afterAll(() => bench?.close());

  const verdict = () => page.getByTestId('verdict');
  const balance = () => page.getByRole('button', { name: 'Make it fit', exact: true }).click();

  test('balanced with its margin, the mix is surely in range', async () => {
    await balance();
    await page.waitForSelector('[data-testid="verdict"][data-state="in"][data-sure="true"]');
    expect(await verdict().textContent()).toMatch(/^Surely in range\. Crude protein, fat and crude fibre/);
    expect(await page.locator('.verdict.sure').count()).toBe(1);
  });

  test('fibre is read as crude and as dietary fibre in one picture, with what each says', async () => {
    const fibre = page.locator('.window[data-window="Crude fibre"]');
    expect(await fibre.locator('svg').getAttribute('aria-label')).toMatch(
      /^Crude fibre, 6 to 15 .*: in range.*Read as dietary fibre: in range\. ration [\d.]+, mix [\d.]+, pellet 9\.00\.$/,
    );
    expect(await fibre.locator('svg text', { hasText: 'Read as dietary fibre: in range' }).count()).toBe(1);
    expect(await fibre.locator('.mark').count()).toBe(6);
  });

  test('without it the mix stands at a bound, and is in range on the average only', async () => {
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByLabel('How sure to be').selectOption({ label: 'Averages are enough' });
    await balance();
    await page.waitForSelector('[data-testid="verdict"][data-state="in"][data-sure="false"]');
    expect(await verdict().textContent()).toMatch(
      /^In range if the bags are like the average\..* with a chance of [345]\d %\.$/,
    );
    // Advice that is worked out anew is paler meanwhile.
    await expect.poll(() => page.locator('[aria-busy="true"]').count()).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
  });

  test('the browser had nothing to complain of', () => {
    expect(bench.complaints).toEqual([]);
  });
});

/** The demonstration with a pellet whose label says no more of its fat than "at least 4 %". */
function withOpenFat(): Household {
  const house = demoHousehold();
  const open = <T extends OwnFood | Beside>({
    composition: { FAT: _, ...composition } = {},
    ...food
  }: T) => ({
    ...food,
    composition,
    low: { FAT: 4 },
  });
  const pellet = house.foods.find((f) => f.kind === 'pellet')!;
  return {
    ...house,
    foods: house.foods.map((f) => (f === pellet ? { ...open(f), evidence: undefined } : f)),
    mixes: house.mixes.map((m) => ({ ...m, problem: { ...m.problem, beside: m.problem.beside.map(open) } })),
  };
}

describe('a label that says "at least"', () => {
  let bench: Bench;
  let page: Page;

  story();
  beforeAll(async () => {
    bench = await openBench({ house: withOpenFat() });
    page = await bench.page(DESKTOP);
    await page.goto(`${bench.url}/#/mix`);
  });
  afterAll(() => bench?.close());

  test('never passes for the value: the mix is in range only if, by word and shape', async () => {
    await page.getByRole('button', { name: 'Make it fit' }).click();
    await page.waitForSelector('[data-testid="verdict"][data-state="in"][data-sure="false"]');
    expect(await page.getByTestId('verdict').textContent()).toMatch(
      /^In range if what is not known turns out well\. Fat is not proven: Invented pellet says at least 4 %/,
    );
    expect(await page.locator('.verdict.if').count()).toBe(1);
    const fat = page.locator('.window[data-window="Fat"]');
    expect(await fat.locator('.chip').textContent()).toBe('in range, if …');
  });

  test('the one figure that would settle it is one press away', async () => {
    await page.getByRole('link', { name: 'Write the most fat that Invented pellet holds' }).click();
    await expect
      .poll(() =>
        page.evaluate(`document.activeElement?.closest('[data-amount]')?.getAttribute('data-amount')`),
      )
      .toBe('FAT');
    expect(await axeFindings(page)).toEqual([]);
  });
});

describe.each([
  ['desktop', DESKTOP],
  ['phone', PHONE],
])('nothing moves on a %s', (_name, size) => {
  let bench: Bench;
  let page: Page;

  story();
  beforeAll(async () => {
    bench = await openBench({ margin: true });
    page = await bench.page(size);
    await page.addInitScript(`
      window.shifts = [];
      new PerformanceObserver((list) => {
        for (const { value, sources } of list.getEntries())
          window.shifts.push({ value, of: sources.map(({ node }) => node?.className ?? node?.nodeName).join(', ') });
      }).observe({ type: 'layout-shift', buffered: true });
    `);
    await page.goto(`${bench.url}/#/mix`);
    await page.getByRole('button', { name: 'Make it fit' }).click();
    await page.waitForSelector('[data-testid="verdict"][data-state="in"][data-sure="true"]');
    // Whole grams and advice come after the mix.
    await expect.poll(() => page.locator('[aria-busy="true"]').count()).toBe(0);
  });
  afterAll(() => bench?.close());

  /** Shifts larger than a figure that grows by a digit. */
  const shifts = () => page.evaluate('window.shifts.splice(0)') as Promise<{ value: number; of: string }[]>;
  const large = async () => (await shifts()).filter(({ value }) => value > 0.002);

  test('while a share is dragged', async () => {
    const slider = page.locator('[data-food] input[type=range]').first();
    await slider.focus();
    await shifts();
    for (let i = 0; i < 10; i++) await page.keyboard.press('ArrowRight');
    await expect.poll(() => page.locator('.verdict .notice').textContent()).not.toMatch(/Working/);
    expect(await large()).toEqual([]);
  });

  test('while a share is typed', async () => {
    const field = page.locator('[data-food] input[inputmode]').first();
    await field.focus();
    await shifts();
    await field.pressSequentially('7.5');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.verdict .notice').textContent()).not.toMatch(/Working/);
    expect(await large()).toEqual([]);
  });
});
