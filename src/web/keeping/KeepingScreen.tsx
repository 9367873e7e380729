/** The household as a whole: what was changed, backups, taking out and bringing in, devices. */
import type { ReactNode } from 'react';
import { linkTo } from '../shared/route.ts';
import { Backups } from './Backups.tsx';
import { Devices } from './Devices.tsx';
import { History } from './History.tsx';
import { OutAndIn } from './OutAndIn.tsx';
import { TableWizard } from './table/TableWizard.tsx';
import { Unreadable } from './Unreadable.tsx';
import './keeping.css';

type Part = readonly [part: string, words: string, shown: () => ReactNode];

const FIRST: Part = ['changes', 'Changes', () => <History />];
const PARTS: readonly Part[] = [
  FIRST,
  ['backups', 'Backups', () => <Backups />],
  ['out-and-in', 'Files', () => <OutAndIn />],
  ['table', 'Own table', () => <TableWizard />],
  ['devices', 'Devices', () => <Devices />],
];

/** @param shown the part in the address; the first where it is none */
export function KeepingScreen({ shown }: { shown: string | undefined }) {
  const [here, , part] = PARTS.find(([p]) => p === shown) ?? FIRST;
  return (
    <main id="main" className="page">
      <h1>Household</h1>
      <Unreadable />
      <nav className="keeping-nav" aria-label="Household">
        {PARTS.map(([p, words]) => (
          <a key={p} href={linkTo('household', p)} aria-current={p === here ? 'page' : undefined}>
            {words}
          </a>
        ))}
      </nav>
      {part()}
    </main>
  );
}
