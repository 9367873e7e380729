/** The mix of the demo household with its pellet, and a fresh food to be fed beside it too. */
import type { Beside } from '../../src/formulation/problem/problem.ts';
import { demoHousehold } from '../../src/household/demo.ts';
import { compositionOf } from '../../src/household/reckon/mix/beside-blend.ts';
import { loadReference } from '../../src/household/reference-file.ts';

export const reference = loadReference();

export const mix = demoHousehold().mixes[0]!;
export const pellet = mix.problem.beside[0]!;

/** Raw cucumber with peel, SR28 11205. */
export const cucumber: Beside = { id: 'cucumber', name: 'Cucumber', ref: 'sr28:11205', share_of_ration: 1 };

/** The tables' foods that are fed beside, by reference number. */
export const known = new Map([['sr28:11205', reference.get('sr28:11205')!]]);

/** Water in percent as fed. */
export const waterOf = (b: Beside) => compositionOf(b, known).WATER;
