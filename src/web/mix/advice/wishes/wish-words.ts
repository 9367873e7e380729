/** Wishes in words: what they ask, what they came to, what they lack. */
import { figure, joined } from '../../../../formulation/explain/sentences.ts';
import type { Aim, Measured, Objective, Problem } from '../../../../formulation/problem/problem.ts';
import { groupName } from '../../../../household/reckon/mix/mix-edits.ts';
import { aimKey, MOST_AIMS, oppositeOf } from '../../../../household/reckon/mix/wishes.ts';
import { nutrient, type Tag, unitWord } from '../../../../nutrition/nutrients.ts';
import { foods, inSentence } from './count-words.ts';

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

/** "n FAT", "g seed", "f oats": a thing measured as one value of a list, and back. */
export function measuredFrom(value: string, on: 'mix' | 'ration'): Measured {
  const what = value.slice(2);
  if (value.startsWith('n ')) return { nutrient: what as Tag, on };
  return value.startsWith('g ') ? { group: what } : { food: what };
}

const LAST: Readonly<Record<Objective, string>> = {
  nearest: 'how far it is from what is wanted',
  cheapest: 'its price',
  varied: 'how evenly it is spread',
};

/**
 * How far the best mix may still be from the best there is, where that is not proven; undefined where it is.
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
