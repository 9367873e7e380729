/** Whatever is handed to `pouchful formulate`, it answers, or complains in one plain line that names the place. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { draws } from '../draws.ts';

const folder = mkdtempSync(join(tmpdir(), 'pouchful-hostile-'));
afterAll(() => rmSync(folder, { recursive: true }));

let out = '';
let err = '';
beforeEach(() => {
  for (const [stream, add] of [
    [process.stdout, (text: string) => (out += text)],
    [process.stderr, (text: string) => (err += text)],
  ] as const)
    vi.spyOn(stream, 'write').mockImplementation((text) => {
      add(String(text));
      return true;
    });
  vi.spyOn(console, 'error').mockImplementation((text) => {
    err += `${text}\n`;
  });
});
afterEach(() => vi.restoreAllMocks());

/** The command's answer to a file with these contents. */
async function answer(contents: string | Uint8Array, ...options: string[]) {
  out = '';
  err = '';
  const file = join(folder, 'problem.json');
  writeFileSync(file, contents);
  const code = await run(['formulate', file, ...options]);
  return { code, out, err };
}

/** A character that a terminal obeys, or that turns the direction in which it writes. */
const OBEYED = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u;

/** @throws where an answer is none, or a complaint is not one plain line that names a field or the place */
function expectPlain({ code, out, err }: Awaited<ReturnType<typeof answer>>) {
  expect([0, 2, 3]).toContain(code);
  if (code !== 2) {
    expect(JSON.parse(out).status).toBe(code === 0 ? 'optimal' : 'infeasible');
    return;
  }
  expect(out).toBe('');
  // A field's name may hold a space.
  expect(err).toMatch(/^pouchful: (?:\/.*|problem): .+\n$/);
  expect(err.slice(0, -1)).not.toMatch(OBEYED);
  expect(err.length).toBeLessThan(1100);
}

const oats = { id: 'oats', ref: 'sr28:20038' };
const carrot = { id: 'carrot', ref: 'sr28:11683' };

describe('told by its place', () => {
  const deep = (n: number) => `${'['.repeat(n)}${']'.repeat(n)}`;
  const cases: [string, string | Uint8Array, RegExp][] = [
    [
      'nested a hundred thousand deep',
      deep(100_000),
      /problem: is nested more than 64 deep at line 1, column 65/,
    ],
    [
      'nested deep inside a field',
      `{"foods": [{"id": "a", "ref": "sr28:20038",\n "want": ${deep(5000)}}]}`,
      /problem: is nested more than 64 deep at line 2, column 71/,
    ],
    [
      'a list where a number belongs',
      `{"foods": [{"id": "a", "ref": "sr28:20038", "want": ${deep(20)}}]}`,
      /\/foods\/0\/want: must be/,
    ],
    [
      'one text of 50 MB',
      `{"foods": [{"id": "${'a'.repeat(50 * 2 ** 20)}"}]}`,
      /problem: is 50 MB long; 16 MB is the most/,
    ],
    [
      'one text of 10 MB',
      `{"foods": [{"id": "${'\\\\'.repeat(5 * 2 ** 20)}", "ref": "sr28:20038"}]}`,
      /\/foods\/0\/id: has 5242880 characters; 100 is the most/,
    ],
    ['a text that does not end', `{"foods": [{"id": "a`, /problem: is not JSON/],
    [
      'a field of 1 MB',
      `{"foods": [{"id": "a", "composition": {"${'x'.repeat(2 ** 20)}": 1}}]}`,
      /\/foods\/0\/composition\/x{57}\.\.\.: /,
    ],
    [
      'a slash in a field',
      '{"foods": [{"id": "a", "composition": {"A/B~": 1}}]}',
      /\/foods\/0\/composition\/A~1B~0: /,
    ],
    [
      'a field named by a space alone',
      '{"foods": [{"id": "a", "ref": "sr28:20038", "composition": {" ": 1}}]}',
      /^pouchful: \/foods\/0\/composition\/ : " " is no INFOODS tagname/,
    ],
    [
      'UTF-16',
      Buffer.from('\uFEFF{}', 'utf16le'),
      /problem: is UTF-16, as its byte-order mark says; save it as UTF-8/,
    ],
    ['Latin-1', Buffer.from('{"foods": [{"id": "M\u00f6hre"}]}', 'latin1'), /problem: is not UTF-8 text/],
    [
      'a control character in an id',
      '{"foods": [{"id": "a\\u001b[31m\\u007f\\u0085", "ref": "no"}]}',
      /\/foods\/0\/ref: no food "no"/,
    ],
    [
      'a control character in a value',
      '{"objective": "\u202e\u007f", "foods": []}',
      /\/foods: is an empty list/,
    ],
    [
      '31 February',
      JSON.stringify({ foods: [{ ...oats, override: { caution: 'a', note: 'b', on: '2026-02-31' } }] }),
      /\/foods\/0\/override\/on: must be a date .*not "2026-02-31"/,
    ],
    [
      '29 February of a year without one',
      JSON.stringify({ foods: [{ ...oats, override: { caution: 'a', note: 'b', on: '2026-02-29' } }] }),
      /\/override\/on: must be a date/,
    ],
    [
      'rules: null',
      JSON.stringify({ foods: [oats], rules: null }),
      /\/rules: must be a list in square brackets, not null; leave it out for none/,
    ],
    ['beside: null', JSON.stringify({ foods: [oats], beside: null }), /\/beside: must be a list/],
    [
      'objective: null',
      JSON.stringify({ foods: [oats], objective: null }),
      /\/objective: must be one of .* not null/,
    ],
    [
      'batch_grams: null',
      JSON.stringify({ foods: [oats], batch_grams: null }),
      /\/batch_grams: must be a number, not null/,
    ],
    [
      'steps beyond any scale',
      JSON.stringify({ foods: [oats], batch_grams: 1e9, scale_step_grams: 1e-9 }),
      /\/scale_step_grams: is 1e-9, too small/,
    ],
    [
      'a bound beyond all',
      JSON.stringify({ foods: [oats], rules: [{ nutrient: 'FAT', max: 1e300 }] }),
      /\/rules\/0\/max: is 1e\+300; it must be/,
    ],
  ];
  test.each(cases)('%s', async (_name, contents, expected) => {
    const answered = await answer(contents);
    expect(answered.code).toBe(2);
    expectPlain(answered);
    expect(answered.err).toMatch(expected);
  });
});

