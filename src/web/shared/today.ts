/** Days where the keeper is, ISO 8601: the date on the kitchen calendar, not that of Greenwich. */

/** @param at ISO 8601 time, or ms since 1970 */
export function dayAt(at: string | number): string {
  const date = new Date(at);
  const two = (n: number) => (n < 10 ? `0${n}` : `${n}`);
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

export function today(): string {
  return dayAt(Date.now());
}
