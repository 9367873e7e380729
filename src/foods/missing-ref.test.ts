import { expect, it } from 'vitest';
import { parseProblem } from '../formulation/problem/parse.ts';
import { loadReference } from '../household/reference-file.ts';
import { readIndian } from './build/sources.ts';
import { whyMissing } from './missing-ref.ts';

const reference = loadReference();

it('names what a row of the Indian tables was, and a food that is there in its place', () => {
  expect(whyMissing('ifct:A003')).toBe(
    '"ifct:A003" (pearl millet) stood in the Indian Food Composition Tables, which are no longer shipped; take "pub:pearl-millet" in its place, or enter its label as a food of your own',
  );
  const named = readIndian(process.cwd()).map((row) => whyMissing(row.ref));
  const instead = named.flatMap((sentence) => sentence.match(/take "([^"]+)"/)?.[1] ?? []);
  expect(instead.length).toBeGreaterThan(6);
  for (const ref of instead) expect(reference.get(ref)?.plain, ref).toBe(true);
});

it('says of any other row what the tables hold and what to do', () => {
  expect(whyMissing('ifct:A001')).toMatch(/no longer shipped; enter its label/);
  expect(whyMissing('sr28:08066')).toMatch(/no row of a maker/);
  expect(whyMissing('nonsense')).toBe(
    'no food "nonsense" in the reference tables; find one with: npx pouchful foods search <words>',
  );
});

it('is what a saved mix is told when a food of it has left the tables', () => {
  const mix = { foods: [{ id: 'bajra', ref: 'ifct:A003' }], rules: [] };
  expect(() => parseProblem(mix, reference)).toThrow(/pearl millet.*pub:pearl-millet/);
  expect(
    parseProblem({ ...mix, foods: [{ id: 'bajra', ref: 'pub:pearl-millet' }] }, reference),
  ).toBeDefined();
});
