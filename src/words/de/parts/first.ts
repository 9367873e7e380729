/** What is said before anything else is fetched: the frame, and Now. */
import type { PartOf } from '../../parts.ts';
import { common } from '../common.ts';
import { frame } from '../frame.ts';
import { hands } from '../hands.ts';
import { kitchen } from '../kitchen.ts';
import { pairing } from '../pairing.ts';
import { shared } from '../shared.ts';
import { start } from '../start.ts';
import { store } from '../store.ts';
import { terms } from '../terms.ts';
import { today } from '../today.ts';
import { verdict } from '../verdict.ts';

export const first: PartOf<'first'> = {
  common,
  shared,
  frame,
  today,
  start,
  store,
  verdict,
  terms,
  kitchen,
  pairing,
  hands,
};
