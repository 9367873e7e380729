/** What a limit of a mix is about, and its value, by the limit's place in the problem. */
import { ruleAt } from '../../../formulation/problem/at-pointer.ts';
import type { Problem } from '../../../formulation/problem/problem.ts';
import { words as nutrientWords, unitWords } from '../../../formulation/solve/bounds.ts';
import { groupName } from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';

/** "fat", "calcium to phosphorus", "the share of Seeds and grains"; undefined where the problem alone does not say. */
export function limitSubject(problem: Problem, pointer: string): string | undefined {
  const t = words().rows.ask;
  const rule = ruleAt(problem, pointer);
  if (!rule) return undefined;
  if ('nutrient' in rule) return nutrientWords(rule.nutrient);
  if ('ratio' in rule) return t.ratio(nutrientWords(rule.ratio[0]), nutrientWords(rule.ratio[1]));
  return 'group' in rule ? t.shareOfGroup(groupName(rule.group)) : undefined;
}

/** The unit that stands after a limit: "%", "mg per 100 g"; nothing after a ratio or a number of foods. */
export function limitUnit(problem: Problem, pointer: string): string {
  const rule = ruleAt(problem, pointer);
  if (!rule) return '%';
  if ('nutrient' in rule) return unitWords(rule.nutrient, rule.basis === 'DM');
  return 'ratio' in rule || 'count' in rule ? '' : '%';
}

/** "7 %", "500 mg per 100 g", "1.2". */
export function limitText(bound: number, unit: string): string {
  const { figure, percent } = words().figures;
  if (unit === '%') return percent(bound);
  return unit === '' ? figure(bound) : `${figure(bound)} ${unit}`;
}
