/** The axis of time: a line for each day or hour that is named, and its name below. */
import type { ScaleLinear } from 'd3-scale';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { type TimeWindow, ticksOf } from './time-window.ts';

/** px that one name of a day takes; with the year it takes more. */
const NAME = 92;
const NAME_WITH_YEAR = 128;

export function DayTicks(props: {
  window: TimeWindow;
  today: Day;
  x: ScaleLinear<number, number>;
  top: number;
  foot: number;
}) {
  const { window, today, x, top, foot } = props;
  const f = words().figures;
  const [left = 0, right = 0] = x.range();
  const otherYear = window.span !== 'day' && window.first.slice(0, 4) !== today.slice(0, 4);
  const most = Math.floor((right - left) / (otherYear ? NAME_WITH_YEAR : NAME));
  return ticksOf(window, Math.max(2, most)).map((tick) => {
    const at = x(tick.at);
    const atEdge = at + NAME * 0.8 > right;
    return (
      <g key={tick.at}>
        <line className="axis-line" x1={at} x2={at} y1={top} y2={foot + 4} />
        <text
          x={atEdge ? Math.min(at + NAME / 2, right) : at + 2}
          y={foot + 16}
          textAnchor={atEdge ? 'end' : 'start'}
        >
          {tick.day === undefined ? f.clock(tick.hour ?? 0, 0) : f.day(tick.day, today)}
        </text>
      </g>
    );
  });
}
