/** A lot's steps of the freeze treatment with their days; the next one has a button to tick it off. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { dayInWords } from '../../kitchen/days.ts';
import { tickedStep } from '../../kitchen/freezing/freeze-treatment.ts';
import type { Day, Lot } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { today } from '../shared/today.ts';
import { useSave } from '../store/household.ts';

/** @param only the next step alone, where many lots stand below one another */
export function FreezeSteps({ lot, day, only }: { lot: Lot; day: Day; only?: 'next' }) {
  const t = words().cupboard.treatment;
  const save = useSave('lots');
  const [fault, setFault] = useState('');
  const next = lot.cold.findIndex((step) => step.doneOn === undefined);

  function tick(index: number) {
    try {
      // The page may have stood open overnight: the day is that of the press.
      save.mutate(tickedStep(lot, index, today()), lot);
      setFault('');
      // The button goes with its step; the keyboard goes on to the next.
      const next =
        index === lot.cold.length - 1
          ? '.lot-page h2, .cold-page h2'
          : `[data-lot="${CSS.escape(lot.id)}"] .next .button`;
      requestAnimationFrame(() => focusWhenThere(next));
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error));
    }
  }

  return (
    <>
      <ol className="cold-steps" data-lot={lot.id} aria-label={t.steps(lot.name)}>
        {lot.cold.map((step, i) => {
          const name = (step.kind === 'freeze' ? t.freeze : t.thaw)(Math.floor(i / 2) + 1);
          const done = step.doneOn !== undefined;
          if (only === 'next' && i !== next) return null;
          return (
            <li
              // biome-ignore lint/suspicious/noArrayIndexKey: the place of a step is what it is known by
              key={i}
              className={done ? 'done' : i === next ? 'next' : undefined}
            >
              <span aria-hidden="true" className="step-mark">
                {done ? '✓' : i + 1}
              </span>
              <span className="step-words">
                <strong>{name}</strong> {t.days(dayInWords(step.from, day), dayInWords(step.to, day))}
                {step.doneOn !== undefined && <small> {t.doneOn(dayInWords(step.doneOn, day))}</small>}
              </span>
              {i === next && (
                <Button
                  className="button small"
                  aria-label={t.tickOf(name, lot.name)}
                  onPress={() => tick(i)}
                >
                  {t.tick}
                </Button>
              )}
            </li>
          );
        })}
      </ol>
      <div aria-live="polite">
        {(fault || save.error) && <p className="field-error">{fault || save.error?.message}</p>}
      </div>
    </>
  );
}
