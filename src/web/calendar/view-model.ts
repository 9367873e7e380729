/** The calendar of the next batch: what the household has turned into a plan, and a step of it put on another day. */
import { capital, joined } from '../../formulation/explain/sentences.ts';
import type { Household, Mix } from '../../household/model.ts';
import { driedAtHome, freshFoodOf } from '../../household/reckon/fresh-food.ts';
import { nextBatchOf, sizeOfNext } from '../../household/reckon/next-batch.ts';
import type { Frame, KitchenInput, KitchenPlan, PlannedStep } from '../../kitchen/calendar/kitchen-plan.ts';
import { moved } from '../../kitchen/calendar/move-step.ts';
import { planKitchen } from '../../kitchen/calendar/plan-kitchen.ts';
import { STEP_WORDS, stepTitle } from '../../kitchen/calendar/step-words.ts';
import { type NeededFood, suppliesOf } from '../../kitchen/calendar/supplies.ts';
import { leftOver, takenBy } from '../../kitchen/cupboard/cupboard.ts';
import { dayInWords, dayNumber, daysBetween, plusDays } from '../../kitchen/days.ts';
import { driedPerBought, type FreshFood } from '../../kitchen/drying/yields.ts';
import { mixPartOf, type RunsOut, runsOut } from '../../kitchen/feeding/runs-out.ts';
import { movedStep as movedInCold, needsTreatment } from '../../kitchen/freezing/freeze-treatment.ts';
import type { Batch, Day, FreezeStep, Lot, NextBatch } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { cupboardFoods, keptOf, lotsForCold } from '../cupboard/view-model.ts';
import { dayAt } from '../shared/today.ts';
import { onTrays } from '../shopping/view-model.ts';

/** The batch that is being fed. */
export interface PresentBatch {
  readonly batch: Batch;
  /** "batch 3". */
  readonly name: string;
  /** g that were made, or were left when somebody last weighed it, and on which day. */
  readonly counted: { readonly grams: number; readonly on: Day; readonly weighed: boolean };
  readonly runsOut: RunsOut;
}

export interface CalendarView {
  readonly plan: KitchenPlan;
  /** What the kitchen keeps of it, with the steps that could still be put on their days. */
  readonly next: NextBatch;
  /** Why a step is no longer on the day on which the keeper put it, one sentence each. */
  readonly dropped: readonly string[];
  readonly present?: PresentBatch;
  /** The batch being weighed, which is the next one. */
  readonly weighing?: Batch;
  /** The first day that was given has passed: today counts. */
  readonly fromPassed: boolean;
  readonly mode: FrameMode;
  readonly table: FreshTable;
}

/** Forwards from today or a day; backwards from the day on which the present batch runs out, or from a day. */
export type FrameMode = 'today' | 'from' | 'runs-out' | 'until';

/** Batches of the mix or of its animals, not given up, the oldest first: "batch 1" is the first of them. */
export function batchesFed(house: Household, mix: Mix): readonly Batch[] {
  const fed = (b: Batch) => b.mixId === mix.id || b.animalIds.some((id) => mix.animalIds.includes(id));
  return house.batches
    .filter((b) => !b.givenUp && fed(b))
    .sort((a, b) => (a.startedAt < b.startedAt ? -1 : a.startedAt > b.startedAt ? 1 : 0));
}

/** g that lie in a batch. */
export const gramsMade = (batch: Batch) => batch.pours.reduce((sum, p) => sum + p.grams, 0);

/** The last finished batch that is not used up; an older one only while it still lasts. */
export function presentOf(house: Household, mix: Mix, today: Day): PresentBatch | undefined {
  const all = batchesFed(house, mix);
  const finished = all
    .filter((b) => b.finishedAt !== undefined)
    .sort((a, b) => (a.finishedAt! < b.finishedAt! ? 1 : -1));
  for (const batch of finished) {
    const name = `batch ${all.indexOf(batch) + 1}`;
    const mixPart = mixPartOf(batch.problem);
    if (batch.left?.grams === 0 || !(mixPart > 0)) continue;
    const counted = batch.left
      ? { ...batch.left, weighed: true }
      : { grams: gramsMade(batch), on: dayAt(batch.finishedAt!), weighed: false };
    const runs = runsOut({
      name,
      gramsLeft: counted.grams,
      weighedOn: counted.on,
      animals: house.animals.filter((a) => batch.animalIds.includes(a.id)),
      mixPart: Math.min(1, mixPart),
    });
    const newest = batch === finished[0];
    if (newest || (runs.status === 'known' && runs.day > today))
      return { batch, name, counted, runsOut: runs };
  }
  return undefined;
}

