/** A list of batches, each with the way into it. */
import { gramsMade } from '../../household/reckon/batch/batches.ts';
import type { Batch } from '../../kitchen/model.ts';
import { useParts } from '../shared/parts.tsx';
import { linkTo } from '../shared/route.ts';
import { gramWords } from '../shared/words/gram-words.ts';
import { endWords, moment } from './view-model.ts';

export function BatchList(props: { title: string; batches: readonly Batch[]; link(batch: Batch): string }) {
  const parts = useParts(props.batches, { part: 20, of: 'batches' });
  return (
    <section aria-label={props.title}>
      <h2>{props.title}</h2>
      <ul className="weigh-batches">
        {parts.shown.map((batch) => {
          const poured = gramsMade(batch);
          return (
            <li key={batch.id}>
              <a href={linkTo('weigh', batch.id)}>{props.link(batch)}</a>
              <small>
                {moment(batch.finishedAt ?? batch.startedAt)}, {gramWords(poured)}
                {batch.finishedAt === undefined && ` of ${gramWords(batch.grams)}`}
                {endWords(batch) && `. ${endWords(batch)}`}
              </small>
            </li>
          );
        })}
      </ul>
      {parts.more}
    </section>
  );
}
