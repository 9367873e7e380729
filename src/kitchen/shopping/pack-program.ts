/** The mixed-integer program of a choice of packs: packs of each offer, and for each seller with terms whether it is used. */

import type { LinearModel } from '../../formulation/solve/linear-program.ts';
import { dot, elementAt } from '../../formulation/solve/vectors.ts';
import { byText, type PackNeed, type Seller, type UsableOffer } from './usable-offers.ts';

/** A need is met within a millionth of itself: what the solver can tell apart, and far below what a scale can. */
export const NEAR = 1e-6;

const hasTerms = (s: Seller | undefined) => (s?.delivery ?? 0) > 0 || (s?.minimumOrder ?? 0) > 0;

/** Groups of needs that share no seller with terms of its own. */
export function apart(
  needs: readonly PackNeed[],
  usable: readonly UsableOffer[],
  sellers: ReadonlyMap<string, Seller>,
): { needs: PackNeed[]; usable: UsableOffer[] }[] {
  const group = new Map(needs.map((n) => [n.food, n.food]));
  const root = (food: string): string => {
    const up = group.get(food)!;
    return up === food ? food : root(up);
  };
  const firstAt = new Map<string, string>();
  for (const { offer } of usable) {
    if (!hasTerms(sellers.get(offer.seller))) continue;
    const first = firstAt.get(offer.seller);
    if (first === undefined) firstAt.set(offer.seller, offer.food);
    else group.set(root(offer.food), root(first));
  }
  const parts = new Map<string, { needs: PackNeed[]; usable: UsableOffer[] }>();
  for (const need of [...needs].sort((a, b) => byText(a.food, b.food))) {
    const key = root(need.food);
    if (!parts.has(key)) parts.set(key, { needs: [], usable: [] });
    parts.get(key)!.needs.push(need);
  }
  for (const u of usable) parts.get(root(u.offer.food))!.usable.push(u);
  return [...parts.values()];
}

/** Columns: packs of each offer, then for each seller with terms whether it is used. */
export interface Program {
  readonly offers: number;
  readonly rows: LinearModel['rows'];
  readonly upper: readonly number[];
  readonly money: readonly number[];
  /** g as mixed, bought; what is left over is this less what is needed. */
  readonly grams: readonly number[];
  readonly needed: number;
  readonly holds: (packs: readonly number[]) => boolean;
  /** The columns of sellers that follow from the packs. */
  readonly completed: (packs: readonly number[]) => number[];
}

/** The program of needs that are bought together. */
export function programOf(
  needs: readonly PackNeed[],
  usable: readonly UsableOffer[],
  sellers: ReadonlyMap<string, Seller>,
): Program {
  const withTerms = [...new Set(usable.map((u) => u.offer.seller))]
    .map((name) => sellers.get(name))
    .filter((s): s is Seller => s !== undefined && hasTerms(s));
  const n = usable.length;
  const width = n + withTerms.length;
  const zeros = () => new Array<number>(width).fill(0);
  const gramsOf = new Map(needs.map((need) => [need.food, need.grams]));
  // No best choice has more packs than meet the need alone, or reach the minimum order alone.
  const upper = usable.map(({ offer, gives }) => {
    const least = sellers.get(offer.seller)?.minimumOrder ?? 0;
    const forNeed = Math.ceil(gramsOf.get(offer.food)! / gives);
    return forNeed + (least > 0 && offer.price > 0 ? Math.ceil(least / offer.price) : 0);
  });
  const rows: { coefficients: number[]; min?: number; max?: number }[] = needs.map((need) => {
    const coefficients = zeros();
    usable.forEach((u, i) => {
      if (u.offer.food === need.food) coefficients[i] = u.gives / need.grams;
    });
    return { coefficients, min: 1 };
  });
  withTerms.forEach((s, k) => {
    const here = usable.map((u) => u.offer.seller === s.seller);
    for (const [i, most] of upper.entries()) {
      if (!here[i]) continue;
      const coefficients = zeros();
      coefficients[i] = 1;
      coefficients[n + k] = -most;
      rows.push({ coefficients, max: 0 });
    }
    if ((s.minimumOrder ?? 0) > 0) {
      const coefficients = zeros();
      usable.forEach((u, i) => {
        if (here[i]) coefficients[i] = u.offer.price / s.minimumOrder!;
      });
      coefficients[n + k] = -1;
      rows.push({ coefficients, min: 0 });
    }
  });
  const completed = (packs: readonly number[]) => [
    ...packs,
    ...withTerms.map((s) =>
      usable.some((u, i) => u.offer.seller === s.seller && elementAt(packs, i) > 0) ? 1 : 0,
    ),
  ];
  return {
    offers: n,
    rows,
    upper: [...upper, ...withTerms.map(() => 1)],
    money: [...usable.map((u) => u.offer.price), ...withTerms.map((s) => s.delivery ?? 0)],
    grams: [...usable.map((u) => u.gives), ...withTerms.map(() => 0)],
    needed: needs.reduce((sum, need) => sum + need.grams, 0),
    completed,
    holds: (packs) => {
      const x = completed(packs);
      return rows.every(({ coefficients, min = -Infinity, max = Infinity }) => {
        const value = dot(coefficients, x);
        return value >= min - NEAR && value <= max + NEAR;
      });
    },
  };
}
