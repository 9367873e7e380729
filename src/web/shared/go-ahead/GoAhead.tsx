/** Going ahead with what a caution holds back takes a reason, which is kept with the mix. */
import { useState } from 'react';
import { Button, Input, Label, TextField } from 'react-aria-components';
import './GoAhead.css';

interface Props {
  /** What opens it, and what a screen reader says of that. */
  label: string;
  spoken?: string;
  why: string;
  yes: string;
  no: string;
  act(note: string): void;
}

export function GoAhead({ label, spoken, why, yes, no, act }: Props) {
  const [note, setNote] = useState<string>();
  if (note === undefined)
    return (
      <Button className="quiet-button" aria-label={spoken} onPress={() => setNote('')}>
        {label}
      </Button>
    );
  const empty = note.trim() === '';
  return (
    <form
      className="allow"
      onSubmit={(e) => {
        e.preventDefault();
        if (!empty) act(note.trim());
      }}
    >
      <TextField value={note} onChange={setNote} autoFocus>
        <Label>{why}</Label>
        <Input />
      </TextField>
      <div className="button-row">
        <Button type="submit" className="button" isDisabled={empty}>
          {yes}
        </Button>
        <Button className="quiet-button" onPress={() => setNote(undefined)}>
          {no}
        </Button>
      </div>
    </form>
  );
}
