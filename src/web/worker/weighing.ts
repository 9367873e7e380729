/** Where a batch stands, asked again after each pour: the worker keeps the batch that is being weighed. */
import type { FormulationOptions } from '../../formulation/solve/build-ration.ts';
import { type Standing, standingAfter } from '../../household/reckon/batch/batch-standing.ts';
import { judgedProblem } from '../../household/reckon/batch/judged-problem.ts';
import type { CupboardContents } from '../../kitchen/cupboard/cupboard.ts';
import type { Batch, Day } from '../../kitchen/model.ts';
import { WeighOut } from '../../kitchen/weighing/weigh-out.ts';

/** The last batch asked about stays at hand: one pour more goes on from there, anything else begins anew. */
let running: { plan: string; pours: readonly string[]; weighOut: WeighOut; standing: Standing } | undefined;

/**
 * Where a batch stands after its pours, and what the last of them did; judged with its foods as its packs are.
 * @param p.kept as `contentsForWeighing` has it @param p.day of the weighing
 */
export function standingOf(
  batch: Batch,
  p: { readonly kept: CupboardContents; readonly day: Day; readonly parts: FormulationOptions },
): Standing {
  const open = stoodBy({ ...batch, problem: judgedProblem(batch, { ...p, ended: false }) }, p.parts);
  if (!open.state.done) return open;
  // What is not poured is not in it: from here on the batch is judged as its record will be.
  return stoodBy({ ...batch, problem: judgedProblem(batch, { ...p, ended: true }) }, p.parts);
}

function stoodBy(batch: Batch, parts: FormulationOptions): Standing {
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
        { ...parts, ...(batch.stock && { stock: batch.stock }), spoonBack: true, asks: true },
      );
  const standing = standingAfter(batch, weighOut, parts);
  running = { plan, pours: said, weighOut, standing };
  return standing;
}
