/** The way out of a batch that nobody will finish: an empty one is deleted, another is closed as not to be fed. */
import { useState } from 'react';
import { words } from '../../words/words.ts';
import { Button } from '../shared/plain/Button.tsx';
import { TextInput } from '../shared/plain/TextInput.tsx';

export function GiveUpBatch(props: { empty: boolean; busy: boolean; giveUp(reason: string): void }) {
  const t = words().weighing.giveUp;
  const [sure, setSure] = useState(false);
  const [reason, setReason] = useState('');
  return (
    <>
      {sure && (
        <>
          <p role="status">{props.empty ? t.emptyHelp : t.help}</p>
          {!props.empty && <TextInput label={t.why} value={reason} onChange={setReason} maxLength={500} />}
        </>
      )}
      <Button
        className="quiet-button"
        isDisabled={props.busy}
        onPress={() => (sure ? props.giveUp(reason.trim()) : setSure(true))}
      >
        {sure ? (props.empty ? t.yesDelete : t.yes) : t.press}
      </Button>
      {sure && (
        <Button className="quiet-button" onPress={() => setSure(false)}>
          {t.no}
        </Button>
      )}
    </>
  );
}
