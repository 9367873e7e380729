/** What is known of an animal: its age, needs, food and weight beside that of grown ones of its kind; the rest behind a press. */

import type { ReactNode } from 'react';
import { ageInWords } from '../../../care/animal/age.ts';
import { speciesKind } from '../../../care/animal/species.ts';
import { ADULT_WEIGHTS } from '../../../care/figures/adult-weights.ts';
import { sourceWords } from '../../../foods/source-words.ts';
import type { Animal } from '../../../household/model.ts';
import { lastWeighing } from '../../../household/reckon/care/records-of.ts';
import { speciesWord } from '../../../targets/life-stage.ts';
import { words } from '../../../words/words.ts';
import { linkTo } from '../../shared/route.ts';
import { dayAt, today } from '../../shared/today.ts';
import { Sentence } from '../../shared/words/Sentence.tsx';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { allProfiles } from '../../store/profiles.ts';
import '../../shared/Fact.css';

export function AnimalFacts({ animal }: { animal: Animal }) {
  const { house } = useMixDraft();
  const { animals: t, common, figures: f } = words();
  const profile = allProfiles(house).find((p) => p.id === animal.profileId);
  const age = ageInWords(animal.born, animal.gone?.on ?? today());
  const last = lastWeighing(house, animal.id);
  const adults = ADULT_WEIGHTS[speciesKind(animal.species)];
  const more: [string, ReactNode][] = [
    ...said(t.wheelIs, animal.wheel === undefined ? undefined : animal.wheel ? common.yes : common.no),
    ...said(t.roomIs, animal.room === undefined ? undefined : f.degrees(animal.room)),
    ...said(
      t.daylightIs,
      animal.daylight === undefined ? undefined : t.daylights[animal.daylight ? 'true' : 'false'],
    ),
    ...said(t.tubIs, animal.tub === undefined ? undefined : f.grams(animal.tub, 1)),
  ];

  return (
    <>
      <dl className="animal-facts">
        <Named name={t.ageIs}>{age ?? t.notKnown}</Named>
        {animal.sex && <Named name={t.sex}>{t.sexes[animal.sex]}</Named>}
        <Named name={t.needs}>
          <a href={linkTo('targets', animal.profileId)}>{profile?.name ?? animal.profileId}</a>
        </Named>
        <Named name={t.foodADay}>
          {animal.dailyGrams === undefined ? t.notKnown : f.grams(animal.dailyGrams)}
        </Named>
        <Named name={t.last}>
          {last ? (
            t.lastOn(last.grams, dayAt(last.at), today())
          ) : animal.gone ? (
            t.notKnown
          ) : (
            <Sentence
              of={t.never}
              with={{ weigh: (text) => <a href={linkTo('animals', animal.id, 'weight')}>{text}</a> }}
            />
          )}
        </Named>
        {animal.usualGrams !== undefined && <Named name={t.usual}>{f.grams(animal.usualGrams, 1)}</Named>}
      </dl>
      {adults && (
        <p className="hint">
          {t.adults(speciesWord(animal.species), adults.low, adults.high, sourceWords(adults.source))}
        </p>
      )}
      {animal.notes !== undefined && <p className="animal-notes">{animal.notes}</p>}
      {more.length > 0 && (
        <details>
          <summary>{t.moreFacts}</summary>
          <dl className="animal-facts">
            {more.map(([name, value]) => (
              <Named key={name} name={name}>
                {value}
              </Named>
            ))}
          </dl>
        </details>
      )}
    </>
  );
}

function said(name: string, value: string | undefined): [string, string][] {
  return value === undefined ? [] : [[name, value]];
}

function Named({ name, children }: { name: string; children: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
