/** A finished batch: what is really in it, whether it is in range, what it holds, how it keeps, and its label. */

import { useQuery } from '@tanstack/react-query';
import { Fragment, useEffect, useMemo, useState } from 'react';
import { HANDS_SOURCES } from '../../care/figures/hands-sources.ts';
import { sourceWords } from '../../foods/source-words.ts';
import type { BatchPapers } from '../../household/reckon/batch/batch-papers.ts';
import { upsetInBatch } from '../../household/reckon/care/food-standing.ts';
import { contentsOfBatch } from '../../household/reckon/cupboard/contents.ts';
import { stopOf } from '../../household/reckon/cupboard/stops.ts';
import { contentWords } from '../../kitchen/batch/content-line.ts';
import { cautionSentence } from '../../kitchen/batch/foods-cautions.ts';
import type { BatchLabel } from '../../kitchen/batch/label.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Batch } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { asKey } from '../shared/hooks/as-key.ts';
import { Button } from '../shared/plain/Button.tsx';
import { StopNotice } from '../shared/recall/StopNotice.tsx';
import { linkTo } from '../shared/route.ts';
import { dayAt } from '../shared/today.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { engine } from '../worker/engine.ts';
import type { Answer } from '../worker/formulation.worker.ts';
import { JarLabel } from './papers/JarLabel.tsx';
import { PrintedLabel } from './papers/PrintedLabel.tsx';
import { UpsetWarning } from './UpsetWarning.tsx';
import { VerdictLine } from './VerdictLine.tsx';
import { endWords, moment } from './view-model.ts';
import './record.css';

export function BatchRecord({ batch }: { batch: Batch }) {
  const { house } = useMixDraft();
  const kept = useMemo(() => contentsOfBatch(house, batch), [house, batch]);
  // Nobody is told how much of it to feed to an animal that does not do well on it.
  const [eaters, notFor] = useMemo(() => {
    const upset = upsetInBatch(house, batch).filter((u) => u.own);
    const t = words().trials.batch;
    return [
      house.animals.filter((a) => upset.every((u) => u.animal.id !== a.id)),
      upset.map((u) => t.notFor(u.name, u.animal.name)),
    ];
  }, [house, batch]);
  const { data: answer, error } = useQuery({
    queryKey: ['papers', asKey(batch), asKey(kept), asKey(eaters)],
    queryFn: async (): Promise<Answer<BatchPapers>> => engine.batchPapers(batch, kept, eaters),
    staleTime: Number.POSITIVE_INFINITY,
  });
  const fault = error?.message ?? (answer && !answer.ok ? answer.message : undefined);
  return (
    <>
      <header className="weigh-head">
        <p>
          <a href={linkTo('weigh')}>{words().weighing.allBatches}</a>
        </p>
        <h1>{words().batch.title(batch.name)}</h1>
      </header>
      <UpsetWarning batch={batch} />
      {fault && <p role="alert">{fault}</p>}
      {!answer && !fault && <p role="status">{words().batch.working}</p>}
      {answer?.ok && (
        <Papers
          batch={batch}
          record={answer.value.record}
          label={{ ...answer.value.label, feeding: [...notFor, ...answer.value.label.feeding] }}
        />
      )}
    </>
  );
}

