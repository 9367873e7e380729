/** One backup: when and why it was made, as a file, and going back to it after a question. */
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { AskFirst } from '../../shared/AskFirst.tsx';
import { useNow } from '../../shared/hooks/now.ts';
import { clockOf } from '../../shared/words/clock.ts';
import { addressOf, type Backup, goBackTo } from '../../store/backups.ts';
import { sizeWords, whyWords } from './backup-words.ts';

export function BackupItem({ backup, changed }: { backup: Backup; changed(): void }) {
  const [asking, setAsking] = useState(false);
  const now = useNow();
  const back = useMutation({
    mutationFn: () => goBackTo(backup),
    onSuccess: () => {
      setAsking(false);
      changed();
    },
  });
  const when = clockOf(backup.at, now);
  return (
    <li aria-label={when}>
      <div className="backup-head">
        <b>{when}</b>
        <small>
          {whyWords(backup.why)}, {sizeWords(backup.size)}
        </small>
        <div className="button-row">
          <Button className="quiet-button" aria-label={`Go back to ${when}`} onPress={() => setAsking(true)}>
            Go back
          </Button>
          <a className="quiet-link" href={addressOf(backup.name)} download aria-label={`Download ${when}`}>
            Download
          </a>
        </div>
      </div>
      {back.isSuccess && !asking && (
        <p role="status">Done. What stood there before is kept as a backup, at the top of this list.</p>
      )}
      {asking && (
        <AskFirst
          question={`Go back to how everything stood at ${when}?`}
          error={back.error}
          keep="Leave it as it is"
          onKeep={() => setAsking(false)}
          lose={back.isPending ? 'Going back ...' : 'Go back'}
          onLose={() => {
            if (!back.isPending) back.mutate();
          }}
        >
          What was changed since then goes from every device. It is kept as a backup first, so that you can
          come back to it.
        </AskFirst>
      )}
    </li>
  );
}
