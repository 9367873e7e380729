/** A finished run: what it came to, where it is kept, and what it holds now beside what the mix counts. */
import { nextLoadOf } from '../../household/reckon/drying/drying-loads.ts';
import type { Outcome } from '../../household/reckon/drying/drying-outcome.ts';
import { dayInWords } from '../../kitchen/days.ts';
import { words } from '../../words/words.ts';
import { linkTo } from '../shared/route.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { DriedInMix } from './DriedInMix.tsx';
import type { DryParts } from './RunChecks.tsx';
import { RunFacts } from './RunFacts.tsx';

export function RunResult({ line, outcome }: DryParts & { outcome: Outcome }) {
  const { run, lot, dried } = line;
  const { house } = useMixDraft();
  const next = lot && nextLoadOf(house, lot);
  const t = words().drying.result;
  return (
    <section className="dry-result" aria-label={t.section}>
      {dried && (
        <p>
          <Sentence
            of={dried.form === 'fresh' ? t.halfDried : dried.frozen ? t.inFreezer : t.inStock}
            with={{ pack: () => <a href={linkTo('cupboard', dried.id)}>{dried.name}</a> }}
          />
        </p>
      )}
      {run.accepted && (
        <p className="notice-line">{t.keptThough(dayInWords(run.accepted.on), run.accepted.note)}</p>
      )}
      {next && lot && (
        <p>
          <a className="dry-next-load" href={linkTo('drying', lot.id)}>
            {t.startLoad(next.done + 1, next.of)}
          </a>
        </p>
      )}
      {outcome.ok ? (
        <>
          <p>{outcome.value.keep.sentence}</p>
          <RunFacts run={run} dried={outcome.value} />
          {lot && dried?.form !== 'fresh' && <DriedInMix food={lot.food} dried={outcome.value} />}
        </>
      ) : (
        <p className="hint">{outcome.fault}</p>
      )}
    </section>
  );
}
