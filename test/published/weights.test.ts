/**
 * What animals weigh, how they grow, what the season takes and how much they may lose, held against what is published.
 */
import { describe, expect, it } from 'vitest';
import { ADULT_WEIGHTS } from '../../src/care/figures/adult-weights.ts';
import { LONGEST_GESTATION, WEANED } from '../../src/care/figures/growth.ts';
import { LOSS_LIMITS } from '../../src/care/figures/loss-limits.ts';
import { WINTER_WHITE } from '../../src/care/figures/season.ts';

// NRC 1995, Nutrient Requirements of Laboratory Animals, table 5-1 (page 126).
it.each([
  ['golden', 120, 180],
  ['campbells', 30, 50],
  ['winter-white', 25, 45],
  ['chinese', 28, 40],
] as const)('a grown %s weighs %d to %d g', (kind, low, high) => {
  expect(ADULT_WEIGHTS[kind]).toMatchObject({ low, high });
  expect(ADULT_WEIGHTS[kind]?.source).toContain('table 5-1');
});

it('names a source, or memory, for every figure', () => {
  for (const { low, high, source } of Object.values(ADULT_WEIGHTS)) {
    expect(low).toBeLessThan(high);
    expect(source).toMatch(/\d{4}|\.(info|tw)|^from memory$/);
  }
});

// NRC 1995, ch. 5.
it('golden young are born after 18 days at the latest, and weaned at 21 to 28 days with 18 to 50 g', () => {
  expect(LONGEST_GESTATION.golden?.days).toBe(18);
  expect(WEANED.golden).toMatchObject({ fromDay: 21, toDay: 28, low: 18, high: 50 });
});

// Figala, Hoffmann, Goldau 1973: 18 (2 cases) or 19 days (27 cases).
it('winter whites are born after 19 days', () => {
  expect(LONGEST_GESTATION['winter-white']?.days).toBe(19);
});

describe('a winter white in natural light', () => {
  // Steinlechner, Heldmaier, Becker 1983: 32 % from August to December.
  const days = 31 + 30 + 31 + 30 + 15;
  it('may lose what was seen, and more at the steepest, but never what is called rapid', () => {
    expect(WINTER_WHITE.autumnFall).toBe(0.32);
    let lost = 0;
    for (let day = 31; day < 31 + days; day++) lost += at(day);
    expect(lost).toBeGreaterThan(-Math.log(1 - 0.32));
    const steepest = Math.max(...WINTER_WHITE.losing.map(([, rate]) => rate));
    expect(steepest).toBeGreaterThan((-Math.log(1 - 0.32) / days) * (Math.PI / 2));
    expect(steepest * 14).toBeLessThan(LOSS_LIMITS.rapid / 2);
  });

  // Figala, Hoffmann, Goldau 1973: heaviest in July and August, lightest in December and January.
  it('loses nothing before the heaviest months, and nothing after the lightest', () => {
    expect(at(0)).toBe(0);
    expect(at(214)).toBe(0);
  });
});

/** Part of its weight that one which is losing may lose on a day since the first of July. */
function at(day: number): number {
  const { losing } = WINTER_WHITE;
  const after = losing.findIndex(([x]) => x > day);
  const [right, left] = [losing[after], losing[after - 1]];
  if (!left || !right) return (after === 0 ? losing[0]?.[1] : losing.at(-1)?.[1]) ?? Number.NaN;
  return left[1] + ((right[1] - left[1]) * (day - left[0])) / (right[0] - left[0]);
}

// Limits used in animal welfare; Talbot et al. 2019, Laboratory Animals 54:99-110: 20 % comes too late for some.
it('a fall of 15 % within days, and of 20 % at all, is for today; a vet is named long before', () => {
  expect(LOSS_LIMITS).toMatchObject({ rapid: 0.15, most: 0.2 });
});
