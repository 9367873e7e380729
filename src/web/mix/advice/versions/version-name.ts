/** Names of kept versions. */
import { dayInWords } from '../../../../kitchen/days.ts';

/**
 * A name for a version kept on this day that no other has: "25 November 2026", then "25 November 2026 (2)".
 * @param day ISO 8601 date
 */
export function versionName(day: string, taken: readonly string[]): string {
  const name = dayInWords(day);
  let free = name;
  for (let n = 2; taken.includes(free); n++) free = `${name} (${n})`;
  return free;
}
