/** Timing of work done side by side in one process. */
/** Does the work and adds its milliseconds to `into`. */
export function timed<T>(work: () => T, into: number[]): T {
  const start = performance.now();
  const result = work();
  into.push(performance.now() - start);
  return result;
}

export function median(list: readonly number[]): number {
  return [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)]!;
}
