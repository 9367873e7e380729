/**
 * Minerals and vitamins of the ration against a target profile: what the mix brings, what only the pellet brings,
 * and how much of it is known. An amount is an interval, never a bare number where something is missing.
 */
import type { Evaluation, NutrientLine } from '../../../formulation/problem/result.ts';
import { NUTRIENTS, type NutrientGroup, nutrient, type Tag } from '../../../nutrition/nutrients.ts';
import type { TargetBound, TargetProfile } from '../../../targets/profile.ts';

/** Least and most something may be; equal where it is known. `coverage` is percent by weight. */
export interface Interval {
  readonly low: number;
  readonly high: number;
  readonly coverage: number;
}

/** What can be said of a content against its target; "cannot tell" where what is unknown decides. */
export type Judgement = 'meets' | 'short' | 'over' | 'untold' | 'untargeted';

export interface MicronutrientRow {
  readonly key: Tag | 'CA:P';
  readonly part: 'mineral' | 'vitamin' | 'fat' | 'amino acid';
  /** What bounds and amounts are per: 100 g as fed, 100 g of dry matter, or 1000 kcal; a ratio has no unit. */
  readonly basis: TargetBound['basis'];
  readonly min?: number;
  readonly max?: number;
  readonly source?: string;
  readonly mix: Interval;
  readonly ration: Interval;
  /** What is fed beside the mix, per 100 g of it; undefined where nothing is. */
  readonly pellet: Interval | undefined;
  /** Least parts of 100 g of ration that come from the mix and from the pellet; undefined for a ratio. */
  readonly brought: { readonly mix: number; readonly pellet: number } | undefined;
  readonly judgement: Judgement;
  /** The mix by itself is not known to meet the target, and with the pellet the ration does or may. */
  readonly onlyPellet: boolean;
}

/** Profiles worth comparing with: those that bind a mineral or a vitamin. */
export function bindsMicronutrients(profile: TargetProfile): boolean {
  return profile.bounds.some((b) => b.nutrient !== undefined && isMicro(b.nutrient));
}

/**
 * The profile to compare with at first: the mix's own where it binds minerals or vitamins, else the one of its species
 * that binds the most of them, else the one that does of all.
 */
export function usualComparison(
  own: TargetProfile | undefined,
  profiles: readonly TargetProfile[],
): TargetProfile | undefined {
  if (own && bindsMicronutrients(own)) return own;
  const kin = profiles.filter((p) => p.species === own?.species && bindsMicronutrients(p));
  const bound = (p: TargetProfile) =>
    p.bounds.filter((b) => b.nutrient !== undefined && isMicro(b.nutrient)).length;
  return (kin.length > 0 ? kin : profiles.filter(bindsMicronutrients)).reduce<TargetProfile | undefined>(
    (most, p) => (most && bound(most) >= bound(p) ? most : p),
    undefined,
  );
}

/**
 * One row for Ca:P, and one for every mineral, vitamin and essential fat that is known of anything fed or has a target.
 * @param pelletPart part of the ration fed beside the mix, 0 to 1
 */
export function micronutrientRows(
  at: Evaluation,
  pelletPart: number,
  profile: TargetProfile | undefined,
): MicronutrientRow[] {
  const bounds = profile?.bounds ?? [];
  const rows: MicronutrientRow[] = [];
  const [ca, p] = [at.nutrients.CA, at.nutrients.P];
  if (ca && p && (ca.coverage > 0 || p.coverage > 0))
    rows.push(calciumToPhosphorus(ca, p, pelletPart, profile));
  for (const { tag, group } of NUTRIENTS) {
    if (!isMicro(tag)) continue;
    const line = at.nutrients[tag];
    const own = bounds.filter((b) => b.nutrient === tag);
    if (own.length === 0 && !(line && line.coverage > 0.5)) continue;
    // A least on one basis and a most on another are two rows: an amount cannot be drawn on both.
    for (const bound of own.length === 0 ? [undefined] : own) {
      const basis = bound?.basis ?? 'as fed';
      rows.push({
        key: tag,
        part: partOf(group),
        basis,
        ...judge(line, pelletPart, bound, partsOf(basis, at)),
        min: bound?.min,
        max: bound?.max,
        source: bound?.source,
      });
    }
  }
  return rows;
}

function partOf(group: NutrientGroup): MicronutrientRow['part'] {
  return group === 'mineral' || group === 'vitamin' || group === 'amino acid' ? group : 'fat';
}

/** What 100 g as fed hold of that which amounts are per: 1 as fed, the dry part, or parts of 1000 kcal. */
interface Parts {
  readonly ration: number;
  readonly mix: number;
}

