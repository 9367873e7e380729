/** One step put on another day: a date, a day earlier or later, and what that does to the others. */
import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Mix } from '../../household/model.ts';
import type { BatchCalendar } from '../../household/reckon/calendar/batch-calendar.ts';
import { type MoveAnswer, moveStep } from '../../household/reckon/calendar/move-step.ts';
import type { PlannedStep } from '../../kitchen/calendar/kitchen-plan.ts';
import { lastDay } from '../../kitchen/calendar/sentences.ts';
import { dayInWords, isDay, plusDays } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { DayInput } from '../shared/DayInput.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { linkTo } from '../shared/route.ts';
import { useSave } from '../store/household.ts';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';

interface Props {
  mix: Mix;
  view: BatchCalendar;
  step: PlannedStep;
  day: Day;
  /** What the last move did. */
  said: string;
  onSaid(words: string): void;
  onClose(): void;
}

export function MoveStep({ mix, view, step, day, said, onSaid, onClose }: Props) {
  const { house } = useMixDraft();
  const { change, error } = useKitchen();
  const save = useSave('lots');
  const [refused, setRefused] = useState<Extract<MoveAnswer, { ok: false }>>();
  const [busy, setBusy] = useState(false);
  /** As typed: a day half written moves nothing. */
  const [typed, setTyped] = useState<Day | undefined>(step.start);
  useEffect(() => setTyped(step.start), [step.start]);

  async function move(to: Day | undefined, then = 'h4') {
    if (busy || to === undefined || !isDay(to) || to === step.start) return;
    const answer = moveStep(house, mix, view, step.id, to);
    if (!answer.ok) {
      onSaid('');
      setRefused(answer);
      return;
    }
    setRefused(undefined);
    if (answer.next) change({ next: answer.next });
    setBusy(true);
    try {
      await Promise.all(
        answer.lots.map((lot) =>
          save.mutateAsync(
            lot,
            house.lots.find((l) => l.id === lot.id),
          ),
        ),
      );
      onSaid(answer.sentence);
    } catch {
      onSaid(''); // `save.error` says why
    } finally {
      setBusy(false);
    }
    // The item stands elsewhere in the list now, so it was drawn anew.
    requestAnimationFrame(() => requestAnimationFrame(() => focusWhenThere(`.cal-move ${then}`)));
  }

  const t = words().calendar.move;
  const say = (d: Day) => dayInWords(d, day);
  const fault = error ?? save.error;
  const latest = lastDay(view.plan, step);
  return (
    <div className="cal-move">
      <h4 tabIndex={-1}>{t.begins(say(step.start))}</h4>
      <div aria-live="polite" className="cal-answer">
        {said && <p>{said}</p>}
        {refused && <p className="field-error">{refused.sentence}</p>}
        {fault && <p className="field-error">{fault.message}</p>}
      </div>
      {refused && (
        <div className="button-row">
          {refused.firstDay !== undefined && refused.firstDay !== step.start && (
            <Button className="button small" onPress={() => void move(refused.firstDay)}>
              {t.take(say(refused.firstDay))}
            </Button>
          )}
          {refused.room && <a href={linkTo('cupboard', 'cold')}>{t.seeFreezer}</a>}
        </div>
      )}
      <form
        className="cal-to"
        onSubmit={(e) => {
          e.preventDefault();
          void move(typed);
        }}
      >
        <DayInput label={t.anotherDay} value={typed} onChange={setTyped} />
        <Button type="submit" className="button small">
          {t.put}
        </Button>
      </form>
      <div className="button-row">
        <Button
          className="button small cal-earlier"
          onPress={() => void move(plusDays(step.start, -1), '.cal-earlier')}
        >
          {t.earlier}
        </Button>
        <Button
          className="button small cal-later"
          onPress={() => void move(plusDays(step.start, 1), '.cal-later')}
        >
          {t.later}
        </Button>
        <Button className="quiet-button small" onPress={onClose}>
          {t.done}
        </Button>
      </div>
      <p className="hint">
        {[
          ...(step.appointed ? [] : [t.from(say(step.earliest))]),
          ...(latest >= step.earliest ? [t.by(say(latest))] : []),
          ...(step.goods.length > 3 && step.supply !== undefined
            ? [t.with(step.goods.map((g) => g.name).join(', '))]
            : []),
        ].join(' ')}
      </p>
    </div>
  );
}
