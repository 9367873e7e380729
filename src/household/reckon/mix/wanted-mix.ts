/** A mix at the shares that are wanted of it, whatever the limits say. */
import type { Mix } from '../../model.ts';

/**
 * Every food at its wanted share, those without one at equal parts of the rest; all brought to 100 together. Refused
 * foods have none.
 */
export function withWantedShares(mix: Mix): Mix {
  const foods = mix.problem.foods.filter((f) => !f.refused);
  const given = foods.reduce((sum, f) => sum + (f.want ?? 0), 0);
  const open = foods.filter((f) => f.want === undefined).length;
  const part = open === 0 ? 0 : Math.max(0, 100 - given) / open;
  const all = foods.reduce((sum, f) => sum + (f.want ?? part), 0);
  const shares = foods.map((f) => [f.id, all > 0 ? (100 * (f.want ?? part)) / all : 100 / foods.length]);
  return { ...mix, shares: { ...mix.shares, ...Object.fromEntries(shares) } };
}