function Papers({ batch, record, label }: { batch: Batch } & BatchPapers) {
  const t = words().batch;
  const f = words().figures;
  const { givenUp, verdict, madeBy } = record;
  const { house } = useMixDraft();
  const stop = stopOf(house, batch, dayAt);
  const stopped = stop?.sure === true;
  /** Which label is printed; asked for again, it is printed again. */
  const [paper, setPaper] = useState<{ readonly jar: boolean }>();
  // Printed once it stands on the page.
  useEffect(() => {
    if (paper) window.print();
  }, [paper]);
  const when = moment(batch.finishedAt ?? batch.startedAt);
  const { finished, finishedBy, closed, closedBy } = t.record;
  return (
    <>
      <section className="weigh-card" aria-label={t.record.region}>
        {stop && <StopNotice stop={stop} batch={batch} id="record-stop" />}
        {stopped && !givenUp ? null : givenUp ? (
          <p className="weigh-status out" data-testid="record-state">
            <span aria-hidden="true">!</span> {t.record.givenUp}
          </p>
        ) : (
          <VerdictLine verdict={verdict} id="record-state" />
        )}
        <p>
          {madeBy
            ? (givenUp ? closedBy : finishedBy)(record.grams, when, madeBy)
            : (givenUp ? closed : finished)(record.grams, when)}
        </p>
        {endWords(batch) && <p>{endWords(batch)}.</p>}
        {givenUp ? (
          <p>{t.record.givenUpHelp}</p>
        ) : (
          <>
            {!stopped && (
              <Because
                sentences={record.sentences.filter((s) => s !== record.evaluation.verdict)}
                open={verdict.state === 'out'}
              />
            )}
            <div className="button-row">
              <Button className="button" onPress={() => setPaper({ jar: true })}>
                {t.label.printJar}
              </Button>
              <Button className="button" onPress={() => setPaper({ jar: false })}>
                {t.label.print}
              </Button>
            </div>
          </>
        )}
      </section>
      {!givenUp && !stopped && <ShelfLife label={label} />}
      {!givenUp && stopped && <p>{words().pelletStock.stop.noAmounts}</p>}
      {!givenUp && !stopped && label.cautions.length > 0 && (
        <section aria-label={t.record.cautions}>
          <h2>{t.record.cautions}</h2>
          <ul className="weigh-changes">
            {label.cautions.map((c) => (
              <li key={cautionSentence(c)}>
                <Sentence
                  of={t.record.caution(words().figures.list(c.foods), c.title, c.reason, c.way)}
                  with={{ b: (text) => <strong>{text}</strong> }}
                />
              </li>
            ))}
          </ul>
        </section>
      )}
      <section aria-label={t.foods.title}>
        <h2>{t.foods.title}</h2>
        <table>
          <thead>
            <tr>
              <th scope="col">{t.foods.food}</th>
              <th scope="col">{f.massUnit}</th>
              <th scope="col">%</th>
              <th scope="col">{t.foods.planned}</th>
            </tr>
          </thead>
          <tbody>
            {record.foods.map((food) => (
              <tr key={food.food} data-food={food.food}>
                <th scope="row">
                  {food.name}
                  {food.lots.map(({ lot, grams }) => (
                    <small key={lot.id} className="weigh-from">
                      <Sentence
                        of={t.foods.from(grams)}
                        with={{ pack: () => <a href={linkTo('cupboard', lot.id)}>{lot.name}</a> }}
                      />
                    </small>
                  ))}
                </th>
                <td>{f.number(f.mass(food.grams))}</td>
                <td>{f.fixed(food.share, 1)}</td>
                <td>{f.fixed(food.planned, 1)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <section aria-label={t.contents.title}>
        <h2>{t.contents.title}</h2>
        <p className="hint">{t.contents.help}</p>
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
      {!givenUp &&
        (paper?.jar ? <JarLabel label={label} stop={stop} /> : <PrintedLabel label={label} stop={stop} />)}
    </>
  );
}

/** What is said beside the verdict, folded where it is much. */
function Because({ sentences, open }: { sentences: readonly string[]; open: boolean }) {
  if (sentences.length === 0) return null;
  const list = (
    <ul className="weigh-changes">
      {sentences.map((s) => (
        <li key={s}>{s}</li>
      ))}
    </ul>
  );
  if (open || sentences.length <= 2) return list;
  return (
    <details>
      <summary>{words().batch.record.why}</summary>
      {list}
    </details>
  );
}

const SHAPES = { dry: '✓', unsure: '?', damp: '!' } as const;

/** Until when it is used, why, and how it is kept and fed. */
function ShelfLife({ label }: { label: BatchLabel }) {
  const t = words().batch.keeping;
  const { useBy, moisture } = label;
  return (
    <section className="weigh-keeping" aria-label={t.title}>
      <h2>{t.title}</h2>
      <p className="weigh-use-by">
        <Sentence of={t.useBy} with={{ b: () => <strong>{dayInWords(useBy.day)}</strong> }} />
      </p>
      <p>{useBy.reason}</p>
      {useBy.notes.map((note) => (
        <p key={note} className="hint">
          {note}
        </p>
      ))}
      <p>
        <strong>
          <span aria-hidden="true">{SHAPES[moisture.state]}</span> {t[moisture.state]}.
        </strong>{' '}
        {moisture.sentence}
      </p>
      <ul className="weigh-changes">
        {[...label.feeding, label.lasts, words().hands.feed.water, ...label.keep.map((k) => k.sentence)].map(
          (s) => (
            <li key={s}>{s}</li>
          ),
        )}
      </ul>
      <details>
        <summary>{t.sources}</summary>
        <dl className="weigh-sources">
          <dt>{t.useByTerm}</dt>
          <dd>{useBy.source}</dd>
          <dt>{t.moistureTerm}</dt>
          <dd>{moisture.source}</dd>
          <dt>{words().hands.feed.water}</dt>
          <dd>{sourceWords(HANDS_SOURCES.common)}</dd>
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