/** g that should be left of it on a day, by what is eaten; undefined where that is not known. */
export function leftOn({ counted, runsOut: runs }: PresentBatch, day: Day): number | undefined {
  if (runs.status === 'unknown') return undefined;
  const days = Math.max(0, dayNumber(day) - dayNumber(counted.on));
  return Math.max(0, counted.grams - days * runs.gramsADay);
}

/** Fresh foods of the tables, by reference number; without an entry nobody knows what they come to once dried. */
export type FreshTable = ReadonlyMap<string, FreshFood>;

/** The foods that the next batch takes. @param mix with what its animals bring */
export function foodsNeeded(house: Household, mix: Mix, table: FreshTable): NeededFood[] {
  const groups = new Map(cupboardFoods(house).map((f) => [f.id, f.group]));
  const { grams } = sizeOfNext(house, mix);
  return mix.problem.foods.flatMap((food): NeededFood[] => {
    const share = food.refused ? 0 : (mix.shares[food.id] ?? 0);
    if (!(share > 0)) return [];
    const perFresh = perFreshOf(house, food.id, table);
    return [
      {
        id: food.id,
        name: food.name ?? food.id,
        needsTreatment: needsTreatment({ form: 'dry' }, groups.get(food.id)).needs,
        dryAtHome: driedAtHome(house, food.id) !== undefined,
        ...(perFresh !== undefined && { perFresh }),
        ...(grams !== undefined && { grams: (grams * share) / 100 }),
      },
    ];
  });
}

/** g dried from 1 g of the fresh food as bought; undefined where its water, or what is trimmed off, is not known. */
function perFreshOf(house: Household, food: string, table: FreshTable): number | undefined {
  const how = driedAtHome(house, food);
  const fresh = how && freshFoodOf(how.fresh, house.foods, table);
  const water = fresh?.composition.WATER;
  if (!how || !fresh || water === undefined || water <= how.moisture) return undefined;
  return driedPerBought(fresh, how.moisture, how.trimLoss);
}

/**
 * The plan of the next batch, with the steps on the days that the keeper chose.
 * @param mix with what its animals bring
 */
export function calendarOf(
  house: Household,
  mix: Mix,
  today: Day,
  table: FreshTable = new Map(),
): CalendarView {
  const next = nextBatchOf(house, mix);
  const present = presentOf(house, mix, today);
  const all = batchesFed(house, mix);
  const weighing = all.findLast((b) => b.mixId === mix.id && b.finishedAt === undefined);
  const number = weighing ? all.indexOf(weighing) + 1 : all.length + 1;
  const days = house.kitchen[0]?.stepDays;
  const trays = onTrays(house);
  const lots = leftOver(keptOf(house)).flatMap(({ lot, grams }) => {
    // What lies on the trays is on its way.
    const drying = trays.reduce((sum, t) => sum + (t.lot.id === lot.id ? takenBy(t.run) : 0), 0);
    return grams + drying > 0 ? [{ ...lot, grams: grams + drying }] : [];
  });
  const input: KitchenInput = {
    id: `${mix.id}-${number}`,
    name: `batch ${number}`,
    supplies: suppliesOf(foodsNeeded(house, mix, table), lots, house.dryingRuns, today, dayAt),
    ...(days && { days }),
    changeOver: days?.['change-over'] !== 0,
    ...(weighing && { weighed: { from: dayAt(weighing.startedAt) } }),
    ...(present && { present: { name: present.name, runsOut: present.runsOut } }),
  };
  const { frame, mode, fromPassed } = frameOf(next, present?.runsOut, today);
  const { plan, pins, dropped } = replayed(planKitchen(input, frame), next.pins);
  return {
    plan,
    next: { ...next, pins },
    dropped,
    mode,
    fromPassed,
    table,
    ...(present && { present }),
    ...(weighing && { weighing }),
  };
}

/** Nothing is planned for a day that has passed. */
function frameOf(
  next: NextBatch,
  runs: RunsOut | undefined,
  today: Day,
): { frame: Frame; mode: FrameMode; fromPassed: boolean } {
  const { from, until, untilRunsOut } = next;
  const passed = from !== undefined && from < today;
  if (untilRunsOut && runs?.status === 'known')
    return { frame: { from: today, until: runs.day }, mode: 'runs-out', fromPassed: false };
  if (until !== undefined) return { frame: { from: today, until }, mode: 'until', fromPassed: false };
  if (from === undefined) return { frame: { from: today }, mode: 'today', fromPassed: false };
  return { frame: { from: passed ? today : from }, mode: 'from', fromPassed: passed };
}

