/** Shows the program to a device that may come in, and the pairing page to one that may not. */
import { type ReactNode, useEffect, useState } from 'react';
import { words } from '../../words/words.ts';
import { shownLater } from '../shared/later/shown-later.tsx';
import { type AccessState, fetchAccess } from '../store/access.ts';
import { startKeeping } from '../store/page-keeper.ts';
import { onUnpaired } from '../store/unpaired.ts';
import { forgetSecret } from './secret.ts';

const PairingScreen = shownLater(() => import('./PairingScreen.tsx').then((m) => m.PairingScreen));

const isLeftOut = (access: AccessState) => access.tokenNeeded && !access.paired;

/** What was asked before anything is drawn. */
let first: Promise<AccessState> | undefined;

/** Asks who may come in, and begins to fetch the household where this device may: beside the texts, not after them. */
export function askAhead(): void {
  first = fetchAccess();
  // Where it is not to be had it is asked for again, and told, by what is drawn.
  first.then((access) => !isLeftOut(access) && startKeeping()).catch(() => {});
}

export function PairedOnly({ children }: { children: ReactNode }) {
  const [access, setAccess] = useState<AccessState | 'unknown'>();
  useEffect(() => {
    // Where the server does not answer, the screens say so, and show what stands on the device.
    const look = () => {
      const access = first ?? fetchAccess();
      first = undefined;
      void access.then(setAccess, () => setAccess((was) => was ?? 'unknown'));
    };
    look();
    return onUnpaired(look);
  }, []);
  const isOut = access !== undefined && access !== 'unknown' && isLeftOut(access);
  useEffect(() => {
    if (access !== undefined && !isOut) forgetSecret();
  }, [access, isOut]);

  if (isOut) return <PairingScreen />;
  if (access !== undefined) return children;
  return (
    <main id="main" className="page">
      <h1>{words().pairing.opening}</h1>
    </main>
  );
}
