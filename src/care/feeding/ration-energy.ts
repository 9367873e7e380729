/** Energy and dry matter of what an animal is fed, with what nobody knows as bounds. */
import type { NutrientLine } from '../../formulation/problem/result.ts';
import { modifiedAtwater } from '../../nutrition/energy.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import type { Span } from '../figures/feeding.ts';

export interface RationEnergy {
  /** Metabolizable energy by modified Atwater, kcal per g as fed. */
  readonly kcal: Span;
  /** Dry matter, g per g as fed. */
  readonly dry: Span;
  /** What is not known of all of it. */
  readonly missing: readonly Tag[];
}

/** From this part of the weight on, percent, an amount is known of all of it; less by rounding errors alone. */
const WHOLE = 99.5;

/**
 * Protein and nitrogen-free extract count alike, 3.5 kcal per g, so that protein falls out of the sum: what is not
 * water, fibre, ash or fat gives 3.5 kcal per g, fat 8.5. Energy is therefore least where water, fibre and ash are at
 * their most and fat at its least, and most the other way round.
 * @param nutrients of the whole ration, per 100 g as fed
 * @returns undefined where nothing at all is known of it
 */
export function rationEnergy(
  nutrients: Readonly<Partial<Record<Tag, Pick<NutrientLine, 'low' | 'high' | 'coverage'>>>>,
): RationEnergy | undefined {
  const [water, fat, fibre, ash] = (['WATER', 'FAT', 'FIBC', 'ASH'] as const).map((tag) => nutrients[tag]);
  if (!water || !fat || !fibre || !ash) return undefined;
  const of = (out: number, most: number) => {
    const waste = Math.min(100, out);
    const lipid = Math.min(100 - waste, most);
    return modifiedAtwater({ protein: 0, fat: lipid, nfe: 100 - waste - lipid }) / 100;
  };
  const missing = (['WATER', 'FAT', 'FIBC', 'ASH'] as const).filter(
    (tag) => (nutrients[tag]?.coverage ?? 0) < WHOLE,
  );
  return {
    kcal: {
      low: of(water.high + fibre.high + ash.high, fat.low),
      high: of(water.low + fibre.low + ash.low, fat.high),
    },
    dry: { low: Math.max(0, 1 - water.high / 100), high: Math.max(0, 1 - water.low / 100) },
    missing,
  };
}
