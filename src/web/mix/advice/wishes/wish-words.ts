/** Wishes in words: what they ask, what they came to, what they lack. */
import {
  type Aim,
  FEW_TO_BUY,
  type Measured,
  type Objective,
  type Problem,
} from '../../../../formulation/problem/problem.ts';
import { groupName } from '../../../../household/reckon/mix/mix-edits.ts';
import { aimKey, MOST_AIMS, oppositeOf } from '../../../../household/reckon/mix/wishes.ts';
import { nutrient, type Tag, unitWord } from '../../../../nutrition/nutrients.ts';
import { words } from '../../../../words/words.ts';
import { inSentence } from './count-words.ts';

export type SimpleAim = Exclude<Aim['aim'], 'less' | 'more'>;

export const SIMPLE_AIMS: readonly SimpleAim[] = ['liked', 'cupboard', 'few', FEW_TO_BUY, 'cheap'];

/** What decides among the mixes that rules and wishes leave. */
export function objectiveChoices(): [Objective, string][] {
  const t = words().wishes.objectives;
  return [
    ['nearest', t.nearest],
    ['cheapest', t.cheapest],
    ['varied', t.varied],
  ];
}

export function simpleAimWords(aim: SimpleAim): string {
  const t = words().wishes.simple;
  return aim === FEW_TO_BUY ? t.fewToBuy : t[aim];
}

type NameOf = (id: string) => string;

/** "Less fat in the ration", "A greater share of vegetables". */
export function aimWords(aim: Aim, nameOf: NameOf): string {
  const t = words().wishes;
  if (aim.aim !== 'less' && aim.aim !== 'more') return simpleAimWords(aim.aim);
  if ('nutrient' in aim) return t[aim.aim][aim.on ?? 'mix'](inSentence(nutrient(aim.nutrient).name));
  const what = 'group' in aim ? inSentence(groupName(aim.group)) : nameOf(aim.food);
  return aim.aim === 'less' ? t.smaller(what) : t.greater(what);
}

/** Unit of an aim's number and of what it may give. */
export function aimUnit(aim: Aim): string {
  const t = words().wishes.units;
  switch (aim.aim) {
    case 'few':
    case FEW_TO_BUY:
      return t.foods;
    case 'cheap':
      return t.perKg;
    default:
      return 'nutrient' in aim ? t.per100(unitWord(nutrient(aim.nutrient).unit)) : '%';
  }
}

/** What the wish came to: "34.2 % of the mix", "14 foods", "6.21 g in 100 g of the ration". */
export function valueWords(aim: Aim, value: number): string {
  const t = words().wishes.value;
  switch (aim.aim) {
    case 'few':
      return t.foods(value);
    case FEW_TO_BUY:
      return t.toBuy(value);
    case 'cheap':
      return t.price(value);
    default:
      return 'nutrient' in aim
        ? t[aim.on ?? 'mix'](value, unitWord(nutrient(aim.nutrient).unit))
        : t.share(value);
  }
}

/** What a wish lacks to say anything, with the way out; undefined where it lacks nothing. */
export function aimLacks(problem: Problem, aim: Aim, nameOf: NameOf): string | undefined {
  const t = words().wishes.lacks;
  const open = problem.foods.filter((f) => !f.refused);
  if (aim.aim === 'liked' && !open.some((f) => f.liked)) return t.liked;
  if ((aim.aim === 'cupboard' || aim.aim === FEW_TO_BUY) && !open.some((f) => f.on_hand_grams)) return t.home;
  if (aim.aim !== 'cheap') return undefined;
  const unpriced = open.filter((f) => f.price_per_kg === undefined).map((f) => nameOf(f.id));
  if (unpriced.length === 0) return undefined;
  return unpriced.length > 3 ? t.priceMany(unpriced.slice(0, 2), unpriced.length - 2) : t.price(unpriced);
}

/** Why a wish cannot be added; undefined where it can. */
export function aimFault(problem: Problem, aim: Aim, nameOf: NameOf): string | undefined {
  const t = words().wishes.fault;
  const aims = problem.aims ?? [];
  if (aims.some((a) => aimKey(a) === aimKey(aim))) return t.already(aimWords(aim, nameOf));
  const opposite = oppositeOf(aim);
  if (opposite && aims.some((a) => aimKey(a) === aimKey(opposite)))
    return t.opposite(aimWords(opposite, nameOf));
  if (aims.length >= MOST_AIMS) return t.most(MOST_AIMS);
  return aim.aim === 'cheap' ? aimLacks(problem, aim, nameOf) : undefined;
}

/** "n FAT", "g seed", "f oats": a thing measured as one value of a list, and back. */
export function measuredFrom(value: string, on: 'mix' | 'ration'): Measured {
  const what = value.slice(2);
  if (value.startsWith('n ')) return { nutrient: what as Tag, on };
  return value.startsWith('g ') ? { group: what } : { food: what };
}

/**
 * How far the best mix may still be from the best there is, where that is not proven; undefined where it is.
 * @param gap and @param objective as the result gives them, for "cheapest" in price per kg times percent
 */
export function gapWords(objective: Objective, value: number, gap: number | undefined): string | undefined {
  if (!gap) return undefined;
  const t = words().wishes.gap;
  return objective === 'cheapest' ? t.cheapest(gap / 100) : t[objective](Math.min(100, (100 * gap) / value));
}
