/** Something noted of an animal's health: what, since when, and who says so. */
import { type FormEvent, useState } from 'react';
import { Form, Input, Label, TextField } from 'react-aria-components';
import { CONDITIONS, type Condition } from '../../../care/model.ts';
import type { Animal } from '../../../household/model.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import { DayInput } from '../../shared/DayInput.tsx';
import { FormFoot } from '../../shared/FormFoot.tsx';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { today } from '../../shared/today.ts';
import { useSave } from '../../store/household.ts';

export function ConditionForm({ animal, onDone }: { animal: Animal; onDone(): void }) {
  const t = words().animals.conditions;
  const save = useSave('animals');
  const offered = CONDITIONS.filter((c) => animal.sex !== 'male' || (c !== 'pregnant' && c !== 'nursing'));
  const [what, setWhat] = useState<Condition['what']>(offered[0] ?? 'other');
  const [since, setSince] = useState<string | undefined>(today());
  const [young, setYoung] = useState<number>();
  const [vet, setVet] = useState(false);
  const [note, setNote] = useState('');
  const [tried, setTried] = useState(false);
  const all = animal.conditions ?? [];
  const twice = all.some((c) => c.what === what && c.since === since);
  const wrong = since === undefined ? t.dayless : since > today() ? t.later : twice ? t.twice : undefined;

  function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    // The form of the animal itself is not around this one; what is sent here is this alone.
    event.stopPropagation();
    setTried(true);
    const field = event.currentTarget.querySelector<HTMLElement>('.number input[aria-invalid]');
    if (field) return field.focus();
    if (wrong !== undefined || since === undefined)
      return event.currentTarget.querySelector<HTMLElement>('input[type=date]')?.focus();
    const noted: Condition = {
      what,
      since,
      ...(what === 'nursing' && young !== undefined && { young }),
      ...(vet && { vet }),
      ...(note.trim() !== '' && { note: note.trim() }),
    };
    save.mutate({ ...animal, conditions: [...all, noted] }, animal, { onSuccess: onDone });
  }

  return (
    <Form className="condition-form" aria-label={t.add} onSubmit={submit}>
      <div className="fields">
        <Choice
          label={t.what}
          value={what}
          options={offered.map((c) => [c, t.names[c]] as const)}
          onChange={setWhat}
        />
        <DayInput label={t.sinceWhen} value={since} onChange={setSince} error={tried ? wrong : undefined} />
        {what === 'nursing' && (
          <NumberInput
            label={t.howMany}
            min={0}
            max={50}
            step={1}
            decimals={0}
            value={young}
            onCommit={(n) => setYoung(n === undefined ? undefined : Math.round(n))}
          />
        )}
        <TextField className="wide" value={note} onChange={setNote}>
          <Label>{t.note}</Label>
          <Input autoComplete="off" maxLength={1000} />
        </TextField>
      </div>
      <label className="tick">
        <input type="checkbox" checked={vet} onChange={(e) => setVet(e.target.checked)} />
        <span>{t.vetSaid}</span>
      </label>
      <p className="hint">{t.noDiagnosis}</p>
      <FormFoot error={save.error} save={t.keep} onLeave={onDone} />
    </Form>
  );
}
