/** One animal: what it is and is fed, the mixes made for it, and what it refuses. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Animal } from '../../household/model.ts';
import { LIFE_STAGES } from '../../targets/life-stage.ts';
import { AskFirst } from '../shared/AskFirst.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { go, linkTo } from '../shared/route.ts';
import { allProfiles, useRemove } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { AnimalMixes } from './AnimalMixes.tsx';
import { AnimalRefusals } from './AnimalRefusals.tsx';
import '../shared/Fact.css';

export function AnimalPage({ animal, onEdit }: { animal: Animal; onEdit(): void }) {
  const { house } = useMixDraft();
  const [asking, setAsking] = useState(false);
  const profile = allProfiles(house).find((p) => p.id === animal.profileId);

  return (
    <article className="animal-page">
      <header>
        <h2 tabIndex={-1}>
          {animal.name} {animal.invented && <span className="tag">invented</span>}
        </h2>
        <p className="hint">
          {animal.species}, {LIFE_STAGES[animal.lifeStage]}
        </p>
      </header>
      <dl className="animal-facts">
        <div>
          <dt>Target</dt>
          <dd>
            <a href={linkTo('targets', animal.profileId)}>{profile?.name ?? animal.profileId}</a>
          </dd>
        </div>
        <div>
          <dt>Food a day</dt>
          <dd>{animal.dailyGrams === undefined ? 'not known' : `${animal.dailyGrams} g`}</dd>
        </div>
      </dl>
      <div className="button-row">
        <Button className="button" onPress={onEdit}>
          Edit
        </Button>
        {!asking && (
          <Button
            className="quiet-button ask-delete"
            onPress={() => {
              setAsking(true);
              focusWhenThere('.asking .keep');
            }}
          >
            Delete
          </Button>
        )}
      </div>
      {asking && <Asking animal={animal} onKeep={() => setAsking(false)} />}
      <AnimalMixes animal={animal} />
      <AnimalRefusals animal={animal} />
      <p className="hint not-a-vet">
        What is shown here is no veterinary advice. See a vet when an animal loses weight, eats less or seems
        ill.
      </p>
    </article>
  );
}

/** The one question before an animal is deleted. */
function Asking({ animal, onKeep }: { animal: Animal; onKeep(): void }) {
  const { change } = useMixDraft();
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
      question={`Delete ${animal.name} for good?`}
      error={erase.error}
      keep={`Keep ${animal.name}`}
      onKeep={keep}
      lose={`Delete ${animal.name}`}
      onLose={remove}
    >
      What it refuses is forgotten. The mixes made for it stay.
    </AskFirst>
  );
}
