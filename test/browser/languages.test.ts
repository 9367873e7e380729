/**
 * Every screen in each language, by day and by night: it keeps the rules of WCAG 2.2 AA that a program can check, is no
 * wider than a phone, nor than a desk at twice the size of type.
 */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { wordsIn } from '../../src/words/languages.ts';
import { LANGUAGES, PLAIN_MANNER } from '../../src/words/manner.ts';
import { type Bench, DESKTOP, openBench, overflow, PHONE, wcagFindings } from './harness.ts';
import { expectShown, goTo, SCREENS, settled } from './screens.ts';

/** What stands behind a press, and is a page of its own to who opens it. */
const ROOMS = [
  ...['about', 'weight', 'food', 'left', 'trials', 'life', 'vet'].map(
    (part) => `animals/demo-animal/${part}`,
  ),
  'animals/new',
  'animals/sitter',
  'household/card',
];

/** A desk of 1280 by 900 with its type at 200 %. */
const ZOOMED = { width: DESKTOP.width / 2, height: DESKTOP.height / 2 };

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench?.close());

async function pageIn(language: string): Promise<Page> {
  const page = await bench.page(DESKTOP);
  await page.addInitScript(`localStorage.setItem('pouchful.manner', '{"language":"${language}"}')`);
  await page.goto(bench.url);
  return page;
}

describe.each(LANGUAGES)('in %s', (language) => {
  test('every screen is within reach and fits', async () => {
    const page = await pageIn(language);
    const { frame } = await wordsIn({ ...PLAIN_MANNER, language });
    await page.getByRole('link', { name: frame.places.foods.long, exact: true }).waitFor();
    expect(await page.locator('html').getAttribute('lang')).toMatch(new RegExp(`^${language}`));
    for (const screen of [...SCREENS, ...ROOMS]) {
      await goTo(page, `/${screen}`);
      await expectShown(page, screen);
      await settled(page);
      for (const scheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' });
        expect(await wcagFindings(page), `${screen}, ${scheme}`).toEqual([]);
      }
      for (const size of [PHONE, ZOOMED]) {
        await page.setViewportSize(size);
        expect(await overflow(page), `${screen} at ${size.width}`).toBeLessThanOrEqual(0);
      }
      await page.setViewportSize(DESKTOP);
    }
    expect(bench.complaints).toEqual([]);
  });
});
