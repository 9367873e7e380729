/** Animals: whom the mixes are for, what each needs, is fed and refuses. */

import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Animal } from '../../household/model.ts';
import { isHere } from '../../household/reckon/care/here.ts';
import { LIFE_STAGES, speciesWord } from '../../targets/life-stage.ts';
import { words } from '../../words/words.ts';
import { useParts } from '../shared/parts.tsx';
import { go, linkTo } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { AnimalPage } from './AnimalPage.tsx';
import { AnimalForm } from './about/AnimalForm.tsx';
import { AnimalPicture } from './about/AnimalPicture.tsx';
import { SitterCard } from './sitter/SitterCard.tsx';
import './animals.css';

const NEW = 'new';
const SITTER = 'sitter';

/** @param part of the animal's page */
export function AnimalsScreen({ shown, part }: { shown: string | undefined; part: string | undefined }) {
  const { house } = useMixDraft();
  const t = words().animals;
  /** As it stood when its form was opened; the form stays, whatever becomes of it elsewhere. */
  const [editing, setEditing] = useState<Animal>();
  const chosen = house.animals.find((a) => a.id === shown);
  // Where nobody was chosen there is room beside the list for the first; a phone shows the list alone. Never the first in
  // place of one that is not there: what is then noted would be another animal's.
  const animal = shown === undefined ? house.animals.find(isHere) : chosen;
  const missing = shown !== undefined && shown !== NEW && shown !== SITTER && !chosen;
  const gone = house.animals.filter((a) => !isHere(a));

  const parts = useParts(house.animals.filter(isHere), { part: 100, always: (a) => a.id === animal?.id });

  const goneParts = useParts(gone, { part: 20, always: (a) => a.id === animal?.id });

  const item = (a: Animal) => (
    <li key={a.id}>
      <a
        href={linkTo('animals', a.id)}
        aria-current={a.id === animal?.id ? 'true' : undefined}
        onClick={() => setEditing(undefined)}
      >
        <AnimalPicture photo={house.photos.find((p) => p.id === a.id)} alt="" size="list" />
        <span>{a.name}</span> {a.invented && <span className="tag">{t.invented}</span>}
        <small>
          {a.gone
            ? t.gone[a.gone.how](a.gone.on, today())
            : t.kind(speciesWord(a.species), LIFE_STAGES[a.lifeStage])}
        </small>
      </a>
    </li>
  );

  const form = editing?.id === shown && editing && (
    <AnimalForm key={editing.id} animal={editing} onDone={() => setEditing(undefined)} />
  );

  function detail() {
    if (shown === NEW) {
      return <AnimalForm key={NEW} onDone={(id) => (id ? go('animals', id) : go('animals'))} />;
    }
    if (form) return form;
    if (shown === SITTER) return <SitterCard />;
    if (!animal) return <p className="empty">{missing ? t.missing : t.addFirst}</p>;
    return (
      <AnimalPage
        key={animal.id}
        animal={animal}
        part={part}
        onEdit={() => {
          go('animals', animal.id);
          setEditing(animal);
        }}
      />
    );
  }

  return (
    <main id="main" className={`foods-screen animals-screen ${shown !== undefined ? 'has-detail' : ''}`}>
      <section className="finder" aria-label={t.title}>
        <div className="list-head">
          <h1>{t.title}</h1>
          <Button
            className="button small"
            onPress={() => {
              setEditing(undefined);
              go('animals', NEW);
            }}
          >
            {t.new}
          </Button>
        </div>
        {house.animals.length === 0 && <p className="empty">{t.none}</p>}
        <ul className="food-list">{parts.shown.map(item)}</ul>
        {parts.more}
        <div className="animal-links">
          {house.animals.some(isHere) && (
            <a className="link-line" href={linkTo('animals', SITTER)}>
              {t.sitter}
            </a>
          )}
          <a className="link-line" href={linkTo('household', 'card')}>
            {t.keeperCard}
          </a>
        </div>
        {gone.length > 0 && (
          <>
            <h2 className="gone-group">{t.goneGroup}</h2>
            <ul className="food-list">{goneParts.shown.map(item)}</ul>
            {goneParts.more}
          </>
        )}
      </section>
      <section className="detail" aria-label={t.one}>
        <a className="back" href={linkTo('animals')} onClick={() => setEditing(undefined)}>
          {t.all}
        </a>
        <Contained what={t.thisOne} of={animal}>
          {detail()}
        </Contained>
      </section>
    </main>
  );
}
