/**
 * Entries for other calendars: a file by RFC 5545 (iCalendar, September 2009), written by ical-generator, which counts
 * octets, not letters, where it folds a line. What it leaves to its callers is done here: texts that the standard
 * allows, names that stay the same from file to file, and the line break after the last line.
 *
 * The library draws a random id for each entry before ours takes its place; nothing of it is in the file. Browsers
 * lend random ids to pages from https or localhost alone: elsewhere the page has to lend a stand-in.
 */
import ical, {
  type ICalAlarmData,
  ICalAlarmRelatesTo,
  ICalAlarmType,
  type ICalEventData,
  ICalEventTransparency,
} from 'ical-generator';
import { capital } from '../../formulation/explain/sentences.ts';
import { words } from '../../words/words.ts';
import { dayInWords, instant, midnight, plusDays, plusHours } from '../days.ts';
import type { Day, Moment } from '../model.ts';
import type { FedBeside } from './fed-beside.ts';
import type { KitchenPlan, PlannedStep } from './kitchen-plan.ts';
import { lastDay } from './sentences.ts';
import { stepTitle } from './step-words.ts';

interface Entry {
  /** What it is known by in all files; see {@link uidOf}. */
  readonly uid: string;
  readonly title: string;
  readonly text: string;
  readonly categories: readonly string[];
}

/** An entry for whole days. */
export interface DayEntry extends Entry {
  readonly from: Day;
  /** The first day after it; at least one day after `from`. */
  readonly to: Day;
}

/** An entry at a time of day, UTC in the file; calendars show it in the time of their place. */
export interface TimedEntry extends Entry {
  readonly at: Moment;
  readonly minutes: number;
}

interface IcsOptions {
  /** When the file is made. A later file of the same plan takes the place of an earlier one. */
  readonly stamp: Moment;
  /** Whether calendars remind: at {@link REMIND_HOUR} of the first day, or at the time itself. */
  readonly reminders?: boolean;
}

/** Hour of the first day at which a reminder for whole days comes. */
const REMIND_HOUR = 9;
/** Minutes set aside to check what dries, and to turn it (common practice, no source). */
const CHECK_MINUTES = 15;
const COMPANY = 'Pouchful';
/** The name by which other programs know what wrote a file; people do not see it. */
const PRODUCT = 'Calendar';

/** A plan as a file. @throws RangeError where the stamp is no time */
export function planAsIcs(
  plan: KitchenPlan,
  options: IcsOptions,
  more: readonly (DayEntry | TimedEntry)[] = [],
): string {
  return asIcs([...planEntries(plan), ...more], options);
}

/**
 * One entry for each step that is not done, in the keeper's language; a step of no days is shown on the day on which it
 * falls due.
 */
export function planEntries(plan: KitchenPlan): DayEntry[] {
  return plan.steps
    .filter((s) => s.state !== 'done')
    .map((s) => ({
      uid: uidOf(plan.input.id, s.id),
      title: entryTitle(s, plan.input.name),
      text: entryText(s, plan),
      categories: [COMPANY, words().calendar.file.category[s.kind]],
      from: s.start,
      to: s.days > 0 ? s.end : plusDays(s.start, 1),
    }));
}

/** For each food fed from packs, the day by which more is to be bought and the day on which it runs out. */
export function besideEntries(foods: readonly FedBeside[]): DayEntry[] {
  const { pelletStock, calendar, figures: f } = words();
  const t = pelletStock.days;
  return foods.flatMap(({ food, name, left, gramsADay, runsOut, buyBy }): DayEntry[] => {
    const text = t.fileText(f.grams(left, 0), f.grams(gramsADay, 1));
    const entry = (step: string, title: string, from: Day, category: string) => ({
      uid: uidOf(`beside-${food}`, step),
      title,
      text,
      categories: [COMPANY, category],
      from,
      to: plusDays(from, 1),
    });
    return [
      entry('buy', t.fileBuy(name), buyBy, calendar.file.category.buy),
      entry('runs-out', t.fileRunsOut(name), runsOut, t.category),
    ];
  });
}

