/** What the weights of one animal come to. */
import type { Day, Moment } from '../../kitchen/model.ts';
import type { LifeStage } from '../../targets/life-stage.ts';
import type { SpeciesKind } from '../animal/species.ts';
import type { Condition, Weighing } from '../model.ts';

export interface WeightQuestion {
  /** In any order. */
  readonly weighings: readonly Weighing[];
  readonly species: SpeciesKind;
  readonly lifeStage: LifeStage;
  readonly sex?: 'female' | 'male';
  readonly born?: { readonly on: Day; readonly about?: true };
  readonly conditions: readonly Condition[];
  /** It lives by daylight; undefined where nobody has said. */
  readonly daylight?: boolean;
  /** South of the equator. */
  readonly south: boolean;
  /** What it weighs in health, g, where that was said. */
  readonly usualGrams?: number;
  readonly today: Day;
  dayAt(moment: Moment): Day;
}

export interface WeightPoint {
  readonly id: string;
  readonly day: Day;
  readonly at: Moment;
  readonly grams: number;
  /** Far off what was to be expected, not said to be right, and not borne out by the next: it counts for nothing. */
  readonly unlikely: boolean;
}

/** The smoothed weight on a day, and between which weights it lies. */
export interface TrendPoint {
  readonly day: Day;
  readonly grams: number;
  /** In 19 of 20. */
  readonly low: number;
  readonly high: number;
}

/** "fast": a fall within days; "shift": a lasting change of level; "slow": a fall over weeks; "growth": a young one falls behind. */
export type WeightRule = 'fast' | 'shift' | 'slow' | 'growth';

export interface WeightAlert {
  readonly rule: WeightRule;
  readonly way: 'loss' | 'gain';
  /** When the change began, as far as can be told. */
  readonly since: Day;
  /** The day on which it was found. */
  readonly on: Day;
  /** Of the weight before, percent; 0 of a young one that only does not grow. */
  readonly percent: number;
  /** g before and now. */
  readonly from: number;
  readonly to: number;
  /** How soon to see a vet. */
  readonly vet: 'today' | 'days' | 'next visit';
  /** False alarms of this rule an animal and year, as found by simulation. */
  readonly falseAlarmsAYear: number;
}

/** An alert that stood once. */
export interface PastAlert extends WeightAlert {
  /** The day on which a weighing ended it: the weight was back, or had kept its new level for weeks. */
  readonly until: Day;
}

/** What explains a change that is no alarm. */
export type ExpectedChange =
  | 'autumn'
  | 'spring'
  | 'short days'
  | 'growth'
  | 'pregnancy'
  | 'nursing'
  | 'birth';

export interface WeightStory {
  /** By time. */
  readonly points: readonly WeightPoint[];
  /** A day each, from the first weighing that counts to the last. */
  readonly trend: readonly TrendPoint[];
  /** Those that stand now; most pressing first. */
  readonly alerts: readonly WeightAlert[];
  /** Those that are over, by the day on which they were found. */
  readonly past: readonly PastAlert[];
  /** What explains a change that is no alarm: the season, growth, a pregnancy. */
  readonly expected?: ExpectedChange;
  /** Between which weights a weighing of today is likely, g; undefined where nothing is known of the animal's weight. */
  readonly likely?: { readonly low: number; readonly high: number };
}
