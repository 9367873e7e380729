/** Weighing out: the batches of the mix at hand, or one batch beside the scale. */
import { words } from '../../words/words.ts';
import { linkTo } from '../shared/route.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { BatchPage } from './BatchPage.tsx';
import { StartBatch } from './StartBatch.tsx';
import './weigh-out.css';

/** @param shown id of the batch; undefined for the batches of the mix */
export function WeighOutScreen({ shown }: { shown: string | undefined }) {
  const { house, mix } = useMixDraft();
  const t = words().weighing;
  const batch = house.batches.find((b) => b.id === shown);
  return (
    <main id="main" className="page weigh-page">
      {shown === undefined ? (
        mix ? (
          <StartBatch key={mix.id} mix={mix} />
        ) : (
          <NoMix heading={t.noMix} />
        )
      ) : batch ? (
        <BatchPage key={batch.id} batch={batch} />
      ) : (
        <NoMix heading={t.notKept} />
      )}
    </main>
  );
}

function NoMix({ heading }: { heading: string }) {
  return (
    <>
      <h1>{heading}</h1>
      <p>
        <Sentence of={words().weighing.toMix} with={{ mix: (text) => <a href={linkTo('mix')}>{text}</a> }} />
      </p>
    </>
  );
}
