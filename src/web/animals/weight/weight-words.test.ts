import { describe, expect, test } from 'vitest';
import type { WeightAlert, WeightStory } from '../../../care/weight/model.ts';
import { alertWords, askWords, falseAlarmWords, lastWords, markWords } from './weight-words.ts';

const TODAY = '2026-03-10';
const fall: WeightAlert = {
  rule: 'fast',
  way: 'loss',
  since: '2026-03-04',
  on: '2026-03-10',
  percent: 11.3,
  from: 142,
  to: 126,
  vet: 'today',
  falseAlarmsAYear: 0.02,
};

function weighed(day: string, grams: number, unlikely = false): WeightStory {
  const at = new Date(`${day}T14:30:00`).toISOString();
  return { points: [{ id: 'a', day, at, grams, unlikely }], trend: [], alerts: [], past: [] };
}

describe('the words of weights', () => {
  test('say when it was weighed last', () => {
    expect(lastWords('Bramble', weighed(TODAY, 142), TODAY)).toBe('Weighed today at 14:30: 142 g.');
    expect(lastWords('Bramble', weighed('2026-03-09', 142), TODAY)).toBe('Weighed yesterday: 142 g.');
    expect(lastWords('Bramble', weighed('2026-02-01', 142.5), TODAY)).toBe(
      'Last weighed on 1 February: 142.5 g.',
    );
    expect(lastWords('Bramble', weighed(TODAY, 412, true), TODAY)).toBe('Bramble has not been weighed yet.');
  });

  test('ask about what is unlikely, against the last weight by its day', () => {
    const against = (on: string) => askWords(412, { against: 'last', grams: 142, on }, TODAY);
    expect(against('2026-03-09')).toBe('412 g? Yesterday it was 142 g.');
    expect(against(TODAY)).toBe('412 g? Earlier today it was 142 g.');
    expect(against('2026-03-01')).toBe('412 g? On 1 March it was 142 g.');
    expect(askWords(1420, { against: 'kind', range: { low: 120, high: 180, source: '' } }, TODAY)).toBe(
      '1420 g? A grown animal of this kind weighs 120 g to 180 g.',
    );
    expect(askWords(1420, { against: 'likely', low: 130.4, high: 150 }, TODAY)).toBe(
      '1420 g? By what is known of it, 130 g to 150 g is likely.',
    );
  });

  test('say what changed, without a cause', () => {
    expect(alertWords('Bramble', fall)).toBe('Bramble has lost 11 % of its weight within days.');
    expect(alertWords('Bramble', { ...fall, rule: 'growth', percent: 0 })).toBe(
      'Bramble is still young and does not gain as the young should.',
    );
    for (const rule of ['shift', 'slow'] as const)
      for (const way of ['loss', 'gain'] as const)
        expect(alertWords('Bramble', { ...fall, rule, way })).toContain('11 %');
  });

  test('say how often a warning is wrong', () => {
    expect(falseAlarmWords(0.021)).toContain('one animal in 48 a year');
    expect(falseAlarmWords(0.0042)).toContain('one animal in 240 a year');
    expect(falseAlarmWords(0.9)).toContain('0.9 times a year');
    expect(falseAlarmWords(0)).toContain('fewer than one animal in 1000');
  });

  test('say what a mark of the picture stands for', () => {
    const mark = { id: 'a', day: '2026-03-02', at: 0, low: 138, high: 142, count: 5, unlikely: false };
    const trend = { day: '2026-03-02', grams: 140.2, low: 139, high: 141.4 };
    expect(markWords({ ...mark, trend }, true, TODAY)).toBe(
      'Week from 2 March: 138 g to 142 g. Trend 140 g (139 g to 141 g).',
    );
    expect(markWords({ ...mark, low: 412, unlikely: true }, true, TODAY)).toBe(
      '2 March: 412 g. Looks unlikely, counts for nothing.',
    );
  });
});
