/** A slider dragged as a hand drags it, in a real browser: from the input to the frame that shows all that follows from it. */
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
/** A proof is told of by then, ms. */
const PROOF_MS = 20_000;

interface Dragged {
  readonly name: string;
  readonly rounds: readonly DragTiming[];
  /** Whether a proof still ran when the last drag had ended; undefined where none was to. */
  readonly proving?: boolean;
}

export async function run({ quick }: Options): Promise<Report> {
  const rounds = quick ? 1 : 5;
  const dragged = [
    await drags('quiet', houseToDrag(), rounds, false),
    await drags('while a proof runs', provingHouse(), rounds, true),
  ];
  return {
    about: [
      'A mix of 30 foods with the pellet beside it. The hand moves 60 times a second, to and fro. The time of a move is from the input, as the browser dates it, to the frame in which the share, the ranges and the other sliders are painted for it or for a later one. While a proof runs: foods are counted besides, and the best choice of them is being proven.',
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
          ];
        }),
      },
    ],
    limits: dragged.map(limit),
  };
}

/** The mix of 30 foods with foods to be counted: the proof of the best choice takes long. */
function provingHouse(): Household {
  const house = houseToDrag();
  return {
    ...house,
    mixes: house.mixes.map((mix) => {
      const { margin: _, ...problem } = mix.problem;
      const foods = problem.foods.map((f, i) => ({ ...f, if_used: 2 + ((i * 13) % 7) * 0.3 }));
      const rules = [...problem.rules, { count: { at_least: 4 }, min: 12 }];
      return { ...mix, problem: { ...problem, foods, rules, objective: 'varied' as const } };
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
    await page.locator('[data-testid="verdict"]:is([data-state="in"], [data-state="if"])').waitFor();
    // Nothing is under way any more that was begun with the page.
    await page.waitForTimeout(SETTLED_MS);
    const going = page.getByRole('button', { name: 'Stop here' });
    // Where no proof is told of, that is said in the document.
    if (proof) await going.waitFor({ timeout: PROOF_MS }).catch(() => {});
    // The first drag makes ready what every later one finds.
    await measureDrag(page, { food: FOOD, by: BY, legs: 2 });
    const all: DragTiming[] = [];
    for (let k = 0; k < rounds; k++) all.push(await measureDrag(page, { food: FOOD, by: BY }));
    return { name, rounds: all, ...(proof && { proving: (await going.count()) > 0 }) };
  } finally {
    await bench.close();
  }
}

const shownOf = (rounds: readonly DragTiming[]): number[] =>
  rounds.flatMap((r) => r.moves.flatMap(({ shown }) => (shown === undefined ? [] : [shown])));

function limit({ name, rounds, proving }: Dragged): Limit {
  const asked = `a dragged slider, 30 foods, ${name}: from input to painted ranges under ${MOST_MS} ms at the 95th percentile`;
  const shown = shownOf(rounds);
  if (shown.length === 0) return { asked, measured: 'no move was shown', met: false };
  const { median, high } = figureOf(shown, 'ms');
  const ended = proving === false ? '; no proof ran any more at its end' : '';
  return {
    asked,
    measured: `${rounded(high)} ms, median ${rounded(median)} ms${ended}`,
    met: high < MOST_MS && proving !== false,
  };
}
