/** What needs hands today, each with the way there. */
import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { BatchPapers } from '../../household/reckon/batch/batch-papers.ts';
import type { PresentBatch } from '../../household/reckon/batch/present-batch.ts';
import type { BatchCalendar } from '../../household/reckon/calendar/batch-calendar.ts';
import { contentsOfBatch } from '../../household/reckon/cupboard/contents.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { useParts } from '../shared/parts.tsx';
import { linkTo } from '../shared/route.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { engine } from '../worker/engine.ts';
import type { Answer } from '../worker/formulation.worker.ts';
import { type Errand, errandsOf, nearUseByErrand } from './view-model.ts';

interface Props {
  view: BatchCalendar | undefined;
  day: Day;
  /** The mix, where it is out of range. */
  out: string | undefined;
}

export function Errands({ view, day, out }: Props) {
  const t = words().today;
  const { house } = useMixDraft();
  const useBy = useUseBy(view?.present, day);
  const errands: Errand[] = [
    ...errandsOf(house, view, day, new Date().toISOString()),
    ...(useBy ? [useBy] : []),
    ...(out === undefined
      ? []
      : [
          {
            key: 'out',
            words: t.outBefore(out),
            link: t.toMix,
            to: ['mix'],
          },
        ]),
  ];
  const parts = useParts(errands, { part: 20 });
  if (errands.length === 0) return null;
  return (
    <section className="today-errands" aria-label={t.errands}>
      <h2>{t.errands}</h2>
      <ul>
        {parts.shown.map((e) => (
          <li key={e.key} className={e.warns && 'warns'}>
            <span className="today-mark" aria-hidden="true">
              {e.warns ? '!' : '•'}
            </span>
            <span>
              {e.words} <a href={linkTo(...e.to)}>{e.link}</a>
            </span>
          </li>
        ))}
      </ul>
      {parts.more}
    </section>
  );
}

/** Asked of the worker once the page stands, for the batch being fed alone. */
function useUseBy(present: PresentBatch | undefined, day: Day): Errand | undefined {
  const { house } = useMixDraft();
  const batch = present?.batch;
  const kept = useMemo(() => batch && contentsOfBatch(house, batch), [house, batch]);
  const { data } = useQuery({
    queryKey: ['papers', batch, kept, house.animals],
    queryFn: async (): Promise<Answer<BatchPapers>> => engine.batchPapers(batch!, kept!, house.animals),
    enabled: batch !== undefined,
    staleTime: Number.POSITIVE_INFINITY,
  });
  if (!present || !data?.ok) return undefined;
  return nearUseByErrand(present.name, present.batch.id, data.value.label.useBy.day, day);
}
