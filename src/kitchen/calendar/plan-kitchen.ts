/**
 * The plan of a kitchen: from buying to the day on which only the new batch is fed, forwards from a day or backwards
 * from the day on which the present batch runs out. What takes longest sets the pace: its critical path.
 *
 * What is bought dry is frozen against insects and thawed, twice over; what is bought fresh is dried; then all of it is
 * weighed out, and the animals change over. How long each takes is the keeper's to say.
 */
import { dayNumber, dayOf } from '../days.ts';
import type { Day } from '../model.ts';
import { Network, type Starts } from './critical-path.ts';
import type { Frame, KitchenInput, KitchenPlan, PlannedStep } from './kitchen-plan.ts';
import { type Sketch, sketch } from './plan-steps.ts';
import { SHORTEST_DAYS, type StepKind, stepDays } from './step-days.ts';

/**
 * A plan.
 * @throws RangeError naming the field, its value and the way out
 */
export function planKitchen(input: KitchenInput, frame: Frame): KitchenPlan {
  return planned(input, frame);
}

/** The plan with its open steps on chosen days; where none are chosen, as the frame asks. @param chosen day numbers by step id */
export function planned(input: KitchenInput, frame: Frame, chosen?: Starts): KitchenPlan {
  const from = frame.from === undefined ? undefined : dayNumber(frame.from, 'from');
  const until = frame.until === undefined ? undefined : dayNumber(frame.until, 'until');
  const sketches = sketch(input, frame);
  const network = new Network(sketches);
  const open = sketches.filter((s) => s.state === 'open');
  const firstOf = (starts: Starts) => Math.min(...open.map((s) => starts.get(s.id)!));

  // Backwards alone, the first day is the latest that still does; or the day to which the keeper has put a step.
  const floor = from ?? Math.min(firstOf(network.latest(until!)), chosen ? firstOf(chosen) : Infinity);
  const earliest = network.earliest(floor);
  const end = until ?? Math.max(network.end(earliest), chosen ? network.end(chosen) : -Infinity);
  const latest = network.latest(end);
  const slackOf = ({ id, state }: Pick<Sketch, 'id' | 'state'>) =>
    state === 'done' ? 0 : latest.get(id)! - earliest.get(id)!;
  const pending = sketches.filter((s) => s.state !== 'done');
  const least = Math.min(...pending.map(slackOf));
  const starts = chosen ?? (until !== undefined && least >= 0 ? latest : earliest);

  const byId = new Map(sketches.map((s) => [s.id, s]));
  const steps = network.order.map(({ id }): PlannedStep => {
    const { fixed, appointed, notBefore: _, days, ...s } = byId.get(id)!;
    const start = fixed ?? appointed ?? starts.get(id)!;
    const slack = slackOf(byId.get(id)!);
    return {
      ...s,
      days,
      start: dayOf(start),
      end: dayOf(start + days),
      earliest: dayOf(earliest.get(id)!),
      latest: dayOf(s.state === 'done' ? start : latest.get(id)!),
      slack,
      critical: s.state !== 'done' && slack === least,
      state: s.state,
      appointed: appointed !== undefined,
    };
  });
  const chain = network.criticalChain(earliest).filter((t) => byId.get(t.id)!.state !== 'done');
  const last = Math.max(...steps.map((s) => dayNumber(s.end)));
  const plan: KitchenPlan = {
    input,
    frame,
    steps,
    start: dayOf(Math.min(...steps.map((s) => dayNumber(s.start)))),
    end: dayOf(last),
    criticalPath: chain.map((t) => t.id),
    criticalDays: chain.reduce((sum, t) => sum + t.days, 0),
  };
  const { runsOut } = input.present ?? {};
  const deadline = frame.until ?? (runsOut?.status === 'known' ? runsOut.day : undefined);
  if (deadline === undefined) return plan;
  const spare = dayNumber(deadline) - network.end(earliest);
  const shortest = spare < 0 && from !== undefined ? inShortestTime(input, from, deadline) : undefined;
  return { ...plan, deadline, fits: last <= dayNumber(deadline), spare, ...(shortest && { shortest }) };
}

/** When all could be done from a day on if nothing took longer than it has to. */
function inShortestTime(input: KitchenInput, from: number, deadline: Day): KitchenPlan['shortest'] {
  const now = stepDays(input.days);
  const days = Object.fromEntries(
    Object.entries(now).map(([kind, d]) => [kind, Math.min(d, SHORTEST_DAYS[kind as StepKind])]),
  );
  const network = new Network(sketch({ ...input, days }, { from: dayOf(from) }));
  const end = network.end(network.earliest(from));
  return { end: dayOf(end), fits: end <= dayNumber(deadline) };
}
