/** How a batch stands while it is weighed, in a few letters: two devices on one batch tell by it whether they see the same. */
import type { Batch } from '../model.ts';

/**
 * A tag for what changes while a batch is weighed: pours, end, step of the scale, stock. Equal for equal batches, else
 * different but for a chance of 2^-64 (FNV-1a, 64 bits: Fowler, Noll, Vo, Eastlake, draft-eastlake-fnv).
 * @returns 16 hexadecimal digits
 */
export function batchTag({ pours, finishedAt, problem, stock }: Batch): string {
  const state = JSON.stringify([
    pours.map((p) => [p.food, p.grams, p.at]),
    finishedAt,
    problem.scale_step_grams,
    Object.entries(stock ?? {}).sort(([a], [b]) => (a < b ? -1 : 1)),
  ]);
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(state)) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n);
  }
  return hash.toString(16).padStart(16, '0');
}
