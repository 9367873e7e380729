/** The reference table: read, held in memory, searched as a name is typed; in Node and in a browser's worker. */
import { createFoodSearch } from '../src/foods/search.ts';
import { loadReference } from '../src/household/reference-file.ts';
import type { SpansRun } from './in-browser/spans-run.ts';
import { figureOf, ratioOf } from './lib/figures.ts';
import { inWorker } from './lib/in-worker.ts';
import { ownProcess, said } from './lib/own-process.ts';
import { asTyped, LANGUAGES_TYPED } from './lib/queries.ts';
import type { Cell, Limit, Options, Report, Table } from './lib/report.ts';
import { rounded } from './lib/say.ts';

const NODE_MS = 60;
const BROWSER_MS = 150;
const SEARCH_MS = 10;
const SHOWN = 20;

export async function run({ quick }: Options): Promise<Report> {
  const loads = Array.from({ length: quick ? 3 : 15 }, () => Number(said([ownProcess('load-table')])));
  const { table: typed, limit: typedLimit } = searched(quick ? 1 : 3);
  const inBrowser = await inWorker(quick ? 2 : 8, true);
  const [{ spans }] = inBrowser as [(typeof inBrowser)[0]];
  const inNode = figureOf(loads, 'ms');
  const there = (of: 'table' | 'fetched' | 'search' | 'solver') =>
    figureOf(
      inBrowser.map((w) => w[of]),
      'ms',
    );
  const typedThere = figureOf(
    inBrowser.flatMap((w) => w.typed),
    'ms',
  );
  return {
    about: [
      'Loading is measured cold: in a new process each, and in a browser that has nothing cached, from the program’s own server on this machine. What is typed is every text that stands in the box while a name is typed letter by letter.',
    ],
    tables: [
      {
        title: 'Loading',
        of: 'what',
        columns: ['time', 'rounds'],
        rows: [
          ['table read, Node', inNode, inNode.runs],
          ['table fetched and read, browser’s worker', there('table'), inBrowser.length],
          ['of that, until its bytes are there', there('fetched'), inBrowser.length],
          ['search made ready, browser’s worker', there('search'), inBrowser.length],
          ['solver fetched and compiled, browser’s worker', there('solver'), inBrowser.length],
        ],
      },
      memory(),
      {
        ...typed,
        rows: [
          ...typed.rows,
          ['English, browser’s worker', typedThere, '', `${rounded(typedThere.p99)} ms`, typedThere.runs],
        ],
      },
      ...(spans ? [inWorkerTable(spans)] : []),
    ],
    limits: [
      {
        asked: `the table loads in under ${NODE_MS} ms in Node`,
        measured: `${rounded(inNode.median)} ms`,
        met: inNode.median < NODE_MS,
      },
      {
        asked: `the table loads in under ${BROWSER_MS} ms in the browser`,
        measured: `${rounded(there('table').median)} ms`,
        met: there('table').median < BROWSER_MS,
      },
      typedLimit,
    ],
  };
}

/** Every text in the box: the foods that are shown, and the note where the tables have none. */
function searched(rounds: number): { table: Table; limit: Limit } {
  const reference = loadReference();
  const rows: [string, ...Cell[]][] = [];
  const all: number[] = [];
  for (const language of LANGUAGES_TYPED) {
    const start = performance.now();
    const search = createFoodSearch(reference, language);
    const ready = performance.now() - start;
    const texts = asTyped(language);
    const found: number[] = [];
    for (let k = 0; k < rounds; k++)
      for (const text of texts) {
        const before = performance.now();
        search.find(text, SHOWN);
        search.note(text);
        found.push(performance.now() - before);
      }
    all.push(...found);
    const figure = figureOf(found, 'ms');
    rows.push([language, figure, `${rounded(ready)} ms`, `${rounded(figure.p99)} ms`, figure.runs]);
  }
  const { p99, median } = figureOf(all, 'ms');
  return {
    table: {
      title: `Search as typed, ${reference.size} foods`,
      of: 'language',
      columns: ['foods and note', 'made ready', '99th percentile', 'texts'],
      rows,
    },
    limit: {
      asked: `search over the whole table: 99th percentile under ${SEARCH_MS} ms`,
      measured: `${rounded(p99)} ms, median ${rounded(median)} ms, of ${all.length} texts in three languages`,
      met: p99 < SEARCH_MS,
    },
  };
}

function memory(): Table {
  const steps = JSON.parse(said(['--expose-gc', ownProcess('memory')])) as Record<
    string,
    { js: number; buffers: number }
  >;
  return {
    title: 'Memory',
    of: 'what',
    columns: ['JavaScript', 'buffers'],
    rows: Object.entries(steps).map(([name, { js, buffers }]) => [
      name,
      `${rounded(Math.max(0, js))} MB`,
      `${rounded(Math.max(0, buffers))} MB`,
    ]),
    notes: [
      'After the collector has run, in a process of its own. The memory of WebAssembly counts as buffers.',
    ],
  };
}

function inWorkerTable({ foods, apart, ...times }: SpansRun): Table {
  const { spans, naiveSpans, nearest, naiveNearest } = times;
  return {
    title: `Spans and nearest mix of ${foods} foods in the browser’s worker`,
    of: 'question',
    columns: ['Pouchful, kept warm', 'HiGHS, text, fresh', 'ratio', 'rounds'],
    rows: [
      [
        'all spans',
        figureOf(spans, 'ms'),
        figureOf(naiveSpans, 'ms'),
        ratioOf(naiveSpans, spans),
        spans.length,
      ],
      [
        'nearest mix',
        figureOf(nearest, 'ms'),
        figureOf(naiveNearest, 'ms'),
        ratioOf(naiveNearest, nearest),
        nearest.length,
      ],
    ],
    notes: [`No share is further apart than ${apart.toExponential(0)} %.`],
  };
}
