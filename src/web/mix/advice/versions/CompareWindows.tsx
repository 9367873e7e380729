/** Ruled contents of two mixes: each in a lane of its own, over the window it must keep. */

import { scaleLinear } from 'd3-scale';
import { words } from '../../../../words/words.ts';
import { boundsText, figure } from '../../../shared/windows.ts';
import { CompareMark, CompareSign, type Of } from './CompareMark.tsx';
import type { RuleStanding, WindowRow } from './compare.ts';

const LANE = 24;
const LEFT = 4;
const RIGHT = 96;
const SIDES: readonly Of[] = ['a', 'b'];

export function CompareWindows({
  windows,
  names,
}: {
  windows: readonly WindowRow[];
  names: Record<Of, string>;
}) {
  const t = words().versions.comparison;
  if (windows.length === 0) return null;
  return (
    <section className="compare-windows" aria-label={t.windowsOf}>
      <h4>{t.ranges}</h4>
      <p className="hint">{t.rangesHint}</p>
      <ul>
        {windows.map((row) => (
          <Row key={row.key} row={row} names={names} />
        ))}
      </ul>
    </section>
  );
}

function Row({ row, names }: { row: WindowRow; names: Record<Of, string> }) {
  const t = words().versions.comparison;
  const { a, b } = row.at;
  const points = [a, b].flatMap((s) => [s.min, s.max, s.value]).filter((v) => v !== undefined);
  const [least, most] = [Math.min(...points), Math.max(...points)];
  const room = (most - least || Math.abs(most) || 1) * 0.3;
  const x = scaleLinear([Math.max(0, least - room), most + room], [LEFT, RIGHT]).clamp(true);
  return (
    <li className="compare-window" data-window={row.title}>
      <p>
        <strong>{row.title}</strong>{' '}
        <span className="window-bounds">
          {windowWords(row)} {row.unit}
          {row.on === 'mix' && ` ${t.mixOnly}`}
          {(a.unsure || b.unsure) && ` · ${t.missing}`}
        </span>
      </p>
      <svg width="100%" height={2 * LANE} aria-hidden="true">
        {SIDES.map((of, i) => (
          <Lane key={of} of={of} at={row.at[of]} x={x} top={i * LANE} />
        ))}
      </svg>
      <ul>
        {SIDES.map((of) => (
          <li key={of} className={`compare-standing ${row.at[of].state === 'out' ? 'out' : ''}`}>
            <CompareSign of={of} />
            <span className="sr-only">{t.named(names[of])}</span>
            <span className="compare-value">{valueWords(row.at[of])}</span>{' '}
            <span>{stateWords(row.at[of])}</span>
          </li>
        ))}
      </ul>
    </li>
  );
}

function Lane({ of, at, x, top }: { of: Of; at: RuleStanding; x(value: number): number; top: number }) {
  const { min, max, value } = at;
  const from = min === undefined ? 0 : x(min);
  const to = max === undefined ? 100 : x(max);
  const asked = min !== undefined || max !== undefined;
  return (
    <>
      {asked && (
        <rect
          className="band"
          x={`${from}%`}
          y={top + 1}
          width={`${Math.max(0.5, to - from)}%`}
          height={LANE - 2}
        />
      )}
      {[min, max].map(
        (bound, i) =>
          bound !== undefined && (
            <line
              key={i === 0 ? 'min' : 'max'}
              className="bound"
              x1={`${x(bound)}%`}
              x2={`${x(bound)}%`}
              y1={top + 1}
              y2={top + LANE - 1}
            />
          ),
      )}
      <line className="lane-line" x1="0%" x2="100%" y1={top + LANE / 2} y2={top + LANE / 2} />
      {value !== undefined && <CompareMark of={of} x={x(value)} y={top + LANE / 2} />}
    </>
  );
}

/** The window both have, or the one that has it; where they differ, both. */
export function windowWords({ at: { a, b } }: WindowRow): string {
  const said = (s: RuleStanding) => boundsText(s.min, s.max);
  if (a.state === 'unasked') return said(b);
  if (b.state === 'unasked' || said(a) === said(b)) return said(a);
  return words().versions.comparison.inSecond(said(a), said(b));
}

export function valueWords({ value, atLeast, state }: RuleStanding): string {
  const t = words().versions.comparison;
  if (value === undefined) return state === 'unasked' ? `${t.unknown},` : t.unknown;
  return `${atLeast ? '≥ ' : ''}${figure(value)}`;
}

/** "✓ in, 93 %": sign and word, so that colour is not needed. */
export function stateWords({ state, chance }: RuleStanding): string {
  const t = words().versions.comparison;
  if (state === 'unasked') return t.noRule;
  if (state === 'unknown') return '';
  const word = state === 'in' ? t.in : t.out;
  return chance === undefined ? word : t.withChance(word, chance * 100);
}
