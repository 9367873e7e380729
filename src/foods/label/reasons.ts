/** Why a part of a line was not read, in words that say what to do. */
import { words } from '../../words/words.ts';

/** The reasons, in the language spoken. */
export const reasons = () => words().label.reading.why;

/** How much of a label's own words is quoted. */
const LONGEST = 40;

export function notKnown(said: string): string {
  return reasons().notKnown(said.slice(0, LONGEST));
}

/** That two names share one figure. */
export function shared(first: string, second: string): string {
  const { shared: say, sharedEnd } = reasons();
  return say(first, second, sharedEnd);
}

export function isShared(why: string): boolean {
  return why.endsWith(reasons().sharedEnd);
}
