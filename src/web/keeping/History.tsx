/** What was changed, when and from which device; any of it can be looked at and taken back. */
import { useInfiniteQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Household } from '../../household/model.ts';
import type { Change } from '../../household/records.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { Radios } from '../shared/Radios.tsx';
import { linkTo, useRoute } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { fetchHistory, takeBack } from '../store/api.ts';
import { useHousehold } from '../store/household.ts';
import { ChangeLook } from './changes/ChangeLook.tsx';
import { byDay, changeWords, timeWords, undoWords } from './changes/change-words.ts';

const KEY = 'changes';

export function History() {
  const [, , kind, id] = useRoute();
  const { data: house } = useHousehold();
  const [which, setWhich] = useState<'all' | 'deleted'>('all');
  const of = { ...(kind !== undefined && { kind }), ...(id !== undefined && { id }) };
  const client = useQueryClient();
  const { data, error, hasNextPage, fetchNextPage, isFetching } = useInfiniteQuery({
    queryKey: [KEY, kind, id, which],
    queryFn: ({ pageParam }) =>
      fetchHistory({ ...of, deleted: which === 'deleted', ...(pageParam > 0 && { before: pageParam }) }),
    initialPageParam: 0,
    getNextPageParam: ({ changes, more }) => (more ? changes.at(-1)?.seq : undefined),
    retry: false,
  });
  // Whatever this page hears of the household, from any device, is in the history too.
  useEffect(() => {
    if (house) void client.invalidateQueries({ queryKey: [KEY] });
  }, [client, house]);
  if (!house) return null;
  const t = words().keeping.changes;
  const changes = data?.pages.flatMap((page) => page.changes) ?? [];
  return (
    <section aria-label={t.title}>
      <h2>{t.title}</h2>
      <p className="hint">{t.kept}</p>
      {kind !== undefined && (
        <p>
          <Sentence
            of={t.ofOne}
            with={{ all: (text) => <a href={linkTo('household', 'changes')}>{text}</a> }}
          />
        </p>
      )}
      <Radios
        label={t.show}
        value={which}
        onChange={(next) => setWhich(next)}
        options={[
          ['all', t.everything],
          ['deleted', t.deletedNow],
        ]}
      />
      <Failed error={error} />
      {data && changes.length === 0 && <p>{which === 'deleted' ? t.noneDeleted : t.none}</p>}
      {byDay(changes, today()).map(([day, lines]) => (
        <section key={day} aria-label={day}>
          <h3>{day}</h3>
          <ul className="past-list">
            {lines.map((change) => (
              <Line key={change.seq} change={change} house={house} />
            ))}
          </ul>
        </section>
      ))}
      {hasNextPage && (
        <Button className="button" isDisabled={isFetching} onPress={() => void fetchNextPage()}>
          {t.earlier}
        </Button>
      )}
    </section>
  );
}

function Line({ change, house }: { change: Change; house: Household }) {
  const client = useQueryClient();
  const [open, setOpen] = useState(false);
  const [told, tell] = useState('');
  const [error, setError] = useState<Error | null>(null);
  const t = words().keeping.changes;
  const said = changeWords(change);

  async function undo() {
    try {
      setError(null);
      await takeBack(change.seq);
      tell(change.what === 'deleted' ? t.back : t.takenBack);
      await client.invalidateQueries({ queryKey: [KEY] });
    } catch (failed) {
      setError(failed instanceof Error ? failed : new Error(String(failed)));
    }
  }

  return (
    <li>
      <p className="past-line">
        <span className="past-time">{timeWords(change.at)}</span> <strong>{said}</strong>{' '}
        <span className="hint">{change.device}</span>
      </p>
      <div className="button-row">
        <Button
          className="button small"
          aria-expanded={open}
          aria-label={t.lookAt(said)}
          onPress={() => setOpen(!open)}
        >
          {open ? words().common.close : t.look}
        </Button>
        <Button
          className="button small"
          aria-label={t.pressOf(undoWords(change), said)}
          onPress={() => void undo()}
        >
          {undoWords(change)}
        </Button>
        <span role="status">{told}</span>
      </div>
      <Failed error={error} />
      {open && <ChangeLook change={change} house={house} />}
    </li>
  );
}