/** One entry for each check of what dries. @param times of the checks, UTC */
export function dryingEntries(
  run: { readonly id: string; readonly name: string },
  times: readonly Moment[],
): TimedEntry[] {
  const t = words().calendar.file;
  return times.map((at, i) => ({
    uid: uidOf(run.id, `check-${i + 1}`),
    title: t.check(run.name),
    text: t.checkText(i + 1, times.length),
    categories: [COMPANY, t.category.dry],
    at,
    minutes: CHECK_MINUTES,
  }));
}

/** What an entry is known by: from the ids of plan and step alone, so that a new file changes it and adds no other. */
export function uidOf(plan: string, step: string): string {
  return `${encodeURIComponent(clean(plan))}/${encodeURIComponent(clean(step))}@pouchful`;
}

/** Entries as a file, UTF-8. @throws RangeError where a time or a day is none, or an entry ends before it begins */
export function asIcs(entries: readonly (DayEntry | TimedEntry)[], options: IcsOptions): string {
  const stamp = instant(options.stamp, 'stamp');
  const language = words().figures.manner.language.toUpperCase();
  const calendar = ical({ prodId: { company: COMPANY, product: PRODUCT, language } });
  for (const entry of entries) {
    const made = calendar.createEvent(event(entry, stamp));
    // What it counts from is set by itself: the alarm's data are read without it.
    if (options.reminders) made.createAlarm(alarm('at' in entry)).relatesTo(ICalAlarmRelatesTo.start);
  }
  // RFC 5545, 3.4: the last line ends like every other.
  return `${calendar.toString()}\r\n`;
}

function event(entry: DayEntry | TimedEntry, stamp: Date): ICalEventData {
  const timed = 'at' in entry;
  const about = {
    id: entry.uid,
    stamp,
    // RFC 5545, 3.8.7.4: a later revision has the greater number. Minutes of the stamp grow by themselves.
    sequence: Math.floor(stamp.getTime() / 60_000),
    summary: clean(entry.title),
    description: clean(entry.text),
    categories: entry.categories.map((name) => ({ name: clean(name) })),
  };
  if (timed) {
    const field = `at ("${entry.title}")`;
    if (!(entry.minutes > 0))
      throw new RangeError(`minutes of "${entry.title}": ${entry.minutes} is not above 0`);
    const end = plusHours(entry.at, entry.minutes / 60, field);
    return { ...about, start: instant(entry.at, field), end: instant(end, field) };
  }
  const [start, end] = [midnight(entry.from, 'from'), midnight(entry.to, 'to')];
  if (end <= start)
    throw new RangeError(
      `to of "${entry.title}": ${entry.to} is not after ${entry.from}; name the first day after it`,
    );
  return {
    ...about,
    start,
    end,
    allDay: true,
    // Nobody is busy all day because something lies in the freezer.
    transparency: ICalEventTransparency.TRANSPARENT,
  };
}

function alarm(timed: boolean): ICalAlarmData {
  return {
    type: ICalAlarmType.display,
    triggerAfter: timed ? 0 : REMIND_HOUR * 3600,
  };
}

function entryTitle(step: PlannedStep, made: string): string {
  const title = stepTitle(step);
  return capital(step.supply === undefined ? words().calendar.file.entryOf(title, made) : title);
}

function entryText(step: PlannedStep, plan: KitchenPlan): string {
  const { goods, state, slack, critical } = step;
  const t = words().calendar.file;
  // A food of which there are several packs is named once.
  const foods = [...new Set(goods.map((g) => g.name))];
  return [
    ...(foods.length > 0 ? [t.forBatch(plan.input.name, foods.join(', '))] : []),
    ...(state === 'open' ? [t.beginBy(dayInWords(lastDay(plan, step), plan.start))] : []),
    critical ? t.setsPace : t.room(slack),
  ].join('\n');
}

/** A text as RFC 5545, 3.3.11 allows it: one kind of line break, no control characters but the tab, whole letters. */
export function clean(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(/\p{Cc}/gu, (c) => (c === '\n' || c === '\t' ? c : ''))
    .replace(/\p{Cs}/gu, '\uFFFD');
}
