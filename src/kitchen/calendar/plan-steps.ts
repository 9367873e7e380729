/** The steps of a kitchen plan before they have their days: what is to be done, for how long, and after what. */

import { dayNumber } from '../days.ts';
import type { Day } from '../model.ts';
import type { Task } from './critical-path.ts';
import type { Frame, KitchenInput, PlannedStep, Progress, Supply } from './kitchen-plan.ts';
import { checkDays, FREEZE_ROUNDS, type StepDays, type StepKind, stepDays } from './step-days.ts';

/** A step before it has a place in the calendar. */
export interface Sketch extends Task, Pick<PlannedStep, 'kind' | 'round' | 'supply' | 'goods' | 'state'> {}

/** The steps of all supplies, then what is done with all of them together. */
export function sketch(input: KitchenInput, { from }: Frame): Sketch[] {
  const days = stepDays(input.days);
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
  const notBefore = weighed || today === undefined ? undefined : endOfTreatments(before, today);
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
function endOfTreatments(steps: readonly Sketch[], today: number): number | undefined {
  const ends = new Map<string, number>();
  for (const s of steps) {
    const begin = s.appointed ?? (s.state === 'begun' ? s.fixed : undefined);
    if (begin === undefined) continue;
    const ready = Math.max(begin, ...s.after.map((id) => ends.get(id) ?? begin));
    ends.set(s.id, Math.max(ready + s.days, s.state === 'begun' ? today : ready));
  }
  return ends.size === 0 ? undefined : Math.max(...ends.values());
}

function supplySteps(supply: Supply, days: StepDays, today: number | undefined): Sketch[] {
  const { id, route, goods, boughtOn, progress = [] } = supply;
  const field = `progress."${id}"`;
  const twice = Array.from({ length: FREEZE_ROUNDS }, () => [
    { kind: 'freeze' as const },
    { kind: 'thaw' as const },
  ]).flat();
  const rounds: NonNullable<Supply['rounds']> = supply.rounds ?? twice;
  const rest: readonly { kind: StepKind; days?: number; on?: Day }[] =
    route === 'freeze' ? rounds : route === 'dry' ? [{ kind: 'dry' }] : [];
  if (progress.length > rest.length)
    throw new RangeError(
      `${field}: ${progress.length} steps are said to have begun, but there are ${rest.length} after buying`,
    );
  if (progress.length > 0 && boughtOn === undefined)
    throw new RangeError(
      `boughtOn."${id}": a step after buying has begun; enter the day on which it was bought`,
    );
  if (progress.slice(0, -1).some((p) => p.to === undefined))
    throw new RangeError(`${field}: a step has begun before the one before it ended; enter when that ended`);

  const bought = boughtOn === undefined ? undefined : { from: boughtOn, to: boughtOn };
  const common = { supply: id, goods };
  const steps = [
    step({ ...common, id: `buy:${id}`, kind: 'buy', after: [] }, days.buy, bought, today, `boughtOn."${id}"`),
  ];
  const count = { freeze: 0, thaw: 0 };
  if (boughtOn === undefined && rounds.some((c) => c.on !== undefined))
    throw new RangeError(
      `boughtOn."${id}": its rounds have days set down; enter the day on which it was bought`,
    );
  rest.forEach(({ kind, days: own, on }, i) => {
    if (own !== undefined) checkDays(own, `"${id}".rounds.${i}.days`);
    const inFreezer = kind === 'freeze' || kind === 'thaw';
    const number = inFreezer ? ++count[kind] : 0;
    const of = rest.filter((r) => r.kind === kind).length;
    const set = on === undefined ? undefined : dayNumber(on, `"${id}".rounds.${i}.on`);
    steps.push(
      step(
        {
          ...common,
          ...(set !== undefined && progress[i] === undefined && { appointed: set }),
          id: inFreezer ? `${kind}-${number}:${id}` : `${kind}:${id}`,
          kind,
          ...(inFreezer && of > 1 && { round: { number, of } }),
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

/**
 * One step, with what is on record of it.
 * @param today day number, absent where the plan has no first day @param field named in the error
 * @throws RangeError where it ends before it begins
 */
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
