import { describe, expect, it } from 'vitest';
import { settle } from '../../../../test/household/exchange/settle-table.ts';
import { PROFILES } from '../../../targets/profiles.ts';
import { planImport } from '../plan-import.ts';
import { readTable } from './read-table.ts';
import { splitText } from './split-text.ts';
import { tableFile } from './table-file.ts';
import { type ProposalFor, proposalOf } from './table-proposal.ts';

const profile = PROFILES.find((p) => p.id === 'hamster-adult-crude') ?? raise();

function raise(): never {
  throw new Error('no such profile');
}

function about(): ProposalFor {
  let n = 0;
  return {
    tableName: 'my table, 2026-11-28',
    today: '2026-11-28',
    now: '2026-11-28T12:00:00.000Z',
    newId: () => `new-${++n}`,
    profile,
    ownFoods: [],
    references: new Map(),
    mixName: 'Winter',
  };
}

const TEXT =
  'Food;Group;Share %;Crude protein %;Crude fat %;Price €/kg;Source\nOats;grain;60;11,5;<7;1,2;label\nPeas;legumes;30;24;1,5;;\nMystery;;5;;;;\nExtra;;;10;2;;';

function proposed(answers: Record<string, string> = {}) {
  const { grid } = splitText(TEXT);
  const { table } = settle(grid, { basis: 'as fed', 'row 3': 'own', ...answers });
  return { table, proposal: proposalOf(table, about()) };
}

describe('what a table comes to', () => {
  it('foods of the keeper’s own with their source, and a mix with the shares as they stand', () => {
    const { table, proposal } = proposed();
    expect(table.offHundred).toBe(95);
    expect(proposal.foods.map((f) => [f.name, f.group, f.pricePerKg, f.source])).toEqual([
      ['Oats', 'seed', 1.2, 'my table, 2026-11-28: label'],
      ['Peas', 'legume', undefined, 'my table, 2026-11-28'],
      ['Mystery', undefined, undefined, 'my table, 2026-11-28'],
      ['Extra', undefined, undefined, 'my table, 2026-11-28'],
    ]);
    const [oats, , mystery] = proposal.foods;
    expect(oats?.composition).toEqual({ PROCNT: 11.5 });
    expect(oats?.high).toEqual({ FAT: 7 });
    expect(oats?.evidence?.sources?.[0]).toMatchObject({
      name: 'my table, 2026-11-28: label',
      date: '2026-11-28',
      basis: 'as fed',
      proteinFactor: 6.25,
    });
    expect(mystery?.composition).toEqual({});
    expect(proposal.mix?.shares).toEqual({ 'new-1': 60, 'new-3': 30, 'new-5': 5 });
    expect(proposal.notes.join(' ')).toMatch(/come to 95 %/);
    expect(proposal.notes.join(' ')).toMatch(/One food has no share/);
  });

  it('shares brought to 100 only where the keeper says so', () => {
    const { proposal } = proposed({ scale: 'yes' });
    const sum = Object.values(proposal.mix?.shares ?? {}).reduce((a, b) => a + b, 0);
    expect(sum).toBeCloseTo(100, 6);
    expect(proposal.mix?.shares['new-1']).toBeCloseTo((60 / 95) * 100, 6);
  });

  it('a file that is taken in whole', () => {
    const plan = planImport(tableFile(proposed().proposal), [], 'add');
    expect(plan.ok && plan.put.map((e) => e.kind)).toEqual(['foods', 'foods', 'foods', 'foods', 'mixes']);
  });

  it('nothing while a question is open, or a row is not decided', () => {
    const { grid } = splitText(TEXT);
    const { table } = settle(grid, { basis: 'as fed' });
    expect(table.rows.find((r) => r.name === 'Mystery')?.become).toBeUndefined();
    expect(table.settled).toBe(false);
    expect(() => proposalOf(table, about())).toThrow('open questions');
  });

  it('asks again for the columns when their reading changes', () => {
    const { grid } = splitText(TEXT);
    const { table } = settle(grid, { basis: 'as fed', 'row 3': 'own' });
    const answers = Object.fromEntries(
      table.questions.flatMap((q) => (q.answer === undefined ? [] : [[q.id, q.answer]])),
    );
    expect(readTable(grid, { ...answers, 'row 3': 'own' }).settled).toBe(true);
    const other = readTable(grid, { ...answers, 'row 3': 'own', 'column 4': 'ASH' });
    expect(other.questions.find((q) => q.id === 'columns')?.answer).toBeUndefined();
    expect(other.settled).toBe(false);
  });

  it('refuses by row what no food can have', () => {
    const { grid } = splitText('Food;Crude protein %;Crude fat %\nOats;60;60\nPeas;24;2');
    const { table } = settle(grid, { basis: 'as fed' });
    expect(table.rows[0]?.faults.join(' ')).toContain('100 g cannot hold 120 g');
    expect(table.settled).toBe(false);
    expect(settle(grid, { basis: 'as fed', 'row 1': 'own' }).table.settled).toBe(false);
    expect(settle(grid, { basis: 'as fed', 'row 1': 'out' }).table.settled).toBe(true);
  });
});
