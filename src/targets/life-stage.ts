/** Life stages of an animal, and the profile that a new animal's target starts from. */

export const LIFE_STAGES = {
  adult: 'adult',
  growing: 'growing',
  breeding: 'pregnant or nursing',
  old: 'old',
} as const;

export type LifeStage = keyof typeof LIFE_STAGES;

/** The species offered by name; any other may be written in words. */
export const SPECIES: readonly [string, ...string[]] = [
  'golden hamster',
  'dwarf hamster',
  'hamster',
  'mouse',
  'gerbil',
];

/** Where an animal's target starts: one of the profiles that come with Pouchful, and what to know about it. */
interface StartingProfile {
  readonly profileId: string;
  /** Sentences for people: how far the profile fits, and when to ask a vet. */
  readonly notes: readonly string[];
}

/**
 * NRC 1995, ch. 5, says that the golden hamster is the hamster most used in research, and that very little is known
 * of its needs; doi 10.17226/4758.
 */
const DWARF =
  'The published needs were found with golden hamsters; ask a vet what to change for a dwarf hamster.';
const MOUSE =
  'The published needs of mice are least amounts for growing laboratory mice; they set no most for protein or fat.';

const STAGE_NOTES: Record<LifeStage, string | undefined> = {
  adult: undefined,
  growing: undefined,
  breeding:
    'A pregnant or nursing animal needs more than any adult profile says; ask a vet before you change its food.',
  old: 'No profile for old animals is in the program; ask a vet whether the adult ranges suit this one.',
};

/**
 * The profile that a new animal of this species and life stage starts from.
 * @param species in words, as the keeper wrote it
 */
export function profileFor(species: string, lifeStage: LifeStage): StartingProfile {
  const words = species.trim().toLowerCase();
  const settled = lifeStage === 'adult' || lifeStage === 'old';
  const hamster = settled ? 'hamster-adult' : 'hamster-nrc';
  const stage = STAGE_NOTES[lifeStage];
  const start = (profileId: string, ...notes: string[]): StartingProfile => ({
    profileId,
    notes: stage ? [...notes, stage] : notes,
  });
  if (/\bhamsters?$/.test(words)) return words.includes('dwarf') ? start(hamster, DWARF) : start(hamster);
  // Spiny mice, dormice and other mice by name alone are not the mouse of the laboratory.
  if (/^((house|fancy|laboratory|pet) )?(mouse|mice)$/.test(words)) return start('mouse-nrc', MOUSE);
  return start(
    hamster,
    `No target profile for ${words ? `a ${words}` : 'this animal'} is in the program. This hamster profile is only a place to start; copy it under Targets and change it as a vet advises.`,
  );
}
