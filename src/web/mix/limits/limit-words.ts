/** Limits of the animal's target in words: what a step would change, and what the keeper changed. */
import { capital, joined } from '../../../formulation/explain/sentences.ts';
import { ruleAt } from '../../../formulation/problem/at-pointer.ts';
import type { OwnLimit, Problem, Rule } from '../../../formulation/problem/problem.ts';
import type { Change } from '../../../formulation/problem/result.ts';
import { unitWords, words } from '../../../formulation/solve/bounds.ts';
import { isLimitOfTarget, recordOf } from '../../../household/reckon/mix/own-limits.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import { boundsText } from '../../shared/windows.ts';
import { changeWords } from '../remedy-words.ts';

/** What a press would do to limits of the target: bounds written anew, or rules left out by their place. */
export interface LimitChange {
  readonly changes?: readonly Change[];
  readonly leftOut?: readonly number[];
}

interface StepLine {
  readonly words: string;
  /** Where the limit of the target comes from; undefined for what the keeper asked for. */
  readonly source: string | undefined;
}

/** One line for each thing that would change. */
export function stepLines(
  problem: Problem,
  { changes = [], leftOut = [] }: LimitChange,
  nameOf: (id: string) => string,
): StepLine[] {
  const moved = changes.map((change) => ({
    words: `${capital(changeWords(problem, change, nameOf))}.`,
    source: sourceAt(problem, change.pointer),
  }));
  const gone = leftOut.flatMap((row) => {
    const rule = problem.rules[row];
    return rule
      ? [{ words: `${capital(limitOf(rule))}: left out.`, source: sourceAt(problem, `/rules/${row}`) }]
      : [];
  });
  return [...moved, ...gone];
}

/** The source as the target has it, with its figures where the keeper changed them before. */
function sourceAt(problem: Problem, pointer: string): string | undefined {
  const rule = ruleAt(problem, pointer);
  if (!rule || !isLimitOfTarget(problem, pointer)) return undefined;
  const was = recordOf(problem, rule)?.was;
  const source = (was ?? rule).source ?? 'no source given';
  return was ? `${source}; the target has ${boundsText(was.min, was.max)}${unitOf(was)}` : source;
}

/** "Bramble’s target “Adult hamster”", "the target “Adult hamster”". */
export function whoseWords(owners: readonly string[], target: string | undefined): string {
  const named = target === undefined ? 'target' : `target “${target}”`;
  return owners.length === 0 ? `the ${named}` : `${joined(owners)}’s ${named}`;
}

/** "Fat limit raised from 7 to 7.5 % by you on 28 November 2026". */
export function ownLimitWords({ was, now, on }: OwnLimit): string {
  const by = `by you on ${dayInWords(on)}`;
  if (!now) return `${capital(limitOf(was))}: left out ${by}`;
  const ends = (['min', 'max'] as const).flatMap((side) => {
    const [from, to] = [was[side], now[side]];
    if (from === to) return [];
    if (from === undefined || to === undefined) return [`changed to ${boundsText(now.min, now.max)}`];
    return [`${to > from ? 'raised' : 'lowered'} from ${from} to ${to}${unitOf(now)}`];
  });
  return `${capital(subjectOf(was))} limit ${joined(ends)} ${by}`;
}

/** "fat, 4 to 7 %". */
function limitOf(rule: Rule): string {
  return `${subjectOf(rule)}, ${boundsText(rule.min, rule.max)}${unitOf(rule)}`;
}

function subjectOf(rule: Rule): string {
  if ('nutrient' in rule) return words(rule.nutrient);
  return 'ratio' in rule ? rule.ratio.map(words).join(' to ') : 'rule';
}

function unitOf(rule: Rule): string {
  return 'nutrient' in rule ? ` ${unitWords(rule.nutrient, rule.basis === 'DM')}` : '';
}
