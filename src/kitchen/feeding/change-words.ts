/** A change of food in sentences: on which days it is in range, and what is out of range on which days, and why. */

import { nearBound } from '../../formulation/explain/sentences.ts';
import type { Breach, Statement } from '../../formulation/problem/result.ts';
import type { Ration } from '../../formulation/solve/bounds.ts';
import { words } from '../../words/words.ts';
import type { Day } from '../model.ts';
import { type BlendBound, blend, roomOf, sumsOf } from './blend-bounds.ts';

/** One day of the change: what is weighed out, and whether it is in range. */
export interface ChangeDay {
  /** 1 for the first. */
  readonly day: number;
  /** Where a start was given. */
  readonly date?: Day;
  /** The new ration's part, 0 to 1. */
  readonly part: number;
  /** Parts of all that is fed, 1 together. */
  readonly parts: FedPart;
  /** Whole steps of the scale, the day's grams together. */
  readonly grams: FedPart;
  /** Whether the parts as planned keep every rule that can be asked. */
  readonly in_range: boolean;
  /** The same of the rounded grams. */
  readonly in_range_as_weighed: boolean;
  /** Rules that the planned parts break. */
  readonly breaches: readonly Breach[];
}

/** What is fed in one day: the old food, the new mix, and each food beside it by id. */
interface FedPart {
  readonly old: number;
  readonly mix: number;
  readonly beside: Readonly<Record<string, number>>;
}

/** One bound that is missed, on which days, and whose fault it is. */
export interface ChangeReason extends Statement {
  /** First and last such day. */
  readonly from: number;
  readonly to: number;
}

/** "Day 1 to 4: protein is below 17 %, since the old food holds 13 %." A straight line is out at one end only. */
export function reason(b: BlendBound, list: readonly ChangeDay[], ration: Ration): ChangeReason[] {
  const out = list.filter((d) => d.breaches.some((breach) => breach.pointer === b.pointer));
  const [first, last] = [out[0]?.day, out.at(-1)?.day];
  if (first === undefined || last === undefined) return [];
  const { measure, bound, side, pointer } = b;
  const { feedingChange: t, figures } = words();
  const withUnit = (value: string) => (measure.unit ? `${value} ${measure.unit}` : value);
  const says = measure.unit ? ([t.oldHolds, t.newHolds] as const) : ([t.oldHas, t.newHas] as const);
  const ends = says.flatMap((say, part) => {
    const parts = blend(part, ration);
    if (roomOf(b, parts) >= 0) return [];
    const { top, bottom } = sumsOf(b, parts);
    return [say(withUnit(nearBound(top / bottom, bound)))];
  });
  const when = first === last ? t.day(first) : t.daysFromTo(first, last);
  const limit = withUnit(figures.number(bound, 6));
  const sentence = (side === 'min' ? t.below : t.above)(when, measure.subject, limit, ends);
  return [{ pointer, from: first, to: last, sentence }];
}

/** On which days the change is in range, in a sentence or two. @param asked bounds that were checked @param unchecked rules that could not be */
export function overall(
  list: readonly ChangeDay[],
  asked: number,
  unchecked: number,
  stepGrams: number,
): string {
  const t = words().feedingChange;
  const missing = unchecked > 0 ? [t.cannotCheck(unchecked)] : [];
  if (asked === 0) return [t.noRule, ...missing].join(' ');
  const kept = list.filter((d) => d.in_range);
  const [first, last] = [kept[0]?.day, kept.at(-1)?.day];
  const coarse = list.filter((d) => d.in_range && !d.in_range_as_weighed).map((d) => d.day);
  const rounded = coarse.length > 0 ? [t.justOutside(stepGrams, coarse)] : [];
  return [whenInRange(first, last, list.length), ...rounded, ...missing].join(' ');
}

function whenInRange(first: number | undefined, last: number | undefined, days: number): string {
  const t = words().feedingChange;
  if (first === undefined || last === undefined) return t.never;
  if (first === 1 && last === days) return t.always;
  if (first === days) return t.lastDay(days);
  if (last === days) return t.from(first);
  return first === last ? t.only(first) : t.fromTo(first, last);
}
