/** The change from the present food to a mix: what the present food holds, and the plan as columns to weigh. */
import type { Composition } from '../../../../foods/food.ts';
import type { Beside, Ingredient, Problem } from '../../../../formulation/problem/problem.ts';
import type { BesideShares, Evaluation, NutrientLine } from '../../../../formulation/problem/result.ts';
import type { Animal, Household, Mix } from '../../../../household/model.ts';
import type { ChangeDay } from '../../../../kitchen/feeding/change-words.ts';
import type { Tag } from '../../../../nutrition/nutrients.ts';

/** Covered wholly, but for the arithmetic. */
const WHOLE = 100 - 1e-6;

export interface Blend {
  readonly food: Ingredient;
  /** What is known of a part of it only: the known part counts as the least it can be. */
  readonly partly: readonly Tag[];
}

/**
 * A mix, or the ration it is part of, as one food: the blend of its shares. What is known of a part of it only gets
 * bounds and no value; what is known of none of it stays unknown.
 */
export function blendOf(
  id: string,
  name: string,
  nutrients: Evaluation['nutrients'],
  on: 'mix' | 'ration',
): Blend {
  const composition: Composition = {};
  const low: Composition = {};
  const high: Composition = {};
  const partly: Tag[] = [];
  for (const [tag, line] of Object.entries(nutrients) as [Tag, NutrientLine][]) {
    const [value, least, most, coverage] =
      on === 'mix'
        ? [line.mix, line.low_mix, line.high_mix, line.coverage_mix]
        : [line.ration, line.low, line.high, line.coverage];
    if (coverage >= WHOLE) composition[tag] = value;
    else if (least > 0) {
      low[tag] = least;
      high[tag] = most;
      partly.push(tag);
    }
  }
  return { food: { id, name, composition, low, high }, partly };
}

/**
 * A problem as the days of a change count it: fresh food left out, the rest of what is fed beside in its proportions
 * and at the shares chosen for it, and of the rules those on nutrients and ratios.
 * @param chosen shares of what is fed beside, where they were chosen
 */
export function withoutFresh(
  problem: Problem,
  chosen: BesideShares | undefined,
): { problem: Problem; fresh: readonly Beside[] } {
  const fresh = problem.beside.filter((b) => b.counts_as === 'air dry');
  const share = (b: Beside) => chosen?.[b.id]?.share ?? writtenShare(b, problem.daily_grams);
  const left = 100 - fresh.reduce((sum, b) => sum + share(b), 0);
  const beside = problem.beside
    .filter((b) => !fresh.includes(b))
    .map((b): Beside => {
      const { share_min: _least, share_max: _most, grams_a_day: _grams, ...food } = b;
      return { ...food, share_of_ration: left > 0 ? (100 * share(b)) / left : share(b) };
    });
  const { aims: _aims, drop_one: _drop, least_grams: _grams, ...rest } = problem;
  return {
    problem: {
      ...rest,
      beside,
      confidence: 0,
      rules: problem.rules.filter((r) => 'nutrient' in r || 'ratio' in r),
    },
    fresh,
  };
}

/** Percent of the ration, also where grams a day are written instead. */
function writtenShare(b: Beside, daily: number | undefined): number {
  if (b.grams_a_day === undefined || !daily || b.counts_as) return b.share_of_ration;
  return (100 * b.grams_a_day) / daily;
}

/** Who may be asked what is fed a day: the problem, or else the animals of the mix. */
export function dailyGramsOf(
  problem: Problem,
  animals: readonly Animal[],
): { grams: number; from: string } | undefined {
  if (problem.daily_grams !== undefined) return { grams: problem.daily_grams, from: 'as this mix says' };
  const fed = animals.find((a) => a.dailyGrams !== undefined);
  return fed && { grams: fed.dailyGrams!, from: `what ${fed.name} is fed` };
}

