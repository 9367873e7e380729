/** Says when this browser does not keep what it should. */

import { useSyncExternalStore } from 'react';
import { words } from '../../words/words.ts';
import { hasStorageTrouble, onStorageTrouble } from '../shared/device-storage.ts';
import './trouble.css';

export function StorageTrouble() {
  if (!useSyncExternalStore(onStorageTrouble, hasStorageTrouble)) return null;
  return (
    <p className="trouble" role="status">
      {words().frame.storage}
    </p>
  );
}
