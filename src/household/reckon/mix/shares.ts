/** Shares of a mix: which foods may have one, and which change from one mix to another. */
import type { Problem, Shares } from '../../../formulation/problem/problem.ts';
import type { Evaluation } from '../../../formulation/problem/result.ts';

/** Foods that may be used: those that the animal refuses, or that may never be fed, are out. */
export function openFoods({ foods }: Problem, evaluation: Evaluation | undefined): string[] {
  const blocked = new Set(evaluation?.cautions.filter((c) => c.applied === 'blocked').map((c) => c.food));
  return foods.filter((f) => !f.refused && !blocked.has(f.id)).map((f) => f.id);
}

interface ShareChange {
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

/** Shares that move by at least `least` percentage points, the largest move first. */
export function shareChanges(from: Shares, to: Shares, least = 0.1): ShareChange[] {
  return Object.keys({ ...from, ...to })
    .map((id) => ({ id, from: from[id] ?? 0, to: to[id] ?? 0 }))
    .filter((c) => Math.abs(c.to - c.from) >= least)
    .sort((a, b) => Math.abs(b.to - b.from) - Math.abs(a.to - a.from));
}
