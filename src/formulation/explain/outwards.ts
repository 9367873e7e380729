/**
 * A loosened bound rounded to so many significant digits, always to the looser side, so that what was worked out
 * still fits; never below 0.
 */
export function outwards(bound: number, end: 'min' | 'max', digits: number): number {
  const widened = end === 'max' ? bound * (1 + 1e-9) + 1e-9 : bound * (1 - 1e-9) - 1e-9;
  const magnitude = 10 ** (digits - 1 - Math.floor(Math.log10(Math.max(Math.abs(widened), 1e-9))));
  const rounded = end === 'max' ? Math.ceil(widened * magnitude) : Math.floor(widened * magnitude);
  return Math.max(0, Number((rounded / magnitude).toPrecision(12)));
}
