/** Wishes of a mix (aims, first things first) and its rules that count foods: found, added, moved and taken out. */
import type { Aim, CountRule, Problem } from '../../../formulation/problem/problem.ts';
import { NUTRIENTS, type Tag } from '../../../nutrition/nutrients.ts';
import type { Mix } from '../../model.ts';
import { withProblem } from './mix-edits.ts';

/** As many as the problem format takes. */
export const MOST_AIMS = 20;

/** What an aim is about, whatever it may give; equal for the same wish, with "mix" for "on" where none is written. */
export function aimKey(aim: Aim): string {
  if (aim.aim !== 'less' && aim.aim !== 'more') return aim.aim;
  if ('nutrient' in aim) return `${aim.aim} ${aim.nutrient} ${aim.on ?? 'mix'}`;
  return 'group' in aim ? `${aim.aim} group ${aim.group}` : `${aim.aim} food ${aim.food}`;
}

export function oppositeOf(aim: Aim): Aim | undefined {
  if (aim.aim !== 'less' && aim.aim !== 'more') return undefined;
  return { ...aim, aim: aim.aim === 'less' ? 'more' : 'less' };
}

/** What less or more can be wished of, the nutrients that a rule names first. */
export function measurable(problem: Problem): { ruled: Tag[]; other: Tag[]; groups: string[] } {
  const named = new Set(
    problem.rules.flatMap((r) => ('nutrient' in r ? [r.nutrient] : 'ratio' in r ? r.ratio : [])),
  );
  const tags = NUTRIENTS.map((n) => n.tag);
  return {
    ruled: tags.filter((t) => named.has(t)),
    other: tags.filter((t) => !named.has(t)),
    groups: groupsOf(problem),
  };
}

/** Groups that foods of the mix stand in, as the formulation reads them. */
export function groupsOf(problem: Problem): string[] {
  return [...new Set(problem.foods.flatMap((f) => f.group ?? []))];
}

export function addAim(mix: Mix, aim: Aim): Mix {
  return withAims(mix, [...(mix.problem.aims ?? []), aim]);
}

export function removeAim(mix: Mix, key: string): Mix {
  return withAims(
    mix,
    (mix.problem.aims ?? []).filter((a) => aimKey(a) !== key),
  );
}

/** One place up (-1) or down (1); at the end of the list it stays. */
export function moveAim(mix: Mix, key: string, by: -1 | 1): Mix {
  const aims = mix.problem.aims ?? [];
  const from = aims.findIndex((a) => aimKey(a) === key);
  const to = from + by;
  const aim = aims[from];
  if (!aim || to < 0 || to >= aims.length) return mix;
  return withAims(mix, aims.toSpliced(from, 1).toSpliced(to, 0, aim));
}

/** @param give how far it may be left from its best, in its unit; undefined for not at all */
export function giveOf(mix: Mix, key: string, give: number | undefined): Mix {
  return withAims(
    mix,
    (mix.problem.aims ?? []).map((a) => {
      if (aimKey(a) !== key) return a;
      const { give: _, ...aim } = a;
      return give ? { ...aim, give } : aim;
    }),
  );
}

function withAims(mix: Mix, aims: readonly Aim[]): Mix {
  return withProblem(mix, { aims: aims.length > 0 ? aims : undefined });
}

/** A rule that counts foods, with its place among the rules. */
export interface PlacedCount {
  readonly index: number;
  readonly rule: CountRule;
}

export function countRules(problem: Problem): PlacedCount[] {
  return problem.rules.flatMap((rule, index) => ('count' in rule ? [{ index, rule }] : []));
}

export function addCount(mix: Mix, rule: CountRule): Mix {
  return withProblem(mix, { rules: [...mix.problem.rules, rule] });
}

/** Puts another counting rule in the place of one; a place that holds no counting rule is left alone. */
export function replaceCount(mix: Mix, index: number, rule: CountRule): Mix {
  return withProblem(mix, {
    rules: mix.problem.rules.map((r, i) => (i === index && 'count' in r ? rule : r)),
  });
}
