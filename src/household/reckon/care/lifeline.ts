/** What happened in the life of one animal: spans and events by day, beside which its weight can be seen. */
import type { Condition, Feeding, Note, Offering, Trial } from '../../../care/model.ts';
import type { WeightAlert, WeightStory } from '../../../care/weight/model.ts';
import { daysBetween } from '../../../kitchen/days.ts';
import type { Day, Moment } from '../../../kitchen/model.ts';
import type { Animal, Household } from '../../model.ts';
import { type FedBatch, fedBatches } from './fed-batches.ts';
import { type LeftNight, leftNights } from './left-nights.ts';
import { ofAnimal } from './of-animal.ts';
import { feedingsOf } from './records-of.ts';

/** Something that lasted. */
export interface LifeSpan {
  readonly id: string;
  readonly lane: 'batch' | 'pellet' | 'trial' | 'condition';
  readonly from: Day;
  /** The last day, never before the first; absent while it lasts. */
  readonly to?: Day;
  readonly what:
    | { readonly is: 'batch'; readonly fed: FedBatch }
    | { readonly is: 'pellet'; readonly name: string; readonly lot?: string }
    | { readonly is: 'trial'; readonly trial: Trial }
    | { readonly is: 'condition'; readonly condition: Condition };
}

/** Something that happened on a day. */
export interface LifeEvent {
  readonly id: string;
  readonly on: Day;
  readonly what:
    | { readonly is: 'batch'; readonly fed: FedBatch }
    | { readonly is: 'pellet'; readonly name: string; readonly change: 'first' | 'pack' | 'food' }
    | { readonly is: 'offered'; readonly name: string; readonly offering: Offering }
    | { readonly is: 'ended'; readonly name: string }
    | { readonly is: 'note'; readonly note: Note }
    | { readonly is: 'condition'; readonly condition: Condition; readonly ends: boolean }
    | { readonly is: 'alert'; readonly alert: WeightAlert }
    | { readonly is: 'born'; readonly about: boolean }
    | { readonly is: 'gone'; readonly how: 'died' | 'given away' };
}

export interface Lifeline {
  /** By the day on which they began. */
  readonly spans: readonly LifeSpan[];
  /** By day. */
  readonly events: readonly LifeEvent[];
  readonly left: readonly LeftNight[];
  /** The first day of which anything is known but its birth; undefined where nothing is. */
  readonly start?: Day;
}

type Kept = Pick<Household, 'batches' | 'feedings' | 'foods' | 'lots' | 'mixes' | 'notes' | 'trials'>;

/** @param story of its weights: its warnings are events too */
export function lifelineOf(
  house: Kept,
  animal: Animal,
  p: { readonly story: WeightStory; dayAt(moment: Moment): Day },
): Lifeline {
  const feedings = feedingsOf(house, animal.id);
  const batches = fedBatches(house, animal, p.dayAt);
  const packs = pelletSpans(house, feedings);
  const trials = ofAnimal(house.trials, animal.id);
  const notes = ofAnimal(house.notes, animal.id);
  const conditions = animal.conditions ?? [];
  const left = leftNights(feedings);

  const spans: LifeSpan[] = [
    ...batches.map(
      (fed): LifeSpan => ({
        id: `batch ${fed.from}`,
        lane: 'batch',
        from: fed.from,
        ...(fed.to !== undefined && { to: fed.to }),
        what: { is: 'batch', fed },
      }),
    ),
    ...packs,
    ...trials.flatMap(trialSpan),
    ...conditions.map(
      (condition, i): LifeSpan => ({
        id: `condition ${i}`,
        lane: 'condition',
        from: condition.since,
        ...(condition.until !== undefined && { to: later(condition.until, condition.since) }),
        what: { is: 'condition', condition },
      }),
    ),
  ];
  const events: LifeEvent[] = [
    ...batches.map((fed) => event(`batch ${fed.from}`, fed.from, { is: 'batch', fed })),
    ...pelletEvents(packs),
    ...trials.flatMap((t) =>
      t.offerings.map((offering) =>
        event(`offered ${t.id} ${offering.on}`, offering.on, { is: 'offered', name: t.name, offering }),
      ),
    ),
    ...trials.flatMap((t) =>
      t.endedOn === undefined ? [] : [event(`ended ${t.id}`, t.endedOn, { is: 'ended', name: t.name })],
    ),
    ...notes.map((note) => event(`note ${note.id}`, note.on, { is: 'note', note })),
    ...conditions.flatMap((condition, i) => [
      event(`condition ${i}`, condition.since, { is: 'condition', condition, ends: false }),
      ...(condition.until === undefined
        ? []
        : [event(`condition ${i} over`, condition.until, { is: 'condition', condition, ends: true })]),
    ]),
    ...[...p.story.past, ...p.story.alerts].map((alert) =>
      event(`alert ${alert.rule} ${alert.way} ${alert.on}`, alert.on, { is: 'alert', alert }),
    ),
    ...(animal.born
      ? [event('born', animal.born.on, { is: 'born', about: animal.born.about === true })]
      : []),
    ...(animal.gone ? [event('gone', animal.gone.on, { is: 'gone', how: animal.gone.how })] : []),
  ];
  spans.sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0));
  events.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  const start = [
    p.story.points[0]?.day,
    feedings[0]?.on,
    spans[0]?.from,
    events.find((e) => e.what.is !== 'born')?.on,
  ]
    .filter((day) => day !== undefined)
    .sort()[0];
  return { spans, events, left, ...(start !== undefined && { start }) };
}

