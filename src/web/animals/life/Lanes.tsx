/** What lies in each lane of the picture of a life. */
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import type { WeightStory } from '../../../care/weight/model.ts';
import type { LeftNight } from '../../../household/reckon/care/left-nights.ts';
import type { LifeEvent } from '../../../household/reckon/care/lifeline.ts';
import { dayNumber } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';
import type { TimeWindow } from '../timeline/time-window.ts';
import type { Mark } from '../weight/picture-view.ts';
import { GramTicks, WeightMarks } from '../weight/WeightMarks.tsx';
import { type Lane, NAME, ROW, TRIAL_ROW } from './lanes.ts';
import { leftBars } from './life-view.ts';
import { spanWords } from './life-words.ts';
import { ChangeMark, NoteMark, SeenMark } from './signs.tsx';

interface Common {
  lane: Lane;
  x: ScaleLinear<number, number>;
  /** px from the top of the picture to the top of the lane. */
  y: number;
  /** Keeps what is drawn within the axis. */
  clip: string;
}

/** Room above the weights for the marks of warnings. */
const ABOVE = 14;

export function WeightLane(
  props: Common & {
    story: WeightStory;
    marks: readonly Mark[];
    reach: readonly [number, number] | undefined;
    window: TimeWindow;
  },
) {
  const { lane, x, y, clip, story, marks, reach, window } = props;
  if (!reach) return null;
  const [left = 0, right = 0] = x.range();
  const [top, foot] = [y + NAME + ABOVE, y + lane.height - 10];
  const grams = scaleLinear(reach, [foot, top]).clamp(true);
  return (
    <>
      <GramTicks y={grams} range={undefined} left={left} right={right} />
      <g clipPath={clip}>
        <WeightMarks story={story} marks={marks} window={window} x={x} y={grams} top={top} />
      </g>
    </>
  );
}

/** What lasted, as bars with their names. */
export function SpansLane({ lane, x, y, clip }: Common) {
  return (
    <g clipPath={clip}>
      {lane.spans.map(({ span, start, end, open, row }, i) => {
        const [left, right] = [x(start), x(end)];
        const top = y + NAME + row * ROW;
        const { what } = span;
        const assumed = what.is === 'batch' && what.fed.assumed;
        const changed =
          what.is === 'batch' && (what.fed.change.kind === 'foods' || what.fed.change.kind === 'mix');
        const begins = start === dayNumber(span.from);
        return (
          <g key={span.id}>
            <rect
              className={`life-bar ${i % 2 === 0 ? 'even' : 'odd'} ${assumed ? 'assumed' : ''}`}
              x={left + 0.5}
              y={top}
              // An open end runs out of the picture or up to today without an edge.
              width={Math.max(1, right - left - 1 + (open ? 12 : 0))}
              height={ROW - 4}
              rx={3}
            />
            {changed && begins && <ChangeMark x={left + 8} y={top + ROW / 2 - 2} />}
            <svg
              x={left}
              y={top}
              width={Math.max(0, right - left - 3)}
              height={ROW - 4}
              overflow="hidden"
              aria-hidden="true"
            >
              <text className="life-name" x={changed && begins ? 17 : 5} y={14}>
                {spanWords(span)}
              </text>
            </svg>
          </g>
        );
      })}
    </g>
  );
}

/** New foods: each a line with its name above, and on it what was seen each time. */
export function TrialsLane({ lane, x, y, clip, events }: Common & { events: readonly LifeEvent[] }) {
  const [, edge = 0] = x.range();
  return (
    <g clipPath={clip}>
      {lane.spans.map(({ span, start, end, row }) => {
        if (span.what.is !== 'trial') return null;
        const { trial } = span.what;
        const top = y + NAME + row * TRIAL_ROW;
        const next = lane.spans.find((s) => s.row === row && s.start >= end);
        const room = (next ? x(next.start) : edge) - x(start) - 10;
        const offered = events.flatMap((e) =>
          e.what.is === 'offered' && e.id.startsWith(`offered ${trial.id} `)
            ? [{ on: e.on, seen: e.what.offering.seen }]
            : [],
        );
        return (
          <g key={span.id}>
            <svg
              x={x(start)}
              y={top}
              width={Math.max(0, room)}
              height={16}
              overflow="hidden"
              aria-hidden="true"
            >
              <text className="life-name" x={0} y={12}>
                {trial.name}
              </text>
            </svg>
            <line className="trial-line" x1={x(start)} x2={x(end)} y1={top + 24} y2={top + 24} />
            {offered.map(({ on, seen }) => (
              <SeenMark key={on} seen={seen} x={x(dayNumber(on) + 0.5)} y={top + 24} />
            ))}
          </g>
        );
      })}
    </g>
  );
}

/** Of what was offered the part that was left, 0 at the foot and all of it at the top. */
export function LeftLane(props: Common & { nights: readonly LeftNight[]; window: TimeWindow }) {
  const { lane, x, y, clip, nights, window } = props;
  const f = words().figures;
  const [left = 0, right = 0] = x.range();
  const [top, foot] = [y + NAME + 8, y + lane.height - 10];
  const part = scaleLinear([0, 1], [foot, top]);
  return (
    <>
      {[0, 0.5, 1].map((tick) => (
        <g key={tick}>
          <line className="axis-line" x1={left} x2={right} y1={part(tick)} y2={part(tick)} />
          <text x={left - 6} y={part(tick) + 4} textAnchor="end">
            {tick !== 0.5 && f.percent(tick * 100, 0)}
          </text>
        </g>
      ))}
      <g clipPath={clip}>
        {leftBars(nights, window).map((bar) => (
          <rect
            key={bar.start}
            className={bar.atLeast ? 'left-bar at-least' : 'left-bar'}
            x={x(bar.start) + 1}
            width={Math.max(1, x(bar.end) - x(bar.start) - 2)}
            y={part(bar.part) - 1}
            height={Math.max(1, foot - part(bar.part) + 1)}
          />
        ))}
      </g>
    </>
  );
}

export function MarksLane({ x, y, clip, events }: Common & { events: readonly LifeEvent[] }) {
  return (
    <g clipPath={clip}>
      {events.map((e) =>
        e.what.is === 'note' ? (
          <NoteMark key={e.id} kind={e.what.note.kind} x={x(dayNumber(e.on) + 0.5)} y={y + NAME + 9} />
        ) : null,
      )}
    </g>
  );
}
