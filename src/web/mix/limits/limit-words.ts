/** Limits of the animal's target in words: what a step would change, and what the keeper changed. */
import { capital } from '../../../formulation/explain/sentences.ts';
import { ruleAt } from '../../../formulation/problem/at-pointer.ts';
import type { OwnLimit, Problem, Rule } from '../../../formulation/problem/problem.ts';
import type { Change } from '../../../formulation/problem/result.ts';
import { unitWords } from '../../../formulation/solve/bounds.ts';
import { isLimitOfTarget, recordOf } from '../../../household/reckon/mix/own-limits.ts';
import { countedWord } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
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
      ? [
          {
            words: words().limits.leftOut(capital(limitOf(rule))),
            source: sourceAt(problem, `/rules/${row}`),
          },
        ]
      : [];
  });
  return [...moved, ...gone];
}

/** The source as the target has it, with its figures where the keeper changed them before. */
function sourceAt(problem: Problem, pointer: string): string | undefined {
  const rule = ruleAt(problem, pointer);
  if (!rule || !isLimitOfTarget(problem, pointer)) return undefined;
  const t = words().limits;
  const was = recordOf(problem, rule)?.was;
  const source = (was ?? rule).source ?? t.noSource;
  return was ? t.needsHave(source, rangeOf(was)) : source;
}

/** "Bramble’s needs “Adult hamster”", "the needs “Adult hamster”". */
export function whoseWords(owners: readonly string[], target: string | undefined): string {
  const t = words().limits;
  if (owners.length === 0) return target === undefined ? t.needs : t.needsCalled(target);
  return target === undefined ? t.needsOf(owners) : t.needsOfCalled(owners, target);
}

/** "Fat limit raised from 7 to 7.5 % by you on 28 November 2026". */
export function ownLimitWords({ was, now, on }: OwnLimit): string {
  const t = words().limits;
  const day = words().figures.day(on);
  if (!now) return capital(t.ownLeftOut(limitOf(was), day));
  const ends = (['min', 'max'] as const).flatMap((side) => {
    const [from, to] = [was[side], now[side]];
    if (from === to) return [];
    if (from === undefined || to === undefined) return [t.changedTo(boundsText(now.min, now.max))];
    return [(to > from ? t.raised : t.lowered)(from, t.amount(to, unitOf(now)))];
  });
  return capital(t.own(subjectOf(was), ends, day));
}

/** "fat, 4 to 7 %". */
function limitOf(rule: Rule): string {
  return words().limits.range(subjectOf(rule), rangeOf(rule));
}

function rangeOf(rule: Rule): string {
  const unit = unitOf(rule);
  const range = boundsText(rule.min, rule.max);
  return unit ? `${range} ${unit}` : range;
}

function subjectOf(rule: Rule): string {
  if ('nutrient' in rule) return countedWord(rule.nutrient);
  if (!('ratio' in rule)) return words().limits.rule;
  const [over, under] = rule.ratio;
  return words().nutrition.ratio(countedWord(over), countedWord(under));
}

function unitOf(rule: Rule): string {
  return 'nutrient' in rule ? unitWords(rule.nutrient, rule.basis === 'DM') : '';
}
