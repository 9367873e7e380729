/** The shares of a mix that are bought for and weighed out. */
import type { Mix } from '../../model.ts';

/** Shares above 0 of foods that are not refused, percent by food id, and what they add up to. */
export function usedShares({ problem, shares }: Pick<Mix, 'problem' | 'shares'>): {
  readonly shares: Readonly<Record<string, number>>;
  readonly total: number;
  /** Whether they make a whole mix. */
  readonly whole: boolean;
} {
  const used = Object.fromEntries(
    problem.foods.flatMap(({ id, refused }) => {
      const share = refused ? 0 : (shares[id] ?? 0);
      return share > 0 ? [[id, share]] : [];
    }),
  );
  const total = Object.values(used).reduce((sum, s) => sum + s, 0);
  return { shares: used, total, whole: Math.abs(total - 100) <= 0.01 };
}
