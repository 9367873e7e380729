/**
 * How cold the centre of a body is while it cools from one even temperature in air of another: heat conduction with
 * a surface coefficient. The centre of a brick is the product of three slabs, that of a can a long cylinder times
 * a slab (Carslaw and Jaeger, Conduction of Heat in Solids, 1959; the slab's series as in Berk, Food Process
 * Engineering and Technology, eq. 3.40 and 3.41). Nothing freezes in it: see `cooling.ts`.
 */

/** Terms of a series. At `STILL` and later the twelfth is below 1e-10 of the first difference. */
const TERMS = 12;
/** Fourier number before which the centre has not yet felt the surface, to one part in 10,000. */
const STILL = 0.02;

/** One term: weight and root. */
type Series = readonly (readonly [weight: number, root: number])[];

/** What a body is made of and how air takes heat from it. SI units. */
interface Conducting {
  /** W/(m K) */
  readonly conductivity: number;
  /** m2/s */
  readonly diffusivity: number;
  /** W/(m2 K) */
  readonly surface: number;
}

/** The cooling of one side of a body: a slab by its thickness, a long cylinder by its diameter, m. */
export interface HalfExtent {
  readonly kind: 'slab' | 'cylinder';
  readonly metres: number;
}

/**
 * What is left of the first difference to the air at the centre, as a function of time in seconds: 1 at the start,
 * towards 0 later.
 */
export function centreOf(sides: readonly HalfExtent[], body: Conducting): (seconds: number) => number {
  const parts = sides.map(({ kind, metres }) => {
    const half = metres / 2;
    const biot = (body.surface * half) / body.conductivity;
    return { rate: body.diffusivity / half ** 2, series: kind === 'slab' ? slab(biot) : cylinder(biot) };
  });
  return (seconds) => parts.reduce((left, { rate, series }) => left * remaining(series, rate * seconds), 1);
}

/** Seconds until `left` of the difference (between 0 and 1) is left at the centre. */
export function secondsUntil(left: number, centre: (seconds: number) => number): number {
  let high = 3600;
  while (centre(high) > left) high *= 2;
  let low = 0;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (centre(middle) > left) low = middle;
    else high = middle;
  }
  return high;
}

function remaining(series: Series, fourier: number): number {
  if (fourier < STILL) return 1;
  let sum = 0;
  for (const [weight, root] of series) {
    const fade = Math.exp(-root * root * fourier);
    if (fade < 1e-18) break;
    sum += weight * fade;
  }
  return Math.min(1, sum);
}

/** Roots of z tan z = Bi, one in each (n pi, n pi + pi/2). */
function slab(biot: number): Series {
  return Array.from({ length: TERMS }, (_, n) => {
    const start = n * Math.PI;
    // Written without tan, which has no value at the end of the interval.
    const root = bisect((z) => z * Math.sin(z) - biot * Math.cos(z), start, start + Math.PI / 2);
    return [(2 * Math.sin(root)) / (root + Math.sin(root) * Math.cos(root)), root] as const;
  });
}

/** Roots of z J1(z) = Bi J0(z); they lie more than 2 apart, so steps of 0.2 miss none. */
function cylinder(biot: number): Series {
  const misses = (z: number) => z * bessel(1, z) - biot * bessel(0, z);
  const terms: [number, number][] = [];
  let before = misses(0);
  for (let n = 1; terms.length < TERMS; n++) {
    const here = misses(n * 0.2);
    const crossed = before * here <= 0;
    before = here;
    if (!crossed) continue;
    const root = bisect(misses, (n - 1) * 0.2, n * 0.2);
    const [j0, j1] = [bessel(0, root), bessel(1, root)];
    terms.push([(2 * j1) / (root * (j0 * j0 + j1 * j1)), root]);
  }
  return terms;
}

/**
 * Bessel function of the first kind by its integral, (1/pi) times that of cos(order t - z sin t) over 0 to pi. The
 * midpoint rule is exact to rounding here: the integrand is smooth and periodic, and 64 points exceed every z asked.
 */
function bessel(order: 0 | 1, z: number): number {
  const points = 64;
  let sum = 0;
  for (let i = 0; i < points; i++) {
    const t = ((i + 0.5) * Math.PI) / points;
    sum += Math.cos(order * t - z * Math.sin(t));
  }
  return sum / points;
}

function bisect(f: (z: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  const rising = f(high) > f(low);
  for (let i = 0; i < 48; i++) {
    const middle = (low + high) / 2;
    if (f(middle) > 0 === rising) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
