import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { nutrient } from '../../nutrition/nutrients.ts';
import { counts } from './compare.ts';
import { figuresOf } from './figures.ts';
import { readLabel } from './read.ts';
import type { LabelReading } from './reading.ts';
import { PLAIN, SNIPPETS } from './snippets/all.ts';
import { narrow } from './tokens.ts';

const LINE_BREAK = /\r\n|[\r\n\u2028\u2029\u0085\v\f]/;
/** What may hold digits and still be no amount: shares of a daily intake, serving counts, register codes, notes. */
const NOISE = /%|servings?[ -]per|portion|raci|portie|\d\p{L}\d{3}|E\d{3}|[nN]\s?[x×*]\s?\d|[¹²³⁰⁴-⁹]/iu;

const digitsOf = (text: string) => narrow(text).replace(/\D/g, '');

/** Milliseconds that something takes: by the clock or by the processor, the less, so that a busy machine does not count. */
function timeOf(run: () => void): number {
  const start = performance.now();
  const used = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(used);
  return Math.min(performance.now() - start, (user + system) / 1000);
}

/** Laws that every reading of every text keeps. */
function holdsLaws(text: string, reading: LabelReading): void {
  expect(reading.lines.map((l) => l.text)).toEqual(text.split(LINE_BREAK));
  const withAmounts = new Set(reading.amounts.map((a) => a.line));
  const asked = new Set(reading.questions.map((q) => q.id));
  expect(asked.size).toBe(reading.questions.length);
  reading.lines.forEach((line, i) => {
    expect(line.note).not.toBe('');
    expect(line.kind === 'amount').toBe(withAmounts.has(i));
    const joined = line.note === 'read together with the lines beside it';
    if (line.kind === 'ignored' && !joined && /[\p{Nd}½¼¾]/u.test(line.text))
      expect(line.text).toMatch(NOISE);
    if (line.kind === 'unread') expect(line.note).toMatch(/not read|without a figure/);
  });
  for (const a of reading.amounts) {
    const line = reading.lines[a.line]!.text;
    for (const id of a.open) expect(asked.has(id)).toBe(true);
    for (const number of [a.value, a.low === 0 ? undefined : a.low, a.high]) {
      if (number === undefined) continue;
      expect(Number.isFinite(number) && number >= 0).toBe(true);
      const plain = String(number);
      if (plain.includes('e') || /[½¼¾]/.test(line)) continue;
      expect(digitsOf(line)).toContain(digitsOf(plain).replace(/^0+(?=\d)/, ''));
    }
  }
  const { figures } = figuresOf(reading);
  for (const part of [figures.composition, figures.low ?? {}, figures.high ?? {}])
    for (const [tag, value] of Object.entries(part)) {
      expect(Number.isFinite(value) && value >= 0).toBe(true);
      expect(reading.amounts.some((a) => a.tag === tag && counts(a))).toBe(true);
    }
}

const snippet = fc.constantFrom(...SNIPPETS.map((s) => s.text));
const lineOf = snippet.chain((text) => fc.constantFrom(...text.split('\n')));
type Mutation = (text: string, at: number, other: string) => string;
const MUTATIONS: readonly Mutation[] = [
  (t, i) => t.slice(0, i) + t.slice(i + 1),
  (t, i) => t.slice(0, i) + (t[i + 1] ?? '') + (t[i] ?? '') + t.slice(i + 2),
  (t, i, o) => t.slice(0, i) + o + t.slice(i),
  (t, i, o) => t.slice(0, i) + o + t.slice(i + 1),
  (t, i) => t.slice(0, i),
  (t, i) => t.slice(i),
  (t, i) =>
    t
      .split('\n')
      .map((l) => l.slice(0, (i % 40) + 1))
      .join('\n'),
  (t) => t.replaceAll('\n', ' '),
  (t) => t.replaceAll(' ', ''),
  (t, i) => t.replace(/\d/g, (d) => (i % 2 ? String((Number(d) + i) % 10) : d)),
  (t, i) => t.replace(/[01]/g, (d, at: number) => ((at + i) % 3 === 0 ? (d === '0' ? 'O' : 'l') : d)),
];
const scrap = fc.constantFrom(
  '(',
  ')',
  '[',
  ',',
  '.',
  ';',
  '/',
  '<',
  '-',
  '%',
  ' ',
  '\t',
  '\n',
  'g',
  'min',
  'per ',
  '1',
  '0',
  '½',
  '５',
  '١',
  '\u00a0',
  '| ',
);
const mutated = fc
  .tuple(
    snippet,
    fc.array(fc.tuple(fc.nat(MUTATIONS.length - 1), fc.nat(400), scrap), { minLength: 1, maxLength: 6 }),
  )
  .map(([text, steps]) =>
    steps.reduce((t, [m, at, o]) => MUTATIONS[m]!(t, t.length ? at % t.length : 0, o), text),
  );
const pastes: readonly (readonly [string, fc.Arbitrary<string>, number])[] = [
  ['random unicode', fc.string({ unit: 'binary', maxLength: 300 }), draws(1500, 200)],
  ['random graphemes', fc.string({ unit: 'grapheme', maxLength: 300 }), draws(500, 100)],
  ['mutated labels', mutated, draws(5000, 500)],
  [
    'mixed lines',
    fc
      .array(fc.oneof(lineOf, scrap, mutated), { maxLength: 12 })
      .chain((list) => fc.constantFrom('\n', ' ', ', ', '').map((by) => list.join(by))),
    draws(2000, 200),
  ],
  [
    'scraps',
    fc
      .array(
        fc.oneof(
          scrap,
          fc.constantFrom(
            'protein ',
            'fat ',
            'je 100 g',
            'davon ',
            '17',
            ' 1 250 ',
            '4,5 ',
            ' kJ',
            '/kg',
            'max. ',
            'NRV',
            'fibre ',
            'portion ',
          ),
        ),
        { maxLength: 40 },
      )
      .map((l) => l.join('')),
    draws(1000, 200),
  ],
];

