/** What-if in a real browser: versions kept, laid side by side, gone back to; undo and redo without end. */
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { story } from './story.ts';

describe.each([
  ['desktop', DESKTOP],
  ['phone', PHONE],
])('on a %s', (_name, size) => {
  let bench: Bench;
  let page: Page;
  let versions: Locator;

  story();
  beforeAll(async () => {
    bench = await openBench();
    page = await bench.page(size);
    await page.goto(`${bench.url}/#/mix`);
    await page.getByRole('tab', { name: 'Versions' }).click();
    versions = page.getByRole('region', { name: 'Versions' });
  });
  afterAll(() => bench?.close());

  const verdictIs = (state: string) => page.waitForSelector(`[data-testid="verdict"][data-state="${state}"]`);
  const share = (name: string) => page.getByLabel(`Share of ${name}`, { exact: true });
  const shareIs = (name: string, percent: string) =>
    expect.poll(() => share(name).inputValue()).toBe(percent);
  const comparison = () => page.getByRole('region', { name: 'Comparison' });
  const undo = () => page.getByRole('button', { name: 'Undo', exact: true });
  const redo = () => page.getByRole('button', { name: 'Redo', exact: true });
  /** Away from text fields, where the keys are the browser's own. */
  const press = async (keys: string) => {
    await page.getByRole('button', { name: 'Print' }).focus();
    await page.keyboard.press(keys);
  };

  async function keep(name: string) {
    await versions.getByLabel('Keep the mix as it stands, as').fill(name);
    await versions.getByRole('button', { name: 'Keep', exact: true }).click();
    await versions.getByRole('button', { name: `Compare ${name}` }).waitFor();
  }

  test('a name with the date of today is suggested, and the mix is kept under another', async () => {
    await verdictIs('out');
    const field = versions.getByLabel('Keep the mix as it stands, as');
    expect(await field.inputValue()).toMatch(/^\d{1,2} [A-Z][a-z]+ 20\d\d$/);
    await versions.getByText('Nothing is kept yet.').waitFor();
    await keep('Even shares');
  });

  test('the mix is changed and kept again, and the two are laid side by side', async () => {
    await page
      .getByRole('region', { name: 'Verdict' })
      .getByRole('button', { name: 'Make it fit', exact: true })
      .click();
    await verdictIs('in');
    await keep('Balanced');
    await versions.getByRole('button', { name: 'Compare Even shares' }).click();
    await comparison().getByLabel('Second').selectOption({ label: 'Balanced' });
    const fat = comparison().locator('[data-window="Fat"] .compare-standing');
    await expect.poll(() => fat.allTextContents()).toHaveLength(2);
    expect(await fat.nth(0).textContent()).toMatch(/Even shares: .*! out/);
    expect(await fat.nth(1).textContent()).toMatch(/Balanced: .*✓ in/);
    const sunflower = await comparison().locator('[data-food="sunflower-seed-shelled"]').textContent();
    expect(sunflower).toMatch(/5\.0.*−\d/);
    const whole = comparison().getByRole('table', { name: 'The two mixes as a whole' });
    const cells = async (row: RegExp) =>
      whole.getByRole('row', { name: row }).getByRole('cell').allTextContents();
    expect((await cells(/^Rules/)).map((c) => c[0])).toEqual(['!', '✓']);
    expect(Number((await cells(/^Variety/))[0])).toBe(20);
    expect(Number((await cells(/^Variety/))[1])).toBeLessThan(20);
    expect(await cells(/^Price per kg/)).toEqual(['not known', 'not known']);
    await comparison().getByText('Foods without a price (20)').waitFor();
  });

  test('the picture needs no sideways scroll and has no serious accessibility finding, by day or night', async () => {
    await comparison().getByText('All figures as a table').click();
    expect(await overflow(page)).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await axeFindings(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'light' });
  });

  test('going back takes the shares of then, and is itself undone', async () => {
    const balanced = await share('Sunflower seed, shelled').inputValue();
    expect(balanced).not.toBe('5');
    await versions.getByRole('button', { name: 'Go back to this: Even shares' }).click();
    await shareIs('Sunflower seed, shelled', '5');
    await verdictIs('out');
    await undo().click();
    await shareIs('Sunflower seed, shelled', balanced);
    await redo().click();
    await shareIs('Sunflower seed, shelled', '5');
    await press('Control+z');
    await shareIs('Sunflower seed, shelled', balanced);
    await press('Control+y');
    await shareIs('Sunflower seed, shelled', '5');
    await press('Meta+z');
    await shareIs('Sunflower seed, shelled', balanced);
    await press('Control+Shift+Z');
    await shareIs('Sunflower seed, shelled', '5');
  });

  test('in a text field the keys undo the typing, not the mix', async () => {
    await versions.getByLabel('Keep the mix as it stands, as').fill('Something');
    await page.keyboard.press('Control+z');
    await shareIs('Sunflower seed, shelled', '5');
    expect(await redo().isDisabled()).toBe(true);
  });

  test('steps are kept while another mix is at hand', async () => {
    await page.getByRole('button', { name: 'Copy' }).click();
    await page.getByLabel('Other mixes').waitFor();
    expect(await undo().isDisabled()).toBe(true);
    await page.getByLabel('Other mixes').selectOption({ label: 'First mix' });
    expect(await undo().isDisabled()).toBe(false);
    while (!(await undo().isDisabled())) await undo().click();
    await shareIs('Sunflower seed, shelled', '5');
    await verdictIs('out');
    while (!(await redo().isDisabled())) await redo().click();
    await shareIs('Sunflower seed, shelled', '5');
    await press('Control+z');
    await verdictIs('in');
  });

  test('a change that waits for the one before to be saved is not lost when another mix is made', async () => {
    let release = () => {};
    const released = new Promise<void>((done) => {
      release = done;
    });
    await page.route('**/api/mixes/demo-mix', async (route) => {
      await released;
      await route.continue();
    });
    const sent = page.waitForRequest('**/api/mixes/demo-mix');
    await share('Maize').fill('3');
    await page.keyboard.press('Enter');
    await sent;
    await share('Maize').fill('4');
    await page.keyboard.press('Enter');
    await shareIs('Maize', '4');
    const again = page.waitForRequest('**/api/mixes/demo-mix');
    await page.getByRole('button', { name: 'Copy' }).click();
    await page.getByLabel('Other mixes').selectOption({ label: 'First mix' });
    release();
    const body = (await again).postDataJSON() as { shares: Record<string, number> };
    expect(body.shares.maize).toBe(4);
    await page.unroute('**/api/mixes/demo-mix');
    await press('Control+z');
  });

  test('a version is renamed, deleted with one press and brought back', async () => {
    await versions.getByLabel('Name of the version Balanced').fill('In range');
    await page.keyboard.press('Enter');
    await versions.getByRole('button', { name: 'Delete In range' }).click();
    await versions.getByText('“In range” is deleted.').waitFor();
    expect(await versions.getByRole('button', { name: 'Compare In range' }).count()).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
    await page.keyboard.press('Enter');
    await versions.getByRole('button', { name: 'Compare In range' }).waitFor();
    await versions.getByRole('button', { name: 'Delete Even shares' }).click();
    await versions.getByText('“Even shares” is deleted.').waitFor();
  });

  test('after a reload the versions are still there, and the deleted one is not', async () => {
    await page.getByText('Saved', { exact: true }).waitFor();
    await page.reload();
    await page.getByRole('tab', { name: 'Versions' }).click();
    await versions.getByRole('button', { name: 'Compare In range' }).click();
    expect(await versions.getByRole('button', { name: /^Compare / }).count()).toBe(1);
    await comparison().getByText('The same in both:').waitFor();
    expect(await comparison().locator('.compare-food').count()).toBe(0);
    expect(await overflow(page)).toBe(0);
  });

  test('the browser had nothing to complain of', () => {
    expect(bench.complaints).toEqual([]);
  });
});
