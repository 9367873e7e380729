/**
 * Amounts: a value never travels without its unit and basis, and "unknown" is its own thing.
 * The basis is a type parameter, so adding an as-fed amount to a dry-matter one does not compile.
 */
import type { Unit } from './nutrients.ts';

/** What an amount is per: 100 g as fed, 100 g of dry matter, or 1000 kcal of metabolizable energy. */
export type Basis = 'as fed' | 'dry matter' | 'per 1000 kcal';

export interface Known<B extends Basis = Basis> {
  readonly known: true;
  readonly value: number;
  readonly unit: Unit;
  readonly basis: B;
  /** Standard deviation in the same unit, where a source gives one. */
  readonly sd?: number;
  /** Least and most it may be, where only bounds are known or the value is an estimate. */
  readonly low?: number;
  readonly high?: number;
  readonly source?: string;
}

export interface Unknown {
  readonly known: false;
}

export type Amount<B extends Basis = Basis> = Known<B> | Unknown;

export const UNKNOWN: Unknown = { known: false };

/** An amount per 100 g as fed. Throws RangeError unless `value` is a finite number of at least 0. */
export function asFed(
  value: number,
  unit: Unit,
  extra: Partial<Omit<Known, 'known' | 'basis'>> = {},
): Known<'as fed'> {
  if (!Number.isFinite(value) || value < 0) throw new RangeError(`an amount must be 0 or more, not ${value}`);
  return { ...extra, known: true, value, unit, basis: 'as fed' };
}

function scaled<B extends Basis>(a: Known, factor: number, basis: B): Known<B> {
  const times = (v: number | undefined) => (v === undefined ? undefined : v * factor);
  return { ...a, basis, value: a.value * factor, sd: times(a.sd), low: times(a.low), high: times(a.high) };
}

/**
 * As fed to dry matter: value / (1 - moisture).
 * @param moisture grams of water per 100 g as fed, 0 to below 100
 */
export function toDryMatter(a: Amount<'as fed'>, moisture: number): Amount<'dry matter'> {
  return a.known ? scaled(a, 100 / dryPart(moisture), 'dry matter') : a;
}

/** Dry matter to as fed, the inverse of {@link toDryMatter}. */
export function toAsFed(a: Amount<'dry matter'>, moisture: number): Amount<'as fed'> {
  return a.known ? scaled(a, dryPart(moisture) / 100, 'as fed') : a;
}

function dryPart(moisture: number): number {
  if (!(moisture >= 0 && moisture < 100))
    throw new RangeError(`moisture must be from 0 to below 100 g per 100 g, not ${moisture}`);
  return 100 - moisture;
}

/**
 * A label's "p in q" as an amount per 100 g: 6.25 g in 250 g is 2.5.
 * @param amount what the label prints @param grams the quantity it is printed for, above 0
 */
export function perHundred(amount: number, grams: number): number {
  if (!(grams > 0)) throw new RangeError(`the quantity must be above 0 g, not ${grams}`);
  return (100 * amount) / grams;
}

/** Grams of fresh food needed for some grams of dried: dry matter is conserved, then trim loss added. */
export function freshGramsFor(
  dried: number,
  p: { moistureFresh: number; moistureDried: number; trimLoss?: number },
): number {
  return (dried * dryPart(p.moistureDried)) / dryPart(p.moistureFresh) / (1 - (p.trimLoss ?? 0) / 100);
}

/** Composition of a dried food from the fresh one, per 100 g as fed each: dry matter is conserved. */
export function driedAmount(
  a: Amount<'as fed'>,
  moistureFresh: number,
  moistureDried: number,
): Amount<'as fed'> {
  return toAsFed(toDryMatter(a, moistureFresh), moistureDried);
}
