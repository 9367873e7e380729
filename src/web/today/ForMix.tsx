/** What is next for the mix at hand, what else needs hands, and what is left of what is being fed. */
import { useQuery } from '@tanstack/react-query';
import { isFit } from '../../formulation/explain/verdict.ts';
import type { Evaluation } from '../../formulation/problem/result.ts';
import type { Mix } from '../../household/model.ts';
import { isMade } from '../../household/reckon/first-steps.ts';
import { isNew } from '../../household/reckon/new-household.ts';
import { words } from '../../words/words.ts';
import { useCalendar } from '../shared/hooks/useCalendar.ts';
import { linkTo } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { engine } from '../worker/engine.ts';
import type { Answer } from '../worker/formulation.worker.ts';
import { BatchLeft } from './BatchLeft.tsx';
import { Errands } from './Errands.tsx';
import { NextSentence } from './NextSentence.tsx';
import { nextOf } from './next-of.ts';
import { OtherBatches } from './OtherBatches.tsx';
import { openBatches } from './open-batches.ts';
import type { AskDue } from './useCareDue.ts';

export function ForMix({ kept, care }: { kept: Mix; care: AskDue }) {
  const { house } = useMixDraft();
  const t = words().today;
  const day = today();
  const { mix, view, fault } = useCalendar(kept, day);
  const standing = useStanding(mix);
  const fresh = isNew(house);
  const made = isMade(mix);
  const next = view && nextOf(house, view, day);
  const weighs = next?.to[0] === 'weigh' && openBatches(house).some((b) => b.to[1] === next.to[1]);
  return (
    <>
      {!weighs && (
        <section className="today-next" aria-label={t.next}>
          {!made ? (
            <NextSentence
              sentence={mix.problem.foods.length === 0 ? t.noFoods(mix.name) : t.notMade(mix.name)}
              link={mix.problem.foods.length === 0 ? t.chooseFoods : t.toFit}
              to={['mix']}
            />
          ) : fresh && standing === undefined ? (
            <p className="today-sentence" role="status">
              {t.looking(mix.name)}
            </p>
          ) : fresh && standing === 'out' ? (
            <NextSentence sentence={t.outFirst(mix.name)} link={t.toFit} to={['mix']} />
          ) : (
            next && <NextSentence {...next} />
          )}
          {fault !== undefined && (
            <p role="alert" className="field-error">
              {fault}
            </p>
          )}
          {fresh && made && (
            <p className="hint">
              <Sentence
                of={t.later}
                with={{
                  shopping: (text) => <a href={linkTo('shopping')}>{text}</a>,
                  freezer: (text) => <a href={linkTo('cupboard', 'cold')}>{text}</a>,
                  scale: (text) => <a href={linkTo('weigh')}>{text}</a>,
                  days: (text) => <a href={linkTo('calendar')}>{text}</a>,
                }}
              />
            </p>
          )}
          {!fresh && made && (
            <p>
              <a href={linkTo('calendar')}>{t.allDays}</a>
            </p>
          )}
        </section>
      )}
      <Contained what={t.due} of={house}>
        <Errands
          care={care}
          day={day}
          out={!fresh && made && standing === 'out' ? mix.name : undefined}
          told={view?.present?.batch.id}
        />
      </Contained>
      <Contained what={t.left.title} of={house}>
        <BatchLeft present={view?.present} day={day} />
        <OtherBatches care={care} atHand={view?.present} day={day} />
      </Contained>
    </>
  );
}

/** Whether the mix may be fed as it stands; undefined while that is worked out. */
function useStanding(mix: Mix): 'in' | 'out' | 'unknown' | undefined {
  const { data, error } = useQuery({
    queryKey: ['today', mix.problem, mix.shares],
    queryFn: async (): Promise<Answer<Evaluation>> => engine.evaluate(mix.problem, mix.shares),
    staleTime: Number.POSITIVE_INFINITY,
  });
  if (!data) return error ? 'unknown' : undefined;
  if (!data.ok) return 'out';
  return isFit(data.value) ? 'in' : 'out';
}
