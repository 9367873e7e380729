/** YALPS, a simplex method written in TypeScript alone. Development only. */
import { solve } from 'yalps';
import type { Answer, Rules } from './rules.ts';

/** Least cost. @param seconds after which a search for whole columns ends @returns undefined where none was proven */
export function byYalps(
  { rows, lower, upper, whole }: Rules,
  cost: readonly number[],
  seconds?: number,
): Answer | undefined {
  const factors = cost.map((c) => new Map([['cost', c]]));
  const constraints = new Map<string, { min?: number; max?: number; equal?: number }>();
  const side = (key: string, min: number, max: number) =>
    constraints.set(
      key,
      min === max
        ? { equal: min }
        : {
            ...(min > Number.NEGATIVE_INFINITY && { min }),
            ...(max < Number.POSITIVE_INFINITY && { max }),
          },
    );
  for (const [r, { a, min, max }] of rows.entries()) {
    side(`r${r}`, min, max);
    for (const [i, v] of a.entries()) if (v !== 0) factors[i]?.set(`r${r}`, v);
  }
  // It knows no bounds of columns but 0: each is a row of its own.
  for (const [i, low] of lower.entries()) {
    const high = upper[i] ?? 100;
    if (low === 0 && (high >= 100 || whole?.[i])) continue;
    side(`b${i}`, low === 0 && high > 0 ? Number.NEGATIVE_INFINITY : low, high);
    factors[i]?.set(`b${i}`, 1);
  }
  const { status, result, variables } = solve(
    {
      direction: 'minimize',
      objective: 'cost',
      constraints,
      variables: factors.map((of, i) => [i, of] as const),
      ...(whole && { binaries: whole.flatMap((w, i) => (w ? [i] : [])) }),
    },
    { tolerance: 0, ...(seconds !== undefined && { timeout: 1000 * seconds }) },
  );
  if (status !== 'optimal') return undefined;
  const found = new Map(variables);
  return { x: lower.map((_, i) => found.get(i) ?? 0), objective: result };
}