test('a byte-order mark before UTF-8 is passed over', async () => {
  const { code, err } = await answer(`\uFEFF${JSON.stringify({ foods: [oats] })}`);
  expect([code, err]).toEqual([0, '']);
});

test('29 February of a leap year is a day', async () => {
  const override = { caution: 'almond', note: 'why', on: '2028-02-29' };
  expect((await answer(JSON.stringify({ foods: [{ ...oats, override }] }))).code).toBe(0);
});

test('no control character of a name or an unknown field reaches the terminal', async () => {
  const codes = '\u001b[2J\u202e';
  const problem = { foods: [{ ...oats, name: `Oats${codes}`, [`x${codes}`]: 1 }] };
  const told = await answer(JSON.stringify(problem), '--pretty');
  expect(told.code).toBe(0);
  expect(told.err).toContain('/foods/0/x\\u{1b}[2J\\u{202e}');
  expect(told.err.trim()).not.toMatch(OBEYED);
  expect(told.out.replaceAll('\n', '')).not.toMatch(OBEYED);
  expect((await answer('{}', `--no\u001bsuch`)).err).toContain('\\u{1b}such');
});

describe('what asks for nothing is asked about', () => {
  const asked = async (problem: object) => {
    const { code, out } = await answer(JSON.stringify(problem));
    expect(code).toBe(0);
    return (JSON.parse(out).questions as { pointer: string; sentence: string }[]).map((q) => q);
  };
  const seed = { ...oats, group: 'seed' };

  test('a group that no food is in, with the groups there are', async () => {
    const problem = {
      foods: [seed, carrot],
      rules: [
        { group: 'sede', max: 10 },
        { group: 'seed', max: 90 },
        { count: { group: 'sead' }, max: 3 },
      ],
      aims: [{ aim: 'more', group: 'seeds' }],
    };
    const questions = await asked(problem);
    expect(questions.map((q) => q.pointer)).toEqual([
      '/rules/0/group',
      '/rules/2/count/group',
      '/aims/0/group',
    ]);
    expect(questions[0]!.sentence).toBe(
      'No food is in the group "sede", so nothing is counted; there are "seed".',
    );
  });

  test('a rule without bounds, and one whose bounds are null', async () => {
    const questions = await asked({
      foods: [seed],
      rules: [{ nutrient: 'FAT' }, { nutrient: 'FAT', min: null }],
    });
    expect(questions.map((q) => q.pointer)).toEqual(['/rules/0', '/rules/1']);
  });

  test('nothing is asked of a problem that says what it wants', async () => {
    expect(await asked({ foods: [seed, carrot], rules: [{ nutrient: 'FAT', max: 50 }] })).toEqual([]);
  });
});

