import { describe, expect, test } from 'vitest';
import type { WeightStory } from '../../../care/weight/model.ts';
import { netOf, padCentre, padFigures, unlikelyWeight } from './pad-figures.ts';

const NONE: WeightStory = { points: [], trend: [], alerts: [], past: [] };
const RANGE = { low: 120, high: 180, source: 'invented' };
const story: WeightStory = {
  points: [
    { id: 'a', day: '2026-03-01', at: '2026-03-01T20:00:00Z', grams: 142, unlikely: false },
    { id: 'b', day: '2026-03-02', at: '2026-03-02T20:00:00Z', grams: 412, unlikely: true },
  ],
  trend: [{ day: '2026-03-01', grams: 141.6, low: 139, high: 144 }],
  alerts: [],
  past: [],
  likely: { low: 130, high: 154 },
};

describe('the pad', () => {
  test('lies round the trend as far as that is likely, else round what the keeper says', () => {
    expect(padCentre(story, 150)).toBe(141.6);
    expect(padCentre({ ...story, likely: { low: 150, high: 170 } }, 150)).toBe(150);
    expect(padCentre({ ...NONE, likely: { low: 150, high: 170 } }, undefined)).toBeUndefined();
    expect(padCentre({ ...story, likely: undefined }, 150)).toBe(141.6);
    expect(padCentre(NONE, 150)).toBe(150);
    expect(padCentre(NONE, undefined)).toBeUndefined();
  });

  test('has whole grams, the likely one in the middle', () => {
    const pad = padFigures(141.6, 0, 'g');
    expect(pad.map((f) => f.net)).toEqual([
      135, 136, 137, 138, 139, 140, 141, 142, 143, 144, 145, 146, 147, 148, 149,
    ]);
    expect(pad.filter((f) => f.likely).map((f) => f.net)).toEqual([142]);
  });

  test('shows what the scale shows, and takes the tub off', () => {
    const pad = padFigures(141.6, 38.5, 'g');
    const likely = pad.find((f) => f.likely);
    expect(likely).toEqual({ onScale: 180, net: 141.5, likely: true });
    for (const f of pad) expect(f.onScale - f.net).toBeCloseTo(38.5, 9);
  });

  test('has no weight of nothing or less, not even of the smallest animal', () => {
    expect(padFigures(3, 0, 'g').map((f) => f.net)).toEqual(Array.from({ length: 15 }, (_, i) => i + 1));
    expect(padFigures(3, 40, 'g')[0]).toMatchObject({ onScale: 41, net: 1 });
  });

  test('is wider for a large animal, and in ounces as fine as their scales', () => {
    expect(padFigures(400, 0, 'g')).toHaveLength(25);
    const ounces = padFigures(142, 0, 'oz').map((f) => f.onScale / 28.349523125);
    expect(ounces[1]! - ounces[0]!).toBeCloseTo(0.05, 9);
    expect(ounces[7]).toBeCloseTo(5, 9);
  });

  test('leaves no crumbs of subtraction', () => {
    expect(netOf(180.3, 38.1)).toBe(142.2);
  });
});

describe('an unlikely weight', () => {
  const about = { story, range: RANGE, lifeStage: 'adult' } as const;

  test('is one outside of what is likely, against the last one that counts', () => {
    expect(unlikelyWeight(412, about)).toEqual({ against: 'last', grams: 142, on: '2026-03-01' });
    expect(unlikelyWeight(129.9, about)).toMatchObject({ against: 'last' });
    expect(unlikelyWeight(130, about)).toBeUndefined();
    expect(unlikelyWeight(154, about)).toBeUndefined();
    const usual = { ...about, story: { ...NONE, likely: { low: 130, high: 154 } } };
    expect(unlikelyWeight(412, usual)).toEqual({ against: 'likely', low: 130, high: 154 });
    expect(unlikelyWeight(140, usual)).toBeUndefined();
  });

  test('is, the first time, one far from what its kind weighs; the young may weigh little', () => {
    const first = { story: NONE, range: RANGE, lifeStage: 'adult' } as const;
    expect(unlikelyWeight(1420, first)).toEqual({ against: 'kind', range: RANGE });
    expect(unlikelyWeight(14.2, first)).toEqual({ against: 'kind', range: RANGE });
    expect(unlikelyWeight(100, first)).toBeUndefined();
    expect(unlikelyWeight(14.2, { ...first, lifeStage: 'growing' })).toBeUndefined();
    expect(unlikelyWeight(1420, { ...first, range: undefined })).toBeUndefined();
  });
});
