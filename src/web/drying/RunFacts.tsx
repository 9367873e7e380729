import type { DriedRun } from '../../kitchen/drying/finished-run.ts';
import type { DryingRun } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { Fact } from '../shared/Fact.tsx';
import { sayWater } from './view-model.ts';

export function RunFacts({ run, dried }: { run: DryingRun; dried: DriedRun }) {
  const t = words().drying.facts;
  return (
    <>
      <dl className="animal-facts">
        <Fact
          name={t.yield}
          words={t.yieldIs(sayGrams(run.gramsAfter!), sayGrams(run.gramsBefore), dried.yieldPercent)}
        />
        <Fact name={t.water} words={sayWater(dried)} />
        <Fact name={t.keepsAt} words={t.orLess(dried.keep.most)} />
      </dl>
      <p className="source">{t.limit(dried.keep.source)}</p>
      {dried.note && <p className="hint">{dried.note}</p>}
    </>
  );
}
