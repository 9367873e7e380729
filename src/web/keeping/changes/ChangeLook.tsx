/** One change looked at: what stood before and after it, field by field. */
import { useQuery } from '@tanstack/react-query';
import { Button } from 'react-aria-components';
import { differencesOf } from '../../../household/merge/differences.ts';
import type { Household, Mix } from '../../../household/model.ts';
import type { Change } from '../../../household/records.ts';
import { words } from '../../../words/words.ts';
import { Failed } from '../../shared/Failed.tsx';
import { useParts } from '../../shared/parts.tsx';
import { dayAt } from '../../shared/today.ts';
import { fetchChange } from '../../store/api.ts';
import { namesIn } from '../../store/conflict-words.ts';
import { useSave } from '../../store/household.ts';
import { newId } from '../../store/new-id.ts';
import { differenceRow, timeWords } from './change-words.ts';

const PART = 30;

export function ChangeLook({ change, house }: { change: Change; house: Household }) {
  const { data, error } = useQuery({
    queryKey: ['change', change.seq, change.newest],
    queryFn: () => fetchChange(change.seq),
    retry: false,
  });
  const names = namesIn(house);
  const t = words().keeping.changes;
  const differences = data ? differencesOf(change.kind, data.before, data.after) : [];
  // When a mix was last saved says nothing that the line does not say.
  const rows = differences.filter(({ path }) => path[0] !== 'updatedAt').map((d) => differenceRow(d, names));
  const parts = useParts(rows, { part: PART });
  if (error) return <Failed error={error} />;
  if (!data) return <p className="hint">{t.looking}</p>;
  return (
    <div className="past-look">
      {rows.length === 0 ? (
        <p>{t.onlySaved}</p>
      ) : (
        <div className="table-scroll">
          <table>
            <thead>
              <tr>
                <th scope="col">{t.what}</th>
                <th scope="col">{t.before}</th>
                <th scope="col">{t.after}</th>
              </tr>
            </thead>
            <tbody>
              {parts.shown.map(({ what, was, is }) => (
                <tr key={what}>
                  <th scope="row">{what}</th>
                  <td>{was}</td>
                  <td>{is}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {parts.more}
      {change.kind === 'mixes' && data.before !== null && house.mixes.some((m) => m.id === change.id) && (
        <KeepAsVersion change={change} before={data.before as Mix} />
      )}
    </div>
  );
}

/** Keeps a mix of that time as a version, to be compared with the present one or gone back to. */
function KeepAsVersion({ change, before }: { change: Change; before: Mix }) {
  const save = useSave('versions');
  const t = words().keeping.changes;
  const name = t.versionName(timeWords(change.at), words().figures.day(dayAt(change.at)));
  if (save.isSuccess) return <p role="status">{t.keptAs(name)}</p>;
  return (
    <div className="button-row">
      <Button
        className="button small"
        isDisabled={save.isPending}
        onPress={() => {
          const { id: mixId, problem, shares } = before;
          save.mutate(
            { id: newId(), mixId, name, problem, shares, keptAt: new Date().toISOString() },
            undefined,
          );
        }}
      >
        {t.keepVersion}
      </Button>
      <Failed error={save.error} />
    </div>
  );
}
