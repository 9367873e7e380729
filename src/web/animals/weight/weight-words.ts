/** Sentences of the weight part: the last weighing, what is asked about, how often a warning is wrong. */
import type { WeightAlert, WeightStory } from '../../../care/weight/model.ts';
import { daysBetween, plusDays } from '../../../kitchen/days.ts';
import type { Day, Moment } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import type { Unlikely } from './pad-figures.ts';
import type { Mark } from './picture-view.ts';

/** "14:30" of the clock where the keeper is. */
export function timeOf(at: Moment): string {
  const time = new Date(at);
  return words().figures.clock(time.getHours(), time.getMinutes());
}

/** "3 March, 14:30". */
export function momentOf({ day, at }: { readonly day: Day; readonly at: Moment }, today: Day): string {
  const { figures: f, bodyWeight: t } = words();
  return t.moment(f.day(day, today), timeOf(at));
}

/** When it was weighed last, and what it was; what is doubtful left out. */
export function lastWords(name: string, story: WeightStory, today: Day): string {
  const { figures: f, bodyWeight } = words();
  const t = bodyWeight.last;
  const last = story.points.findLast((p) => !p.unlikely);
  if (!last) return t.none(name);
  if (last.day === today) return t.today(last.grams, timeOf(last.at));
  return last.day === plusDays(today, -1)
    ? t.yesterday(last.grams)
    : t.on(last.grams, f.day(last.day, today));
}

/** @param grams of the animal alone @param on the day of the weighing */
export function askWords(grams: number, why: Unlikely, on: Day): string {
  const { figures: f, bodyWeight } = words();
  const t = bodyWeight.ask;
  if (why.against === 'likely') return t.likely(grams, why.low, why.high);
  if (why.against === 'kind') return t.kind(grams, why.range.low, why.range.high);
  if (why.on === on) return t.today(grams, why.grams);
  return daysBetween(why.on, on) === 1
    ? t.yesterday(grams, why.grams)
    : t.on(grams, why.grams, f.day(why.on, on));
}

/** What changed, in one sentence. */
export function alertWords(name: string, { rule, way, percent }: WeightAlert): string {
  return words().bodyWeight.alerts[rule][way](name, percent);
}

/** How often a warning of its kind is wrong. @param aYear false alarms an animal and year */
export function falseAlarmWords(aYear: number): string {
  const t = words().bodyWeight.alerts;
  if (aYear < 0.001) return t.hardlyEver;
  return aYear > 0.5 ? t.timesAYear(aYear) : t.oneIn(rounded(1 / aYear));
}

/** To two digits: a rate found by simulation has no more. */
function rounded(n: number): number {
  return Number(n.toPrecision(2));
}

/** What a mark of the picture says. @param weekly it stands for a week */
export function markWords(mark: Mark, weekly: boolean, today: Day): string {
  const { figures: f, bodyWeight } = words();
  const t = bodyWeight.picture;
  const day = f.day(mark.day, today);
  const weighed = weekly && !mark.unlikely ? t.week(day, mark.low, mark.high) : t.at(day, mark.low);
  if (mark.unlikely) return `${weighed} ${t.unlikely}`;
  const { trend } = mark;
  return trend ? `${weighed} ${t.trend(trend.grams, trend.low, trend.high)}` : weighed;
}
