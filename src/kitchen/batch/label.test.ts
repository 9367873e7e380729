import { describe, expect, it } from 'vitest';
import type { CautionNote } from '../../formulation/problem/result.ts';
import { cautionSentence, cautionsOf, saidOnLabel } from './foods-cautions.ts';

describe('cautionsOf', () => {
  it('says once what is said of several foods, and nothing of foods that are not there', () => {
    const note = (food: string, title: string) =>
      ({ food, title, reason: 'It harms.', way: 'Boil it.' }) as CautionNote;
    const notes = [
      note('a', 'Raw pulses'),
      note('b', 'Raw pulses'),
      note('a', 'Salt'),
      note('c', 'Raw pulses'),
    ];
    const found = cautionsOf(notes, (food) => ({ a: 'Peas', b: 'Lentils' })[food]);
    expect(found.map((c) => [c.title, c.foods])).toEqual([
      ['Raw pulses', ['Peas', 'Lentils']],
      ['Salt', ['Peas']],
    ]);
    expect(cautionSentence(found[0]!)).toBe('Peas and Lentils: Raw pulses. It harms. Boil it.');
    expect(saidOnLabel(found[0]!)).toBe('Raw pulses. It harms. Boil it.');
  });

  it('says on a label how much of a limited food there may be, and leaves the reason to the record', () => {
    const note = { title: 'Raw pulses', reason: 'It harms.', way: 'Boil it.', max_share: 20 };
    const notes = ['a', 'b'].map((food) => ({ ...note, food }) as CautionNote);
    const [two] = cautionsOf(notes, (food) => ({ a: 'Peas', b: 'Lentils' })[food]);
    expect(saidOnLabel(two!)).toBe('At most 20 % of the mix together.');
    const [one] = cautionsOf(notes.slice(0, 1), () => 'Peas');
    expect(saidOnLabel(one!)).toBe('At most 20 % of the mix.');
  });
});
