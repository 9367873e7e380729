/** One lot: how it stands, its days, its freeze treatment, and where it went. */

import { useState } from 'react';
import { Button } from 'react-aria-components';
import { capital } from '../../formulation/explain/sentences.ts';
import type { CupboardFood } from '../../household/reckon/cupboard/foods-beside.ts';
import type { LotLine } from '../../household/reckon/cupboard/lots-by-food.ts';
import type { PelletStock } from '../../household/reckon/cupboard/pellet-stock.ts';
import { handledOf } from '../../household/reckon/foods/handled.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Day, Lot } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { AskFirst } from '../shared/AskFirst.tsx';
import { Fact } from '../shared/Fact.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { FoodHands } from '../shared/hands/FoodHands.tsx';
import { lotWords } from '../shared/lots/lot-words.ts';
import { go } from '../shared/route.ts';
import { useRemove } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { LotBar } from './LotBar.tsx';
import { LotMark } from './LotMark.tsx';
import { LotReach } from './LotReach.tsx';
import { LotTreatment } from './LotTreatment.tsx';
import { PelletLeft } from './PelletLeft.tsx';
import { packState } from './pellet-words.ts';

export function LotPage({
  line,
  day,
  food,
  pellet,
  onEdit,
}: {
  line: LotLine;
  day: Day;
  food: CupboardFood | undefined;
  /** How the packs of its food stand, where it is fed as it is. */
  pellet: PelletStock | undefined;
  onEdit(): void;
}) {
  const { page: t, form } = words().cupboard;
  const { house } = useMixDraft();
  const { lot, state, grams, used, over } = line;
  const pack = pellet?.packs.find((p) => p.lot.id === lot.id);
  const inUse = pack && packState(pack);
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
          {[food && food.name !== lot.name && food.name, t.kinds[lot.form]].filter(Boolean).join(', ')}
        </p>
      </header>
      <p className={`lot-state big ${state.kind}`}>
        <LotMark kind={state.kind} />
        <span>{capital(inUse ?? lotWords(lot, state, day))}</span>
      </p>
      {state.kind === 'past' && (
        <p className="notice-line">
          {words().kitchen.pastBestBefore.sentence}{' '}
          <span className="source">({words().kitchen.pastBestBefore.source})</span>
        </p>
      )}
      {pellet && pack && <PelletLeft pack={pack} stock={pellet} day={day} />}
      {lot.barred && <LotReach lot={lot} />}
      <FoodHands food={handledOf(house, { id: lot.food, name: lot.name })} />
      <dl className="animal-facts">
        {!pack && (
          <Fact
            name={t.left}
            words={used === 0 ? sayGrams(grams) : t.leftOf(sayGrams(grams), sayGrams(lot.grams))}
          />
        )}
        <Fact name={lot.form === 'dried' ? form.dried : form.bought} words={dayInWords(lot.boughtOn)} />
        <Fact name={form.opened} words={lot.openedOn ? dayInWords(lot.openedOn) : t.notOpened} />
        <Fact name={form.best} words={lot.bestBefore ? dayInWords(lot.bestBefore) : t.notSaid} />
        <Fact name={t.kept} words={lot.frozen ? t.inFreezer : t.inCupboard} />
        {lot.seller && <Fact name={form.seller} words={lot.seller} />}
        {lot.price !== undefined && <Fact name={t.price} words={words().figures.money(lot.price)} />}
        {lot.moisture !== undefined && <Fact name={t.water} words={words().figures.percent(lot.moisture)} />}
      </dl>
      {over > 0 && !pack && <p className="notice-line">{t.over(sayGrams(over))}</p>}
      <div className="button-row">
        <Button className="button" onPress={onEdit}>
          {t.edit}
        </Button>
        {!lot.barred && asking !== 'bar' && (
          <Button
            className="button ask-bar"
            onPress={() => {
              setAsking('bar');
              focusWhenThere('.asking input');
            }}
          >
            {t.stop}
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
            {words().common.delete}
          </Button>
        )}
      </div>
      {asking === 'bar' && !lot.barred && <LotBar lot={lot} onClose={() => back('.ask-bar')} />}
      {asking === 'delete' && <Deleting lot={lot} onKeep={() => back('.ask-delete')} />}
      {!lot.barred && grams > 0 && food?.group !== 'pellet' && (
        <LotTreatment lot={lot} group={food?.group} day={day} />
      )}
      {!lot.barred && (
        <details>
          <summary>{t.where}</summary>
          <LotReach lot={lot} />
        </details>
      )}
    </article>
  );
}

/** The one question before a lot is deleted; the server refuses what was used. */
function Deleting({ lot, onKeep }: { lot: Lot; onKeep(): void }) {
  const t = words().cupboard.page;
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
      question={t.deleteAsk(lot.name)}
      error={erase.error}
      keep={t.keep}
      onKeep={onKeep}
      lose={t.deleteIt(lot.name)}
      onLose={remove}
    >
      {t.deleteHint}
    </AskFirst>
  );
}
