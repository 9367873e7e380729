/** What is typed before a run, read: how much, in how many loads, how hot and how long, and what is wrong with it. */
import { presetCelsius, presetWay } from '../../household/reckon/drying/dryer-presets.ts';
import type { DryingWay, DryKind } from '../../kitchen/drying/drying-practice.ts';
import { type DryingPlan, planDrying, type TrayRuns } from '../../kitchen/drying/tray-runs.ts';
import type { Kitchen } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { asText, type Read, readAbove0 } from './LabelledNumber.tsx';

/** The entries as they stand; undefined: as the program fills them in. */
export interface PlanEntries {
  /** g of the lot, and of it trimmed and ready. */
  readonly taken: string;
  readonly ready: string;
  /** g on the trays now, of several loads. */
  readonly each?: string;
  readonly kind: DryKind;
  /** The place of a listed tray load, or the keeper's own. */
  readonly load: number | 'own';
  readonly perDm2: string;
  /** The place of the way to dry. */
  readonly way?: number;
  readonly celsius?: string;
  readonly hours?: string;
}

export interface PlanReading {
  readonly ways: readonly DryingWay[];
  readonly wayAt: number;
  readonly way: DryingWay;
  /** Tray loads listed for the kind, and the keeper's own where it is written. */
  readonly listed: readonly TrayRuns[];
  readonly byOwn?: TrayRuns;
  readonly loads: number;
  /** g that will be on the trays in all, as near as is known. */
  readonly about?: number;
  /** g that trimming should leave. */
  readonly guess?: number;
  /** What the fields show that are filled in. */
  readonly shown: { readonly each: string; readonly celsius: string; readonly hours: string };
  readonly values: Readonly<Record<'taken' | 'ready' | 'each' | 'celsius' | 'hours', number | undefined>>;
  readonly faults: Readonly<
    Record<'taken' | 'ready' | 'each' | 'per' | 'celsius' | 'hours', string | undefined>
  >;
}

/** @param p.has g left of the lot @param p.trimLoss percent of the weight as bought, where it is known */
export function readPlan(
  typed: PlanEntries,
  p: { readonly has: number; readonly dryer: NonNullable<Kitchen['dryer']>; readonly trimLoss?: number },
): PlanReading {
  const { dryer, has } = p;
  const plan = (grams: number, gramsPerDm2?: number): DryingPlan =>
    planDrying({
      grams,
      kind: typed.kind,
      device: dryer.device,
      trays: { count: dryer.trays, dm2: dryer.trayArea },
      ...(gramsPerDm2 !== undefined && { gramsPerDm2 }),
    });
  const t = words().drying.plan;
  const taken = readAbove0(typed.taken, t.taken, { measure: 'mass' });
  const ready = readAbove0(typed.ready, t.ready, { measure: 'mass' });
  const perDm2 = readAbove0(typed.perDm2, t.perArea, { max: 1000, measure: 'mass' });
  const guess =
    taken.value !== undefined && p.trimLoss !== undefined ? taken.value * (1 - p.trimLoss / 100) : undefined;
  const about = ready.value ?? guess ?? taken.value;

  const { runs: listed, ways } = plan(about ?? 1);
  const byOwn = perDm2.value === undefined ? undefined : plan(about ?? 1, perDm2.value).runs[0];
  const runs = typed.load === 'own' ? byOwn : listed[Math.min(typed.load, listed.length - 1)];
  const loads = runs?.grams.length ?? 1;

  const wayAt = Math.min(typed.way ?? presetWay(ways, typed.kind, dryer.celsius), ways.length - 1);
  const way = ways[wayAt];
  if (!way) throw new RangeError(`no way is known to dry a ${typed.kind}`);
  const shown = {
    each: typed.each ?? asText(ready.value === undefined ? undefined : ready.value / loads, 1, 'mass'),
    celsius: typed.celsius ?? asText(presetCelsius(way, dryer.celsius), 1, 'heat'),
    hours: typed.hours ?? asText(way.hours[0]),
  };
  const each = readAbove0(shown.each, t.onTrays, { measure: 'mass' });
  const celsius = readAbove0(shown.celsius, t.temperature, { max: 250, measure: 'heat' });
  const hours = readAbove0(shown.hours, t.time, { max: 1000 });

  const tooMuch = (part: Read, of: number | undefined, say: (typed: string) => string) =>
    part.fault ??
    (part.value !== undefined && of !== undefined && part.value > of ? say(sayGrams(part.value)) : undefined);
  const faults = {
    taken: tooMuch(taken, has + 0.05, (is) => t.takenTooMuch(is, sayGrams(has))),
    ready: tooMuch(ready, taken.value, (is) => t.readyTooMuch(is, sayGrams(taken.value ?? 0))),
    each:
      loads === 1
        ? undefined
        : tooMuch(each, ready.value, (is) => t.eachTooMuch(is, sayGrams(ready.value ?? 0))),
    per: typed.load === 'own' ? perDm2.fault : undefined,
    celsius: celsius.fault,
    hours: hours.fault,
  };
  return {
    ways,
    wayAt,
    way,
    listed,
    loads,
    shown,
    faults,
    ...(byOwn && { byOwn }),
    ...(about !== undefined && { about }),
    ...(guess !== undefined && { guess }),
    values: {
      taken: taken.value,
      ready: ready.value,
      each: loads === 1 ? ready.value : each.value,
      celsius: celsius.value,
      hours: hours.value,
    },
  };
}
