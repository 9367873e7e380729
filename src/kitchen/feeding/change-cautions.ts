/** What to watch while the food changes. Nothing here is veterinary advice. */

/** One thing to watch. */
export interface ChangeCaution {
  readonly id: string;
  readonly sentence: string;
  readonly source: string;
}

const PRACTICE = 'common practice, no source; not veterinary advice';

export const CHANGE_CAUTIONS: readonly ChangeCaution[] = [
  {
    id: 'slowly',
    sentence: 'Change slowly; keep some of the old food until the change is done.',
    source: PRACTICE,
  },
  {
    id: 'droppings',
    sentence: 'Look at the droppings every day: they should stay dry, dark and formed.',
    source: PRACTICE,
  },
  {
    id: 'weigh',
    sentence:
      'Weigh the animal every two or three days, and look into its hoard: what is carried off is not yet eaten.',
    source: PRACTICE,
  },
  {
    id: 'slow-down',
    sentence:
      'If droppings turn soft or the new food is left, stay at this step or go back to the last one that went well.',
    source: PRACTICE,
  },
  {
    id: 'vet',
    sentence:
      'With diarrhoea, if nothing is eaten, or if weight is lost, go back to the old food and see a vet the same day.',
    source: PRACTICE,
  },
];
