/** Rules that count foods, in words, and what is wrong with one. */
import { capital, joined } from '../../../../formulation/explain/sentences.ts';
import type { CountRule, Problem } from '../../../../formulation/problem/problem.ts';
import { groupName } from '../../../../household/reckon/mix/mix-edits.ts';

export const foods = (n: number) => (n === 1 ? '1 food' : `${n} foods`);

/** "At least 18 foods with 3 % each", "At most 4 seeds and grains". */
export function countWords({ count, min, max }: CountRule): string {
  const what = (n: number) =>
    count.group === undefined
      ? foods(n)
      : `${n} of ${n === 1 ? 'the ' : ''}${inSentence(groupName(count.group))}`;
  const parts = [
    ...(min === undefined ? [] : [`at least ${what(min)} with ${count.at_least} % each`]),
    ...(max === undefined ? [] : [`at most ${what(max)}`]),
  ];
  const words = joined(parts) || 'any number of foods';
  return capital(words);
}

/** Why a counting rule can never be kept, or says nothing; undefined where it may be kept. */
export function countFault(problem: Problem, { count, min, max }: CountRule): string | undefined {
  const { group, at_least = 0 } = count;
  const open = problem.foods.filter((f) => !f.refused && (group === undefined || f.group === group));
  const which =
    group === undefined ? 'foods that are not refused' : `foods of ${inSentence(groupName(group))}`;
  if (min === undefined && max === undefined) return 'Write how many foods.';
  if ((min !== undefined || count.at_least !== undefined) && !(at_least > 0))
    return 'Write from which share on a food counts, above 0 %.';
  if (min !== undefined && min * at_least > 100)
    return `${foods(min)} with ${at_least} % each come to ${round(min * at_least)} %, more than the whole mix; lower one of the two.`;
  if (min !== undefined && min > open.length)
    return `The mix has ${open.length} ${which}, fewer than ${min}; ask for fewer, or add foods first.`;
  if (min !== undefined && max !== undefined && min > max)
    return `At least ${min} and at most ${max} cannot both be kept; change one of the two.`;
  if (max === 0 && group === undefined) return 'A mix has one food at least; allow 1 or more.';
  return undefined;
}

export function inSentence(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

function round(value: number): number {
  return Number(value.toFixed(2));
}
