/** What a remedy changes, in words, and where a food of the tables is found. */
import { ruleAt } from '../../formulation/problem/at-pointer.ts';
import { pointerSteps } from '../../formulation/problem/json-pointer.ts';
import type { Problem } from '../../formulation/problem/problem.ts';
import type { Change } from '../../formulation/problem/result.ts';
import { unitWords, words } from '../../formulation/solve/bounds.ts';
import { groupName } from '../../household/reckon/mix/mix-edits.ts';

/** One change in words: "fat of the ration at most 8.5 % instead of 7 %". */
export function changeWords(problem: Problem, change: Change, nameOf: (id: string) => string): string {
  const { subject, unit } = subjectAt(problem, change.pointer, nameOf);
  const side = change.pointer.endsWith('/max') ? 'at most' : 'at least';
  const value = (v: Change['to']) => `${v}${unit ? ` ${unit}` : ''}`;
  return `${subject} ${side} ${value(change.to)} instead of ${value(change.from)}`;
}

function subjectAt(
  problem: Problem,
  pointer: string,
  nameOf: (id: string) => string,
): { subject: string; unit: string } {
  const [list, row] = pointerSteps(pointer);
  const food = list === 'foods' ? problem.foods[Number(row)] : undefined;
  if (food) return { subject: `share of ${nameOf(food.id)}`, unit: '%' };
  const rule = ruleAt(problem, pointer);
  if (!rule) return { subject: 'the smallest amount of a food', unit: 'g' };
  const on = `of the ${rule.on ?? 'mix'}`;
  if ('nutrient' in rule) {
    return { subject: `${words(rule.nutrient)} ${on}`, unit: unitWords(rule.nutrient, rule.basis === 'DM') };
  }
  if ('ratio' in rule) return { subject: `${rule.ratio.map(words).join(' to ')} ${on}`, unit: '' };
  if ('group' in rule) return { subject: `share of ${groupName(rule.group)} ${on}`, unit: '%' };
  if ('food' in rule) return { subject: `share of ${nameOf(rule.food)} ${on}`, unit: '%' };
  return { subject: 'number of foods', unit: '' };
}

/** Where a food of the tables is found: "USDA SR28, number 01173". */
export function tableOf(ref: string): string {
  const [table, number] = ref.split(':');
  const name = { sr28: 'USDA SR28', ifct: 'IFCT 2017' }[table ?? ''];
  return name ? `${name}, number ${number}` : 'published figures';
}
