/** A batch that is weighed out while its server or browser is killed: every entry of it, and how it stands in between. */

import { loadHighs } from '../../src/formulation/solve/highs.ts';
import type { PourEntry } from '../../src/household/model.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import type { Batch, Pour } from '../../src/kitchen/model.ts';
import { WeighOut } from '../../src/kitchen/weighing/weigh-out.ts';
import { weighedMixes } from '../kitchen/weighing-mixes.ts';
import { householdAt } from './household-at.ts';
import type { MortalServer } from './killed.ts';

const reference = loadReference();
const highs = await loadHighs();
/** The invented mix before its first pour. */
export const plan: Batch = weighedMixes(reference, highs, 0)[0]!.batch;

/** Where a client that knows nothing but the record stands: pours, next food, its target and tolerance, total. */
export function standing(batch: Batch) {
  const weighOut = new WeighOut(batch, { reference, highs, spoonBack: true });
  try {
    const next = weighOut.next();
    return {
      pours: batch.pours,
      food: next?.food,
      target: next?.target,
      tolerance: [next?.asPlanned, next?.grown],
      total: weighOut.inBowl(),
      finishedAt: batch.finishedAt,
    };
  } finally {
    weighOut.dispose();
  }
}

export function poured(batch: Batch, grams: number, food: string, target: number): Batch {
  const at = new Date(Date.UTC(2026, 2, 14, 10, batch.pours.length)).toISOString();
  const pour: Pour = { food, lots: [], target, grams, at };
  return { ...batch, pours: [...batch.pours, pour] };
}

/** The next food poured at a factor of what is asked for; undefined where all is poured. */
export function pouredNext(batch: Batch, factor = 1): Batch | undefined {
  const { food, target } = standing(batch);
  if (food === undefined || target === undefined) return undefined;
  return poured(batch, Math.round(factor * target), food, target);
}

/** The batch with so many foods poured as asked for; with all of them where there are fewer. */
export function pouredFoods(batch: Batch, count: number): Batch {
  let now = batch;
  for (let k = 0; k < count; k++) now = pouredNext(now) ?? now;
  return now;
}

/** The request of a page that saw the batch before: what was poured by itself, anything else as the whole batch. */
export function requestFor(batch: Batch, before?: Batch) {
  const path = `/api/batches/${batch.id}`;
  const pours = before ? batch.pours.slice(before.pours.length) : [];
  const headers: Record<string, string> = {
    'content-type': 'application/json',
    // The batch before is the first that was kept of it.
    ...(before ? { 'if-match': '"1"' } : { 'if-none-match': '*' }),
  };
  if (!before || pours.length === 0) return { method: 'PUT', path, headers, body: JSON.stringify(batch) };
  const entry: PourEntry = { pours };
  return { method: 'POST', path: `${path}/pours`, headers, body: JSON.stringify(entry) };
}

/** Stores a batch and reads the answer. @param before the batch as the page saw it, where it only adds pours */
export async function put(batch: Batch, on: MortalServer, before?: Batch): Promise<void> {
  const { method, path, headers, body } = requestFor(batch, before);
  const answer = await fetch(`${on.url}${path}`, { method, headers, body });
  if (!answer.ok) throw new Error(`batch ${batch.id} is not kept: ${await answer.text()}`);
}

/** The batch as the server reads it from its file. */
export async function onDisk(id: string, on: MortalServer): Promise<Batch> {
  const house = await householdAt(on.url);
  const found = house.batches.find((b) => b.id === id);
  if (!found) throw new Error(`no batch ${id} is kept`);
  return found;
}
