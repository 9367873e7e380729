/** A finished run: what it came to, where it is kept, and what it holds now beside what the mix counts. */
import { nextLoadOf } from '../../household/reckon/drying/drying-loads.ts';
import type { Outcome } from '../../household/reckon/drying/drying-outcome.ts';
import { dayInWords } from '../../kitchen/days.ts';
import { linkTo } from '../shared/route.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { DriedInMix } from './DriedInMix.tsx';
import type { DryParts } from './RunChecks.tsx';
import { RunFacts } from './RunFacts.tsx';

export function RunResult({ line, outcome }: DryParts & { outcome: Outcome }) {
  const { run, lot, dried } = line;
  const { house } = useMixDraft();
  const next = lot && nextLoadOf(house, lot);
  return (
    <section className="dry-result" aria-label="Result">
      {dried && (
        <p>
          {dried.frozen ? 'In the freezer' : 'In the cupboard'} as{' '}
          <a href={linkTo('cupboard', dried.id)}>{dried.name}</a>
          {dried.form === 'fresh' && ', half dried: it is not weighed out till it was dried on'}.
        </p>
      )}
      {run.accepted && (
        <p className="notice-line">
          Kept on {dayInWords(run.accepted.on)} though it may be too damp: “{run.accepted.note}”
        </p>
      )}
      {next && lot && (
        <p>
          <a className="dry-next-load" href={linkTo('drying', lot.id)}>
            Start load {next.done + 1} of {next.of}
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