function event(id: string, on: Day, what: LifeEvent['what']): LifeEvent {
  return { id, on, what };
}

/** The later of two days. */
const later = (a: Day, b: Day) => [a, b].sort()[1] ?? a;

/** From its first day to its end; that of the plan while it goes on. A trial without a day has no place in time. */
function trialSpan(trial: Trial): LifeSpan[] {
  const days = [...trial.days, ...trial.offerings.map((o) => o.on)].sort();
  const [from = trial.endedOn] = days;
  if (from === undefined) return [];
  // A trial that ended before its first day has that day alone.
  const to = later(trial.endedOn ?? days.at(-1) ?? from, from);
  return [
    {
      id: `trial ${trial.id}`,
      lane: 'trial',
      from,
      to,
      what: { is: 'trial', trial },
    },
  ];
}

/** Days without a note within which the same pack is taken to go on. */
const BRIDGED = 7;

interface PackSpan {
  readonly id: string;
  readonly key: string;
  readonly from: Day;
  to: Day;
  readonly name: string;
  readonly lot?: string;
}

/** Each pack of pellets from the first day it was noted on to the last. */
function pelletSpans(house: Kept, feedings: readonly Feeding[]): LifeSpan[] {
  const pellets = new Map(house.foods.filter((f) => f.kind === 'pellet').map((f) => [f.id, f.name]));
  const lots = new Map(house.lots.map((l) => [l.id, l]));
  const spans: PackSpan[] = [];
  const ofFood = new Map<string, PackSpan[]>();
  for (const { on, beside } of feedings)
    for (const { food, lot } of beside) {
      const pack = lot === undefined ? undefined : lots.get(lot);
      const name = pellets.get(food) ?? pack?.name;
      if (name === undefined) continue;
      const key = `${food}\n${lot ?? ''}`;
      const before = ofFood.get(food) ?? [];
      ofFood.set(food, before);
      const last = before.findLast((s) => s.key === key);
      // Another pack of the same food in between ends it.
      const other = before.findLast((s) => s.key !== key);
      if (last && daysBetween(last.to, on) <= BRIDGED && !(other && other.to > last.to)) last.to = on;
      else {
        const span: PackSpan = {
          id: `pellet ${key} ${on}`,
          key,
          from: on,
          to: on,
          name,
          ...(lot !== undefined && { lot }),
        };
        spans.push(span);
        before.push(span);
      }
    }
  return spans.map(({ id, from, to, name, lot }) => ({
    id,
    lane: 'pellet',
    from,
    to,
    what: { is: 'pellet', name, ...(lot !== undefined && { lot }) },
  }));
}

function pelletEvents(spans: readonly LifeSpan[]): LifeEvent[] {
  const names = new Set<string>();
  return spans.flatMap(({ id, from, what }, i) => {
    if (what.is !== 'pellet') return [];
    const before = spans[i - 1]?.what;
    const known = names.has(what.name);
    names.add(what.name);
    const sameGoesOn = before?.is === 'pellet' && before.name === what.name && before.lot === what.lot;
    if (sameGoesOn) return [];
    const change = i === 0 ? 'first' : known ? 'pack' : 'food';
    return [event(id, from, { is: 'pellet', name: what.name, change })];
  });
}
