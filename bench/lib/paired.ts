/** Timing of several ways to do the same, side by side in one process. */

/** One way: `work` alone is timed; `before` makes ready, `after` puts away. */
export interface Side<T = unknown> {
  before?(round: number): void;
  work(round: number): T;
  after?(answer: Awaited<T>): void | Promise<void>;
}

export interface Effort {
  /** Rounds that are run whatever they take. */
  readonly least: number;
  readonly most: number;
  /** No further round begins once all sides together took so long, ms. */
  readonly ms: number;
  /** Whether one round goes before, uncounted, to warm up: not where a round takes seconds. */
  readonly cold?: boolean;
}

export interface Paired<K extends string> {
  /** ms of each round, side by side in the same order. */
  readonly times: Readonly<Record<K, readonly number[]>>;
}

/**
 * Runs all sides in turn, round after round, and every other round the other way round: a machine that grows slower
 * meanwhile, or a heap that fills up, falls on all alike.
 * @param met is told what a side answered, so that the answers can be compared
 */
export async function paired<K extends string>(
  sides: Readonly<Record<K, Side>>,
  effort: Effort,
  met: (side: K, answer: unknown, round: number) => void = () => {},
): Promise<Paired<K>> {
  const names = Object.keys(sides) as K[];
  const times = Object.fromEntries(names.map((name) => [name, [] as number[]])) as Record<K, number[]>;
  let spent = 0;
  for (let round = effort.cold ? 0 : -1; round < effort.most; round++) {
    if (round >= effort.least && spent > effort.ms) break;
    for (const name of round % 2 === 0 ? names : [...names].reverse()) {
      const side = sides[name];
      side.before?.(round);
      const start = performance.now();
      let answer = side.work(round);
      // To wait for what is no promise would cost a turn of the event loop, which is no part of the work.
      if (answer instanceof Promise) answer = await answer;
      const ms = performance.now() - start;
      await side.after?.(answer);
      spent += ms;
      if (round < 0) continue;
      times[name].push(ms);
      met(name, answer, round);
    }
  }
  return { times };
}
