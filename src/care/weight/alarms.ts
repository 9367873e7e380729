/**
 * When a weight calls for a vet. Each rule sees what is known on one day, and says the alarm that stands then, if any.
 *
 * Figures that name no source here are our own choice (no source), held by `test/care/weight-simulation.test.ts`.
 */

import type { SpeciesKind } from '../animal/species.ts';
import { WEANED } from '../figures/growth.ts';
import { LOSS_LIMITS } from '../figures/loss-limits.ts';
import type { Base, Level } from './base.ts';
import type { Circumstances } from './circumstances.ts';
import { median, type Reading } from './level/reading.ts';
import type { WeightAlert, WeightRule } from './model.ts';
import type { OwnFall } from './own-fall.ts';
import type { Sums } from './sums.ts';

export interface Alarm {
  readonly rule: WeightRule;
  readonly way: WeightAlert['way'];
  /** Day number. */
  readonly since: number;
  /** Logarithms of g. */
  readonly from: number;
  readonly to: number;
  readonly vet: WeightAlert['vet'];
}

export interface Sight {
  readonly day: number;
  readonly circumstances: Circumstances;
  readonly species: SpeciesKind;
  readonly usualGrams?: number;
  readonly adultLow?: number;
  readonly adultHigh?: number;
  /** How much more than usual its weight goes up and down, 1 where it does not. */
  readonly restless: number;
  /** By day; the one of today is at `place`, and no later one is looked at. */
  readonly readings: readonly Reading[];
  readonly place: number;
  /** Level of the last days. */
  readonly now: number;
  readonly base?: Base;
  /** Undefined where she carries young. */
  readonly own?: OwnFall;
  readonly sums: Sums;
  /** Levels of ten days each, at each reading outside pregnancies. */
  readonly steady: readonly Level[];
  readonly carries: boolean;
}

/** A fall of so much, as a difference of logarithms. */
const fall = (part: number) => -Math.log(1 - part);

/** What a lasting shift must come to before it is worth a vet. */
const SHIFT_LEAST = fall(0.055);
/** On top of what the season takes, which is reckoned generously. */
const SHIFT_LEAST_IN_SEASON = fall(0.046);
const OWN_FALL_DAYS = 14;
const GAIN_LEAST = Math.log(1.12);
const FAST_LEAST = fall(0.1);
const FAST_DAYS = 10;
const SLOW_LEAST = fall(0.09);
const SLOW_LEAST_OLD = fall(0.12);
const SLOW_DAYS = 90;
const USUAL_LEAST = fall(0.15);
const SLOW_GAIN = Math.log(1.2);
/** A nursing mother may lose so much more; so many days later she has it back: both from memory. */
const NURSING_MORE = 0.07;
const RECOVERS_DAYS = 14;
const SEASON_STEEPEST = 0.008;
const SEASON_MOST = fall(0.36);
/** Young of all kinds here grow fast at these ages, days, until near their grown weight: from memory. */
const GROWING_AGES = [18, 45] as const;
const GROWING_PART = 0.8;
const GROWING_PART_UNKNOWN = 0.55;
/** Against so many days before it must have gained so much. */
const GROWTH_DAYS = [6, 11] as const;
const GROWTH_LEAST = Math.log(1.04);
/** An alert ends when less than this part of what raised it is left. */
const ENDS_AT = 0.6;

function lossVet(loss: number, fast: boolean): WeightAlert['vet'] {
  return loss >= fall(LOSS_LIMITS.most) || (fast && loss >= fall(LOSS_LIMITS.rapid)) ? 'today' : 'days';
}

/** Nursing takes some of her weight, which she has back two weeks after it. */
function worn(c: Circumstances, day: number): boolean {
  return c.nurses(day) || c.nurses(day - RECOVERS_DAYS) || c.afterBirth(day);
}

type Rule = (sight: Sight, before: Alarm | undefined) => Alarm | undefined;

