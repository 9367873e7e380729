import { expect, it } from 'vitest';
import { byDay, changeWords, differenceRow, undoWords } from './change-words.ts';

const nobody = () => undefined;

it('says what was done to which thing', () => {
  expect(changeWords({ what: 'changed', kind: 'lots', name: 'Millet' })).toBe('Changed: the pack “Millet”');
  expect(changeWords({ what: 'brought back', kind: 'animals', name: 'Hazel' })).toBe(
    'Brought back: the animal “Hazel”',
  );
  expect(changeWords({ what: 'changed', kind: 'kitchen', name: 'kitchen' })).toBe(
    'Changed: what the kitchen has',
  );
});

it('calls undoing a deletion bringing back, while it is deleted', () => {
  expect(undoWords({ what: 'deleted', newest: true })).toBe('Bring back');
  expect(undoWords({ what: 'deleted', newest: false })).toBe('Undo this');
  expect(undoWords({ what: 'changed', newest: true })).toBe('Undo this');
});

it('lays changes by day, newest first as they come', () => {
  const at = (day: number) => ({ at: `2026-03-${day}T12:00:00.000Z` });
  const days = byDay([at(14), at(14), at(12)], '2026-03-14');
  expect(days.map(([, changes]) => changes.length)).toEqual([2, 1]);
  expect(days[0]?.[0]).toBe('Today');
  expect(days[1]?.[0]).toContain('12 March');
});

it('names fields and things of lists as forms do', () => {
  const path = ['problem', 'foods', { item: { id: 'millet', name: 'Millet' } }, 'refused'];
  expect(differenceRow({ path, was: undefined, is: true }, nobody)).toEqual({
    what: 'Mix, Foods, Millet, refused',
    was: 'nothing',
    is: 'yes',
  });
  expect(differenceRow({ path: [], was: undefined, is: { seller: 'Mill' } }, nobody)).toEqual({
    what: 'All of it',
    was: 'nothing',
    is: 'Seller Mill',
  });
});
