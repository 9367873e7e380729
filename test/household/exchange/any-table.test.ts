/** Whatever is pasted and answered: reading never throws, and what comes of it are figures that a food can have. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { impossible } from '../../../src/foods/impossible.ts';
import { planImport } from '../../../src/household/exchange/plan-import.ts';
import type { TableAnswers } from '../../../src/household/exchange/table/asked.ts';
import { decodeText } from '../../../src/household/exchange/table/decode.ts';
import type { Grid } from '../../../src/household/exchange/table/grid.ts';
import { readTable } from '../../../src/household/exchange/table/read-table.ts';
import { splitText } from '../../../src/household/exchange/table/split-text.ts';
import { tableFile } from '../../../src/household/exchange/table/table-file.ts';
import { proposalOf } from '../../../src/household/exchange/table/table-proposal.ts';
import { NUTRIENTS } from '../../../src/nutrition/nutrients.ts';
import { PROFILES } from '../../../src/targets/profiles.ts';
import { draws } from '../../draws.ts';

const HEADINGS = [
  'Food',
  'Share',
  'Share %',
  'g',
  '%',
  'Protein',
  'Rohprotein % TS',
  'Fett (g/kg)',
  'Fibre',
  'Vitamin A (IU/kg)',
  'Ca',
  'Salt',
  'Kohlenhydrate',
  'kcal',
  'TS %',
  'Preis',
  'Group',
  '',
  'Zeug',
  'MG',
  'Dry matter',
];
const CELLS = [
  '',
  '-',
  '0',
  '5',
  '12,5',
  '1,234',
  '1.234,5',
  '<0.1',
  '6,25 g/250 g',
  '100 %',
  '1e308',
  '-3',
  'Oats',
  'Total',
  'Seeds',
  '=1+1',
  '12 g',
  '3 kg',
  'n/a',
  '5-7',
  '__proto__',
  '½',
  '7 kcal',
  '20000000000000000000',
  '٣',
  'constructor',
];
const cell = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...CELLS) },
  fc.string({ maxLength: 8 }),
  fc.double({ noNaN: true, min: -10, max: 1e6 }),
  fc.constantFrom(...HEADINGS),
);

const grid: fc.Arbitrary<Grid> = fc
  .tuple(
    fc.array(fc.constantFrom(...HEADINGS), { minLength: 1, maxLength: 7 }),
    fc.array(fc.array(cell, { maxLength: 7 }), { maxLength: 8 }),
  )
  .map(([head, rows]) => [head, ...rows]);

const profile = PROFILES.find((p) => p.id === 'hamster-adult-crude');

describe('any table', () => {
  it('is read without a fault, whatever is answered; what comes in passes every check', () => {
    let brought = 0;
    fc.assert(
      fc.property(grid, fc.infiniteStream(fc.nat(99)), (cells, chances) => {
        let answers: TableAnswers = {};
        for (let round = 0; round < 12; round++) {
          const table = readTable(cells, answers);
          const open = table.questions.filter((q) => q.answer === undefined);
          const undecided = table.rows.filter((r) => r.become === undefined);
          const next: Record<string, string> = {};
          for (const q of open) {
            const chance = chances.next().value ?? 0;
            next[q.id] =
              q.options.length > 0 && (!q.free || chance % 3 > 0)
                ? (q.options[chance % q.options.length]?.answer ?? '')
                : String(chance);
          }
          for (const r of undecided) next[`row ${r.row}`] = (chances.next().value ?? 0) % 2 ? 'own' : 'out';
          if (Object.keys(next).length === 0) {
            if (!table.settled || !profile) break;
            let n = 0;
            const proposal = proposalOf(table, {
              tableName: 'drawn',
              today: '2026-11-28',
              now: '2026-11-28T12:00:00.000Z',
              newId: () => `n${++n}`,
              profile,
              ownFoods: [],
              references: new Map(),
              mixName: 'Drawn',
            });
            for (const food of proposal.foods) expect(impossible(food)).toEqual([]);
            const plan = planImport(tableFile(proposal), [], 'add');
            if (!plan.ok) expect(plan.faults.map((f) => f.message)).toEqual([]);
            brought++;
            break;
          }
          answers = { ...answers, ...next };
        }
      }),
      { numRuns: draws(6000, 300) },
    );
    expect(brought).toBeGreaterThan(draws(6000, 300) / 20);
  });

  it('of bytes is text in some encoding, and parted somehow', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        const { grid: cells } = splitText(decodeText(bytes).text);
        readTable(cells, {});
      }),
      { numRuns: draws(4000, 300) },
    );
  });

  it('gives amounts only under tagnames', () => {
    const tags = new Set<string>(NUTRIENTS.map((n) => n.tag));
    fc.assert(
      fc.property(grid, (cells) => {
        const { rows } = readTable(cells, { basis: 'as fed', per: '100' });
        for (const { figures } of rows)
          for (const tag of Object.keys(figures.composition)) expect(tags.has(tag)).toBe(true);
      }),
      { numRuns: draws(2000, 100) },
    );
  });
});
