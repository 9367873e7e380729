/** What needs hands today, each with the way there: what cannot wait, and the rest. */
import { useQueries } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { BatchPapers } from '../../household/reckon/batch/batch-papers.ts';
import type { CareDue } from '../../household/reckon/care/due.ts';
import { contentsOfBatch } from '../../household/reckon/cupboard/contents.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { asKey } from '../shared/hooks/as-key.ts';
import { useParts } from '../shared/parts.tsx';
import { linkTo } from '../shared/route.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { engine } from '../worker/engine.ts';
import type { Answer } from '../worker/formulation.worker.ts';
import { batchWords } from './care-words.ts';
import { byRank, type Errand } from './errand.ts';
import type { AskDue } from './useCareDue.ts';
import { errandsOf, nearUseByErrand } from './view-model.ts';

interface Props {
  care: AskDue;
  day: Day;
  /** The mix, where it is out of range. */
  out?: string;
  /** Id of the batch of which the one sentence of the page says when it runs out. */
  told?: string;
}

/** What may do harm, and what should have been done. */
export function Pressing({ care, day }: Props) {
  return (
    <List title={words().today.first} errands={useErrands(care(), day).filter((e) => e.rank !== 'later')} />
  );
}

/** All else. */
export function Errands({ care, day, out, told }: Props) {
  const t = words().today;
  const errands = useErrands(care(), day).filter((e) => e.rank === 'later' && e.key !== `runs-out ${told}`);
  if (out !== undefined)
    errands.push({ key: 'out', rank: 'later', words: t.outBefore(out), link: t.toMix, to: ['mix'] });
  return <List title={t.errands} errands={errands} />;
}

function List({ title, errands }: { title: string; errands: readonly Errand[] }) {
  const { choose } = useMixDraft();
  const parts = useParts(errands, { part: 20 });
  if (errands.length === 0) return null;
  return (
    <section className="today-errands" aria-label={title}>
      <h2>{title}</h2>
      <ul>
        {parts.shown.map(({ key, warns, words: say, link, to, mix }) => (
          <li key={key} className={warns && 'warns'}>
            <span className="today-mark" aria-hidden="true">
              {warns ? '!' : '•'}
            </span>
            <span>
              {say}{' '}
              <a href={linkTo(...to)} onClick={mix === undefined ? undefined : () => choose(mix)}>
                {link}
              </a>
            </span>
          </li>
        ))}
      </ul>
      {parts.more}
    </section>
  );
}

function useErrands(care: CareDue | undefined, day: Day): Errand[] {
  const { house } = useMixDraft();
  const useBy = useUseBy(care, day);
  return byRank([...errandsOf(house, care, day, new Date().toISOString()), ...useBy]);
}

/** Asked of the worker once the page stands, for the batches being fed alone. */
function useUseBy(care: CareDue | undefined, day: Day): Errand[] {
  const { house } = useMixDraft();
  const fed = useMemo(
    () =>
      (care?.fed ?? []).map((one) => ({
        one,
        batch: one.present.batch,
        kept: contentsOfBatch(house, one.present.batch),
      })),
    [care, house],
  );
  return useQueries({
    queries: fed.map(({ batch, kept }) => ({
      queryKey: ['papers', asKey(batch), asKey(kept), asKey(house.animals)],
      queryFn: async (): Promise<Answer<BatchPapers>> => engine.batchPapers(batch, kept, house.animals),
      staleTime: Number.POSITIVE_INFINITY,
    })),
    combine: (answers) =>
      answers.flatMap(({ data }, i): Errand[] => {
        const asked = fed[i];
        if (!asked || !care || !data?.ok) return [];
        const said = nearUseByErrand(
          batchWords(asked.one, care, day),
          asked.batch.id,
          data.value.label.useBy.day,
          day,
        );
        return said ? [said] : [];
      }),
  });
}
