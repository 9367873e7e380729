/** Labels drawn from a table of true figures: what is read without a question is true. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import { figuresOf } from './figures.ts';
import { paste } from './pastes/paste.ts';
import { readLabel } from './read.ts';

/** Printed figures are rounded, most to two places or to whole mg, and kJ from kcal. */
const LEEWAY = 0.04;
const STEP: Partial<Record<Tag, number>> = { ENERC_KCAL: 8, VITA_IU: 1, CA: 8, P: 8 };
const PASTES = draws(20_000, 2000);

/** What is wrong in silence of what is read from a paste. */
function wrong(seed: number): string[] {
  const { text, truth } = paste(seed);
  const { composition, low = {}, high = {} } = figuresOf(readLabel(text)).figures;
  const off = (tag: Tag) => (truth.get(tag) ?? 0) * LEEWAY + (STEP[tag] ?? 0.08);
  const told = (of: object) => Object.entries(of) as [Tag, number][];
  const of = (tag: Tag) => truth.get(tag) ?? Number.NaN;
  return [
    ...told(composition).flatMap(([tag, v]) =>
      Math.abs(v - of(tag)) <= off(tag) ? [] : [`${tag} = ${v}, truly ${of(tag)}`],
    ),
    ...told(low).flatMap(([tag, v]) => (v <= of(tag) + off(tag) ? [] : [`${tag} >= ${v}, truly ${of(tag)}`])),
    ...told(high).flatMap(([tag, v]) =>
      v >= of(tag) - off(tag) ? [] : [`${tag} <= ${v}, truly ${of(tag)}`],
    ),
  ];
}

it(`${PASTES} drawn labels hold no figure that is wrong in silence, and most of their figures are read`, () => {
  let read = 0;
  fc.assert(
    fc.property(fc.integer(), (seed) => {
      read += Object.keys(figuresOf(readLabel(paste(seed).text)).figures.composition).length > 0 ? 1 : 0;
      expect(wrong(seed), paste(seed).text).toEqual([]);
    }),
    { numRuns: PASTES, endOnFailure: true },
  );
  expect(read).toBeGreaterThan(0.4 * PASTES);
});
