/** What is left of each lot, and which lots a needed weight is taken from: the oldest first. */
import { words } from '../../words/words.ts';
import { dayInWords } from '../days.ts';
import type { Batch, Day, DryingRun, Lot, Moment } from '../model.ts';
import { remembered } from '../remembered.ts';
import { CRUMB } from '../tolerances.ts';
import { sayBarred } from './barred.ts';

/** What was fed straight from a pack on a day, as it is written down. */
export interface FedFromPack {
  readonly lot: string;
  /** g as weighed. */
  readonly grams: number;
  readonly on: Day;
}

/** All that says what came in and what went out. */
export interface CupboardContents {
  readonly lots: readonly Lot[];
  readonly runs: readonly DryingRun[];
  readonly batches: readonly Batch[];
  /** Absent where none was written down. */
  readonly fed?: readonly FedFromPack[];
}

/** What is left of a lot, g. */
export interface LotStock {
  readonly lot: Lot;
  /** Poured into batches, put to dry, or fed from the pack. */
  readonly used: number;
  /** What is left: of what came in, or of what was there when somebody last weighed it; never below 0. */
  readonly grams: number;
  /** How much more was weighed out than the lot is said to have held; 0 as a rule. */
  readonly over: number;
}

/** g that a drying run took from its lot, trimmings too. */
export function takenBy(run: DryingRun): number {
  return run.gramsTaken ?? run.gramsBefore;
}

/** What is left of every lot, in the order kept. */
export function leftOver(kept: CupboardContents): readonly LotStock[] {
  return stocks(kept.lots, kept.runs, kept.batches, kept.fed ?? NONE_FED);
}

const NONE_FED: readonly FedFromPack[] = [];

/** g taken of a lot at a moment, or on a day. */
interface Take {
  readonly at: Moment | Day;
  readonly grams: number;
}

const NOTHING: readonly Take[] = [];

/** What was taken of each lot, by its id. */
const takesOf = remembered(
  (
    batches: readonly Batch[],
    runs: readonly DryingRun[],
    fed: readonly FedFromPack[],
  ): ReadonlyMap<string, readonly Take[]> => {
    const takes = new Map<string, Take[]>();
    const add = (lot: string, take: Take) => {
      const there = takes.get(lot);
      if (there) there.push(take);
      else takes.set(lot, [take]);
    };
    for (const { pours } of batches)
      for (const { at, lots } of pours) for (const { lot, grams } of lots) add(lot, { at, grams });
    for (const run of runs) add(run.lot, { at: run.startedAt, grams: takenBy(run) });
    for (const { lot, grams, on } of fed) add(lot, { at: on, grams });
    return takes;
  },
);

const gramsOf = (takes: readonly Take[]) => takes.reduce((sum, { grams }) => sum + grams, 0);

/** Those from the day on which a lot was last weighed; a moment counts by its day in UTC. */
const takenSince = (takes: readonly Take[], on: Day) => takes.filter(({ at }) => at.slice(0, 10) >= on);

const stocks = remembered(
  (
    lots: readonly Lot[],
    runs: readonly DryingRun[],
    batches: readonly Batch[],
    fed: readonly FedFromPack[],
  ): readonly LotStock[] => {
    const taken = takesOf(batches, runs, fed);
    return lots.map((lot) => {
      const takes = taken.get(lot.id) ?? NOTHING;
      const gone = gramsOf(takes);
      const rest = lot.left ? lot.left.grams - gramsOf(takenSince(takes, lot.left.on)) : lot.grams - gone;
      return {
        lot,
        used: gone,
        grams: rest > CRUMB ? rest : 0,
        over: rest < -CRUMB ? -rest : 0,
      };
    });
  },
);

/** What is left of the lots of each food, foods in the order in which they first came, lots in the order kept. */
export function leftByFood(kept: CupboardContents): ReadonlyMap<string, readonly LotStock[]> {
  return byFood(leftOver(kept));
}

const byFood = remembered((left: readonly LotStock[]): ReadonlyMap<string, readonly LotStock[]> => {
  const foods = new Map<string, LotStock[]>();
  for (const each of left) {
    const own = foods.get(each.lot.food);
    if (own) own.push(each);
    else foods.set(each.lot.food, [each]);
  }
  return foods;
});

/** Whether a lot may be weighed out, as `mayBeWeighed` of `freeze-treatment.ts` answers; `wayOut` says what to do instead. */
export type Ready = (
  lot: Lot,
) =>
  | { readonly ok: true; readonly warning?: string }
  | { readonly ok: false; readonly why: string; readonly wayOut?: string };

/** As much of an answer of {@link Ready} as sums and orders need. */
type WhetherReady = (lot: Lot) => { readonly ok: boolean };

