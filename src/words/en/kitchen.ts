import type { Figures } from '../figures.ts';

/** Advice that stands on the kitchen's screens and that no sum rests on, each with its source. */
export const kitchen = (f: Figures) => {
  const practice = 'common practice, no source';
  return {
    practice,
    practiceNotAVet: 'common practice, no source; not veterinary advice',
    /** What the keeper said or weighed is the source. */
    weighedByKeeper: 'weighed by you',
    saidByKeeper: 'as you say',
    freezeTreatment: {
      sentence:
        'Dry goods can bring insects in as eggs or grubs. Keepers freeze them 3 to 4 days, thaw them 3 to 4 days, and do both once more: the thaw wakes what lived through the first frost.',
      source: practice,
    },
    freezeOnePack: {
      sentence: 'Freeze it, thaw it, and both once more, 3 to 4 days each',
      source: practice,
    },
    pastBestBefore: {
      sentence:
        'Look at it in good light before you use it: dust, webs, clumps or a musty smell mean that it is not fed. Then press “stop using”.',
      source: practice,
    },
    dampFood: {
      sentence:
        'Damp food moulds in the jar. Mould poisons survive drying and harm the liver even in traces. What shows mould is thrown away whole, not dried on.',
      source:
        'EFSA CONTAM Panel 2018, of aflatoxins; throwing away: University of Georgia Extension, packaging and storing dried foods',
    },
    leafDust: {
      sentence:
        'Dry leaves break to dust: leave them in pieces, and sieve the dust off before they go into a mix. It is bad for small airways.',
      source: practice,
    },
    sample: {
      sentence: (grams: number, celsius: number) =>
        `Take some ${f.grams(grams, 0)} of it, weigh it, and dry it at about ${f.degrees(celsius)} till two weighings an hour apart are alike`,
      freshSentence: (grams: number, celsius: number) =>
        `Take some ${f.grams(grams, 0)} of the fresh food, cut small, weigh it, and dry it at about ${f.degrees(celsius)} till two weighings an hour apart are alike`,
      source: practice,
    },
    notAVet:
      'Not veterinary advice. A home mix never replaces a complete food. Change foods slowly, over 10 to 14 days (common practice, no source). See a vet on weight loss or illness.',
    stepsInPractice:
      'Freezing, drying and the change of food go by common practice (no source): freeze 3 to 4 days, thaw 3 to 4 days, both twice; change over in 10 to 14 days.',
    stepPractice: {
      buy: '0: into the freezer or the oven on the day it is bought.',
      freeze: `3 to 4 days (${practice}); big bags take longer.`,
      thaw: `3 to 4 days (${practice}).`,
      dry: `About 6 hours in a fan oven for vegetables, longer and gentler for herbs and leaves, with you at home all the while: so one day (${practice}).`,
      weigh: 'One day.',
      'change-over': `10 to 14 days (${practice}); 0 where the animals know all of it.`,
    },
    shortTreatment:
      'Less than 3 days is shorter than common practice: eggs inside the kernels may live through it.',
  };
};

export type Kitchen = ReturnType<typeof kitchen>;
