/** One picture of one animal: lanes on one axis of time, and the event that is looked at as a line through all of them. */
import { scaleLinear } from 'd3-scale';
import { useId, useMemo } from 'react';
import type { WeightStory } from '../../../care/weight/model.ts';
import type { LifeEvent, Lifeline } from '../../../household/reckon/care/lifeline.ts';
import { dayNumber } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { dayAt } from '../../shared/today.ts';
import { DayTicks } from '../timeline/DayTicks.tsx';
import { PointedPicture } from '../timeline/PointedPicture.tsx';
import { canGoOn, moved, type TimeWindow } from '../timeline/time-window.ts';
import { useWidth } from '../timeline/useWidth.ts';
import { marksOf, scaleOf } from '../weight/picture-view.ts';
import { LeftLane, MarksLane, SpansLane, TrialsLane, WeightLane } from './Lanes.tsx';
import { LifeKey } from './LifeKey.tsx';
import { lanesOf } from './lanes.ts';
import { eventsIn } from './life-view.ts';
import { eventWords, type Told } from './life-words.ts';

const LEFT = 44;
const RIGHT = 8;
const TOP = 4;
const FOOT = 22;

export function LifePicture(props: {
  life: Lifeline;
  story: WeightStory;
  window: TimeWindow;
  day: Day;
  chosen: LifeEvent | undefined;
  choose(id: string): void;
  show(window: TimeWindow): void;
  told: Told;
}) {
  const { life, story, window, day, chosen, told } = props;
  const { lifeline, figures: f } = words();
  const t = lifeline.picture;
  const [place, width] = useWidth<HTMLDivElement>();
  const clip = useId();
  const events = useMemo(() => eventsIn(life, window), [life, window]);
  const marks = useMemo(() => marksOf(story, window, dayAt), [story, window]);
  const lanes = useMemo(() => lanesOf(life, story, window, day), [life, story, window, day]);
  const [from, to] = [dayNumber(window.first), dayNumber(window.last) + 1];
  const x = scaleLinear([from, to], [LEFT, width - RIGHT]);
  const foot = TOP + lanes.height;
  const at = (e: LifeEvent) => x(dayNumber(e.on) + 0.5);
  const said = chosen ? `${f.day(chosen.on, day)}: ${eventWords(chosen, told)}` : '';
  const now = dayNumber(day) + 0.5;

  return (
    <div ref={place} className="life-picture">
      <PointedPicture
        label={t.choose}
        xs={events.map(at)}
        chosen={chosen && events.indexOf(chosen)}
        choose={(i) => {
          const event = events[i];
          if (event) props.choose(event.id);
        }}
        said={said || t.said(f.day(window.first, day), f.day(window.last, day), events.length)}
        move={(by) => {
          if (by < 0 || canGoOn(window, day)) props.show(moved(window, by, day));
        }}
      >
        <svg
          viewBox={`0 0 ${width} ${foot + FOOT}`}
          height={foot + FOOT}
          aria-hidden="true"
          className="timeline"
        >
          <clipPath id={clip}>
            <rect x={LEFT} y={0} width={Math.max(0, width - LEFT - RIGHT)} height={foot} />
          </clipPath>
          <DayTicks window={window} today={day} x={x} top={TOP} foot={foot} />
          {lanes.all.map((lane) => {
            const y = TOP + lane.top;
            const common = { lane, x, y, clip: `url(#${clip})` };
            return (
              <g key={lane.is}>
                <text className="lane-name" x={0} y={y + 12}>
                  {lifeline.lanes[lane.is]}
                </text>
                {lane.is === 'weight' && (
                  <WeightLane
                    {...common}
                    story={story}
                    marks={marks}
                    reach={scaleOf(marks, story.trend, window)}
                    window={window}
                  />
                )}
                {lane.is === 'left' && <LeftLane {...common} nights={life.left} window={window} />}
                {lane.is === 'note' && <MarksLane {...common} events={events} />}
                {lane.is === 'trial' && <TrialsLane {...common} events={events} />}
                {(lane.is === 'batch' || lane.is === 'pellet' || lane.is === 'condition') && (
                  <SpansLane {...common} />
                )}
              </g>
            );
          })}
          {now >= from && now <= to && window.span !== 'day' && (
            <line className="today-line" x1={x(now)} x2={x(now)} y1={0} y2={foot + 4} />
          )}
          {chosen && <line className="chosen-line" x1={at(chosen)} x2={at(chosen)} y1={0} y2={foot + 4} />}
        </svg>
      </PointedPicture>
      <LifeKey lanes={lanes} events={events} life={life} marks={marks} window={window} />
    </div>
  );
}