/** What the kitchen keeps for another frame; the steps put on their days stay. */
export function withFrame(next: NextBatch, mode: FrameMode, day: Day): NextBatch {
  const { from: _from, until: _until, untilRunsOut: _runsOut, ...rest } = next;
  if (mode === 'from') return { ...rest, from: day };
  if (mode === 'until') return { ...rest, until: day };
  return mode === 'runs-out' ? { ...rest, untilRunsOut: true } : rest;
}

/** The plan with its steps put on their days in the order in which the keeper did it; what no longer fits is left. */
function replayed(
  plan: KitchenPlan,
  pins: NextBatch['pins'],
): { plan: KitchenPlan; pins: NextBatch['pins']; dropped: readonly string[] } {
  let now = plan;
  const kept: NextBatch['pins'][number][] = [];
  const dropped: string[] = [];
  for (const pin of pins) {
    const step = now.steps.find((s) => s.id === pin.step);
    if (!step) {
      dropped.push(
        `A step that you put on ${dayInWords(pin.day, plan.start)} is no longer in the plan; your day for it is dropped.`,
      );
      continue;
    }
    // Begun or done: the day has served.
    if (step.state !== 'open') continue;
    const answer = moved(now, pin.step, pin.day);
    if (answer.ok) {
      now = answer.plan;
      kept.push(pin);
    } else dropped.push(`Your day for a step is dropped. ${answer.sentence}`);
  }
  return { plan: now, pins: kept, dropped };
}

export interface Change {
  readonly step: PlannedStep;
  readonly from: Day;
  readonly to: Day;
}

export type MoveAnswer =
  | {
      readonly ok: true;
      /** The kept plan, where days of the plan alone change. */
      readonly next?: NextBatch;
      /** Lots with their new days, where those change. */
      readonly lots: readonly Lot[];
      readonly after: CalendarView;
      /** What it did, in a sentence or two. */
      readonly sentence: string;
    }
  | {
      readonly ok: false;
      readonly sentence: string;
      /** First day on which it can be. */
      readonly firstDay?: Day;
      /** The freezer is what stands in the way. */
      readonly room?: true;
    };

/**
 * One step put on another day. A step of lots that are in the cupboard moves the days that are kept with those lots,
 * as far as the freezer has room; any other is kept with the plan.
 * @param mix with what its animals bring
 */
export function moveStep(
  house: Household,
  mix: Mix,
  view: CalendarView,
  id: string,
  day: Day,
  today: Day,
): MoveAnswer {
  const step = view.plan.steps.find((s) => s.id === id)!;
  const lots = step.state === 'open' ? lotsInCold(house, step) : [];
  if (lots.length > 0) return moveLots(house, mix, view, step, lots, day, today);
  const { pins } = view.next;
  // Several tries at one step are one move.
  const before = pins.at(-1)?.step === id ? pins.slice(0, -1) : pins;
  const base = calendarOf(withNext(house, { ...view.next, pins: before }), mix, today, view.table);
  const answer = moved(base.plan, id, day);
  if (!answer.ok) return answer;
  const next = { ...view.next, pins: [...before, { step: id, day }] };
  const then = calendarOf(withNext(house, next), mix, today, view.table);
  return { ok: true, next, lots: [], after: then, sentence: whatMoved(step, view, then) };
}

const withNext = (house: Household, next: NextBatch): Household => ({
  ...house,
  kitchen: [{ ...(house.kitchen[0] ?? { id: 'kitchen' }), next }],
});

/** The lots of a freeze or a thaw that are in the cupboard; none for what is still to be bought. */
function lotsInCold(house: Household, step: PlannedStep): Lot[] {
  if (step.kind !== 'freeze' && step.kind !== 'thaw') return [];
  const ids = new Set(step.goods.flatMap((g) => g.lot ?? []));
  return house.lots.filter((l) => ids.has(l.id));
}

