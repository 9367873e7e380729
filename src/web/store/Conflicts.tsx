/** What was changed here and elsewhere at the same time: both side by side, and the keeper chooses. */
import { useQuery } from '@tanstack/react-query';
import { Button } from 'react-aria-components';
import type { Household } from '../../household/model.ts';
import { fetchHistory } from './api.ts';
import { collisionWords, KIND_WORDS, namesIn } from './conflict-words.ts';
import { useKeeper } from './household.ts';
import { keeper } from './page-keeper.ts';
import { type Change, collisions } from './sync/change.ts';
import './unsent.css';

export function Conflicts() {
  const { waiting, household } = useKeeper();
  const open = waiting.filter((change) => change.theirs);
  const [first] = open;
  if (!first || !household) return null;
  return <Conflict key={first.slot} change={first} house={household} more={open.length - 1} />;
}

function Conflict({ change, house, more }: { change: Change; house: Household; more: number }) {
  const { kind, id, body, theirs } = change;
  const { data: elsewhere } = useQuery({
    queryKey: ['who changed', kind, id, theirs?.version],
    queryFn: async () =>
      (await fetchHistory({ kind, id })).changes.find((c) => c.version === theirs?.version),
    retry: false,
  });
  const named = [body, theirs?.body, change.base.body].find((b) => b && 'name' in b);
  const thing = `${KIND_WORDS[kind]}${named && 'name' in named ? ` “${named.name}”` : ''}`;
  const who = elsewhere ? ` (${MOMENT.format(new Date(elsewhere.at))}, ${elsewhere.device})` : '';
  const rows = collisionWords(collisions(change), body, theirs?.body ?? null, namesIn(house));
  const whole = body === null || theirs?.body === null;
  return (
    <section className="conflict" aria-label="Changed in two places" role="alert">
      <h2>{thing} was changed in two places</h2>
      {body === null && <p>You deleted it here; elsewhere it was changed meanwhile{who}.</p>}
      {theirs?.body === null && <p>You changed it here; elsewhere it was deleted meanwhile{who}.</p>}
      {!whole && (
        <>
          <p>Choose which is to stand. What only one side changed is kept from both.</p>
          <table>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">Here ({MOMENT.format(new Date(change.at))})</th>
                <th scope="col">Elsewhere{who}</th>
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
          {body === null ? 'Delete it all the same' : whole ? 'Keep it with my change' : 'Keep mine'}
        </Button>
        <Button className="button" onPress={() => keeper.choose(change, 'theirs')}>
          {body === null ? 'Keep it' : whole ? 'Let it go' : 'Take theirs'}
        </Button>
        {more > 0 && <span className="hint">{more === 1 ? 'One more' : `${more} more`} after this.</span>}
      </div>
    </section>
  );
}

const MOMENT = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });
