/** A short word about what was done to a mix. It is about the rules and foods as they were then, and goes with them. */
import type { Problem } from '../../../formulation/problem/problem.ts';

export interface Notice {
  readonly text: string;
  readonly about: Problem | undefined;
}

export const NO_NOTICE: Notice = { text: '', about: undefined };

/** What is still to be said of a mix whose problem may have changed since. */
export function noticeFor({ text, about }: Notice, problem: Problem): string {
  return text === '' || about === problem || JSON.stringify(about) === JSON.stringify(problem) ? text : '';
}
