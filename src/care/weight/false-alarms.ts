/**
 * How often a rule calls for a vet without cause: alerts an animal and year in simulated healthy series of every kind and
 * season, weighed daily, every few days or weekly, whichever gave most: of a shift, winter whites in natural light, whose
 * year was drawn in thirteen ways; all other kinds gave under 0.05 (`test/care/weight-simulation.test.ts` holds them).
 */
import type { WeightAlert } from './model.ts';

const MEASURED: Readonly<Record<WeightAlert['way'], Readonly<Record<WeightAlert['rule'], number>>>> = {
  loss: { fast: 0.02, shift: 0.2, slow: 0.02, growth: 0.01 },
  gain: { fast: 0, shift: 0.01, slow: 0.01, growth: 0 },
};

export function falseAlarmsAYear({ rule, way }: Pick<WeightAlert, 'rule' | 'way'>): number {
  return MEASURED[way][rule];
}
