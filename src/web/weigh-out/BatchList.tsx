/** A list of batches, each with the way into it. */
import { gramsMade } from '../../household/reckon/batch/batches.ts';
import { stopOf } from '../../household/reckon/cupboard/stops.ts';
import type { Batch } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { useParts } from '../shared/parts.tsx';
import { linkTo } from '../shared/route.ts';
import { dayAt } from '../shared/today.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { endWords, moment } from './view-model.ts';
import '../shared/recall/recall.css';

export function BatchList(props: { title: string; batches: readonly Batch[]; link(batch: Batch): string }) {
  const t = words().weighing.begin;
  const parts = useParts(props.batches, { part: 20 });
  return (
    <section aria-label={props.title}>
      <h2>{props.title}</h2>
      <ul className="weigh-batches">
        {parts.shown.map((batch) => (
          <li key={batch.id}>
            <a href={linkTo('weigh', batch.id)}>{props.link(batch)}</a>
            <Contained what={t.thisBatch} of={batch}>
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
  const t = words().weighing.begin;
  const when = moment(batch.finishedAt ?? batch.startedAt);
  const made = gramsMade(batch);
  const end = endWords(batch);
  const { house } = useMixDraft();
  const stop = stopOf(house, batch, dayAt);
  return (
    <small>
      {batch.finishedAt === undefined ? t.madeOf(when, made, batch.grams) : t.made(when, made)}
      {end && `. ${end}`}
      {stop && (
        <>
          {' '}
          <strong className="stop-tag">{words().pelletStock.stop[stop.sure ? 'tag' : 'tagMaybe']}</strong>
        </>
      )}
    </small>
  );
}
