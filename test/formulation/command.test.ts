/** The command `pouchful formulate` as another program meets it: real process, real files, exit codes. */
import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { FIBRE_ESTIMATES } from '../../src/foods/fibre-ratio.ts';
import type { Balanced, Collision } from '../../src/formulation/problem/result.ts';
import { loadReference } from '../../src/household/reference-file.ts';

function run(args: string[], input?: string) {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['bin/pouchful.mjs', ...args], {
    input,
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
}
const formulate = (problem: unknown) =>
  run(['formulate', '-'], typeof problem === 'string' ? problem : JSON.stringify(problem));

interface Figures {
  readonly ref?: string;
  readonly composition?: Readonly<Record<string, number>>;
}

/** The parts of problem.json that the demo uses. */
interface DemoProblem {
  readonly foods: readonly (Figures & { id: string; group: string; min?: number; max?: number })[];
  readonly rules: readonly { nutrient?: string; group?: string; on?: string; min?: number; max?: number }[];
  readonly beside: readonly (Figures & { share_of_ration: number })[];
  readonly batch_grams: number;
  readonly scale_step_grams: number;
}

const oats = { id: 'oats', ref: 'sr28:20038' };
const carrot = { id: 'carrot', ref: 'sr28:11683' };

describe('the demo problem', () => {
  const demo = JSON.parse(run(['demo']).stdout) as DemoProblem;
  const { status, stdout } = formulate(demo);
  const result = JSON.parse(stdout) as Balanced;

  test('exits 0; shares add up to 100; grams are whole steps of the batch', () => {
    expect(status).toBe(0);
    const shares = Object.values(result.shares);
    expect(Math.abs(shares.reduce((a, b) => a + b, 0) - 100)).toBeLessThan(1e-9);
    const grams = Object.values(result.grams!);
    expect(grams.every((g) => Number.isInteger(g / demo.scale_step_grams))).toBe(true);
    expect(grams.reduce((a, b) => a + b, 0)).toBe(demo.batch_grams);
  });

  test('every rule holds when worked out again from the tables, for shares and for grams', () => {
    const reference = loadReference();
    const of = (f: Figures, tag?: string): number => {
      if (tag === undefined) return 0;
      const known = f.ref === undefined ? undefined : reference.get(f.ref)!;
      const c = (f.composition ?? known!.composition) as Record<string, number>;
      if (tag === 'PROCNT' && !f.composition) return (c.PROCNT! / (known!.proteinFactor ?? 6.25)) * 6.25;
      // Crude fibre that a table does not give is estimated from its dietary fibre.
      const part = (FIBRE_ESTIMATES[known?.group ?? 'any'] ?? FIBRE_ESTIMATES.any)!.mean;
      const estimate = tag === 'FIBC' && c.FIBTG !== undefined ? c.FIBTG * part : undefined;
      return c[tag] ?? (tag === 'FIBTG' ? c.FIBC : estimate) ?? 0;
    };
    const R = demo.beside.reduce((s, b) => s + b.share_of_ration, 0) / 100;
    const percent = (g: number) => (100 * g) / demo.batch_grams;
    const asGrams = Object.fromEntries(Object.entries(result.grams!).map(([id, g]) => [id, percent(g)]));
    for (const x of [result.shares, asGrams] as Record<string, number>[]) {
      for (const rule of demo.rules) {
        const mix = demo.foods.reduce(
          (s, f) =>
            s +
            (rule.group ? (f.group === rule.group ? x[f.id]! : 0) : (x[f.id]! * of(f, rule.nutrient)) / 100),
          0,
        );
        const beside = demo.beside.reduce((s, b) => s + (b.share_of_ration / 100) * of(b, rule.nutrient), 0);
        const value = rule.on === 'ration' && !rule.group ? (1 - R) * mix + beside : mix;
        expect(value).toBeGreaterThanOrEqual((rule.min ?? 0) - 1e-6);
        expect(value).toBeLessThanOrEqual((rule.max ?? 1e9) + 1e-6);
      }
      for (const f of demo.foods) {
        expect(x[f.id]).toBeGreaterThanOrEqual((f.min ?? 0) - 1e-9);
        expect(x[f.id]).toBeLessThanOrEqual((f.max ?? 100) + 1e-9);
      }
    }
  });

  test('reads as a table for people with --pretty', () => {
    const pretty = run(['formulate', '-', '--pretty'], JSON.stringify(demo));
    expect(pretty.status).toBe(0);
    expect(pretty.stdout).toMatch(/^(Surely i|I)n range[^\n]*\. /);
    expect(pretty.stdout).toContain('Not veterinary advice');
    expect(pretty.stdout).toMatch(/Cautions:\n(?: {2}.+\n)* {2}Lentils, raw dry: .+ \[Grant/);
  });
});

test('no mix can keep the rules: exit 3, the conflict and what mends it', () => {
  const { status, stdout } = formulate({ foods: [oats, carrot], rules: [{ nutrient: 'FAT', min: 20 }] });
  expect(status).toBe(3);
  const result = JSON.parse(stdout) as Collision;
  expect(result.conflict.map((c) => c.pointer)).toEqual(['/rules/0/min']);
  const loosen = result.remedies.find((r) => r.kind === 'loosen')!;
  expect(loosen).toMatchObject({ pointer: '/rules/0/min', from: 20 });
  expect(loosen.kind === 'loosen' && loosen.to).toBeCloseTo(6.9, 2);
  expect(result.remedies.some((r) => r.kind === 'add')).toBe(true);
});

test('an unknown amount counts as its lower bound and is named; an estimate is named too', () => {
  const mine = { id: 'mine', group: 'seed', composition: { PROCNT: 12, FIBC: 8 } };
  const { stdout } = formulate({
    foods: [oats, mine],
    rules: [
      { nutrient: 'FIBTG', min: 1 },
      { nutrient: 'CA', max: 900 },
      { nutrient: 'FIBC', max: 50 },
    ],
  });
  const result = JSON.parse(stdout) as Balanced;
  expect(result.unsure.map((u) => [u.pointer, u.nutrient, u.foods])).toEqual([
    ['/rules/0', 'FIBTG', ['mine']],
    ['/rules/1', 'CA', ['mine']],
  ]);
  expect(result.estimated.map((e) => [e.nutrient, e.foods])).toEqual([['FIBC', ['oats']]]);
  expect(result.nutrients.FIBTG!.mix).toBeCloseTo((10.6 + 8) / 2, 9);
  expect(result.nutrients.CA!.coverage).toBeCloseTo(50, 9);
  expect(result.nutrients.CA!.high).toBeGreaterThan(result.nutrients.CA!.low);
});

test('protein is crude protein in rules and answers: nitrogen x 6.25', () => {
  const counted = { id: 'counted', composition: { PROCNT: 20 }, protein_factor: 5 };
  const label = { id: 'label', composition: { PROCNT: 15 } };
  const pellet = { id: 'pellet', composition: { PROCNT: 17 }, share_of_ration: 50, protein_factor: 6.25 };
  const { status, stdout } = formulate({
    foods: [counted, label],
    beside: [pellet],
    rules: [{ nutrient: 'PROCNT', min: 21, on: 'ration' }],
  });
  expect(status).toBe(0);
  // All of the first food is 25 % crude protein, and (25 + 17) / 2 = 21.
  const result = JSON.parse(stdout) as Balanced;
  expect(result.shares.counted).toBeCloseTo(100, 6);
  expect(result.nutrients.PROCNT).toMatchObject({ mix: 25, ration: 21, low: 21, high: 21 });
});

test('a rule that cannot bind is no mistake; one bound taken out of a rule leaves the other', () => {
  const { status } = formulate({
    foods: [oats, carrot],
    rules: [{ nutrient: 'CHOCDF', max: 120 }, { nutrient: 'FAT' }],
  });
  expect(status).toBe(0);
});

describe('bad input', () => {
  const many = Array.from({ length: 10_000 }, (_, i) => ({ ...oats, id: `f${i}` }));
  const cases: [string, unknown, RegExp][] = [
    ['empty', '', /problem: is empty/],
    ['white space', ' \n', /problem: is empty/],
    ['not JSON', '{"foods": [', /problem: is not JSON/],
    ['a list', '[]', /problem: must be an object/],
    ['no foods', {}, /\/foods: is missing/],
    ['foods empty', { foods: [] }, /\/foods: is an empty list/],
    ['unknown food', { foods: [{ id: 'a', ref: 'sr28:99999' }] }, /\/foods\/0\/ref: no food "sr28:99999"/],
    ['neither ref nor composition', { foods: [{ id: 'a' }] }, /\/foods\/0: has neither/],
    [
      'unknown tagname in a rule',
      { foods: [oats], rules: [{ nutrient: 'PROTEIN', min: 1 }] },
      /\/rules\/0\/nutrient: "PROTEIN".*"PROCNT"/,
    ],
    [
      'unknown tagname in a food',
      { foods: [{ id: 'a', composition: { FATT: 1 } }] },
      /\/foods\/0\/composition\/FATT: /,
    ],
    [
      'guarantees crossed',
      { foods: [{ ...oats, low: { FAT: 9 }, high: { FAT: 8 } }] },
      /\/foods\/0\/low\/FAT: is 9, above "high" 8/,
    ],
    [
      'a lender that is no text',
      { foods: [{ ...oats, borrowed: { CA: 3 } }] },
      /\/foods\/0\/borrowed\/CA: must be a text/,
    ],
    [
      'an override without a date',
      { foods: [{ ...oats, override: { caution: 'almond', note: 'why', on: 'today' } }] },
      /\/foods\/0\/override\/on: must be a date such as "2026-03-14", not "today"/,
    ],
    ['unknown variation', { foods: [oats], variation: 'none' }, /\/variation: must be one of "given"/],
    ['unknown cautions', { foods: [oats], cautions: true }, /\/cautions: must be one of "apply"/],
    ['min above max', { foods: [{ ...oats, min: 30, max: 20 }] }, /\/foods\/0\/min: is 30, above "max" 20/],
    [
      'rule min above max',
      { foods: [oats], rules: [{ nutrient: 'FAT', min: 7, max: 4 }] },
      /\/rules\/0\/min: is 7, above "max" 4/,
    ],
    [
      'shares cannot reach 100',
      {
        foods: [
          { ...oats, max: 40 },
          { ...carrot, max: 40 },
        ],
      },
      /\/foods: the "max" shares add up to 80 %/,
    ],
    [
      'shares start above 100',
      {
        foods: [
          { ...oats, min: 60 },
          { ...carrot, min: 60 },
        ],
      },
      /\/foods: the "min" shares add up to 120 %/,
    ],
    [
      'NaN',
      '{"foods": [{"id": "a", "ref": "sr28:20038", "max": NaN}]}',
      /\/foods\/0\/max: NaN is not a number/,
    ],
    [
      'infinity',
      '{"foods": [{"id": "a", "ref": "sr28:20038"}], "batch_grams": -Infinity}',
      /\/batch_grams: -Infinity is not a number/,
    ],
    ['negative', { foods: [{ ...oats, min: -1 }] }, /\/foods\/0\/min: is -1; it must be 0 or more/],
    [
      'negative amount',
      { foods: [{ id: 'a', composition: { FAT: -2 } }] },
      /\/foods\/0\/composition\/FAT: is -2/,
    ],
    [
      'more than all',
      { foods: [{ id: 'a', composition: { FAT: 101 } }] },
      /\/foods\/0\/composition\/FAT: is 101; it must be 100 or less/,
    ],
    ['10,000 foods', { foods: many }, /\/foods: has 10000 entries; 500 is the most/],
    [
      'number as text',
      { foods: [{ ...oats, max: '20' }] },
      /\/foods\/0\/max: must be a number, not the text "20"/,
    ],
    ['id used twice', { foods: [oats, oats] }, /\/foods\/1\/id: "oats" is used twice/],
    ['price missing', { foods: [oats], objective: 'cheapest' }, /\/foods\/0\/price_per_kg: is missing/],
    ['unknown objective', { foods: [oats], objective: 'best' }, /\/objective: must be one of/],
    ['confidence of one', { foods: [oats], confidence: 1 }, /\/confidence: is 1; it must be below 1/],
    [
      'pellets over 100 %',
      {
        foods: [oats],
        beside: [
          { ...carrot, share_of_ration: 70 },
          { ...carrot, id: 'b', share_of_ration: 70 },
        ],
      },
      /\/beside: the shares of the ration add up to 140 %/,
    ],
    ['rule about nothing', { foods: [oats], rules: [{ min: 1 }] }, /\/rules\/0: must name one of/],
    [
      'ratio of one',
      { foods: [oats], rules: [{ ratio: ['CA'] }] },
      /\/rules\/0\/ratio: must be two tagnames/,
    ],
    ['null', 'null', /problem: must be an object/],
  ];
  test.each(cases)('%s', (_name, problem, expected) => {
    const { status, stdout, stderr } = formulate(problem);
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toMatch(expected);
    expect(stderr.trim().split('\n')).toHaveLength(1);
    expect(stderr).not.toMatch(/\bat .*:\d+:\d+/);
  });

  test('a file that is not there', () => {
    const { status, stderr } = run(['formulate', '/nowhere/problem.json']);
    expect(status).toBe(2);
    expect(stderr).toMatch(/there is no such file/);
  });
});

test('a mistyped field is named, not silently dropped', () => {
  const { status, stdout, stderr } = formulate({ foods: [{ ...oats, mxa: 20 }, carrot] });
  expect(status).toBe(0);
  expect((JSON.parse(stdout) as Balanced).ignored).toEqual(['/foods/0/mxa']);
  expect(stderr).toContain('/foods/0/mxa');
});
