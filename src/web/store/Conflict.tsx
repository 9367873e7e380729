/** What was changed here and elsewhere at the same time: both side by side, and the keeper chooses. */
import { useQuery } from '@tanstack/react-query';
import { Button } from 'react-aria-components';
import type { Household } from '../../household/model.ts';
import { words } from '../../words/words.ts';
import { useNow } from '../shared/hooks/now.ts';
import { clockOf } from '../shared/words/clock.ts';
import { fetchHistory } from './api.ts';
import { collisionWords, namesIn } from './conflict-words.ts';
import { keeper } from './page-keeper.ts';
import { type Change, collisions } from './sync/change.ts';
import { thingOf } from './thing-words.ts';
import './unsent.css';

/** @param more how many more there are to choose after it */
export function Conflict({ change, house, more }: { change: Change; house: Household; more: number }) {
  const { kind, id, body, theirs } = change;
  const { data: elsewhere } = useQuery({
    queryKey: ['who changed', kind, id, theirs?.version],
    queryFn: async () =>
      (await fetchHistory({ kind, id })).changes.find((c) => c.version === theirs?.version),
    retry: false,
  });
  const named = [body, theirs?.body, change.base.body];
  const t = words().store.conflict;
  const now = useNow();
  const thing = thingOf(kind, named);
  const who = elsewhere ? t.who(clockOf(elsewhere.at, now), elsewhere.device) : '';
  const rows = collisionWords(collisions(change), body, theirs?.body ?? null, namesIn(house));
  const whole = body === null || theirs?.body === null;
  return (
    <section className="conflict" aria-label={t.label} role="alert">
      <h2>{t.title(thing)}</h2>
      {body === null && <p>{t.deletedHere(who)}</p>}
      {theirs?.body === null && <p>{t.deletedThere(who)}</p>}
      {!whole && (
        <>
          <p>{t.choose}</p>
          <table>
            <thead>
              <tr>
                <th scope="col">{t.what}</th>
                <th scope="col">{t.here(clockOf(change.at, now))}</th>
                <th scope="col">{t.elsewhere(who)}</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ field, mine, theirs: other }) => (
                <tr key={field}>
                  <th scope="row">{field}</th>
                  <td>{mine}</td>
                  <td>{other}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
      <div className="button-row">
        <Button className="button" onPress={() => keeper.choose(change, 'mine')}>
          {body === null ? t.deleteAllTheSame : whole ? t.keepWithMine : t.keepMine}
        </Button>
        <Button className="button" onPress={() => keeper.choose(change, 'theirs')}>
          {body === null ? t.keepIt : whole ? t.letGo : t.takeTheirs}
        </Button>
        {more > 0 && <span className="hint">{t.more(more)}</span>}
      </div>
    </section>
  );
}
