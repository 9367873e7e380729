import { expect, test } from 'vitest';
import type { CautionNote } from '../../../formulation/problem/result.ts';
import { listedFoods, neverFed } from './hurts.ts';

const note = (about: Partial<CautionNote>): CautionNote => ({
  pointer: '/foods/0',
  food: 'muesli',
  caution: 'onion',
  severity: 'never',
  title: 'Onion',
  found: 'onion',
  reason: '',
  way: '',
  source: '',
  applied: 'blocked',
  ...about,
});

test('one line a food says all that its list has', () => {
  const notes = [
    note({ listed: true }),
    note({ listed: true, caution: 'cocoa', found: 'chocolate' }),
    note({ food: 'leek', found: 'leek' }),
    note({ food: 'almond', severity: 'limit', applied: 'capped' }),
    note({ pointer: '/beside/0', food: 'pellet', listed: true, applied: 'noted', found: 'avocado' }),
  ];
  expect(listedFoods(notes)).toEqual([
    { food: 'muesli', found: 'onion, chocolate', cautions: ['onion', 'cocoa'], beside: false, gone: false },
    { food: 'pellet', found: 'avocado', cautions: ['onion'], beside: true, gone: false },
  ]);
  expect(neverFed(notes)).toEqual(['leek']);
});

test('what the keeper went ahead with in part is not gone ahead with', () => {
  const lifted = note({ listed: true, applied: 'overridden' });
  expect(listedFoods([lifted])[0]?.gone).toBe(true);
  expect(listedFoods([lifted, note({ listed: true, caution: 'cocoa' })])[0]?.gone).toBe(false);
});
