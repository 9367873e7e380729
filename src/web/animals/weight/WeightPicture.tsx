/** Weights as a picture: dots, trend and band, what is doubtful, what to look into, and what its kind weighs. */
import { scaleLinear } from 'd3-scale';
import { useId, useMemo, useState } from 'react';
import { speciesKind } from '../../../care/animal/species.ts';
import { ADULT_WEIGHTS } from '../../../care/figures/adult-weights.ts';
import type { WeightStory } from '../../../care/weight/model.ts';
import type { Animal } from '../../../household/model.ts';
import { dayNumber } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { dayAt } from '../../shared/today.ts';
import { DayTicks } from '../timeline/DayTicks.tsx';
import { PointedPicture } from '../timeline/PointedPicture.tsx';
import { moved, windowUntil } from '../timeline/time-window.ts';
import { useWidth } from '../timeline/useWidth.ts';
import { WindowNav } from '../timeline/WindowNav.tsx';
import { PictureKey } from './PictureKey.tsx';
import { marksOf, scaleOf } from './picture-view.ts';
import { GramTicks, WeightMarks } from './WeightMarks.tsx';
import { WeightTable } from './WeightTable.tsx';
import { markWords } from './weight-words.ts';

const HEIGHT = 220;
const LEFT = 44;
const RIGHT = 8;
const TOP = 16;
const FOOT = 22;

export function WeightPicture({ animal, story, day }: { animal: Animal; story: WeightStory; day: Day }) {
  const { bodyWeight, figures: f } = words();
  const t = bodyWeight.picture;
  const [place, width] = useWidth<HTMLDivElement>();
  const [window, show] = useState(() => windowUntil('month', day));
  const [chosenId, choose] = useState<string>();
  const clip = useId();
  const marks = useMemo(() => marksOf(story, window, dayAt), [story, window]);
  const reach = scaleOf(marks, story.trend, window);
  const range = ADULT_WEIGHTS[speciesKind(animal.species)];
  const chosen = marks.findIndex((m) => m.id === chosenId);
  const mark = marks[chosen];
  const x = scaleLinear([dayNumber(window.first), dayNumber(window.last) + 1], [LEFT, width - RIGHT]);
  const y = scaleLinear(reach ?? [0, 1], [HEIGHT - FOOT, TOP]).clamp(true);
  const weekly = window.span === 'year';
  const said = mark ? markWords(mark, weekly, day) : '';

  const trend = story.trend.filter((p) => p.day >= window.first && p.day <= window.last);
  const [firstTrend, lastTrend] = [trend[0], trend.at(-1)];
  const whole =
    firstTrend && lastTrend
      ? t.said(
          f.day(window.first, day),
          f.day(window.last, day),
          firstTrend.grams,
          lastTrend.grams,
          marks.reduce((n, m) => n + m.count, 0),
        )
      : t.none;

  return (
    <section aria-label={t.title}>
      <h3>{t.title}</h3>
      <WindowNav
        spans={['month', 'quarter', 'year']}
        window={window}
        today={day}
        start={story.points[0]?.day}
        day={mark?.day}
        show={show}
      />
      <div ref={place}>
        {reach ? (
          <PointedPicture
            label={t.choose}
            xs={marks.map((m) => x(m.at))}
            chosen={chosen < 0 ? undefined : chosen}
            choose={(i) => choose(marks[i]?.id)}
            said={said || whole}
            move={(by) => show(moved(window, by, day))}
          >
            <svg viewBox={`0 0 ${width} ${HEIGHT}`} height={HEIGHT} aria-hidden="true" className="timeline">
              <clipPath id={clip}>
                <rect x={LEFT} y={0} width={Math.max(0, width - LEFT - RIGHT)} height={HEIGHT - FOOT} />
              </clipPath>
              <GramTicks y={y} range={range} left={LEFT} right={width - RIGHT} />
              <DayTicks window={window} today={day} x={x} top={TOP} foot={HEIGHT - FOOT} />
              <g clipPath={`url(#${clip})`}>
                <WeightMarks story={story} marks={marks} window={window} x={x} y={y} top={TOP} />
                {mark && (
                  <line className="chosen-line" x1={x(mark.at)} x2={x(mark.at)} y1={TOP} y2={HEIGHT - FOOT} />
                )}
              </g>
            </svg>
          </PointedPicture>
        ) : (
          <p className="empty">{t.none}</p>
        )}
      </div>
      <p className="chosen-words" aria-live="polite">
        {reach && (said || whole)}
      </p>
      {reach && (
        <PictureKey story={story} marks={marks} range={range} reach={reach} weekly={weekly} window={window} />
      )}
      {reach && <WeightTable marks={marks} weekly={weekly} day={day} />}
    </section>
  );
}
