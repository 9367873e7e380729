/** What happened in a life, in sentences. */
import type { Condition } from '../../../care/model.ts';
import type { AroundDay } from '../../../household/reckon/care/around-day.ts';
import { daysFrom } from '../../../household/reckon/care/around-day.ts';
import type { FedBatch } from '../../../household/reckon/care/fed-batches.ts';
import type { LeftNight } from '../../../household/reckon/care/left-nights.ts';
import type { LifeEvent, LifeSpan } from '../../../household/reckon/care/lifeline.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { alertWords } from '../weight/weight-words.ts';
import type { DayOfLife } from './life-view.ts';

/** Foods of a change that are named; the rest is counted. */
const MOST_NAMES = 6;

/** Whose life it is, and what its foods are called. */
export interface Told {
  readonly animal: string;
  nameOf(food: string): string;
}

export function eventWords({ what }: LifeEvent, { animal }: Told): string {
  const t = words().lifeline.event;
  switch (what.is) {
    case 'batch':
      return batchWords(what.fed);
    case 'pellet':
      return t.pellet[what.change](what.name);
    case 'offered':
      return joined(t.seen[what.offering.seen](what.name), what.offering.note);
    case 'ended':
      return t.trialEnded(what.name);
    case 'note':
      return what.note.kind === 'vet' ? t.vetNote(what.note.text) : t.seenNote(what.note.text);
    case 'condition':
      return what.ends
        ? t.ends(conditionWords(what.condition))
        : joined(t.begins(conditionWords(what.condition)), what.condition.vet && t.vetSaid);
    case 'alert':
      return alertWords(animal, what.alert);
    case 'born':
      return what.about ? t.bornAbout : t.born;
    case 'gone':
      return what.how === 'died' ? t.died : t.givenAway;
  }
}

function batchWords({ batch, change, assumed }: FedBatch): string {
  const t = words().lifeline.event;
  return joined(
    t.batch[change.kind](batch.name),
    change.added.length > 0 && t.added(few(change.added)),
    change.gone.length > 0 && t.gone(few(change.gone)),
    assumed && t.assumed,
  );
}

function few(names: readonly string[]): readonly string[] {
  const more = names.length - MOST_NAMES;
  return more > 0 ? [...names.slice(0, MOST_NAMES), words().lifeline.event.moreFoods(more)] : names;
}

function conditionWords({ what, note }: Condition): string {
  const t = words().lifeline.conditions;
  return note ? t.named(t[what], note) : t[what];
}

/** What stands in the bar of a span. */
export function spanWords({ what }: LifeSpan): string {
  switch (what.is) {
    case 'batch':
      return what.fed.batch.name;
    case 'pellet':
      return what.name;
    case 'trial':
      return what.trial.name;
    case 'condition':
      return conditionWords(what.condition);
  }
}

/** All of a day that is no event: weighings and what was left. */
export function quietWords({ weighings, left }: DayOfLife, told: Told): readonly string[] {
  const t = words().lifeline.event;
  const counted = weighings.filter((w) => !w.unlikely).map((w) => w.grams);
  return [
    ...(counted.length > 0 ? [t.weighed(counted)] : []),
    ...weighings.filter((w) => w.unlikely).map((w) => t.unlikely(w.grams)),
    ...(left ? leftWords(left, told) : []),
  ];
}

function leftWords({ grams, offered, atLeast, mostly }: LeftNight, { nameOf }: Told): string[] {
  const t = words().lifeline.event;
  const weighed =
    grams === undefined
      ? []
      : offered === undefined
        ? [t.leftGrams(grams)]
        : [(atLeast ? t.leftAtLeast : t.left)(grams, offered)];
  return [...weighed, ...(mostly.length > 0 ? [t.mostly(mostly.map(nameOf))] : [])];
}

/** What else happened, each with how far off it was. @param day that is looked at */
export function aroundWords(around: AroundDay, day: Day, told: Told): readonly string[] {
  const t = words().lifeline.around;
  const { weight, left, events } = around;
  return [
    weight ? t.weight(weight.before, weight.at, weight.after) : t.noWeight,
    ...(left ? [t.left(left.before, left.after)] : []),
    ...events.map((event) => {
      const days = daysFrom(day, event);
      const what = eventWords(event, told);
      if (days === 0) return t.same(what);
      return days < 0 ? t.before(-days, what) : t.after(days, what);
    }),
    ...(events.length === 0 && !left ? [t.nothing] : []),
  ];
}

const joined = (...parts: readonly (string | false | undefined)[]) => parts.filter(Boolean).join(' ');
