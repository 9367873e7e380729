/**
 * Drying at home: how many runs, how hot and how long, when to look, and what the two weighings say of the moisture.
 * Temperatures, times and tray loads are shown as the trade does it and as it is published, side by side
 * (`data/drying.json`, each with its source).
 */
import type { Figures, Food, FoodGroup } from '../../foods/food.ts';
import { atMoisture, type DriedFigures, driedForm } from '../../foods/forms/drying.ts';
import type { Reference } from '../../foods/reference.ts';
import { spreadOf } from '../../foods/variation.ts';
import type { Ingredient } from '../../formulation/problem/problem.ts';
import { normalBelow } from '../../nutrition/normal.ts';
import { plusHours } from '../days.ts';
import type { Day, DryingRun, DryingSample, Lot, Moment } from '../model.ts';
import data from './drying.json' with { type: 'json' };

/** How a food behaves on the tray. */
export type DryKind = 'vegetable' | 'leaf' | 'herb' | 'fruit';
export type Device = DryingRun['device'];
/** Whether a figure is what the trade does or what a publication says. */
export type HowKnown = 'common practice' | 'published';

/** How hot, how long and till when. */
export interface Way {
  readonly kind: DryKind;
  readonly known: HowKnown;
  /** Only for this device; absent where it holds for both. */
  readonly device?: Device;
  /** Least and most. */
  readonly celsius: readonly [number, number];
  readonly hours: readonly [number, number];
  /** How to tell that it is done. */
  readonly dry: string;
  readonly source: string;
}

/** How much fresh food goes on a tray. */
export interface Load {
  readonly kind: DryKind;
  readonly known: HowKnown;
  readonly gramsPerDm2: number;
  readonly source: string;
}

interface Keeps {
  readonly kind: DryKind;
  /** g of water per 100 g. */
  readonly most: number;
  readonly source: string;
}

export interface DryingCaution {
  readonly device: Device | 'any';
  readonly sentence: string;
  readonly source: string;
}

const WAYS = data.ways as unknown as readonly Way[];
const LOADS = data.loads as readonly Load[];
const KEEPS = data.keeps as readonly Keeps[];
const CAUTIONS = data.cautions as readonly DryingCaution[];

/** Hours from one look to the next, and where that comes from. */
export const CHECK_EVERY: { readonly hours: number; readonly source: string } = {
  hours: data.checks.everyHours,
  source: data.checks.source,
};

/** Standard deviations that reach to the ends of a 95 % interval. */
const Z95 = 1.96;

/** What a food of some group is on the tray, unless the keeper says otherwise: a leafy vegetable is a "leaf". */
export function dryKindOf(group: FoodGroup | undefined): DryKind {
  return group === 'herb' || group === 'fruit' ? group : 'vegetable';
}

/** Ways to dry that kind with that device: common practice and published, in this order. */
export function waysToDry(kind: DryKind, device: Device): Way[] {
  return WAYS.filter((way) => way.kind === kind && (way.device ?? device) === device);
}

/** What to heed with that device. */
export function dryingCautions(device: Device): DryingCaution[] {
  return CAUTIONS.filter((c) => c.device === device || c.device === 'any');
}

export interface Trays {
  readonly count: number;
  /** Area of one tray, dm2 (a tray of 40 x 30 cm has 12). */
  readonly dm2: number;
}

/** The runs that one tray load makes of some fresh grams. */
export interface Runs {
  readonly load: Load;
  /** Most that fits on the trays at once, g. */
  readonly capacity: number;
  /** g of each run; the runs are alike, since a thinner layer dries faster. */
  readonly grams: readonly number[];
}

export interface DryingPlan {
  readonly kind: DryKind;
  readonly ways: readonly Way[];
  /** By the loads known of: common practice, published, or the keeper's own alone. */
  readonly runs: readonly Runs[];
  readonly cautions: readonly DryingCaution[];
}

/**
 * How often the trays must be filled.
 * @param p.grams fresh food ready to dry, g, above 0
 * @param p.gramsPerDm2 the keeper's own load, instead of those listed
 * @throws RangeError naming what is out of range
 */
export function planDrying(p: {
  readonly grams: number;
  readonly kind: DryKind;
  readonly device: Device;
  readonly trays: Trays;
  readonly gramsPerDm2?: number;
}): DryingPlan {
  const { grams, kind, device, trays } = p;
  above0(grams, 'grams of fresh food');
  above0(trays.dm2, 'area of a tray in dm2');
  if (!(Number.isInteger(trays.count) && trays.count > 0))
    throw new RangeError(`number of trays must be a whole number above 0, not ${trays.count}`);
  const loads: readonly Load[] =
    p.gramsPerDm2 === undefined
      ? LOADS.filter((load) => load.kind === kind)
      : [{ kind, known: 'common practice', gramsPerDm2: p.gramsPerDm2, source: 'as the keeper says' }];
  return {
    kind,
    ways: waysToDry(kind, device),
    runs: loads.map((load) => {
      const capacity = above0(load.gramsPerDm2, 'load in g per dm2') * trays.dm2 * trays.count;
      // A hair too much (a rounding in the last place) is no reason for another run.
      const count = Math.max(1, Math.ceil(grams / capacity - 1e-9));
      return { load, capacity, grams: Array.from({ length: count }, () => grams / count) };
    }),
    cautions: dryingCautions(device),
  };
}

