/** Life stages of an animal, and the profile that a new animal's target starts from. */

import { namesOf } from '../words/names-of.ts';
import { words } from '../words/words.ts';

const STAGES = ['adult', 'growing', 'breeding', 'old'] as const;

export type LifeStage = (typeof STAGES)[number];

/** Each stage by its name, in the language spoken. */
export const LIFE_STAGES = namesOf(STAGES, (stage) => words().animals.stages[stage]);

/** The species offered by name; any other may be written in words. */
export const SPECIES: readonly [string, ...string[]] = [
  'golden hamster',
  "Campbell's hamster",
  'winter white hamster',
  'Roborovski hamster',
  'Chinese hamster',
  'dwarf hamster',
  'hamster',
  'gerbil',
  'mouse',
  'rat',
];

/** The mouse of the laboratory and the home; spiny mice, dormice and others are not it. */
const MOUSE =
  /^((house|fancy|laboratory|pet) )?(mouse|mice)$|^(farb|haus|labor)?(maus|mäuse)$|^(kleur|huis|tamme )?muis$/;

/** The Mongolian gerbil; what is called after it but is another animal is not it. */
const GERBIL =
  /^(mongolian |mongolische |mongoolse )?(gerbils?|rennmaus|rennmäuse|gerbillen|renmuis|woestijnrat)$/;

/** The rat of the laboratory and the home. */
const RAT = /^((fancy|pet|laboratory|house) )?rats?$|^(farb|labor|haus)?ratten?$|^(tamme |kleur)?rat(ten)?$/;

/** Dwarf hamsters by any of their names; the Chinese one is no golden hamster either. */
const DWARF = /dwarf|zwerg|dwerg|campbell|winter white|roborovski|chinese/;

/** Where an animal's target starts: one of the profiles that come with Pouchful, and what to know about it. */
interface StartingProfile {
  readonly profileId: string;
  /** Sentences for people: how far the profile fits, and when to ask a vet. */
  readonly notes: readonly string[];
}

/** The species by its name in the language spoken; one written in words stays as it was written. */
export function speciesWord(species: string): string {
  const { species: names } = words().animals;
  return names[species as keyof typeof names] ?? species;
}

/** The same in a list to choose from: a name that leaves open which animal it is says so. */
export function speciesToChoose(species: string): string {
  const { speciesOpen } = words().animals;
  return speciesOpen[species as keyof typeof speciesOpen] ?? speciesWord(species);
}

/** The stage that needs hold for by its name in the language spoken; one written in words stays as it was written. */
export function needsStage(stage: string): string {
  const { stages } = words().targets;
  return stages[stage as keyof typeof stages] ?? stage;
}

/**
 * NRC 1995, ch. 5, says that the golden hamster is the hamster most used in research, and that very little is known
 * of its needs; doi 10.17226/4758. Growth of golden hamsters: Banta, Warner, Robertson 1975, J. Nutr. 105:38-45, abstract.
 *
 * The profile that a new animal of this species and life stage starts from: one whose figures have been looked up, or
 * are common practice.
 * @param species in words, as the keeper wrote it
 */
export function profileFor(species: string, lifeStage: LifeStage): StartingProfile {
  const said = species.trim().toLowerCase();
  const t = words().targets.startNotes;
  const ofStage = lifeStage === 'adult' ? undefined : t[lifeStage];
  const start = (profileId: string, ...notes: (string | undefined)[]): StartingProfile => ({
    profileId,
    notes: notes.filter((note) => note !== undefined),
  });
  const hamster = (...notes: string[]) => start('hamster-adult-crude', ...notes, ofStage);
  if (/hamsters?$/.test(said)) return DWARF.test(said) ? hamster(t.dwarf) : hamster();
  // Spiny mice, dormice and other mice by name alone are not the mouse of the laboratory.
  if (MOUSE.test(said)) {
    if (lifeStage === 'breeding') return start('mouse-nrc-breeding', t.mouseBreeding);
    return start('mouse-nrc', t.mouse, lifeStage === 'old' ? ofStage : undefined);
  }
  if (GERBIL.test(said)) return start('gerbil', t.gerbil, lifeStage === 'growing' ? t.growingOther : ofStage);
  if (RAT.test(said)) return start('rat', t.rat, lifeStage === 'growing' ? undefined : ofStage);
  return hamster(said ? t.otherSpecies(said) : t.noSpecies);
}
