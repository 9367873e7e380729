/** One batch beside the scale, from the first gram to its record. */

import { useQuery } from '@tanstack/react-query';
import { useMemo, useRef, useState } from 'react';
import { verdictOf } from '../../formulation/explain/verdict.ts';
import {
  agreedTo,
  begunAgain,
  finished,
  givenUp,
  usedUp,
  withAnyAmount,
  withMoreStock,
  withNoMore,
  withoutLast,
  withPour,
  withScaleStep,
} from '../../household/reckon/batch/batch-edits.ts';
import type { Standing } from '../../household/reckon/batch/batch-standing.ts';
import { contentsForWeighing } from '../../household/reckon/batch/judged-problem.ts';
import { afterBatch } from '../../household/reckon/batch/next-batch.ts';
import { asNamed } from '../../household/reckon/cupboard/as-named.ts';
import { contentsOf } from '../../household/reckon/cupboard/contents.ts';
import { stopOf } from '../../household/reckon/cupboard/stops.ts';
import { lotsFor, pourLots } from '../../household/reckon/cupboard/take-from-lots.ts';
import { handledOf } from '../../household/reckon/foods/handled.ts';
import type { Batch } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { FoodHands } from '../shared/hands/FoodHands.tsx';
import { asKey } from '../shared/hooks/as-key.ts';
import { Button } from '../shared/plain/Button.tsx';
import { StopNotice } from '../shared/recall/StopNotice.tsx';
import { go, linkTo } from '../shared/route.ts';
import { dayAt, today } from '../shared/today.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useBatchSave } from '../store/batch-save.ts';
import { useRemove, useSave } from '../store/household.ts';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { engine } from '../worker/engine.ts';
import type { Answer } from '../worker/formulation.worker.ts';
import { AskBatch } from './AskBatch.tsx';
import { BatchRecord } from './BatchRecord.tsx';
import { FinishBatch } from './FinishBatch.tsx';
import { GiveUpBatch } from './GiveUpBatch.tsx';
import { LostBatch } from './LostBatch.tsx';
import { PourList } from './PourList.tsx';
import { PourLots } from './PourLots.tsx';
import { PourStep } from './PourStep.tsx';
import { WeighSheetPaper } from './papers/WeighSheetPaper.tsx';
import { SaveLine } from './SaveLine.tsx';
import { ScaleStep } from './ScaleStep.tsx';
import { Told } from './Told.tsx';
import { UpsetWarning } from './UpsetWarning.tsx';
import { VerdictLine } from './VerdictLine.tsx';
import { afterThose, foodLines, insteadOf, otherFoods, statusWords } from './view-model.ts';
import { useWakeLock } from './wake-lock.ts';

