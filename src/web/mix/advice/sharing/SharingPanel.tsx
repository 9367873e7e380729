/** One base mix for the animals of this mix, and what each of them gets added. */
import type { Eater } from '../../../../formulation/problem/for-animals.ts';
import type { Mix } from '../../../../household/model.ts';
import { sharingEaters } from '../../../../household/reckon/mix/sharing.ts';
import { AnswerState, useAnswer } from '../../../shared/answer.tsx';
import { linkTo } from '../../../shared/route.ts';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { engine } from '../../../worker/engine.ts';
import type { AdviceProps } from '../advice-props.ts';
import { SharingBase } from './SharingBase.tsx';
import './sharing.css';

export function SharingPanel({
  kept,
  eaters,
  view,
  nameOf,
}: AdviceProps & { readonly kept: Mix; readonly eaters: readonly Eater[] }) {
  const { house } = useMixDraft();
  const own = sharingEaters(kept, eaters, house.animals);
  const several = eaters.length > 1;
  const question = several ? { problem: kept.problem, eaters: own } : undefined;
  const asked = useAnswer('share', question, (q) => engine.share(q.problem, q.eaters));
  const answer = several ? asked.value : undefined;

  return (
    <section className="sharing" aria-label="Several animals">
      <div className="asked-head">
        <h2 tabIndex={-1}>Several animals</h2>
        <AnswerState {...asked} />
      </div>
      {!several && <HowToChoose kept={house.animals.length} chosen={eaters.length} />}
      {answer?.status === 'none' && (
        <>
          <p>{answer.sentence}</p>
          {answer.without_mix.length === 0 && (
            <p className="hint">Make a mix for each: copy this one, and choose one animal for each copy.</p>
          )}
        </>
      )}
      {answer?.status === 'shared' && (
        <SharingBase
          shared={answer}
          problem={kept.problem}
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
  if (kept < 2)
    return (
      <p>
        With two animals or more, one base mix can be found for all of them, with the little that each gets
        added. {kept === 0 ? 'No animal is kept yet' : 'One animal is kept so far'}:{' '}
        <a href={linkTo('animals', 'new')}>add {kept === 0 ? 'one' : 'another'}</a>.
      </p>
    );
  return (
    <p>
      This mix is made for {chosen === 0 ? 'no animal yet' : 'one animal'}. Choose two or more under “Made
      for”, near the top of this page; then one base mix is found for all of them, with the little that each
      gets added.
    </p>
  );
}
