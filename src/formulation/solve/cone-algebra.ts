/** Arithmetic of the second-order cone: vectors of a head and a tail no longer than it. */

import { dot } from './vectors.ts';

/** Nesterov and Todd's scaling W = eta (2 w w' - J)^(1/2), w on the unit hyperboloid. */
export interface Scaling {
  w: Float64Array;
  eta: number;
}

export function tailLength(v: Float64Array): number {
  let sum = 0;
  for (let i = 1; i < v.length; i++) sum += v[i]! * v[i]!;
  return Math.sqrt(sum);
}

/** v' J v, without the cancellation of a difference of squares. */
export function hyperbolic(v: Float64Array): number {
  const tail = tailLength(v);
  return Math.max((v[0]! - tail) * (v[0]! + tail), Number.MIN_VALUE);
}

/** W v. */
export function scaled({ w, eta }: Scaling, v: Float64Array): Float64Array {
  return hyperbolicTurn(w, 1, eta, v);
}

/** W^-1 v. */
export function unscaled({ w, eta }: Scaling, v: Float64Array): Float64Array {
  return hyperbolicTurn(w, -1, 1 / eta, v);
}

function hyperbolicTurn(w: Float64Array, sign: 1 | -1, by: number, v: Float64Array): Float64Array {
  let along = 0;
  for (let i = 1; i < v.length; i++) along += w[i]! * v[i]!;
  const out = new Float64Array(v.length);
  out[0] = by * (w[0]! * v[0]! + sign * along);
  const factor = sign * v[0]! + along / (1 + w[0]!);
  for (let i = 1; i < v.length; i++) out[i] = by * (v[i]! + factor * w[i]!);
  return out;
}

/** The cone's product u o v. */
export function jordan(u: Float64Array, v: Float64Array): Float64Array {
  const out = new Float64Array(u.length);
  out[0] = dot(u, v);
  for (let i = 1; i < u.length; i++) out[i] = u[0]! * v[i]! + v[0]! * u[i]!;
  return out;
}

/** The v with u o v = d. */
export function jordanInverse(u: Float64Array, d: Float64Array): Float64Array {
  const det = hyperbolic(u);
  let along = 0;
  for (let i = 1; i < u.length; i++) along += u[i]! * d[i]!;
  const out = new Float64Array(u.length);
  out[0] = (u[0]! * d[0]! - along) / det;
  for (let i = 1; i < u.length; i++) out[i] = (d[i]! - out[0]! * u[i]!) / u[0]!;
  return out;
}

/** How far v may go along d before it leaves the cone. */
export function coneReach(v: Float64Array, d: Float64Array): number {
  const a = d[0]! * d[0]! - tailLength(d) ** 2;
  let b = v[0]! * d[0]!;
  for (let i = 1; i < v.length; i++) b -= v[i]! * d[i]!;
  const c = hyperbolic(v);
  let reach = d[0]! < 0 ? -v[0]! / d[0]! : Number.POSITIVE_INFINITY;
  // The first root above 0 of a t^2 + 2 b t + c.
  const inner = b * b - a * c;
  if (inner >= 0) {
    const root = Math.sqrt(inner);
    const half = b < 0 ? -b + root : -b - root;
    for (const t of [half / a, c / half]) if (t > 0 && Number.isFinite(t)) reach = Math.min(reach, t);
  }
  return reach;
}
