/** Wishes (aims, first things first) and rules that count foods: said in words, added, moved and taken out. */

import { figure, joined } from '../../../../formulation/explain/sentences.ts';
import type {
  Aim,
  CountRule,
  Measured,
  Objective,
  Problem,
} from '../../../../formulation/problem/problem.ts';
import type { Mix } from '../../../../household/model.ts';
import { groupName, withProblem } from '../../../../household/reckon/mix-edits.ts';
import { NUTRIENTS, nutrient, type Tag, unitWord } from '../../../../nutrition/nutrients.ts';

/** As many as the problem format takes. */
export const MOST_AIMS = 20;

export type SimpleAim = Exclude<Aim['aim'], 'less' | 'more'>;

export const SIMPLE_AIMS: Readonly<Record<SimpleAim, string>> = {
  liked: 'As much of the liked foods as possible',
  cupboard: 'Use what the cupboard holds',
  few: 'Few foods',
  'few to buy': 'Few foods to buy',
  cheap: 'Cheap',
};

/** What decides among the mixes that rules and wishes leave. */
export const OBJECTIVES: readonly (readonly [Objective, string])[] = [
  ['nearest', 'Nearest to what I want'],
  ['cheapest', 'Cheapest'],
  ['varied', 'Most varied'],
];

type NameOf = (id: string) => string;

/** What an aim is about, whatever it may give; equal for the same wish, with "mix" for "on" where none is written. */
export function aimKey(aim: Aim): string {
  if (aim.aim !== 'less' && aim.aim !== 'more') return aim.aim;
  if ('nutrient' in aim) return `${aim.aim} ${aim.nutrient} ${aim.on ?? 'mix'}`;
  return 'group' in aim ? `${aim.aim} group ${aim.group}` : `${aim.aim} food ${aim.food}`;
}

/** "Less fat in the ration", "A greater share of vegetables". */
export function aimWords(aim: Aim, nameOf: NameOf): string {
  if (aim.aim !== 'less' && aim.aim !== 'more') return SIMPLE_AIMS[aim.aim];
  if ('nutrient' in aim) {
    const more = aim.aim === 'less' ? 'Less' : 'More';
    return `${more} ${inSentence(nutrient(aim.nutrient).name)} in the ${aim.on ?? 'mix'}`;
  }
  const share = aim.aim === 'less' ? 'A smaller share' : 'A greater share';
  return `${share} of ${'group' in aim ? inSentence(groupName(aim.group)) : nameOf(aim.food)}`;
}

/** Unit of an aim's number and of what it may give. */
export function aimUnit(aim: Aim): string {
  switch (aim.aim) {
    case 'few':
    case 'few to buy':
      return 'foods';
    case 'cheap':
      return 'per kg';
    default:
      return 'nutrient' in aim ? `${unitWord(nutrient(aim.nutrient).unit)} per 100 g` : '%';
  }
}

/** What the wish came to: "34.2 % of the mix", "14 foods", "6.21 g per 100 g of the ration". */
export function valueWords(aim: Aim, value: number): string {
  switch (aim.aim) {
    case 'few':
      return foods(value);
    case 'few to buy':
      return `${foods(value)} to buy`;
    case 'cheap':
      return `${value.toFixed(2)} per kg`;
    default:
      return `${figure(value)} ${aimUnit(aim)} of the ${'nutrient' in aim ? (aim.on ?? 'mix') : 'mix'}`;
  }
}

const foods = (n: number) => (n === 1 ? '1 food' : `${n} foods`);

/** What a wish lacks to say anything, with the way out; undefined where it lacks nothing. */
export function aimLacks(problem: Problem, aim: Aim, nameOf: NameOf): string | undefined {
  const open = problem.foods.filter((f) => !f.refused);
  if (aim.aim === 'liked' && !open.some((f) => f.liked))
    return 'No food is marked as liked yet. Tick “Liked” in a food’s details.';
  if ((aim.aim === 'cupboard' || aim.aim === 'few to buy') && !open.some((f) => f.on_hand_grams))
    return 'Nothing is said of the cupboard yet. Write what it holds in a food’s details.';
  if (aim.aim !== 'cheap') return undefined;
  const unpriced = open.filter((f) => f.price_per_kg === undefined).map((f) => nameOf(f.id));
  if (unpriced.length === 0) return undefined;
  const some = unpriced.length > 3 ? [...unpriced.slice(0, 2), `${unpriced.length - 2} more`] : unpriced;
  return `“Cheap” needs the price of every food. None is known for ${joined(some)}; it is written in a food’s details.`;
}

/** Why a wish cannot be added; undefined where it can. */
export function aimFault(problem: Problem, aim: Aim, nameOf: NameOf): string | undefined {
  const aims = problem.aims ?? [];
  if (aims.some((a) => aimKey(a) === aimKey(aim)))
    return `“${aimWords(aim, nameOf)}” is wished already; move it up or down instead.`;
  const opposite = oppositeOf(aim);
  if (opposite && aims.some((a) => aimKey(a) === aimKey(opposite)))
    return `“${aimWords(opposite, nameOf)}” is wished, which is the opposite; remove that first.`;
  if (aims.length >= MOST_AIMS) return `${MOST_AIMS} wishes are the most; remove one first.`;
  return aim.aim === 'cheap' ? aimLacks(problem, aim, nameOf) : undefined;
}

function oppositeOf(aim: Aim): Aim | undefined {
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

/** "n FAT", "g seed", "f oats": a thing measured as one value of a list, and back. */
export function measuredFrom(value: string, on: 'mix' | 'ration'): Measured {
  const what = value.slice(2);
  if (value.startsWith('n ')) return { nutrient: what as Tag, on };
  return value.startsWith('g ') ? { group: what } : { food: what };
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
  const aims = [...(mix.problem.aims ?? [])];
  const from = aims.findIndex((a) => aimKey(a) === key);
  const to = from + by;
  if (from < 0 || to < 0 || to >= aims.length) return mix;
  [aims[from], aims[to]] = [aims[to]!, aims[from]!];
  return withAims(mix, aims);
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
  return words.charAt(0).toUpperCase() + words.slice(1);
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

export function addCount(mix: Mix, rule: CountRule): Mix {
  return withProblem(mix, { rules: [...mix.problem.rules, rule] });
}

/** Puts another counting rule in the place of one; a place that holds no counting rule is left alone. */
export function replaceCount(mix: Mix, index: number, rule: CountRule): Mix {
  return withProblem(mix, {
    rules: mix.problem.rules.map((r, i) => (i === index && 'count' in r ? rule : r)),
  });
}

const LAST: Readonly<Record<Objective, string>> = {
  nearest: 'how far it is from what is wanted',
  cheapest: 'its price',
  varied: 'how evenly it is spread',
};

/**
 * What is not proven of the best mix; undefined where it is proven best.
 * @param gap and @param objective as the result gives them, for "cheapest" in price per kg times percent
 */
export function gapWords(objective: Objective, value: number, gap: number | undefined): string | undefined {
  if (!gap) return undefined;
  const much =
    objective === 'cheapest'
      ? `${(gap / 100).toFixed(2)} per kg`
      : `${figure(Math.min(100, (100 * gap) / value))} %`;
  return `The search ended before its last proof: in ${LAST[objective]}, this mix is proven to within ${much} of the best.`;
}

export function inSentence(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

function round(value: number): number {
  return Number(value.toFixed(2));
}
