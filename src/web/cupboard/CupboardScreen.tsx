/** Cupboard: every lot, how it stands, the freeze treatment it goes through, and what a barred one reached. */
import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import { cupboardFood } from '../../household/reckon/cupboard/lot-foods.ts';
import { lotsByFood } from '../../household/reckon/cupboard/lots-by-food.ts';
import { lotsToFreeze } from '../../household/reckon/cupboard/lots-to-freeze.ts';
import type { Lot } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { useEachMinute } from '../shared/hooks/each-minute.ts';
import { usePellets } from '../shared/hooks/usePellets.ts';
import { go, linkTo } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { FreezerPanel } from './FreezerPanel.tsx';
import { LotAmounts } from './LotAmounts.tsx';
import { LotForm } from './LotForm.tsx';
import { LotList } from './LotList.tsx';
import { LotPage } from './LotPage.tsx';
import './cupboard.css';

const NEW = 'new';
const FREEZER = 'cold';

export function CupboardScreen({ shown }: { shown: string | undefined }) {
  const { house } = useMixDraft();
  const t = words().cupboard;
  /** As it stood when its form was opened; the form stays, whatever becomes of it elsewhere. */
  const [editing, setEditing] = useState<Lot>();
  useEachMinute();
  const day = today();
  const foods = useMemo(() => lotsByFood(house, day), [house, day]);
  const pellets = usePellets(day);
  const line = foods.flatMap((f) => f.lots).find((l) => l.lot.id === shown);
  const waiting = lotsToFreeze(house, day).length;
  const leave = () => setEditing(undefined);

  const form = editing?.id === shown && editing && <LotForm key={editing.id} lot={editing} onDone={leave} />;

  function detail() {
    if (shown === NEW)
      return <LotForm key={NEW} onDone={(id) => (id ? go('cupboard', id) : go('cupboard'))} />;
    if (form) return form;
    if (!line) return <FreezerPanel />;
    return (
      <LotPage
        key={line.lot.id}
        line={line}
        day={day}
        food={cupboardFood(house, line.lot.food)}
        pellet={pellets?.find((p) => p.food === line.lot.food)}
        onEdit={() => setEditing(line.lot)}
      />
    );
  }

  return (
    <main
      id="main"
      className={`foods-screen cupboard-screen ${line || form || shown === NEW || shown === FREEZER ? 'has-detail' : ''}`}
    >
      <section className="finder" aria-label={t.packs}>
        <div className="list-head">
          <h1>{t.title}</h1>
          <Button
            className="button small"
            onPress={() => {
              leave();
              go('cupboard', NEW);
            }}
          >
            {t.add}
          </Button>
        </div>
        <ul className="food-list">
          <li>
            <a
              href={linkTo('cupboard', FREEZER)}
              aria-current={!line && shown !== NEW ? 'true' : undefined}
              onClick={leave}
            >
              <span>{t.freezing}</span>
              <small>{t.waiting(waiting)}</small>
            </a>
          </li>
        </ul>
        <LotList foods={foods} pellets={pellets ?? []} shown={line?.lot.id} day={day} pick={leave} />
        <LotAmounts />
      </section>
      <section className="detail" aria-label={t.onePack}>
        <a className="back" href={linkTo('cupboard')} onClick={leave}>
          ‹ {t.back}
        </a>
        <Contained what={t.thisPack} of={line?.lot}>
          {detail()}
        </Contained>
      </section>
    </main>
  );
}
