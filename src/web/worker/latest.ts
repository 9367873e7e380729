/**
 * Runs one request at a time and remembers only the newest that waits.
 * A request that was overtaken before it began answers `undefined`.
 */
export function latest<A extends unknown[], T>(
  run: (...args: A) => Promise<T>,
): (...args: A) => Promise<T | undefined> {
  let busy = false;
  let waiting: { args: A; settle: (value: Promise<T> | undefined) => void } | undefined;

  async function start(args: A): Promise<T> {
    busy = true;
    try {
      return await run(...args);
    } finally {
      busy = false;
      const next = waiting;
      waiting = undefined;
      if (next) next.settle(start(next.args));
    }
  }

  return (...args) => {
    if (!busy) return start(args);
    waiting?.settle(undefined);
    return new Promise((settle) => {
      waiting = { args, settle };
    });
  };
}
