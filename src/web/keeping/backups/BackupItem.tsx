/** One backup: when and why it was made, as a file, and going back to it after a question. */
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { words } from '../../../words/words.ts';
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
  const t = words().keeping.backups;
  return (
    <li aria-label={when}>
      <div className="backup-head">
        <b>{when}</b>
        <small>
          {whyWords(backup.why)}, {sizeWords(backup.size)}
        </small>
        <div className="button-row">
          <Button className="quiet-button" aria-label={t.goBackTo(when)} onPress={() => setAsking(true)}>
            {t.goBack}
          </Button>
          <a className="quiet-link" href={addressOf(backup.name)} download aria-label={t.downloadOf(when)}>
            {t.download}
          </a>
        </div>
      </div>
      {back.isSuccess && !asking && <p role="status">{t.done}</p>}
      {asking && (
        <AskFirst
          question={t.question(when)}
          error={back.error}
          keep={t.keep}
          onKeep={() => setAsking(false)}
          lose={back.isPending ? t.going : t.goBack}
          onLose={() => {
            if (!back.isPending) back.mutate();
          }}
        >
          {t.warning}
        </AskFirst>
      )}
    </li>
  );
}