/** When to look and turn: every {@link CHECK_EVERY} hours, the last at the end of the time. */
export function checkTimes(startedAt: Moment, hours: number): Moment[] {
  above0(hours, 'hours of drying');
  const count = Math.ceil(hours / CHECK_EVERY.hours - 1e-9);
  return Array.from({ length: count }, (_, i) =>
    plusHours(startedAt, Math.min(hours, (i + 1) * CHECK_EVERY.hours)),
  );
}

/** When to look next: so long after the last look, or after the start; undefined when the run has ended. */
export function nextCheck(run: DryingRun): Moment | undefined {
  if (run.gramsAfter !== undefined || run.endedAt !== undefined) return undefined;
  const looks = run.checks.map((check) => plusHours(check.at, CHECK_EVERY.hours));
  // ISO times in UTC, all written alike, sort as text.
  return looks.concat(plusHours(run.startedAt, CHECK_EVERY.hours)).sort().at(-1);
}

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
  const before = above0(p.before, 'weight before');
  const after = above0(p.after, 'weight after');
  if (!(p.freshMoisture >= 0 && p.freshMoisture < 100))
    throw new RangeError(
      `moisture of the fresh food must be from 0 to below 100 g per 100 g, not ${p.freshMoisture}`,
    );
  if (!(freshSd >= 0)) throw new RangeError(`sd of the fresh moisture must be 0 or more, not ${freshSd}`);
  if (!(scaleStep >= 0)) throw new RangeError(`step of the scale must be 0 or more, not ${scaleStep}`);
  if (after >= before)
    throw new RangeError(
      `weight after (${after} g) is not below the weight before (${before} g): drying takes water out; were the two swapped, or was a tray weighed with it?`,
    );
  const dryPart = 100 - p.freshMoisture;
  const ratio = before / after;
  const moisture = 100 - ratio * dryPart;
  const ofScale = scaleStep / Math.sqrt(12);
  const sd = Math.hypot(ratio * freshSd, (dryPart / after) * ofScale, ((ratio * dryPart) / after) * ofScale);
  const yieldPercent = 100 / ratio;
  // Rounding in the last place is not a contradiction.
  if (moisture + Z95 * sd < -1e-9) {
    const least = (before * dryPart) / 100;
    throw new RangeError(
      `weight after (${after} g) is less than the dry matter of the fresh food (${rounded(least)} g of ${before} g at ${p.freshMoisture} % moisture): weigh again, count what fell through or was eaten, or give the moisture of this fresh food, which must have been damper`,
    );
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
    note: 'It weighs a little less than the table says of its dry matter, so the fresh food was damper than the table, or some was lost; counted as 0 % moisture.',
  };
}

/**
 * Moisture of a food from a small sample dried until it loses no more weight.
 * @param before g of the sample @param dry g when it loses no more
 */
export function moistureOfSample(before: number, dry: number): number {
  above0(before, 'weight of the sample');
  above0(dry, 'weight of the dry sample');
  if (dry > before)
    throw new RangeError(
      `the dry sample (${dry} g) is heavier than the fresh one (${before} g); weigh again`,
    );
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
  above0(gramsBefore, 'weight before');
  if (!(above0(of, 'weight of the load when the sample was taken') <= gramsBefore))
    throw new RangeError(
      `the load weighed ${of} g when the sample was taken, more than the ${gramsBefore} g at the start; correct one of the two`,
    );
  const share = of / gramsBefore;
  const sd = ((100 * step) / Math.sqrt(12)) * Math.hypot(1 / before, dry / before ** 2);
  return { moisture: 100 - share * (100 - moisture), sd: share * sd };
}

/** Whether a dried food is dry enough to keep. */
export interface KeepVerdict {
  readonly state: 'dry' | 'unsure' | 'damp';
  /** Most moisture at which it keeps, g per 100 g, and its source. */
  readonly most: number;
  readonly source: string;
  /** Chance that it is at most that, moisture taken as normal. */
  readonly chance: number;
  readonly sentence: string;
}

/** How sure "dry" must be: what a 95 % interval leaves below its upper end. */
const SURE = 0.975;

/** Holds the moisture after drying against the limit for its kind. */
export function dryEnough(actual: Pick<ActualMoisture, 'moisture' | 'sd'>, kind: DryKind): KeepVerdict {
  const { most, source } = KEEPS.find((k) => k.kind === kind)!;
  const { moisture, sd } = actual;
  const chance = sd > 0 ? normalBelow((most - moisture) / sd) : moisture <= most ? 1 : 0;
  const limit = { most, source, chance };
  const is = `It holds about ${rounded(moisture)} % water`;
  if (moisture > most)
    return {
      state: 'damp',
      ...limit,
      sentence: `${is}, above the ${most} % at which it keeps: not dry enough to keep. Dry it on and weigh again, or freeze it.`,
    };
  if (chance >= SURE)
    return { state: 'dry', ...limit, sentence: `${is}: dry enough to keep (at most ${most} %).` };
  return {
    state: 'unsure',
    ...limit,
    sentence: `${is}, but it may be more than the ${most} % at which it keeps. Dry on until a cooled piece breaks, keep it in a glass for a week and look for damp, or dry a small sample till it loses no more weight.`,
  };
}

