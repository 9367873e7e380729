/** Times of the clock and spans of time, as people read them. */
import { dayInWords } from '../../../kitchen/days.ts';
import type { Moment } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { dayAt } from '../today.ts';

/** "14:30" in the keeper's own time, with the day where it is not that of `now`. */
export function clockOf(moment: Moment, now: number): string {
  const at = new Date(moment);
  const two = (n: number) => String(n).padStart(2, '0');
  const time = `${two(at.getHours())}:${two(at.getMinutes())}`;
  return dayAt(moment) === dayAt(now)
    ? time
    : words().shared.clock.on(time, dayInWords(dayAt(moment), dayAt(now)));
}

/** "1 h 12 min"; whole minutes, a begun one counts. @param ms 0 or more */
export function sayTime(ms: number): string {
  const minutes = Math.max(1, Math.ceil(ms / 60_000));
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  const t = words().shared.clock;
  if (hours === 0) return t.minutes(rest);
  return rest === 0 ? t.hours(hours) : t.both(hours, rest);
}
