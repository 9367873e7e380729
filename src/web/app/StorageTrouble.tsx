/** Says when this browser does not keep what it should. */
import { useSyncExternalStore } from 'react';
import { hasStorageTrouble, onStorageTrouble } from '../shared/device-storage.ts';
import './trouble.css';

export function StorageTrouble() {
  if (!useSyncExternalStore(onStorageTrouble, hasStorageTrouble)) return null;
  return (
    <p className="trouble" role="status">
      This browser keeps nothing more for this page: its storage is switched off, full or broken. What the
      server has is safe; leave the page open until it says that all is saved.
    </p>
  );
}
