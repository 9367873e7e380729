import type { DayAt } from '../../src/kitchen/days.ts';

/** The calendar of a keeper somewhere: the day there at a moment. @param timeZone IANA name, "UTC" or "Asia/Tokyo" */
export function dayIn(timeZone: string): DayAt {
  // Sweden writes dates as ISO 8601 does.
  const format = new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short' });
  return (at) => format.format(new Date(at));
}

export const utcDay = dayIn('UTC');