export interface Allocation {
  readonly food: string;
  /** From which lots, in the order of taking; g of each, above 0. */
  readonly takes: readonly { readonly lot: Lot; readonly grams: number }[];
  /** g that no lot can give. */
  readonly short: number;
  /** Lots that hold some of the food and were passed over. */
  readonly passed: readonly {
    readonly lot: Lot;
    readonly grams: number;
    readonly why: string;
    readonly wayOut?: string;
  }[];
  /** What to look at before weighing. */
  readonly notes: readonly string[];
}

/**
 * Takes a needed weight of a food from its lots, dry ones and those dried at home, the oldest first.
 * @param grams needed, 0 or more
 * @throws RangeError where `grams` is no weight
 */
export function allocate(kept: CupboardContents, food: string, grams: number, ready: Ready): Allocation {
  if (!(Number.isFinite(grams) && grams >= 0))
    throw new RangeError(`grams needed of ${food} must be 0 or more, not ${grams}`);
  const { usable, passed } = sorted(kept, food, ready);
  const takes: { lot: Lot; grams: number }[] = [];
  let open = grams;
  for (const left of usable) {
    if (open <= CRUMB) break;
    const taken = Math.min(open, left.grams);
    takes.push({ lot: left.lot, grams: taken });
    open -= taken;
  }
  return {
    food,
    takes,
    short: open > CRUMB ? open : 0,
    passed,
    notes: takes.flatMap(({ lot }) => {
      const answer = ready(lot);
      return answer.ok && answer.warning !== undefined ? [`${lot.name}: ${answer.warning}`] : [];
    }),
  };
}

/** Lots of a food that hold some and may be taken, in the order in which they are. */
export function lotsInTurn(kept: CupboardContents, food: string, ready: WhetherReady): readonly LotStock[] {
  return (leftByFood(kept).get(food) ?? [])
    .filter(({ lot, grams }) => grams > 0 && partOf(lot, ready) === 'ready')
    .sort((a, b) => oldestFirst(a.lot, b.lot));
}

/** Lots of a food that hold some, those that may be taken in order, the others with the reason. */
function sorted(kept: CupboardContents, food: string, ready: Ready) {
  const usable: LotStock[] = [];
  const passed: { lot: Lot; grams: number; why: string; wayOut?: string }[] = [];
  for (const left of leftByFood(kept).get(food) ?? []) {
    if (left.grams === 0) continue;
    const no = refusal(left.lot, ready);
    if (no === undefined) usable.push(left);
    else passed.push({ lot: left.lot, grams: left.grams, ...no });
  }
  return { usable: usable.sort((a, b) => oldestFirst(a.lot, b.lot)), passed };
}

/** Why a lot is not taken; undefined where it may be. What is barred or fresh never is, whatever `ready` says. */
function refusal(lot: Lot, ready: Ready): { why: string; wayOut?: string } | undefined {
  const t = words().supply.passed;
  if (lot.barred) return { why: t.stopped(dayInWords(lot.barred.on), sayBarred(lot.barred.why)) };
  if (lot.form === 'fresh') return { why: t.fresh, wayOut: t.dryFirst };
  const answer = ready(lot);
  if (answer.ok) return undefined;
  return { why: answer.why, ...(answer.wayOut !== undefined && { wayOut: answer.wayOut }) };
}

/** Sorts lots as they are used: by the day they were bought, then the earliest best before, then opened ones. */
export function oldestFirst(a: Lot, b: Lot): number {
  const never = '9999-12-31';
  return (
    compare(a.boughtOn, b.boughtOn) ||
    compare(a.bestBefore ?? never, b.bestBefore ?? never) ||
    compare(a.openedOn ?? never, b.openedOn ?? never) ||
    compare(a.id, b.id)
  );
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** What there is of a food, g. The four parts add up to all that is left of it. */
interface FoodTotal {
  readonly food: string;
  /** Dry and ready to weigh out. */
  readonly ready: number;
  /** Dry, and not ready yet. */
  readonly waiting: number;
  /** To be dried; as weighed fresh. */
  readonly fresh: number;
  /** Recalled, infested or spoiled. */
  readonly barred: number;
}

/** What there is of every food that has a lot, in the order in which foods first came. */
export function totals(kept: CupboardContents, ready: WhetherReady): FoodTotal[] {
  return [...leftByFood(kept)].map(([food, left]) => {
    const sum = { ready: 0, waiting: 0, fresh: 0, barred: 0 };
    // What is used up adds nothing, whichever part it would be of.
    for (const { lot, grams } of left) if (grams > 0) sum[partOf(lot, ready)] += grams;
    return { food, ...sum };
  });
}

function partOf(lot: Lot, ready: WhetherReady): 'ready' | 'waiting' | 'fresh' | 'barred' {
  if (lot.barred) return 'barred';
  if (lot.form === 'fresh') return 'fresh';
  return ready(lot).ok ? 'ready' : 'waiting';
}