/** What a finished run came to. */
export interface DriedRun extends ActualMoisture {
  readonly keep: KeepVerdict;
  /** What 100 g of the dried food hold, at its actual moisture. */
  readonly figures: DriedFigures;
}

/**
 * What a finished run says: moisture from the weights, whether it keeps, and the dried food's composition at it.
 * @param fresh the fresh food; where it prints no sd of its moisture, the published variation of its group counts
 * @param p.freshMoisture of this very fresh food, g per 100 g, where a sample was dried out; it then counts as exact,
 *   or as good as `p.freshSd` says
 * @throws RangeError where a weight or the fresh moisture is missing, or the weights contradict each other
 */
export function finishedRun(
  run: DryingRun,
  fresh: Food,
  p: {
    readonly kind?: DryKind;
    readonly scaleStep?: number;
    readonly freshMoisture?: number;
    readonly freshSd?: number;
  } = {},
): DriedRun {
  if (run.gramsAfter === undefined)
    throw new RangeError(`drying run ${run.id}: gramsAfter is missing; weigh the food when it is dry`);
  const food = p.freshMoisture === undefined ? fresh : measured(fresh, p.freshMoisture);
  const freshMoisture = food.composition.WATER;
  if (freshMoisture === undefined)
    throw new RangeError(
      `${fresh.name} (${fresh.ref}): composition.WATER is unknown; give the moisture of the fresh food, or dry a small sample till it loses no more weight`,
    );
  const actual = actualMoisture({
    before: run.gramsBefore,
    after: run.gramsAfter,
    freshMoisture,
    freshSd:
      p.freshMoisture === undefined
        ? (fresh.sd.WATER ?? spreadOf(freshMoisture, 'WATER', fresh.group))
        : (p.freshSd ?? 0),
    ...(p.scaleStep !== undefined && { scaleStep: p.scaleStep }),
  });
  const keep = dryEnough(actual, p.kind ?? run.kind ?? dryKindOf(fresh.group));
  return { ...actual, keep, figures: driedForm(food, actual.moisture) };
}

/** The fresh food at the moisture it was measured to have. */
function measured(fresh: Food, moisture: number): Food {
  if (fresh.composition.WATER === undefined)
    return { ...fresh, composition: { ...fresh.composition, WATER: moisture } };
  return { ...fresh, ...atMoisture(fresh, moisture) };
}

/** The lot that a finished run leaves in the cupboard. */
export function driedLot(
  run: DryingRun,
  p: {
    readonly id: string;
    readonly food: string;
    readonly name: string;
    readonly on: Day;
    readonly moisture: number;
  },
): Lot {
  if (run.gramsAfter === undefined)
    throw new RangeError(`drying run ${run.id}: gramsAfter is missing; weigh the food when it is dry`);
  return {
    id: p.id,
    food: p.food,
    name: p.name,
    grams: run.gramsAfter,
    form: 'dried',
    boughtOn: p.on,
    frozen: false,
    cold: [],
    driedIn: run.id,
    moisture: p.moisture,
  };
}

/**
 * An ingredient at the moisture its lot really has: every amount moves with the dry matter. An ingredient whose
 * moisture is unknown only gets the measured one, since nobody can say how its other amounts move.
 * @param moisture g water per 100 g, 0 to below 100
 */
export function ingredientAt(
  food: Ingredient,
  moisture: number,
  reference: Pick<Reference, 'get'>,
): Ingredient {
  const ref = food.ref === undefined ? undefined : reference.get(food.ref);
  const own = food.composition ?? {};
  const figures: Figures = {
    composition: { ...ref?.composition, ...own },
    // An own amount without an sd does not take that of the table's amount.
    sd: {
      ...Object.fromEntries(Object.entries(ref?.sd ?? {}).filter(([tag]) => !(tag in own))),
      ...food.sd,
    },
    ...(food.low && { low: food.low }),
    ...(food.high && { high: food.high }),
  };
  if (figures.composition.WATER === undefined) return { ...food, composition: { ...own, WATER: moisture } };
  const { composition, sd, low, high } = atMoisture(figures, moisture);
  const { WATER: _, ...spread } = sd;
  return { ...food, composition, sd: spread, ...(low && { low }), ...(high && { high }) };
}

function above0(value: number, what: string): number {
  if (!(Number.isFinite(value) && value > 0)) throw new RangeError(`${what} must be above 0, not ${value}`);
  return value;
}

const rounded = (value: number) => Number(value.toFixed(1));
