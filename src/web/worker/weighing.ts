/** What the weigh-out page asks of the worker: a plan, where a batch stands, and its papers. */
import type { Reference } from '../../foods/reference.ts';
import type { Highs } from '../../formulation/highs.ts';
import type { Problem } from '../../formulation/problem.ts';
import { type BatchRecord, batchRecord, evaluateWith } from '../../kitchen/batch.ts';
import { type BatchLabel, batchLabel } from '../../kitchen/batch-label.ts';
import { mayBeWeighed } from '../../kitchen/cold.ts';
import { allocate, type Kept, totals } from '../../kitchen/cupboard.ts';
import { type Fed, feedingOf } from '../../kitchen/feeding.ts';
import type { Batch, Day } from '../../kitchen/model.ts';
import { type PourPlace, pourOrder } from '../../kitchen/pour-order.ts';
import { type Next, type Poured, type State, WeighOut } from '../../kitchen/weigh-out.ts';
import { type WeighSheet, weighSheet } from '../../kitchen/weigh-sheet.ts';

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
}

/** Where a batch stands: all that the page beside the scale shows. */
export interface Standing {
  readonly state: State;
  readonly next?: Next;
  /** What the last pour did; absent before the first. */
  readonly told?: Pick<Poured, 'sentence' | 'changed' | 'spoonBack'>;
  /** g by food id. */
  readonly planned: Readonly<Record<string, number>>;
  readonly inBowl: Readonly<Record<string, number>>;
  /** g in all in the bowl. */
  readonly total: number;
  readonly names: Readonly<Record<string, string>>;
}

export interface BatchPapers {
  readonly record: BatchRecord;
  readonly label: BatchLabel;
}

export function planOf(
  problem: Problem,
  shares: Readonly<Record<string, number>>,
  p: { readonly kept: Kept; readonly day: Day; readonly parts: Parts },
): BatchPlan {
  const { breaches, total, verdict } = evaluateWith(p.parts)(problem, shares);
  const ready = totals(p.kept, (lot) => mayBeWeighed(lot, p.day));
  const named = new Set(problem.foods.map((f) => f.id));
  return {
    inRange: breaches.length === 0 && Math.abs(total - 100) < 1e-6,
    verdict,
    order: pourOrder(problem, shares, p.parts),
    stock: Object.fromEntries(ready.filter((t) => named.has(t.food)).map((t) => [t.food, t.ready])),
  };
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
  };
}

const nameIn = (ref: string | undefined, { reference }: Parts) =>
  ref === undefined ? undefined : reference.get(ref)?.name;

/** Record and label of a batch. @throws RangeError where nothing is poured */
export function papersOf(
  batch: Batch,
  p: { readonly kept: Kept; readonly animals: readonly Fed[]; readonly parts: Parts },
): BatchPapers {
  const { reference } = p.parts;
  const record = batchRecord(batch, { kept: p.kept, reference, evaluate: evaluateWith(p.parts) });
  const feeding = feedingOf({
    problem: batch.problem,
    animals: p.animals.filter((a) => batch.animalIds.includes(a.id)),
    grams: record.grams,
    from: record.madeOn,
  });
  return { record, label: batchLabel(record, { feeding, reference }) };
}

/** The sheet to weigh by on paper, with the weights as planned. */
export function sheetOf(batch: Batch, p: { readonly kept: Kept; readonly parts: Parts }): WeighSheet {
  const { planned } = standingOf(batch, p.parts);
  const day = batch.startedAt.slice(0, 10);
  return weighSheet(batch, {
    reference: p.parts.reference,
    targets: planned,
    lots: (food, grams) =>
      p.kept.lots.some((l) => l.food === food)
        ? allocate(p.kept, food, grams, { ready: (lot) => mayBeWeighed(lot, day) })
        : undefined,
  });
}