const shiftLoss: Rule = ({ base, own, sums, now, restless, circumstances: c, day }, before) => {
  if (!base) return undefined;
  const inSeason = c.fallingDays(day - 14, day) > 0;
  const least =
    (inSeason ? SHIFT_LEAST_IN_SEASON : SHIFT_LEAST * restless) + (worn(c, day) ? NURSING_MORE : 0);
  const loss = base.low - now;
  const part = loss / least;
  const ownPart = own && !worn(c, day) ? own.part / restless : 0;
  const stands = before
    ? Math.max(part, ownPart) >= ENDS_AT
    : (sums.low >= sums.decision && part >= 1) || ownPart >= 1;
  if (!stands) {
    if (before) sums.settle();
    return undefined;
  }
  // What the season goes on to take does not add to the loss.
  const level = ownPart > part && own ? Math.max(own.level, base.level) : base.level;
  const from = inSeason ? level : Math.max(level, before?.from ?? level);
  return {
    rule: 'shift',
    way: 'loss',
    since: sums.since ?? (ownPart > part ? day - OWN_FALL_DAYS : day),
    from,
    to: now,
    vet: lossVet(from - now, false),
  };
};

const shiftGain: Rule = (s, before) => {
  const { base, sums, now, circumstances: c, day, steady, adultLow = 0 } = s;
  if (!base || s.carries || c.afterBirth(day) || c.young(day) || c.rising(day)) return undefined;
  if (now < Math.log(adultLow)) return undefined;
  const least = before ? GAIN_LEAST * ENDS_AT : GAIN_LEAST;
  if (now - base.high < least || !(before || sums.high >= sums.decision)) return undefined;
  let top = base.high;
  for (let i = steady.length - 1; i >= 0; i--) {
    const at = steady[i];
    if (!at || at.day < day - 180) break;
    if (at.day <= (sums.sinceHigh ?? day) - 10) top = Math.max(top, at.y);
  }
  if (now - top < least) return undefined;
  return { rule: 'shift', way: 'gain', since: sums.sinceHigh ?? day, from: top, to: now, vet: 'next visit' };
};

/** Two weighings that agree, or one that the keeper is sure of, against those of the days before. */
const fast: Rule = ({ readings, place, carries, circumstances: c, base, day }, before) => {
  const last = readings[place];
  const one = readings[place - 1];
  if (!last || !one) return undefined;
  const pair = !last.sure && last.day - one.day <= FAST_DAYS;
  const first = last.sure ? last : one;
  const worst = pair ? Math.max(last.y, one.y) : last.y;
  if (!last.sure && !pair) return undefined;
  const lately: Reading[] = [];
  for (let i = place - (pair ? 2 : 1); i >= 0; i--) {
    const r = readings[i];
    if (!r || r.day < first.day - FAST_DAYS) break;
    lately.push(r);
  }
  let from = lately.length === 0 ? Number.NaN : median(lately.map(({ y }) => y));
  // What she carried is no loss: only what she lacks of her own weight is.
  if (carries || c.afterBirth(day) || lately.some((r) => c.carries(r.day)))
    from = base ? Math.min(from, base.level) : Number.NaN;
  const kept = before ? Math.max(before.from, Number.isNaN(from) ? before.from : from) : from;
  const loss = kept - worst;
  if (before ? day - before.since > 28 || loss < FAST_LEAST * ENDS_AT : !(from - worst >= FAST_LEAST))
    return undefined;
  return { rule: 'fast', way: 'loss', since: first.day, from: kept, to: worst, vet: lossVet(loss, true) };
};

