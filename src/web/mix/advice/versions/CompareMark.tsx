/** The marks of two mixes side by side: the first an open ring, the second a filled diamond, none a cross. */

export type Of = 'a' | 'b';

/** @param x percent of the picture's width */
export function CompareMark({ of, x, y, none = false }: { of: Of; x: number; y: number; none?: boolean }) {
  return (
    <svg x={`${x}%`} y={y} className={`compare-mark ${none ? 'none' : of}`} aria-hidden="true">
      {none ? (
        <path d="M-4 -4 L4 4 M-4 4 L4 -4" />
      ) : of === 'a' ? (
        <circle r={5.5} />
      ) : (
        <path d="M0 -7.5 L7.5 0 L0 7.5 L-7.5 0 Z" />
      )}
    </svg>
  );
}

/** The mark in a line of words. */
export function CompareSign({ of }: { of: Of }) {
  return (
    <svg className="compare-sign" width="18" height="18" aria-hidden="true">
      <CompareMark of={of} x={50} y={9} />
    </svg>
  );
}
