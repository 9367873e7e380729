import { expect, test } from 'vitest';
import { mix } from '../../../../test/mix/insisting-mix.ts';
import { withGoneAhead } from './go-ahead.ts';

const of = (m: typeof mix) => m.problem.foods.find((f) => f.id === 'oats')?.override;

test('a choice against cautions names them all, why, and since when; a second one leaves the first in place', () => {
  const once = withGoneAhead(mix, 'oats', ['onion', 'avocado'], 'the vet says so', '2026-03-14');
  expect(of(once)).toEqual({
    caution: 'onion',
    also: ['avocado'],
    note: 'the vet says so',
    on: '2026-03-14',
  });
  const twice = withGoneAhead(once, 'oats', ['almond'], 'a treat', '2026-04-01');
  expect(of(twice)).toEqual({
    caution: 'onion',
    also: ['avocado', 'almond'],
    note: 'the vet says so; a treat',
    on: '2026-04-01',
  });
});

test('without a caution nothing is lifted', () => {
  expect(withGoneAhead(mix, 'oats', [], 'why', '2026-03-14')).toBe(mix);
});