const slowLoss: Rule = (s, before) => {
  const { steady, circumstances: c, day, usualGrams } = s;
  const now = steady.at(-1);
  if (!now || now.day !== day || c.afterBirth(day)) return before && s.carries ? before : undefined;
  const more = worn(c, day) ? NURSING_MORE : 0;
  const least = (c.old ? SLOW_LEAST_OLD : SLOW_LEAST) + more;
  let best: Alarm | undefined;
  let most = 0;
  const see = (from: number, since: number, threshold: number) => {
    const over = (from - now.y) / (before ? threshold * ENDS_AT : threshold);
    if (over < 1 || over <= most) return;
    most = over;
    best = { rule: 'slow', way: 'loss', since, from, to: now.y, vet: lossVet(from - now.y, false) };
  };
  const back = c.fallingDays(day - SLOW_DAYS, day) > 0 ? 200 : SLOW_DAYS;
  for (let i = steady.length - 1; i >= 0; i--) {
    const at = steady[i];
    if (!at || at.day < day - back) break;
    if (at.day > day - 10 || at.y - now.y < (before ? least * ENDS_AT : least)) continue;
    see(at.y, at.day, least + Math.min(SEASON_MOST, SEASON_STEEPEST * c.fallingDays(at.day, day)));
  }
  if (usualGrams !== undefined && !c.young(day)) {
    const season = c.fallingDays(day - 200, day) > 0 ? SEASON_MOST : 0;
    see(Math.log(usualGrams), best?.since ?? day, USUAL_LEAST + more + season);
  }
  return best;
};

const slowGain: Rule = ({ steady, circumstances: c, day, adultHigh, carries }, before) => {
  const now = steady.at(-1);
  if (!now || now.day !== day || carries || c.young(day) || c.rising(day) || adultHigh === undefined)
    return undefined;
  if (now.y < Math.log(adultHigh)) return undefined;
  const earlier: Level[] = [];
  for (let i = steady.length - 1; i >= 0; i--) {
    const at = steady[i];
    if (!at || at.day < day - 120) break;
    if (at.day <= day - 60) earlier.push(at);
  }
  if (earlier.length < 3) return undefined;
  const from = before?.from ?? median(earlier.map(({ y }) => y));
  if (now.y - from < SLOW_GAIN * (before ? ENDS_AT : 1)) return undefined;
  return { rule: 'slow', way: 'gain', since: earlier.at(-1)?.day ?? day, from, to: now.y, vet: 'next visit' };
};

/** A young one that does not grow, or weighs less at weaning than such young do. */
const growth: Rule = (s, before) => {
  const { circumstances: c, day, readings, place, now, adultLow, species } = s;
  const last = readings[place];
  const one = readings[place - 1];
  if (!c.young(day) || !last || !one) return undefined;
  const age = c.age(day);
  const weaned = WEANED[species];
  if (weaned && age !== undefined && age >= weaned.fromDay && age <= weaned.toDay) {
    const low = Math.log(weaned.low);
    if (Math.max(last.y, last.sure ? last.y : one.y) < low)
      return { rule: 'growth', way: 'loss', since: one.day, from: low, to: last.y, vet: 'days' };
  }
  const growing =
    age === undefined || Number.isNaN(age)
      ? adultLow !== undefined && now < Math.log(adultLow * GROWING_PART_UNKNOWN)
      : age >= GROWING_AGES[0] && age <= GROWING_AGES[1] && now < Math.log((adultLow ?? 1e9) * GROWING_PART);
  if (!growing) return undefined;
  const earlier: number[] = [];
  for (let i = place - 1; i >= 0; i--) {
    const r = readings[i];
    if (!r || r.day < day - GROWTH_DAYS[1]) break;
    if (r.day <= day - GROWTH_DAYS[0]) earlier.push(r.y);
  }
  if (earlier.length === 0) return before;
  const from = median(earlier);
  if (now - from >= GROWTH_LEAST) return undefined;
  return { rule: 'growth', way: 'loss', since: day - GROWTH_DAYS[0], from, to: now, vet: 'days' };
};

/** In the order in which they press. */
export const ALERT_RULES: Readonly<Record<string, Rule>> = {
  fast,
  shiftLoss,
  slowLoss,
  growth,
  shiftGain,
  slowGain,
};
