/** One run: while it dries, once it is weighed, and what came of it. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { cupboardFoods } from '../../household/reckon/cupboard/lot-foods.ts';
import { kindOf, outcomeOf } from '../../household/reckon/drying/drying-outcome.ts';
import type { RunLine } from '../../household/reckon/drying/drying-runs.ts';
import { takenBy } from '../../kitchen/cupboard/cupboard.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { AskFirst } from '../shared/AskFirst.tsx';
import { Fact } from '../shared/Fact.tsx';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { go, linkTo } from '../shared/route.ts';
import { clockOf } from '../shared/words/clock.ts';
import { useRemove, useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { DampnessVerdict } from './DampnessVerdict.tsx';
import { DryingCautions } from './DryingCautions.tsx';
import { EndRun } from './EndRun.tsx';
import { FreshChoice } from './FreshChoice.tsx';
import { RunChecks } from './RunChecks.tsx';
import { RunMark } from './RunMark.tsx';
import { RunResult } from './RunResult.tsx';
import { useFreshFood } from './useFreshFood.ts';

export function RunPage({ line, now }: { line: RunLine; now: number }) {
  const { run, name, state, lot } = line;
  const { house, mix } = useMixDraft();
  const { page: t, state: states } = words().drying;
  const { said, fresh } = useFreshFood(lot?.food ?? '');
  const save = useSave('dryingRuns');
  const scaleStep = mix?.problem.scale_step_grams ?? 1;
  const food = cupboardFoods(house).find((f) => f.id === lot?.food);
  const outcome = run.gramsAfter === undefined ? undefined : outcomeOf(house, run, fresh, { scaleStep });
  const parts = { line, fresh, scaleStep, now, save };

  return (
    <article className="dry-run">
      <h2 tabIndex={-1}>{name}</h2>
      <p className="lot-state big">
        <RunMark kind={state} />
        <span>{states[state]}</span>
      </p>
      {state === 'drying' && <RunChecks {...parts} />}
      {lot && !said && <FreshChoice food={lot.food} name={food?.name ?? lot.name} />}
      {state === 'drying' && <EndRun {...parts} />}
      {state === 'weighed' && outcome && <DampnessVerdict {...parts} outcome={outcome} />}
      {state === 'done' && outcome && <RunResult {...parts} outcome={outcome} />}
      <Failed error={save.error} />
      <dl className="animal-facts">
        <Fact name={t.began} words={clockOf(run.startedAt, now)} />
        {run.endedAt && <Fact name={t.ended} words={clockOf(run.endedAt, now)} />}
        <Fact
          name={t[run.device]}
          words={
            run.hours
              ? t.setFor(run.celsius, t.trays(run.trays), run.hours)
              : t.set(run.celsius, t.trays(run.trays))
          }
        />
        <Fact
          name={t.onTrays}
          words={
            takenBy(run) === run.gramsBefore
              ? sayGrams(run.gramsBefore)
              : t.ofTaken(sayGrams(run.gramsBefore), sayGrams(takenBy(run)))
          }
        />
        {lot && (
          <div>
            <dt>{t.pack}</dt>
            <dd>
              <a href={linkTo('cupboard', lot.id)}>{lot.name}</a>
            </dd>
          </div>
        )}
      </dl>
      {state === 'drying' && (
        <DryingCautions device={run.device} kind={run.kind ?? kindOf(house, lot?.food ?? '', fresh)} />
      )}
      {!line.dried && <Ending line={line} save={save} />}
    </article>
  );
}

/** The ways out that leave nothing in the cupboard: thrown away, or begun by mistake. */
function Ending({
  line: { run, name, state },
  save,
}: {
  line: RunLine;
  save: ReturnType<typeof useSave<'dryingRuns'>>;
}) {
  const erase = useRemove('dryingRuns');
  const { page: t, thrownAwayNote } = words().drying;
  const [asking, setAsking] = useState<'lose' | 'delete'>();
  const keep = () => {
    setAsking(undefined);
    focusWhenThere('.dry-ending .quiet-button');
  };

  function lose() {
    const at = new Date().toISOString();
    const { gramsAfter: _, ...rest } = run;
    save.mutate({ ...rest, checks: [...run.checks, { at, note: thrownAwayNote }], endedAt: at }, run);
    setAsking(undefined);
    focusWhenThere('.dry-run h2');
  }
  function remove() {
    erase.mutate(run, {
      onSuccess: () => {
        go('drying');
        focusWhenThere('.dry-screen .finder h1');
      },
    });
  }

  if (asking)
    return (
      <AskFirst
        question={asking === 'lose' ? t.wasLost(name) : t.deleteRun(name)}
        error={erase.error}
        keep={t.goBack}
        onKeep={keep}
        lose={asking === 'lose' ? t.lost : t.delete}
        onLose={asking === 'lose' ? lose : remove}
      >
        {asking === 'lose' ? t.lostMeans : t.deleteMeans}
      </AskFirst>
    );
  const ask = (what: 'lose' | 'delete') => {
    setAsking(what);
    focusWhenThere('.asking .keep');
  };
  return (
    <div className="button-row dry-ending">
      {state !== 'lost' && (
        <Button className="quiet-button" onPress={() => ask('lose')}>
          {t.askLost}
        </Button>
      )}
      <Button className="quiet-button" onPress={() => ask('delete')}>
        {t.askDelete}
      </Button>
    </div>
  );
}
