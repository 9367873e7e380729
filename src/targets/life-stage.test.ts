/** Which profile a new animal starts from, and what is said about it. */
import { describe, expect, it } from 'vitest';
import { LIFE_STAGES, type LifeStage, profileFor, SPECIES } from './life-stage.ts';
import { profile } from './profiles.ts';

const STAGES = Object.keys(LIFE_STAGES) as LifeStage[];

describe('the profile that a new animal starts from', () => {
  it.each([
    ['golden hamster', 'adult', 'hamster-adult'],
    ['golden hamster', 'old', 'hamster-adult'],
    ['golden hamster', 'growing', 'hamster-nrc'],
    ['Campbell’s dwarf hamster', 'breeding', 'hamster-nrc'],
    ['dwarf hamsters', 'adult', 'hamster-adult'],
    ['mouse', 'adult', 'mouse-nrc'],
    [' Fancy mouse ', 'growing', 'mouse-nrc'],
    ['gerbil', 'adult', 'hamster-adult'],
    ['gerbil', 'growing', 'hamster-nrc'],
    ['', 'adult', 'hamster-adult'],
  ] as const)('%s, %s: %s', (species, stage, id) => {
    expect(profileFor(species, stage).profileId).toBe(id);
  });

  it('comes with the program, whatever the animal', () => {
    for (const species of [...SPECIES, 'degu', ''])
      for (const stage of STAGES)
        expect(profile(profileFor(species, stage).profileId), `${species}, ${stage}`).toBeDefined();
  });

  it('is said to be no profile for that animal where there is none', () => {
    for (const species of ['gerbil', 'spiny mouse', 'dormouse', 'degu'])
      expect(profileFor(species, 'adult').notes.join(' ')).toContain(`No target profile for a ${species}`);
    expect(profileFor(' ', 'adult').notes.join(' ')).toContain('No target profile for this animal');
    for (const species of ['golden hamster', 'hamster', 'mouse'])
      expect(profileFor(species, 'adult').notes.join(' ')).not.toContain('No target profile');
  });

  it('defers to a vet for old and breeding animals of every species, and only there for golden hamsters', () => {
    for (const species of SPECIES)
      for (const stage of ['old', 'breeding'] as const)
        expect(profileFor(species, stage).notes.at(-1), `${species}, ${stage}`).toContain('ask a vet');
    for (const stage of ['adult', 'growing'] as const)
      expect(profileFor('golden hamster', stage).notes).toEqual([]);
  });
});
