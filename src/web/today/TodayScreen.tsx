/** Today: what to do next, in one sentence, and what needs hands today. */

import { useQuery } from '@tanstack/react-query';
import { Button } from 'react-aria-components';
import type { Evaluation } from '../../formulation/problem/result.ts';
import type { Mix } from '../../household/model.ts';
import { inventedIn, isNew } from '../../household/reckon/new-household.ts';
import { NOT_A_VET } from '../../kitchen/advice.ts';
import { useEachMinute } from '../shared/hooks/each-minute.ts';
import { useCalendar } from '../shared/hooks/useCalendar.ts';
import { MixChoice } from '../shared/mix/MixChoice.tsx';
import { useFirstMix } from '../shared/mix/useFirstMix.ts';
import { go, linkTo } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { engine } from '../worker/engine.ts';
import type { Answer } from '../worker/formulation.worker.ts';
import { BatchLeft } from './BatchLeft.tsx';
import { Errands } from './Errands.tsx';
import { type NextWords, nextOf } from './view-model.ts';
import './today.css';
import { isFit } from '../../formulation/explain/verdict.ts';

export function TodayScreen() {
  useEachMinute();
  const { house, mix } = useMixDraft();
  const invented = inventedIn(house);
  return (
    <main id="main" className="page today-page">
      <h1>Today</h1>
      {mix ? <ForMix key={mix.id} kept={mix} /> : <NoMix />}
      <MixChoice />
      {invented.length > 0 && (
        <p className="notice-line">
          Made up for a start, to be changed or deleted: {invented.join(', ')}. The other foods and their
          figures are real.
        </p>
      )}
      <p className="hint today-foot">{NOT_A_VET}</p>
    </main>
  );
}

function NoMix() {
  const start = useFirstMix();
  return (
    <section className="today-next" aria-label="Next">
      <p className="today-sentence">No mix is kept yet.</p>
      <p>A mix begins with a target and a few foods; shares and grams are worked out from there.</p>
      <Button
        className="big-button"
        onPress={() => {
          start();
          go('mix');
        }}
      >
        Start a mix
      </Button>
    </section>
  );
}

function ForMix({ kept }: { kept: Mix }) {
  const { house } = useMixDraft();
  const day = today();
  const { mix, view, fault } = useCalendar(kept, day);
  const standing = useStanding(mix);
  const fresh = isNew(house);
  const empty = Object.values(mix.shares).every((s) => !(s > 0));
  const next = view && nextOf(house, view, day);
  return (
    <>
      <section className="today-next" aria-label="Next">
        {empty ? (
          <Next
            sentence={`${mix.name} has no food with a share yet.`}
            link="Choose its foods on Mix"
            to={['mix']}
          />
        ) : fresh && standing === undefined ? (
          <p className="today-sentence" role="status">
            Looking at {mix.name}…
          </p>
        ) : fresh && standing === 'out' ? (
          <Next
            sentence={`${mix.name} is not in range yet: balance it first.`}
            link="Go to Mix and press “Balance the mix”"
            to={['mix']}
          />
        ) : (
          next && <Next {...next} />
        )}
        {fault !== undefined && (
          <p role="alert" className="field-error">
            {fault}
          </p>
        )}
        {fresh && !empty && (
          <p className="hint">
            Then come the <a href={linkTo('shopping')}>shopping</a>, the{' '}
            <a href={linkTo('cupboard', 'cold')}>cold against insects</a>, and the{' '}
            <a href={linkTo('weigh')}>scale</a>. The <a href={linkTo('calendar')}>calendar</a> says when.
          </p>
        )}
        {!fresh && !empty && (
          <p>
            <a href={linkTo('calendar')}>See it all in the calendar</a>
          </p>
        )}
      </section>
      <Contained what="What is due today" of={house}>
        <Errands view={view} day={day} out={!fresh && !empty && standing === 'out' ? mix.name : undefined} />
      </Contained>
      <Contained what="What is left" of={house}>
        <BatchLeft view={view} day={day} />
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
