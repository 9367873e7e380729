/** Layout of a picture that shows how far the sources agree: rows and an axis in the unit of the tagname, nothing drawn. */
import { nutrient, type Tag, type Unit } from '../../nutrition/nutrients.ts';
import type { Combined } from './combine.ts';
import { type FoodSource, knownBy } from './source.ts';

export interface PictureRow {
  /** Id of the source; absent for what they come to together. */
  readonly id?: string;
  readonly name: string;
  readonly value?: number;
  /** Between these lie 95 of 100 bags, were the source right: value -+ 1.96 sd, not below 0. */
  readonly low95?: number;
  readonly high95?: number;
  /** Guaranteed bounds. */
  readonly low?: number;
  readonly high?: number;
}

export interface Picture {
  readonly tag: Tag;
  readonly unit: Unit;
  /** Sources that say anything, in their order. */
  readonly rows: readonly PictureRow[];
  readonly combined?: PictureRow;
  /** Axis from and to, round numbers that hold every figure. */
  readonly domain: readonly [number, number];
  /** Round numbers along the axis, both ends among them. */
  readonly ticks: readonly number[];
}

const Z95 = 1.96;

/** Lays out the picture of one nutrient; undefined where no source says anything of it. */
export function pictureOf(
  tag: Tag,
  sources: readonly FoodSource[],
  combined: Combined | undefined,
  group: string | undefined,
): Picture | undefined {
  const known = new Map(knownBy(sources, tag, group).map((k) => [k.source, k]));
  const rows = sources.flatMap((source): PictureRow[] => {
    const k = known.get(source);
    const [low, high] = [source.low?.[tag], source.high?.[tag]];
    if (!k && low === undefined && high === undefined) return [];
    return [{ id: source.id, name: source.name, ...interval(k?.value, k?.sd), ...bounds(low, high) }];
  });
  if (rows.length === 0) return undefined;
  const together: PictureRow | undefined = combined && {
    name: 'together',
    ...interval(combined.value, combined.sd),
    ...bounds(combined.low, combined.high),
  };
  const figures = [...rows, ...(together ? [together] : [])].flatMap((row) =>
    [row.value, row.low95, row.high95, row.low, row.high].filter((v) => v !== undefined),
  );
  const { domain, ticks } = niceTicks(Math.min(...figures), Math.max(...figures));
  return {
    tag,
    unit: nutrient(tag).unit,
    rows,
    ...(together && { combined: together }),
    domain,
    ticks,
  };
}

function interval(value: number | undefined, sd: number | undefined) {
  if (value === undefined || sd === undefined) return {};
  return { value, low95: Math.max(0, value - Z95 * sd), high95: value + Z95 * sd };
}

function bounds(low: number | undefined, high: number | undefined) {
  return { ...(low !== undefined && { low }), ...(high !== undefined && { high }) };
}

/** Multiples of 1, 2 or 5 times a power of ten that enclose both, about five steps. */
function niceTicks(from: number, to: number): Pick<Picture, 'domain' | 'ticks'> {
  const room = to - from || Math.abs(to) || 1;
  const power = 10 ** Math.floor(Math.log10(room / 5));
  const step = power * ([1, 2, 5].find((m) => m * power * 5 >= room * (1 - 1e-9)) ?? 10);
  const first = Math.floor(from / step + 1e-9);
  const last = Math.max(first + 1, Math.ceil(to / step - 1e-9));
  const at = (k: number) => Number((k * step).toPrecision(12));
  return {
    domain: [at(first), at(last)],
    ticks: Array.from({ length: last - first + 1 }, (_, i) => at(first + i)),
  };
}
