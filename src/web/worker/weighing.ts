/** What the weigh-out page asks of the worker: a plan, where a batch stands, and its papers. */
import type { Reference } from '../../foods/reference.ts';
import type { Problem } from '../../formulation/problem/problem.ts';
import type { Highs } from '../../formulation/solve/highs.ts';
import { type GroupOf, lotsFor, weighableOn } from '../../household/reckon/take-from-lots.ts';
import { type BatchRecord, batchRecord, evaluateWith } from '../../kitchen/batch/batch.ts';
import { type BatchLabel, batchLabel, cautionsOf, type FoodsCaution } from '../../kitchen/batch/label.ts';
import { type Allocation, type CupboardContents, totals } from '../../kitchen/cupboard/cupboard.ts';
import { feedingOf } from '../../kitchen/feeding/feeding.ts';
import type { FedAnimal } from '../../kitchen/feeding/runs-out.ts';
import type { Batch, Day } from '../../kitchen/model.ts';
import { type PourPlace, pourOrder } from '../../kitchen/weighing/pour-order.ts';
import { WeighOut } from '../../kitchen/weighing/weigh-out.ts';
import { paperTolerances, type WeighSheet, weighSheet } from '../../kitchen/weighing/weigh-sheet.ts';
import type { NextPour, Poured, WeighState } from '../../kitchen/weighing/weigh-state.ts';
import { dayAt } from '../shared/today.ts';

export interface Parts {
  readonly reference: Reference;
  readonly highs: Highs;
}

/** What must be known before the first food of a batch is poured. */
export interface BatchPlan {
  readonly inRange: boolean;
  /** Whether it keeps the rules, in one sentence. */
  readonly verdict: string;
  /** Foods in the order to pour them, with reasons. */
  readonly order: readonly PourPlace[];
  /** g that the lots hold ready of each food of which there is a lot; the others are not on record. */
  readonly stock: Readonly<Record<string, number>>;
  /** Lots of its foods that hold some and may not be weighed out today, where the others do not hold enough. */
  readonly passed: Allocation['passed'];
}

/** Where a batch stands: all that the page beside the scale shows. */
export interface Standing {
  readonly state: WeighState;
  readonly next?: NextPour;
  /** What the last pour did; absent before the first. */
  readonly told?: Pick<Poured, 'sentence' | 'changed' | 'spoonBack'>;
  /** g by food id. */
  readonly planned: Readonly<Record<string, number>>;
  readonly inBowl: Readonly<Record<string, number>>;
  /** g in all in the bowl. */
  readonly total: number;
  readonly names: Readonly<Record<string, string>>;
  /** Groups of its foods, of those that have one; by food id. */
  readonly groups: Readonly<Record<string, string>>;
}

/** What a printed sheet says beside its lines. */
export interface SheetPaper extends WeighSheet {
  /** Whether the weights as printed keep the rules, in one sentence. */
  readonly verdict: string;
  readonly cautions: readonly FoodsCaution[];
}

export interface BatchPapers {
  readonly record: BatchRecord;
  readonly label: BatchLabel;
}

export function planOf(
  problem: Problem,
  shares: Readonly<Record<string, number>>,
  p: { readonly kept: CupboardContents; readonly day: Day; readonly parts: Parts },
): BatchPlan {
  const { breaches, total, verdict } = evaluateWith(p.parts)(problem, shares);
  const groupOf = groupsOf(problem, p.parts);
  const ready = totals(p.kept, weighableOn(p.day, groupOf));
  const named = new Set(problem.foods.map((f) => f.id));
  const needed = (food: string) => ((shares[food] ?? 0) * problem.batch_grams) / 100;
  return {
    inRange: breaches.length === 0 && Math.abs(total - 100) < 1e-6,
    verdict,
    order: pourOrder(problem, shares, p.parts),
    stock: Object.fromEntries(ready.filter((t) => named.has(t.food)).map((t) => [t.food, t.ready])),
    passed: problem.foods.flatMap(({ id }) => {
      const found = needed(id) > 0 ? lotsFor(p.kept, id, needed(id), { day: p.day, groupOf }) : undefined;
      return found && found.short > 0 ? found.passed : [];
    }),
  };
}

/** Groups of a problem's foods: as its own say, else as their rows do. */
function groupsOf(problem: Problem, { reference }: Parts): GroupOf {
  const groups = new Map(
    problem.foods.map((f) => [
      f.id,
      f.group ?? (f.ref === undefined ? undefined : reference.get(f.ref)?.group),
    ]),
  );
  return (food) => groups.get(food);
}

