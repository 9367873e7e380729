/** Questions about mixes: what they cost beside other ways to ask them, and how the cost grows. */
import { figureOf, powerOf, ratioOf } from './lib/figures.ts';
import type { Effort } from './lib/paired.ts';
import type { Cell, Limit, Options, Report, Table } from './lib/report.ts';
import { middle, rounded, withUnit } from './lib/say.ts';
import { type Stage, stage } from './lib/stage.ts';
import { addedFood } from './questions/added-food.ts';
import { cheapest, nearest } from './questions/best.ts';
import { confidence } from './questions/confidence.ts';
import { conflict } from './questions/conflict.ts';
import * as counted from './questions/counting.ts';
import { dragged } from './questions/dragged.ts';
import { grams, PATIENCE, type Weighed } from './questions/grams.ts';
import type { Asked, Measured, Question, Size } from './questions/measured.ts';
import { spans } from './questions/spans.ts';
import { whole } from './questions/whole.ts';

const USUAL: Size = { foods: 40, rules: 15 };
const FOODS = [10, 20, 40, 80, 200];
const RULES = [5, 10, 20, 40, 60];

const QUESTIONS: readonly (readonly [name: string, ask: Question])[] = [
  ['nearest mix', nearest],
  ['cheapest mix', cheapest],
  ['all spans, and the mix with one share held', spans],
  ['a slider dragged on', dragged],
  ['conflict and remedies', conflict],
  ['nearest mix, sure to 90 %', confidence],
  ['whole grams', grams],
  ['the whole answer', whole],
];

export async function run({ quick }: Options): Promise<Report> {
  const at = await stage();
  const effort = (most: number, ms: number): Effort =>
    quick ? { least: 2, most: 3, ms: 500 } : { least: 3, most, ms };
  const agreed: string[] = [];
  const keep = (name: string, m: Measured) => {
    if (m.agreed) agreed.push(`${name}: ${m.agreed}`);
    return m;
  };

  const asked = new Map<string, Measured>();
  for (const [name, ask] of QUESTIONS) {
    if (ask === grams || ask === whole) continue;
    asked.set(name, keep(name, await ask(at, USUAL, effort(40, 6000), true)));
  }
  const [foods, rules] = [counted.FOODS, 10];
  const countedCheapest = await counted.counting('cheapest')(at, { foods, rules }, effort(20, 8000), true);
  const countedNearest = await counted.counting('nearest')(
    at,
    { foods, rules },
    { least: 1, most: quick ? 1 : 4, ms: 15_000, cold: true },
    false,
  );
  const ofCounted = `${counted.IN} of ${foods} foods`;
  asked.set(`cheapest, ${ofCounted}`, keep('counting', countedCheapest));
  asked.set(`nearest, ${ofCounted}`, countedNearest);
  const weighed = await grams(at, USUAL, { least: MIXES, most: MIXES, ms: 0 }, false);
  const besidePlain = await grams(at, USUAL, effort(10, 10_000), true);

  const ends = await endToEnd(at, effort(40, 5000));
  const growth = await grown(at, quick ? effort(2, 0) : { least: 3, most: 15, ms: 1000 });
  const added = await addedFood(at, quick ? 2 : 7);
  const spansTimes = asked.get('all spans, and the mix with one share held')?.times;
  return {
    about: [
      `Foods are drawn from the reference table, rules are windows around what some mix of them has, beside a pellet that is half of the ration: a problem that can be kept (for a conflict, one rule more that cannot). Every way is given the same problems in turn, another one in each round.`,
      `The others are given rows written from the words of the machine interface and not from the program's own arithmetic; under a confidence, its cones. Where answers are apart by more than a solver's tolerance, the run ends with an error. ${agreed.join('. ')}.`,
    ],
    tables: [besideOthers(asked), ends.table, gramsTable(weighed, besidePlain), ...growth, added],
    limits: [
      ...ends.limits,
      ...(spansTimes ? [spansLimit(spansTimes)] : []),
      gramsLimit(weighed),
      {
        asked: `counting, nearest of ${ofCounted}: proven`,
        measured: `${countedNearest.unproven} of ${countedNearest.times.ours?.length} not proven best`,
        met: countedNearest.unproven === 0,
      },
    ],
  };
}

const SIDES: readonly (readonly [Asked, string])[] = [
  ['ours', 'Pouchful'],
  ['text', 'HiGHS, text, fresh'],
  ['model', 'HiGHS, arrays, fresh'],
  ['run', 'HiGHS, run alone'],
  ['glpk', 'glpk.js'],
  ['yalps', 'YALPS'],
];

function besideOthers(asked: ReadonlyMap<string, Measured>): Table {
  return {
    title: `Beside other ways to ask, ${USUAL.foods} foods and ${USUAL.rules} rules`,
    of: 'question',
    columns: [...SIDES.map(([, name]) => name), 'fresh text / Pouchful', 'rounds'],
    rows: [...asked].map(([name, { times }]) => [
      name,
      ...SIDES.map(([side]) => (times[side] ? figureOf(times[side], 'ms') : '')),
      times.text && times.ours ? ratioOf(times.text, times.ours) : '',
      times.ours?.length ?? 0,
    ]),
    notes: [
      'Pouchful: from a problem it has not met to the answer; for spans, from a mix that is open, with its contents and verdict.',
      'HiGHS, run alone: the run of a model that is ready, without making and reading it; for spans, one model asked for all ends in turn.',
      'A conflict is found by the others alone, without what would mend it; a confidence by laying planes and asking afresh.',
      `A blank: that library has no such question, or no squared objective. Counting: the others end after ${counted.PATIENCE} s.`,
    ],
  };
}

