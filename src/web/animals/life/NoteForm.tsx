/** A note with its day: what was seen, or what a vet said. */
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { Form, Label, Text, TextArea, TextField } from 'react-aria-components';
import type { Note } from '../../../care/model.ts';
import { MOST_WORDS } from '../../../formulation/problem/letters.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { DayInput } from '../../shared/DayInput.tsx';
import { FormFoot } from '../../shared/FormFoot.tsx';

export function NoteForm(props: {
  /** As it stands; a new one without text and day. */
  note: Omit<Note, 'on' | 'text'> & Partial<Note>;
  day: Day;
  onKeep(note: Note): void;
  onLeave(): void;
}) {
  const { lifeline, common } = words();
  const t = lifeline.note;
  const [was] = useState(props.note);
  const [text, setText] = useState(was.text ?? '');
  const [day, setDay] = useState<Day | undefined>(was.on ?? props.day);
  const [fault, setFault] = useState('');
  const field = useRef<HTMLTextAreaElement>(null);
  useEffect(() => field.current?.focus(), []);

  function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    if (text.trim() === '') {
      setFault(t.noText);
      return field.current?.focus();
    }
    if (day === undefined) return setFault(t.noDay);
    props.onKeep({ ...was, text: text.trim(), on: day });
  }

  return (
    <Form className="note-form" onSubmit={submit}>
      <TextField
        value={text}
        onChange={setText}
        maxLength={MOST_WORDS}
        isInvalid={fault === t.noText}
        validationBehavior="aria"
      >
        <Label>{was.kind === 'vet' ? t.textVet : t.textSeen}</Label>
        <TextArea ref={field} rows={3} />
        {was.kind === 'seen' && (
          <Text slot="description" className="hint">
            {t.help}
          </Text>
        )}
      </TextField>
      <DayInput label={t.day} value={day} onChange={setDay} />
      {fault && (
        <p role="alert" className="field-error">
          {fault}
        </p>
      )}
      <FormFoot error={null} save={common.save} onLeave={props.onLeave} />
    </Form>
  );
}
