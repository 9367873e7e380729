/** A finished run: what it came to, where it is kept, and what it holds now beside what the mix counts. */
import { dayInWords } from '../../kitchen/days.ts';
import { useMixDraft } from '../data/mix-draft.tsx';
import { linkTo } from '../data/route.ts';
import { nextLoadOf, type Outcome } from '../mix/drying-view.ts';
import { DryFacts } from './DryFacts.tsx';
import { DryInMix } from './DryInMix.tsx';
import type { DryParts } from './DryLooks.tsx';

export function DryResult({ line, outcome }: DryParts & { outcome: Outcome }) {
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
          <DryFacts run={run} dried={outcome.value} />
          {lot && dried?.form !== 'fresh' && <DryInMix food={lot.food} dried={outcome.value} />}
        </>
      ) : (
        <p className="hint">{outcome.fault}</p>
      )}
    </section>
  );
}
