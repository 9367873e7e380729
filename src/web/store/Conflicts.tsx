/** The first of what was changed here and elsewhere at the same time, until the keeper has chosen. */
import { Suspense } from 'react';
import { later } from '../shared/later.ts';
import { useKeeper } from './household.ts';
import type { Change } from './sync/change.ts';

const part = later(() => import('./Conflict.tsx').then((m) => m.Conflict));

export function Conflicts() {
  const open = useKeeper().waiting.filter((change) => change.theirs);
  return <Suspense>{open.length > 0 && <First open={open} />}</Suspense>;
}

function First({ open: [first, ...more] }: { open: readonly Change[] }) {
  const { household } = useKeeper();
  const Conflict = part.now();
  return (
    first && household && <Conflict key={first.slot} change={first} house={household} more={more.length} />
  );
}
