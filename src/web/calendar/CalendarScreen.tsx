/** Calendar: from buying to the bowl, forwards or backwards. */
import { STEPS_IN_PRACTICE } from '../../kitchen/advice.ts';
import './calendar.css';

import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Mix } from '../../household/model.ts';
import { sizeOfNext } from '../../household/reckon/batch/next-batch.ts';
import type { BatchCalendar } from '../../household/reckon/calendar/batch-calendar.ts';
import {
  lotsWithoutDays,
  overdueFreezeSteps,
  readyFoods,
} from '../../household/reckon/calendar/plan-notices.ts';
import { shortTitle } from '../../household/reckon/calendar/step-changes.ts';
import { planSentences } from '../../kitchen/calendar/sentences.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { AnswerState } from '../shared/answer.tsx';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { useEachMinute } from '../shared/hooks/each-minute.ts';
import { useCalendar } from '../shared/hooks/useCalendar.ts';
import { FirstMix } from '../shared/mix/FirstMix.tsx';
import { MixChoice } from '../shared/mix/MixChoice.tsx';
import { linkTo } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { gramWords } from '../shared/words/gram-words.ts';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { DaysFields } from './DaysFields.tsx';
import { ExportPlan } from './ExportPlan.tsx';
import { PlanFrame } from './PlanFrame.tsx';
import { StepList } from './StepList.tsx';
import { Timeline } from './Timeline.tsx';

export function CalendarScreen() {
  useEachMinute();
  const { mix } = useMixDraft();
  if (!mix) return <FirstMix />;
  return (
    <main id="main" className="page cal-page">
      <h1>Calendar</h1>
      <MixChoice />
      <Calendar key={mix.id} kept={mix} day={today()} />
    </main>
  );
}

function Calendar({ kept, day }: { kept: Mix; day: Day }) {
  const { house } = useMixDraft();
  const { mix, view, fault } = useCalendar(kept, day);
  const [chosen, setChosen] = useState<string>();
  if (!view)
    return fault === undefined ? (
      <AnswerState working fault={undefined} />
    ) : (
      <p role="alert" className="field-error">
        {fault}
      </p>
    );
  if (view.plan.input.supplies.length === 0 && !view.weighing)
    return (
      <p>
        {mix.name} has no food with a share yet: <a href={linkTo('mix')}>give it some on Mix</a>, then there
        is something to plan.
      </p>
    );
  const { grams } = sizeOfNext(house, mix, view.under.chosenFor(mix.problem));
  const { plan } = view;
  return (
    <>
      <p className="hint">
        For {plan.input.name} of {mix.name}
        {grams !== undefined && `, ${gramWords(grams)}`}.{' '}
        <a href={linkTo('shopping')}>How much, and what to buy</a>
      </p>
      <section aria-label="The plan in short" className="cal-said">
        {planSentences(plan).map((s) => (
          <p key={s}>{s}</p>
        ))}
      </section>
      <Notices view={view} day={day} />
      <PlanFrame view={view} day={day} />
      <Timeline plan={plan} day={day} chosen={chosen} choose={setChosen} />
      <StepList mix={mix} view={view} day={day} chosen={chosen} choose={setChosen} />
      <Ready names={readyFoods(plan)} />
      <DaysFields />
      <ExportPlan view={view} />
      <p className="hint cal-foot">{STEPS_IN_PRACTICE}</p>
    </>
  );
}

/** What stands in the way, or was dropped, each with its way out. */
function Notices({ view, day }: { view: BatchCalendar; day: Day }) {
  const { house } = useMixDraft();
  const { change, error } = useKitchen();
  const { plan, dropped, next } = view;
  const late = overdueFreezeSteps(plan, day);
  const without = lotsWithoutDays(house, plan);
  const animals = view.present?.runsOut.status === 'unknown';
  return (
    <>
      {view.fromPassed && (
        <p className="notice-line">The first day you gave has passed, so the plan begins today.</p>
      )}
      {dropped.map((d) => (
        <p key={d} className="notice-line">
          {d}
        </p>
      ))}
      {late.map((s) => (
        <p key={s.id} className="notice-line">
          {s.goods.map((g) => g.name).join(', ')}: {shortTitle(s)} was over on {dayInWords(s.end, plan.end)}{' '}
          and is not ticked off; what follows will be later.{' '}
          <a href={linkTo('cupboard', 'cold')}>Tick it off</a>
        </p>
      ))}
      {without.length > 0 && (
        <p className="notice-line">
          {without.length === 1 ? `${without[0]} has` : `${without.length} lots have`} no days in the freezer
          yet; the days below do not know its room.{' '}
          <a href={linkTo('cupboard', 'cold')}>Plan the cold for the room there is</a>
        </p>
      )}
      {animals && (
        <p className="notice-line">
          <a href={linkTo('animals')}>Go to the animals</a> or{' '}
          <a href={linkTo('today')}>weigh what is left</a>.
        </p>
      )}
      {(next.pins.length > 0 || dropped.length > 0) && (
        <p>
          <Button
            className="button small"
            onPress={() => {
              change({ next: { ...next, pins: [] } });
              focusWhenThere('.cal-list h2');
            }}
          >
            Take back the days you chose
          </Button>
        </p>
      )}
      <Failed error={error} />
    </>
  );
}

function Ready({ names }: { names: readonly string[] }) {
  if (names.length === 0) return null;
  return (
    <section aria-label="Ready">
      <h2>Ready to weigh out</h2>
      <p>{names.join(', ')}.</p>
    </section>
  );
}
