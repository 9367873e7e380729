/** Every place opened for the first time, with nothing in the browser's cache; and a second time. */
import { type Bench, DESKTOP, openBench, PHONE } from '../test/browser/harness.ts';
import { SCREENS } from '../test/browser/ten-years-screens.ts';
import { readyFrom } from './in-browser/watch.ts';
import { figureOf } from './lib/figures.ts';
import { type Kind, type Opening, openedAt, type Sent } from './lib/opening.ts';
import type { Cell, Limit, Options, Report, Table } from './lib/report.ts';
import { rounded } from './lib/say.ts';

/** Places of the bar and of the kitchen's row, as the demonstration has them. */
const PLACES = SCREENS.filter((s) => s.demo && !s.hash.includes('/'));
const PHONE_WEIGH = 'weigh, on a phone';

interface Place {
  readonly name: string;
  readonly first: readonly Opening[];
  readonly second: readonly Opening[];
  readonly sent: readonly Sent[];
}

export async function run({ quick }: Options): Promise<Report> {
  const rounds = quick ? 1 : 5;
  const bench = await openBench({ margin: true });
  try {
    // The server has answered before: what it makes ready at the first request of all is none of the page's business.
    await place(bench, 'today', 1);
    const places: Place[] = [];
    for (const { hash } of PLACES) places.push(await place(bench, hash, rounds));
    const phone = await place(bench, 'weigh', rounds, true);
    places.push({ ...phone, name: PHONE_WEIGH });
    return {
      about: [
        'The demonstration, from a server on this machine. Cold: a browser context that has nothing cached, code compiled before not either. It can be used when what the place is for stands and is drawn, and the page’s own thread then is without a long task (50 ms) for half a second: the time is the end of the last. Bytes are those of the bodies as sent.',
      ],
      tables: [times(places), bytes(places)],
      limits: limits(places),
    };
  } finally {
    await bench.close();
  }
}

async function place(bench: Bench, hash: string, rounds: number, phone = false): Promise<Place> {
  const ready = readyFrom(PLACES.find((p) => p.hash === hash)?.ready ?? 'main h1');
  const first: Opening[] = [];
  const second: Opening[] = [];
  for (let k = 0; k < rounds; k++) {
    const page = await bench.page(phone ? PHONE : DESKTOP, phone);
    const url = `${bench.url}/#/${hash}`;
    // Bytes are the same each time.
    first.push(await openedAt(page, url, ready, k === 0));
    await page.goto('about:blank');
    second.push(await openedAt(page, url, ready));
    await page.context().close();
  }
  return { name: hash, first, second, sent: first[0]?.sent ?? [] };
}

const inMs = (all: readonly Opening[], of: 'drawn' | 'usable' | 'work') =>
  figureOf(
    all.map((o) => o[of]),
    'ms',
  );

function times(places: readonly Place[]): Table {
  return {
    title: 'Until a place can be used',
    of: 'place',
    columns: ['drawn, cold', 'can be used, cold', 'work of the page', 'can be used, again', 'rounds'],
    rows: places.map(({ name, first, second }) => [
      name,
      inMs(first, 'drawn'),
      inMs(first, 'usable'),
      inMs(first, 'work'),
      inMs(second, 'usable'),
      first.length,
    ]),
    notes: ['Again: the same browser, with what it kept from the first time.'],
  };
}

const ofKind = (sent: readonly Sent[], kinds: readonly Kind[], later?: boolean) =>
  sent.filter((s) => kinds.includes(s.kind) && (later === undefined || s.later === later));
const sum = (sent: readonly Sent[], of: 'bytes' | 'decoded') => sent.reduce((all, s) => all + s[of], 0);
const kB = (bytes: number): string => `${rounded(bytes / 1000)} kB`;

function bytes(places: readonly Place[]): Table {
  return {
    title: 'What is sent, cold',
    of: 'place',
    columns: [
      'requests',
      'script of the page, until it is drawn',
      'the same, unpacked',
      'script of the worker',
      'lists',
      'script of the page, later',
      'style',
      'solver',
      'table',
      'records',
    ],
    rows: places.map(({ name, sent }): [string, ...Cell[]] => {
      const script = ofKind(sent, ['script'], false);
      const all = (kind: Kind) => kB(sum(ofKind(sent, [kind]), 'bytes'));
      return [
        name,
        sent.length,
        kB(sum(script, 'bytes')),
        kB(sum(script, 'decoded')),
        all('worker'),
        all('lists'),
        kB(sum(ofKind(sent, ['script'], true), 'bytes')),
        all('style'),
        all('solver'),
        all('table'),
        all('records'),
      ];
    }),
    notes: [
      'Drawn: what the place is for stands. Later: asked for after that, up to a second and a half after it can be used, when all else begins to be fetched ahead. A file that page and worker both ask for counts once, for who asked first. Lists: words of cautions and figures of foods, which are kept as script; nearly all of them are the worker’s. Solver: HiGHS, its script and its WebAssembly. All but the script of the page is told whole, whenever it was asked for.',
    ],
  };
}

const TODAY_KB = 150;
const WEIGH_KB = 250;
const TODAY_MS = 1000;
const PLAIN_KB = 10;

function limits(places: readonly Place[]): Limit[] {
  const found: Limit[] = [];
  const bytesOf = (name: string, kind: Kind, later?: boolean) =>
    sum(ofKind(places.find((p) => p.name === name)?.sent ?? [], [kind], later), 'bytes');
  const script = (name: string) => bytesOf(name, 'script', false);
  const said = (name: string) =>
    `${kB(script(name))} of the page’s own until it is drawn; its worker then fetches ${kB(bytesOf(name, 'worker'))} of script and ${kB(bytesOf(name, 'lists'))} of lists for its first answers`;
  found.push({
    asked: `first load of Now (today) on a cold cache: under ${TODAY_KB} kB of compressed script`,
    measured: said('today'),
    met: script('today') < 1000 * TODAY_KB,
  });
  const usable = inMs(places.find((p) => p.name === 'today')?.first ?? [], 'usable');
  found.push({
    asked: `it can be used in under ${TODAY_MS} ms`,
    measured: `${rounded(usable.median)} ms`,
    met: usable.median < TODAY_MS,
  });
  found.push({
    asked: `Scale (weigh), on a phone: under ${WEIGH_KB} kB of compressed script, the solver apart`,
    measured: said(PHONE_WEIGH),
    met: script(PHONE_WEIGH) < 1000 * WEIGH_KB,
  });
  const plain = places
    .flatMap((p) => p.sent)
    .filter((s) => s.kind !== 'records' && s.encoding === undefined && s.decoded > 1000 * PLAIN_KB);
  const names = [...new Set(plain.map((s) => s.path))];
  found.push({
    asked: `no asset over ${PLAIN_KB} kB is sent uncompressed`,
    measured: names.length === 0 ? 'none' : names.join(', '),
    met: names.length === 0,
  });
  return found;
}
