/** Name of the mix, which mix, whether it is saved, undo, copy and print. */
import { useEffect, useState } from 'react';
import { Button, Input, Label, TextField } from 'react-aria-components';
import type { Mix } from '../../household/model.ts';
import { useMixDraft } from '../data/mix-draft.tsx';
import { Choice } from './Choice.tsx';
import { SaveBadge } from './SaveBadge.tsx';

export function MixHead({ mix }: { mix: Mix }) {
  const { house, change, choose, create, undo, save, retry } = useMixDraft();
  const [name, setName] = useState(mix.name);
  useEffect(() => setName(mix.name), [mix.name]);
  const animal = house.animals.find((a) => a.id === mix.animalId);
  return (
    <header className="mix-head">
      <h1 className="sr-only">Mix: {mix.name}</h1>
      <TextField
        className="mix-name"
        value={name}
        onChange={setName}
        onBlur={() =>
          name.trim() ? change((m) => (m.name === name ? m : { ...m, name })) : setName(mix.name)
        }
      >
        <Label>Mix</Label>
        <Input />
      </TextField>
      {animal && (
        <span className="for-animal">
          for {animal.name} {animal.invented && <span className="tag">invented</span>}
        </span>
      )}
      {house.mixes.length > 1 && (
        <Choice
          label="Other mixes"
          value={mix.id}
          options={house.mixes.map((m) => [m.id, m.name] as const)}
          onChange={choose}
        />
      )}
      <div className="button-row">
        <SaveBadge state={save} retry={retry} />
        <Button className="quiet-button" isDisabled={!undo} onPress={() => undo?.()}>
          Undo
        </Button>
        <Button
          className="quiet-button"
          onPress={() =>
            create({
              ...mix,
              id: crypto.randomUUID(),
              name: `${mix.name} (copy)`,
              updatedAt: new Date().toISOString(),
            })
          }
        >
          Copy
        </Button>
        <Button className="quiet-button" onPress={() => window.print()}>
          Print
        </Button>
      </div>
    </header>
  );
}