describe('figures that cannot be', () => {
  const refused = async (food: object, expected: RegExp) => {
    for (const problem of [
      { foods: [{ id: 'a', ...food }] },
      { foods: [oats], beside: [{ id: 'b', share_of_ration: 20, ...food }] },
    ]) {
      const answered = await answer(JSON.stringify(problem));
      expect(answered.code).toBe(2);
      expectPlain(answered);
      expect(answered.err).toMatch(expected);
    }
  };
  test.each<[string, object, RegExp]>([
    [
      'parts of 185 g',
      { composition: { WATER: 10, PROCNT: 60, FAT: 55, CHOCDF: 60 } },
      /composition\/PROCNT: 100 g cannot hold 185 g/,
    ],
    [
      '8,000,000 mg of calcium',
      { composition: { CA: 8_000_000 } },
      /composition\/CA: 8000000 mg calcium weigh 8000 g.*check the unit/,
    ],
    [
      'sugar above carbohydrate',
      { composition: { CHOCDF: 5, SUGAR: 20 } },
      /composition\/SUGAR: .*more than the 5 g carbohydrate.*correct one/,
    ],
    [
      'crude fibre above dietary',
      { composition: { FIBC: 20, FIBTG: 9 } },
      /composition\/FIBC: Crude fibre 20 g is above dietary fibre 9 g/,
    ],
    [
      'a guaranteed least above the whole',
      { composition: { FAT: 3 }, low: { FAPU: 9 } },
      /low\/FAPU: .*more than the 3 g fat/,
    ],
    [
      'with a table’s other amounts',
      { ref: 'sr28:20038', composition: { FAT: 60 } },
      /composition\/FAT: 100 g cannot hold/,
    ],
    [
      'a nitrogen factor that no food has',
      { composition: { PROCNT: 20 }, protein_factor: 62.5 },
      /protein_factor: is 62.5; the nitrogen factor of a food is 3 to 7/,
    ],
  ])('%s are refused', async (_name, food, expected) => {
    await refused(food, expected);
  });

  test('a table’s own parts of an amount that the keeper wrote are asked about, not refused', async () => {
    const { code, out } = await answer(
      JSON.stringify({ foods: [{ ...oats, composition: { FAT: 0.5, FIBC: 14 } }] }),
    );
    expect(code).toBe(0);
    const { questions } = JSON.parse(out) as { questions: { pointer: string }[] };
    expect(new Set(questions.map((q) => q.pointer))).toEqual(
      new Set(['/foods/0/composition/FAT', '/foods/0/composition/FIBC']),
    );
  });

  test('odd ones are asked about, by the field that the keeper wrote, and count', async () => {
    const odd = {
      foods: [
        { id: 'kj', composition: { PROCNT: 5, FAT: 2, CHOCDF: 20, WATER: 70, ENERC_KCAL: 480 } },
        { id: 'over', composition: { WATER: 12, PROCNT: 25, FAT: 8, CHOCDF: 60 } },
        { id: 'own', composition: { FAT: 9 }, high: { FAT: 8 } },
        oats,
      ],
      beside: [
        { id: 'fresh', name: 'Dried carrot', share_of_ration: 5, composition: { WATER: 88, PROCNT: 1 } },
      ],
    };
    const { code, out } = await answer(JSON.stringify(odd));
    expect(code).toBe(0);
    const { questions } = JSON.parse(out) as { questions: { pointer: string; sentence: string }[] };
    expect(questions.map((q) => q.pointer)).toEqual([
      '/foods/0/composition/ENERC_KCAL',
      '/foods/1/composition/WATER',
      '/foods/2/composition/FAT',
      '/beside/0/composition/WATER',
    ]);
    expect((await answer(JSON.stringify(odd), '--pretty')).out).toContain(
      'Questions:\n  kj: Energy is 480 kcal',
    );
  });
});

