/** A drawn table, written in any of the ways keepers write one and read back, gives the same figures. */
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { decodeText } from '../../../src/household/exchange/table/decode.ts';
import { gridOfSheet } from '../../../src/household/exchange/table/sheet.ts';
import { splitText } from '../../../src/household/exchange/table/split-text.ts';
import type { Tag } from '../../../src/nutrition/nutrients.ts';
import { draws } from '../../draws.ts';
import { settle } from './settle-table.ts';

type Words = Readonly<Record<'name' | 'share' | 'total' | 'PROCNT' | 'FAT' | 'FIBC' | 'ASH' | 'CA', string>>;

const LANGUAGES: readonly Words[] = [
  {
    name: 'Ingredient',
    share: 'Share',
    total: 'Total',
    PROCNT: 'Crude protein',
    FAT: 'Crude fat',
    FIBC: 'Crude fibre',
    ASH: 'Crude ash',
    CA: 'Calcium',
  },
  {
    name: 'Futtermittel',
    share: 'Anteil',
    total: 'Summe',
    PROCNT: 'Rohprotein',
    FAT: 'Rohfett',
    FIBC: 'Rohfaser',
    ASH: 'Rohasche',
    CA: 'Kalzium',
  },
  {
    name: 'Grondstof',
    share: 'Aandeel',
    total: 'Totaal',
    PROCNT: 'Ruw eiwit',
    FAT: 'Ruw vet',
    FIBC: 'Ruwe celstof',
    ASH: 'Ruwe as',
    CA: 'Calcium',
  },
  {
    name: 'Matière première',
    share: 'Pourcentage',
    total: 'Total',
    PROCNT: 'Protéines brutes',
    FAT: 'Matières grasses',
    FIBC: 'Cellulose brute',
    ASH: 'Cendres brutes',
    CA: 'Calcium',
  },
  {
    name: 'Alimento',
    share: 'Porcentaje',
    total: 'Total',
    PROCNT: 'Proteína bruta',
    FAT: 'Grasa bruta',
    FIBC: 'Fibra bruta',
    ASH: 'Cenizas',
    CA: 'Calcio',
  },
];
const TAGS = ['PROCNT', 'FAT', 'FIBC', 'ASH', 'CA'] as const satisfies readonly Tag[];

const NAMES = [
  'Oats',
  'Peas, split',
  'Möhre',
  'Linseed "brown"',
  'Avoine',
  'Haver',
  'Guisante',
  'Millet; white',
  'Löwenzahn',
];

/** Figures as a keeper has them: up to two decimals, or not known. Parts fit into 100 g. */
const figure = (most: number) =>
  fc.option(
    fc.integer({ min: 0, max: most * 100 }).map((n) => n / 100),
    { nil: undefined },
  );
const row = fc.record({
  PROCNT: figure(35),
  FAT: figure(30),
  FIBC: figure(20),
  ASH: figure(8),
  CA: fc.option(fc.integer({ min: 0, max: 900 }), { nil: undefined }),
});

const table = fc.record({
  rows: fc.uniqueArray(
    fc.record({ name: fc.constantFrom(...NAMES), figures: row, share: fc.integer({ min: 1, max: 40 }) }),
    { selector: (r) => r.name, minLength: 2, maxLength: 8 },
  ),
  words: fc.constantFrom(...LANGUAGES),
  decimal: fc.constantFrom(',' as const, '.' as const),
  delimiter: fc.constantFrom('\t', ';', ',' as const, '|'),
  unitAt: fc.constantFrom('heading', 'cell', 'line', 'per'),
  percents: fc.boolean(),
  unknown: fc.constantFrom('', '-', 'n/a', 'k.A.', '?'),
  total: fc.boolean(),
  title: fc.option(fc.constantFrom('My mix', 'Tabelle vom Winter'), { nil: undefined }),
  bom: fc.boolean(),
  bytes: fc.constantFrom('utf-8', 'windows-1252', 'utf-16'),
  trailing: fc.integer({ min: 0, max: 3 }),
  basis: fc.constantFrom('as fed', 'dry matter'),
});
type Drawn = typeof table extends fc.Arbitrary<infer T> ? T : never;

const UNITS: Readonly<Record<(typeof TAGS)[number], string>> = {
  PROCNT: 'g',
  FAT: 'g',
  FIBC: 'g',
  ASH: 'g',
  CA: 'mg',
};

