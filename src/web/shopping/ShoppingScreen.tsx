/** Shopping: what to buy for the next batch, from whom, and what it costs. */

import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Ingredient } from '../../formulation/problem/problem.ts';
import type { Mix } from '../../household/model.ts';
import { sizeOfNext } from '../../household/reckon/batch/next-batch.ts';
import { usedShares } from '../../household/reckon/batch/used-shares.ts';
import { lotsToFreeze } from '../../household/reckon/cupboard/lots-to-freeze.ts';
import { eatersOf, withAnimals } from '../../household/reckon/mix/eaters.ts';
import { eatingOf } from '../../household/reckon/shopping/eating.ts';
import type { ShoppingTold } from '../../household/reckon/shopping/shopping-answer.ts';
import { type ShoppingAsked, shoppingQuestion } from '../../household/reckon/shopping/shopping-question.ts';
import type { PackAim } from '../../kitchen/shopping/packs.ts';
import type { ShoppingList } from '../../kitchen/shopping/shopping-list.ts';
import { AnswerState, useAnswer } from '../shared/answer.tsx';
import { Choice } from '../shared/Choice.tsx';
import { deviceStorage } from '../shared/device-storage.ts';
import { useEachMinute } from '../shared/hooks/each-minute.ts';
import { useChosenShares } from '../shared/hooks/useChosenShares.ts';
import { FirstMix } from '../shared/mix/FirstMix.tsx';
import { Radios } from '../shared/Radios.tsx';
import { linkTo } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { allProfiles } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { engine, useReferenceFoods } from '../worker/engine.ts';
import { BoughtPacks, useBuying } from './BoughtPacks.tsx';
import { ListLine } from './ListLine.tsx';
import { ListPaper } from './ListPaper.tsx';
import { NextBatchFields } from './NextBatchFields.tsx';
import { Orders } from './Orders.tsx';
import { Sellers } from './Sellers.tsx';
import { Totals } from './Totals.tsx';
import { listText, orderPacks } from './view-model.ts';
import './shopping.css';

const AIM = 'pouchful.shopping-aim';

export function ShoppingScreen() {
  useEachMinute();
  const { house, mix, choose } = useMixDraft();
  if (!mix) return <FirstMix />;
  return (
    <main id="main" className="page shop-page">
      <div className="shop-head">
        <h1>Shopping</h1>
        {house.mixes.length > 1 ? (
          <Choice
            label="Mix"
            value={mix.id}
            options={house.mixes.map((m) => [m.id, m.name])}
            onChange={choose}
          />
        ) : (
          <p className="hint">for {mix.name}</p>
        )}
      </div>
      <Shop key={mix.id} kept={mix} />
    </main>
  );
}

