/** How long a dragged slider takes until what follows from it is painted, measured in the page as a hand drags. */
import type { CDPSession, Page } from 'playwright-core';
import type { Rule } from '../../src/formulation/problem/problem.ts';
import { demoHousehold } from '../../src/household/demo.ts';
import type { Household, Mix } from '../../src/household/model.ts';
import { ingredientFromReference } from '../../src/household/reckon/mix/mix-edits.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { PATIENCE_MS } from './patience.ts';

/** A mouse or finger tells of its moves this often, ms. */
const HAND_MS = 1000 / 60;

/** Foods that make a mix of thirty of the demonstration's twenty. */
const MORE = [
  'sr28:20005',
  'sr28:20035',
  'sr28:20067',
  'sr28:12014',
  'sr28:11432',
  'sr28:20033',
  'sr28:20140',
  'sr28:02029',
  'sr28:20078',
  'sr28:20062',
];

/** With those of the target and the groups, eighteen rules. */
const RULES: readonly Rule[] = [
  { nutrient: 'WATER', max: 12, on: 'mix' },
  { nutrient: 'ASH', max: 8, on: 'ration' },
  { nutrient: 'CA', min: 300, on: 'ration' },
  { nutrient: 'P', min: 300, on: 'ration' },
  { ratio: ['CA', 'P'], min: 0.8, max: 2.5, on: 'ration' },
  { nutrient: 'MG', min: 60, on: 'ration' },
  { nutrient: 'K', min: 300, on: 'ration' },
  { nutrient: 'NA', max: 400, on: 'ration' },
  { nutrient: 'FE', min: 4, on: 'ration' },
  { nutrient: 'ZN', min: 1, on: 'ration' },
  { nutrient: 'STARCH', max: 60, on: 'mix' },
];

/** The demonstration with a mix of 30 foods, 18 rules and the pellet beside it. */
export function houseToDrag(): Household {
  const table = loadReference();
  const demo = demoHousehold();
  const [mix] = demo.mixes;
  if (!mix) throw new Error('the demonstration has no mix');
  const more = MORE.map((ref) => {
    const food = table.get(ref);
    if (!food) throw new Error(`no food ${ref}`);
    return { ...ingredientFromReference(food), max: 15 };
  });
  const foods = [...mix.problem.foods.map(({ want: _, ...food }) => food), ...more];
  const problem = { ...mix.problem, foods, rules: [...mix.problem.rules, ...RULES] };
  const shares = Object.fromEntries(foods.map((f) => [f.id, 100 / foods.length]));
  return { ...demo, mixes: [{ ...mix, problem, shares }] satisfies Mix[] };
}

/** The same, most of whose foods are to be in it, each with a least share: to prove which of them takes long. */
export function houseToProve(foods = 16): Household {
  const house = houseToDrag();
  return {
    ...house,
    mixes: house.mixes.map((mix) => {
      const { margin: _, ...problem } = mix.problem;
      const used = problem.foods.map((f, i) => ({
        ...f,
        if_used: Math.min(f.max ?? 100, 3 + ((i * 13) % 7) * 0.3),
      }));
      const rules = [...problem.rules, { count: { at_least: 4.5 }, min: foods }];
      return { ...mix, problem: { ...problem, foods: used, rules, objective: 'nearest' as const } };
    }),
  };
}

/** One move of the hand. */
export interface MoveTiming {
  /** From the input, as the browser dates it, to the page's hearing of it, ms. */
  readonly heard: number;
  /** From the input to the frame that shows ranges and other sliders for it or for a later one, ms; absent where none came. */
  readonly shown: number | undefined;
}

export interface DragTiming {
  readonly moves: readonly MoveTiming[];
  /** Processor time of the page's thread for a move, ms. */
  readonly work: {
    readonly all: number;
    readonly script: number;
    readonly layout: number;
    readonly style: number;
  };
  /** Frames that were painted while the hand moved, each second. */
  readonly frames: number;
  /** Part of the drag, 0 to 1, during which the screen told of a proof that was under way. */
  readonly proving: number;
  /** Steps that it took meanwhile, each second; undefined where none can be seen: {@link watchProof}. */
  readonly steps: number | undefined;
}

interface Heard {
  readonly at: number;
  readonly heard: number;
  readonly x: number;
}
interface Frame {
  readonly at: number;
  readonly share: number;
  readonly windows: boolean;
  readonly others: boolean;
  readonly proving: boolean;
  readonly steps: number | undefined;
}

/** Notes in the page every move that it hears of, and with every painted frame what it shows. */
const NOTE = `(food) => {
  const row = document.querySelector('.share-row[data-food="' + food + '"]');
  const field = row.querySelector('.number input');
  const noted = (window.dragNoted = { heard: [], frames: [], on: true });
  addEventListener('pointermove', (event) => {
    if (noted.on) noted.heard.push({ at: event.timeStamp, heard: performance.now(), x: event.clientX });
  }, { capture: true });
  let windows = false;
  let others = false;
  const all = { subtree: true, childList: true, attributes: true, characterData: true };
  new MutationObserver(() => { windows = true; }).observe(document.querySelector('.windows'), all);
  const others_ = new MutationObserver(() => { others = true; });
  for (const other of document.querySelectorAll('.share-row'))
    if (other !== row) others_.observe(other.querySelector('.track'), all);
  const channel = new MessageChannel();
  // What is done with the frame's message is done after the frame was painted.
  channel.port1.onmessage = () => {
    const proving = document.querySelector('.verdict .so-far') !== null;
    const steps = window.sharedWithProof && Atomics.load(window.sharedWithProof, 1);
    noted.frames.push({ at: performance.now(), share: Number(field.value), windows, others, proving, steps });
    windows = others = false;
  };
  const frame = () => {
    if (!noted.on) return;
    channel.port2.postMessage(0);
    requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
}`;

