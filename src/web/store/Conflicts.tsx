/** The first of what was changed here and elsewhere at the same time, until the keeper has chosen. */
import { shownLater } from '../shared/later/shown-later.tsx';
import { useKeeper } from './household.ts';

const Conflict = shownLater(() => import('./Conflict.tsx').then((m) => m.Conflict));

export function Conflicts() {
  const { waiting, household } = useKeeper();
  const [first, ...more] = waiting.filter((change) => change.theirs);
  if (!first || !household) return null;
  return <Conflict key={first.slot} change={first} house={household} more={more.length} />;
}
