/** That a batch is not to be fed, or perhaps not: why, since when, what to do. In the place of its verdict. */
import { useState } from 'react';
import { isUsedUp } from '../../../household/reckon/batch/batches.ts';
import type { Stop, StoppedLot } from '../../../household/reckon/cupboard/stops.ts';
import { barAdvice } from '../../../kitchen/cupboard/bar-advice.ts';
import { reasonOf, sayBarred } from '../../../kitchen/cupboard/barred.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import type { Batch } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { useSave } from '../../store/household.ts';
import { Failed } from '../Failed.tsx';
import { focusWhenThere } from '../focus.ts';
import { Button } from '../plain/Button.tsx';
import { linkTo } from '../route.ts';
import { today } from '../today.ts';
import { Sentence } from '../words/Sentence.tsx';
import './recall.css';

/** "Do not feed: recalled", by the first of its lots. */
export function stopHead({ sure, lots }: Stop): string {
  const t = words().pelletStock.stop;
  const reason = reasonOf(lots[0]?.barred.why ?? '') ?? 'other';
  return (sure ? t.sure : t.maybe)[reason];
}

export function StopNotice({ stop, batch, id }: { stop: Stop; batch: Batch; id: string }) {
  const t = words().pelletStock.stop;
  const eaten = isUsedUp(batch);
  const advice = new Map(
    stop.lots.flatMap(({ barred }) => {
      const said = barAdvice(barred.why);
      return said ? [[said.words, said.source] as const] : [];
    }),
  );
  return (
    <section
      className="stop-notice"
      aria-label={t.region}
      data-testid={id}
      data-state={stop.sure ? 'stopped' : 'maybe'}
    >
      <p className="stop-head">
        <StopShape sure={stop.sure} /> <strong>{stopHead(stop)}</strong>
      </p>
      {stop.lots.map((s) => (
        <p key={s.lot.id}>
          <Sentence
            of={holds(s)}
            with={{ pack: () => <a href={linkTo('cupboard', s.lot.id)}>{s.lot.name}</a> }}
          />
        </p>
      ))}
      {batch.givenUp ? (
        <p>{t.givenUp}</p>
      ) : eaten ? (
        <p>{stop.sure ? t.eaten : t.eatenMaybe}</p>
      ) : (
        <>
          <p>
            <strong>{stop.sure ? t.doIt : t.hold}</strong>
          </p>
          {[...advice].map(([said, source]) => (
            <p key={said}>
              {said} <span className="source">{words().cupboard.reach.source(source)}</span>
            </p>
          ))}
        </>
      )}
      {!batch.givenUp && <p>{t.vet}</p>}
      {!batch.givenUp && batch.finishedAt !== undefined && <Gone batch={batch} eaten={eaten} />}
      <p className="hint">{t.undo}</p>
    </section>
  );
}

/** Eaten or thrown away: until the keeper says so, it is told wherever the animals' food is. */
function Gone({ batch, eaten }: { batch: Batch; eaten: boolean }) {
  const { pelletStock, common } = words();
  const t = pelletStock.stop;
  const save = useSave('batches');
  const [before, setBefore] = useState<Batch>();
  return (
    <div className="button-row">
      {!eaten && (
        <Button
          className="button stop-gone"
          onPress={() => {
            save.mutate({ ...batch, left: { grams: 0, on: today() } }, batch);
            setBefore(batch);
            focusWhenThere('.stop-undo');
          }}
        >
          {t.gone}
        </Button>
      )}
      <p aria-live="polite">{eaten && before && t.saidGone}</p>
      {eaten && before && (
        <Button
          className="button stop-undo"
          onPress={() => {
            save.mutate({ ...batch, left: before.left }, batch);
            setBefore(undefined);
            focusWhenThere('.stop-gone');
          }}
        >
          {common.undo}
        </Button>
      )}
      <Failed error={save.error} />
    </div>
  );
}

/** A cross for what is not fed, a question for what may be. */
export function StopShape({ sure }: { sure: boolean }) {
  return (
    <svg className="stop-shape" viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
      <path
        d={sure ? 'M5 5 L19 19 M19 5 L5 19' : 'M8 9 a4 4 0 1 1 5.5 3.7 C12.3 13.3 12 14 12 15.5 M12 19 v0.5'}
        fill="none"
        stroke="currentColor"
        strokeWidth="3.2"
        strokeLinecap="round"
      />
    </svg>
  );
}

function holds({ barred, sure, grams }: StoppedLot): string {
  const { pelletStock, figures } = words();
  const t = pelletStock.stop;
  const why = sayBarred(barred.why);
  const day = dayInWords(barred.on);
  if (!sure) return t.mayHold(why, day);
  return grams === undefined ? t.holdsSome(why, day) : t.holds(figures.grams(grams), why, day);
}