/** A share in its field is rounded to a tenth, and so is where a slider stands, before and after. */
const ROUNDED = 0.16;

/**
 * Drags the slider of a food to and fro at the pace of a hand.
 * @param options.food its id @param options.by how far, percent of the mix, from where it stands
 * @param options.legs how often @param options.steps moves of the hand for each
 */
export async function measureDrag(
  page: Page,
  { food, by, legs = 6, steps = 20 }: { food: string; by: number; legs?: number; steps?: number },
): Promise<DragTiming> {
  const client = await page.context().newCDPSession(page);
  const row = page.locator(`.share-row[data-food="${food}"]`);
  await row.scrollIntoViewIfNeeded();
  const thumb = await row.locator('.thumb').boundingBox();
  const track = await row.locator('.track').boundingBox();
  const range = row.locator('input[type="range"]');
  if (!thumb || !track) throw new Error(`no slider of ${food}`);
  const [top, began] = [Number(await range.getAttribute('max')), Number(await range.inputValue())];
  // Whole pixels: a mouse knows no others.
  const x0 = Math.round(thumb.x + thumb.width / 2);
  const y = thumb.y + thumb.height / 2;
  const step = ((by / top) * track.width) / steps;
  const mouse = (type: 'mouseMoved' | 'mousePressed' | 'mouseReleased', x: number, held = true) =>
    // A move that names no button would let go of what the hand has taken hold of.
    client.send('Input.dispatchMouseEvent', {
      type,
      x,
      y,
      button: held ? 'left' : 'none',
      buttons: held && type !== 'mouseReleased' ? 1 : 0,
      clickCount: 1,
    });
  await mouse('mouseMoved', x0, false);
  await mouse('mousePressed', x0);
  await page.evaluate(`(${NOTE})(${JSON.stringify(food)})`);
  const before = await metrics(client);
  const start = performance.now();
  const sent: Promise<unknown>[] = [];
  let last = x0;
  const path = pathOf(legs, steps);
  for (const [i, at] of path.entries()) {
    await until(start + i * HAND_MS);
    last = Math.round(x0 + at * step);
    sent.push(mouse('mouseMoved', last));
  }
  const took = performance.now() - start;
  await Promise.all(sent);
  const wanted = (x: number) => began + ((x - x0) / track.width) * top;
  const field = row.locator('.number input');
  for (const end = performance.now() + PATIENCE_MS; ; ) {
    const there = Math.abs(Number(await field.inputValue()) - wanted(last)) < ROUNDED;
    await page.evaluate('new Promise((shown) => requestAnimationFrame(() => requestAnimationFrame(shown)))');
    if (there) break;
    if (performance.now() > end) throw new Error(`the last move of ${food} was never shown`);
  }
  const after = await metrics(client);
  const noted = (await page.evaluate('window.dragNoted.on = false; window.dragNoted')) as {
    heard: Heard[];
    frames: Frame[];
  };
  await mouse('mouseReleased', x0);
  await client.detach();
  const per = (name: string) => (1000 * ((after[name] ?? 0) - (before[name] ?? 0))) / path.length;
  return {
    moves: timingsOf(noted.heard, noted.frames, wanted),
    work: {
      all: per('TaskDuration'),
      script: per('ScriptDuration'),
      layout: per('LayoutDuration'),
      style: per('RecalcStyleDuration'),
    },
    frames: (1000 * noted.frames.filter((f) => f.windows).length) / took,
    proving: noted.frames.filter((f) => f.proving).length / Math.max(1, noted.frames.length),
    steps: stepsOf(noted.frames),
  };
}

function stepsOf(frames: readonly Frame[]): number | undefined {
  const [first, last] = [frames.at(0), frames.at(-1)];
  if (first?.steps === undefined || last?.steps === undefined) return undefined;
  return (1000 * (last.steps - first.steps)) / (last.at - first.at);
}

/** Where the hand is at each of its moves, in steps from where it began: out and back. */
function pathOf(legs: number, steps: number): number[] {
  const path: number[] = [];
  for (let leg = 0; leg < legs; leg++)
    for (let i = 1; i <= steps; i++) path.push(leg % 2 === 0 ? i : steps - i);
  return path;
}

/** Finds for each move the frame that first shows it or a later one. */
function timingsOf(
  heard: readonly Heard[],
  frames: readonly Frame[],
  wanted: (x: number) => number,
): MoveTiming[] {
  const shown = heard.map((): number | undefined => undefined);
  let next = 0;
  let waiting: number[] = [];
  for (const frame of frames) {
    let met = -1;
    for (let i = next; i < heard.length && heard[i]!.heard <= frame.at; i++)
      if (Math.abs(wanted(heard[i]!.x) - frame.share) < ROUNDED) {
        met = i;
        break;
      }
    if (met >= 0) {
      for (let i = next; i <= met; i++) waiting.push(i);
      next = met + 1;
    }
    // The ranges and the other sliders come with the share, or later.
    if (frame.windows && frame.others) {
      for (const i of waiting) shown[i] = frame.at;
      waiting = [];
    }
  }
  return heard.map((move, i) => ({
    heard: move.heard - move.at,
    shown: shown[i] === undefined ? undefined : shown[i] - move.at,
  }));
}

async function metrics(client: CDPSession): Promise<Record<string, number>> {
  await client.send('Performance.enable', { timeDomain: 'threadTicks' });
  const { metrics } = await client.send('Performance.getMetrics');
  return Object.fromEntries(metrics.map(({ name, value }) => [name, value]));
}

function until(moment: number): Promise<void> {
  return new Promise((done) => setTimeout(done, Math.max(0, moment - performance.now())));
}
