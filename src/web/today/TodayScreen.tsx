/**
 * Now: what cannot wait, what lies open on the scale, the animals of the house, what to do next in one sentence, and what
 * else needs hands today.
 */

import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import type { Evaluation } from '../../formulation/problem/result.ts';
import type { Mix } from '../../household/model.ts';
import { EXAMPLE } from '../../household/reckon/example.ts';
import { firstSteps, isMade } from '../../household/reckon/first-steps.ts';
import { isNew } from '../../household/reckon/new-household.ts';
import { words } from '../../words/words.ts';
import { useEachMinute } from '../shared/hooks/each-minute.ts';
import { useCalendar } from '../shared/hooks/useCalendar.ts';
import { MixChoice } from '../shared/mix/MixChoice.tsx';
import { useFirstMix } from '../shared/mix/useFirstMix.ts';
import { go, linkTo } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { engine } from '../worker/engine.ts';
import type { Answer } from '../worker/formulation.worker.ts';
import { AnimalsToday } from './AnimalsToday.tsx';
import { BatchLeft } from './BatchLeft.tsx';
import { Errands, Pressing } from './Errands.tsx';
import { OtherBatches } from './OtherBatches.tsx';
import { type AskDue, useCareDue } from './useCareDue.ts';
import { type NextWords, nextOf, openBatches } from './view-model.ts';
import './today.css';
import { isFit } from '../../formulation/explain/verdict.ts';

/** @param start the first steps, for a household that has no mix of its own yet; nothing where they are done */
export function TodayScreen({ start }: { start: ReactNode }) {
  useEachMinute();
  const { house, mix } = useMixDraft();
  const { stage } = firstSteps(house, mix);
  const t = words().today;
  const isExample = mix?.id === EXAMPLE.mix;
  const day = today();
  const care = useCareDue(day);
  return (
    <main id="main" className="page today-page">
      <h1>{t.title}</h1>
      <Contained what={t.due} of={house}>
        <Pressing care={care} day={day} />
      </Contained>
      <OpenBatches />
      {start}
      <Contained what={t.care.title} of={house}>
        <AnimalsToday care={care} day={day} />
      </Contained>
      {mix && (stage !== 'start' || isExample) && <ForMix key={mix.id} kept={mix} care={care} />}
      {!mix && stage !== 'start' && <WithoutMix care={care} />}
      <MixChoice />
      <p className="hint today-foot">{words().kitchen.notAVet}</p>
    </main>
  );
}

function OpenBatches() {
  const { house } = useMixDraft();
  const t = words().today;
  const open = openBatches(house);
  if (open.length === 0) return null;
  return (
    <section className="today-next" aria-label={t.openBatch}>
      {open.map((one) => (
        <Next key={one.key} sentence={one.words} link={one.link} to={one.to} />
      ))}
    </section>
  );
}

function ForMix({ kept, care }: { kept: Mix; care: AskDue }) {
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
            <Next
              sentence={mix.problem.foods.length === 0 ? t.noFoods(mix.name) : t.notMade(mix.name)}
              link={mix.problem.foods.length === 0 ? t.chooseFoods : t.toFit}
              to={['mix']}
            />
          ) : fresh && standing === undefined ? (
            <p className="today-sentence" role="status">
              {t.looking(mix.name)}
            </p>
          ) : fresh && standing === 'out' ? (
            <Next sentence={t.outFirst(mix.name)} link={t.toFit} to={['mix']} />
          ) : (
            next && <Next {...next} />
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

/** A household that has bought, dried or weighed something, and keeps no mix any more. */
function WithoutMix({ care }: { care: AskDue }) {
  const { house } = useMixDraft();
  const start = useFirstMix();
  const t = words().shared.firstMix;
  const { next, due } = words().today;
  return (
    <>
      <section className="today-next" aria-label={next}>
        <h2 className="today-sentence">{t.title}</h2>
        <p>{t.text}</p>
        <Button
          className="big-button today-go"
          onPress={() => {
            start();
            go('mix');
          }}
        >
          {t.start}
        </Button>
      </section>
      <Contained what={due} of={house}>
        <Errands care={care} day={today()} />
      </Contained>
    </>
  );
}

function Next({ sentence, link, to }: NextWords) {
  return (
    <>
      <p className="today-sentence">{sentence}</p>
      <a className="big-button today-go" href={linkTo(...to)}>
        {link}
      </a>
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