function lines(d: Drawn): string[][] {
  const heading = (tag: (typeof TAGS)[number]) => {
    if (d.unitAt === 'heading') return `${d.words[tag]} (${UNITS[tag]}/100 g)`;
    return d.unitAt === 'per' ? `${d.words[tag]} ${UNITS[tag]} per 100 g` : d.words[tag];
  };
  const printed = (value: number | undefined, unit: string) =>
    value === undefined
      ? d.unknown
      : `${String(value).replace('.', d.decimal)}${d.unitAt === 'cell' ? ` ${unit}` : ''}`;
  const shareOf = (share: number) => `${share}${d.percents ? ' %' : ''}`;
  const more = Array.from({ length: d.trailing }, () => '');
  const head = [d.words.name, `${d.words.share}${d.percents ? '' : ' (%)'}`, ...TAGS.map(heading), ...more];
  const units = d.unitAt === 'line' ? [['', '', ...TAGS.map((tag) => UNITS[tag]), ...more]] : [];
  const body = d.rows.map((r) => [
    r.name,
    shareOf(r.share),
    ...TAGS.map((tag) => printed(r.figures[tag], UNITS[tag])),
    ...more,
  ]);
  const sum = d.rows.reduce((s, r) => s + r.share, 0);
  return [
    ...(d.title ? [[d.title], ['']] : []),
    head,
    ...units,
    ...body,
    ...(d.total ? [[d.words.total, shareOf(sum), ...TAGS.map(() => ''), ...more]] : []),
  ];
}

function encode(text: string, d: Drawn): Uint8Array {
  if (d.bytes === 'windows-1252') return Uint8Array.from(text, (c) => c.charCodeAt(0));
  if (d.bytes === 'utf-16') return Uint8Array.from(Buffer.from(`\ufeff${text}`, 'utf16le'));
  return Uint8Array.from(Buffer.from(`${d.bom ? '\ufeff' : ''}${text}`, 'utf8'));
}

const MOISTURE = 10;

function expectFigures(d: Drawn, grid: Parameters<typeof settle>[0]): void {
  const { table: read } = settle(grid, {
    basis: d.basis,
    moisture: String(MOISTURE),
    per: '100',
    fraction: 'percent',
    sum: 'food',
    'share-means': 'percent',
  });
  expect(read.questions.filter((q) => q.answer === undefined)).toEqual([]);
  const foods = read.rows.filter((r) => r.kind === 'food');
  expect(foods.map((r) => r.name)).toEqual(d.rows.map((r) => r.name));
  const dry = d.basis === 'dry matter' ? (100 - MOISTURE) / 100 : 1;
  for (const [i, { figures, share }] of d.rows.entries()) {
    const got = foods[i];
    expect(got?.share).toBe(share);
    for (const tag of TAGS) {
      const value = figures[tag];
      if (value === undefined) expect(got?.figures.composition[tag]).toBeUndefined();
      else expect(got?.figures.composition[tag]).toBeCloseTo(value * dry, 7);
    }
  }
}

describe('drawn tables', () => {
  it('come back as they were written, from text in any dialect', () => {
    fc.assert(
      fc.property(table, (d) => {
        const text = Papa.unparse(lines(d), { delimiter: d.delimiter, newline: d.bom ? '\r\n' : '\n' });
        const { text: decoded } = decodeText(encode(text, d));
        const { grid, rivals } = splitText(decoded, undefined);
        // Where two would part it, the keeper says which.
        const parted = rivals.length > 0 ? splitText(decoded, d.delimiter as ';').grid : grid;
        expectFigures(d, parted);
      }),
      { numRuns: draws(4000, 300) },
    );
  });

  it('come back from the cells of a sheet, where figures are numbers', () => {
    fc.assert(
      fc.property(table, (d) => {
        const cells = lines({
          ...d,
          unitAt: d.unitAt === 'cell' ? 'heading' : d.unitAt,
          percents: false,
          decimal: '.',
        }).map((r) =>
          r.map((cell) =>
            cell !== '' && Number.isFinite(Number(cell)) ? Number(cell) : cell === '' ? null : cell,
          ),
        );
        expectFigures({ ...d, percents: false }, gridOfSheet(cells));
      }),
      { numRuns: draws(2000, 150) },
    );
  });

  it('are asked about wherever a figure could be read in two ways', () => {
    const three = fc.record({
      whole: fc.integer({ min: 1, max: 34 }),
      rest: fc.integer({ min: 0, max: 999 }),
      mark: fc.constantFrom(',', '.'),
    });
    fc.assert(
      fc.property(three, fc.constantFrom('decimal', 'thousands'), ({ whole, rest, mark }, meant) => {
        const printed = `${whole}${mark}${String(rest).padStart(3, '0')}`;
        const text = `Food\tCalcium (mg/100 g)\nOats\t${printed}\nPeas\t12${mark}5`;
        const { grid } = splitText(text);
        const open = settle(grid, { basis: 'as fed' });
        expect(open.asked).toContain(`mark ${mark}`);
        expect(open.table.settled).toBe(false);
        const { table: read } = settle(grid, { basis: 'as fed', mark: meant });
        const value = meant === 'decimal' ? whole + rest / 1000 : whole * 1000 + rest;
        expect(read.rows[0]?.figures.composition.CA).toBeCloseTo(value, 7);
      }),
      { numRuns: draws(1000, 100) },
    );
  });
});
