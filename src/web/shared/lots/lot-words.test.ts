import { describe, expect, it } from 'vitest';
import { lotOf } from '../../../../test/kitchen/cupboards.ts';
import { lotState } from '../../../household/reckon/cupboard/lot-state.ts';
import { tickedStep } from '../../../kitchen/freezing/freeze-treatment.ts';
import type { Lot } from '../../../kitchen/model.ts';
import { lotWords } from './lot-words.ts';

const DAY = '2026-03-10';

const OATS = lotOf({ id: 'a', food: 'rolled-oats', name: 'Rolled oats', grams: 500 });

describe('the state of a lot in words', () => {
  const state = (about: Partial<Lot>, day = DAY) => {
    const lot = { ...OATS, ...about };
    const found = lotState({ lot, grams: 500 }, day, 'seed');
    return { kind: found.kind, words: lotWords(lot, found, day) };
  };
  const cold = [
    { kind: 'freeze', from: '2026-03-10', to: '2026-03-14' },
    { kind: 'thaw', from: '2026-03-14', to: '2026-03-18' },
  ] as const;

  it('follows a lot through the cold', () => {
    expect(state({}).words).toBe('waits for freezing: no days yet');
    expect(state({ cold }, '2026-03-09')).toEqual({
      kind: 'waits',
      words: 'waits for the freezer: goes in on 10 March',
    });
    expect(state({ cold })).toEqual({
      kind: 'treatment',
      words: 'in the freezer until 14 March, ready on 18 March',
    });
    expect(state({ cold }, '2026-03-14').kind).toBe('due');
    const half = tickedStep({ ...OATS, cold }, 0, '2026-03-14');
    expect(state(half, '2026-03-14').words).toBe('thawing until 18 March, then ready');
    expect(state(tickedStep(half, 1, '2026-03-18'), '2026-03-18')).toEqual({ kind: 'ready', words: 'ready' });
  });
  it('says what bars it before anything else, and what was overruled', () => {
    expect(state({ cold, barred: { why: 'infested: moths', on: DAY } })).toEqual({
      kind: 'barred',
      words: 'not used any more, insects in it: moths',
    });
    expect(state({ overruled: { note: 'heated by the mill', on: DAY } })).toEqual({
      kind: 'ready',
      words: 'ready, without freezing here',
    });
    expect(state({ form: 'fresh' }).kind).toBe('fresh');
  });
  it('tells of a best before that is past, waiting or ready', () => {
    const bestBefore = '2026-03-09';
    expect(state({ form: 'dried', bestBefore })).toEqual({
      kind: 'past',
      words: 'ready; past its best before, 9 March',
    });
    expect(state({ bestBefore }).words).toMatch(/^waits for freezing.*past its best before, 9 March$/);
    expect(state({ form: 'dried', bestBefore: DAY }).kind).toBe('ready');
  });
});
