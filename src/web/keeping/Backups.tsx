/** The household's backups: what there is, one now, and going back to one. */
import { useMutation, useQuery } from '@tanstack/react-query';
import { Button } from 'react-aria-components';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { Sentence } from '../shared/words/Sentence.tsx';
import { type BackupList, fetchBackups, saveBackup } from '../store/backups.ts';
import { BackupItem } from './backups/BackupItem.tsx';
import './backups/backups.css';

export function Backups() {
  const { data, error, refetch } = useQuery({ queryKey: ['backups'], queryFn: fetchBackups, retry: false });
  const t = words().keeping.backups;
  const save = useMutation({ mutationFn: saveBackup, onSettled: () => refetch() });
  return (
    <section className="panel" aria-label={t.title}>
      <h2>{t.title}</h2>
      <Failed error={error} />
      {data && data.folder === null && <p>{t.elsewhere}</p>}
      {data && data.folder !== null && (
        <>
          <HowTheyAreMade {...data} folder={data.folder} />
          {data.fault && !save.error && <Failed error={data.fault} />}
          <div className="button-row">
            <Button className="button" isDisabled={save.isPending} onPress={() => save.mutate()}>
              {save.isPending ? t.saving : t.save}
            </Button>
            <span role="status">{save.isSuccess && t.saved}</span>
          </div>
          <Failed error={save.error} />
          <List backups={data.backups} changed={() => void refetch()} />
        </>
      )}
    </section>
  );
}

function HowTheyAreMade({ folder, kept }: { folder: string; kept: BackupList['kept'] }) {
  const t = words().keeping.backups;
  return (
    <>
      <p>{t.how(kept.hours, kept.days, kept.weeks)}</p>
      <p className="hint">
        <Sentence of={t.where(folder)} with={{ folder: (path) => <code>{path}</code> }} />
      </p>
    </>
  );
}

function List({ backups, changed }: { backups: BackupList['backups']; changed(): void }) {
  const t = words().keeping.backups;
  if (backups.length === 0) return <p>{t.none}</p>;
  return (
    <ul className="backup-list" aria-label={t.list}>
      {backups.map((backup) => (
        <BackupItem key={backup.name} backup={backup} changed={changed} />
      ))}
    </ul>
  );
}
