/**
 * The way of some goods through the kitchen as a line: along the counter, down into the freezer and up again, over the
 * top of the dryer. Across in percent of the picture's width, down in px.
 */
import type { StepKind } from '../../kitchen/calendar/step-days.ts';

export const STRAND_HEIGHT = 64;
/** Where the counter is; what the dryer is as high as, and the freezer as deep as. */
export const COUNTER = 22;
const DRYER = 4;
const FREEZER = 58;
/** Percent of the width that the line takes to go down or up, at most. */
const SLOPE = 0.9;

export interface Stretch {
  readonly kind: StepKind;
  readonly from: number;
  readonly to: number;
}

/** The line of one step: it leaves the counter and comes back to it, or stays on it. */
export function pathOf({ kind, from, to }: Stretch): string {
  const level = kind === 'freeze' ? FREEZER : kind === 'dry' ? DRYER : COUNTER;
  if (level === COUNTER) return `M ${say(from)} ${COUNTER} H ${say(to)}`;
  const slope = Math.min(SLOPE, (to - from) / 4);
  const [a, b] = [from + slope, to - slope];
  return `M ${say(from)} ${COUNTER} C ${say(from + slope / 4)} ${level} ${say(from)} ${level} ${say(a)} ${level} H ${say(b)} C ${say(to)} ${level} ${say(to - slope / 4)} ${level} ${say(to)} ${COUNTER}`;
}

/** Where the goods wait on the counter: between their steps, and until all of them come together. */
export function waitsOf(steps: readonly Stretch[], together: number | undefined): [number, number][] {
  const ends = [...steps.slice(1).map((s) => s.from), ...(together === undefined ? [] : [together])];
  return steps.flatMap(({ to }, i): [number, number][] => {
    const next = ends[i];
    return next !== undefined && next > to ? [[to, next]] : [];
  });
}

/** As the program writes it into the picture, no place read by people. */
function say(across: number): number {
  return Math.round(across * 100) / 100;
}