/** The last batch asked about stays at hand: one pour more goes on from there, anything else begins anew. */
let running: { plan: string; pours: readonly string[]; weighOut: WeighOut; standing: Standing } | undefined;

/** Where a batch stands after its pours, and what the last of them did. */
export function standingOf(batch: Batch, parts: Parts): Standing {
  const { pours, ...rest } = batch;
  const plan = JSON.stringify(rest);
  const said = pours.map((p) => JSON.stringify(p));
  const kept = running?.plan === plan && running.pours.every((p, i) => p === said[i]) ? running : undefined;
  if (kept && kept.pours.length === said.length) return kept.standing;
  const goesOn = kept?.pours.length === said.length - 1;
  if (!goesOn) running?.weighOut.dispose();
  // Until the answer is there, so that a failure leaves nothing half poured.
  running = undefined;
  const weighOut = goesOn
    ? kept!.weighOut
    : new WeighOut(
        { ...batch, pours: pours.slice(0, -1) },
        { ...parts, ...(batch.stock && { stock: batch.stock }), spoonBack: true },
      );
  const standing = stand(batch, weighOut, parts);
  running = { plan, pours: said, weighOut, standing };
  return standing;
}

function stand(batch: Batch, weighOut: WeighOut, parts: Parts): Standing {
  const last = batch.pours.at(-1);
  const poured = last && weighOut.pour(last.food, last.grams);
  const state = weighOut.state();
  const next = weighOut.next();
  const ids = Object.keys(state.targets);
  const groupOf = groupsOf(batch.problem, parts);
  const names = new Map(batch.problem.foods.map((f) => [f.id, f.name ?? nameIn(f.ref, parts) ?? f.id]));
  return {
    state,
    ...(next && { next }),
    ...(poured && {
      told: {
        sentence: poured.sentence,
        changed: poured.changed,
        ...(poured.spoonBack && { spoonBack: poured.spoonBack }),
      },
    }),
    planned: weighOut.planned,
    inBowl: Object.fromEntries(ids.map((id) => [id, weighOut.inBowl(id)])),
    total: weighOut.inBowl(),
    names: Object.fromEntries(names),
    groups: Object.fromEntries(
      batch.problem.foods.flatMap(({ id }) => {
        const group = groupOf(id);
        return group === undefined ? [] : [[id, group]];
      }),
    ),
  };
}

const nameIn = (ref: string | undefined, { reference }: Parts) =>
  ref === undefined ? undefined : reference.get(ref)?.name;

/** Record and label of a batch. @throws RangeError where nothing is poured */
export function papersOf(
  batch: Batch,
  p: { readonly kept: CupboardContents; readonly animals: readonly FedAnimal[]; readonly parts: Parts },
): BatchPapers {
  const { reference } = p.parts;
  const record = batchRecord(batch, { kept: p.kept, reference, evaluate: evaluateWith(p.parts), dayAt });
  const feeding = feedingOf({
    problem: batch.problem,
    animals: p.animals.filter((a) => batch.animalIds.includes(a.id)),
    grams: record.grams,
    from: record.madeOn,
  });
  return { record, label: batchLabel(record, { feeding, reference }) };
}

/** The sheet to weigh by on paper: what is poured, and the targets as they stand now. @param p.day of the weighing */
export function sheetOf(
  batch: Batch,
  p: { readonly kept: CupboardContents; readonly day: Day; readonly parts: Parts },
): SheetPaper {
  const { reference } = p.parts;
  const { state, names } = standingOf(batch, p.parts);
  const groupOf = groupsOf(batch.problem, p.parts);
  const tolerances = paperTolerances(batch, state.targets, p.parts);
  const touched = new Set(batch.pours.map((pour) => pour.food));
  const { verdict, cautions } = evaluateWith(p.parts)(
    batch.problem,
    Object.fromEntries(Object.entries(state.targets).map(([food, g]) => [food, (100 * g) / state.total])),
  );
  const sheet = weighSheet(batch, {
    reference,
    dayAt,
    targets: state.targets,
    tolerance: (food) => (touched.has(food) ? undefined : tolerances.get(food)),
    lots: (food, grams) => lotsFor(p.kept, food, grams, { day: p.day, groupOf }),
  });
  const printed = new Set(sheet.lines.map((line) => line.food));
  return {
    ...sheet,
    verdict,
    cautions: cautionsOf(cautions, (food) => (printed.has(food) ? names[food] : undefined)),
  };
}
