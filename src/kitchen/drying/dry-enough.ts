/** Whether a dried food is dry enough to keep, and what to do where it is not. */

import { normalBelow } from '../../nutrition/normal.ts';
import { words } from '../../words/words.ts';
import { SURE } from '../tolerances.ts';
import { type DryKind, KEEPS } from './drying-practice.ts';
import type { ActualMoisture } from './moisture.ts';

/** Whether a dried food is dry enough to keep. */
export interface DryVerdict {
  readonly state: 'dry' | 'unsure' | 'damp';
  /** Most moisture at which it keeps, g per 100 g, and its source. */
  readonly most: number;
  readonly source: string;
  /** Chance that it is at most that, moisture taken as normal. */
  readonly chance: number;
  readonly sentence: string;
}

/** Holds the moisture after drying against the limit for its kind. */
export function dryEnough(actual: Pick<ActualMoisture, 'moisture' | 'sd'>, kind: DryKind): DryVerdict {
  const { most, source } = KEEPS.find((k) => k.kind === kind)!;
  const { moisture, sd } = actual;
  const chance = sd > 0 ? normalBelow((most - moisture) / sd) : moisture <= most ? 1 : 0;
  const limit = { most, source, chance };
  const state = moisture > most ? 'damp' : chance >= SURE ? 'dry' : 'unsure';
  return { state, ...limit, sentence: words().drying.holds[state](moisture, most) };
}
