/** What of the batch the server does not have yet, in a quiet line until it has; what was refused is said loudly. */

import type { Batch } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { Button } from '../shared/plain/Button.tsx';
import { Sentence } from '../shared/words/Sentence.tsx';
import type { BatchSave } from '../store/batch-save.ts';

export function SaveLine(props: {
  save: BatchSave;
  names?: Readonly<Record<string, string>>;
  retry(): void;
}) {
  const { save, names, retry } = props;
  const t = words().weighing.save;
  if (save.is === 'idle') return <p className="weigh-save" role="status" />;
  if (save.is === 'asked')
    return (
      <p className="weigh-fault" role="alert">
        {t.asked}
      </p>
    );
  const what = entered(save, names);
  const bold = { b: (text: string) => <strong>{text}</strong> };
  if (save.is === 'refused')
    return (
      <p className="weigh-fault" role="alert">
        <Sentence
          with={bold}
          of={
            what === 'end'
              ? t.refusedEnd(save.message)
              : what === 'change'
                ? t.refusedChange(save.message)
                : t.refused(what.grams, what.name, save.message)
          }
        />
      </p>
    );
  if (save.is === 'saving')
    return (
      <p className="weigh-save" role="status">
        {what === 'end' ? t.savingEnd : what === 'change' ? t.savingChange : t.saving(what.grams, what.name)}
      </p>
    );
  return (
    <p className="weigh-save" role="status">
      <span data-testid="waits">
        {what === 'end' ? t.endWaits : save.pours > 0 ? t.waits(save.pours) : t.changeWaits}
      </span>{' '}
      <Button className="quiet-button" onPress={retry}>
        {t.tryNow}
      </Button>
    </p>
  );
}

/** What was entered last. */
function entered(
  { next, pours }: { readonly next: Batch; readonly pours: number },
  names?: Readonly<Record<string, string>>,
): 'end' | 'change' | { readonly grams: number; readonly name: string } {
  const last = next.pours.at(-1);
  if (next.finishedAt !== undefined) return 'end';
  if (pours <= 0 || !last) return 'change';
  return { grams: last.grams, name: names?.[last.food] ?? last.food };
}
