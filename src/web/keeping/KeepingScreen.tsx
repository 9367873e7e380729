/** The household as a whole: what was changed, backups, taking out and bringing in, devices, language. */
import type { ReactNode } from 'react';
import { words } from '../../words/words.ts';
import { linkTo } from '../shared/route.ts';
import { Backups } from './Backups.tsx';
import { KeeperCard } from './card/KeeperCard.tsx';
import { Devices } from './Devices.tsx';
import { History } from './History.tsx';
import { LanguageAndUnits } from './LanguageAndUnits.tsx';
import { OutAndIn } from './OutAndIn.tsx';
import { TableWizard } from './table/TableWizard.tsx';
import { Unreadable } from './Unreadable.tsx';
import './keeping.css';

interface Part {
  /** Its name in the address. */
  readonly part: string;
  readonly words: string;
  shown(): ReactNode;
}

function parts(): readonly [first: Part, ...rest: Part[]] {
  const t = words().keeping.parts;
  return [
    { part: 'changes', words: t.changes, shown: () => <History /> },
    { part: 'backups', words: t.backups, shown: () => <Backups /> },
    { part: 'out-and-in', words: t.files, shown: () => <OutAndIn /> },
    { part: 'table', words: t.table, shown: () => <TableWizard /> },
    { part: 'card', words: words().hands.card.part, shown: () => <KeeperCard /> },
    { part: 'devices', words: t.devices, shown: () => <Devices /> },
    { part: 'language', words: t.language, shown: () => <LanguageAndUnits /> },
  ];
}

/** @param shown the part in the address; the first where it is none */
export function KeepingScreen({ shown }: { shown: string | undefined }) {
  const all = parts();
  const here = all.find(({ part }) => part === shown) ?? all[0];
  const { title } = words().keeping;
  return (
    <main id="main" className="page">
      <h1>{title}</h1>
      <Unreadable />
      <nav className="keeping-nav" aria-label={title}>
        {all.map(({ part, words: name }) => (
          <a
            key={part}
            href={linkTo('household', part)}
            aria-current={part === here.part ? 'page' : undefined}
          >
            {name}
          </a>
        ))}
      </nav>
      {here.shown()}
    </main>
  );
}
