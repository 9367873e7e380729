/** A list of batches, each with the way into it. */
import { gramsMade } from '../../household/reckon/batch/batches.ts';
import type { Batch } from '../../kitchen/model.ts';
import { useParts } from '../shared/parts.tsx';
import { linkTo } from '../shared/route.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { gramWords } from '../shared/words/gram-words.ts';
import { endWords, moment } from './view-model.ts';

export function BatchList(props: { title: string; batches: readonly Batch[]; link(batch: Batch): string }) {
  const parts = useParts(props.batches, { part: 20, of: 'batches' });
  return (
    <section aria-label={props.title}>
      <h2>{props.title}</h2>
      <ul className="weigh-batches">
        {parts.shown.map((batch) => (
          <li key={batch.id}>
            <a href={linkTo('weigh', batch.id)}>{props.link(batch)}</a>
            <Contained what="This batch" of={batch}>
              <Facts batch={batch} />
            </Contained>
          </li>
        ))}
      </ul>
      {parts.more}
    </section>
  );
}

function Facts({ batch }: { batch: Batch }) {
  return (
    <small>
      {moment(batch.finishedAt ?? batch.startedAt)}, {gramWords(gramsMade(batch))}
      {batch.finishedAt === undefined && ` of ${gramWords(batch.grams)}`}
      {endWords(batch) && `. ${endWords(batch)}`}
    </small>
  );
}