function partsOf(basis: MicronutrientRow['basis'], { nutrients }: Evaluation): Parts | undefined {
  if (basis === 'as fed') return { ration: 1, mix: 1 };
  if (basis === 'DM') {
    const dry = (water = 0) => 1 - water / 100;
    return { ration: dry(nutrients.WATER?.ration), mix: dry(nutrients.WATER?.mix) };
  }
  const energy = nutrients.ENERC_KCAL;
  // Energy that is missing for a part would make every amount per kcal look larger than it is.
  if (!energy || energy.coverage < WHOLE || energy.coverage_mix < WHOLE) return undefined;
  return { ration: energy.ration / 1000, mix: energy.mix / 1000 };
}

/** Percent by weight from which on an amount is known of all. */
const WHOLE = 99.5;

function isMicro(tag: Tag): boolean {
  const { group } = nutrient(tag);
  if (group === 'mineral' || group === 'vitamin' || group === 'amino acid') return true;
  return tag === 'F18D2CN6' || tag === 'F18D3N3';
}

type Judged = Pick<MicronutrientRow, 'mix' | 'ration' | 'pellet' | 'brought' | 'judgement' | 'onlyPellet'>;

const NOTHING: Interval = { low: 0, high: Number.POSITIVE_INFINITY, coverage: 0 };

function judge(
  line: NutrientLine | undefined,
  pelletPart: number,
  bound: { min?: number; max?: number } | undefined,
  parts: Parts | undefined,
): Judged {
  if (!line || !parts) {
    const pellet = pelletPart > 0 ? NOTHING : undefined;
    const judgement = bound ? 'untold' : 'untargeted';
    return {
      mix: NOTHING,
      ration: NOTHING,
      pellet,
      brought: { mix: 0, pellet: 0 },
      judgement,
      onlyPellet: false,
    };
  }
  const mix = per(mixOf(line), parts.mix);
  const ration = per({ low: line.low, high: line.high, coverage: line.coverage }, parts.ration);
  const part = fedBeside(line, pelletPart);
  // Moisture and energy of what is fed beside follow from those of ration and mix, as its amounts do.
  const beside = pelletPart > 0 ? (parts.ration - (1 - pelletPart) * parts.mix) / pelletPart : 1;
  const pellet = part && per(part, beside > 0 ? beside : 1);
  const judgement = judged(ration, bound);
  const short = bound?.min !== undefined && judged(mix, { min: bound.min }) !== 'meets';
  return {
    mix,
    ration,
    pellet,
    brought: {
      mix: ((1 - pelletPart) * line.low_mix) / parts.ration,
      pellet: (line.low - (1 - pelletPart) * line.low_mix) / parts.ration,
    },
    judgement,
    onlyPellet: short && pelletPart > 0 && (judgement === 'meets' || judgement === 'untold'),
  };
}

const mixOf = (line: NutrientLine): Interval => ({
  low: line.low_mix,
  high: line.high_mix,
  coverage: line.coverage_mix,
});

/** What is fed beside the mix follows from the ration and the mix. */
function fedBeside(line: NutrientLine, pelletPart: number): Interval | undefined {
  if (pelletPart <= 0) return undefined;
  const of = (ration: number, mix: number) => Math.max(0, (ration - (1 - pelletPart) * mix) / pelletPart);
  return {
    low: of(line.low, line.low_mix),
    high: of(line.high, line.high_mix),
    coverage: Math.min(100, of(line.coverage, line.coverage_mix)),
  };
}

function per(interval: Interval, parts: number): Interval {
  return { ...interval, low: interval.low / parts, high: interval.high / parts };
}

/** Last digits of sums are no shortfall. */
const SLACK = 1e-9;

function judged({ low, high }: Interval, bound: { min?: number; max?: number } | undefined): Judgement {
  if (bound === undefined || (bound.min === undefined && bound.max === undefined)) return 'untargeted';
  const { min = 0, max = Number.POSITIVE_INFINITY } = bound;
  if (high < min * (1 - SLACK)) return 'short';
  if (low > max * (1 + SLACK)) return 'over';
  return low >= min * (1 - SLACK) && high <= max * (1 + SLACK) ? 'meets' : 'untold';
}

function calciumToPhosphorus(
  ca: NutrientLine,
  p: NutrientLine,
  pelletPart: number,
  profile: TargetProfile | undefined,
): MicronutrientRow {
  const bound = profile?.bounds.find((b) => b.ratio?.[0] === 'CA' && b.ratio[1] === 'P');
  const over = (a: Interval, b: Interval): Interval => ({
    low: b.high > 0 ? a.low / b.high : 0,
    high: b.low > 0 ? a.high / b.low : Number.POSITIVE_INFINITY,
    coverage: Math.min(a.coverage, b.coverage),
  });
  const besides = [fedBeside(ca, pelletPart), fedBeside(p, pelletPart)];
  const ration = over(ca, p);
  return {
    key: 'CA:P',
    part: 'mineral',
    basis: 'as fed',
    min: bound?.min,
    max: bound?.max,
    source: bound?.source,
    mix: over(mixOf(ca), mixOf(p)),
    ration,
    pellet: besides[0] && besides[1] && over(besides[0], besides[1]),
    brought: undefined,
    judgement: judged(ration, bound),
    onlyPellet: false,
  };
}
