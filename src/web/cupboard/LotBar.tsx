/** Bars a lot: for what reason, in one press; what it reached is shown at once where it stood. */
import { type FormEvent, useState } from 'react';
import { Input, Label, TextField } from 'react-aria-components';
import { BAR_REASONS, type BarReason, barWords } from '../../kitchen/cupboard/barred.ts';
import type { Lot } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { FormFoot } from '../shared/FormFoot.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { Radios } from '../shared/Radios.tsx';
import { today } from '../shared/today.ts';
import { useSave } from '../store/household.ts';
import '../shared/asking.css';

export function LotBar({ lot, onClose }: { lot: Lot; onClose(): void }) {
  const t = words().cupboard.stop;
  const save = useSave('lots');
  const [reason, setReason] = useState<BarReason>();
  const [note, setNote] = useState('');
  const [tried, setTried] = useState(false);

  function submit(event: FormEvent) {
    event.preventDefault();
    setTried(true);
    if (reason === undefined || save.isPending) return;
    save.mutate({ ...lot, barred: { why: barWords(reason, note), on: today() } }, lot);
    focusWhenThere('.reach.barred h3');
  }

  return (
    <form
      className="asking"
      onSubmit={submit}
      onKeyDown={(e) => {
        if (e.key === 'Escape') onClose();
      }}
    >
      <Radios
        label={t.why}
        value={reason}
        options={BAR_REASONS.map((r) => [r, t.choices[r]])}
        onChange={setReason}
      />
      <TextField value={note} onChange={setNote}>
        <Label>{t.note}</Label>
        <Input autoComplete="off" maxLength={300} />
      </TextField>
      {tried && reason === undefined && (
        <p role="alert" className="field-error">
          {t.noReason}
        </p>
      )}
      <FormFoot error={save.error} save={t.save} leave={t.leave} onLeave={onClose} />
    </form>
  );
}
