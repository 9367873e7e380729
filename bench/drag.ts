/** A slider dragged as a hand drags it, in a real browser: from the input to the frame that shows all that follows from it. */
import type { Page } from 'playwright-core';
import type { Household } from '../src/household/model.ts';
import { type DragTiming, houseToDrag, measureDrag } from '../test/browser/drag-timing.ts';
import { openBench } from '../test/browser/harness.ts';
import { type Figure, figureOf } from './lib/figures.ts';
import type { Cell, Limit, Options, Report } from './lib/report.ts';
import { rounded } from './lib/say.ts';

const FOOD = 'maize';
/** How far the hand goes and comes back, percent of the mix. */
const BY = 4;
const MOST_MS = 32;
/** The page has come to rest by then, and has fetched what it fetches ahead, ms. */
const SETTLED_MS = 5000;
/** The best mix is found, or a proof told of, by then, ms. */
const PROOF_MS = 60_000;

interface Dragged {
  readonly name: string;
  readonly rounds: readonly DragTiming[];
  /** Whether a proof was to run all the while. */
  readonly proof: boolean;
}

export async function run({ quick }: Options): Promise<Report> {
  const rounds = quick ? 1 : 5;
  const dragged = [
    await drags('quiet', houseToDrag(), rounds, false),
    await drags('while a proof runs', provingHouse(), rounds, true),
  ];
  return {
    about: [
      'A mix of 30 foods with the pellet beside it. The hand moves 60 times a second, to and fro. The time of a move is from the input, as the browser dates it, to the frame in which the share, the ranges and the other sliders are painted for it or for a later one. While a proof runs: foods are counted besides, and the best choice of them is being proven by the second worker; a limit is changed before each drag, so that another proof begins.',
    ],
    tables: [
      {
        title: 'From the input to the painted frame',
        of: 'drag',
        columns: [
          'time',
          'work of the page, a move',
          'of that, script',
          'frames a second',
          'moves',
          'never shown',
          'part of it with a proof',
        ],
        rows: dragged.map(({ name, rounds: all }): [string, ...Cell[]] => {
          const shown = shownOf(all);
          const moves = all.reduce((sum, r) => sum + r.moves.length, 0);
          const each = (of: (r: DragTiming) => number, unit: Figure['unit']) => figureOf(all.map(of), unit);
          return [
            name,
            shown.length > 0 ? figureOf(shown, 'ms') : 'none was shown',
            each((r) => r.work.all, 'ms'),
            each((r) => r.work.script, 'ms'),
            each((r) => r.frames, 'a second'),
            moves,
            moves - shown.length,
            each((r) => 100 * r.proving, '%'),
          ];
        }),
      },
    ],
    limits: dragged.map(limit),
  };
}

/** The mix of 30 foods, most of which are to be in it, each with a least share: to prove which of them takes long. */
function provingHouse(): Household {
  const house = houseToDrag();
  return {
    ...house,
    mixes: house.mixes.map((mix) => {
      const { margin: _, ...problem } = mix.problem;
      const foods = problem.foods.map((f, i) => ({
        ...f,
        if_used: Math.min(f.max ?? 100, 3 + ((i * 13) % 7) * 0.3),
      }));
      const rules = [...problem.rules, { count: { at_least: 4.5 }, min: 16 }];
      return { ...mix, problem: { ...problem, foods, rules, objective: 'nearest' as const } };
    }),
  };
}

async function drags(name: string, house: Household, rounds: number, proof: boolean): Promise<Dragged> {
  const bench = await openBench({ house });
  try {
    const page = await bench.page();
    await page.goto(`${bench.url}/#/mix`);
    await page.locator('.window').first().waitFor();
    // From a mix that keeps its rules: there every move has an answer.
    await page.getByRole('region', { name: 'Verdict' }).getByRole('button', { name: 'Make it fit' }).click();
    await page
      .locator('[data-testid="verdict"]:is([data-state="in"], [data-state="if"])')
      .waitFor({ timeout: PROOF_MS });
    // How far shares may move is known.
    await page.locator('.share-row .span').first().waitFor({ timeout: PROOF_MS });
    // Nothing is under way any more that was begun with the page.
    await page.waitForTimeout(SETTLED_MS);
    // The first drag makes ready what every later one finds.
    await measureDrag(page, { food: FOOD, by: BY, legs: 2 });
    const all: DragTiming[] = [];
    for (let k = 0; k < rounds; k++) {
      if (proof) await beginProof(page, 9 + k / 10);
      all.push(await measureDrag(page, { food: FOOD, by: BY }));
    }
    return { name, rounds: all, proof };
  } finally {
    await bench.close();
  }
}

/**
 * Changes a limit, so that the best mix is another, whose proof begins. A drag leaves it going: shares that are not held
 * do not change what is proven.
 */
async function beginProof(page: Page, most: number): Promise<void> {
  const row = page.locator('.share-row').last();
  const field = row.getByLabel('At most');
  if ((await field.count()) === 0) await row.getByRole('button', { name: /^More about/ }).click();
  await field.fill(String(most));
  await field.press('Enter');
  await page.locator('.verdict .so-far').waitFor({ timeout: PROOF_MS });
}

const shownOf = (rounds: readonly DragTiming[]): number[] =>
  rounds.flatMap((r) => r.moves.flatMap(({ shown }) => (shown === undefined ? [] : [shown])));

/** The least part of a drag, over all rounds, during which the proof ran. */
const provingOf = (rounds: readonly DragTiming[]): number => Math.min(...rounds.map((r) => r.proving));

function limit({ name, rounds, proof }: Dragged): Limit {
  const asked = `a dragged slider, 30 foods, ${name}: from input to painted ranges under ${MOST_MS} ms at the 95th percentile`;
  const shown = shownOf(rounds);
  if (shown.length === 0) return { asked, measured: 'no move was shown', met: false };
  const { median, high } = figureOf(shown, 'ms');
  const proved = provingOf(rounds);
  const ended = proof && proved < 1 ? `; the proof ran in ${rounded(100 * proved)} % of one drag` : '';
  return {
    asked,
    measured: `${rounded(high)} ms, median ${rounded(median)} ms${ended}`,
    met: high < MOST_MS && !(proof && proved < 1),
  };
}
