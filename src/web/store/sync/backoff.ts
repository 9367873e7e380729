const FIRST_WAIT = 1000;
const LONGEST_WAIT = 15_000;

/**
 * How long to wait before a failed save is tried again, in ms: 1 s, doubled each time, 15 s at most (common practice).
 * @param failures how often it failed in a row, from 1
 */
export function backoff(failures: number): number {
  return Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** (failures - 1));
}
