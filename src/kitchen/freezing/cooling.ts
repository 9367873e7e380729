/**
 * How long the core of a bag of dry goods takes to cool in a freezer. Heat conduction only (`conduction.ts`): at 4 to
 * 15 % moisture the water is bound and next to none of it freezes, so no heat of freezing is reckoned with (from
 * memory).
 */

import { centreOf, type HalfExtent, secondsUntil } from './conduction.ts';
import goodsFile from './goods.json' with { type: 'json' };

/** Lowest, middle and highest of a figure that is not known exactly. */
export interface Estimate {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

type Triple = readonly [low: number, mid: number, high: number];

/** Thermal figures of a kind of dry good, each as low, middle, high. */
interface ThermalFigures {
  readonly name: string;
  /** W/(m K), in bulk */
  readonly conductivity: Triple;
  /** J/(kg K) */
  readonly heatCapacity: Triple;
  /** kg/m3, in bulk; the same number is g per litre */
  readonly density: Triple;
  readonly source: string;
}

/** Kinds of dry goods by how they cool. */
export type GoodKind = 'flour' | 'grain' | 'legume' | 'seed' | 'vegetable' | 'leaf';

/** Thermal figures by kind, each with its source. */
export const GOODS = goodsFile as unknown as Readonly<Record<GoodKind, ThermalFigures>>;

/**
 * A bag and its form, metres. "packet": only the weight is known; it is taken as a brick of 5 : 3 : 2, thicker than
 * a bag that lies flat (common practice, no source). `stack`: how many lie across, along and above one another,
 * touching: a stack is a bigger brick. `grams` of one bag gives its density; without it that of the good is used.
 */
export type Bag = { readonly grams?: number; readonly stack?: readonly [number, number, number] } & (
  | { readonly shape: 'packet'; readonly grams: number }
  | { readonly shape: 'brick'; readonly metres: readonly [length: number, width: number, height: number] }
  | { readonly shape: 'slab'; readonly thickness: number }
  | { readonly shape: 'cylinder'; readonly diameter: number; readonly height: number }
);

/**
 * Surface coefficients, W/(m2 K). Still air with radiation is 1/0.13 = 7.7 in ISO 6946; 6.6 was measured on a wall
 * (Energies 2021, 14, 5953: 1.15 and 5.45). Less in the cold, and the wrapping and the shelf insulate: 5 to 10; with
 * a fan 10 to 25 (both from memory).
 */
const SURFACE = { still: [5, 7, 10], fan: [10, 15, 25] } as const satisfies Record<string, Triple>;

/** Where a bag cools. */
export interface Cooling {
  readonly good: GoodKind;
  readonly bag: Bag;
  /** Air in the freezer, °C. */
  readonly air: number;
  /** The bag when it goes in, °C; a range where it is not known. 20 (18 to 25) where not given. */
  readonly start?: number | Triple;
  readonly surface?: keyof typeof SURFACE;
}

const ROOM: Triple = [18, 20, 25];

const DAY = 86_400;

/**
 * Days until the centre of the bag is at `celsius`. `low` and `high` take every doubtful figure at the end that
 * makes it cool fastest and slowest.
 * @throws RangeError when the air is not colder than `celsius`, the bag is not warmer, or a size is not above 0
 */
export function coreCoolingDays(cooling: Cooling, celsius: number): Estimate {
  return daysTo(celsius, cooling, casesOf(cooling));
}

/**
 * Temperature of the centre after `days`, °C.
 * @throws RangeError when a size is not above 0
 */
export function coreCelsius(cooling: Cooling, days: number): Estimate {
  const { air } = cooling;
  return rangeOf(casesOf(cooling), ({ centre, start }) => air + (start - air) * centre(days * DAY));
}

/** One set of figures: the bag's temperature when it goes in, and what time leaves of the difference to the air. */
interface Case {
  readonly start: number;
  readonly centre: (seconds: number) => number;
}

interface Cases {
  readonly fast: readonly Case[];
  readonly mid: Case;
  readonly slow: readonly Case[];
}

/** The figures of a bag at their fast, middle and slow ends. */
export function casesOf(cooling: Cooling): Cases {
  const { conductivity: k, heatCapacity: c, density: d } = GOODS[cooling.good];
  const h = SURFACE[cooling.surface ?? 'still'];
  const from = startOf(cooling);
  const one = (
    conductivity: number,
    heatCapacity: number,
    density: number,
    surface: number,
    start: number,
  ) => {
    const packed = sidesOf(cooling.bag, density);
    const diffusivity = conductivity / (heatCapacity * packed.density);
    return { start, centre: centreOf(packed.sides, { conductivity, surface, diffusivity }) };
  };
  // A denser good stores more heat but makes a smaller packet: both ends are tried.
  const ends = [d[0], d[2]];
  return {
    fast: ends.map((density) => one(k[2], c[0], density, h[2], from[0])),
    mid: one(k[1], c[1], d[1], h[1], from[1]),
    slow: ends.map((density) => one(k[0], c[2], density, h[0], from[2])),
  };
}

function rangeOf(cases: Cases, answer: (one: Case) => number): Estimate {
  return {
    low: Math.min(...cases.fast.map(answer)),
    mid: answer(cases.mid),
    high: Math.max(...cases.slow.map(answer)),
  };
}

/** Days until the core is at `celsius`. @throws RangeError as {@link coreCoolingDays} */
export function daysTo(celsius: number, cooling: Cooling, cases: Cases): Estimate {
  const { air } = cooling;
  const coolest = startOf(cooling)[0];
  if (!(celsius > air))
    throw new RangeError(
      `The core cannot reach ${celsius} °C in air of ${air} °C: ask for a temperature above that of the air.`,
    );
  if (!(coolest > celsius))
    throw new RangeError(
      `The bag starts at ${coolest} °C and is not warmer than ${celsius} °C: give the temperature it has when it goes in.`,
    );
  return rangeOf(cases, ({ centre, start }) => secondsUntil((celsius - air) / (start - air), centre) / DAY);
}

function startOf({ start = ROOM }: Cooling): Triple {
  return typeof start === 'number' ? [start, start, start] : start;
}

function sidesOf(bag: Bag, density: number): { sides: HalfExtent[]; density: number } {
  const grams = bag.grams === undefined ? undefined : positive(bag.grams, 'grams');
  const times: NonNullable<Bag['stack']> = bag.stack ?? [1, 1, 1];
  for (const n of times) positive(n, 'stack');
  const slab = (metres: number, side: 0 | 1 | 2): HalfExtent => ({
    kind: 'slab',
    metres: positive(metres, 'metres') * times[side],
  });
  if (bag.shape === 'packet') {
    const unit = (grams! / 1000 / density / 30) ** (1 / 3);
    return { sides: [slab(5 * unit, 0), slab(3 * unit, 1), slab(2 * unit, 2)], density };
  }
  if (bag.shape === 'slab') return { sides: [slab(bag.thickness, 2)], density };
  const packed = (litres: number) => (grams === undefined ? density : grams / 1000 / litres);
  if (bag.shape === 'brick') {
    const [length, width, height] = bag.metres;
    return {
      sides: [slab(length, 0), slab(width, 1), slab(height, 2)],
      density: packed(length * width * height),
    };
  }
  if (times[0] !== 1 || times[1] !== 1)
    throw new RangeError(
      'Cylinders are stacked upright only: write the stack as [1, 1, n], or give a brick.',
    );
  const diameter = positive(bag.diameter, 'diameter');
  return {
    sides: [{ kind: 'cylinder', metres: diameter }, slab(bag.height, 2)],
    density: packed((Math.PI / 4) * diameter ** 2 * bag.height),
  };
}

function positive(value: number, what: string): number {
  if (!(value > 0 && Number.isFinite(value)))
    throw new RangeError(`${what} of the bag is ${value}: give a number above 0.`);
  return value;
}
