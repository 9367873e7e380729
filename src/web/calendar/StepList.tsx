/** The plan as a list by day, with the step that is being moved opened in it. */
import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import { capital } from '../../formulation/explain/sentences.ts';
import type { Mix } from '../../household/model.ts';
import type { BatchCalendar } from '../../household/reckon/calendar/batch-calendar.ts';
import type { PlannedStep } from '../../kitchen/calendar/kitchen-plan.ts';
import { stepTitle } from '../../kitchen/calendar/step-words.ts';
import { dayNumber } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { MoveStep } from './MoveStep.tsx';
import { byDay, dayWithWeekday, isCritical, spanInWords, spanOf } from './view-model.ts';
import './steps.css';

interface Props {
  mix: Mix;
  view: BatchCalendar;
  day: Day;
  chosen: string | undefined;
  choose(step: string | undefined): void;
}

export function StepList({ mix, view, day, chosen, choose }: Props) {
  const { plan } = view;
  const t = words().calendar.list;
  /** Said beside the list: the step that was moved stands elsewhere in it now. */
  const [said, setSaid] = useState('');
  const done = plan.steps.filter((s) => s.state === 'done' && s.kind !== 'buy');
  useEffect(() => {
    if (chosen !== undefined) focusWhenThere('.cal-move h4');
  }, [chosen]);
  const item = (step: PlannedStep) => (
    <Item
      key={step.id}
      step={step}
      view={view}
      day={day}
      open={chosen === step.id}
      onOpen={() => {
        setSaid('');
        choose(chosen === step.id ? undefined : step.id);
      }}
    >
      {chosen === step.id && (
        <MoveStep
          mix={mix}
          view={view}
          step={step}
          day={day}
          said={said}
          onSaid={setSaid}
          onClose={() => {
            setSaid('');
            choose(undefined);
            focusWhenThere(`[data-step="${CSS.escape(step.id)}"] .cal-change`);
          }}
        />
      )}
    </Item>
  );
  return (
    <section className="cal-list" aria-label={t.section}>
      <h2 tabIndex={-1}>{t.title}</h2>
      {byDay(plan).map(({ day: on, steps }) => (
        <section key={on} aria-label={dayWithWeekday(on, day)}>
          <h3>{on === day ? t.today(dayWithWeekday(on, day)) : dayWithWeekday(on, day)}</h3>
          <ul>{steps.map(item)}</ul>
        </section>
      ))}
      {plan.deadline !== undefined && (
        <p className={plan.fits ? 'cal-deadline' : 'cal-deadline late'}>
          <span aria-hidden="true">{plan.fits ? '✓' : '!'}</span>{' '}
          {t.deadline(dayWithWeekday(plan.deadline, day))}
        </p>
      )}
      {done.length > 0 && (
        <details>
          <summary>{t.doneSoFar(done.length)}</summary>
          <ul>{done.map(item)}</ul>
        </details>
      )}
    </section>
  );
}

function Item(props: {
  step: PlannedStep;
  view: BatchCalendar;
  day: Day;
  open: boolean;
  onOpen(): void;
  children: React.ReactNode;
}) {
  const { step, view, day, open } = props;
  const { plan, next } = view;
  const t = words().calendar.list;
  const span = spanInWords(step, day);
  const [first, last] = spanOf(plan, day);
  const part = (d: number) => (100 * (Math.min(last, Math.max(first, d)) - first)) / (last - first);
  const left = part(dayNumber(step.start));
  const width = part(dayNumber(step.end)) - left;
  const critical = isCritical(plan, step);
  const title = stepTitle(step);
  const pinned = next.pins.some((p) => p.step === step.id);
  return (
    <li
      data-step={step.id}
      className={`cal-item ${step.kind}${critical ? ' critical' : ''}${open ? ' open' : ''}`}
    >
      <div className="cal-line">
        <span className="cal-words">
          <strong>{capital(title)}</strong>
          <small>{step.state === 'open' ? span : t[step.state](span)}</small>
          <span className="cal-tags">
            {critical && <span className="tag">{t.setsPace}</span>}
            {step.appointed && <span className="tag">{t.withPack}</span>}
            {pinned && <span className="tag">{t.yourDay}</span>}
          </span>
        </span>
        {step.state === 'open' && (
          <Button
            className="quiet-button small cal-change"
            aria-expanded={open}
            aria-label={open ? t.closeDay(title) : t.changeDay(title)}
            onPress={props.onOpen}
          >
            {open ? t.close : t.change}
          </Button>
        )}
      </div>
      <span className="cal-mini" aria-hidden="true">
        <i style={{ left: `${left}%`, width: `max(4px, ${width}%)` }} />
      </span>
      {props.children}
    </li>
  );
}
