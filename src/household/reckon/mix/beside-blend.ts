/** What all that is fed beside the mix holds together, as one food. */
import { onCrudeProtein } from '../../../foods/crude-protein.ts';
import type { Composition, Figures } from '../../../foods/food.ts';
import { AIR_DRY, type Beside, type Problem } from '../../../formulation/problem/problem.ts';
import type { Evaluation } from '../../../formulation/problem/result.ts';
import { airDryFactor, airDryWater } from '../../../nutrition/air-dry.ts';
import { NUTRIENTS, type Tag } from '../../../nutrition/nutrients.ts';
import { shareNow } from './beside.ts';

/** What is known of a food of a mix or beside it: its own figures before those of the reference. Protein is crude protein. */
export function compositionOf(
  {
    ref,
    composition = {},
    protein_factor: proteinFactor,
  }: Pick<Beside, 'ref' | 'composition' | 'protein_factor'>,
  known: { get(ref: string): Figures | undefined },
): Composition {
  const table = ref === undefined ? undefined : known.get(ref);
  const own = onCrudeProtein({ composition, sd: {}, proteinFactor });
  return { ...(table && onCrudeProtein(table).composition), ...own.composition };
}

/** Per 100 g of all that is fed beside the mix. */
interface Blend {
  /** Amounts known of every part. */
  readonly known: Composition;
  /** Least amounts, where some part is not known or only from below. */
  readonly least: Composition;
}

/** One part of a blend, any weights. */
interface BlendPart {
  readonly weight: number;
  readonly composition: Composition;
  /** Guaranteed least amounts. */
  readonly low?: Composition;
  /** Counted without its water above that of air-dry food. */
  readonly airDry?: boolean;
}

/**
 * Several foods as one. An amount that one of them lacks is unknown of the whole, but the whole holds what the others
 * bring at least. Dietary fibre is never less than crude fibre. Undefined where nothing has any weight.
 */
export function blend(parts: readonly BlendPart[]): Blend | undefined {
  const used = parts.filter((p) => p.weight > 0);
  const total = used.reduce((sum, p) => sum + p.weight, 0);
  if (total === 0) return undefined;
  const known: Partial<Record<Tag, number>> = {};
  const least: Partial<Record<Tag, number>> = {};
  for (const { tag } of NUTRIENTS) {
    let sum = 0;
    let whole = true;
    for (const part of used) {
      const value = counted(part, part.composition[tag], tag);
      if (value === undefined) whole = false;
      const low = value ?? counted(part, leastOf(part, tag), tag) ?? 0;
      sum += (part.weight / total) * low;
    }
    if (whole) known[tag] = sum;
    else if (sum > 0) least[tag] = sum;
  }
  return { known, least };
}

function leastOf({ composition, low }: BlendPart, tag: Tag): number | undefined {
  const own = low?.[tag];
  if (tag !== 'FIBTG') return own;
  const crude = composition.FIBC ?? low?.FIBC;
  return own === undefined ? crude : Math.max(own, crude ?? 0);
}

function counted(
  { airDry, composition }: BlendPart,
  value: number | undefined,
  tag: Tag,
): number | undefined {
  const water = composition.WATER;
  if (value === undefined || !airDry) return value;
  return tag === 'WATER' ? airDryWater(value) : value * airDryFactor(water);
}

/** The blend of all that a problem feeds beside its mix, at the shares chosen. */
export function besideBlend(
  problem: Pick<Problem, 'beside'>,
  at: Pick<Evaluation, 'beside'> | undefined,
  known: ReadonlyMap<string, Figures>,
): Blend | undefined {
  const alone = problem.beside.length === 1;
  return blend(
    problem.beside.map((b) => ({
      // One food by itself has a content, whatever its share.
      weight: alone ? 1 : shareNow(b, at),
      composition: compositionOf(b, known),
      low: b.low,
      airDry: b.counts_as === AIR_DRY,
    })),
  );
}