/** @param props.batch as it stands this moment */
export function BatchPage({ batch: stands }: { batch: Batch }) {
  const { house } = useMixDraft();
  const { mutateAsync: keepNew } = useSave('batches');
  const remove = useRemove('batches');
  const { save, keep, retry } = useBatchSave(stands.id);
  const { kitchen, change } = useKitchen();
  const t = words().weighing;
  /** Whether something was poured on this page: then the next food takes the focus. */
  const went = useRef(false);
  const done = stands.finishedAt !== undefined;
  /** Another food than the one asked for, which the keeper pours now. */
  const [chosen, setChosen] = useState<string>();
  /** The food of which a weight is being typed: it stays in sight, whatever another device pours meanwhile. */
  const [typing, setTyping] = useState<string>();
  /** Times of what was poured on this page. */
  const [mine] = useState(() => new Set<string>());
  useWakeLock(!done);
  const packs = useMemo(() => contentsForWeighing(house, stands), [house, stands]);
  const standing = useQuery({
    queryKey: ['standing', asKey(stands), packs.lots.map(asKey).join('\n'), today()],
    queryFn: async (): Promise<{ of: Batch; answer: Answer<Standing> }> => ({
      of: stands,
      answer: await engine.standing(stands, packs, today()),
    }),
    staleTime: Number.POSITIVE_INFINITY,
    // Until it is known what comes next, the batch is shown as it stood: what is being typed stays where it is.
    placeholderData: (before) => before,
    enabled: !done,
  });
  const answer = standing.data?.answer;
  const batch = done ? stands : (standing.data?.of ?? stands);
  // What waits to be sent holds nobody up but its end: what was poured counts here at once.
  const ends = save.is !== 'idle' && save.is !== 'refused' && save.next.finishedAt !== undefined;
  const waits = ends || save.is === 'asked' || standing.isPlaceholderData;
  const now = () => new Date().toISOString();
  const { foods } = stands.problem;
  const kept = useMemo(() => contentsOf(asNamed(house, foods)), [house, foods]);

  const groupOf = (food: string) => (answer?.ok ? answer.value.groups[food] : undefined);

  /** @param noMore whether there is no more of it than that */
  function pour(food: string, grams: number, target: number, noMore = false) {
    went.current = true;
    const lots = pourLots(kept, food, grams, { day: today(), groupOf, pours: batch.pours });
    const at = afterThose(batch.pours, now());
    mine.add(at);
    const after = withPour(batch, { food, lots, target, grams, at });
    keep(batch, noMore ? withNoMore(after, food) : after);
    setChosen(undefined);
    setTyping(undefined);
  }
  function finish(madeBy: string | undefined, reason?: string) {
    const accepted = reason ? { note: reason, on: today() } : undefined;
    const how = { at: now(), ...(madeBy && { madeBy }), ...(accepted && { accepted }) };
    keep(batch, finished(batch, how), true);
    if (kitchen.next && kitchen.next.mixId === batch.mixId) change({ next: afterBatch(kitchen.next) });
  }
  function close(note: string) {
    keep(batch, givenUp(batch, { at: now(), why: { note, on: today() } }), true);
  }
  function giveUp(reason: string) {
    if (batch.pours.length > 0) return close(reason || t.giveUp.noReason);
    remove.mutate(batch, { onSuccess: () => go('weigh') });
  }
  /** The food of this bowl is gone, so its record stays, closed; the plan begins anew. */
  async function startAgain() {
    const again = begunAgain(batch, newId(), now());
    await keepNew(again, undefined);
    close(t.lost.startedAgain);
    go('weigh', again.id);
  }

  if (done) return <BatchRecord batch={batch} />;
  const stop = stopOf(house, batch, dayAt);
  const head = (
    <>
      <header className="weigh-head">
        <p>
          <a href={linkTo('weigh')}>{t.allBatches}</a>
        </p>
        <h1>{t.title(batch.name)}</h1>
      </header>
      <UpsetWarning batch={batch} />
      {stop && <StopNotice stop={stop} batch={batch} id="bowl-stop" />}
    </>
  );
  if (!answer)
    return (
      <>
        {head}
        <SaveLine save={save} retry={retry} />
        <p role="status">{standing.error ? t.notWorkedOut(standing.error.message) : t.working}</p>
      </>
    );
  if (!answer.ok)
    return (
      <>
        {head}
        <p role="alert">
          {answer.field && `${answer.field}: `}
          {answer.message}
        </p>
      </>
    );

  const { state, told, total, names } = answer.value;
  const asked = answer.value.next;
  const verdict = verdictOf(answer.value.evaluation);
  const nameOf = (food: string) => names[food] ?? food;
  const here = typing ?? chosen;
  const next = here === undefined || here === asked?.food ? asked : insteadOf(answer.value, batch, here);
  const grow = (food: string, grams: number) => {
    if (batch.stock?.[food] !== undefined) keep(batch, withMoreStock(batch, { [food]: grams }));
  };
  const status = statusWords(answer.value, batch.grams);
  const last = batch.pours.at(-1);
  return (
    <>
      {head}
      <section className="weigh-total" aria-label={t.total.region}>
        <p>
          <Sentence
            of={t.total.inBowl(total, state.total)}
            with={{ b: (text) => <strong data-testid="running-total">{text}</strong> }}
          />
        </p>
        <progress value={total} max={Math.max(state.total, total)} aria-label={t.total.bar} />
        <p className={`weigh-status ${status.status.replace(' ', '-')}`} data-testid="weigh-status">
          <span aria-hidden="true">{status.shape}</span> {status.words}
        </p>
        {!state.asked && !stop?.sure && <VerdictLine verdict={verdict} short id="weigh-verdict" />}
      </section>
      {state.asked && (
        <AskBatch
          // Another question is another choice.
          key={batch.pours.length}
          asked={state.asked}
          planned={batch.grams}
          inBowl={total}
          spoonBack={told?.spoonBack && { ...told.spoonBack, name: nameOf(told.spoonBack.food) }}
          busy={waits}
          choose={(agreed) => {
            went.current = true;
            keep(batch, agreedTo(batch, agreed));
          }}
          takeOut={(food, grams) => pour(food, -grams, 0)}
          focus={went.current}
        />
      )}
      {state.lost && (
        <LostBatch
          focus={went.current}
          lost={state.lost}
          done={state.done}
          busy={waits}
          accept={(reason, madeBy) => finish(madeBy, reason)}
          grow={
            state.lost.larger &&
            (() => {
              const { needed, total: grams } = state.lost!.larger!;
              keep(batch, withMoreStock(agreedTo(batch, { grams }), needed));
            })
          }
          again={startAgain}
        />
      )}
      {state.asked ? null : next ? (
        <PourStep
          key={`${next.food} ${batch.pours.filter((p) => mine.has(p.at)).length}`}
          next={next}
          planned={batch.grams}
          step={batch.problem.scale_step_grams}
          outOfRange={state.lost !== undefined}
          busy={waits}
          onPour={(grams, noMore) => pour(next.food, grams, next.target, noMore)}
          focus={!state.lost || !went.current}
          follows={went.current}
          instead={next !== asked}
          onTyping={(something) => setTyping(something ? next.food : undefined)}
          asked={asked?.name}
          others={otherFoods(batch, answer.value)}
          onChoose={(food) => {
            went.current = true;
            setTyping(undefined);
            setChosen(food);
          }}
        >
          <FoodHands food={handledOf(house, { id: next.food, name: next.name }, batch.problem.foods)} />
          <PourLots
            lots={lotsFor(kept, next.food, next.target, { day: today(), groupOf })}
            onOverruled={grow}
          />
        </PourStep>
      ) : (
        !state.lost && (
          <FinishBatch total={total} busy={waits} finish={finish}>
            {!stop?.sure && <VerdictLine verdict={verdict} id="end-verdict" />}
          </FinishBatch>
        )
      )}
      <SaveLine save={save} names={names} retry={retry} />
      {told && !state.asked && (
        <Told
          told={told}
          changedOnly={state.lost !== undefined}
          busy={waits}
          takeOut={(food, grams) => pour(food, -grams, 0)}
        />
      )}
      {last && (
        <Button className="quiet-button" isDisabled={waits} onPress={() => keep(batch, withoutLast(batch))}>
          {t.takeBack(nameOf(last.food), last.grams)}
        </Button>
      )}
      {usedUp(batch).map((food) => (
        <p key={food} className="weigh-used-up">
          {t.usedUp(nameOf(food))}{' '}
          <Button
            className="quiet-button"
            isDisabled={waits}
            onPress={() => keep(batch, withAnyAmount(batch, food))}
          >
            {t.moreAfterAll(nameOf(food))}
          </Button>
        </p>
      ))}
      <PourList lines={foodLines(batch, state.asked ? { ...answer.value, next: undefined } : answer.value)} />
      <ScaleStep
        step={batch.problem.scale_step_grams}
        onChange={(step) => !waits && keep(batch, withScaleStep(batch, step))}
      />
      <WeighSheetPaper batch={batch} stop={stop} kept={() => packs} />
      <GiveUpBatch empty={!last} busy={waits || remove.isPending} giveUp={giveUp} />
      {remove.error && <p role="alert">{t.notDeleted(remove.error.message)}</p>}
    </>
  );
}
