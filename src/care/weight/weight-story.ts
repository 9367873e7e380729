import { dayNumber } from '../../kitchen/days.ts';
import { ADULT_WEIGHTS } from '../figures/adult-weights.ts';
import { asDay, circumstancesOf } from './circumstances.ts';
import { follow, type Standing } from './follow.ts';
import { judge } from './judge.ts';
import { dayValues } from './level/reading.ts';
import type { WeightAlert, WeightQuestion, WeightStory } from './model.ts';
import { trendOf } from './trend.ts';

/** Points, trend and alerts of one animal. */
export function weightStory(question: WeightQuestion): WeightStory {
  const { weighings, dayAt, species, usualGrams, today } = question;
  const sorted = [...weighings].sort((a, b) =>
    a.at === b.at ? (a.id < b.id ? -1 : 1) : a.at < b.at ? -1 : 1,
  );
  const numbers = new Map<string, number>();
  const numberOf = (day: string) => {
    const known = numbers.get(day);
    if (known !== undefined) return known;
    const number = dayNumber(day);
    numbers.set(day, number);
    return number;
  };
  const placed = sorted.map((w) => ({ w, day: dayAt(w.at) }));
  const readings = placed.map(({ w, day }) => ({
    day: numberOf(day),
    y: Math.log(w.grams),
    sure: w.sure === true,
  }));
  const circumstances = circumstancesOf(question);
  const judgement = judge(readings, { species, usualGrams, circumstances });
  const days = dayValues(judgement.counted);
  const { low: adultLow, high: adultHigh } = ADULT_WEIGHTS[species] ?? {};
  const { standing, ended } = follow(days, { circumstances, usualGrams, adultLow, adultHigh });
  const likely = judgement.likely(numberOf(today));
  return {
    points: placed.map(({ w, day }, i) => ({
      id: w.id,
      day,
      at: w.at,
      grams: w.grams,
      unlikely: judgement.unlikely[i] ?? false,
    })),
    trend: trendOf(days).map(({ day, y, within }) => ({
      day: asDay(day),
      grams: Math.exp(y),
      low: Math.exp(y - within),
      high: Math.exp(y + within),
    })),
    alerts: standing.map(alertOf),
    past: ended.map((e) => ({ ...alertOf(e), until: asDay(e.until) })),
    likely: likely && { low: Math.exp(likely.low), high: Math.exp(likely.high) },
  };
}

function alertOf({ rule, way, since, on, from, to, vet }: Standing): WeightAlert {
  const percent = Math.abs(1 - Math.exp(to - from)) * 100;
  return {
    rule,
    way,
    since: asDay(since),
    on: asDay(on),
    percent,
    from: Math.exp(from),
    to: Math.exp(to),
    vet,
    falseAlarmsAYear: 0,
  };
}
