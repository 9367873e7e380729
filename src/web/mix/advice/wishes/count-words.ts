/** Rules on how many foods a mix has, in words, and what is wrong with one. */
import type { CountRule, Problem } from '../../../../formulation/problem/problem.ts';
import { groupName } from '../../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../../words/words.ts';

/** "At least 18 foods with 3 % each", "At most 4 of seeds and grains". */
export function countWords({ count, min, max }: CountRule): string {
  const t = words().wishes.counts.rule;
  const { group, at_least = 0 } = count;
  const of = group === undefined ? undefined : inSentence(groupName(group));
  const least =
    min !== undefined && (of === undefined ? t.least(min, at_least) : t.leastOf(min, of, at_least));
  const most = max !== undefined && (of === undefined ? t.most(max) : t.mostOf(max, of));
  if (least && most) return t.both(least, most);
  return least || most || t.any;
}

/** Why a counting rule can never be kept, or says nothing; undefined where it may be kept. */
export function countFault(problem: Problem, { count, min, max }: CountRule): string | undefined {
  const t = words().wishes.counts.fault;
  const { group, at_least = 0 } = count;
  const open = problem.foods.filter((f) => !f.refused && (group === undefined || f.group === group)).length;
  if (min === undefined && max === undefined) return t.howMany;
  if ((min !== undefined || count.at_least !== undefined) && !(at_least > 0)) return t.share;
  if (min !== undefined && min * at_least > 100) return t.tooMuch(min, at_least, min * at_least);
  if (min !== undefined && min > open)
    return group === undefined ? t.tooFew(open, min) : t.tooFewOf(open, inSentence(groupName(group)), min);
  if (min !== undefined && max !== undefined && min > max) return t.crossed(min, max);
  if (max === 0 && group === undefined) return t.none;
  return undefined;
}

/** A name as it stands in the middle of a sentence. */
export function inSentence(name: string): string {
  return words().wishes.within(name);
}
