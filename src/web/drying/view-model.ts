/** What the drying screen shows: what is to dry, where each run stands, when to look, and what came of it. */
import type { Composition, Food } from '../../foods/food.ts';
import { atMoisture } from '../../foods/forms/drying.ts';
import type { ReferenceFood } from '../../foods/reference.ts';
import { capital } from '../../formulation/explain/sentences.ts';
import type { Ingredient } from '../../formulation/problem/problem.ts';
import type { Household, Mix, OwnFood } from '../../household/model.ts';
import { withProblem } from '../../household/reckon/mix-edits.ts';
import { type LotStock, leftOver, takenBy } from '../../kitchen/cupboard/cupboard.ts';
import { dayInWords } from '../../kitchen/days.ts';
import { CHECK_EVERY, checkTimes, nextCheck } from '../../kitchen/drying/check-times.ts';
import { type DryingWay, type DryKind, dryKindOf } from '../../kitchen/drying/drying-practice.ts';
import { type DriedRun, driedLot, finishedRun } from '../../kitchen/drying/finished-run.ts';
import { ingredientAt } from '../../kitchen/drying/ingredient-at.ts';
import { freshMoistureBySample } from '../../kitchen/drying/moisture.ts';
import type { FreshFood } from '../../kitchen/drying/yields.ts';
import type { Day, DryingRun, Lot, Moment } from '../../kitchen/model.ts';
import { nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { cupboardFoods, keptOf, lotName } from '../cupboard/view-model.ts';
import { dayAt } from '../shared/today.ts';

/** "weighed": nobody has said yet what becomes of it; "lost": thrown away. */
export type RunState = 'drying' | 'weighed' | 'done' | 'lost';

export interface RunLine {
  readonly run: DryingRun;
  readonly name: string;
  readonly state: RunState;
  /** The fresh food it is made of. */
  readonly lot?: Lot;
  /** What it left in the cupboard or the freezer. */
  readonly dried?: Lot;
}

/** Fresh lots that hold some, not those barred; what thaws or spoils first is the keeper's to say. */
export function toDry(house: Household): LotStock[] {
  return leftOver(keptOf(house)).filter((l) => l.lot.form === 'fresh' && l.grams > 0 && !l.lot.barred);
}

/** All runs, the last begun first. */
export function runLines(house: Household): RunLine[] {
  return house.dryingRuns
    .map((run): RunLine => {
      const lot = house.lots.find((l) => l.id === run.lot);
      const dried = house.lots.find((l) => l.driedIn === run.id);
      const load = run.load && run.load.of > 1 ? `, load ${run.load.n} of ${run.load.of}` : '';
      return {
        run,
        name: `${lot?.name ?? 'Food of a lot that is gone'}${load}`,
        state: stateOf(run),
        ...(lot && { lot }),
        ...(dried && { dried }),
      };
    })
    .sort((a, b) => (a.run.startedAt < b.run.startedAt ? 1 : a.run.startedAt > b.run.startedAt ? -1 : 0));
}

function stateOf(run: DryingRun): RunState {
  if (run.endedAt !== undefined) return run.gramsAfter === undefined ? 'lost' : 'done';
  return run.gramsAfter === undefined ? 'drying' : 'weighed';
}

/** The next look at a run that goes on. */
export interface Look {
  readonly at: Moment;
  readonly due: boolean;
  /** "Look and turn at 14:30, in 1 h 12 min". */
  readonly words: string;
}

/** @param now ms since 1970 */
export function lookAt(run: DryingRun, now: number): Look | undefined {
  const at = nextCheck(run);
  if (at === undefined) return undefined;
  const ms = Date.parse(at) - now;
  const due = ms <= 0;
  return {
    at,
    due,
    words: due
      ? `Look and turn now: it was due at ${clockOf(at, now)}`
      : `Look and turn at ${clockOf(at, now)}, in ${sayTime(ms)}`,
  };
}

/** Looks that are due, each under a key of its own. @param now ms since 1970 */
export function looksDue(house: Household, now: number): { readonly key: string; readonly words: string }[] {
  return runLines(house).flatMap(({ run, name }) => {
    const look = lookAt(run, now);
    return look?.due ? [{ key: `${run.id} ${look.at}`, words: `Look and turn now: ${name}` }] : [];
  });
}

/** "1 h 12 min"; whole minutes, a begun one counts. @param ms 0 or more */
export function sayTime(ms: number): string {
  const minutes = Math.max(1, Math.ceil(ms / 60_000));
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

/** "14:30" in the keeper's own time, with the day where it is not that of `now`. */
export function clockOf(moment: Moment, now: number): string {
  const at = new Date(moment);
  const two = (n: number) => String(n).padStart(2, '0');
  const time = `${two(at.getHours())}:${two(at.getMinutes())}`;
  return dayAt(moment) === dayAt(now) ? time : `${time} on ${dayInWords(dayAt(moment), dayAt(now))}`;
}

/**
 * All looks of a run for a calendar: those that were, then those to come till the expected end, at least the next.
 * The first stay the same from file to file, so that a later file changes entries and adds no others.
 */
export function looksOf(run: DryingRun): Moment[] {
  const next = nextCheck(run);
  const been = run.checks.map((c) => c.at);
  if (next === undefined) return been;
  const end = Date.parse(run.startedAt) + (run.hours ?? CHECK_EVERY.hours) * 3_600_000;
  const last = Date.parse(next) - CHECK_EVERY.hours * 3_600_000;
  const hours = (end - last) / 3_600_000;
  // What takes less than a look, or longer than it was to, still gets its next look.
  if (hours <= CHECK_EVERY.hours) return [...been, next];
  return [...been, ...checkTimes(new Date(last).toISOString(), hours)];
}

/** How the food of a lot behaves on the tray, by the group of the fresh food, else by that of the mix's. */
export function kindOf(house: Household, food: string, fresh: Food | undefined): DryKind {
  const named = cupboardFoods(house).find((f) => f.id === food)?.group;
  const byFresh = dryKindOf(fresh?.group);
  return byFresh === 'vegetable' ? dryKindOf(named) : byFresh;
}

export type Outcome =
  | { readonly ok: true; readonly value: DriedRun }
  | {
      readonly ok: false;
      /** A sentence for the keeper. */
      readonly fault: string;
      /** The water of the fresh food is not known: a dried-out sample says it. */
      readonly needsSample?: boolean;
    };

/**
 * What the weights of a run say. A sample goes before what the lot was measured to hold, and that before the table.
 * @param grams g that it weighs; the run's own weight after where absent
 */
export function outcomeOf(
  house: Household,
  run: DryingRun,
  fresh: FreshFood | undefined,
  p: { readonly scaleStep: number; readonly grams?: number },
): Outcome {
  if (!fresh) return { ok: false, fault: 'Say first which fresh food it is: its water is needed.' };
  try {
    const known = measuredWater(house, run, fresh, p.scaleStep, new Set());
    if (!known && fresh.composition.WATER === undefined)
      return {
        ok: false,
        needsSample: true,
        fault: `The water of ${fresh.name} is not known. Dry a small sample till it loses no more weight, and enter its two weights.`,
      };
    const weighed = p.grams === undefined ? run : { ...run, gramsAfter: p.grams };
    // A sample of the very food that is judged says its water by itself: how the whole was weighed has no part in it.
    const direct = run.sample?.of !== undefined && run.sample.of === weighed.gramsAfter;
    const value = finishedRun(weighed, fresh, {
      kind: run.kind ?? kindOf(house, lotOf(house, run)?.food ?? '', fresh),
      scaleStep: direct ? 0 : p.scaleStep,
      ...(known && { freshMoisture: known.moisture, freshSd: known.sd }),
    });
    return { ok: true, value };
  } catch (error) {
    if (error instanceof RangeError) return { ok: false, fault: sentence(error.message) };
    throw error;
  }
}

const lotOf = (house: Household, run: DryingRun) => house.lots.find((l) => l.id === run.lot);

/** Water of this very fresh food, where it was measured: by a sample, or because it is half dried already. */
function measuredWater(
  house: Household,
  run: DryingRun,
  fresh: FreshFood,
  scaleStep: number,
  seen: ReadonlySet<string>,
): { readonly moisture: number; readonly sd: number } | undefined {
  if (run.sample) return freshMoistureBySample(run.sample, run.gramsBefore);
  const lot = lotOf(house, run);
  if (lot?.moisture === undefined) return undefined;
  const before = house.dryingRuns.find((r) => r.id === lot.driedIn);
  if (!before || before.gramsAfter === undefined || seen.has(before.id))
    return { moisture: lot.moisture, sd: 0 };
  // Half dried in a run before: its doubt goes with it.
  const inner = measuredWater(house, before, fresh, scaleStep, new Set([...seen, run.id]));
  try {
    const { sd } = finishedRun(before, fresh, {
      scaleStep,
      ...(inner && { freshMoisture: inner.moisture, freshSd: inner.sd }),
    });
    return { moisture: lot.moisture, sd };
  } catch {
    return { moisture: lot.moisture, sd: 0 };
  }
}

/** Begun with a capital letter, ended with a full stop. */
export function sentence(text: string): string {
  const whole = capital(text);
  return /[.!?]$/.test(whole) ? whole : `${whole}.`;
}

/** "8.4 % (6.1 to 10.7 %)". */
export function sayWater(of: {
  readonly moisture: number;
  readonly low: number;
  readonly high: number;
}): string {
  const one = (v: number) => String(Number(v.toFixed(1)));
  const exact = of.high - of.low < 0.05;
  return exact ? `${one(of.moisture)} %` : `${one(of.moisture)} % (${one(of.low)} to ${one(of.high)} %)`;
}

/** The id of the lot that a run leaves: kept twice, it is still one lot. */
const lotIdOf = (run: DryingRun) => `${run.id}-dried`;

/**
 * The lot that a run leaves in the cupboard. What is too damp to keep comes as a fresh lot in the freezer: it is not
 * weighed out, and may be dried on another day.
 */
export function lotFrom(
  house: Household,
  run: DryingRun,
  p: { readonly moisture: number; readonly on: Day; readonly frozen?: 'dry' | 'damp' },
): Lot {
  const fresh = lotOf(house, run);
  const food = fresh?.food ?? '';
  const plain = cupboardFoods(house).find((f) => f.id === food)?.name ?? fresh?.name ?? 'Food';
  const taken = house.lots.filter((l) => l.id !== lotIdOf(run)).map((l) => l.name);
  const name = p.frozen === 'damp' ? `${plain}, half dried` : plain;
  const lot = driedLot(run, {
    id: lotIdOf(run),
    food,
    name: lotName(name, p.on, taken),
    on: p.on,
    moisture: Number(p.moisture.toFixed(2)),
  });
  if (p.frozen === undefined) return lot;
  return { ...lot, frozen: true, ...(p.frozen === 'damp' && { form: 'fresh' as const }) };
}

/** The run dried on: what it weighed stands as a look, and the next look is so long after it. */
export function driedOn(run: DryingRun, at: Moment): DryingRun {
  const { gramsAfter, endedAt: _, ...rest } = run;
  if (gramsAfter === undefined) return run;
  return { ...rest, checks: [...run.checks, { at, grams: gramsAfter, note: 'weighed, and dried on' }] };
}

/** The way that suits what the dryer is usually set to; else, for herbs, the published one; else the first. */
export function presetWay(ways: readonly DryingWay[], kind: DryKind, usual: number | undefined): number {
  const fits = ways.findIndex((w) => usual !== undefined && usual >= w.celsius[0] && usual <= w.celsius[1]);
  if (fits >= 0) return fits;
  const published = ways.findIndex((w) => w.known === 'published');
  return kind === 'herb' && published >= 0 ? published : 0;
}

/** Temperature of a way: the usual one where the way allows it, else its upper end. */
export function presetCelsius(way: DryingWay, usual: number | undefined): number {
  const [low, high] = way.celsius;
  return usual !== undefined && usual >= low && usual <= high ? usual : high;
}

/** "57 to 60", "90". */
export function span([low, high]: readonly [number, number]): string {
  return low === high ? String(low) : `${low} to ${high}`;
}

/** What comes next of a lot that was to be dried in several loads. */
export interface NextLoad {
  /** g of the lot for what is still to come, with trimmings, and g of it ready to dry. */
  readonly taken: number;
  readonly ready: number;
  /** Loads that were, of how many. */
  readonly done: number;
  readonly of: number;
}

/** The rest of a lot dried in loads; undefined where no load of it is to come. */
export function nextLoadOf(house: Household, lot: Lot): NextLoad | undefined {
  const runs = house.dryingRuns
    .filter((r) => r.lot === lot.id && r.load)
    .sort((a, b) => a.load!.n - b.load!.n);
  const last = runs.at(-1);
  if (!last?.load || last.load.n >= last.load.of) return undefined;
  const left = leftOver(keptOf(house)).find((l) => l.lot.id === lot.id)?.grams ?? 0;
  const each = takenBy(last);
  const taken = Math.min(left, each * (last.load.of - last.load.n));
  if (!(taken > 0)) return undefined;
  return { taken, ready: (taken * last.gramsBefore) / each, done: last.load.n, of: last.load.of };
}

/** dm2 of a tray given in cm. */
export function trayArea(width: number, length: number): number {
  return (width * length) / 100;
}

/** One content of the food, per 100 g: as the mix counts it, as it would at the moisture of this run, as dried from fresh. */
export interface FoodLine {
  readonly tag: Tag;
  readonly name: string;
  readonly unit: string;
  readonly mix?: number;
  readonly damp?: number;
  readonly fresh?: number;
}

const SHOWN: readonly Tag[] = ['WATER', 'PROCNT', 'FAT', 'FIBTG', 'FIBC', 'CA', 'P'];

type Table = ReadonlyMap<string, ReferenceFood>;

/** What a mix counts a food with. */
export function countedIn(food: Ingredient, table: Table): Composition {
  return { ...(food.ref && table.get(food.ref)?.composition), ...food.composition };
}

/** A line for each content that one of the three gives. */
export function foodLines(food: Ingredient, dried: DriedRun, table: Table): FoodLine[] {
  const now = countedIn(food, table);
  const damp = ingredientAt(food, dried.moisture, table).composition ?? {};
  const fresh = dried.figures.composition;
  return SHOWN.flatMap((tag) => {
    if (now[tag] === undefined && damp[tag] === undefined && fresh[tag] === undefined) return [];
    const { name, unit } = nutrient(tag);
    return [{ tag, name, unit, mix: now[tag], damp: damp[tag], fresh: fresh[tag] }];
  });
}

/** The mix with one of its foods at the moisture it was measured to have. */
export function withMoisture(mix: Mix, food: string, moisture: number, table: Table): Mix {
  return withProblem(mix, {
    foods: mix.problem.foods.map((f) => (f.id === food ? ingredientAt(f, moisture, table) : f)),
  });
}

/**
 * The keeper's own food at that moisture. What its sources print stays as it was: the figures that count follow
 * from them no more, and the words that name the source say so.
 */
export function ownAtMoisture(food: OwnFood, moisture: number, on: Day): OwnFood {
  const known = food.composition.WATER !== undefined;
  const figures = known
    ? atMoisture(food, moisture)
    : { composition: { ...food.composition, WATER: moisture }, sd: food.sd };
  const { WATER: _, ...sd } = figures.sd;
  const said = food.source.replace(/; at [\d.]+ % water as dried on .*$/, '');
  const water = Number(moisture.toFixed(1));
  return { ...food, ...figures, sd, source: `${said}; at ${water} % water as dried on ${dayInWords(on)}` };
}
