import { WHOLE_STEP } from './tolerances.ts';

/**
 * Whole steps for parts that together come to `total` steps, by largest remainder (Hamilton's method): each part is
 * rounded down, and the steps left over go one each to the parts that lost most, the earlier one where two lost alike.
 * @param parts in steps, 0 or more each, `total` in all @param total whole
 */
export function largestRemainder(parts: readonly number[], total: number): number[] {
  const rows = parts.map((part, k) => {
    const whole = Math.floor(part + WHOLE_STEP);
    return { k, whole, lost: part - whole };
  });
  const missing = total - rows.reduce((sum, r) => sum + r.whole, 0);
  const order = [...rows].sort((a, b) => b.lost - a.lost || a.k - b.k);
  const raised = new Set(order.slice(0, Math.max(0, missing)).map((r) => r.k));
  return rows.map(({ k, whole }) => whole + Number(raised.has(k)));
}
