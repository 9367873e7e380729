/** Shopping: what to get for the next batch, ticked off; from whom and what it costs stands folded away. */
import { useMemo, useState } from 'react';
import type { Ingredient } from '../../formulation/problem/problem.ts';
import type { Mix } from '../../household/model.ts';
import { sizeOfNext } from '../../household/reckon/batch/next-batch.ts';
import { usedShares } from '../../household/reckon/batch/used-shares.ts';
import { lotsToFreeze } from '../../household/reckon/cupboard/lots-to-freeze.ts';
import { fedMix } from '../../household/reckon/mix/eaters.ts';
import { besideNeeds } from '../../household/reckon/shopping/beside-needs.ts';
import { eatingOf } from '../../household/reckon/shopping/eating.ts';
import type { ShoppingTold } from '../../household/reckon/shopping/shopping-answer.ts';
import { type ShoppingAsked, shoppingQuestion } from '../../household/reckon/shopping/shopping-question.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import type { PackAim } from '../../kitchen/shopping/packs.ts';
import { words } from '../../words/words.ts';
import { AnswerState, useAnswer } from '../shared/answer.tsx';
import { Choice } from '../shared/Choice.tsx';
import { deviceStorage } from '../shared/device-storage.ts';
import { useEachMinute } from '../shared/hooks/each-minute.ts';
import { useChosenShares } from '../shared/hooks/useChosenShares.ts';
import { FirstMix } from '../shared/mix/FirstMix.tsx';
import { linkTo } from '../shared/route.ts';
import { dayAt, today } from '../shared/today.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { allProfiles } from '../store/profiles.ts';
import { engine, useReferenceFoods } from '../worker/engine.ts';
import { NextBatchFields } from './NextBatchFields.tsx';
import { Prices } from './Prices.tsx';
import { ShopList } from './ShopList.tsx';
import { useBuying } from './useBuying.ts';
import { sizeSentence } from './view-model.ts';
import './shopping.css';

const AIM = 'pouchful.shopping-aim';

export function ShoppingScreen() {
  useEachMinute();
  const t = words().shopping;
  const { house, mix, choose } = useMixDraft();
  if (!mix) return <FirstMix />;
  return (
    <main id="main" className="page shop-page">
      <div className="shop-head">
        <h1>{t.title}</h1>
        {house.mixes.length > 1 ? (
          <Choice
            label={t.mix}
            value={mix.id}
            options={house.mixes.map((m) => [m.id, m.name])}
            onChange={choose}
          />
        ) : (
          <p className="hint">{t.forMix(mix.name)}</p>
        )}
      </div>
      <Shop key={mix.id} kept={mix} />
    </main>
  );
}

function Shop({ kept }: { kept: Mix }) {
  const { house } = useMixDraft();
  const t = words().shopping;
  const day = today();
  const [aim, setAim] = useState<PackAim>(() => (deviceStorage.getItem(AIM) === 'waste' ? 'waste' : 'cost'));
  const [resizing, setResizing] = useState(false);
  const buying = useBuying();
  const mix = useMemo(() => fedMix(house, kept, allProfiles(house)), [kept, house]);
  const known = useReferenceFoods(mix.problem.foods.flatMap((f) => f.ref ?? []));
  const nameOf = (f: Ingredient) => f.name ?? (f.ref && known.get(f.ref)?.name) ?? f.id;
  const { chosenFor, working: choosing } = useChosenShares([mix.problem]);
  const chosen = chosenFor(mix.problem);
  const { size, grams } = sizeOfNext(house, kept, chosen);
  const { total, whole } = usedShares(mix);
  const beside = useMemo(
    () =>
      grams === undefined || choosing
        ? undefined
        : besideNeeds(house, mix, grams, { under: { today: day, dayAt, chosenFor }, chosen }),
    [house, mix, grams, choosing, day, chosenFor, chosen],
  );
  const question =
    whole && grams !== undefined && !choosing
      ? shoppingQuestion(house, mix, { size, aim, on: day, beside, nameOf })
      : undefined;
  const { value, working, fault } = useAnswer<ShoppingAsked, ShoppingTold>('shopping', question, (q) =>
    engine.shopping(q),
  );
  const list = question && value?.list;
  const waiting = lotsToFreeze(house, day).length;
  const eating = eatingOf(mix, house.animals, chosen);
  const forSize = grams === undefined ? undefined : t.sizeOf(sayGrams(grams), sizeSentence(grams, eating));
  const fit = (text: string) => <a href={linkTo('mix')}>{text}</a>;

  return (
    <>
      <p className="shop-size" role="status">
        {forSize}
      </p>
      <details
        className="shop-resize"
        // Opened of itself where a size is needed, it stays open while one is typed.
        open={resizing || grams === undefined}
        onToggle={(e) => setResizing(e.currentTarget.open)}
      >
        <summary>{t.changeSize}</summary>
        <NextBatchFields mix={kept} chosen={chosen} />
      </details>
      {!whole && (
        <p className="notice-line">
          <Sentence of={t.sharesNotWhole(total)} with={{ fit }} />
        </p>
      )}
      {question && <AnswerState working={working} fault={fault} />}
      {value && question && !value.inRange && (
        <p className="notice-line">
          <Sentence of={t.notInRange} with={{ verdict: () => value.verdict, fit }} />
        </p>
      )}
      {waiting > 0 && (
        <p className="hint">
          {t.waiting(waiting)} <a href={linkTo('cupboard', 'cold')}>{t.freezer}</a>
        </p>
      )}
      {list && (
        <>
          <ShopList
            list={list}
            mix={mix}
            beside={beside}
            size={forSize ?? ''}
            buying={buying}
            stale={working}
          />
          <Prices
            list={list}
            eating={eating}
            aim={aim}
            onAim={(next) => {
              deviceStorage.setItem(AIM, next);
              setAim(next);
            }}
            buying={buying}
            stale={working}
          />
        </>
      )}
    </>
  );
}
