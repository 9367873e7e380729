/** Letters of a name that one line of the page has room for. */
const LETTERS = 32;

/** A name as long as there is room for. */
export function clipped(name: string): string {
  return name.length > LETTERS ? `${name.slice(0, LETTERS - 1).trimEnd()}…` : name;
}
