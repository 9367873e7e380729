/** An animal that died or was given away: said here, and taken back here. Its record stays. */
import { type FormEvent, useState } from 'react';
import { Button, Form } from 'react-aria-components';
import type { Gone } from '../../../care/model.ts';
import type { Animal } from '../../../household/model.ts';
import { words } from '../../../words/words.ts';
import { DayInput } from '../../shared/DayInput.tsx';
import { Failed } from '../../shared/Failed.tsx';
import { FormFoot } from '../../shared/FormFoot.tsx';
import { focusWhenThere } from '../../shared/focus.ts';
import { Radios } from '../../shared/Radios.tsx';
import { today } from '../../shared/today.ts';
import { useSave } from '../../store/household.ts';

/** What became of it, and the way back. */
export function GoneLine({ animal, gone }: { animal: Animal; gone: Gone }) {
  const t = words().animals.gone;
  const save = useSave('animals');

  return (
    <div className="gone-line">
      <p>
        <strong>{t[gone.how](gone.on, today())}.</strong> {gone.how === 'died' && t.sorry} {t.stays}
      </p>
      <Button
        className="button small"
        onPress={() => {
          save.mutate({ ...animal, gone: undefined }, animal);
          focusWhenThere('.animal-page h2');
        }}
      >
        {t.undo}
      </Button>
      <Failed error={save.error} />
    </div>
  );
}

export function GoneForm({ animal: now, onDone }: { animal: Animal; onDone(): void }) {
  const { animals } = words();
  const t = animals.gone;
  /** As it stood when this was opened: only that it is gone is changed. */
  const [animal] = useState(now);
  const save = useSave('animals');
  const [how, setHow] = useState<Gone['how']>('died');
  const [on, setOn] = useState<string | undefined>(today());
  const [tried, setTried] = useState(false);
  const wrong = on === undefined ? t.dayless : on > today() ? t.later : undefined;

  function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    setTried(true);
    if (wrong !== undefined || on === undefined) {
      event.currentTarget.querySelector<HTMLElement>('input[type=date]')?.focus();
      return;
    }
    save.mutate({ ...animal, gone: { how, on } }, animal, {
      onSuccess: () => {
        onDone();
        focusWhenThere('.animal-page h2');
      },
    });
  }

  return (
    <Form className="gone-form" aria-label={t.title(animal.name)} onSubmit={submit}>
      <h3 tabIndex={-1}>{t.title(animal.name)}</h3>
      <Radios
        label={t.how}
        value={how}
        options={[
          ['died', t.hows.died],
          ['given away', t.hows['given away']],
        ]}
        onChange={setHow}
      />
      <DayInput label={t.on} value={on} onChange={setOn} error={tried ? wrong : undefined} />
      <p className="hint">{t.what}</p>
      <FormFoot error={save.error} save={t.keep} onLeave={onDone} />
    </Form>
  );
}