function moveLots(
  house: Household,
  mix: Mix,
  view: CalendarView,
  step: PlannedStep,
  lots: readonly Lot[],
  day: Day,
  today: Day,
): MoveAnswer {
  const { plan } = view;
  const words = (d: Day) => dayInWords(d, plan.end);
  const rounds = plan.steps.filter(
    (s) => s.supply === step.supply && (s.kind === 'freeze' || s.kind === 'thaw'),
  );
  const index = rounds.indexOf(step);
  const planned: FreezeStep[] = rounds.map((s) => ({
    kind: s.kind as FreezeStep['kind'],
    from: s.start,
    to: s.end,
  }));
  const withDays = lots.map((l) => (l.cold.length > 0 ? l : { ...l, cold: planned }));
  const cannot = `${capital(stepTitle(step))} cannot begin on ${words(day)}`;
  const before = rounds[index - 1];
  const soonest = [today, ...lots.map((l) => l.boughtOn), ...(before ? [before.end] : [])].sort().at(-1)!;
  if (day < soonest)
    return {
      ok: false,
      firstDay: soonest,
      sentence:
        before && soonest === before.end
          ? `${cannot}: ${shortTitle(before)} before it lasts until ${words(soonest)}; that is the first day possible, unless you move that step first.`
          : `${cannot}: the first day possible is ${words(soonest)}.`,
    };
  const on = (d: Day) => withDays.map((l) => movedInCold(l, index, d));
  const changed = on(day);
  const full = overfull(house, changed, today);
  if (full) {
    const free = Array.from({ length: MOST_TRIES }, (_, i) => plusDays(day, i + 1)).find(
      (d) => !overfull(house, on(d), today),
    );
    return {
      ok: false,
      room: true,
      ...(free !== undefined && { firstDay: free }),
      sentence: `${cannot}: on ${words(full.day)} ${sayGrams(full.grams)} would lie in the freezer for the cold, and it has room for ${sayGrams(full.room)}.${
        free === undefined ? '' : ` From then on, the first day with room is ${words(free)}.`
      }`,
    };
  }
  const after = calendarOf(withLots(house, changed), mix, today, view.table);
  const fresh = after.dropped.filter((d) => !view.dropped.includes(d));
  return {
    ok: true,
    lots: changed,
    after,
    sentence: [whatMoved(step, view, after), ...fresh].join(' '),
  };
}

/** Days over which a place in the freezer is looked for. */
const MOST_TRIES = 120;

function withLots(house: Household, changed: readonly Lot[]): Household {
  return { ...house, lots: house.lots.map((l) => changed.find((c) => c.id === l.id) ?? l) };
}

/**
 * The first day on which lots with these days make the freezer too full: of the days on which one of them lies in it
 * that did not before. Undefined where nobody knows its room.
 */
function overfull(
  house: Household,
  changed: readonly Lot[],
  today: Day,
): { day: Day; grams: number; room: number } | undefined {
  const room = house.kitchen[0]?.freezer?.grams;
  if (room === undefined) return undefined;
  const all = lotsForCold(withLots(house, changed), today);
  const added = changed.flatMap((lot) => {
    const before = new Set(frozenDays(house.lots.find((l) => l.id === lot.id) ?? { cold: [] }));
    return frozenDays(lot).filter((day) => !before.has(day));
  });
  for (const day of [...new Set(added)].sort()) {
    const grams = all.reduce((sum, l) => sum + (frozenDays(l).includes(day) ? l.grams : 0), 0);
    if (grams > room * (1 + 1e-9)) return { day, grams, room };
  }
  return undefined;
}

/** Days on which a lot is to lie in the freezer for the cold. */
function frozenDays({ cold }: Pick<Lot, 'cold'>): Day[] {
  return cold.flatMap(({ kind, doneOn, from, to }) =>
    kind === 'freeze' && doneOn === undefined
      ? Array.from({ length: Math.max(0, daysBetween(from, to)) }, (_, i) => plusDays(from, i))
      : [],
  );
}

/** Steps that lie elsewhere than before. */
export function changesBetween(before: KitchenPlan, after: KitchenPlan): Change[] {
  const starts = new Map(before.steps.map((s) => [s.id, s.start]));
  return after.steps.flatMap((step) => {
    const from = starts.get(step.id);
    return from === undefined || from === step.start ? [] : [{ step, from, to: step.start }];
  });
}

function whatMoved(step: PlannedStep, before: CalendarView, after: CalendarView): string {
  const words = (d: Day) => dayInWords(d, after.plan.end);
  const changes = changesBetween(before.plan, after.plan);
  const self = after.plan.steps.find((s) => s.id === step.id);
  const others = changes.filter((c) => c.step.id !== step.id);
  const naming = (s: PlannedStep) => (s.supply === step.supply ? shortTitle(s) : stepTitle(s));
  const lead = `${capital(stepTitle(step))} ${self && self.start !== step.start ? 'now begins' : 'stays'} on ${words(self?.start ?? step.start)}.`;
  const rest =
    others.length === 0
      ? 'Nothing else moves.'
      : `With it: ${joined(others.map((c) => `${naming(c.step)} to ${words(c.to)}`))}.`;
  const { deadline, fits, end } = after.plan;
  const late =
    deadline !== undefined && fits === false && before.plan.fits !== false
      ? ` The plan now ends on ${words(end)}, after ${words(deadline)}.`
      : '';
  return `${lead} ${rest}${late}`;
}

