/**
 * The calendar of the kitchen: from buying to the day on which only the new batch is fed, forwards from a day or
 * backwards from the day on which the present batch runs out. What takes longest sets the pace: its critical path.
 *
 * What is bought dry goes into the cold against insects and out again, twice over; what is bought fresh is dried; then
 * all of it is weighed out, and the animals change over. How long each takes is the keeper's to say.
 */

import { capital } from '../../formulation/explain/sentences.ts';
import { dayInWords, dayNumber, dayOf } from '../days.ts';
import { CHANGE_DAYS } from '../feeding/change-over.ts';
import type { RunsOut } from '../feeding/runs-out.ts';
import { COMMON_DAYS } from '../freezing/freeze-time.ts';
import type { Day } from '../model.ts';
import { type Blocked, Network, type Starts, type Task } from './critical-path.ts';

export type StepKind = 'buy' | 'freeze' | 'thaw' | 'dry' | 'weigh' | 'change-over';

/** Whole days that each kind of step takes. */
export interface StepDays {
  /** 0: what is bought goes into the freezer or the oven on the same day. */
  readonly buy: number;
  readonly freeze: number;
  readonly thaw: number;
  readonly dry: number;
  readonly weigh: number;
  readonly 'change-over': number;
}

/** Usual lengths (common practice, no source): freezing and thawing take 3 to 4 days, a change of food 10 to 14. */
export const STEP_DAYS: StepDays = {
  buy: 0,
  freeze: COMMON_DAYS,
  thaw: COMMON_DAYS,
  dry: 1,
  weigh: 1,
  'change-over': CHANGE_DAYS.usual,
};
/** The shortest that is still common practice (no source). */
export const SHORTEST_DAYS: StepDays = {
  buy: 0,
  freeze: 3,
  thaw: 3,
  dry: 1,
  weigh: 1,
  'change-over': CHANGE_DAYS.least,
};
/** Twice into the cold and out, since eggs inside kernels outlive the first time (common practice, no source). */
export const FREEZE_ROUNDS = 2;
/** Longer than any step of a kitchen: more is a slip of the pen. */
const MOST_DAYS = 366;

export interface Good {
  /** Id of the food, as mixes name it. */
  readonly food: string;
  readonly name: string;
  /** Id of the lot it comes from, once it is bought. */
  readonly lot?: string;
}

/** From when to when a step was done; without an end it has begun and goes on. */
export interface Progress {
  readonly from: Day;
  readonly to?: Day;
}

/** Goods that go the same way together. */
export interface Supply {
  /** Kept from plan to plan: steps, and entries in other calendars, are known by it. */
  readonly id: string;
  readonly goods: readonly Good[];
  /** "cold": freeze and thaw; "dry": fresh goods to be dried; "ready": to be weighed as bought. */
  readonly route: 'cold' | 'dry' | 'ready';
  /** Absent: still to be bought. */
  readonly boughtOn?: Day;
  /**
   * Freeze and thaw in order, for a supply with its own rounds; {@link FREEZE_ROUNDS} unless given. `on`: the day that
   * is set down with its lots, where the freezer's room was looked at; the plan keeps to it.
   */
  readonly cold?: readonly { readonly kind: 'freeze' | 'thaw'; readonly days?: number; readonly on?: Day }[];
  /** What was done after buying, in order; only the last may go on. */
  readonly progress?: readonly Progress[];
}

export interface KitchenInput {
  /** Kept from plan to plan. */
  readonly id: string;
  /** "batch 4": what is being made. */
  readonly name: string;
  readonly supplies: readonly Supply[];
  /** Where they differ from {@link STEP_DAYS}. */
  readonly days?: Partial<StepDays>;
  /** Whether the animals have to get used to the new batch; true unless given. */
  readonly changeOver?: boolean;
  readonly weighed?: Progress;
  readonly changed?: Progress;
  /** The batch that is being fed, and when it runs out. */
  readonly present?: { readonly name: string; readonly runsOut: RunsOut };
}

/**
 * Forwards from a day (everything as early as can be), or backwards from the day on which all has to be done
 * (everything as late as can be); with both, backwards, and nothing before `from`.
 */
export type Frame =
  | { readonly from: Day; readonly until?: Day }
  | { readonly from?: Day; readonly until: Day };

