/** What a remedy changes, in words, and where a food of the tables is found. */
import { ruleAt } from '../../formulation/problem/at-pointer.ts';
import { pointerSteps } from '../../formulation/problem/json-pointer.ts';
import type { Problem } from '../../formulation/problem/problem.ts';
import type { Change } from '../../formulation/problem/result.ts';
import { unitWords, words } from '../../formulation/solve/bounds.ts';
import { groupName } from '../../household/reckon/mix/mix-edits.ts';
import { words as texts } from '../../words/words.ts';

/** One change in words: "fat of the ration at most 8.5 % instead of 7 %". */
export function changeWords(problem: Problem, change: Change, nameOf: (id: string) => string): string {
  const { subject, unit } = subjectAt(problem, change.pointer, nameOf);
  const t = texts().mix.mend;
  const say = change.pointer.endsWith('/max') ? t.atMost : t.atLeast;
  return say(subject, t.amount(Number(change.to), unit), t.amount(Number(change.from), unit));
}

function subjectAt(
  problem: Problem,
  pointer: string,
  nameOf: (id: string) => string,
): { subject: string; unit: string } {
  const t = texts().mix.mend;
  const [list, row] = pointerSteps(pointer);
  const food = list === 'foods' ? problem.foods[Number(row)] : undefined;
  if (food) return { subject: t.share(nameOf(food.id)), unit: '%' };
  const rule = ruleAt(problem, pointer);
  if (!rule) return { subject: t.smallest, unit: 'g' };
  const on = t.of[rule.on ?? 'mix'];
  if ('nutrient' in rule) {
    return { subject: on(words(rule.nutrient)), unit: unitWords(rule.nutrient, rule.basis === 'DM') };
  }
  if ('ratio' in rule) {
    const [over, under] = rule.ratio;
    return { subject: on(t.ratio(words(over), words(under))), unit: '' };
  }
  if ('group' in rule) return { subject: on(t.share(groupName(rule.group))), unit: '%' };
  if ('food' in rule) return { subject: on(t.share(nameOf(rule.food))), unit: '%' };
  return { subject: t.count, unit: '' };
}

/** Where a food of the tables is found: "USDA SR28, number 01173". */
export function tableOf(ref: string): string {
  const t = texts().mix.mend;
  const [table, number] = ref.split(':');
  const name = table === 'sr28' || table === 'ifct' ? t.tables[table] : undefined;
  return name && number !== undefined ? t.numberIn(name, number) : t.published;
}
