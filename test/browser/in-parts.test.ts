/** What a page asks the server for, and when: everything large comes compressed, and what a screen does not draw from last. */
import { afterAll, beforeAll, expect, it } from 'vitest';
import { readyFrom } from '../../bench/in-browser/watch.ts';
import { type Kind, openedAt } from '../../bench/lib/opening.ts';
import { tenYears } from '../household/ten-years.ts';
import { type Bench, DESKTOP, openBench, PHONE } from './harness.ts';
import { SCREENS } from './ten-years-screens.ts';

const house = tenYears({ size: 0.2, until: new Date().toISOString().slice(0, 10) });
let bench: Bench;
beforeAll(async () => {
  bench = await openBench({ house });
});
afterAll(async () => {
  expect(bench.complaints).toEqual([]);
  await bench.close();
});

/** Letters. */
const LARGE = 10_000;

it('nothing large is sent uncompressed', async () => {
  const page = await bench.page();
  const encodings = new Map<string, string | undefined>();
  page.context().on('response', (answer) => {
    if (answer.status() === 200) encodings.set(answer.url(), answer.headers()['content-encoding']);
  });
  for (const { hash, ready } of SCREENS.filter((s) => s.demo)) {
    await page.goto('about:blank');
    await page.goto(`${bench.url}/#/${hash}`);
    await page.locator(ready).first().waitFor();
  }
  const plain = [...encodings.keys()].filter((url) => !encodings.get(url) && !url.endsWith('/api/events'));
  const sizes = await Promise.all(
    plain.map(async (url) => ({ url, size: (await (await fetch(url)).text()).length })),
  );
  expect(sizes.filter(({ size }) => size > LARGE)).toEqual([]);
  expect([...encodings.values()].filter((e) => e === 'br').length).toBeGreaterThan(20);
});

/** Of the screens of each group, one for each place that there is. */
const placeOf = (hash: string) => hash.split('/')[0];
const WITHOUT_WEIGHTS = ['weigh', 'calendar', 'shopping', 'cupboard', 'drying', 'mix', 'foods', 'targets'];

it.each([
  ['weighings', SCREENS.filter((s) => s.demo && WITHOUT_WEIGHTS.includes(placeOf(s.hash) ?? ''))],
  [
    'feedings',
    SCREENS.filter((s) => /^(targets|mix|foods|household($|.(backups|card|devices|language)))/.test(s.hash)),
  ],
] as const)(
  'screens stand before the %s are here, and those that draw from them wait',
  async (section, early) => {
    const page = await bench.page();
    const held: (() => void)[] = [];
    let isHeld = true;
    await page.route(/\/api\/records\?.*of=(feedings|weighings)/, async (route) => {
      if (isHeld && route.request().url().includes(`of=${section}&`))
        await new Promise<void>((go) => held.push(go));
      await route.continue();
    });
    await page.goto(bench.url);
    // Now draws what it has; no animal is judged by a part of what was written down of it.
    await page.getByText('Reading what was written down').waitFor();
    await page.getByRole('heading', { name: 'Now' }).waitFor();
    expect(await page.locator('.today-errands, .today-animals').count()).toBe(0);
    for (const { hash, ready } of early) {
      await page.evaluate(`location.hash = ${JSON.stringify(`#/${hash}`)}`);
      await page.locator(ready).first().waitFor();
    }
    await page.evaluate("location.hash = '#/animals/animal-1/weight'");
    await page.getByText('Opening').first().waitFor();
    expect(await page.locator('.weight-part').count()).toBe(0);
    expect(held.length).toBeGreaterThan(0);
    isHeld = false;
    for (const go of held) go();
    await page.locator('.weight-part svg').first().waitFor();
  },
);

it('says so where the rest cannot be had, and draws the screen once it can', async () => {
  const page = await bench.page();
  let isGone = true;
  let lose: () => void = () => {};
  const lost = new Promise<void>((go) => {
    lose = go;
  });
  await page.route(/of=weighings/, async (route) => {
    await lost;
    await (isGone ? route.abort() : route.continue());
  });
  await page.goto(`${bench.url}/#/cupboard`);
  await page.locator('.lot-food').first().waitFor();
  await page.evaluate("location.hash = '#/today'");
  await page.getByText('Reading what was written down').waitFor();
  lose();
  await page.getByRole('alert').first().waitFor();
  isGone = false;
  // Where it asked again by itself, there is nothing to press any more.
  const now = page.locator('.today-animals').first();
  const again = page.getByRole('button', { name: 'Try again' });
  await Promise.race([again.click(), now.waitFor()]);
  await now.waitFor();
  // The browser complains of each request that was cut off.
  const cut = bench.complaints.splice(0);
  expect(cut.every((c) => /ERR_FAILED|Failed to load/.test(c))).toBe(true);
});

/** Bytes, compressed, of the page's own script until a place stands with all its sentences: the limits less a margin. */
it.each([
  ['today', DESKTOP, 147_000],
  ['weigh', PHONE, 200_000],
] as const)('%s comes with little script, cold, and the solver apart', async (hash, size, most) => {
  const newcomer = await openBench({ margin: true });
  try {
    const page = await newcomer.page(size);
    const ready = readyFrom(SCREENS.find((s) => s.hash === hash)?.ready ?? '');
    const { sent } = await openedAt(page, `${newcomer.url}/#/${hash}`, ready, true);
    const until = (kind: Kind) =>
      sent.filter((s) => s.kind === kind && !s.later).reduce((all, s) => all + s.bytes, 0);
    expect(until('script')).toBeGreaterThan(100_000);
    expect(until('script')).toBeLessThan(most);
    // What judges a mix is the worker's; its own file is small, and opened before that.
    expect(sent.filter((s) => s.kind === 'script' && /formulation|solver|list-/.test(s.path))).toEqual([]);
    const worker = sent.find((s) => /formulation\.worker/.test(s.path));
    expect(worker?.kind).toBe('worker');
    expect(worker?.bytes).toBeLessThan(15_000);
    expect(sent.filter((s) => /\.(wasm|bin)$/.test(s.path) && s.bytes === 0)).toEqual([]);
    expect(newcomer.complaints).toEqual([]);
  } finally {
    await newcomer.close();
  }
});