export interface PlannedStep {
  readonly id: string;
  readonly kind: StepKind;
  /** 1 or 2 for freezing and thawing, and how many there are. */
  readonly round?: { readonly number: number; readonly of: number };
  /** Id of the supply; absent for what is done with all of them. */
  readonly supply?: string;
  /** What it is done with. */
  readonly goods: readonly Good[];
  /** Ids of the steps that end before it begins. */
  readonly after: readonly string[];
  readonly days: number;
  /** As planned; ends on the day on which the next may begin. */
  readonly start: Day;
  readonly end: Day;
  readonly earliest: Day;
  /** Latest begin with which the end of the plan stays. */
  readonly latest: Day;
  /** Days between earliest and latest; below 0 where it is too late already. 0 for what is done. */
  readonly slack: number;
  /** Whether it has the least slack of all that is open: a day lost here is a day lost for all. */
  readonly critical: boolean;
  readonly state: 'done' | 'begun' | 'open';
  /** Open, on a day that is set down with its lots: it is moved there, not here. */
  readonly appointed: boolean;
}

export interface KitchenPlan {
  readonly input: KitchenInput;
  readonly frame: Frame;
  /** Every step after those it waits for. */
  readonly steps: readonly PlannedStep[];
  readonly start: Day;
  /** The day from which only the new batch is fed. */
  readonly end: Day;
  /** Ids along one longest chain of what is not done. */
  readonly criticalPath: readonly string[];
  /** Days along it. */
  readonly criticalDays: number;
  /** By when all has to be done: `until`, else the day on which the present batch runs out. */
  readonly deadline?: Day;
  /** Whether the plan as it stands ends by the deadline; absent without one. */
  readonly fits?: boolean;
  /** Days from the earliest possible end to the deadline; below 0 where it cannot be kept. */
  readonly spare?: number;
  /** What is still possible with {@link SHORTEST_DAYS} where the deadline cannot be kept. */
  readonly shortest?: { readonly end: Day; readonly fits: boolean };
}

export type Moved =
  | {
      readonly ok: true;
      readonly plan: KitchenPlan;
      /** Steps that lie elsewhere than before, the moved one among them. */
      readonly changed: readonly { readonly id: string; readonly from: Day; readonly to: Day }[];
    }
  | {
      readonly ok: false;
      /** Why not, and what can be done instead. */
      readonly sentence: string;
      /** First day on which the step can begin; absent where it cannot move at all. */
      readonly firstDay?: Day;
    };

/**
 * A plan.
 * @throws RangeError naming the field, its value and the way out
 */
export function planKitchen(input: KitchenInput, frame: Frame): KitchenPlan {
  return planned(input, frame);
}

/**
 * The plan with one step on another day. What waits for it moves as far as it must, what it waits for moves only where
 * it has to, all else stays; what has begun or is done never moves.
 * @throws RangeError where there is no such step or the day is no day
 */
export function moved(plan: KitchenPlan, stepId: string, day: Day): Moved {
  const { input, frame } = plan;
  const sketches = sketch(input, frame);
  const network = new Network(sketches);
  const before = new Map(plan.steps.map((s) => [s.id, dayNumber(s.start)]));
  const step = plan.steps.find((s) => s.id === network.task(stepId).id)!;
  if (step.state !== 'open')
    return {
      ok: false,
      sentence: `${capital(stepTitle(step))} ${step.state === 'done' ? 'is done' : 'has begun'} and does not move; move what comes after it.`,
    };
  if (step.appointed)
    return {
      ok: false,
      sentence: `${capital(stepTitle(step))} has its day with its lots: move it there.`,
    };
  const floor = frame.from === undefined ? Number.NEGATIVE_INFINITY : dayNumber(frame.from);
  const starts = network.shifted(before, stepId, dayNumber(day), floor);
  if ('blocked' in starts) {
    const firstDay = dayOf(network.earliest(floor).get(stepId)!);
    return { ok: false, firstDay, sentence: impossible(plan, step, day, starts, firstDay) };
  }
  const next = planned(input, frame, starts);
  const changed = next.steps.flatMap((s) => {
    const from = dayOf(before.get(s.id)!);
    return from === s.start ? [] : [{ id: s.id, from, to: s.start }];
  });
  return { ok: true, plan: next, changed };
}

