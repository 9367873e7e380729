/** A finished batch: what is really in it, whether it is in range, what it holds, how it keeps, and its label. */
import { useQuery } from '@tanstack/react-query';
import { Fragment, useMemo } from 'react';
import { Button } from 'react-aria-components';
import { joined } from '../../formulation/explain/sentences.ts';
import type { BatchPapers } from '../../household/reckon/batch/batch-papers.ts';
import { contentsOfBatch } from '../../household/reckon/cupboard/contents.ts';
import { contentWords } from '../../kitchen/batch/batch.ts';
import { type BatchLabel, cautionSentence } from '../../kitchen/batch/label.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Batch } from '../../kitchen/model.ts';
import { linkTo } from '../shared/route.ts';
import { gramWords } from '../shared/words/gram-words.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { engine } from '../worker/engine.ts';
import type { Answer } from '../worker/formulation.worker.ts';
import { PrintedLabel } from './PrintedLabel.tsx';
import { endWords, moment } from './view-model.ts';
import './record.css';

export function BatchRecord({ batch }: { batch: Batch }) {
  const { house } = useMixDraft();
  const kept = useMemo(() => contentsOfBatch(house, batch), [house, batch]);
  const { data: answer, error } = useQuery({
    queryKey: ['papers', batch, kept, house.animals],
    queryFn: async (): Promise<Answer<BatchPapers>> => engine.batchPapers(batch, kept, house.animals),
    staleTime: Number.POSITIVE_INFINITY,
  });
  const fault = error?.message ?? (answer && !answer.ok ? answer.message : undefined);
  return (
    <>
      <header className="weigh-head">
        <p>
          <a href={linkTo('weigh')}>All batches</a>
        </p>
        <h1>Batch: {batch.name}</h1>
      </header>
      {fault && <p role="alert">{fault}</p>}
      {!answer && !fault && <p role="status">Working out the record…</p>}
      {answer?.ok && <Papers batch={batch} {...answer.value} />}
    </>
  );
}

function Papers({ batch, record, label }: { batch: Batch } & BatchPapers) {
  const { givenUp } = record;
  const fit = record.inRange && !givenUp;
  return (
    <>
      <section className="weigh-card" aria-label="Verdict">
        <p className={`weigh-status ${fit ? 'as-planned' : 'out'}`} data-testid="record-state">
          <span aria-hidden="true">{fit ? '✓' : '!'}</span>{' '}
          {givenUp ? 'Given up: not to be fed' : record.inRange ? 'In range' : 'Out of range'}
        </p>
        <p>
          {gramWords(record.grams)}, {givenUp ? 'closed' : 'finished'} {moment(batch.finishedAt!)}
          {record.madeBy && `, made by ${record.madeBy}`}.
        </p>
        {endWords(batch) && <p>{endWords(batch)}.</p>}
        {givenUp ? (
          <p>
            It is no food in hand and reaches no animal. What was poured into it is gone from its lots, and it
            is still found when a lot is followed.
          </p>
        ) : (
          <>
            <ul className="weigh-changes">
              {record.sentences.map((s) => (
                <li key={s}>{s}</li>
              ))}
            </ul>
            <Button className="button" onPress={() => window.print()}>
              Print the label
            </Button>
          </>
        )}
      </section>
      {!givenUp && <ShelfLife label={label} />}
      {!givenUp && label.cautions.length > 0 && (
        <section aria-label="Cautions">
          <h2>Cautions</h2>
          <ul className="weigh-changes">
            {label.cautions.map((c) => (
              <li key={cautionSentence(c)}>
                <strong>{joined(c.foods)}</strong>: {c.title}. {c.reason} {c.way}
              </li>
            ))}
          </ul>
        </section>
      )}
      <section aria-label="What is in it">
        <h2>What is in it</h2>
        <table>
          <thead>
            <tr>
              <th scope="col">Food</th>
              <th scope="col">g</th>
              <th scope="col">%</th>
              <th scope="col">planned %</th>
            </tr>
          </thead>
          <tbody>
            {record.foods.map((f) => (
              <tr key={f.food} data-food={f.food}>
                <th scope="row">
                  {f.name}
                  {f.lots.map(({ lot, grams }) => (
                    <small key={lot.id} className="weigh-from">
                      from <a href={linkTo('cupboard', lot.id)}>{lot.name}</a>, {gramWords(grams)}
                    </small>
                  ))}
                </th>
                <td>{Number(f.grams.toFixed(2))}</td>
                <td>{f.share.toFixed(1)}</td>
                <td>{f.planned.toFixed(1)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <section aria-label="What it holds">
        <h2>What it holds</h2>
        <p className="hint">
          Per 100 g as weighed. ± is 1.96 standard deviations, of the foods that give one; “at least” where
          some food does not say.
        </p>
        <table>
          <tbody>
            {record.contents.map((line) => (
              <tr key={line.tag}>
                <th scope="row">{line.name}</th>
                <td>{contentWords(line)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {!givenUp && <PrintedLabel label={label} out={!record.inRange} />}
    </>
  );
}

const MOIST = {
  dry: ['✓', 'Dry enough to keep'],
  unsure: ['?', 'Perhaps too damp to keep'],
  damp: ['!', 'Too damp to keep'],
} as const;

/** Until when it is used, why, and how it is kept and fed. */
function ShelfLife({ label }: { label: BatchLabel }) {
  const { useBy, moisture } = label;
  const [shape, words] = MOIST[moisture.state];
  return (
    <section className="weigh-keeping" aria-label="Keeping and feeding">
      <h2>Keeping and feeding</h2>
      <p className="weigh-use-by">
        Use by <strong>{dayInWords(useBy.day)}</strong>
      </p>
      <p>{useBy.reason}</p>
      {useBy.notes.map((note) => (
        <p key={note} className="hint">
          {note}
        </p>
      ))}
      <p>
        <strong>
          <span aria-hidden="true">{shape}</span> {words}.
        </strong>{' '}
        {moisture.sentence}
      </p>
      <ul className="weigh-changes">
        {[...label.feeding, label.lasts, ...label.keep.map((k) => k.sentence)].map((s) => (
          <li key={s}>{s}</li>
        ))}
      </ul>
      <details>
        <summary>Where this comes from</summary>
        <dl className="weigh-sources">
          <dt>Use by</dt>
          <dd>{useBy.source}</dd>
          <dt>Moisture</dt>
          <dd>{moisture.source}</dd>
          {label.keep.map((k) => (
            <Fragment key={k.sentence}>
              <dt>{k.sentence}</dt>
              <dd>{k.source}</dd>
            </Fragment>
          ))}
        </dl>
      </details>
    </section>
  );
}
