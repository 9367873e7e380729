/** What of a problem a JSON pointer names. */
import { pointerSteps } from './json-pointer.ts';
import type { Problem, Rule } from './problem.ts';

/** The rule that a pointer names, itself or one of its bounds; undefined where it names something else. */
export function ruleAt({ rules }: Pick<Problem, 'rules'>, pointer: string): Rule | undefined {
  const [list, row] = pointerSteps(pointer);
  return list === 'rules' ? rules[Number(row)] : undefined;
}

/** Whether a pointer names a bound of a nutrient or a ratio: what the animal needs, not what the keeper asks for. */
export function boundsContent(problem: Pick<Problem, 'rules'>, pointer: string): boolean {
  const rule = ruleAt(problem, pointer);
  return rule !== undefined && ('nutrient' in rule || 'ratio' in rule);
}
