/** Name of the mix, which mix, whether it is saved, undo and redo (also by keyboard), copy and print. */
import { Fragment, useEffect, useState } from 'react';
import { Button, FieldError, Label, TextField } from 'react-aria-components';
import type { Mix } from '../../household/model.ts';
import { Choice } from '../shared/Choice.tsx';
import { meanwhileWords, useChangedMeanwhile } from '../shared/hooks/changed-meanwhile.ts';
import { go } from '../shared/route.ts';
import { NameInput } from '../shared/typing/NameInput.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { historyKey, undoesTyping } from './history-keys.ts';
import { SaveBadge } from './SaveBadge.tsx';
import './MixHead.css';

export function MixHead({ mix }: { mix: Mix }) {
  const { house, change, choose, create, undo, redo, save, retry } = useMixDraft();
  /** What is being typed; what is kept shows otherwise. */
  const [typed, setTyped] = useState<string>();
  const meanwhile = useChangedMeanwhile(mix.name);
  const [fault, setFault] = useState('');
  /** Takes the name that was typed, unless it was changed elsewhere meanwhile: then that is asked first. */
  function rename() {
    if (typed?.trim() && typed !== mix.name && meanwhile.tell()) {
      setFault(meanwhileWords('The name', mix.name, typed));
      return;
    }
    if (typed?.trim()) change((m) => (m.name === typed ? m : { ...m, name: typed }));
    leave();
  }
  function leave() {
    meanwhile.done();
    setFault('');
    setTyped(undefined);
  }
  useHistoryKeys(undo, redo);
  const animals = house.animals.filter((a) => mix.animalIds.includes(a.id));
  return (
    <header className="mix-head">
      <h1 className="sr-only">Mix: {mix.name}</h1>
      <TextField
        className="mix-name"
        value={typed ?? mix.name}
        onChange={(next) => {
          meanwhile.typed();
          setTyped(next);
        }}
        onBlur={rename}
        onKeyDown={(e) => {
          if (e.key === 'Enter') rename();
          if (e.key === 'Escape') leave();
        }}
        isInvalid={fault !== ''}
        validationBehavior="aria"
      >
        <Label>Mix</Label>
        <NameInput />
        <FieldError className="field-error">{fault}</FieldError>
      </TextField>
      {animals.length > 0 && (
        <span className="for-animal">
          for{' '}
          {animals.map((animal, i) => (
            <Fragment key={animal.id}>
              {i > 0 && (i === animals.length - 1 ? ' and ' : ', ')}
              {animal.name} {animal.invented && <span className="tag">invented</span>}
            </Fragment>
          ))}
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
        <Button className="quiet-button" isDisabled={!redo} onPress={() => redo?.()}>
          Redo
        </Button>
        <Button
          className="quiet-button"
          onPress={() =>
            create({
              ...mix,
              id: newId(),
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
        <Button className="button" onPress={() => go('weigh')}>
          Weigh out a batch
        </Button>
      </div>
    </header>
  );
}

/** Undo and redo from anywhere on the screen but a text field, which undoes its typing, and a dialog over it. */
function useHistoryKeys(undo: (() => void) | undefined, redo: (() => void) | undefined) {
  useEffect(() => {
    function press(event: KeyboardEvent) {
      const meant = historyKey(event);
      if (!meant || event.defaultPrevented || event.isComposing) return;
      const at = event.target;
      if (
        at instanceof HTMLElement &&
        (undoesTyping(at as HTMLInputElement) || at.closest('[role="dialog"]'))
      )
        return;
      event.preventDefault();
      (meant === 'undo' ? undo : redo)?.();
    }
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [undo, redo]);
}
