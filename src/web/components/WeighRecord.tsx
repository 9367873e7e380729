/** A finished batch: what is really in it, whether it is in range, what it holds, how it keeps, and its label. */
import { useQuery } from '@tanstack/react-query';
import { Button } from 'react-aria-components';
import { contentWords } from '../../kitchen/batch.ts';
import type { Batch } from '../../kitchen/model.ts';
import { engine } from '../data/engine.ts';
import { useMixDraft } from '../data/mix-draft.tsx';
import { linkTo } from '../data/route.ts';
import { gramWords, moment } from '../mix/weigh-out-view.ts';
import type { Answer } from '../worker/formulation.worker.ts';
import type { BatchPapers } from '../worker/weighing.ts';
import { WeighLabel } from './WeighLabel.tsx';

export function WeighRecord({ batch }: { batch: Batch }) {
  const { house } = useMixDraft();
  const kept = { lots: house.lots, runs: house.dryingRuns, batches: house.batches };
  const { data: answer, error } = useQuery({
    queryKey: ['papers', batch, house.lots, house.animals],
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
  return (
    <>
      <section className="weigh-card" aria-label="Verdict">
        <p className={`weigh-status ${record.inRange ? 'as-planned' : 'out'}`} data-testid="record-state">
          <span aria-hidden="true">{record.inRange ? '✓' : '!'}</span>{' '}
          {record.inRange ? 'In range' : 'Out of range'}
        </p>
        <p>
          {gramWords(record.grams)}, finished {moment(batch.finishedAt!)}
          {record.madeBy && `, made by ${record.madeBy}`}.
        </p>
        {batch.accepted && <p>Noted when it was closed: {batch.accepted.note}.</p>}
        <ul className="weigh-changes">
          {record.sentences.map((s) => (
            <li key={s}>{s}</li>
          ))}
        </ul>
        <Button className="button" onPress={() => window.print()}>
          Print the label
        </Button>
      </section>
      {label.cautions.length > 0 && (
        <section aria-label="Cautions">
          <h2>Cautions</h2>
          <ul className="weigh-changes">
            {label.cautions.map((c) => (
              <li key={c}>{c}</li>
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
                <th scope="row">{f.name}</th>
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
      <section aria-label="Keeping and feeding">
        <h2>Keeping and feeding</h2>
        <p>
          Use by <strong>{label.useBy.day}</strong>. {label.useBy.reason} <small>{label.useBy.source}</small>
        </p>
        <p>{label.moisture.sentence}</p>
        {label.feeding.map((s) => (
          <p key={s}>{s}</p>
        ))}
        <p>{label.lasts}</p>
        {label.keep.map((k) => (
          <p key={k.sentence}>
            {k.sentence} <small>{k.source}</small>
          </p>
        ))}
      </section>
      <WeighLabel label={label} />
    </>
  );
}
