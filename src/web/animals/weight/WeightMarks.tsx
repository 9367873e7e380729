/** What the picture of weights is drawn of. Life's picture draws its lane of weights with the same. */
import type { ScaleLinear } from 'd3-scale';
import type { WeightRange } from '../../../care/figures/adult-weights.ts';
import type { WeightStory } from '../../../care/weight/model.ts';
import { dayNumber } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';
import { isIn, type TimeWindow } from '../timeline/time-window.ts';
import { trendPaths } from '../timeline/trend-paths.ts';
import type { Mark } from './picture-view.ts';

const DOT = 3.5;

type Scale = ScaleLinear<number, number>;

/** Weights at the side, and the weights of the kind behind. */
export function GramTicks(props: { y: Scale; range: WeightRange | undefined; left: number; right: number }) {
  const { y, range, left, right } = props;
  const { figures: f } = words();
  const [low = 0, high = 0] = y.domain();
  // Round figures in the keeper's own unit.
  const shown = y.copy().domain([f.mass(low), f.mass(high)]);
  return (
    <g>
      {range && range.high > low && range.low < high && (
        <>
          <rect
            className="weight-range"
            x={left}
            width={right - left}
            y={y(range.high)}
            height={Math.max(0, y(range.low) - y(range.high))}
          />
          {[range.low, range.high]
            .filter((edge) => edge > low && edge < high)
            .map((edge) => (
              <line key={edge} className="weight-range-edge" x1={left} x2={right} y1={y(edge)} y2={y(edge)} />
            ))}
        </>
      )}
      {shown.ticks(4).map((tick) => (
        <g key={tick}>
          <line className="axis-line" x1={left} x2={right} y1={shown(tick)} y2={shown(tick)} />
          <text x={left - 6} y={shown(tick) + 4} textAnchor="end">
            {f.grams(f.gramsOf(tick))}
          </text>
        </g>
      ))}
    </g>
  );
}

/** Trend, band, weighings and warnings. */
export function WeightMarks(props: {
  story: WeightStory;
  marks: readonly Mark[];
  window: TimeWindow;
  x: Scale;
  y: Scale;
  top: number;
}) {
  const { story, marks, window, x, y, top } = props;
  const { line, band } = trendPaths(story.trend, window, x, y);
  const [foot = 0] = y.range();
  return (
    <>
      <path className="trend-band" d={band} />
      <path className="trend-line" d={line} />
      {marks.map((m) =>
        m.unlikely ? (
          <circle key={m.id} className="weight-doubt" cx={x(m.at)} cy={y(m.low)} r={DOT + 1.5} />
        ) : m.count > 1 ? (
          <line key={m.id} className="weight-week" x1={x(m.at)} x2={x(m.at)} y1={y(m.low)} y2={y(m.high)} />
        ) : (
          <circle key={m.id} className="weight-dot" cx={x(m.at)} cy={y(m.low)} r={DOT} />
        ),
      )}
      {[...story.past, ...story.alerts]
        .filter((alert) => isIn(window, alert.on))
        .map((alert) => {
          const at = x(dayNumber(alert.on) + 0.5);
          return (
            <g key={`${alert.rule} ${alert.way} ${alert.on}`}>
              <line className="weight-alert-line" x1={at} x2={at} y1={top} y2={foot} />
              <path className="weight-alert" d={`M${at - 7} ${top - 14}h14l-7 12z`} />
            </g>
          );
        })}
    </>
  );
}
