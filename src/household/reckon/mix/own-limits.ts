/**
 * Limits of the animal's target that the keeper changed in one mix. What the keeper asked for gives way by itself; a
 * limit of the target is the animal's, so each change to one is kept with what it was, and can be set back.
 */

import { ruleAt } from '../../../formulation/problem/at-pointer.ts';
import { ruleKey } from '../../../formulation/problem/for-animals.ts';
import { pointerSteps, setAtPointer } from '../../../formulation/problem/json-pointer.ts';
import type {
  NutrientRule,
  OwnLimit,
  Problem,
  RatioRule,
  Rule,
} from '../../../formulation/problem/problem.ts';
import type { Change } from '../../../formulation/problem/result.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import type { Animal, Mix } from '../../model.ts';
import { hereAmong } from '../care/here.ts';
import { isDryRule, withoutRule, withProblem } from './mix-edits.ts';

type Limit = NutrientRule | RatioRule;

/** Whether a rule is a limit of the animal's target: of a nutrient or a ratio, and not that the mix is dry enough. */
function isLimit(rule: Rule): rule is Limit {
  return ('nutrient' in rule || 'ratio' in rule) && !isDryRule(rule);
}

/** Whether a pointer names a limit of the animal's target, itself or one of its ends. */
export function isLimitOfTarget(problem: Pick<Problem, 'rules'>, pointer: string): boolean {
  const rule = ruleAt(problem, pointer);
  return rule !== undefined && isLimit(rule);
}

/** Names of the animals of a mix whose target its limits are; none where it follows no animal's. */
export function limitOwners(mix: Mix, animals: readonly Animal[]): string[] {
  const fed = hereAmong(animals, mix.animalIds);
  return fed.filter((a) => fed.length === 1 || a.profileId === mix.profileId).map((a) => a.name);
}

/**
 * The mix with changes written at their pointers. Each limit of the target among them is the keeper's own from now on,
 * and what it was is kept.
 * @param on the day of the change
 */
export function withChanges(mix: Mix, changes: readonly Change[], on: Day): Mix {
  const before = mix.problem;
  const changed = changes.reduce((p, { pointer, to }) => setAtPointer(p, pointer, to), before);
  const rows = new Set(
    changes.filter((c) => isLimitOfTarget(before, c.pointer)).map((c) => rowOf(c.pointer)),
  );
  let next: Mix = { ...mix, problem: changed };
  for (const row of rows) next = recorded(next, row, before.rules[row], on);
  return next;
}

/** The mix without one rule; a limit of the target is kept as one that the keeper left out. @param on that day */
export function withRuleLeftOut(mix: Mix, row: number, on: Day): Mix {
  const rule = mix.problem.rules[row];
  const next = withoutRule(mix, row);
  if (!rule || !isLimit(rule)) return next;
  return withRecord(next, { was: recordOf(mix.problem, rule)?.was ?? rule, on }, rule);
}

/** The mix with a limit as the animal's target has it again. */
export function withLimitSetBack(mix: Mix, limit: OwnLimit): Mix {
  const { rules } = mix.problem;
  const { was, now } = limit;
  const row = now ? rules.findIndex((r) => ruleKey(r) === ruleKey(now)) : -1;
  const others = rules.filter((r) => !isLimit(r));
  const restored =
    row >= 0 ? rules.map((r, i) => (i === row ? was : r)) : [...rules.filter(isLimit), was, ...others];
  const said = JSON.stringify(limit);
  return withRecords(withProblem(mix, { rules: restored }), (l) => JSON.stringify(l) !== said);
}

function recorded(mix: Mix, row: number, before: Rule | undefined, on: Day): Mix {
  const after = mix.problem.rules[row];
  if (!before || !after || !isLimit(before) || !isLimit(after)) return mix;
  const was = recordOf(mix.problem, before)?.was ?? before;
  if (ruleKey(after) === ruleKey(was)) {
    const rules = mix.problem.rules.map((r, i) => (i === row ? was : r));
    return withRecords(withProblem(mix, { rules }), (l) => !isOf(l, before));
  }
  const t = words().advice.ownLimit;
  const now = {
    ...after,
    source: t.ownChoice(on, boundWords(was), was.source ?? t.noSource),
  };
  const rules = mix.problem.rules.map((r, i) => (i === row ? now : r));
  return withRecord(withProblem(mix, { rules }), { was, now, on }, before);
}

function boundWords({ min, max }: Limit): string {
  const t = words().advice.ownLimit;
  return [min !== undefined && t.least(min), max !== undefined && t.most(max)].filter(Boolean).join(', ');
}

/** The record of a limit as it stands, where the keeper changed it before. */
export function recordOf(problem: Pick<Problem, 'own_limits'>, rule: Rule): OwnLimit | undefined {
  return problem.own_limits?.find((l) => isOf(l, rule));
}

function isOf({ now }: OwnLimit, rule: Rule): boolean {
  return now !== undefined && ruleKey(now) === ruleKey(rule);
}

/** With one more record, in the place of that about the limit as it stood. */
function withRecord(mix: Mix, record: OwnLimit, before: Rule): Mix {
  const others = mix.problem.own_limits?.filter((l) => !isOf(l, before)) ?? [];
  return withProblem(mix, { own_limits: [...others, record] });
}

function withRecords(mix: Mix, keep: (limit: OwnLimit) => boolean): Mix {
  const left = mix.problem.own_limits?.filter(keep) ?? [];
  return withProblem(mix, { own_limits: left.length > 0 ? left : undefined });
}

function rowOf(pointer: string): number {
  return Number(pointerSteps(pointer)[1]);
}
