/** A proof that is under way stands still while a hand moves a slider, and goes on when the hand rests. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { houseToProve } from './drag-timing.ts';
import { type Bench, openBench } from './harness.ts';
import { sharedWithProof, watchProof } from './proof-steps.ts';
import { story } from './story.ts';

const FOOD = 'maize';
/** Foods of the mix whose proof ends soon. */
const SOON = 14;

/**
 * A hand that moves the slider to and fro in the page itself, from when the proof has come some way.
 * `still` is settled once the hand has moved a hundred times in a row, never long after the move before, and the proof
 * took no step all the while.
 */
const HAND = `(food) => {
  const track = document.querySelector('.share-row[data-food="' + food + '"] .track');
  const { left, width, top, height } = track.getBoundingClientRect();
  const y = top + height / 2;
  const x = left + width / 3;
  const tell = (type, clientX, buttons) =>
    track.dispatchEvent(new PointerEvent(type, { bubbles: true, pointerId: 1, isPrimary: true, button: 0, buttons, clientX, clientY: y }));
  const steps = () => Atomics.load(window.sharedWithProof, 1);
  let still;
  const hand = (window.testHand = {
    still: new Promise((settled) => { still = settled; }),
    letGo() { clearInterval(hand.moving); tell('pointerup', x, 0); },
    cancel() { clearInterval(hand.moving); tell('pointercancel', x, 0); },
    drop() { clearInterval(hand.moving); },
  });
  const from = window.sharedWithProof ? steps() : 0;
  let [moves, row, seen, last] = [0, 0, -1, 0];
  hand.moving = setInterval(() => {
    if (!window.sharedWithProof || steps() < from + 500) return;
    if (moves++ === 0) tell('pointerdown', x, 1);
    const now = performance.now();
    const same = steps() === seen && now - last < 250;
    row = same ? row + 1 : 0;
    [seen, last] = [steps(), now];
    tell('pointermove', x + (moves % 2) * 9, 1);
    if (row === 100) still(seen);
  }, 16);
}`;

const row = (page: Page, food = FOOD) => page.locator(`.share-row[data-food="${food}"]`);
const soFar = (page: Page) => page.locator('.verdict .so-far');
const move = async (page: Page) => (await sharedWithProof(page))?.move;
const steps = async (page: Page) => (await sharedWithProof(page))?.steps ?? 0;
const spans = (page: Page) =>
  page
    .locator('.share-row .span')
    .evaluateAll((all) => all.map((one) => (one as unknown as { title: string }).title));
const hold = (page: Page) => page.evaluate(`(${HAND})(${JSON.stringify(FOOD)})`);
/** @returns how many steps the proof had taken while the hand moved and it took none */
const still = (page: Page) => page.evaluate('window.testHand.still') as Promise<number>;

describe('on a page that the browser keeps apart', () => {
  let bench: Bench;
  let page: Page;

  story();
  beforeAll(async () => {
    bench = await openBench({ house: houseToProve(SOON) });
    page = await bench.page();
    await watchProof(page);
    await page.goto(`${bench.url}/#/mix`);
    await row(page).waitFor();
  });
  afterAll(() => bench?.close());

  /** Has another proof begin. */
  async function begin(most: number) {
    const last = page.locator('.share-row').last();
    const field = last.getByLabel('At most');
    if ((await field.count()) === 0) await last.getByRole('button', { name: /^More about/ }).click();
    await field.fill(String(most));
    await field.press('Enter');
  }

  test('it takes no step while the hand moves', async () => {
    expect(await page.evaluate('crossOriginIsolated')).toBe(true);
    await hold(page);
    const stood = await still(page);
    expect(stood).toBeGreaterThan(500);
    expect(await page.locator('.share-row .span').count()).toBe(0);
  });

  test('let go of, it goes on to the answer that it comes to undisturbed', async () => {
    const stood = await steps(page);
    await page.evaluate('window.testHand.letGo()');
    await expect.poll(() => move(page)).toBe(0);
    await expect.poll(() => steps(page)).toBeGreaterThan(stood);
    await page.locator('.share-row .span').first().waitFor();
    const came = await spans(page);
    await page.getByText('Saved', { exact: true }).waitFor();
    await page.reload();
    await page.locator('.share-row .span').first().waitFor();
    expect(await spans(page)).toEqual(came);
  });

  test('cancelled, the hand rests', async () => {
    await begin(9);
    await hold(page);
    await still(page);
    await page.evaluate('window.testHand.cancel()');
    await expect.poll(() => move(page)).toBe(0);
  });

  test('a key moves it as a hand does, until it is lifted or goes elsewhere', async () => {
    const slider = row(page).getByRole('slider');
    await slider.focus();
    await page.keyboard.down('ArrowRight');
    await expect.poll(() => move(page)).toBeGreaterThan(0);
    await page.keyboard.up('ArrowRight');
    await expect.poll(() => move(page)).toBe(0);
    await page.keyboard.down('ArrowLeft');
    await expect.poll(() => move(page)).toBeGreaterThan(0);
    await row(page).getByRole('textbox').first().focus();
    await expect.poll(() => move(page)).toBe(0);
    await page.keyboard.up('ArrowLeft');
  });

  test('one that waits is stopped as any other, and the hand goes on', async () => {
    await begin(8);
    await soFar(page).getByRole('button', { name: 'Stop here' }).waitFor();
    await hold(page);
    await still(page);
    expect(page.workers()).toHaveLength(2);
    await page.evaluate(`document.querySelector('.verdict .so-far button').click()`);
    await expect.poll(() => page.workers().length).toBe(1);
    const moved = await move(page);
    await expect.poll(() => move(page)).toBeGreaterThan(moved ?? 0);
  });

  test('with the screen left, the hand rests', async () => {
    expect(await move(page)).toBeGreaterThan(0);
    await page.evaluate(`location.hash = '#/today'`);
    await expect.poll(() => move(page)).toBe(0);
    await page.evaluate('window.testHand.drop()');
  });

  test('the browser had nothing to complain of', () => {
    expect(bench.complaints).toEqual([]);
  });
});

test('elsewhere a slider moves and a proof goes on as well, and nothing is shared', async () => {
  const bench = await openBench({ house: houseToProve(SOON) });
  try {
    const page = await bench.page();
    await watchProof(page);
    await page.route(`${bench.url}/`, async (route) => {
      const response = await route.fetch();
      const { 'cross-origin-opener-policy': _, ...headers } = response.headers();
      await route.fulfill({ response, headers });
    });
    await page.goto(`${bench.url}/#/mix`);
    expect(await page.evaluate('crossOriginIsolated')).toBe(false);
    const share = async () => Number(await row(page).locator('.number input').inputValue());
    const slider = row(page).getByRole('slider');
    await slider.focus();
    const before = await share();
    await page.keyboard.press('ArrowRight');
    await expect.poll(share).toBeGreaterThan(before);
    await page.locator('.share-row .span').first().waitFor();
    expect(await sharedWithProof(page)).toBeUndefined();
    expect(bench.complaints).toEqual([]);
  } finally {
    await bench.close();
  }
});
