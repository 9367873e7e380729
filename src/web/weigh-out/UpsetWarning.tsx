/** That a batch holds a food on which an animal did not do well; nothing where it holds none, or is not fed any more. */
import { isUsedUp } from '../../household/reckon/batch/batches.ts';
import { upsetInBatch } from '../../household/reckon/care/food-standing.ts';
import type { Batch } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { linkTo } from '../shared/route.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import './upset-warning.css';

export function UpsetWarning({ batch }: { batch: Batch }) {
  const t = words().trials.batch;
  const { house } = useMixDraft();
  if (batch.givenUp || isUsedUp(batch)) return null;
  const upset = upsetInBatch(house, batch);
  if (upset.length === 0) return null;
  return (
    <section className="upset-warning" role="alert" aria-label={t.heading}>
      <strong>{t.heading}</strong>
      {upset.map(({ food, name, animal, trial, own }) => (
        <p key={`${food} ${trial}`}>
          <Sentence
            of={(own ? t.own : t.other)(name, animal.name)}
            with={{ trial: (text) => <a href={linkTo('animals', animal.id, 'trials')}>{text}</a> }}
          />
        </p>
      ))}
    </section>
  );
}
