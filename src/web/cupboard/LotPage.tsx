/** One lot: how it stands, its days, its freeze treatment, and where it went. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { capital } from '../../formulation/explain/sentences.ts';
import type { CupboardFood } from '../../household/reckon/cupboard/lot-foods.ts';
import type { LotLine } from '../../household/reckon/cupboard/lots-by-food.ts';
import { PAST_BEST_BEFORE } from '../../kitchen/advice.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Day, Lot } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { AskFirst } from '../shared/AskFirst.tsx';
import { Fact } from '../shared/Fact.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { lotWords } from '../shared/lots/lot-words.ts';
import { go } from '../shared/route.ts';
import { useRemove } from '../store/household.ts';
import { LotBar } from './LotBar.tsx';
import { LotMark } from './LotMark.tsx';
import { LotReach } from './LotReach.tsx';
import { LotTreatment } from './LotTreatment.tsx';

const FORM_WORDS = { dry: 'bought dry', fresh: 'fresh', dried: 'dried at home' } as const;

export function LotPage({
  line,
  day,
  food,
  onEdit,
}: {
  line: LotLine;
  day: Day;
  food: CupboardFood | undefined;
  onEdit(): void;
}) {
  const { lot, state, grams, used, over } = line;
  const [asking, setAsking] = useState<'delete' | 'bar'>();

  function back(to: string) {
    setAsking(undefined);
    focusWhenThere(to);
  }

  return (
    <article className="lot-page">
      <header>
        <h2 tabIndex={-1}>{lot.name}</h2>
        <p className="hint">
          {[food && food.name !== lot.name && food.name, FORM_WORDS[lot.form]].filter(Boolean).join(', ')}
        </p>
      </header>
      <p className={`lot-state big ${state.kind}`}>
        <LotMark kind={state.kind} />
        <span>{capital(lotWords(lot, state, day))}</span>
      </p>
      {state.kind === 'past' && (
        <p className="notice-line">
          {PAST_BEST_BEFORE.sentence} <span className="source">({PAST_BEST_BEFORE.source})</span>
        </p>
      )}
      {lot.barred && <LotReach lot={lot} />}
      <dl className="animal-facts">
        <Fact
          name="Left"
          words={used === 0 ? sayGrams(grams) : `${sayGrams(grams)} of ${sayGrams(lot.grams)}`}
        />
        <Fact name={lot.form === 'dried' ? 'Dried' : 'Bought'} words={dayInWords(lot.boughtOn)} />
        <Fact name="Opened" words={lot.openedOn ? dayInWords(lot.openedOn) : 'not yet, or not said'} />
        <Fact name="Best before" words={lot.bestBefore ? dayInWords(lot.bestBefore) : 'not said'} />
        <Fact name="Kept" words={lot.frozen ? 'in the freezer' : 'in the cupboard'} />
        {lot.seller && <Fact name="Seller" words={lot.seller} />}
        {lot.price !== undefined && <Fact name="Price of the lot" words={String(lot.price)} />}
        {lot.moisture !== undefined && <Fact name="Water" words={`${lot.moisture} g per 100 g`} />}
      </dl>
      {over > 0 && (
        <p className="notice-line">
          {sayGrams(over)} more was taken from it than it is said to have held. Correct its weight when you
          know better.
        </p>
      )}
      <div className="button-row">
        <Button className="button" onPress={onEdit}>
          Edit
        </Button>
        {!lot.barred && asking !== 'bar' && (
          <Button
            className="button ask-bar"
            onPress={() => {
              setAsking('bar');
              focusWhenThere('.asking input');
            }}
          >
            Bar this lot…
          </Button>
        )}
        {asking !== 'delete' && (
          <Button
            className="quiet-button ask-delete"
            onPress={() => {
              setAsking('delete');
              focusWhenThere('.asking .keep');
            }}
          >
            Delete
          </Button>
        )}
      </div>
      {asking === 'bar' && !lot.barred && <LotBar lot={lot} onClose={() => back('.ask-bar')} />}
      {asking === 'delete' && <Deleting lot={lot} onKeep={() => back('.ask-delete')} />}
      {!lot.barred && grams > 0 && <LotTreatment lot={lot} group={food?.group} day={day} />}
      {!lot.barred && (
        <details>
          <summary>Where it went</summary>
          <LotReach lot={lot} />
        </details>
      )}
    </article>
  );
}

/** The one question before a lot is deleted; the server refuses what was used. */
function Deleting({ lot, onKeep }: { lot: Lot; onKeep(): void }) {
  const erase = useRemove('lots');

  function remove() {
    if (erase.isPending) return;
    erase.mutate(lot, {
      onSuccess: () => {
        go('cupboard');
        focusWhenThere('.finder .list-head .button');
      },
    });
  }

  return (
    <AskFirst
      question={`Delete ${lot.name} for good?`}
      error={erase.error}
      keep="Keep it"
      onKeep={onKeep}
      lose={`Delete ${lot.name}`}
      onLose={remove}
    >
      For a lot entered by mistake. A lot that is used up may stay: it is empty and can be traced.
    </AskFirst>
  );
}
