/** What an animal is and is fed, its health, the mixes made for it, and what it refuses. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Animal } from '../../../household/model.ts';
import { words } from '../../../words/words.ts';
import { AskFirst } from '../../shared/AskFirst.tsx';
import { focusWhenThere } from '../../shared/focus.ts';
import { go } from '../../shared/route.ts';
import { useRemove } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { AnimalConditions } from './AnimalConditions.tsx';
import { AnimalFacts } from './AnimalFacts.tsx';
import { GoneForm } from './AnimalGone.tsx';
import { AnimalMixes } from './AnimalMixes.tsx';
import { AnimalPhoto } from './AnimalPhoto.tsx';
import { AnimalRefusals } from './AnimalRefusals.tsx';

export function AboutPart({ animal, onEdit }: { animal: Animal; onEdit(): void }) {
  const { animals: t, common } = words();
  const [open, setOpen] = useState<'gone' | 'delete'>();

  function ask(what: 'gone' | 'delete', focus: string) {
    setOpen(what);
    focusWhenThere(focus);
  }

  return (
    <>
      <AnimalFacts animal={animal} />
      <div className="button-row">
        <Button className="button" onPress={onEdit}>
          {t.edit}
        </Button>
        {open === undefined && !animal.gone && (
          <Button className="quiet-button ask-gone" onPress={() => ask('gone', '.gone-form h3')}>
            {t.gone.ask}
          </Button>
        )}
        {open === undefined && (
          <Button className="quiet-button ask-delete" onPress={() => ask('delete', '.asking .keep')}>
            {common.delete}
          </Button>
        )}
      </div>
      {open === 'gone' && (
        <GoneForm
          animal={animal}
          onDone={() => {
            setOpen(undefined);
            focusWhenThere('.ask-gone');
          }}
        />
      )}
      {open === 'delete' && <Asking animal={animal} onKeep={() => setOpen(undefined)} />}
      <AnimalPhoto animal={animal} />
      <AnimalConditions animal={animal} />
      {!animal.gone && <AnimalMixes animal={animal} />}
      {(!animal.gone || animal.refuses.length > 0) && <AnimalRefusals animal={animal} />}
    </>
  );
}

/** The one question before an animal is deleted. */
function Asking({ animal, onKeep }: { animal: Animal; onKeep(): void }) {
  const { change } = useMixDraft();
  const t = words().animals;
  const erase = useRemove('animals');

  function keep() {
    onKeep();
    focusWhenThere('.ask-delete');
  }

  function remove() {
    if (erase.isPending) return;
    // A change of the mix at hand may still be on its way to the server; it must not name an animal that is gone.
    change((m) =>
      m.animalIds.includes(animal.id) ? { ...m, animalIds: m.animalIds.filter((id) => id !== animal.id) } : m,
    );
    erase.mutate(animal, {
      onSuccess: () => {
        go('animals');
        focusWhenThere('.finder .list-head .button');
      },
    });
  }

  return (
    <AskFirst
      question={t.askDelete(animal.name)}
      error={erase.error}
      keep={t.keep(animal.name)}
      onKeep={keep}
      lose={t.lose(animal.name)}
      onLose={remove}
    >
      {t.whatGoes} {t.whatGoesHow}
    </AskFirst>
  );
}
