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
  'No figures for dwarf hamsters are in the program: the published needs were found with golden hamsters. Ask a vet what to change for this one.';
const MOUSE =
  'The published needs of mice are least amounts for growing laboratory mice; they set no most for protein or fat.';
const MOUSE_BREEDING =
  'The published needs of mice, with the more of magnesium, copper, zinc and pantothenic acid that their notes ask while a mouse is pregnant or nursing. Ask a vet before you change its food.';

/** Growth of golden hamsters: Banta, Warner, Robertson 1975, J. Nutr. 105:38-45, abstract. */
const STAGE_NOTES: Record<LifeStage, string | undefined> = {
  adult: undefined,
  growing:
    'For growth one figure is known: golden hamsters needed between 15 and 20 % protein from common feeds (Banta and others 1975, J. Nutr. 105:38-45), and the adult range lies within that. For all else that growth needs there are no figures; ask a vet.',
  breeding:
    'No figures for pregnant or nursing animals are in the program; ask a vet before you change its food.',
  old: 'No figures for old animals are in the program; ask a vet whether the adult ranges suit this one.',
};

/**
 * The profile that a new animal of this species and life stage starts from: one whose figures have been looked up, or
 * are common practice.
 * @param species in words, as the keeper wrote it
 */
export function profileFor(species: string, lifeStage: LifeStage): StartingProfile {
  const words = species.trim().toLowerCase();
  const start = (profileId: string, ...notes: (string | undefined)[]): StartingProfile => ({
    profileId,
    notes: notes.filter((note) => note !== undefined),
  });
  const hamster = (...notes: string[]) => start('hamster-adult-crude', ...notes, STAGE_NOTES[lifeStage]);
  if (/\bhamsters?$/.test(words)) return words.includes('dwarf') ? hamster(DWARF) : hamster();
  // Spiny mice, dormice and other mice by name alone are not the mouse of the laboratory.
  if (/^((house|fancy|laboratory|pet) )?(mouse|mice)$/.test(words)) {
    if (lifeStage === 'breeding') return start('mouse-nrc-breeding', MOUSE_BREEDING);
    return start('mouse-nrc', MOUSE, lifeStage === 'old' ? STAGE_NOTES.old : undefined);
  }
  return hamster(
    `No target profile for ${words ? `a ${words}` : 'this animal'} is in the program. This hamster profile is only a place to start; copy it under Targets and change it as a vet advises.`,
  );
}
