/** Wishes and counting rules for the mix of the demo household. */
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import type { Aim, CountRule, Problem } from '../../src/formulation/problem/problem.ts';
import { demoHousehold } from '../../src/household/demo.ts';
import { addAim } from '../../src/household/reckon/mix/wishes.ts';
import { loadReference } from '../../src/household/reference-file.ts';

const reference = loadReference();

/** The mix of the demo household: nothing is wished of it yet. */
export const mix = demoHousehold().mixes[0]!;

export const AIMS: readonly Aim[] = [
  { aim: 'liked' },
  { aim: 'cupboard' },
  { aim: 'few' },
  { aim: 'few to buy' },
  { aim: 'less', nutrient: 'FAT', on: 'ration' },
  { aim: 'less', nutrient: 'FAT' },
  { aim: 'more', group: 'vegetable' },
  { aim: 'less', food: 'linseed' },
];

export const least: CountRule = { count: { at_least: 3 }, min: 18 };
export const most: CountRule = { count: { group: 'seed' }, max: 4 };

/** The mix with these wishes, in their order. */
export const wished = (aims: readonly Aim[]) => aims.reduce(addAim, mix);

/** A problem written to JSON and read back by the formulation. */
export const read = (problem: Problem) => parseProblem(JSON.parse(JSON.stringify(problem)), reference);
