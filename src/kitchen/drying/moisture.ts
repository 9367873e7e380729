/** Moisture by weighing: before and after drying, or of a small sample dried out. */

import { words } from '../../words/words.ts';
import type { DryingSample } from '../model.ts';

/** Standard deviations that reach to the ends of a 95 % interval. */
const Z95 = 1.96;

/** Moisture that follows from weighing before and after, g water per 100 g. */
export interface ActualMoisture {
  readonly moisture: number;
  readonly sd: number;
  /** The 95 % interval, within 0 to 100. */
  readonly low: number;
  readonly high: number;
  /** Dried weight, percent of the fresh. */
  readonly yieldPercent: number;
  /** What to know of the figure, where there is something. */
  readonly note?: string;
}

/**
 * Moisture after drying: dry matter stays, so 100 - (before / after) x (100 - fresh moisture).
 *
 * A small doubt in the fresh moisture becomes a large one, since it is multiplied by before / after. Drying a sample
 * till it loses no more takes that doubt away ({@link moistureOfSample}).
 * @param p.before g on the trays at the start @param p.after g at the end
 * @param p.freshMoisture g water per 100 g of the fresh food, 0 to below 100 @param p.freshSd its standard deviation
 * @param p.scaleStep of the scale, g; a reading lies anywhere within half a step, so its sd is step / sqrt(12)
 * @throws RangeError where the two weights cannot both be right
 */
export function actualMoisture(p: {
  readonly before: number;
  readonly after: number;
  readonly freshMoisture: number;
  readonly freshSd?: number;
  readonly scaleStep?: number;
}): ActualMoisture {
  const { freshSd = 0, scaleStep = 0 } = p;
  const t = words().drying;
  const before = above0(p.before, 'before');
  const after = above0(p.after, 'after');
  if (!(p.freshMoisture >= 0 && p.freshMoisture < 100))
    throw new RangeError(
      `moisture of the fresh food must be from 0 to below 100 g per 100 g, not ${p.freshMoisture}`,
    );
  if (!(freshSd >= 0)) throw new RangeError(`sd of the fresh moisture must be 0 or more, not ${freshSd}`);
  if (!(scaleStep >= 0)) throw new RangeError(`step of the scale must be 0 or more, not ${scaleStep}`);
  if (after >= before) throw new RangeError(t.fault.noLighter(after, before));
  const dryPart = 100 - p.freshMoisture;
  const ratio = before / after;
  const moisture = 100 - ratio * dryPart;
  const ofScale = scaleStep / Math.sqrt(12);
  const sd = Math.hypot(ratio * freshSd, (dryPart / after) * ofScale, ((ratio * dryPart) / after) * ofScale);
  const yieldPercent = 100 / ratio;
  // Rounding in the last place is not a contradiction.
  if (moisture + Z95 * sd < -1e-9) {
    const least = (before * dryPart) / 100;
    throw new RangeError(t.fault.tooLight(after, least, before, p.freshMoisture));
  }
  const interval = {
    low: Math.max(0, moisture - Z95 * sd),
    high: Math.max(0, Math.min(100, moisture + Z95 * sd)),
  };
  if (moisture >= 0) return { moisture, sd, ...interval, yieldPercent };
  return {
    moisture: 0,
    sd,
    ...interval,
    yieldPercent,
    note: t.lighterThanTable,
  };
}

/**
 * Moisture of a food from a small sample dried until it loses no more weight.
 * @param before g of the sample @param dry g when it loses no more
 */
export function moistureOfSample(before: number, dry: number): number {
  above0(before, 'before');
  above0(dry, 'dry');
  if (dry > before) throw new RangeError(words().drying.fault.sampleHeavier(dry, before));
  return 100 * (1 - dry / before);
}

/**
 * Moisture of the fresh food by a dried-out sample of it, or of what became of it; the sd is that of the scale alone.
 * Of a sample taken while it dried, the dry matter of the whole load follows, and from that the water it began with.
 * @param sample weights in g; `of` is what the load weighed when it was taken
 * @param gramsBefore g of the load at the start
 * @throws RangeError where a weight is none, or the weights contradict each other
 */
export function freshMoistureBySample(
  sample: DryingSample,
  gramsBefore: number,
): { readonly moisture: number; readonly sd: number } {
  const { before, dry, of = gramsBefore, step = 0 } = sample;
  const moisture = moistureOfSample(before, dry);
  above0(gramsBefore, 'gramsBefore');
  if (!(above0(of, 'of') <= gramsBefore))
    throw new RangeError(words().drying.fault.sampleAfterStart(of, gramsBefore));
  const share = of / gramsBefore;
  const sd = ((100 * step) / Math.sqrt(12)) * Math.hypot(1 / before, dry / before ** 2);
  return { moisture: 100 - share * (100 - moisture), sd: share * sd };
}

/** The value itself. @param what named in the error @throws RangeError unless it is a finite number above 0 */
export function above0(value: number, what: string): number {
  if (!(Number.isFinite(value) && value > 0)) throw new RangeError(`${what} must be above 0, not ${value}`);
  return value;
}