/** Values of every kind, the likely ones of a problem among them. */
const word = fc.constantFrom(
  'oats',
  'own',
  'seed',
  'PROCNT',
  'FAT',
  'CA',
  'ration',
  'mix',
  'DM',
  'nearest',
  'sr28:20038',
);
const scrap: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 3, arbitrary: word },
  { weight: 4, arbitrary: fc.double({ min: 0, max: 100, noNaN: true }) },
  fc.double(),
  fc.string({ unit: 'binary' }),
  fc.constantFrom(null, true, false, [], {}, '', -1, 1e308, '\u0000NaN', '__proto__', 'constructor'),
  fc.jsonValue({ maxDepth: 3 }),
);
const tags = fc.constantFrom('PROCNT', 'FAT', 'WATER', 'ASH', 'CA', 'P', 'FIBC', 'FIBTG', 'SUGAR', 'VITD_IU');
/** Figures as they are written; what nobody can tell from 0 is refused, and is planted among the rest. */
const upTo = (max: number) => fc.double({ min: 0, max, noNaN: true }).map((v) => (v < 1e-9 ? 0 : v));
const amounts = fc.dictionary(tags, upTo(9), { maxKeys: 5 });
const some = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 2 });
const food = fc.record({
  id: fc.string({ minLength: 1, maxLength: 6, unit: 'binary' }),
  ref: fc.constantFrom('sr28:20038', 'sr28:11683', 'sr28:12036'),
  composition: some(amounts),
  low: some(fc.dictionary(tags, upTo(2), { maxKeys: 2 })),
  high: some(
    fc.dictionary(
      tags,
      upTo(9).map((v) => v + 2),
      { maxKeys: 2 },
    ),
  ),
  protein_factor: some(fc.double({ min: 3, max: 7, noNaN: true })),
  group: some(fc.constantFrom('seed', 'legume', '__proto__')),
  min: some(upTo(20)),
  max: some(fc.constantFrom(100, 100, 100, 60)),
  want: some(upTo(100)),
  if_used: some(upTo(10)),
});
const bounds = {
  min: some(upTo(40)),
  max: some(upTo(60).map((v) => v + 40)),
  on: some(fc.constantFrom('mix', 'ration')),
};
const rule = fc.oneof(
  fc.record({ nutrient: tags, basis: some(fc.constantFrom('as fed', 'DM')), ...bounds }),
  fc.record({ ratio: fc.tuple(tags, tags), ...bounds }),
  fc.record({ group: fc.constantFrom('seed', 'none'), ...bounds }),
  fc.record({ count: fc.record({ at_least: upTo(50) }), max: fc.nat(5) }),
);
const problem = fc.record({
  foods: fc.array(food, { minLength: 1, maxLength: 4 }),
  rules: some(fc.array(rule, { maxLength: 3 })),
  beside: some(
    fc.array(fc.record({ id: fc.uuid(), share_of_ration: upTo(49), composition: amounts }), { maxLength: 2 }),
  ),
  objective: some(fc.constantFrom('nearest', 'varied')),
  confidence: some(upTo(0.99)),
  drop_one: some(fc.boolean()),
  batch_grams: some(fc.integer({ min: 20, max: 2000 })),
  scale_step_grams: some(fc.constantFrom(0.1, 1, 5, 20)),
});

/** A value put somewhere into another, in place of what is there. */
function planted(json: unknown, path: readonly number[], value: unknown): unknown {
  const [head, ...rest] = path;
  if (head === undefined || typeof json !== 'object' || json === null) return value;
  const keys = Object.keys(json);
  const key = keys[head % keys.length];
  if (key === undefined) return value;
  const inside = planted((json as Record<string, unknown>)[key], rest, value);
  return Array.isArray(json)
    ? json.map((v, i) => (String(i) === key ? inside : v))
    : { ...json, [key]: inside };
}

/** A problem that no mix can solve: drawn ones are seldom so. */
const TOO_MUCH_PROTEIN = {
  foods: [{ id: 'oats', ref: 'sr28:20038' }],
  rules: [{ nutrient: 'PROCNT', min: 50 }],
  beside: [],
  objective: 'nearest',
  confidence: 0,
  batch_grams: 300,
  scale_step_grams: 1,
};

test('any problem, with anything planted in it, is answered or told in one plain line', async () => {
  const codes = { 0: 0, 2: 0, 3: 0 } as Record<number, number>;
  await fc.assert(
    fc.asyncProperty(
      problem,
      fc.option(fc.tuple(fc.array(fc.nat(20), { maxLength: 5 }), scrap), { freq: 3 }),
      async (json, plant) => {
        const answered = await answer(JSON.stringify(plant ? planted(json, ...plant) : json) ?? '');
        expectPlain(answered);
        codes[answered.code]!++;
      },
    ),
    { numRuns: draws(2000, 360), examples: [[TOO_MUCH_PROTEIN as never, null]] },
  );
  for (const code of [0, 2]) expect(codes[code]).toBeGreaterThan(draws(2000, 360) / 40);
  expect(codes[3]).toBeGreaterThan(0);
});

test('any text, cut and mended at random, is answered or told in one plain line', async () => {
  const text = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 200 }),
    fc
      .tuple(problem, fc.nat(2000), fc.nat(20), fc.string({ unit: 'binary', maxLength: 5 }))
      .map(([json, at, length, put]) => {
        const whole = JSON.stringify(json);
        const from = at % whole.length;
        return whole.slice(0, from) + put + whole.slice(from + length);
      }),
  );
  await fc.assert(
    fc.asyncProperty(text, async (json) => expectPlain(await answer(json))),
    { numRuns: draws(2000, 360) },
  );
});
