/** Files that are not taken in say which field is wrong, what it holds and what to do; no text at all throws. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FORMAT_VERSION } from '../../../src/household/exchange/format.ts';
import { householdFile } from '../../../src/household/exchange/household-file.ts';
import { planImport } from '../../../src/household/exchange/plan-import.ts';
import { type Entry, readHouseholdFile } from '../../../src/household/exchange/read-household.ts';
import { draws } from '../../draws.ts';
import { demo } from '../demo-version.ts';

const [pellet] = demo.foods;
const [animal] = demo.animals;
const [mix] = demo.mixes;
if (!pellet || !animal || !mix) throw new Error('the demonstration lacks something');
const ENTRIES: readonly Entry[] = [
  { kind: 'foods', id: pellet.id, body: pellet },
  { kind: 'animals', id: animal.id, body: animal },
  { kind: 'mixes', id: mix.id, body: mix },
];
const TEXT = [...householdFile(ENTRIES)].join('');

function faultOf(text: string): string {
  const plan = planImport(text, [], 'replace');
  return plan.ok ? 'none' : plan.faults.map((f) => `${f.field}: ${f.message}`).join('\n');
}

const file = (records: readonly unknown[], more: object = {}) =>
  JSON.stringify({ format: 'pouchful-household', version: 1, records, ...more });
const food = { kind: 'foods', id: pellet.id, body: pellet };

describe('files that are refused', () => {
  const cases: readonly (readonly [what: string, text: string, told: RegExp])[] = [
    ['an empty file', '', /the file is empty/],
    ['one that was cut off', TEXT.slice(0, -40), /no JSON/],
    ['another program’s JSON', '{"foods":[]}', /\/format: it does not say its format/],
    ['a list', '[]', /no file of Pouchful/],
    [
      'a food for another keeper',
      '{"format":"pouchful-mix","version":1}',
      /\/format: its format is "pouchful-mix"/,
    ],
    [
      'a newer version',
      `{"format":"pouchful-household","version":${FORMAT_VERSION + 1},"records":[]}`,
      /\/version: .*bring Pouchful up to date/,
    ],
    ['no version', '{"format":"pouchful-household","records":[]}', /\/version/],
    [
      'no records',
      '{"format":"pouchful-household","version":1}',
      /\/records: the list of records is missing/,
    ],
    ['a record of no kind', file([{ ...food, kind: 'pets' }]), /\/records\/0\/kind: "pets" is no kind/],
    ['a record without an id', file([{ ...food, id: 7 }]), /\/records\/0\/id: 7 is no id/],
    ['an id that its body does not have', file([{ ...food, id: 'other' }]), /\/records\/0\/body\/id/],
    ['a record twice', file([food, food]), /\/records\/1\/id: “demo-pellet” stands twice/],
    [
      'a figure that cannot be',
      file([{ ...food, body: { ...pellet, composition: { PROCNT: 170 } } }]),
      /\/records\/0\/body\/composition\/PROCNT.*170/,
    ],
    [
      'a field that nobody knows',
      file([{ ...food, body: { ...pellet, colour: 'red' } }]),
      /\/records\/0\/body\/colour/,
    ],
    [
      'a key that is more than a key',
      file([{ ...food, body: JSON.parse('{"__proto__":{"a":1}}') }]),
      /__proto__/,
    ],
    [
      'a mix whose animal is not there',
      file([{ kind: 'mixes', id: mix.id, body: mix }]),
      /mixes "demo-mix": it names “demo-animal” of animals/,
    ],
    ['brackets without end', '['.repeat(5000), /nested deeper/],
    ['a wrong list of what is gone', file([food], { gone: [3] }), /\/gone\/0/],
  ];
  for (const [what, text, told] of cases) it(what, () => expect(faultOf(text)).toMatch(told));

  it('not where what is named is known to be gone', () => {
    const gone = [
      { kind: 'animals', id: animal.id },
      { kind: 'profiles', id: mix.profileId },
    ];
    expect(faultOf(file([{ kind: 'mixes', id: mix.id, body: mix }], { gone }))).toBe('none');
  });

  it('not where the keeper’s program put a mark before the text', () => {
    expect(faultOf(`\ufeff${TEXT}`)).toBe('none');
  });

  it('whatever stands in them', () => {
    const flips = fc.array(fc.tuple(fc.nat(TEXT.length - 1), fc.integer({ min: 32, max: 126 })), {
      minLength: 1,
      maxLength: 5,
    });
    let refused = 0;
    fc.assert(
      fc.property(fc.oneof(flips, fc.string(), fc.json()), (change) => {
        const text =
          typeof change === 'string'
            ? change
            : change.reduce(
                (t, [at, code]) => t.slice(0, at) + String.fromCharCode(code) + t.slice(at + 1),
                TEXT,
              );
        const reading = readHouseholdFile(text);
        if (!reading.ok) {
          refused++;
          expect(reading.faults.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: draws(5000, 300) },
    );
    expect(refused).toBeGreaterThan(draws(5000, 300) / 4);
  });
});
