/** Who makes the batch; the name is remembered on this device. */
import { useState } from 'react';
import { Input, Label, TextField } from 'react-aria-components';

const MAKER = 'pouchful.maker';

export function useMaker(): [name: string, set: (name: string) => void, remember: () => void] {
  const [name, set] = useState(() => localStorage.getItem(MAKER) ?? '');
  return [name, set, () => localStorage.setItem(MAKER, name.trim())];
}

export function Maker({ name, onChange }: { name: string; onChange(name: string): void }) {
  return (
    <TextField value={name} onChange={onChange}>
      <Label>Made by (optional)</Label>
      <Input autoComplete="off" maxLength={100} />
    </TextField>
  );
}
