/** What was measured of one thing over several runs. */

export type Unit = 'ms' | 'times' | 'kB' | 'MB' | 'a second' | '%';

export interface Figure {
  readonly unit: Unit;
  readonly median: number;
  /** 5th and 95th percentile. */
  readonly low: number;
  readonly high: number;
  readonly p99: number;
  readonly runs: number;
}

/** @throws RangeError where nothing was measured */
export function figureOf(values: readonly number[], unit: Unit): Figure {
  const sorted = [...values].sort((a, b) => a - b);
  return {
    unit,
    median: percentile(sorted, 0.5),
    low: percentile(sorted, 0.05),
    high: percentile(sorted, 0.95),
    p99: percentile(sorted, 0.99),
    runs: sorted.length,
  };
}

/** How many times `over` is in `under`, run by run: what slows both alike falls out. Both in the order of the runs. */
export function ratioOf(over: readonly number[], under: readonly number[]): Figure {
  return figureOf(
    over.map((value, i) => value / (under[i] ?? Number.NaN)),
    'times',
  );
}

export function median(values: readonly number[]): number {
  return percentile(
    [...values].sort((a, b) => a - b),
    0.5,
  );
}

/** @param sorted rising @param part 0 to 1; between two values, on the line between them */
function percentile(sorted: readonly number[], part: number): number {
  const place = part * (sorted.length - 1);
  const below = sorted[Math.floor(place)];
  const above = sorted[Math.ceil(place)];
  if (below === undefined || above === undefined) throw new RangeError('nothing was measured');
  return below + (above - below) * (place - Math.floor(place));
}

/** The power p by which cost grows, cost ~ size^p: the least-squares line through the logarithms. */
export function powerOf(points: readonly (readonly [size: number, cost: number])[]): number {
  const logs = points.map(([size, cost]) => [Math.log(size), Math.log(cost)] as const);
  const mean = (of: 0 | 1) => logs.reduce((sum, l) => sum + l[of], 0) / logs.length;
  const [x, y] = [mean(0), mean(1)];
  const along = logs.reduce((sum, l) => sum + (l[0] - x) * (l[1] - y), 0);
  return along / logs.reduce((sum, l) => sum + (l[0] - x) ** 2, 0);
}
