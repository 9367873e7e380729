/** What can no longer be saved, and what can be done now. */
import { useEffect, useRef, useState } from 'react';
import { Button, FieldError, Input, Label, TextField } from 'react-aria-components';
import type { Lost } from '../../kitchen/weighing/weigh-state.ts';
import { Maker, useMaker } from './Maker.tsx';

export function LostBatch(props: {
  lost: Lost;
  /** All is poured, so there is nothing to go on with. */
  done: boolean;
  busy: boolean;
  accept(reason: string, madeBy: string | undefined): void;
  grow: (() => void) | undefined;
  again(): Promise<void>;
  /** Whether the news takes the focus, so that it is in sight. */
  focus: boolean;
}) {
  const { lost, done, busy, accept, grow, again, focus } = props;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (focus) heading.current?.focus();
  }, [focus]);
  const [reason, setReason] = useState('');
  const [asked, setAsked] = useState(false);
  const [sure, setSure] = useState(false);
  const [fault, setFault] = useState('');
  const [maker, setMaker, rememberMaker] = useMaker();
  const missing = asked && reason.trim() === '';
  return (
    <section className="weigh-lost" aria-label="Out of range">
      <h2 ref={heading} tabIndex={-1}>
        <span aria-hidden="true">!</span> This cannot be brought into range
      </h2>
      <p role="alert">{lost.sentence}</p>
      {lost.larger && <p>{lost.larger.sentence}</p>}
      {grow && (
        <Button className="button" isDisabled={busy} onPress={grow}>
          Let the batch grow; I have more of it
        </Button>
      )}
      {!done && <p>Or go on below: the next targets are the nearest that can be done.</p>}
      <TextField value={reason} onChange={setReason} isInvalid={missing} validationBehavior="aria">
        <Label>Accept the bowl as it is, because</Label>
        <Input autoComplete="off" maxLength={500} />
        <FieldError className="field-error">Write the reason; it is kept with the batch.</FieldError>
      </TextField>
      <Maker name={maker} onChange={setMaker} />
      <div className="button-row">
        <Button
          className="button"
          isDisabled={busy}
          onPress={() => {
            if (reason.trim() === '') return setAsked(true);
            rememberMaker();
            accept(reason.trim(), maker.trim() || undefined);
          }}
        >
          Accept as it is and finish
        </Button>
        <Button
          className="button"
          isDisabled={busy}
          onPress={() => (sure ? void again().catch((e: Error) => setFault(e.message)) : setSure(true))}
        >
          {sure ? 'Yes, empty the bowl and start again' : 'Start again'}
        </Button>
      </div>
      {fault && <p role="alert">No new batch was begun: {fault}</p>}
      {sure && (
        <p role="status">
          This batch is then closed, marked as not to be fed, and a new one of the same plan begins.
        </p>
      )}
    </section>
  );
}
