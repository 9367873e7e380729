/** Who makes the batch; the name is remembered on this device. */

import { useState } from 'react';
import { words } from '../../words/words.ts';
import { deviceStorage } from '../shared/device-storage.ts';
import { TextInput } from '../shared/plain/TextInput.tsx';

const MAKER = 'pouchful.maker';
const LONGEST = 100;

export function useMaker(): [name: string, set: (name: string) => void, remember: () => void] {
  const [name, set] = useState(() => plain(deviceStorage.getItem(MAKER) ?? ''));
  return [name, set, () => deviceStorage.setItem(MAKER, name.trim())];
}

/** Anything may stand in a browser's storage; a name has 100 letters at most, and all of them show. */
const plain = (text: string) => text.replace(/[\p{Cc}\p{Surrogate}]/gu, ' ').slice(0, LONGEST);

export function Maker({ name, onChange }: { name: string; onChange(name: string): void }) {
  return (
    <TextInput label={words().weighing.finish.madeBy} value={name} onChange={onChange} maxLength={LONGEST} />
  );
}
