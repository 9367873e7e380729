/** Which stretch of time a picture shows, and the way to the one before and after. */
import { Button } from 'react-aria-components';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { Radios } from '../../shared/Radios.tsx';
import {
  canGoBack,
  canGoOn,
  moved,
  type Span,
  type TimeWindow,
  windowAround,
  windowUntil,
} from './time-window.ts';

export function WindowNav(props: {
  spans: readonly Span[];
  window: TimeWindow;
  today: Day;
  /** First day of which something is known. */
  start: Day | undefined;
  /** The day that is being looked at, if any: it stays in sight when another span is chosen. */
  day: Day | undefined;
  show(window: TimeWindow): void;
}) {
  const { window, today, show } = props;
  const { lifeline, figures: f } = words();
  const t = lifeline.time;
  const title =
    window.span === 'day'
      ? t.oneDay(f.weekday(window.first), f.day(window.first))
      : t.fromTo(f.day(window.first, window.last), f.day(window.last));
  return (
    <div className="window-nav">
      <Radios
        label={<span className="sr-only">{t.span}</span>}
        value={window.span}
        options={props.spans.map((span) => [span, t.spans[span]] as const)}
        onChange={(span) => {
          const at = props.day ?? (window.last === today ? undefined : window.last);
          show(at === undefined ? windowUntil(span, today) : windowAround(span, at, today));
        }}
      />
      <div className="window-move">
        <Button
          className="icon-button"
          aria-label={t.earlier}
          isDisabled={!canGoBack(window, props.start)}
          onPress={() => show(moved(window, -1, today))}
        >
          ‹
        </Button>
        <p aria-live="polite">{title}</p>
        <Button
          className="icon-button"
          aria-label={t.later}
          isDisabled={!canGoOn(window, today)}
          onPress={() => show(moved(window, 1, today))}
        >
          ›
        </Button>
      </div>
      {canGoOn(window, today) && (
        <Button className="quiet-button small" onPress={() => show(windowUntil(window.span, today))}>
          {t.toToday}
        </Button>
      )}
    </div>
  );
}
