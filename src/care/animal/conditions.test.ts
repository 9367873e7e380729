import { describe, expect, it } from 'vitest';
import { cautionsFor } from '../../foods/cautions/find.ts';
import { SPECIES } from '../../targets/life-stage.ts';
import type { Condition } from '../model.ts';
import { cautionSpecies, conditionsNow, isIn } from './conditions.ts';

const diabetes: Condition = { what: 'diabetes', since: '2026-01-02', vet: true };
const over: Condition = { what: 'pregnant', since: '2025-05-01', until: '2025-05-17' };
/** The rows for some species only that two sweet foods run into. */
const forDwarfs = (species: string) => [
  ...new Set(
    ['Raisins', 'Sweetcorn']
      .flatMap((name) => cautionsFor({ name }, species))
      .flatMap(({ caution }) => (caution.appliesTo ? [caution.id] : [])),
  ),
];

describe('what an animal is in', () => {
  it('is what nobody has said to be over', () => {
    expect(conditionsNow({ conditions: [over, diabetes] })).toEqual([diabetes]);
    expect(isIn({ conditions: [over] }, 'pregnant')).toBe(false);
    expect(conditionsNow({})).toEqual([]);
  });
});

describe('cautions against sugar', () => {
  it('count for every dwarf hamster that is offered, by name, and for the Chinese one', () => {
    const small = SPECIES.filter((s) => forDwarfs(s).length > 0);
    expect(small).toEqual([
      "Campbell's hamster",
      'winter white hamster',
      'Roborovski hamster',
      'Chinese hamster',
      'dwarf hamster',
    ]);
    for (const species of small)
      expect(forDwarfs(species), species).toEqual(['dwarf-sugary-dried-fruit', 'dwarf-sweet-fruit']);
  });

  it('count for any animal with diabetes while it is said to have it', () => {
    for (const species of ['golden hamster', 'rat', 'mouse', 'Steppenlemming']) {
      const animal = { species, conditions: [diabetes] };
      expect(forDwarfs(cautionSpecies(animal)), species).toEqual([
        'dwarf-sugary-dried-fruit',
        'dwarf-sweet-fruit',
      ]);
      const well = { species, conditions: [{ ...diabetes, until: '2026-02-01' as const }] };
      expect(forDwarfs(cautionSpecies(well)), species).toEqual([]);
    }
  });
});
