/** One place where figures for a food come from: a table's row, a label, a laboratory's report. */
import { nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { onCrudeProtein } from '../crude-protein.ts';
import type { Composition, Figures } from '../food.ts';
import { spreadOf } from '../variation.ts';

/** Figures are always per 100 g as fed, whatever was printed. */
export interface FoodSource extends Figures {
  /** Unique among the sources of one food. */
  readonly id: string;
  /** What the keeper calls it. */
  readonly name: string;
  /** Row of the reference tables, where it is one. */
  readonly ref?: string;
  /** When it was printed or measured, ISO 8601. */
  readonly date?: string;
  /** Basis of the figures as printed; they have been turned into as fed since. */
  readonly basis: 'as fed' | 'dry matter';
  /** Samples behind the figures, where it is known. */
  readonly n?: number;
  /** The label as pasted, where it was. */
  readonly printed?: string;
}

/** Part of an amount below which its sd is none: what rounding leaves of 0. */
const NO_SPREAD = 1e-9;

/** What one source says of one nutrient. */
export interface Known {
  readonly source: FoodSource;
  readonly value: number;
  /** Sd from bag to bag: as printed, else from how such figures vary. */
  readonly sd: number;
  /** Samples behind the value; 1 where it is not known. */
  readonly n: number;
}

/**
 * The sources that know the amount, in their order. A source without an sd (or with one of next to 0, which no food has) takes the
 * spread such figures have around the plain mean of all the sources. Were it taken around each source's own figure,
 * the lowest would look the surest for being low, and pull the mean down.
 * @throws RangeError on an amount below 0 or no number, or on n below 1, with the field and the way out
 */
export function knownBy(sources: readonly FoodSource[], tag: Tag, group: string | undefined): Known[] {
  const stated = sources.flatMap((source) => {
    const value = checked(source, 'composition', tag);
    if (value === undefined) return [];
    const n = source.n ?? 1;
    if (!(Number.isFinite(n) && n >= 1))
      throw new RangeError(
        `${source.name}: n must be at least 1, not ${n}; leave it out where it is not known`,
      );
    return [{ source, value, sd: checked(source, 'sd', tag), n }];
  });
  if (stated.length === 0) return [];
  const mean = stated.reduce((sum, s) => sum + s.value, 0) / stated.length;
  // Around amounts of 0 no spread is guessed; what another source prints is then the best there is.
  const spread = spreadOf(mean, tag, group) || Math.max(...stated.map((s) => s.sd ?? 0));
  return stated.map((s) => ({ ...s, sd: s.sd !== undefined && s.sd > s.value * NO_SPREAD ? s.sd : spread }));
}

/** Greatest guaranteed least and smallest guaranteed most; undefined where no source gives one. */
export interface Bounds {
  readonly low?: number;
  readonly high?: number;
  /** Whether the guarantees leave no room: then neither is given. */
  readonly contradictory: boolean;
}

/** What the sources guarantee together. A bound is not a value: it never enters a mean. */
export function boundsBy(sources: readonly FoodSource[], tag: Tag): Bounds {
  const lows = sources.map((s) => checked(s, 'low', tag)).filter((v) => v !== undefined);
  const highs = sources.map((s) => checked(s, 'high', tag)).filter((v) => v !== undefined);
  const low = lows.length > 0 ? Math.max(...lows) : undefined;
  const high = highs.length > 0 ? Math.min(...highs) : undefined;
  if (low !== undefined && high !== undefined && low > high) return { contradictory: true };
  return { ...(low !== undefined && { low }), ...(high !== undefined && { high }), contradictory: false };
}

function checked(
  source: FoodSource,
  field: 'composition' | 'sd' | 'low' | 'high',
  tag: Tag,
): number | undefined {
  // Sources count protein each with its own nitrogen factor: they are held together as crude protein.
  const amounts: Composition | undefined = (tag === 'PROCNT' ? onCrudeProtein(source) : source)[field];
  const value = amounts?.[tag];
  if (value === undefined) return undefined;
  const most = nutrient(tag).unit === 'g' ? 100 : Number.MAX_VALUE;
  if (!(value >= 0 && value <= most))
    throw new RangeError(
      `${source.name}: ${field} of ${tag} must be ${most === 100 ? 'from 0 to 100 g per 100 g' : '0 or more'}, not ${value}; correct it or leave it out`,
    );
  return value;
}
