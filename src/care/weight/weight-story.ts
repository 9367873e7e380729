/** Points, trend and alerts of one animal: the door to everything in this folder. */
import { dayNumber } from '../../kitchen/days.ts';
import { ADULT_WEIGHTS } from '../figures/adult-weights.ts';
import { asDay, circumstancesOf } from './circumstances.ts';
import { expectedChange } from './expected.ts';
import { falseAlarmsAYear } from './false-alarms.ts';
import { follow, type Standing } from './follow.ts';
import { judge } from './judge.ts';
import { dayValues } from './level/reading.ts';
import type { WeightAlert, WeightQuestion, WeightStory } from './model.ts';
import { trendOf } from './trend.ts';

/**
 * What an animal's weighings come to. Unlikely ones count for nothing: no trend, no alert. An alert stands while what
 * raised it holds: until the weight is back, or has kept its new level for some weeks.
 */
export function weightStory(question: WeightQuestion): WeightStory {
  const { weighings, dayAt, species, sex, usualGrams, today } = question;
  const placed = [...weighings]
    .filter(({ grams }) => grams > 0)
    .sort((a, b) => (a.at === b.at ? (a.id < b.id ? -1 : 1) : a.at < b.at ? -1 : 1))
    .map((w) => ({ w, day: dayAt(w.at) }));
  const readings = placed.map(({ w, day }) => ({
    day: dayNumber(day),
    y: Math.log(w.grams),
    sure: w.sure === true,
  }));
  const circumstances = circumstancesOf(question);
  const judgement = judge(readings, { species, usualGrams, circumstances });
  const days = dayValues(judgement.counted);
  const range = ADULT_WEIGHTS[species];
  const { low: adultLow, high: adultHigh } = (sex && range?.of?.[sex]) ?? range ?? {};
  const followed = follow(days, { species, circumstances, usualGrams, adultLow, adultHigh });
  const now = dayNumber(today);
  const likely = judgement.likely(now);
  let trend: WeightStory['trend'] | undefined;
  return {
    points: placed.map(({ w, day }, i) => ({
      id: w.id,
      day,
      at: w.at,
      grams: w.grams,
      unlikely: judgement.unlikely[i] ?? false,
    })),
    // A line a day, for the picture alone: most who ask what is due draw none.
    get trend() {
      trend ??= trendOf(days).map(({ day, y, within }) => ({
        day: asDay(day),
        grams: Math.exp(y),
        low: Math.exp(y - within),
        high: Math.exp(y + within),
      }));
      return trend;
    },
    alerts: followed.standing.map(alertOf).sort(morePressing),
    past: followed.ended
      .map((e) => ({ ...alertOf(e), until: asDay(e.until) }))
      .sort((a, b) => (a.on < b.on ? -1 : 1)),
    expected: expectedChange(followed.steady, circumstances, now),
    likely: likely && { low: Math.exp(likely.low), high: Math.exp(likely.high) },
  };
}

/** Whether somebody should look again before a weighing of today is kept. @param grams of the animal alone */
export function isUnlikely({ likely }: Pick<WeightStory, 'likely'>, grams: number): boolean {
  return likely !== undefined && (grams < likely.low || grams > likely.high);
}

function alertOf({ rule, way, since, on, from, to, vet }: Standing): WeightAlert {
  const change = Math.exp(to - from) - 1;
  return {
    rule,
    way,
    since: asDay(since),
    on: asDay(on),
    percent: Math.max(0, way === 'loss' ? -change : change) * 100,
    from: Math.exp(from),
    to: Math.exp(to),
    vet,
    falseAlarmsAYear: falseAlarmsAYear({ rule, way }),
  };
}

const SOONEST = ['today', 'days', 'next visit'] as const;

function morePressing(a: WeightAlert, b: WeightAlert): number {
  return SOONEST.indexOf(a.vet) - SOONEST.indexOf(b.vet) || b.percent - a.percent;
}