/** "freeze 1", "weigh out". */
export function shortTitle({ kind, round }: Pick<PlannedStep, 'kind' | 'round'>): string {
  return round ? `${STEP_WORDS[kind]} ${round.number}` : STEP_WORDS[kind];
}

/** Lots of the plan that wait for the cold and have no days in the freezer, by name. */
export function withoutColdDays(house: Household, plan: KitchenPlan): string[] {
  const ids = new Set(
    plan.steps.flatMap((s) =>
      s.kind === 'freeze' || s.kind === 'thaw' ? s.goods.flatMap((g) => g.lot ?? []) : [],
    ),
  );
  return house.lots.flatMap((l) => (ids.has(l.id) && l.cold.length === 0 ? [l.name] : []));
}

/** Steps in the cold that should be over and are not ticked off. */
export function overdue(plan: KitchenPlan, today: Day): PlannedStep[] {
  return plan.steps.filter(
    (s) => s.state === 'begun' && (s.kind === 'freeze' || s.kind === 'thaw') && s.end <= today,
  );
}

export interface Row {
  readonly id: string;
  readonly title: string;
  readonly bars: readonly PlannedStep[];
}

/** Rows of the picture, each supply's steps in one, then what is done with all of them; not what is ready. */
export function rowsOf(plan: KitchenPlan): Row[] {
  const supplies = plan.input.supplies.flatMap((supply): Row[] => {
    const bars = plan.steps.filter((s) => s.supply === supply.id);
    if (bars.every((s) => s.state === 'done')) return [];
    return [{ id: supply.id, title: named(supply.goods.map((g) => g.name)), bars }];
  });
  const shared = plan.steps.filter((s) => s.supply === undefined);
  return [...supplies, ...shared.map((s) => ({ id: s.id, title: capital(STEP_WORDS[s.kind]), bars: [s] }))];
}

/** Foods that only wait to be weighed out. */
export function readyFoods(plan: KitchenPlan): string[] {
  return plan.input.supplies.flatMap((supply) =>
    plan.steps.every((s) => s.supply !== supply.id || s.state === 'done')
      ? supply.goods.map((g) => g.name)
      : [],
  );
}

/** Whether a day lost with a step is a day lost for all: it has the least time to spare, or lies on the longest chain. */
export function isCritical(plan: KitchenPlan, step: PlannedStep): boolean {
  return step.critical || plan.criticalPath.includes(step.id);
}

/** "Rolled oats", "Rolled oats and 3 more". */
export function named(names: readonly string[]): string {
  if (names.length <= 2) return joined([...names]);
  return `${names[0]} and ${names.length - 1} more`;
}

/** The days that the picture spans, as numbers: from today or what goes on, to the end or the day by which it has to. */
export function spanOf(plan: KitchenPlan, today: Day): readonly [number, number] {
  const pending = plan.steps.filter((s) => s.state !== 'done');
  const first = Math.min(dayNumber(today), ...pending.map((s) => dayNumber(s.start)));
  const end = Math.max(dayNumber(plan.end), first + 7);
  const deadline = plan.deadline === undefined ? end : dayNumber(plan.deadline);
  // A day far behind the end would press all else together.
  return [first, Math.max(end, deadline <= end + (end - first) ? deadline : end) + 1];
}

const WEEKDAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;

/** "Saturday, 14 March". */
export function dayWithWeekday(day: Day, beside: Day): string {
  // 1 January 1970 was a Thursday.
  return `${WEEKDAYS[(((dayNumber(day) + 4) % 7) + 7) % 7]}, ${dayInWords(day, beside)}`;
}

/** "4 March to 8 March"; "on 4 March" for a step of no days. */
export function spanInWords({ start, end, days }: PlannedStep, beside: Day): string {
  return days === 0
    ? `on ${dayInWords(start, beside)}`
    : `${dayInWords(start, beside)} to ${dayInWords(end, beside)}`;
}

/** Steps that are not done by the day on which they begin. */
export function byDay(plan: KitchenPlan): { readonly day: Day; readonly steps: readonly PlannedStep[] }[] {
  const days = new Map<Day, PlannedStep[]>();
  for (const s of plan.steps) if (s.state !== 'done') days.set(s.start, [...(days.get(s.start) ?? []), s]);
  return [...days].sort(([a], [b]) => (a < b ? -1 : 1)).map(([day, steps]) => ({ day, steps }));
}
