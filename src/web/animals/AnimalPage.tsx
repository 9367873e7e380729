/** One animal: its name, and the part of its page that the address names. */
import type { ReactNode } from 'react';
import { conditionsNow } from '../../care/animal/conditions.ts';
import type { Animal } from '../../household/model.ts';
import { LIFE_STAGES, speciesWord } from '../../targets/life-stage.ts';
import { words } from '../../words/words.ts';
import { AnimalStops } from '../shared/recall/AnimalStops.tsx';
import { linkTo } from '../shared/route.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { AboutPart } from './about/AboutPart.tsx';
import { GoneLine } from './about/AnimalGone.tsx';
import { AnimalPicture } from './about/AnimalPicture.tsx';
import { FoodPart } from './food/FoodPart.tsx';
import { LeftoversPart } from './leftovers/LeftoversPart.tsx';
import { LifePart } from './life/LifePart.tsx';
import { TrialsPart } from './trials/TrialsPart.tsx';
import { VetPart } from './vet/VetPart.tsx';
import { WeightPart } from './weight/WeightPart.tsx';

/** As addresses have them, in the order in which they are shown. */
const PARTS = ['about', 'weight', 'food', 'left', 'trials', 'life', 'vet'] as const;

type Part = (typeof PARTS)[number];

export function AnimalPage({
  animal,
  part,
  onEdit,
}: {
  animal: Animal;
  /** As the address has it; what it is where that names no part. */
  part: string | undefined;
  onEdit(): void;
}) {
  const { animals: t } = words();
  const { house } = useMixDraft();
  const photo = house.photos.find((p) => p.id === animal.id);
  const here = PARTS.find((p) => p === part) ?? 'about';
  return (
    <article className="animal-page">
      <header className="animal-head">
        <AnimalPicture photo={photo} alt={t.photo.of(animal.name)} size="page" />
        <div>
          <h2 tabIndex={-1}>
            {animal.name} {animal.invented && <span className="tag">{t.invented}</span>}
          </h2>
          <p className="hint animal-kind">
            {t.kind(speciesWord(animal.species), LIFE_STAGES[animal.lifeStage])}
            {conditionsNow(animal).map(({ what }) => (
              <span key={what} className="tag">
                {t.conditions.names[what]}
              </span>
            ))}
          </p>
        </div>
      </header>
      {animal.gone && <GoneLine animal={animal} gone={animal.gone} />}
      <nav className="animal-nav" aria-label={t.partsOf(animal.name)}>
        {PARTS.map((p) => (
          <a
            key={p}
            href={p === 'about' ? linkTo('animals', animal.id) : linkTo('animals', animal.id, p)}
            aria-current={p === here ? 'page' : undefined}
          >
            {t.parts[p]}
          </a>
        ))}
      </nav>
      <AnimalStops animal={animal} />
      {partOf(here, animal, onEdit)}
      <p className="hint not-a-vet">{t.notAVet}</p>
    </article>
  );
}

function partOf(part: Part, animal: Animal, onEdit: () => void): ReactNode {
  switch (part) {
    case 'about':
      return <AboutPart animal={animal} onEdit={onEdit} />;
    case 'weight':
      return <WeightPart animal={animal} />;
    case 'food':
      return <FoodPart animal={animal} />;
    case 'left':
      return <LeftoversPart animal={animal} />;
    case 'trials':
      return <TrialsPart animal={animal} />;
    case 'life':
      return <LifePart animal={animal} />;
    case 'vet':
      return <VetPart animal={animal} />;
  }
}
