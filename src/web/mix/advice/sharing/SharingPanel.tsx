/** One base mix for the animals of this mix, and what each of them gets added. */
import { useMemo } from 'react';
import type { SharedMix } from '../../../../formulation/advice/shared-base.ts';
import type { Eater } from '../../../../formulation/problem/for-animals.ts';
import type { Progress } from '../../../../formulation/problem/progress.ts';
import type { Mix } from '../../../../household/model.ts';
import { isHere } from '../../../../household/reckon/care/here.ts';
import { sharingEaters } from '../../../../household/reckon/mix/sharing.ts';
import { words } from '../../../../words/words.ts';
import { AnswerState } from '../../../shared/answer.tsx';
import { SoFar } from '../../../shared/long/SoFar.tsx';
import { additionsWords } from '../../../shared/long/so-far-words.ts';
import { useLongAnswer } from '../../../shared/long/useLongAnswer.ts';
import { linkTo } from '../../../shared/route.ts';
import { Sentence } from '../../../shared/words/Sentence.tsx';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { longAnswers } from '../../../worker/engine.ts';
import type { Hearing } from '../../../worker/long-lane.ts';
import type { AdviceProps } from '../advice-props.ts';
import { SharingBase } from './SharingBase.tsx';
import './sharing.css';

export function SharingPanel({
  mix,
  kept,
  eaters,
  view,
  nameOf,
}: AdviceProps & { readonly kept: Mix; readonly eaters: readonly Eater[] }) {
  const t = words().sharing;
  const { house } = useMixDraft();
  const own = sharingEaters(kept, eaters, house.animals);
  const several = eaters.length > 1;
  // Each animal brings its own rules and refusals; what is fed beside is the same for all.
  const { beside } = mix.problem;
  const problem = useMemo(() => ({ ...kept.problem, beside }), [kept.problem, beside]);
  const question = several ? { problem, eaters: own } : undefined;
  const asked = useLongAnswer('share', question, (q, hearing: Hearing<Progress<SharedMix>>) =>
    longAnswers.share(q.problem, q.eaters, hearing),
  );
  const onTheWay = asked.soFar?.found;
  const answer = several
    ? asked.working || asked.stopped
      ? (onTheWay ?? asked.value)
      : asked.value
    : undefined;

  return (
    <section className="sharing" aria-label={t.heading}>
      <div className="asked-head">
        <h2 tabIndex={-1}>{t.heading}</h2>
        <AnswerState {...asked} />
      </div>
      <SoFar
        {...asked}
        found={asked.soFar && additionsWords(asked.soFar)}
        stoppedAt={onTheWay ? words().long.stopped.found : words().long.stopped.nothing}
      />
      {!several && <HowToChoose kept={house.animals.filter(isHere).length} chosen={eaters.length} />}
      {answer?.status === 'none' && (
        <>
          <p>{answer.sentence}</p>
          {answer.without_mix.length === 0 && <p className="hint">{t.each}</p>}
        </>
      )}
      {answer?.status === 'shared' && (
        <SharingBase
          shared={answer}
          problem={problem}
          eaters={own}
          stale={asked.working}
          view={view}
          nameOf={nameOf}
        />
      )}
    </section>
  );
}

function HowToChoose({ kept, chosen }: { kept: number; chosen: number }) {
  const t = words().sharing;
  if (kept < 2)
    return (
      <p>
        <Sentence
          of={kept === 0 ? t.none : t.one}
          with={{ add: (text) => <a href={linkTo('animals', 'new')}>{text}</a> }}
        />
      </p>
    );
  return <p>{chosen === 0 ? t.chosenNone : t.chosenOne}</p>;
}
