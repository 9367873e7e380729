/** Which way the calendar is planned: forwards from a day, or backwards from one. */
import type { BatchCalendar } from '../../household/reckon/calendar/batch-calendar.ts';
import { type FrameMode, withFrame } from '../../household/reckon/calendar/plan-frame.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { DayInput } from '../shared/DayInput.tsx';
import { Radios } from '../shared/Radios.tsx';
import { useKitchen } from '../store/kitchen.ts';

export function PlanFrame({ view, day }: { view: BatchCalendar; day: Day }) {
  const { change } = useKitchen();
  const { mode, next, present, plan } = view;
  const runs = present?.runsOut;
  const set = (to: FrameMode, on: Day) => change({ next: withFrame(next, to, on) });
  const options: (readonly [FrameMode, string])[] = [
    ['today', 'From today, each step as early as can be'],
    ['from', 'From another day, each step as early as can be'],
    ...(present && runs?.status === 'known'
      ? [
          [
            'runs-out',
            `To the day on which ${present.name} runs out, ${dayInWords(runs.day, day)}, each step as late as can be`,
          ] as const,
        ]
      : []),
    ['until', 'To another day, each step as late as can be'],
  ];
  /** A new frame begins with a day that changes little. */
  const dayFor = (to: FrameMode): Day => (to === 'until' ? (plan.deadline ?? plan.end) : day);
  return (
    <section aria-label="How it is planned" className="cal-frame">
      <Radios label="Plan" value={mode} options={options} onChange={(to) => set(to, dayFor(to))} />
      {mode === 'from' && (
        <DayInput
          label="First day"
          value={next.from}
          onChange={(d) => d !== undefined && set('from', d)}
          {...(view.fromPassed && { error: 'It has passed: today counts.' })}
        />
      )}
      {mode === 'until' && (
        <DayInput
          label="All done by"
          value={next.until}
          onChange={(d) => d !== undefined && set('until', d)}
          {...(next.until !== undefined &&
            next.until < day && { error: 'It has passed: give a later day, or plan from today.' })}
        />
      )}
    </section>
  );
}
