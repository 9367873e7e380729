/** Why a part of a line was not read, in words that say what to do. */
export const NO_NAME = 'a figure without a nutrient before it; put the name and its figure on one line';
export const TRACES = 'traces are no figure; leave it out, or write the most it can be, such as "<0.1 g"';
export const SHARED = 'share one figure; give each its own';
export const ADVICE = 'advice for use or a weight of the pack, no analysis';
export const CUT =
  'a name follows the figure and has none of its own; put a comma between, or each on its own line';

/** How much of a label's own words is quoted. */
const LONGEST = 40;

export function notKnown(words: string): string {
  return `"${words.slice(0, LONGEST)}" is not known here; give the nutrient and its figure alone`;
}
