/** A slider dragged as a hand drags it, in a real browser: from the input to the frame that shows all that follows from it. */
import type { Page } from 'playwright-core';
import type { Household } from '../src/household/model.ts';
import { type DragTiming, houseToDrag, houseToProve, measureDrag } from '../test/browser/drag-timing.ts';
import { openBench } from '../test/browser/harness.ts';
import { sharedWithProof, watchProof } from '../test/browser/proof-steps.ts';
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
/** So long before and after a drag the steps of a proof are counted, ms. */
const COUNTED_MS = 500;

interface Round extends DragTiming {
  /** Steps of the proof before the hand takes hold and after it has let go, each second. */
  readonly before: number | undefined;
  readonly after: number | undefined;
}

interface Dragged {
  readonly name: string;
  readonly rounds: readonly Round[];
  /** Whether a proof was to run all the while. */
  readonly proof: boolean;
}

export async function run({ quick }: Options): Promise<Report> {
  const rounds = quick ? 1 : 5;
  const dragged = [
    await drags('quiet', houseToDrag(), rounds, false),
    await drags('while a proof runs', houseToProve(), rounds, true),
  ];
  return {
    about: [
      'A mix of 30 foods with the pellet beside it. The hand moves 60 times a second, to and fro. The time of a move is from the input, as the browser dates it, to the frame in which the share, the ranges and the other sliders are painted for it or for a later one. While a proof runs: foods are counted besides, and the best choice of them is being proven by the second worker; a limit is changed before each drag, so that another proof begins. The proof pauses while the hand moves and goes on once it rests, which its steps show: they are counted for half a second before the drag, all through it, and for half a second after it.',
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
          'part of it with a proof under way',
          'its steps before',
          'while the hand moves',
          'and after',
        ],
        rows: dragged.map(({ name, rounds: all }): [string, ...Cell[]] => {
          const shown = shownOf(all);
          const moves = all.reduce((sum, r) => sum + r.moves.length, 0);
          const each = (of: (r: DragTiming) => number, unit: Figure['unit']) => figureOf(all.map(of), unit);
          const steps = (of: (r: Round) => number | undefined): Cell => {
            const seen = all.flatMap((r) => of(r) ?? []);
            return seen.length > 0 ? figureOf(seen, 'a second') : 'none';
          };
          return [
            name,
            shown.length > 0 ? figureOf(shown, 'ms') : 'none was shown',
            each((r) => r.work.all, 'ms'),
            each((r) => r.work.script, 'ms'),
            each((r) => r.frames, 'a second'),
            moves,
            moves - shown.length,
            each((r) => 100 * r.proving, '%'),
            steps((r) => r.before),
            steps((r) => r.steps),
            steps((r) => r.after),
          ];
        }),
      },
    ],
    limits: dragged.map(limit),
  };
}

async function drags(name: string, house: Household, rounds: number, proof: boolean): Promise<Dragged> {
  const bench = await openBench({ house });
  try {
    const page = await bench.page();
    await watchProof(page);
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
    const all: Round[] = [];
    for (let k = 0; k < rounds; k++) {
      if (proof) await beginProof(page, 9 + k / 10);
      const before = await stepsNow(page);
      const drag = await measureDrag(page, { food: FOOD, by: BY });
      all.push({ ...drag, before, after: await stepsNow(page) });
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
  const told = page.locator('.verdict .so-far');
  await field.fill(String(most));
  await field.press('Enter');
  // What was told of the one before goes first.
  await told.waitFor({ state: 'detached', timeout: PROOF_MS });
  await told.waitFor({ timeout: PROOF_MS });
}

/** How many steps a proof takes each second; undefined where none was begun, or none can be seen. */
async function stepsNow(page: Page): Promise<number | undefined> {
  const from = await sharedWithProof(page);
  const start = performance.now();
  await page.waitForTimeout(COUNTED_MS);
  const to = await sharedWithProof(page);
  return from && to && (1000 * (to.steps - from.steps)) / (performance.now() - start);
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
  const ended =
    proof && proved < 1 ? `; the proof was under way in ${rounded(100 * proved)} % of one drag` : '';
  // One that only stood still, and never went on, was no proof.
  const stuck = proof && rounds.some((r) => r.after === 0);
  const paused = proof
    ? `; it pauses while the hand moves, and ${stuck ? 'did not go on' : 'goes on'} after`
    : '';
  return {
    asked,
    measured: `${rounded(high)} ms, median ${rounded(median)} ms${ended}${paused}`,
    met: high < MOST_MS && !(proof && proved < 1) && !stuck,
  };
}
