/** One weighing with its day and time: to add one of another day, or to correct one. */
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { Form, Input, Label, TextField } from 'react-aria-components';
import type { Weighing } from '../../../care/model.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { DayInput } from '../../shared/DayInput.tsx';
import { FormFoot } from '../../shared/FormFoot.tsx';
import { focusWhenThere } from '../../shared/focus.ts';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { dayAt } from '../../shared/today.ts';
import { AskUnlikely } from './AskUnlikely.tsx';
import { netOf, type Unlikely } from './pad-figures.ts';
import { momentOf, timeOf } from './weight-words.ts';

export function WeighingForm(props: {
  /** As it stands; for a new one `id` and `animalId` alone, and the tub. */
  weighing: Pick<Weighing, 'id' | 'animalId' | 'tub'> & Partial<Weighing>;
  day: Day;
  /** Whether a weight is to be asked about, at that time. */
  unlikely(grams: number, at: string): Unlikely | undefined;
  onKeep(weighing: Weighing): void;
  onLeave(): void;
}) {
  const { day: today } = props;
  const { bodyWeight, common } = words();
  const t = bodyWeight.form;
  const [was] = useState(props.weighing);
  const { tub = 0 } = was;
  const [onScale, setOnScale] = useState(was.grams === undefined ? undefined : netOf(was.grams, -tub));
  const [day, setDay] = useState<Day | undefined>(was.at === undefined ? today : dayAt(was.at));
  const [time, setTime] = useState(() => clockField(was.at ?? new Date().toISOString()));
  const [note, setNote] = useState(was.note ?? '');
  const [fault, setFault] = useState('');
  const [asked, ask] = useState<{ weighing: Weighing; why: Unlikely }>();
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => form.current?.querySelector('input')?.focus(), []);

  function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    const wrong = event.currentTarget.querySelector<HTMLElement>('input[aria-invalid=true]');
    if (wrong) return wrong.focus();
    if (onScale === undefined) return setFault(t.noWeight);
    const grams = netOf(onScale, tub);
    if (grams <= 0) return setFault(bodyWeight.pad.belowTub(tub));
    const at = day === undefined ? undefined : momentAt(day, time, was.at);
    if (at === undefined) return setFault(t.noDay);
    if (Date.parse(at) > Date.now()) return setFault(t.ahead);
    setFault('');
    const { sure, note: _, ...rest } = was;
    const weighing: Weighing = {
      ...rest,
      at,
      grams,
      ...(sure && grams === was.grams && { sure }),
      ...(note.trim() !== '' && { note: note.trim() }),
    };
    const why = weighing.sure ? undefined : props.unlikely(grams, at);
    if (!why) return props.onKeep(weighing);
    ask({ weighing, why });
    focusWhenThere('.weighing-form .ask-weight .keep');
  }

  return (
    <Form ref={form} className="weighing-form" onSubmit={submit}>
      <h4>{was.at === undefined ? t.add : t.change(momentOf({ day: dayAt(was.at), at: was.at }, today))}</h4>
      <div className="fields">
        <NumberInput
          label={tub > 0 ? t.weightTub(tub) : t.weight}
          measure="mass"
          min={0.1}
          max={20_000}
          step={1}
          value={onScale}
          onCommit={setOnScale}
        />
        <DayInput label={t.day} value={day} onChange={setDay} />
        <div className="lot-date">
          <label>
            {t.time}
            <input type="time" value={time} onChange={(e) => setTime(e.target.value)} />
          </label>
        </div>
        <TextField className="wide" value={note} onChange={setNote} maxLength={500}>
          <Label>{t.note}</Label>
          <Input autoComplete="off" />
        </TextField>
      </div>
      {fault && (
        <p role="alert" className="field-error">
          {fault}
        </p>
      )}
      {asked && (
        <AskUnlikely
          grams={asked.weighing.grams}
          why={asked.why}
          on={dayAt(asked.weighing.at)}
          onCorrect={() => {
            ask(undefined);
            form.current?.querySelector('input')?.focus();
          }}
          onRight={() => props.onKeep({ ...asked.weighing, sure: true })}
        />
      )}
      {!asked && <FormFoot error={null} save={common.save} onLeave={props.onLeave} />}
    </Form>
  );
}

/** "14:30", as the browser's own field has it in every language. */
function clockField(at: string): string {
  return timeOf(at);
}

/** The moment of a day and time here; the very same as before where neither was changed. */
function momentAt(day: Day, time: string, before: string | undefined): string | undefined {
  if (before !== undefined && dayAt(before) === day && timeOf(before) === time) return before;
  const at = new Date(`${day}T${time || '12:00'}`);
  return Number.isNaN(at.getTime()) ? undefined : at.toISOString();
}