const PASTES = draws(10_000, 1000);

describe('any paste at all', () => {
  it(`has ${PASTES} of them`, () => {
    expect(pastes.reduce((sum, [, , runs]) => sum + runs, 0)).toBeGreaterThanOrEqual(PASTES);
  });

  for (const [name, texts, numRuns] of pastes)
    it(`${name}: no throw, every line accounted for, no silent guess, ${numRuns} times`, () => {
      let slowest = 0;
      fc.assert(
        fc.property(texts, (text) => {
          let reading = readLabel('');
          slowest = Math.max(
            slowest,
            timeOf(() => {
              reading = readLabel(text);
            }),
          );
          holdsLaws(text, reading);
        }),
        { numRuns },
      );
      expect(slowest).toBeLessThan(400);
    });

  it('answers of any kind neither throw nor break a law', () => {
    fc.assert(
      fc.property(mutated, fc.string(), fc.nat(), (text, wild, pick) => {
        const answers: Record<string, string> = {};
        for (let round = 0; round < 4; round++) {
          const reading = readLabel(text, answers);
          holdsLaws(text, reading);
          for (const q of reading.questions)
            answers[q.id] =
              pick % 5 === 0 ? wild : (q.options[pick % Math.max(1, q.options.length)]?.answer ?? '10');
        }
      }),
      { numRuns: 500 },
    );
  });

  it('an answered question is not asked again, and ids stay', () => {
    for (const { text } of SNIPPETS) {
      const answers: Record<string, string> = {};
      for (let reading = readLabel(text); reading.questions.length > 0; reading = readLabel(text, answers)) {
        for (const q of reading.questions) {
          expect(answers).not.toHaveProperty([q.id]);
          answers[q.id] = q.options[0]?.answer ?? '10';
        }
      }
    }
  });

  // About 100 ms each on an idle machine; the ceiling leaves room for a busy one and still shows quadratic time.
  it('100 kB of anything takes time in proportion, well under a second', () => {
    const hard = [
      '(',
      ')',
      '((a ',
      '[1',
      '1',
      '1.',
      '1,000,',
      '1 000 ',
      'O',
      '1O',
      'lO1',
      '.',
      ',',
      '<',
      '%',
      '% ',
      '5 % ',
      'protein ',
      'protein 1 g ',
      'per ',
      'per 100 g ',
      'per 100 g\n',
      '100 g ',
      'portion ',
      'fat 1 g\n',
      'fibre 1.234 g\n',
      'fat 5 % ',
      'min ',
      'vitamin d 3 ',
      'omega-',
      '-',
      '- 5',
      '\n',
      '\t',
      'ä',
      'of which ',
      '5 % NRV ',
      'je 1 kg\nfat 1 g\n',
      '½',
      'n x 6.25 ',
      '3a672a ',
      '🐹',
    ];
    for (const piece of hard) {
      const text = piece.repeat(Math.ceil(100_000 / piece.length));
      let best = Number.POSITIVE_INFINITY;
      for (let k = 0; k < 4 && best >= 800; k++) {
        best = Math.min(
          best,
          timeOf(() => figuresOf(readLabel(text))),
        );
      }
      expect(best, JSON.stringify(piece)).toBeLessThan(800);
    }
  });
});

describe('laws of labels', () => {
  const tags = [
    ['protein', 'PROCNT'],
    ['Rohfaser', 'FIBC'],
    ['matières grasses', 'FAT'],
    ['zetmeel', 'STARCH'],
    ['calcio', 'CA'],
  ] as const;
  const hundredths = (most: number) => fc.integer({ min: 1, max: most * 100 }).map((n) => n / 100);

  it('p g per q g is 100 p / q', () => {
    fc.assert(
      fc.property(fc.constantFrom(...tags), hundredths(20), fc.integer({ min: 25, max: 2000 }), (t, p, q) => {
        const { composition } = figuresOf(readLabel(`${t[0]} ${p.toFixed(2)} g per ${q} g`)).figures;
        const scale = nutrient(t[1]).unit === 'mg' ? 1000 : 1;
        expect(composition[t[1]]).toBeCloseTo((100 * p * scale) / q, 9);
      }),
    );
  });

  it('a decimal comma reads as a decimal point', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...tags), hundredths(99)), { minLength: 1, maxLength: 5 }),
        (rows) => {
          const text = `per 100 g\n${rows.map(([t, p]) => `${t[0]} ${p.toFixed(2)} g`).join('\n')}`;
          const point = readLabel(text);
          const comma = readLabel(text.replaceAll('.', ','));
          expect(figuresOf(comma).figures).toEqual(figuresOf(point).figures);
          expect(comma.questions.map((q) => q.id)).toEqual(point.questions.map((q) => q.id));
        },
      ),
    );
  });

  it('the order of the lines does not matter', () => {
    const single = PLAIN.filter(
      (s) => readLabel(s.text).quantities.length <= 1 && s.text.includes('\n') && !s.answers,
    );
    expect(single.length).toBeGreaterThan(20);
    fc.assert(
      fc.property(fc.constantFrom(...single), fc.infiniteStream(fc.nat()), (s, draws) => {
        const lines = s.text.split('\n');
        const shuffled = lines
          .map((line) => [draws.next().value as number, line] as const)
          .sort((a, b) => a[0] - b[0])
          .map(([, line]) => line);
        expect(figuresOf(readLabel(shuffled.join('\n'))).figures).toEqual(
          figuresOf(readLabel(s.text)).figures,
        );
      }),
      { numRuns: 500 },
    );
  });
});
