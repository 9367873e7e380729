/** The way out of a batch that nobody will finish: an empty one is deleted, another is closed as not to be fed. */
import { useState } from 'react';
import { Button, Input, Label, TextField } from 'react-aria-components';

export function GiveUpBatch(props: { empty: boolean; busy: boolean; giveUp(reason: string): void }) {
  const [sure, setSure] = useState(false);
  const [reason, setReason] = useState('');
  return (
    <>
      {sure && (
        <>
          <p role="status">
            {props.empty
              ? 'Nothing is poured yet, so nothing is lost.'
              : 'What was poured stays on record and counts as gone from its lots; the batch is closed as not to be fed.'}
          </p>
          {!props.empty && (
            <TextField value={reason} onChange={setReason}>
              <Label>Why (optional; it is kept with the batch)</Label>
              <Input autoComplete="off" maxLength={500} />
            </TextField>
          )}
        </>
      )}
      <Button
        className="quiet-button"
        isDisabled={props.busy}
        onPress={() => (sure ? props.giveUp(reason.trim()) : setSure(true))}
      >
        {sure ? `Yes, ${props.empty ? 'delete it' : 'give it up'}` : 'Give up this batch'}
      </Button>
      {sure && (
        <Button className="quiet-button" onPress={() => setSure(false)}>
          No, go on
        </Button>
      )}
    </>
  );
}
