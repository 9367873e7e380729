/** Before the first gram: batches of the mix to go on with, and a new one. */

import { useQuery } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import type { Mix } from '../../household/model.ts';
import type { BatchPlan } from '../../household/reckon/batch/batch-plan.ts';
import { batchesOf } from '../../household/reckon/batch/batches.ts';
import { contentsForWeighing } from '../../household/reckon/batch/judged-problem.ts';
import { inScaleSteps, newBatch } from '../../household/reckon/batch/new-batch.ts';
import { sizeOfNext } from '../../household/reckon/batch/next-batch.ts';
import { usedShares } from '../../household/reckon/batch/used-shares.ts';
import { contentsOfFoods } from '../../household/reckon/cupboard/contents.ts';
import { fedMix } from '../../household/reckon/mix/eaters.ts';
import type { ChosenShares } from '../../kitchen/feeding/chosen-shares.ts';
import { words } from '../../words/words.ts';
import { AnswerState } from '../shared/answer.tsx';
import { DustNote } from '../shared/hands/WeighingHands.tsx';
import { asKey } from '../shared/hooks/as-key.ts';
import { useChosenShares } from '../shared/hooks/useChosenShares.ts';
import { NumberInput } from '../shared/NumberInput.tsx';
import { Button } from '../shared/plain/Button.tsx';
import { go, linkTo } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { allProfiles } from '../store/profiles.ts';
import { engine } from '../worker/engine.ts';
import type { Answer } from '../worker/formulation.worker.ts';
import { BatchList } from './BatchList.tsx';
import { PassedLots } from './PassedLots.tsx';
import { ScaleStep } from './ScaleStep.tsx';
import { VerdictLine } from './VerdictLine.tsx';

export function StartBatch({ mix: kept }: { mix: Mix }) {
  const { house } = useMixDraft();
  const mix = useMemo(() => fedMix(house, kept, allProfiles(house)), [kept, house]);
  const { chosenFor, working } = useChosenShares([mix.problem]);
  // How much is weighed out may rest on the shares: it is asked for once they are known.
  if (working) return <AnswerState working fault={undefined} />;
  return <Start mix={mix} chosen={chosenFor(mix.problem)} />;
}

/** @param props.mix with what its animals bring */
function Start({ mix, chosen }: { mix: Mix; chosen: ChosenShares | undefined }) {
  const { house } = useMixDraft();
  const t = words().weighing.begin;
  const save = useSave('batches');
  const [step, setStep] = useState(mix.problem.scale_step_grams);
  const [grams, setGrams] = useState(() => {
    const wanted = sizeOfNext(house, mix, chosen).grams ?? mix.problem.batch_grams;
    return inScaleSteps(wanted, step);
  });
  const [fault, setFault] = useState<{ message: string; stock: boolean }>();
  const [busy, setBusy] = useState(false);
  const problem = useMemo(
    () => ({ ...mix.problem, batch_grams: grams, scale_step_grams: step }),
    [mix.problem, grams, step],
  );
  const { shares } = useMemo(() => usedShares({ problem, shares: mix.shares }), [problem, mix.shares]);
  const kept = useMemo(
    () =>
      contentsOfFoods(
        house,
        problem.foods.map((f) => f.id),
      ),
    [house, problem.foods],
  );
  const { data: plan, error } = useQuery({
    queryKey: ['plan batch', asKey(problem), asKey(shares), asKey(kept)],
    queryFn: async (): Promise<Answer<BatchPlan>> => engine.planBatch(problem, shares, kept, today()),
    staleTime: Number.POSITIVE_INFINITY,
  });
  const { running, finished } = batchesOf(mix.id, house.batches);

  /** Makes the batch and keeps it before the first food is shown. */
  async function begin(countLots: boolean) {
    if (!plan?.ok) return;
    setBusy(true);
    setFault(undefined);
    try {
      const batch = newBatch(mix, {
        id: newId(),
        startedAt: new Date().toISOString(),
        problem,
        shares,
        order: plan.value.order.map((p) => p.food),
        animals: house.animals,
        ...(countLots && { stock: plan.value.stock }),
      });
      const standing = await engine.standing(batch, contentsForWeighing(house, batch), today());
      if (!standing.ok) throw new Error(standing.message);
      const { lost } = standing.value.state;
      if (lost) {
        setFault({
          message: `${lost.sentence}${lost.larger ? ` ${lost.larger.sentence}` : ''}`,
          stock: batch.stock !== undefined,
        });
        return;
      }
      await save.mutateAsync(batch, undefined);
      go('weigh', batch.id);
    } catch (error) {
      setFault({
        message: t.failed(error instanceof Error ? error.message : String(error)),
        stock: false,
      });
    } finally {
      setBusy(false);
    }
  }

  const ready = plan?.ok && plan.value.inRange;
  return (
    <>
      <p>
        <a href={linkTo('mix')}>{words().weighing.backToMix}</a>
      </p>
      <h1>{words().weighing.title(mix.name)}</h1>
      {running.length > 0 && <BatchList title={t.running} batches={running} link={(b) => t.goOn(b.name)} />}
      <section className="weigh-card" aria-label={t.region}>
        <h2>{t.region}</h2>
        <NumberInput
          label={t.weight}
          value={grams}
          min={step}
          step={step}
          measure="mass"
          required
          onCommit={(v) => v !== undefined && setGrams(v)}
        />
        <ScaleStep step={step} onChange={setStep} />
        <p role="status" className={ready === false ? 'weigh-fault' : ''}>
          {plan === undefined
            ? (error?.message ?? t.working)
            : !plan.ok
              ? `${plan.field ? `${plan.field}: ` : ''}${plan.message}`
              : !ready && t.fitFirst}
        </p>
        {plan?.ok && (
          <VerdictLine
            verdict={plan.value.verdict}
            id="plan-verdict"
            page={({ food, nutrient }) => {
              const named = [...problem.beside, ...problem.foods].find((f) => f.id === food);
              return linkTo('foods', named?.ref ?? food, nutrient);
            }}
          />
        )}
        <Button className="big-button" isDisabled={!ready || busy} onPress={() => void begin(true)}>
          {busy ? t.busy : t.press(grams)}
        </Button>
        <DustNote />
        {plan?.ok && plan.value.passed.length > 0 && (
          <section className="weigh-waiting" aria-label={t.notReady}>
            <h3>{t.notReadyHeading}</h3>
            <p>{t.notReadyHelp}</p>
            <PassedLots passed={plan.value.passed} />
          </section>
        )}
        {fault && (
          <div role="alert" className="weigh-fault">
            <p>{fault.message}</p>
            {fault.stock && (
              <Button className="button" onPress={() => void begin(false)}>
                {t.withoutCounting}
              </Button>
            )}
          </div>
        )}
        {ready && plan.ok && (
          <details>
            <summary>{words().weighing.order.why}</summary>
            <ol className="weigh-order">
              {plan.value.order.map((p) => (
                <li key={p.food}>{p.sentence}</li>
              ))}
            </ol>
          </details>
        )}
      </section>
      {finished.length > 0 && (
        <BatchList title={t.finished} batches={finished} link={(b) => t.record(b.name)} />
      )}
    </>
  );
}
