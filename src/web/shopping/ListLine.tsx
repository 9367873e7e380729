/** One food of the list: needed, from which lots, still to buy, in which packs, what is left over and what it costs. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { groupsIn } from '../../household/reckon/cupboard/lot-foods.ts';
import { lotState } from '../../household/reckon/cupboard/lot-state.ts';
import { driedAtHome, freshFoodOf } from '../../household/reckon/foods/fresh-food.ts';
import { dayInWords } from '../../kitchen/days.ts';
import { trimOf } from '../../kitchen/drying/yields.ts';
import type { Lot } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import type { ShoppingLine } from '../../kitchen/shopping/shopping-list.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { lotWords } from '../shared/lots/lot-words.ts';
import { linkTo } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { useReferenceFoods } from '../worker/engine.ts';
import type { Buying } from './BoughtPacks.tsx';
import { DryAtHome } from './DryAtHome.tsx';
import { Offers } from './Offers.tsx';
import { leftWords, linePrice, money, noFreshWords, packWords, toBuyWords } from './view-model.ts';

interface Props {
  readonly line: ShoppingLine;
  /** Percent of the mix. */
  readonly share: number;
  /** Reference number of the food as it is mixed. */
  readonly dried: string | undefined;
  readonly why: string | undefined;
  readonly buying: Buying;
  /** Whether the line may not be the answer to what is asked now. */
  readonly stale: boolean;
  /** Said when some of a seller's order is bought apart. */
  apart(seller: string, food: string): string | undefined;
}

export function ListLine({ line, share, dried, why, buying, stale, apart }: Props) {
  const { house } = useMixDraft();
  const [open, setOpen] = useState(false);
  const [editing, setEditing] = useState<string>();
  const { food, name, toBuy, packs } = line;
  const place = `shop-${food}`;
  const at = `#${CSS.escape(place)}`;
  const how = driedAtHome(house, food);
  const offers = house.offers.filter((o) => o.food === food).length;
  const enough = toBuy === 0;

  return (
    <li id={place} className="shop-line">
      <div className="shop-line-head">
        <h3 tabIndex={-1}>{name}</h3>
        <p>
          <strong>{sayGrams(line.needed)}</strong> <small>{Number(share.toFixed(1))} %</small>
        </p>
      </div>
      <FromCupboard line={line} />
      {enough ? (
        <p className="shop-enough">
          <span aria-hidden="true">✓</span> Nothing to buy
        </p>
      ) : (
        <>
          <p>
            Still to buy: <strong>{toBuyWords(line)}</strong>
          </p>
          {how && <FreshNote line={line} />}
          {packs.map((p) => (
            <div key={p.offer.id} className="shop-packs">
              <p>
                <strong>{packWords(p)}</strong> from {p.offer.seller}
              </p>
              <p className="shop-money">{money(p.price)}</p>
              <Button
                className="button small"
                isDisabled={stale || buying.busy}
                aria-label={`Bought: ${packWords(p)} of ${name} from ${p.offer.seller}`}
                onPress={() => void buying.buy([{ name, packs: p }], `${at} h3`, apart(p.offer.seller, food))}
              >
                Bought
              </Button>
            </div>
          ))}
          {why !== undefined && (
            <div className="shop-missing">
              <p>
                <span aria-hidden="true">! </span>
                {offers === 0 ? 'Nobody is known to sell it.' : why}
              </p>
              {editing !== 'new' && (
                <Button
                  className="button small"
                  aria-label={`Add an offer of ${name}`}
                  onPress={() => {
                    setOpen(true);
                    setEditing('new');
                  }}
                >
                  Add an offer
                </Button>
              )}
            </div>
          )}
        </>
      )}
      <p className="hint">
        {packs.length > 0 && `${leftWords(line)} `}In this batch: {linePrice(line)}
      </p>
      <details open={open} onToggle={(e) => setOpen(e.currentTarget.open)}>
        <summary>
          <span>
            {offers === 0 ? 'No offers' : offers === 1 ? 'One offer' : `${offers} offers`}
            {how ? ', dried at home' : ''}
            <span className="sr-only"> of {name}</span>
          </span>
        </summary>
        {open && (
          <>
            <Offers
              food={food}
              name={name}
              at={at}
              editing={editing}
              onEdit={(next) => {
                setEditing(next);
                if (next === undefined) focusWhenThere(`${at} .shop-add-offer`);
              }}
            />
            <DryAtHome food={food} name={name} dried={dried} at={at} />
          </>
        )}
      </details>
    </li>
  );
}

/** What the fresh weight rests on, or why there is none. */
function FreshNote({ line }: { line: ShoppingLine }) {
  const { house } = useMixDraft();
  const how = driedAtHome(house, line.food)!;
  const table = useReferenceFoods([how.fresh]);
  const fresh = freshFoodOf(how.fresh, house.foods, table);
  if (!fresh || !line.toBuyFresh) return <p className="hint">{noFreshWords(fresh, how.moisture)}</p>;
  const { trimLoss, parts, source, note } = trimOf(fresh, how.trimLoss);
  if (!trimLoss) return <p className="hint">{note}</p>;
  return (
    <p className="hint">
      {trimLoss} % is trimmed off{parts && `: ${parts}`} <span className="source">({source})</span>
    </p>
  );
}

/** From which lots and trays, the oldest first, and what is passed over. */
function FromCupboard({ line }: { line: ShoppingLine }) {
  const { house } = useMixDraft();
  const { fromLots, fromTrays, passed } = line;
  if (fromLots.length + fromTrays.length + passed.length === 0) return null;
  const day = today();
  const group = groupsIn(house)(line.food);
  const wordsOf = (lot: Lot) => {
    if (lot.form === 'fresh') return 'fresh: dry it first';
    // Of a lot that the list takes from, some is left.
    const state = lotState({ lot, grams: 1 }, day, group);
    return state.kind === 'ready' ? undefined : lotWords(lot, state, day);
  };
  return (
    <ul className="shop-lots" aria-label={`${line.name} in the cupboard`}>
      {fromLots.map(({ lot, grams, asMixed }) => (
        <li key={lot.id}>
          {sayGrams(grams)} from <a href={linkTo('cupboard', lot.id)}>{lot.name}</a>
          {lot.form === 'fresh' && `, ${sayGrams(asMixed)} once dried`}{' '}
          <small>
            {[`bought ${dayInWords(lot.boughtOn, day)}`, wordsOf(lot)].filter(Boolean).join('; ')}
          </small>
        </li>
      ))}
      {fromTrays.map(({ run, lot, asMixed }) => (
        <li key={run.id}>
          About {sayGrams(asMixed)} from <a href={linkTo('drying', run.id)}>{lot.name} on the trays</a>
        </li>
      ))}
      {passed.map(({ lot, grams, onTrays, why }) => (
        <li key={`${lot.id}${onTrays ? ' on trays' : ''}`} className="shop-passed">
          Not counted: {sayGrams(grams)} of <a href={linkTo('cupboard', lot.id)}>{lot.name}</a>
          {onTrays && ' on the trays'}; {why}.
        </li>
      ))}
    </ul>
  );
}
