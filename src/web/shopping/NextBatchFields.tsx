/** How much of the mix is prepared next: in grams, or in days for its animals. Kept with the kitchen's plan. */
import { useState } from 'react';
import type { Mix } from '../../household/model.ts';
import { nextBatchOf, resized, sizeOfNext } from '../../household/reckon/batch/next-batch.ts';
import { type Eating, eatingOf } from '../../household/reckon/shopping/eating.ts';
import type { ChosenShares } from '../../kitchen/feeding/chosen-shares.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { Radios } from '../shared/Radios.tsx';
import { linkTo } from '../shared/route.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';

/** Days asked for where nothing lets them be worked out. */
const FIRST_DAYS = 30;
const MOST_DAYS = 3660;

/** @param chosen shares of what is fed beside the mix, where they are chosen */
export function NextBatchFields({ mix, chosen }: { mix: Mix; chosen: ChosenShares | undefined }) {
  const t = words().shopping.size;
  const { house } = useMixDraft();
  const { change, error } = useKitchen();
  const [fault, setFault] = useState('');
  const next = nextBatchOf(house, mix);
  const { grams } = sizeOfNext(house, mix, chosen);
  const eating = eatingOf(mix, house.animals, chosen);
  const { gramsADay } = eating;
  const inDays = next.days !== undefined;
  const keep = (size: { grams: number } | { days: number }) => {
    setFault('');
    change({ next: resized(next, size) });
  };

  function measure(by: 'grams' | 'days') {
    const now = grams ?? mix.problem.batch_grams;
    if (by === 'grams') return keep({ grams: Number(now.toFixed(1)) });
    const days = gramsADay === undefined ? FIRST_DAYS : Math.round(now / gramsADay);
    keep({ days: Math.min(MOST_DAYS, Math.max(1, days)) });
  }

  return (
    <section className="next-batch" aria-label={t.label}>
      <Radios
        label={t.next}
        value={inDays ? 'days' : 'grams'}
        options={[
          ['grams', t.inGrams],
          ['days', t.inDays],
        ]}
        onChange={measure}
      />
      <div className="fields">
        {inDays ? (
          <NumberInput
            key="days"
            label={t.days}
            value={next.days}
            min={1}
            max={MOST_DAYS}
            step={1}
            required
            error={fault}
            onCommit={(days) => {
              if (days === undefined) return;
              if (Number.isInteger(days)) keep({ days });
              else setFault(t.notWhole(days));
            }}
          />
        ) : (
          <NumberInput
            key="grams"
            label={t.weight}
            measure="mass"
            value={next.grams ?? mix.problem.batch_grams}
            min={mix.problem.scale_step_grams}
            max={1_000_000}
            step={10}
            required
            onCommit={(g) => g !== undefined && keep({ grams: g })}
          />
        )}
      </div>
      <Unknown eating={eating} needed={inDays} />
      <Failed error={error} />
    </section>
  );
}

/** What must be known before days can be turned into grams, with the way there. */
function Unknown({ eating, needed }: { eating: Eating; needed: boolean }) {
  const { animals, unknown, mixPart } = eating;
  const t = words().shopping.size;
  const mix = (text: string) => <a href={linkTo('mix')}>{text}</a>;
  if (!(mixPart > 0))
    return (
      <p className="notice-line">
        <Sentence of={t.noPart} with={{ mix }} />
      </p>
    );
  if (animals.length === 0)
    return needed ? (
      <p className="notice-line">
        <Sentence of={t.noAnimal} with={{ mix }} />
      </p>
    ) : null;
  if (unknown.length === 0) return null;
  return (
    <ul className={needed ? 'next-unknown notice-line' : 'next-unknown hint'}>
      {unknown.map(({ id, name }) => (
        <li key={id}>
          <Sentence
            of={needed ? t.notKnownNeeded : t.notKnown}
            with={{ who: () => name, page: () => <a href={linkTo('animals', id)}>{t.page(name)}</a> }}
          />
        </li>
      ))}
    </ul>
  );
}
