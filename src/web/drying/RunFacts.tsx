import type { DriedRun } from '../../kitchen/drying/finished-run.ts';
import type { DryingRun } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { Fact } from '../shared/Fact.tsx';
import { asText } from './LabelledNumber.tsx';
import { sayWater } from './view-model.ts';

export function RunFacts({ run, dried }: { run: DryingRun; dried: DriedRun }) {
  return (
    <>
      <dl className="animal-facts">
        <Fact
          name="Yield"
          words={`${sayGrams(run.gramsAfter!)} of ${sayGrams(run.gramsBefore)}: ${asText(dried.yieldPercent)} %`}
        />
        <Fact name="Water, with its 95 % interval" words={sayWater(dried)} />
        <Fact name="Keeps at" words={`${dried.keep.most} % water or less`} />
      </dl>
      <p className="source">Limit: {dried.keep.source}</p>
      {dried.note && <p className="hint">{dried.note}</p>}
    </>
  );
}
