/**
 * What ten years of keeping cost: every screen beside the same screen of the demonstration, the first opening after the server
 * started, and a pour on the scale.
 */

import type { Household } from '../src/household/model.ts';
import { type Bench, openBench, PHONE } from '../test/browser/harness.ts';
import { NOW, SCREENS } from '../test/browser/ten-years-screens.ts';
import { tenYears } from '../test/household/ten-years.ts';
import { readyFrom } from './in-browser/watch.ts';
import { figureOf, ratioOf } from './lib/figures.ts';
import { type Opening, openedAt } from './lib/opening.ts';
import type { Cell, Limit, Options, Report, Table } from './lib/report.ts';
import { rounded } from './lib/say.ts';

const SCREEN_MS = 1000;
const POUR_MS = 100;
const OPEN = 'open';

interface Screen {
  readonly hash: string;
  readonly many: readonly Opening[];
  /** The demonstration's, where it has that screen. */
  readonly few: readonly Opening[];
}

export async function run({ quick }: Options): Promise<Report> {
  const house = withOpenBatch(tenYears({ until: new Date().toISOString().slice(0, 10) }));
  const starts: Opening[] = [];
  for (let k = 0; k < (quick ? 1 : 3); k++) starts.push(await firstAfterStart(house));
  const old = await openBench({ house });
  const fresh = await openBench({ margin: true });
  try {
    const screens: Screen[] = [];
    for (const { hash, ready, demo } of SCREENS) {
      const [many, few]: [Opening[], Opening[]] = [[], []];
      for (let k = 0; k < (quick ? 1 : 3); k++) {
        many.push(await opened(old, hash, ready));
        if (demo) few.push(await opened(fresh, hash, ready));
      }
      screens.push({ hash, many, few });
    }
    const pours = await poured(old, quick ? 4 : 16);
    return {
      about: [
        'Five animals, 500 batches of 20 foods, 2,000 packs, 300 own foods, 100 mixes, ten years of weighings. Every screen is opened cold, as on a first load.',
      ],
      tables: [screensTable(screens), startsTable(starts), poursTable(pours)],
      limits: [screensLimit(screens), poursLimit(pours)],
    };
  } finally {
    await old.close();
    await fresh.close();
  }
}

async function opened(bench: Bench, hash: string, ready: string): Promise<Opening> {
  const page = await bench.page();
  const opening = await openedAt(page, `${bench.url}/#/${hash}`, readyFrom(ready));
  await page.context().close();
  return opening;
}

/** Now, opened as soon as the server stands, in a browser that was just started: nothing is in their memory. */
async function firstAfterStart(house: Household): Promise<Opening> {
  const bench = await openBench({ house });
  try {
    return await opened(bench, NOW.hash, NOW.ready);
  } finally {
    await bench.close();
  }
}

const usable = (all: readonly Opening[]) => all.map((o) => o.usable);

function screensTable(screens: readonly Screen[]): Table {
  return {
    title: 'Every screen until it can be used',
    of: 'screen',
    columns: ['ten years', 'work of the page', 'the demonstration', 'work, ratio', 'nodes', 'rounds'],
    rows: screens.map(({ hash, many, few }): [string, ...Cell[]] => {
      const work = (all: readonly Opening[]) => all.map((o) => o.work);
      return [
        hash,
        figureOf(usable(many), 'ms'),
        figureOf(work(many), 'ms'),
        few.length > 0 ? figureOf(usable(few), 'ms') : '',
        few.length > 0 ? ratioOf(work(many), work(few)) : '',
        many[0]?.nodes ?? 0,
        many.length,
      ];
    }),
  };
}

function screensLimit(screens: readonly Screen[]): Limit {
  const slow = screens
    .map(({ hash, many }) => ({ hash, ms: figureOf(usable(many), 'ms').median }))
    .sort((a, b) => b.ms - a.ms);
  const over = slow.filter((s) => s.ms >= SCREEN_MS);
  const named = (of: typeof slow) => of.map((s) => `${s.hash} ${rounded(s.ms)} ms`).join(', ');
  return {
    asked: `ten-year household: every screen can be used in under ${SCREEN_MS} ms`,
    measured: over.length === 0 ? `the slowest: ${named(slow.slice(0, 1))}` : `over it: ${named(over)}`,
    met: over.length === 0,
  };
}

function startsTable(starts: readonly Opening[]): Table {
  return {
    title: 'The first opening after server and browser started',
    of: 'screen',
    columns: ['ten years', 'work of the page', 'rounds'],
    rows: [
      [
        NOW.hash,
        figureOf(usable(starts), 'ms'),
        figureOf(
          starts.map((o) => o.work),
          'ms',
        ),
        starts.length,
      ],
    ],
  };
}

interface Pours {
  /** From the press until the screen asks for the next food, ms. */
  readonly shown: readonly number[];
  /** From the press until the server has answered, ms. */
  readonly kept: readonly number[];
}

/** The last batch once more, of which nothing is poured yet. */
function withOpenBatch(house: Household): Household {
  const last = house.batches.at(-1);
  if (!last) throw new Error('no batch in ten years');
  const { finishedAt: _, left: __, ...plan } = last;
  return { ...house, batches: [...house.batches, { ...plan, id: OPEN, pours: [] }] };
}

/** Pours one food of the open batch after the other on a phone, each at its target. */
async function poured(bench: Bench, count: number): Promise<Pours> {
  const page = await bench.page(PHONE, true);
  await page.goto(`${bench.url}/#/weigh/${OPEN}`);
  const target = page.getByTestId('target');
  await target.waitFor();
  const shown: number[] = [];
  const kept: number[] = [];
  for (let k = 0; k < count; k++) {
    const grams = /[\d.]+/.exec((await target.textContent()) ?? '')?.[0] ?? '1';
    await page.getByRole('textbox').first().fill(grams);
    const answer = page.waitForResponse((r) => /\/pours$/.test(new URL(r.url()).pathname));
    shown.push(Number(await page.evaluate(PRESS)));
    const { requestStart, responseEnd } = (await answer).request().timing();
    kept.push(responseEnd - Math.max(0, requestStart));
  }
  await page.context().close();
  return { shown, kept };
}

/** Presses "Poured" and waits until the running total has changed and is painted. Answers with ms. */
const PRESS = `new Promise((done) => {
  const total = () => document.querySelector('[data-testid="running-total"]')?.textContent;
  const before = total();
  const button = [...document.querySelectorAll('button')].find((b) => b.textContent.startsWith('Poured'));
  const start = performance.now();
  const look = () => {
    if (total() === before) requestAnimationFrame(look);
    else requestAnimationFrame(() => setTimeout(() => done(performance.now() - start), 0));
  };
  button.click();
  look();
})`;

function poursTable({ shown, kept }: Pours): Table {
  return {
    title: 'A pour on the phone beside the scale',
    of: 'until',
    columns: ['time', 'pours'],
    rows: [
      ['the new total is painted', figureOf(shown, 'ms'), shown.length],
      ['the server has it on disk and has answered (the request alone)', figureOf(kept, 'ms'), kept.length],
    ],
  };
}

function poursLimit({ shown, kept }: Pours): Limit {
  const [seen, saved] = [figureOf(shown, 'ms'), figureOf(kept, 'ms')];
  return {
    asked: `ten-year household: a pour under ${POUR_MS} ms`,
    measured: `${rounded(seen.median)} ms until painted, ${rounded(saved.median)} ms of the server`,
    met: seen.median < POUR_MS && saved.median < POUR_MS,
  };
}
