/** Weighing out: the batches of the mix at hand, or one batch beside the scale. */

import './weigh-out.css';

import { linkTo } from '../shared/route.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { BatchPage } from './BatchPage.tsx';
import { StartBatch } from './StartBatch.tsx';
import './weigh-out.css';

/** @param shown id of the batch; undefined for the batches of the mix */
export function WeighOutScreen({ shown }: { shown: string | undefined }) {
  const { house, mix } = useMixDraft();
  const batch = house.batches.find((b) => b.id === shown);
  return (
    <main id="main" className="page weigh-page">
      {shown === undefined ? (
        mix ? (
          <StartBatch key={mix.id} mix={mix} />
        ) : (
          <NoMix words="There is no mix yet" />
        )
      ) : batch ? (
        <BatchPage key={batch.id} batch={batch} />
      ) : (
        <NoMix words="This batch is not kept here" />
      )}
    </main>
  );
}

function NoMix({ words }: { words: string }) {
  return (
    <>
      <h1>{words}</h1>
      <p>
        <a href={linkTo('mix')}>Go to the mix</a>, and weigh out from there.
      </p>
    </>
  );
}
