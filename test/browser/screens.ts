/** Every screen of the client, and what each must show whatever befalls it. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

export const SCREENS = [
  'today',
  'foods',
  'targets',
  'mix',
  'calendar',
  'shopping',
  'cupboard',
  'drying',
  'weigh',
  'animals',
  'household',
] as const;

/** A screen that shows nothing after that is white, ms. */
const SOON = 60_000;

/** Opens an address of the page that is open already. */
export async function goTo(page: Page, address: string): Promise<void> {
  await page.evaluate(`location.hash = ${JSON.stringify(address)}`);
}

/** Waits for a main part with a heading and text to read: the opposite of a white page. */
export async function expectShown(page: Page, what: string): Promise<void> {
  const isShown = () =>
    page.evaluate(`(() => {
      const main = document.querySelector('main');
      const headed = [...document.querySelectorAll('main h1, main h2')].some((h) => h.textContent.trim());
      return headed && main.innerText.trim().length > 10 && !main.textContent.includes('Opening the ');
    })()`);
  await expect.poll(isShown, { message: `${what} is white`, timeout: SOON }).toBe(true);
  expect(await page.locator('main').count(), what).toBe(1);
}

/** Waits until nothing is worked out any more, or the page has said that it takes long. */
export async function settled(page: Page): Promise<void> {
  const waits = () =>
    page.evaluate(`(() => {
      const text = document.body.textContent;
      return /Working|Searching…|Looking at /.test(text) && !text.includes('longer to work out');
    })()`);
  await expect.poll(waits, { message: 'still at work', timeout: SOON }).toBe(false);
}

/** What the page says of a screen that failed; empty where none did. */
export async function failure(page: Page): Promise<string> {
  const failed = page.locator('main[data-failed]');
  return (await failed.count()) === 0 ? '' : ((await failed.textContent()) ?? '');
}
