/** What an animal is and is fed, the mixes made for it, and what it refuses. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Animal } from '../../../household/model.ts';
import { words } from '../../../words/words.ts';
import { AskFirst } from '../../shared/AskFirst.tsx';
import { focusWhenThere } from '../../shared/focus.ts';
import { go, linkTo } from '../../shared/route.ts';
import { allProfiles, useRemove } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { AnimalMixes } from './AnimalMixes.tsx';
import { AnimalRefusals } from './AnimalRefusals.tsx';
import '../../shared/Fact.css';

export function AboutPart({ animal, onEdit }: { animal: Animal; onEdit(): void }) {
  const { house } = useMixDraft();
  const { animals: t, common, figures } = words();
  const [asking, setAsking] = useState(false);
  const profile = allProfiles(house).find((p) => p.id === animal.profileId);

  return (
    <>
      <dl className="animal-facts">
        <div>
          <dt>{t.needs}</dt>
          <dd>
            <a href={linkTo('targets', animal.profileId)}>{profile?.name ?? animal.profileId}</a>
          </dd>
        </div>
        <div>
          <dt>{t.foodADay}</dt>
          <dd>{animal.dailyGrams === undefined ? t.notKnown : figures.grams(animal.dailyGrams)}</dd>
        </div>
      </dl>
      <div className="button-row">
        <Button className="button" onPress={onEdit}>
          {t.edit}
        </Button>
        {!asking && (
          <Button
            className="quiet-button ask-delete"
            onPress={() => {
              setAsking(true);
              focusWhenThere('.asking .keep');
            }}
          >
            {common.delete}
          </Button>
        )}
      </div>
      {asking && <Asking animal={animal} onKeep={() => setAsking(false)} />}
      <AnimalMixes animal={animal} />
      <AnimalRefusals animal={animal} />
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
      {t.whatGoes}
    </AskFirst>
  );
}
