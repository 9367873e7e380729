/** The keeper's choice to weigh a lot out before the freeze treatment is done: takes a reason, is kept, and can be taken back. */
import { type FormEvent, useState } from 'react';
import { dayInWords } from '../../../kitchen/days.ts';
import { overrule } from '../../../kitchen/freezing/freeze-treatment.ts';
import type { Lot } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { useSave } from '../../store/household.ts';
import { Button } from '../plain/Button.tsx';
import { TextInput } from '../plain/TextInput.tsx';
import { today } from '../today.ts';
import { Sentence } from '../words/Sentence.tsx';
import '../asking.css';

export function TreatmentOverride({
  lot,
  onClose,
  onOverruled,
}: {
  lot: Lot;
  onClose(focus: string): void;
  /** Once the choice is made; it is being kept. */
  onOverruled?(): void;
}) {
  const t = words().cupboard.override;
  const save = useSave('lots');
  const [note, setNote] = useState('');
  const [fault, setFault] = useState('');

  function submit(event: FormEvent) {
    event.preventDefault();
    try {
      save.mutate(overrule(lot, note, today()), lot);
      onOverruled?.();
      onClose('.overruled .quiet-button');
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error));
    }
  }

  if (lot.overruled)
    return (
      <p className="notice-line overruled">
        <Sentence
          of={t.chosen(dayInWords(lot.overruled.on))}
          with={{
            note: () => lot.overruled?.note,
            back: (text) => (
              <Button
                className="quiet-button"
                onPress={() => {
                  save.mutate({ ...lot, overruled: undefined }, lot);
                  onClose('.ask-overrule');
                }}
              >
                {text}
              </Button>
            ),
          }}
        />
      </p>
    );
  return (
    <form
      className="asking"
      onSubmit={submit}
      onKeyDown={(e) => {
        if (e.key === 'Escape') onClose('.ask-overrule');
      }}
    >
      <p>{t.warning}</p>
      <TextInput label={t.why} value={note} onChange={setNote} maxLength={300} />
      {fault && (
        <p role="alert" className="field-error">
          {fault}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" className="button">
          {t.go}
        </Button>
        <Button className="quiet-button" onPress={() => onClose('.ask-overrule')}>
          {t.leave}
        </Button>
      </div>
    </form>
  );
}
