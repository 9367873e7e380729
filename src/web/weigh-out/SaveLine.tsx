/** What of the batch the server does not have yet, in sight until it has. */
import { Button } from 'react-aria-components';
import type { Batch } from '../../kitchen/model.ts';
import { gramWords } from '../shared/words/gram-words.ts';
import type { BatchSave } from '../store/batch-save.ts';

export function SaveLine(props: {
  save: BatchSave;
  base: Batch;
  names?: Readonly<Record<string, string>>;
  retry(): void;
}) {
  const { save, base, names, retry } = props;
  if (save.is === 'idle') return <p className="weigh-save" role="status" />;
  if (save.is === 'saving')
    return (
      <p className="weigh-save" role="status">
        Saving {what(save.next, base, names)}…
      </p>
    );
  if (save.is === 'refused')
    return (
      <p className="weigh-fault" role="alert">
        <strong>Not noted:</strong> {what(save.next, base, names)}. {save.message} What stands here is the
        batch as it is kept; look into the bowl before you pour on.
      </p>
    );
  if (save.is === 'asked')
    return (
      <p className="weigh-fault" role="alert">
        Another device changed the same of this batch meanwhile: choose above which is to stand.
      </p>
    );
  return (
    <div className="weigh-fault" role="alert">
      <p>
        <strong>Not saved yet, trying again:</strong> {what(save.next, base, names)}. {save.message}
      </p>
      <Button className="button" onPress={retry}>
        Try now
      </Button>
    </div>
  );
}

/** What was entered, in words. */
function what(next: Batch, base: Batch, names?: Readonly<Record<string, string>>): string {
  const last = next.pours.at(-1);
  if (next.finishedAt !== undefined) return 'the end of the batch';
  if (next.pours.length <= base.pours.length || !last) return 'your last change';
  return `${gramWords(last.grams)} of ${names?.[last.food] ?? last.food}`;
}
