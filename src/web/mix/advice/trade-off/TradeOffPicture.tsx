/** The best mixes of two goals as points on a line, each a button; the mix as it stands is a mark of its own shape. */

import { scaleLinear } from 'd3-scale';
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { words } from '../../../../words/words.ts';
import { pointWords, type TradeGoal, type TradePoint } from './trade-off.ts';

interface Props {
  pair: readonly [TradeGoal, TradeGoal];
  points: readonly TradePoint[];
  present: TradePoint | undefined;
  chosen: number | undefined;
  choose(index: number): void;
}

const LEFT = 46;
const RIGHT = 18;
const TOP = 14;
const BOTTOM = 30;

export function TradeOffPicture({ pair, points, present, chosen, choose }: Props) {
  const t = words().tradeOff.picture;
  const { number } = words().figures;
  const [frame, width] = useWidth();
  const buttons = useRef<(HTMLButtonElement | null)[]>([]);
  const height = Math.round(Math.min(340, Math.max(240, width * 0.6)));
  const all = present ? [...points, present] : points;
  const x = axis(
    all.map((p) => p.a),
    [LEFT, width - RIGHT],
  );
  const y = axis(
    all.map((p) => p.b),
    [height - BOTTOM, TOP],
  );
  const [across, up] = pair;
  const reachable = chosen ?? 0;

  function walk(event: KeyboardEvent, k: number) {
    // Along the line as it lies on the screen: right is right.
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last) return;
    const right = last.a >= first.a ? 1 : -1;
    const to = {
      ArrowRight: k + right,
      ArrowLeft: k - right,
      ArrowDown: k + 1,
      ArrowUp: k - 1,
      Home: 0,
      End: points.length - 1,
    }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    const next = Math.min(points.length - 1, Math.max(0, to));
    buttons.current[next]?.focus();
    choose(next);
  }

  return (
    <figure className="trade-picture">
      <p className="trade-axis">
        <span aria-hidden="true">↕ </span>
        {t.axis(up.axis, up.unit)}{' '}
        <strong>
          {up.better === 'more' ? '↑' : '↓'} {up.betterWord}
        </strong>
      </p>
      <div className="trade-frame" ref={frame} style={{ height }}>
        <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
          {x.ticks(width > 420 ? 6 : 4).map((tick) => (
            <g key={`x${tick}`}>
              <line className="trade-grid" x1={x(tick)} x2={x(tick)} y1={TOP} y2={height - BOTTOM} />
              <text x={x(tick)} y={height - 10} textAnchor="middle">
                {number(tick, 6)}
              </text>
            </g>
          ))}
          {y.ticks(5).map((tick) => (
            <g key={`y${tick}`}>
              <line className="trade-grid" x1={LEFT} x2={width - RIGHT} y1={y(tick)} y2={y(tick)} />
              <text x={LEFT - 8} y={y(tick) + 4} textAnchor="end">
                {number(tick, 6)}
              </text>
            </g>
          ))}
          <path className="trade-line" d={`M${points.map((p) => `${x(p.a)} ${y(p.b)}`).join(' L')}`} />
          {present && (
            <path
              className="trade-present"
              d={`M${x(present.a)} ${y(present.b) - 10} l10 10 -10 10 -10 -10 z`}
            />
          )}
        </svg>
        {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would draw a frame of its own about the picture */}
        <div role="group" aria-label={t.all}>
          {points.map((point, k) => (
            <button
              key={`${point.a} ${point.b}`}
              type="button"
              ref={(button) => {
                buttons.current[k] = button;
              }}
              className="trade-point"
              style={{ left: x(point.a), top: y(point.b) }}
              aria-label={t.mix(k + 1, points.length, pointWords(pair, point))}
              aria-pressed={k === chosen}
              tabIndex={k === reachable ? 0 : -1}
              onClick={() => choose(k)}
              onKeyDown={(event) => walk(event, k)}
            >
              <span aria-hidden="true" />
            </button>
          ))}
        </div>
      </div>
      <p className="trade-axis across">
        <span aria-hidden="true">↔ </span>
        {t.axis(across.axis, across.unit)}{' '}
        <strong>
          {across.better === 'more' ? '→' : '←'} {across.betterWord}
        </strong>
      </p>
      <figcaption className="hint">
        <span className="trade-key point" aria-hidden="true" /> {t.best}
        {present && (
          <>
            {' '}
            <span className="trade-key present" aria-hidden="true" /> {t.present(pointWords(pair, present))}
          </>
        )}
      </figcaption>
    </figure>
  );
}

function axis(values: readonly number[], range: readonly [number, number]) {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = 0.07 * (most - least || Math.abs(most) || 1);
  return scaleLinear([least >= 0 ? Math.max(0, least - room) : least - room, most + room], range);
}

/** The width that an element has on the screen, in pixels. */
function useWidth() {
  const element = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(340);
  useEffect(() => {
    const { current } = element;
    if (!current) return;
    const watch = new ResizeObserver(() => setWidth(Math.max(240, current.clientWidth)));
    watch.observe(current);
    return () => watch.disconnect();
  }, []);
  return [element, width] as const;
}