/** "freeze (1 of 2): oats, millet": what is done, and with what; at most three foods are named. */
export function stepTitle({ kind, round, supply, goods }: PlannedStep): string {
  const what = round ? `${WORDS[kind]} (${round.number} of ${round.of})` : WORDS[kind];
  if (supply === undefined) return what;
  const names = goods.slice(0, 3).map((g) => g.name);
  const more = goods.length - names.length;
  return `${what}: ${names.join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
}

/** What a step is called. */
export const WORDS: Readonly<Record<StepKind, string>> = {
  buy: 'buy',
  freeze: 'freeze',
  thaw: 'thaw',
  dry: 'dry',
  weigh: 'weigh out',
  'change-over': 'change over',
};

function impossible(plan: KitchenPlan, step: PlannedStep, day: Day, stop: Blocked, firstDay: Day): string {
  const words = (d: Day) => dayInWords(d, plan.end);
  const cannot = `${capital(stepTitle(step))} cannot begin on ${words(day)}`;
  const first = `the first day possible is ${words(firstDay)}`;
  const blocked = plan.steps.find((s) => s.id === stop.blocked.id)!;
  if (blocked.id === step.id && (plan.frame.from === undefined || day >= plan.frame.from))
    return `${cannot}: what is in the cold is not through it by then; ${first}.`;
  if (blocked.id === step.id)
    return `${cannot}: that is before ${words(plan.frame.from!)}, the first day of the plan; ${first}.`;
  if (blocked.appointed)
    return `${cannot}: ${stepTitle(blocked)} lasts until ${words(blocked.end)}; ${first}, or move that step first.`;
  if (blocked.state !== 'open')
    return `${cannot}: ${stepTitle(blocked)} lasts until ${words(blocked.end)}; ${first}, or give that step fewer days.`;
  return `${cannot}: ${stepTitle(blocked)} would have to begin on ${words(dayOf(stop.needed))}, before ${words(plan.frame.from!)}; ${first}, or give the steps between fewer days.`;
}

/** A step before it has a place in the calendar. */
interface Sketch extends Task, Pick<PlannedStep, 'kind' | 'round' | 'supply' | 'goods' | 'state'> {}

function planned(input: KitchenInput, frame: Frame, chosen?: Starts): KitchenPlan {
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
  const now = stepDays(input);
  const days = Object.fromEntries(
    Object.entries(now).map(([kind, d]) => [kind, Math.min(d, SHORTEST_DAYS[kind as StepKind])]),
  );
  const network = new Network(sketch({ ...input, days }, { from: dayOf(from) }));
  const end = network.end(network.earliest(from));
  return { end: dayOf(end), fits: end <= dayNumber(deadline) };
}

/** The steps of all supplies, then what is done with all of them together. */
function sketch(input: KitchenInput, { from }: Frame): Sketch[] {
  const days = stepDays(input);
  const today = from === undefined ? undefined : dayNumber(from, 'from');
  const { weighed, changed, changeOver = true } = input;
  if (changed && !weighed?.to)
    throw new RangeError(
      'changed: the change to the new batch has begun, but it is not weighed out; enter when it was',
    );
  if (input.supplies.some((s) => s.goods.length === 0))
    throw new RangeError('supplies: one of them has no goods; name at least one or leave it out');
  const supplies = input.supplies.flatMap((s) => supplySteps(s, days, today));
  // Once weighing has begun, a step of the goods that was not done will not be done any more.
  const before = weighed ? supplies.filter((s) => s.state === 'done') : supplies;
  const goods = input.supplies.flatMap((s) => s.goods);
  const waited = new Set(before.flatMap((s) => s.after));
  const notBefore = weighed || today === undefined ? undefined : throughCold(before, today);
  const weigh = step(
    {
      id: 'weigh',
      kind: 'weigh',
      goods,
      after: before.flatMap((s) => (waited.has(s.id) ? [] : [s.id])),
      ...(notBefore !== undefined && { notBefore }),
    },
    days.weigh,
    weighed,
    today,
    'weighed',
  );
  if (!changeOver) return [...before, weigh];
  const change = { id: 'change-over', kind: 'change-over', goods, after: ['weigh'] } as const;
  return [...before, weigh, step(change, days['change-over'], changed, today, 'changed')];
}

/**
 * The day on which all steps with a day of their own are over, where one of them has not been ticked off in time: those
 * after it stay where they are set down until somebody ticks it off, but they will end later.
 */
function throughCold(steps: readonly Sketch[], today: number): number | undefined {
  const ends = new Map<string, number>();
  for (const s of steps) {
    const begin = s.appointed ?? (s.state === 'begun' ? s.fixed : undefined);
    if (begin === undefined) continue;
    const ready = Math.max(begin, ...s.after.map((id) => ends.get(id) ?? begin));
    ends.set(s.id, Math.max(ready + s.days, s.state === 'begun' ? today : ready));
  }
  return ends.size === 0 ? undefined : Math.max(...ends.values());
}

function stepDays({ days = {} }: KitchenInput): StepDays {
  const all = { ...STEP_DAYS, ...days };
  for (const [kind, value] of Object.entries(all)) checkDays(value, `days.${kind}`);
  return all;
}

function checkDays(value: number, field: string): void {
  if (!Number.isInteger(value) || value < 0 || value > MOST_DAYS)
    throw new RangeError(`${field}: ${value} is no whole number of days from 0 to ${MOST_DAYS}; give one`);
}

function supplySteps(supply: Supply, days: StepDays, today: number | undefined): Sketch[] {
  const { id, route, goods, boughtOn, progress = [] } = supply;
  const field = `progress of "${id}"`;
  const twice = Array.from({ length: FREEZE_ROUNDS }, () => [
    { kind: 'freeze' as const },
    { kind: 'thaw' as const },
  ]).flat();
  const cold: NonNullable<Supply['cold']> = supply.cold ?? twice;
  const rest: readonly { kind: StepKind; days?: number; on?: Day }[] =
    route === 'cold' ? cold : route === 'dry' ? [{ kind: 'dry' }] : [];
  if (progress.length > rest.length)
    throw new RangeError(
      `${field}: ${progress.length} steps are said to have begun, but there are ${rest.length} after buying`,
    );
  if (progress.length > 0 && boughtOn === undefined)
    throw new RangeError(
      `boughtOn of "${id}": a step after buying has begun; enter the day on which it was bought`,
    );
  if (progress.slice(0, -1).some((p) => p.to === undefined))
    throw new RangeError(`${field}: a step has begun before the one before it ended; enter when that ended`);

  const bought = boughtOn === undefined ? undefined : { from: boughtOn, to: boughtOn };
  const common = { supply: id, goods };
  const steps = [
    step(
      { ...common, id: `buy:${id}`, kind: 'buy', after: [] },
      days.buy,
      bought,
      today,
      `boughtOn of "${id}"`,
    ),
  ];
  const count = { freeze: 0, thaw: 0 };
  if (boughtOn === undefined && cold.some((c) => c.on !== undefined))
    throw new RangeError(
      `boughtOn of "${id}": its cold has days set down; enter the day on which it was bought`,
    );
  rest.forEach(({ kind, days: own, on }, i) => {
    if (own !== undefined) checkDays(own, `cold.${i}.days of "${id}"`);
    const inCold = kind === 'freeze' || kind === 'thaw';
    const number = inCold ? ++count[kind] : 0;
    const of = rest.filter((r) => r.kind === kind).length;
    const set = on === undefined ? undefined : dayNumber(on, `cold.${i}.on of "${id}"`);
    steps.push(
      step(
        {
          ...common,
          ...(set !== undefined && progress[i] === undefined && { appointed: set }),
          id: inCold ? `${kind}-${number}:${id}` : `${kind}:${id}`,
          kind,
          ...(inCold && of > 1 && { round: { number, of } }),
          after: [steps.at(-1)!.id],
        },
        own ?? days[kind],
        progress[i],
        // What has its day with its lots is shown as it is set down there, also when it is over and not ticked off.
        on === undefined ? today : undefined,
        field,
      ),
    );
  });
  return steps;
}

function step(
  about: Omit<Sketch, 'days' | 'fixed' | 'state'>,
  days: number,
  progress: Progress | undefined,
  today: number | undefined,
  field: string,
): Sketch {
  if (progress === undefined) return { ...about, days, state: 'open' };
  const fixed = dayNumber(progress.from, field);
  if (progress.to === undefined) {
    // What ought to have ended goes on until someone ends it: today at the earliest.
    const least = today === undefined ? 0 : today - fixed;
    return { ...about, days: Math.max(days, least), fixed, state: 'begun' };
  }
  const taken = dayNumber(progress.to, field) - fixed;
  if (taken < 0)
    throw new RangeError(
      `${field}: it ends on ${progress.to}, before it begins on ${progress.from}; correct one of them`,
    );
  return { ...about, days: taken, fixed, state: 'done' };
}
