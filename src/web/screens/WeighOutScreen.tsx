/** Weighing out: the batches of the mix at hand, or one batch beside the scale. */
import { WeighBatch } from '../components/WeighBatch.tsx';
import { WeighStart } from '../components/WeighStart.tsx';
import { useFreshBatches } from '../data/batch-save.ts';
import { useMixDraft } from '../data/mix-draft.tsx';
import { linkTo } from '../data/route.ts';

/** @param shown id of the batch; undefined for the batches of the mix */
export function WeighOutScreen({ shown }: { shown: string | undefined }) {
  const { house, mix } = useMixDraft();
  const { ready } = useFreshBatches();
  const batch = house.batches.find((b) => b.id === shown);
  return (
    <main id="main" className="page weigh-page">
      {!ready ? (
        <h1>Opening the batches…</h1>
      ) : shown === undefined ? (
        mix ? (
          <WeighStart key={mix.id} mix={mix} />
        ) : (
          <NoMix words="There is no mix yet" />
        )
      ) : batch ? (
        <WeighBatch key={batch.id} batch={batch} />
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
