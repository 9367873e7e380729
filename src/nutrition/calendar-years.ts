/**
 * The years that a household can have to do with, for every day and moment that is kept. It lies in the lowest folder
 * so that all may use it.
 */

/** First and last year, both included. */
export const FIRST_YEAR = 1990;
export const LAST_YEAR = 2100;

/** Whether a day or moment as ISO 8601 writes it ("2026-03-14...") lies in those years. */
export function isInYears(text: string): boolean {
  const year = Number(text.slice(0, 4));
  return year >= FIRST_YEAR && year <= LAST_YEAR;
}
