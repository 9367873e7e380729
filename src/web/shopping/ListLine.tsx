/** One food of the list: a box to tick, its whole grams, how the keeper gets it; all else under "more". */

import { useState } from 'react';
import { Button } from 'react-aria-components';
import {
  driedAtHome,
  driedFrom,
  freshSuggested,
  withDried,
} from '../../household/reckon/foods/fresh-food.ts';
import { handledOf } from '../../household/reckon/foods/handled.ts';
import { type ToGet, toGet, withTick } from '../../household/reckon/shopping/basket.ts';
import type { ShoppingLine } from '../../kitchen/shopping/shopping-list.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { AllergyMark } from '../shared/hands/AllergyMark.tsx';
import { today } from '../shared/today.ts';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';

import { LineMore } from './LineMore.tsx';
import { amountWords, marksOf } from './view-model.ts';
import { WeightField } from './WeightField.tsx';

type How = 'bought' | 'home' | 'dry';

interface Props {
  readonly line: ShoppingLine;
  /** What is to be got of it. */
  readonly get: ToGet;
  /** Step of the keeper's scale, g. */
  readonly step: number;
  /** Reference number of the food as it is mixed. */
  readonly dried: string | undefined;
  /** Whether it is something that is dried at home: a herb, a vegetable, a fruit, or nobody knows. */
  readonly mayBeDried: boolean;
  readonly why: string | undefined;
  /** Whether the line may not be the answer to what is asked now. */
  readonly stale: boolean;
}

export function ListLine({ line, get, step, dried, mayBeDried, why, stale }: Props) {
  const { house } = useMixDraft();
  const { kitchen, change } = useKitchen();
  const [open, setOpen] = useState(false);
  /** "I dry it" is chosen, and its fresh food not yet. */
  const [asking, setAsking] = useState(false);
  const { food, name } = line;
  const t = words().shopping.list;
  const place = `shop-${food}`;
  const at = `#${CSS.escape(place)}`;
  const drying = driedAtHome(house, food);
  const ticked = kitchen.basket?.[food];
  const how: How = ticked?.home ? 'home' : drying || asking ? 'dry' : 'bought';
  const amount = amountWords(get, line.toBuy, stale);
  const marks = marksOf(line, get, stale);
  const keep = (next: typeof ticked) => change({ basket: withTick(kitchen.basket, food, next) });

  function dryIt() {
    const suggested = freshSuggested(house, food, dried);
    const [fresh] = suggested;
    if (fresh !== undefined && suggested.length === 1)
      return change({ driedAtHome: withDried(kitchen.driedAtHome ?? [], food, driedFrom(undefined, fresh)) });
    setAsking(true);
    setOpen(true);
    focusWhenThere(`${at} .fresh-choice button`);
  }

  function choose(next: How) {
    setAsking(false);
    if (next === 'home') return keep({ on: today(), home: true });
    if (ticked?.home) keep(undefined);
    if (next === 'dry' && !drying) return dryIt();
    if (next === 'bought' && drying)
      change({ driedAtHome: withDried(kitchen.driedAtHome ?? [], drying.food, undefined) });
  }

  return (
    <li id={place} className={`shop-line${ticked ? ' got' : ''}`}>
      <label className="tick shop-tick">
        <input
          type="checkbox"
          checked={ticked !== undefined}
          aria-label={t.got(name, amount)}
          onChange={(e) => keep(e.target.checked ? { on: today() } : undefined)}
        />
        <span className="shop-name">{name}</span>
      </label>
      <strong className="shop-amount">{amount}</strong>
      <select
        className="shop-how"
        aria-label={t.how(name)}
        value={how}
        onChange={(e) => choose(e.target.value as How)}
      >
        <option value="bought">{t.bought}</option>
        <option value="home">{t.home}</option>
        {(mayBeDried || how === 'dry') && <option value="dry">{t.dry}</option>}
      </select>
      <Button
        className="quiet-button shop-more"
        aria-label={t.more(name)}
        aria-expanded={open}
        onPress={() => setOpen(!open)}
      >
        <span aria-hidden="true">{words().common.more}</span>
      </Button>
      <AllergyMark className="shop-marks" food={() => handledOf(house, { id: food, name })} />
      {marks.length > 0 && <small className="shop-marks">{marks.join(' · ')}</small>}
      {open && (
        <LineMore
          line={line}
          dried={dried}
          drying={how === 'dry'}
          why={why}
          stale={stale}
          at={at}
          onChosen={() => setAsking(false)}
        >
          {ticked && (
            <WeightField
              value={ticked.grams}
              usual={(ticked.home ? toGet(line, false, step) : get).grams}
              keep={(grams) => {
                const { grams: _, ...rest } = ticked;
                keep(grams === undefined ? rest : { ...rest, grams });
              }}
            />
          )}
        </LineMore>
      )}
    </li>
  );
}
