/**
 * Arithmetic of calendar days (ISO 8601, "2026-03-14") and of moments (UTC, "2026-03-14T09:30:00Z"): no clock, no time
 * zones, no daylight saving.
 */
import { words } from '../words/words.ts';
import type { Day, Moment } from './model.ts';

/**
 * The day on the keeper's own calendar at some moment. A moment is kept in UTC, so its text names the wrong day for an
 * evening in America or a morning in Asia; only who knows where the keeper is can say the day, and passes this in.
 */
export type DayAt = (at: Moment) => Day;

const DAY_MS = 86_400_000;
const HOUR_MS = 3_600_000;
const SHAPE = /^\d{4}-\d{2}-\d{2}$/;
const MONTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
/** The calendar comes back after so many years, of so many days. */
const CYCLE = { years: 400, days: 146_097 };

/** Whether a text is a day that the calendar has. */
export function isDay(text: string): text is Day {
  return !Number.isNaN(numberOf(text));
}

/** Days since 1 January 1970; NaN of what is no day. By hand, for ten years of records ask for it by the hundred thousand. */
function numberOf(text: string): number {
  if (!SHAPE.test(text)) return Number.NaN;
  const two = (at: number) => 10 * text.charCodeAt(at) + text.charCodeAt(at + 1) - 11 * ZERO;
  const [year, month, date] = [100 * two(0) + two(2), two(5), two(8)];
  const leap = month === 2 && year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  if (date < 1 || date > (MONTHS[month - 1] ?? 0) + (leap ? 1 : 0)) return Number.NaN;
  // `Date.UTC` would read the years 0 to 99 as 1900 to 1999.
  return Date.UTC(year + CYCLE.years, month - 1, date) / DAY_MS - CYCLE.days;
}

const ZERO = '0'.charCodeAt(0);

/**
 * Days since 1 January 1970, whole.
 * @param field named in the error @throws RangeError where the text is no day
 */
export function dayNumber(day: Day, field = 'day'): number {
  const number = numberOf(day);
  if (Number.isNaN(number)) throw new RangeError(`${field}: "${day}" is no day; write it as 2026-03-14`);
  return number;
}

/** The day so many days after 1 January 1970. @throws RangeError outside the years 0 to 9999 */
export function dayOf(number: number): Day {
  const date = new Date(number * DAY_MS);
  const year = date.getUTCFullYear();
  if (!Number.isInteger(number) || !(year >= 0 && year <= 9999))
    throw new RangeError(`day: ${number} days from 1 January 1970 is no day of the years 0 to 9999`);
  const two = (n: number) => (n < 10 ? `0${n}` : `${n}`);
  return `${String(year).padStart(4, '0')}-${two(date.getUTCMonth() + 1)}-${two(date.getUTCDate())}`;
}

/** The day so many days later (earlier where negative). */
export function plusDays(day: Day, days: number): Day {
  return dayOf(dayNumber(day) + days);
}

/** The day some months later; the last of the month where that month is shorter. */
export function plusMonths(day: Day, months: number): Day {
  const firstOf = (later: number) => {
    // `Date.UTC` would read the years 0 to 99 as 1900 to 1999.
    const date = midnight(`${day.slice(0, 8)}01`);
    date.setUTCMonth(date.getUTCMonth() + later);
    return date.getTime() / DAY_MS;
  };
  const date = dayNumber(day) - firstOf(0);
  return dayOf(Math.min(firstOf(months) + date, firstOf(months + 1) - 1));
}

/** Days from one to another; negative where the other lies before. */
export function daysBetween(from: Day, to: Day): number {
  return dayNumber(to) - dayNumber(from);
}

/** "14 March"; with the year where it is not that of `beside`, or where none is given. */
export function dayInWords(day: Day, beside?: Day): string {
  dayNumber(day);
  return words().figures.day(day, beside);
}

/** "1 day", "3 days". */
export function countOfDays(days: number): string {
  return words().common.days(days);
}

/** The first moment of a day in UTC. @param field named in the error @throws RangeError where the text is no day */
export function midnight(day: Day, field = 'day'): Date {
  return new Date(dayNumber(day, field) * DAY_MS);
}

/** A moment as a date of the language. @param field named in the error @throws RangeError where the text is no time */
export function instant(moment: Moment, field: string): Date {
  const date = new Date(moment);
  if (!/T.*(Z|[+-]\d{2}:\d{2})$/.test(moment) || Number.isNaN(date.getTime()))
    throw new RangeError(`${field}: "${moment}" is no time; write it in UTC as 2026-03-14T09:30:00Z`);
  return date;
}

/** The moment so many hours later. @param field named in the error @throws RangeError where the text is no time */
export function plusHours(moment: Moment, hours: number, field = 'time'): Moment {
  return new Date(Math.round(instant(moment, field).getTime() + hours * HOUR_MS)).toISOString();
}
