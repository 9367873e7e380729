/** Name of the mix, which mix, whether it is saved, undo and redo (also by keyboard), and other mixes from it. */

import { useEffect, useState } from 'react';
import { Button, FieldError, Label, TextField } from 'react-aria-components';
import { MOST_NAME } from '../../formulation/problem/letters.ts';
import type { Mix } from '../../household/model.ts';
import { hereAmong } from '../../household/reckon/care/here.ts';
import { emptied } from '../../household/reckon/mix/emptied.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { meanwhileWords, useChangedMeanwhile } from '../shared/hooks/changed-meanwhile.ts';
import { go } from '../shared/route.ts';
import { NameInput } from '../shared/typing/NameInput.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { historyKey, undoesTyping } from './history-keys.ts';
import { SaveBadge } from './SaveBadge.tsx';
import './MixHead.css';

/** @param onDelete takes the mix away, with a way to have it back */
export function MixHead({ mix, onDelete }: { mix: Mix; onDelete(): void }) {
  const { common, figures: f, mix: texts } = words();
  const t = texts.head;
  const { house, change, choose, create, undo, redo, save, retry } = useMixDraft();
  /** What is being typed; what is kept shows otherwise. */
  const [typed, setTyped] = useState<string>();
  const meanwhile = useChangedMeanwhile(mix.name);
  const [fault, setFault] = useState('');
  /** Takes the name that was typed, unless it was changed elsewhere meanwhile: then that is asked first. */
  function rename() {
    if (typed?.trim() && typed !== mix.name && meanwhile.tell()) {
      setFault(meanwhileWords(t.theName, mix.name, typed));
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
  /** Keeps another mix made from this one, and goes to its name. */
  function begin(from: Mix, name: string) {
    create({ ...from, id: newId(), name: name.slice(0, MOST_NAME), updatedAt: new Date().toISOString() });
    focusWhenThere('.mix-name input');
  }
  const animals = hereAmong(house.animals, mix.animalIds);
  return (
    <header className="mix-head">
      <h1 className="sr-only">{texts.heading(mix.name)}</h1>
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
        <Label>{t.label}</Label>
        <NameInput />
        <FieldError className="field-error">{fault}</FieldError>
      </TextField>
      {animals.length > 0 && (
        <span className="for-animal">
          {t.forAnimals(f.list(animals.map((a) => (a.invented ? `${a.name} (${t.invented})` : a.name))))}
        </span>
      )}
      {house.mixes.length > 1 && (
        <Choice
          label={t.otherMixes}
          value={mix.id}
          options={house.mixes.map((m) => [m.id, m.name] as const)}
          onChange={choose}
        />
      )}
      <div className="button-row">
        <SaveBadge state={save} retry={retry} />
        <Button className="quiet-button" isDisabled={!undo} onPress={() => undo?.()}>
          {common.undo}
        </Button>
        <Button className="quiet-button" isDisabled={!redo} onPress={() => redo?.()}>
          {t.redo}
        </Button>
        <Button className="quiet-button" onPress={() => begin(emptied(mix), t.freshName)}>
          {t.fresh}
        </Button>
        <Button className="quiet-button" onPress={() => begin(mix, t.copyOf(mix.name))}>
          {t.copy}
        </Button>
        <Button className="quiet-button" onPress={onDelete}>
          {t.deleteMix}
        </Button>
        <Button className="quiet-button" onPress={() => window.print()}>
          {common.print}
        </Button>
        <Button className="button" onPress={() => go('weigh')}>
          {t.weighOut}
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
