/** Advice that stands on the kitchen's screens and that no sum rests on, each with its source. */
import type { StepKind } from './calendar/step-days.ts';

export interface Advice {
  readonly sentence: string;
  readonly source: string;
}

const PRACTICE = 'common practice, no source';

/** Why dry goods go through the freezer, and how. */
export const FREEZE_TREATMENT: Advice = {
  sentence:
    'Dry goods can bring insects in as eggs or grubs. Keepers freeze them 3 to 4 days, thaw them 3 to 4 days, and do both once more: the thaw wakes what lived through the first frost.',
  source: PRACTICE,
};

/** The same for one lot that has no days yet. */
export const FREEZE_ONE_LOT: Advice = {
  sentence: 'Freeze it, thaw it, and both once more, 3 to 4 days each',
  source: PRACTICE,
};

/** What to do with a lot past its best before. */
export const PAST_BEST_BEFORE: Advice = {
  sentence:
    'Look at it in good light before you use it: dust, webs, clumps or a musty smell mean that it is not fed. Bar it then.',
  source: PRACTICE,
};

/** Why what is too damp is not kept. */
export const DAMP_FOOD: Advice = {
  sentence:
    'Damp food moulds in the jar. Mould poisons survive drying and harm the liver in traces; what shows mould is thrown away whole, not dried on.',
  source:
    'EFSA CONTAM Panel 2018, of aflatoxins; throwing away: University of Georgia Extension, packaging and storing dried foods',
};

/** Of herbs and leafy vegetables. */
export const LEAF_DUST: Advice = {
  sentence:
    'Dry leaves break to dust: leave them in pieces, and sieve the dust off before they go into a mix; it is bad for small airways.',
  source: PRACTICE,
};

/** How a sample is dried out, that its water may be known. @param cut whether it is of the fresh food */
export function sampleAdvice(cut: boolean): Advice {
  return {
    sentence: `Take some 20 g ${cut ? 'of the fresh food, cut small' : 'of it'}, weigh it, and dry it at about 100 °C till two weighings an hour apart are alike`,
    source: PRACTICE,
  };
}

/** On the first page, whatever the household. */
export const NOT_A_VET =
  'Not veterinary advice. A home mix never replaces a complete food; change foods slowly over 10 to 14 days (common practice, no source); see a vet on weight loss or illness.';

/** What the lengths of the calendar's steps rest on. */
export const STEPS_IN_PRACTICE =
  'The cold, the drying and the change of food as common practice has them (no source): freeze 3 to 4 days, thaw 3 to 4 days, both twice; change over in 10 to 14 days.';

/** What is usual for each kind of step. */
export const STEP_PRACTICE: Readonly<Record<StepKind, string>> = {
  buy: '0: into the freezer or the oven on the day it is bought.',
  freeze: `3 to 4 days (${PRACTICE}); big bags take longer.`,
  thaw: `3 to 4 days (${PRACTICE}).`,
  dry: `About 6 hours in a fan oven for vegetables, longer and gentler for herbs and leaves, with you at home all the while: so one day (${PRACTICE}).`,
  weigh: 'One day.',
  'change-over': `10 to 14 days (${PRACTICE}); 0 where the animals know all of it.`,
};

/** Where freezing or thawing is set below what is usual. */
export const SHORT_TREATMENT =
  'Less than 3 days is shorter than common practice: eggs inside the kernels may live through it.';