function Shop({ kept }: { kept: Mix }) {
  const { house } = useMixDraft();
  const day = today();
  const [aim, setAim] = useState<PackAim>(() => (deviceStorage.getItem(AIM) === 'waste' ? 'waste' : 'cost'));
  const buying = useBuying();
  const mix = useMemo(
    () => withAnimals(kept, eatersOf(kept, house.animals, allProfiles(house))).mix,
    [kept, house],
  );
  const known = useReferenceFoods(mix.problem.foods.flatMap((f) => f.ref ?? []));
  const nameOf = (f: Ingredient) => f.name ?? (f.ref && known.get(f.ref)?.name) ?? f.id;
  const { chosenFor, working: choosing } = useChosenShares([mix.problem]);
  const chosen = chosenFor(mix.problem);
  const { size, grams } = sizeOfNext(house, kept, chosen);
  const { shares, total, whole } = usedShares(mix);
  const question =
    whole && grams !== undefined && !choosing
      ? shoppingQuestion(house, mix, { size, aim, on: day, nameOf })
      : undefined;
  const { value, working, fault } = useAnswer<ShoppingAsked, ShoppingTold>('shopping', question, (q) =>
    engine.shopping(q),
  );
  const list = question && value?.list;
  const waiting = lotsToFreeze(house, day).length;
  const refOf = (food: string) => mix.problem.foods.find((f) => f.id === food)?.ref;

  /** What is bought apart from the rest of an order with terms leaves the rest to an order of its own. */
  function apart(seller: string, food: string): string | undefined {
    const terms = house.kitchen[0]?.sellers?.find((s) => s.seller === seller);
    const more = list && orderPacks(list, seller).some((b) => b.packs.offer.food !== food);
    return terms && more
      ? `What else was to come from ${seller} is planned anew, as an order of its own with delivery and minimum order.`
      : undefined;
  }

  return (
    <>
      <div className="shop-columns">
        <div className="shop-aside">
          <NextBatchFields mix={kept} chosen={chosen} />
          {!whole && (
            <p className="notice-line">
              The shares of this mix add up to {Number(total.toFixed(2))} %, not 100, so nobody can say what
              it takes. <a href={linkTo('mix')}>Balance the mix</a> first.
            </p>
          )}
          {question && (
            <section aria-label="Sum" className="shop-sum">
              <Radios
                label="Choose packs for"
                value={aim}
                options={[
                  ['cost', 'Least money'],
                  ['waste', 'Least waste'],
                ]}
                onChange={(next) => {
                  deviceStorage.setItem(AIM, next);
                  setAim(next);
                }}
              />
              <AnswerState working={working} fault={fault} />
              {value && !value.inRange && (
                <p className="notice-line">
                  The mix is not in range as it stands: {value.verdict} <a href={linkTo('mix')}>Balance it</a>{' '}
                  before you buy for it.
                </p>
              )}
              {list && <Totals list={list} eating={eatingOf(mix, house.animals, chosen)} />}
              {waiting > 0 && (
                <p className="hint">
                  {waiting === 1 ? 'One lot' : `${waiting} lots`} in the cupboard still{' '}
                  {waiting === 1 ? 'waits' : 'wait'} for the cold against insects.{' '}
                  <a href={linkTo('cupboard', 'cold')}>Freezer and cold</a>
                </p>
              )}
              <h2 className="shop-orders-head" tabIndex={-1}>
                By seller
              </h2>
              {list?.orders.length === 0 && (
                <p className="hint">
                  {list.missing.length > 0
                    ? 'Nothing can be bought yet: add offers to the foods.'
                    : 'Nothing to buy.'}
                </p>
              )}
              {list && <Orders list={list} buying={buying} stale={working} />}
              <Sellers />
              {list && <Papers list={list} title={mix.name} />}
            </section>
          )}
        </div>
        {list && (
          <section aria-label="Foods" className="shop-foods">
            <h2 className="shop-list-head" tabIndex={-1}>
              {list.lines.length} foods
            </h2>
            <ul>
              {list.lines.map((line) => (
                <ListLine
                  key={line.food}
                  line={line}
                  share={shares[line.food] ?? 0}
                  dried={refOf(line.food)}
                  why={list.missing.find((m) => m.food === line.food)?.why}
                  buying={buying}
                  stale={working}
                  apart={apart}
                />
              ))}
            </ul>
          </section>
        )}
      </div>
      <BoughtPacks buying={buying} />
      {list && <ListPaper list={list} title={mix.name} />}
    </>
  );
}

function Papers({ list, title }: { list: ShoppingList; title: string }) {
  const [said, setSaid] = useState('');
  async function copy() {
    try {
      await navigator.clipboard.writeText(listText(list, title));
      setSaid('Copied.');
    } catch {
      setSaid('This browser does not let the page copy; print the list instead.');
    }
  }
  return (
    <div className="button-row shop-papers">
      <Button className="button small" onPress={() => window.print()}>
        Print the list
      </Button>
      {/* Browsers offer it on secure pages alone. */}
      {navigator.clipboard && (
        <Button className="quiet-button small" onPress={() => void copy()}>
          Copy as text
        </Button>
      )}
      <span className="hint" role="status">
        {said}
      </span>
    </div>
  );
}
