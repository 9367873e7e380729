/** What of that which an animal is fed now is not to be fed: on each of its pages, and nothing where all is well. */
import { useMemo } from 'react';
import type { Animal } from '../../../household/model.ts';
import { animalStops } from '../../../household/reckon/cupboard/recall.ts';
import { sayBarred } from '../../../kitchen/cupboard/barred.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { linkTo } from '../route.ts';
import { dayAt, today } from '../today.ts';
import { Sentence } from '../words/Sentence.tsx';
import { StopShape, stopHead } from './StopNotice.tsx';
import './recall.css';

export function AnimalStops({ animal }: { animal: Animal }) {
  const { house } = useMixDraft();
  const day = today();
  const { batches, packs } = useMemo(
    () => animalStops(house, animal, { today: day, dayAt }),
    [house, animal, day],
  );
  if (animal.gone || batches.length + packs.length === 0) return null;
  const { animal: t, stop: s } = words().pelletStock;
  return (
    <section className="stop-notice" aria-label={s.region} data-testid="animal-stops">
      {batches.map(({ id, name, stop }) => (
        <div key={id}>
          <p className="stop-head">
            <StopShape sure={stop.sure} /> <strong>{stopHead(stop)}</strong>
          </p>
          <p>
            <Sentence
              of={(stop.sure ? t.batch : t.batchMaybe)(name)}
              with={{ batch: (text) => <a href={linkTo('weigh', id)}>{text}</a> }}
            />
          </p>
          {stop.sure && <p>{s.doIt}</p>}
        </div>
      ))}
      {packs.map(({ lot, barred, was }) => (
        <p key={lot.id}>
          <Sentence
            of={(was.sure ? t.pack : t.packMaybe)(
              sayBarred(barred.why),
              dayInWords(was.from),
              dayInWords(was.to),
            )}
            with={{ pack: () => <a href={linkTo('cupboard', lot.id)}>{lot.name}</a> }}
          />
        </p>
      ))}
      <p>{s.vet}</p>
    </section>
  );
}
