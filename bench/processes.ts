/** Whole processes, from their start: the server until it listens, and commands until they have answered. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Problem } from '../src/formulation/problem/problem.ts';
import { mixModelOf } from '../src/formulation/solve/mix-model.ts';
import { elementAt } from '../src/formulation/solve/vectors.ts';
import { demoProblem } from '../src/household/demo.ts';
import { openStore } from '../src/household/store.ts';
import { freePort } from '../test/browser/harness.ts';
import { tenYears } from '../test/household/ten-years.ts';
import { figureOf, ratioOf } from './lib/figures.ts';
import { ownProcess, said } from './lib/own-process.ts';
import { type Effort, paired, type Side } from './lib/paired.ts';
import type { Cell, Limit, Options, Report, Table } from './lib/report.ts';
import { rounded } from './lib/say.ts';
import { problems, type Stage, stage } from './lib/stage.ts';
import { arraysOf } from './solvers/highs-model.ts';

const POUCHFUL = resolve('bin/pouchful.mjs');
const SERVER = resolve('dist/server/main.js');
const MOST = 1.5;
/** Shares by both ways are no further apart, percent. */
const SAME = 1e-4;

export async function run({ quick }: Options): Promise<Report> {
  const folder = mkdtempSync(join(tmpdir(), 'pouchful-bench-'));
  const effort: Effort = quick ? { least: 3, most: 3, ms: 0 } : { least: 15, most: 15, ms: 0 };
  try {
    const { table, limits } = await formulated(folder, effort);
    return {
      about: [
        'Each round starts a process and waits for its end (of a server: until it says that it listens).',
      ],
      tables: [table, await commands(folder, effort), await servers(folder, effort)],
      limits,
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** `pouchful formulate` beside a script that loads HiGHS and solves the same model. */
async function formulated(folder: string, effort: Effort): Promise<{ table: Table; limits: Limit[] }> {
  const at = await stage();
  const { margin: _, ...demo } = demoProblem();
  const asked: readonly (readonly [name: string, problem: Problem])[] = [
    ['40 foods, 15 rules', elementAt(problems(1, { foods: 40, rules: 15 }, at), 0)],
    ['the invented mix, cautions applied', demo],
  ];
  const rows: [string, ...Cell[]][] = [];
  const limits: Limit[] = [];
  for (const [name, problem] of asked) {
    const file = join(folder, 'problem.json');
    const model = join(folder, 'model.json');
    writeFileSync(file, JSON.stringify(problem));
    writeFileSync(model, JSON.stringify(nearestModel(problem, at), finite));
    checkSame(problem, said([POUCHFUL, 'formulate', file]), said([ownProcess('bare-highs'), model]));
    const { times } = await paired(
      {
        pouchful: { work: () => said([POUCHFUL, 'formulate', file]) },
        bare: { work: () => said([ownProcess('bare-highs'), model]) },
        node: { work: () => said(['-e', '0']) },
      },
      effort,
    );
    const { pouchful, bare, node } = times;
    const ratio = ratioOf(pouchful, bare);
    rows.push([
      name,
      figureOf(pouchful, 'ms'),
      figureOf(bare, 'ms'),
      ratio,
      figureOf(node, 'ms'),
      pouchful.length,
    ]);
    limits.push({
      asked: `pouchful formulate as a whole process, ${name}: at most ${MOST} x a bare script that loads HiGHS and solves the same model`,
      measured: `${rounded(ratio.median)} x`,
      met: ratio.median <= MOST,
    });
  }
  return {
    table: {
      title: 'A mix from the command line',
      of: 'mix',
      columns: [
        'pouchful formulate',
        'a script with HiGHS alone',
        'ratio',
        'Node, and nothing else',
        'rounds',
      ],
      rows,
      notes: [
        'Formulate tells the shares, their spans, contents, verdict and whole grams; the script loads HiGHS, reads the arrays of the model, solves it once and prints the shares, which are the same.',
      ],
    },
    limits,
  };
}

/** The model of the nearest mix as the program itself asks it, where no confidence bends it. */
function nearestModel(problem: Problem, at: Stage) {
  const { lower, upper, bounds, wants } = mixModelOf(problem, at).question;
  const spaces = bounds.map((b) => b.halfSpace(b.bound));
  return arraysOf(
    {
      rows: [
        { a: Array.from(lower, () => 1), min: 100, max: 100 },
        ...spaces.map(({ g, h }) => ({ a: Array.from(g), min: h, max: Number.POSITIVE_INFINITY })),
      ],
      lower: Array.from(lower),
      upper: Array.from(upper),
    },
    { target: Array.from(wants) },
  );
}

/** JSON has no infinity, for which the solver takes 1e30, and no typed arrays. */
function finite(_: string, value: unknown): unknown {
  if (ArrayBuffer.isView(value)) return Array.from(value as Float64Array);
  return typeof value === 'number' && !Number.isFinite(value) ? Math.sign(value) * 1e30 : value;
}

/** @throws Error where the shares are not the same */
function checkSame(problem: Problem, formulate: string, script: string): void {
  const { shares } = JSON.parse(formulate) as { shares: Readonly<Record<string, number>> };
  const bare = JSON.parse(script) as number[];
  for (const [i, { id }] of problem.foods.entries()) {
    const apart = Math.abs((shares[id] ?? 0) - (bare[i] ?? 0));
    if (!(apart < SAME)) throw new Error(`formulate and the bare script are ${apart} % apart in ${id}`);
  }
}

async function commands(folder: string, effort: Effort): Promise<Table> {
  const demo = join(folder, 'demo.json');
  writeFileSync(demo, said([POUCHFUL, 'demo']));
  const asked: Readonly<Record<string, readonly string[]>> = {
    'formulate, the invented mix': ['formulate', demo],
    'formulate --pretty': ['formulate', demo, '--pretty'],
    'formulate --why': ['formulate', demo, '--why'],
    'formulate --swaps': ['formulate', demo, '--swaps'],
    'foods search sunflower': ['foods', 'search', 'sunflower'],
    'foods show sr28:12036': ['foods', 'show', 'sr28:12036'],
    'targets list': ['targets', 'list'],
    'targets show hamster-adult-crude': ['targets', 'show', 'hamster-adult-crude'],
    demo: ['demo'],
    '--help': ['--help'],
  };
  const { times } = await paired(
    Object.fromEntries(
      Object.entries(asked).map(([name, args]) => [name, { work: () => said([POUCHFUL, ...args]) }]),
    ),
    { ...effort, least: Math.min(effort.least, 7), most: Math.min(effort.most, 7) },
  );
  return {
    title: 'Commands',
    of: 'pouchful',
    columns: ['time', 'rounds'],
    rows: Object.entries(times).map(([name, list]) => [name, figureOf(list, 'ms'), list.length]),
  };
}

/** From the start of the server's process to its word that it listens. */
async function servers(folder: string, effort: Effort): Promise<Table> {
  const old = join(folder, 'ten-years.sqlite');
  const store = openStore(old);
  await store.putAll(tenYears());
  await store.close();
  const known = join(folder, 'demo.sqlite');
  await ended(await listening(known));
  let fresh = 0;
  const start = (path: () => string): Side<Promise<ChildProcess>> => ({
    work: () => listening(path()),
    after: ended,
  });
  const { times } = await paired(
    {
      'nothing kept yet': start(() => join(folder, `new-${fresh++}.sqlite`)),
      'the demonstration': start(() => known),
      'a household of ten years': start(() => old),
    },
    { ...effort, least: Math.min(effort.least, 7), most: Math.min(effort.most, 7) },
  );
  return {
    title: 'Start of the server until it listens',
    of: 'household',
    columns: ['time', 'rounds'],
    rows: Object.entries(times).map(([name, list]) => [name, figureOf(list, 'ms'), list.length]),
  };
}

async function listening(data: string): Promise<ChildProcess> {
  const port = await freePort();
  const server = spawn(process.execPath, [SERVER, '--port', String(port)], {
    env: { ...process.env, POUCHFUL_DATA: data },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  await new Promise<void>((done, failed) => {
    server.stdout.on('data', (chunk: Buffer) => String(chunk).includes('Pouchful is at') && done());
    server.once('exit', (code) => failed(new Error(`the server ended with ${code}`)));
  });
  return server;
}

async function ended(server: ChildProcess): Promise<void> {
  const gone = new Promise((done) => server.once('exit', done));
  server.kill('SIGTERM');
  await gone;
}
