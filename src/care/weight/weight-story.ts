import type { WeightQuestion, WeightStory } from './model.ts';

/** Points, trend and alerts of one animal. */
export function weightStory({ weighings, dayAt }: WeightQuestion): WeightStory {
  const points = [...weighings]
    .sort((a, b) => (a.at < b.at ? -1 : 1))
    .map(({ id, at, grams }) => ({ id, at, grams, day: dayAt(at), unlikely: false }));
  const trend = points.map(({ day, grams }) => ({ day, grams, low: grams, high: grams }));
  return { points, trend, alerts: [], past: [] };
}
