/** Which way the calendar is planned: forwards from a day, or backwards from one. */
import type { BatchCalendar } from '../../household/reckon/calendar/batch-calendar.ts';
import { type FrameMode, withFrame } from '../../household/reckon/calendar/plan-frame.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { DayInput } from '../shared/DayInput.tsx';
import { Radios } from '../shared/Radios.tsx';
import { useKitchen } from '../store/kitchen.ts';

export function PlanFrame({ view, day }: { view: BatchCalendar; day: Day }) {
  const { change } = useKitchen();
  const { mode, next, present, plan } = view;
  const t = words().calendar.goBy;
  const runs = present?.runsOut;
  const set = (to: FrameMode, on: Day) => change({ next: withFrame(next, to, on) });
  const options: (readonly [FrameMode, string])[] = [
    ['today', t.today],
    ['from', t.from],
    ...(present && runs?.status === 'known'
      ? [['runs-out', t.runsOut(present.name, dayInWords(runs.day, day))] as const]
      : []),
    ['until', t.until],
  ];
  /** A new frame begins with a day that changes little. */
  const dayFor = (to: FrameMode): Day => (to === 'until' ? (plan.deadline ?? plan.end) : day);
  return (
    <section aria-label={t.section} className="cal-frame">
      <Radios label={t.question} value={mode} options={options} onChange={(to) => set(to, dayFor(to))} />
      <p className="hint">{mode === 'today' || mode === 'from' ? t.beginning : t.end}</p>
      {mode === 'from' && (
        <DayInput
          label={t.firstDay}
          value={next.from}
          onChange={(d) => d !== undefined && set('from', d)}
          {...(view.fromPassed && { error: t.fromPassed })}
        />
      )}
      {mode === 'until' && (
        <DayInput
          label={t.doneBy}
          value={next.until}
          onChange={(d) => d !== undefined && set('until', d)}
          {...(next.until !== undefined && next.until < day && { error: t.untilPassed })}
        />
      )}
    </section>
  );
}
