/** What the marks of the picture mean; only those that are in it. */
import type { ReactNode } from 'react';
import type { WeightRange } from '../../../care/figures/adult-weights.ts';
import type { WeightStory } from '../../../care/weight/model.ts';
import { words } from '../../../words/words.ts';
import { isIn, type TimeWindow } from '../timeline/time-window.ts';
import type { Mark } from './picture-view.ts';

export function PictureKey(props: {
  story: WeightStory;
  marks: readonly Mark[];
  range: WeightRange | undefined;
  reach: readonly [number, number];
  weekly: boolean;
  window: TimeWindow;
}) {
  const { story, marks, range, reach, weekly, window } = props;
  const t = words().bodyWeight.picture.key;
  return (
    <p className="picture-key">
      {weekly && marks.some((m) => m.count > 1) ? (
        <Sign words={t.dots}>
          <line className="weight-week" x1={10} x2={10} y1={3} y2={11} />
        </Sign>
      ) : (
        <Sign words={t.dot}>
          <circle className="weight-dot" cx={10} cy={7} r={3.5} />
        </Sign>
      )}
      <Sign words={t.trend}>
        <rect className="trend-band" width={20} height={14} />
        <path className="trend-line" d="M0 7H20" />
      </Sign>
      {marks.some((m) => m.unlikely) && (
        <Sign words={t.unlikely}>
          <circle className="weight-doubt" cx={10} cy={7} r={5} />
        </Sign>
      )}
      {[...story.past, ...story.alerts].some((a) => isIn(window, a.on)) && (
        <Sign words={t.alert}>
          <path className="weight-alert" d="M3 1h14l-7 12z" />
        </Sign>
      )}
      {range && range.high > reach[0] && range.low < reach[1] && (
        <Sign words={t.range}>
          <rect className="weight-range" width={20} height={14} />
          <path className="weight-range-edge" d="M0 1H20M0 13H20" />
        </Sign>
      )}
    </p>
  );
}

function Sign({ words: said, children }: { words: string; children: ReactNode }) {
  return (
    <span>
      <svg viewBox="0 0 20 14" width="20" height="14" aria-hidden="true">
        {children}
      </svg>
      {said}
    </span>
  );
}
