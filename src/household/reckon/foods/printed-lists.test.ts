/** A food with chocolate on its list gets no share of a mix, by whichever way it came in. */
import { expect, test } from 'vitest';
import { Formulation } from '../../../formulation/formulation.ts';
import { parseProblem } from '../../../formulation/problem/parse.ts';
import type { Problem } from '../../../formulation/problem/problem.ts';
import { loadHighs } from '../../../formulation/solve/highs.ts';
import { PROFILES } from '../../../targets/profiles.ts';
import type { OwnFood } from '../../model.ts';
import { loadReference } from '../../reference-file.ts';
import { ownBeside } from '../mix/beside.ts';
import { addFood, ingredientFromOwn, newMix, refreshOwnFood, withProblem } from '../mix/mix-edits.ts';
import { goneAhead, withPrintedLists } from './printed-lists.ts';

const reference = loadReference();
const highs = await loadHighs();

const BAR: OwnFood = {
  id: 'bar',
  name: 'Oat bar',
  kind: 'mix',
  composition: { PROCNT: 12, FAT: 6, WATER: 8 },
  sd: {},
  source: 'label',
  invented: false,
};
const listed = (food: OwnFood): OwnFood => ({ ...food, evidence: { ingredients: 'oats, chocolate, onion' } });
const labelled = (food: OwnFood): OwnFood => ({
  ...food,
  evidence: {
    sources: [
      {
        id: 's',
        name: 'label',
        basis: 'as fed',
        composition: food.composition,
        sd: {},
        printed: 'Ingredients: oats, avocado. Crude protein 12 %',
      },
    ],
  },
});
const profile = PROFILES[0];
if (!profile) throw new Error('no profile');
const empty = newMix({ id: 'm', name: 'M', profile, at: '2026-11-25T10:00:00.000Z' });
const oats = addFood(withProblem(empty, { rules: [], margin: undefined }), {
  id: 'oats',
  ref: 'sr28:20038',
});

function solved(problem: Problem) {
  const wanted = { ...problem, foods: problem.foods.map((f) => ({ ...f, want: 50 })) };
  const result = new Formulation(parseProblem(wanted, reference).problem, { reference, highs }).solve();
  if (result.status !== 'optimal') throw new Error(result.verdict);
  return { share: result.shares.bar, told: result.cautions.map((c) => `${c.caution}: ${c.found}`) };
}

test('an own food brings its list, and its label, into a mix', () => {
  expect(solved(addFood(oats, ingredientFromOwn(BAR)).problem).share).toBeCloseTo(50, 6);
  expect(solved(addFood(oats, ingredientFromOwn(listed(BAR))).problem)).toEqual({
    share: 0,
    told: ['onion-family: onion', 'chocolate: chocolate'],
  });
  expect(solved(addFood(oats, ingredientFromOwn(labelled(BAR))).problem)).toEqual({
    share: 0,
    told: ['avocado: avocado'],
  });
});

test('a list that is pasted later reaches the mixes that use the food', () => {
  const mix = addFood(oats, ingredientFromOwn(BAR));
  expect(solved(refreshOwnFood(mix, listed(BAR)).problem).share).toBe(0);
});

test('a pellet brings its list too', () => {
  expect(ownBeside(listed({ ...BAR, kind: 'pellet' }), oats.problem).ingredients).toEqual([
    'oats, chocolate, onion',
  ]);
});

test('a problem made before lists went along gets them, and keeps what else it has', () => {
  const { problem } = addFood(oats, ingredientFromOwn(BAR));
  expect(solved(withPrintedLists(problem, [listed(BAR)])).share).toBe(0);
  expect(withPrintedLists(problem, [BAR])).toBe(problem);
  const told = withPrintedLists(problem, [listed(BAR)]);
  expect(withPrintedLists(told, [labelled(BAR)])).toBe(told);
});

test('going ahead is kept beside what was chosen before', () => {
  const first = goneAhead(undefined, ['onion-family', 'chocolate'], 'vet', '2026-11-25');
  expect(first).toEqual({ caution: 'onion-family', also: ['chocolate'], note: 'vet', on: '2026-11-25' });
  expect(goneAhead(first, ['chocolate', 'almond'], 'traces', '2026-11-26')).toEqual({
    caution: 'onion-family',
    also: ['chocolate', 'almond'],
    note: 'vet\ntraces',
    on: '2026-11-26',
  });
});