/** What is wrong with the grams a day, in a sentence with the way out; undefined where nothing is. */
export function dailyFault(grams: number, step: number): string | undefined {
  const steps = Math.round(grams / step);
  if (steps > 0 && Math.abs(steps * step - grams) <= 1e-9 * grams) return undefined;
  const near = [Math.floor(grams / step), Math.ceil(grams / step)]
    .filter((k) => k > 0)
    .map((k) => `${tidy(k * step)} g`);
  return `${grams} g is no whole number of ${step} g steps: take ${[...new Set(near)].join(' or ')}, or a finer scale step.`;
}

/** One thing that is weighed out on each day. */
export interface PlanColumn {
  readonly id: string;
  readonly name: string;
  readonly kind: 'old' | 'mix' | 'beside';
  /** Whether the present food is also fed beside the mix: both are then one weight. */
  readonly both: boolean;
  grams(day: ChangeDay): number;
  /** Part of all that is fed, 0 to 1. */
  part(day: ChangeDay): number;
}

/** Whether two foods are one and the same, so that they are weighed together. */
export function isSameFood(a: Ingredient | Beside, b: Ingredient | Beside): boolean {
  return a.id === b.id || (a.ref !== undefined && a.ref === b.ref && !a.composition && !b.composition);
}

/** The present food, the mix, and what is fed beside it; the present food first. */
export function planColumns(
  old: Ingredient,
  mixName: string,
  beside: readonly Beside[],
  nameOf: (food: Ingredient | Beside) => string,
): PlanColumn[] {
  const same = beside.find((b) => isSameFood(b, old));
  const also = (fed: Readonly<Record<string, number>>) => (same ? (fed[same.id] ?? 0) : 0);
  return [
    {
      id: old.id,
      name: nameOf(old),
      kind: 'old',
      both: same !== undefined,
      grams: (d) => tidy(d.grams.old + also(d.grams.beside)),
      part: (d) => d.parts.old + also(d.parts.beside),
    },
    {
      id: 'mix',
      name: mixName,
      kind: 'mix',
      both: false,
      grams: (d) => d.grams.mix,
      part: (d) => d.parts.mix,
    },
    ...beside
      .filter((b) => b !== same)
      .map(
        (b): PlanColumn => ({
          id: b.id,
          name: nameOf(b),
          kind: 'beside',
          both: false,
          grams: (d) => d.grams.beside[b.id] ?? 0,
          part: (d) => d.parts.beside[b.id] ?? 0,
        }),
      ),
  ];
}

/** How a day stands as it is weighed: in range, out of it by the rounding to the scale alone, or out. */
export type Standing = 'fine' | 'near' | 'breaks';

/** A mark for each, so that nothing is told by colour alone, and words. */
export const STANDINGS: Readonly<Record<Standing, { mark: string; brief: string; words: string }>> = {
  fine: { mark: '✓', brief: 'in', words: 'in range' },
  near: { mark: '~', brief: 'just out', words: 'just out, by rounding' },
  breaks: { mark: '!', brief: 'out', words: 'out of range' },
};

export function standingOf(day: Pick<ChangeDay, 'in_range' | 'in_range_as_weighed'>): Standing {
  if (day.in_range_as_weighed) return 'fine';
  return day.in_range ? 'near' : 'breaks';
}

/** The other mixes of a household whose shares make a whole. */
export function otherMixes(house: Pick<Household, 'mixes'>, mix: Pick<Mix, 'id'>): Mix[] {
  return house.mixes.filter((m) => {
    const total = m.problem.foods.reduce((sum, f) => sum + (f.refused ? 0 : (m.shares[f.id] ?? 0)), 0);
    return m.id !== mix.id && Math.abs(total - 100) < 1e-3;
  });
}

const DAY = new Intl.DateTimeFormat('en-GB', {
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  timeZone: 'UTC',
});

/** "2026-12-01" as "Tue 1 Dec". */
export function shortDay(date: string): string {
  return DAY.format(new Date(`${date}T00:00:00Z`)).replace(',', '');
}

const tidy = (grams: number) => Number(grams.toPrecision(12));
