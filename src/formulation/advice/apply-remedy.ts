import { setAtPointer } from '../problem/json-pointer.ts';
import type { Problem } from '../problem/problem.ts';
import type { Remedy } from '../problem/result.ts';

/** A copy of the problem with a remedy applied: bounds written at their pointers, or the food appended. */
export function applyRemedy(problem: Problem, remedy: Remedy): Problem {
  if (remedy.kind === 'add') return { ...problem, foods: [...problem.foods, remedy.food] };
  const changes = remedy.kind === 'loosen' ? [remedy] : remedy.changes;
  return changes.reduce((changed, { pointer, to }) => setAtPointer(changed, pointer, to), problem);
}
