/** Which profile a new animal starts from, and what is said about it. */
import { describe, expect, it } from 'vitest';
import { unconfirmedBounds } from './confirm.ts';
import { LIFE_STAGES, type LifeStage, profileFor, SPECIES } from './life-stage.ts';
import { profile } from './profiles.ts';

const STAGES = Object.keys(LIFE_STAGES) as LifeStage[];

describe('the profile that a new animal starts from', () => {
  it.each([
    ['golden hamster', 'adult', 'hamster-adult-crude'],
    ['golden hamster', 'old', 'hamster-adult-crude'],
    ['golden hamster', 'growing', 'hamster-adult-crude'],
    ['Campbell’s dwarf hamster', 'breeding', 'hamster-adult-crude'],
    ['dwarf hamsters', 'adult', 'hamster-adult-crude'],
    ['mouse', 'adult', 'mouse-nrc'],
    [' Fancy mouse ', 'growing', 'mouse-nrc'],
    ['mice', 'breeding', 'mouse-nrc-breeding'],
    ['Zwerghamster', 'adult', 'hamster-adult-crude'],
    ['Farbmaus', 'adult', 'mouse-nrc'],
    ['muis', 'breeding', 'mouse-nrc-breeding'],
    ['Stachelmaus', 'adult', 'hamster-adult-crude'],
    ['gerbil', 'adult', 'gerbil'],
    ['gerbil', 'growing', 'gerbil'],
    ['Rennmaus', 'old', 'gerbil'],
    ['Mongolian gerbil', 'adult', 'gerbil'],
    ['rat', 'adult', 'rat'],
    ['Farbratte', 'breeding', 'rat'],
    ['tamme rat', 'growing', 'rat'],
    ['kangaroo rat', 'adult', 'hamster-adult-crude'],
    ['muskrat', 'adult', 'hamster-adult-crude'],
    ['', 'adult', 'hamster-adult-crude'],
  ] as const)('%s, %s: %s', (species, stage, id) => {
    expect(profileFor(species, stage).profileId).toBe(id);
  });

  it('comes with the program, whatever the animal, and may be chosen at once', () => {
    for (const species of [...SPECIES, 'degu', ''])
      for (const stage of STAGES) {
        const start = profile(profileFor(species, stage).profileId);
        expect(start && unconfirmedBounds(start), `${species}, ${stage}`).toEqual([]);
      }
  });

  it('says of a dwarf hamster that there are no figures, in whatever language it is named', () => {
    for (const species of [
      ...['dwarf hamster', 'Zwerghamster', 'dwerghamster', 'Chinese hamster'],
      ...["Campbell's hamster", 'winter white hamster', 'Roborovski hamster'],
    ])
      expect(profileFor(species, 'adult').notes.join(' ')).toContain('No figures for dwarf hamsters');
    expect(profileFor('Goldhamster', 'adult').notes).toEqual([]);
  });

  it('is said to be no profile for that animal where there is none', () => {
    for (const species of ['kangaroo rat', 'spiny mouse', 'dormouse', 'degu'])
      expect(profileFor(species, 'adult').notes.join(' ')).toContain(
        `The program has no needs for a ${species}`,
      );
    expect(profileFor(' ', 'adult').notes.join(' ')).toContain('The program has no needs for this animal');
    for (const species of ['golden hamster', 'hamster', 'mouse', 'gerbil', 'rat'])
      expect(profileFor(species, 'adult').notes.join(' ')).not.toContain('The program has no needs for');
  });

  it('gives a figure with its source, or says that there is none and to ask a vet', () => {
    expect(profileFor('golden hamster', 'adult').notes).toEqual([]);
    for (const species of SPECIES)
      for (const stage of ['growing', 'breeding', 'old'] as const) {
        const words = profileFor(species, stage).notes.join(' ');
        const figures = /Banta and others 1975|The published needs of mice/.test(words);
        expect(figures || /[Nn]o (figures|target profile)/.test(words), `${species}, ${stage}`).toBe(true);
        const isGrowingMouse = species === 'mouse' && stage === 'growing';
        if (!isGrowingMouse) expect(words, `${species}, ${stage}`).toMatch(/vet/);
      }
    for (const stage of STAGES)
      expect(profileFor('dwarf hamster', stage).notes[0]).toMatch(/^No figures for dwarf hamsters/);
  });
});
