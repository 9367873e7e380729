/** The household's backups: what there is, one now, and going back to one. */
import { useMutation, useQuery } from '@tanstack/react-query';
import { Button } from 'react-aria-components';
import { Failed } from '../shared/Failed.tsx';
import { type BackupList, fetchBackups, saveBackup } from '../store/backups.ts';
import { BackupItem } from './backups/BackupItem.tsx';
import './backups/backups.css';

export function Backups() {
  const { data, error, refetch } = useQuery({ queryKey: ['backups'], queryFn: fetchBackups, retry: false });
  const save = useMutation({ mutationFn: saveBackup, onSettled: () => refetch() });
  return (
    <section className="panel" aria-label="Backups">
      <h2>Backups</h2>
      <Failed error={error} />
      {data && data.folder === null && <p>Backups of this household are made where its database is kept.</p>}
      {data && data.folder !== null && (
        <>
          <HowTheyAreMade {...data} folder={data.folder} />
          {data.fault && !save.error && <Failed error={data.fault} />}
          <div className="button-row">
            <Button className="button" isDisabled={save.isPending} onPress={() => save.mutate()}>
              {save.isPending ? 'Saving ...' : 'Save a backup now'}
            </Button>
            <span role="status">{save.isSuccess && 'Saved and checked.'}</span>
          </div>
          <Failed error={save.error} />
          <List backups={data.backups} changed={() => void refetch()} />
        </>
      )}
    </section>
  );
}

function HowTheyAreMade({ folder, kept }: { folder: string; kept: BackupList['kept'] }) {
  return (
    <>
      <p>
        One is made by itself each hour in which something changed, and read through before it counts. Kept
        are the newest of {kept.hours} hours, {kept.days} days and {kept.weeks} weeks.
      </p>
      <p className="hint">
        They lie in <code>{folder}</code>. For a copy on another disk, download one here. To copy the
        household file itself, stop Pouchful first: while it runs, the newest changes lie in a second file
        beside it.
      </p>
    </>
  );
}

function List({ backups, changed }: { backups: BackupList['backups']; changed(): void }) {
  if (backups.length === 0) return <p>There is none yet.</p>;
  return (
    <ul className="backup-list" aria-label="Backups, newest first">
      {backups.map((backup) => (
        <BackupItem key={backup.name} backup={backup} changed={changed} />
      ))}
    </ul>
  );
}
