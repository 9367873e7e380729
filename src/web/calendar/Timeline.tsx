/**
 * The plan as a picture: a row for each supply, a bar for each step, today and the day by which all has to be done.
 * The list below it says the same; the picture is for the eye and the mouse.
 */
import { scaleLinear } from 'd3-scale';
import type { KitchenPlan, PlannedStep } from '../../kitchen/calendar/kitchen-plan.ts';
import { dayInWords, dayNumber, dayOf } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { isCritical, rowsOf, shortTitle, spanOf } from './view-model.ts';

/** Days between two lines: weeks, so many that their names have room. */
const MOST_LINES = 7;

interface Props {
  plan: KitchenPlan;
  day: Day;
  chosen: string | undefined;
  choose(step: string): void;
}

export function Timeline({ plan, day, chosen, choose }: Props) {
  const [first, last] = spanOf(plan, day);
  const x = scaleLinear([first, last], [0, 100]);
  const weeks = Math.ceil((last - first) / 7 / MOST_LINES);
  const lines = Array.from(
    { length: Math.ceil((last - first) / (7 * weeks)) },
    (_, i) => first + i * 7 * weeks,
  );
  const shown = (d: number) => d >= first && d <= last;
  const due = plan.deadline === undefined ? undefined : dayNumber(plan.deadline);
  const now = dayNumber(day);
  return (
    <div className="cal-timeline" aria-hidden="true">
      <div className="cal-head">
        <span />
        <div className="cal-days">
          {lines.map((d) => (
            <span key={d} style={{ left: `${x(d)}%` }}>
              {dayInWords(dayOf(d), day).replace(/([A-Z][a-z]{2})[a-z]+/, '$1')}
            </span>
          ))}
        </div>
      </div>
      {rowsOf(plan).map((row) => (
        <div key={row.id} className="cal-row">
          <span className="cal-name">{row.title}</span>
          <div className="cal-track">
            {lines.map((d) => (
              <i key={d} className="cal-week" style={{ left: `${x(d)}%` }} />
            ))}
            {shown(now) && <i className="cal-today" style={{ left: `${x(now)}%` }} />}
            {due !== undefined && shown(due) && <i className="cal-due" style={{ left: `${x(due)}%` }} />}
            {row.bars.map((s) => (
              <Bar
                key={s.id}
                step={s}
                from={x(Math.max(first, dayNumber(s.start)))}
                to={x(Math.min(last, dayNumber(s.end)))}
                hidden={dayNumber(s.end) < first || (s.state === 'done' && dayNumber(s.end) === first)}
                critical={isCritical(plan, s)}
                alone={row.bars.length === 1}
                chosen={chosen === s.id}
                choose={choose}
              />
            ))}
          </div>
        </div>
      ))}
      <p className="cal-key">
        <span>
          <b className="cal-mark">◆</b> on the critical path
        </span>
        <span>
          <b>▾</b> buy
        </span>
        <span>
          <b>✓</b> done
        </span>
        <span>
          <i className="cal-key-today" /> today
        </span>
        {due !== undefined && (
          <span>
            <i className="cal-key-due" /> {dayInWords(plan.deadline!, day)}, by when all has to be done
          </span>
        )}
      </p>
    </div>
  );
}

/** Percent of the width for a word in a bar; a narrower bar has its word behind it. */
const WORD_ROOM = 8;

function Bar(props: {
  step: PlannedStep;
  from: number;
  to: number;
  hidden: boolean;
  critical: boolean;
  /** The only one of its row. */
  alone: boolean;
  chosen: boolean;
  choose(step: string): void;
}) {
  const { step, from, to, critical, chosen, choose } = props;
  if (props.hidden) return null;
  const buy = step.kind === 'buy' && step.days === 0;
  const width = to - from;
  const words = buy ? '▾' : `${step.state === 'done' ? '✓ ' : ''}${shortTitle(step)}`;
  const outside = !buy && width < WORD_ROOM;
  return (
    <button
      type="button"
      tabIndex={-1}
      className={`cal-bar ${step.kind} ${step.state}${critical ? ' critical' : ''}${chosen ? ' chosen' : ''}${buy ? ' point' : ''}${outside ? ' outside' : ''}`}
      style={buy ? { left: `${from}%` } : { left: `${from}%`, width: `${width}%` }}
      title={shortTitle(step)}
      disabled={step.state !== 'open'}
      onClick={() => choose(step.id)}
    >
      <span>
        {words}
        {buy && props.alone && <small>buy</small>}
      </span>
    </button>
  );
}