/** The nearest mix from problem to answer, beside the bare solver on the same model. */
async function endToEnd(at: Stage, effort: Effort): Promise<{ table: Table; limits: Limit[] }> {
  const most = 1.5;
  const rows: [string, ...Cell[]][] = [];
  const limits: Limit[] = [];
  for (const foods of [40, 200]) {
    const { times } = await nearest(at, { foods, rules: USUAL.rules }, effort, true);
    const { ours = [], model = [], run = [] } = times;
    const ratio = ratioOf(ours, model);
    const inTimes = (r: typeof ratio) => withUnit(rounded(r.median), 'times');
    rows.push([
      `${foods} foods`,
      figureOf(ours, 'ms'),
      figureOf(model, 'ms'),
      figureOf(run, 'ms'),
      ratio,
      ratioOf(ours, run),
      ours.length,
    ]);
    limits.push({
      asked: `nearest mix of ${foods} foods, end to end: at most ${most} x the bare HiGHS solve`,
      measured: `${inTimes(ratio)} of model made, run and read; ${inTimes(ratioOf(ours, run))} of the run alone`,
      met: ratio.median <= most,
    });
  }
  return {
    table: {
      title: 'The nearest mix end to end, beside the bare solver',
      of: 'mix',
      columns: [
        'Pouchful',
        'HiGHS: made, run, read',
        'HiGHS: run alone',
        'Pouchful / made, run, read',
        'Pouchful / run alone',
        'rounds',
      ],
      rows,
      notes: ['The ratio is taken in each round, of one after the other on the same problem.'],
    },
    limits,
  };
}

function spansLimit({ text = [], ours = [], solver = [], model = [] }: Measured['times']): Limit {
  const least = 15;
  const alone = ratioOf(text, solver);
  return {
    asked: `all spans of ${USUAL.foods} foods: at least ${least} x faster than fresh solves`,
    measured: `${middle(alone)} than from LP text, ${middle(ratioOf(model, solver))} than from ready arrays; with mix, contents and verdict ${middle(ratioOf(text, ours))} and ${middle(ratioOf(model, ours))}`,
    met: alone.median >= least,
  };
}

/** Different mixes whose grams are measured, in a quick run too: a 99th percentile needs many. */
const MIXES = 300;
const MEDIAN_MS = 20;
const P99_MS = 100;

function gramsLimit({ times }: Weighed): Limit {
  const figure = figureOf(times.ours ?? [], 'ms');
  return {
    asked: `whole grams of ${USUAL.foods} foods: median under ${MEDIAN_MS} ms, 99th percentile under ${P99_MS} ms`,
    measured: `${rounded(figure.median)} ms and ${rounded(figure.p99)} ms, ${slowest(times.ours)} the slowest, over ${figure.runs} mixes`,
    met: figure.median < MEDIAN_MS && figure.p99 < P99_MS,
  };
}

const slowest = (times: readonly number[] = []) => `${rounded(Math.max(...times))} ms`;

function gramsTable(weighed: Weighed, beside: Weighed): Table {
  const ours = figureOf(weighed.times.ours ?? [], 'ms');
  const plain = figureOf(beside.times.model ?? [], 'ms');
  return {
    title: `Whole grams of ${USUAL.foods} foods, ${USUAL.rules} rules, 300 g`,
    of: 'way',
    columns: ['time', '99th percentile', 'slowest', 'found', 'proven nearest', 'rounds'],
    rows: [
      [
        'Pouchful',
        ours,
        `${rounded(ours.p99)} ms`,
        slowest(weighed.times.ours),
        weighed.found,
        weighed.proven,
        ours.runs,
      ],
      [
        'HiGHS, plain mixed-integer program',
        plain,
        `${rounded(plain.p99)} ms`,
        slowest(beside.times.model),
        beside.plain - beside.plainUnended,
        '',
        plain.runs,
      ],
    ],
    notes: [
      `The plain program asks for the least sum of absolute differences, which is easier than the least sum of squares; it ends after ${PATIENCE} s without an answer.`,
    ],
  };
}

/** How the cost of each question grows with foods, and with rules. */
async function grown(at: Stage, effort: Effort): Promise<Table[]> {
  const table = async (title: string, sizes: readonly Size[], by: keyof Size): Promise<Table> => {
    const rows: [string, ...Cell[]][] = [];
    for (const [name, ask] of QUESTIONS) {
      const figures = [];
      for (const size of sizes) {
        const { times } = await ask(at, size, effort, false);
        figures.push(figureOf(times.ours ?? [], 'ms'));
      }
      const points = figures.map((f, i) => [sizes[i]?.[by] ?? 0, f.median] as const);
      rows.push([name, ...figures, rounded(powerOf(points))]);
    }
    return {
      title,
      of: 'question',
      columns: [...sizes.map((s) => `${s[by]} ${by}`), 'power'],
      rows,
      notes: [
        `The power p in cost ~ ${by}^p, by least squares over the logarithms of the medians.`,
        `At least ${effort.least} rounds, at most ${effort.most}.`,
      ],
    };
  };
  return [
    await table(
      `How the cost grows with the foods, ${USUAL.rules} rules`,
      FOODS.map((foods) => ({ ...USUAL, foods })),
      'foods',
    ),
    await table(
      `How the cost grows with the rules, ${USUAL.foods} foods`,
      RULES.map((rules) => ({ ...USUAL, rules })),
      'rules',
    ),
  ];
}
