/**
 * Now: what cannot wait, what lies open on the scale, the animals of the house, what to do next in one sentence, and what
 * else needs hands today.
 */

import { type ReactNode, Suspense } from 'react';
import { EXAMPLE } from '../../household/reckon/example.ts';
import { firstSteps } from '../../household/reckon/first-steps.ts';
import { words } from '../../words/words.ts';
import { useEachMinute } from '../shared/hooks/each-minute.ts';
import { shownLater } from '../shared/later/shown-later.tsx';
import { MixChoice } from '../shared/mix/MixChoice.tsx';
import { today } from '../shared/today.ts';
import { Coming } from '../shared/trouble/Coming.tsx';
import { Contained } from '../shared/trouble/Contained.tsx';
import { fetchTexts } from '../shared/words/texts.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { AnimalsToday } from './AnimalsToday.tsx';
import { Pressing } from './Errands.tsx';
import { NextSentence } from './NextSentence.tsx';
import { openBatches } from './open-batches.ts';
import { useCareDue } from './useCareDue.ts';
import './today.css';

/** Fetches what rests on the calendar and on the worker, which is drawn once the rest stands. */
export async function fetchForMix() {
  const [{ ForMix }] = await Promise.all([import('./ForMix.tsx'), fetchTexts('days')]);
  return ForMix;
}
const ForMix = shownLater(fetchForMix);
const WithoutMix = shownLater(() => import('./WithoutMix.tsx').then((m) => m.WithoutMix));

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
        {/* What was written down each day may come after the page; all that rests on it comes then. */}
        <Suspense fallback={<Coming say={t.gathering} />}>
          <Pressing care={care} day={day} />
        </Suspense>
      </Contained>
      <OpenBatches />
      {start}
      <Contained what={t.care.title} of={house}>
        <Suspense>
          <AnimalsToday care={care} day={day} />
        </Suspense>
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
        <NextSentence key={one.key} sentence={one.words} link={one.link} to={one.to} />
      ))}
    </section>
  );
}
