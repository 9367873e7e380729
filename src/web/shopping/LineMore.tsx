/** What stands behind one food of the list: what the stock gives, what it is dried from, its packs, and who sells it. */
import { type ReactNode, useState } from 'react';
import { driedAtHome, freshFoodOf } from '../../household/reckon/foods/fresh-food.ts';
import { trimOf } from '../../kitchen/drying/yields.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import type { ShoppingLine } from '../../kitchen/shopping/shopping-list.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { useReferenceFoods } from '../worker/engine.ts';
import { DryAtHome } from './DryAtHome.tsx';
import { FromStock } from './FromStock.tsx';
import { Offers } from './Offers.tsx';
import { leftWords, linePrice, money, noFreshWords, packWords } from './view-model.ts';

interface Props {
  readonly line: ShoppingLine;
  /** Reference number of the food as it is mixed. */
  readonly dried: string | undefined;
  /** Whether it is dried at home, or is to be: its fresh food may still have to be said. */
  readonly drying: boolean;
  /** Why it cannot be bought, where somebody sells it. */
  readonly why: string | undefined;
  readonly stale: boolean;
  /** Selector of the food's place on the page. */
  readonly at: string;
  /** Once a fresh food is chosen. */
  onChosen(): void;
  readonly children: ReactNode;
}

export function LineMore({ line, dried, drying, why, stale, at, onChosen, children }: Props) {
  const { house } = useMixDraft();
  const [editing, setEditing] = useState<string>();
  const { food, name, packs } = line;
  const t = words().shopping.prices;
  const how = driedAtHome(house, food);
  const offers = house.offers.filter((o) => o.food === food).length;
  return (
    <div className="shop-behind">
      {children}
      <FromStock line={line} />
      {drying && (
        <DryAtHome food={food} name={name} dried={dried} at={at} onChosen={onChosen}>
          {how && !stale && <FreshNote line={line} />}
        </DryAtHome>
      )}
      <Offers
        food={food}
        name={name}
        at={at}
        editing={editing}
        onEdit={(next) => {
          setEditing(next);
          if (next === undefined) focusWhenThere(`${at} .shop-add-offer`);
        }}
      >
        {packs.map((p) => (
          <p key={p.offer.id}>
            <strong>{t.packFrom(packWords(p), p.offer.seller, money(p.price))}</strong>
          </p>
        ))}
        {packs.length > 0 && <p className="hint">{`${leftWords(line)} ${t.inBatch(linePrice(line))}`}</p>}
        {offers > 0 && why !== undefined && <p className="notice-line">{why}</p>}
      </Offers>
    </div>
  );
}

/** How much fresh food it takes and what that rests on, or why nobody knows. */
function FreshNote({ line }: { line: ShoppingLine }) {
  const { house } = useMixDraft();
  const how = driedAtHome(house, line.food);
  const table = useReferenceFoods(how ? [how.fresh] : []);
  const fresh = how && freshFoodOf(how.fresh, house.foods, table);
  const t = words().shopping.dryAtHome;
  if (!how || line.toBuy === 0) return null;
  if (!fresh || !line.toBuyFresh) return <p className="hint">{noFreshWords(fresh, how.moisture)}</p>;
  const { trimLoss, parts, source, note } = trimOf(fresh, how.trimLoss);
  const { prepared, purchased } = line.toBuyFresh;
  const [grams, ready] = [sayGrams(line.toBuy), sayGrams(prepared)];
  return (
    <>
      <p>
        {purchased === undefined ? t.needsMore(grams, ready) : t.needs(grams, ready, sayGrams(purchased))}
      </p>
      {trimLoss ? (
        <p className="hint">
          {t.trimmed(trimLoss, parts)} <span className="source">({source})</span>
        </p>
      ) : (
        <p className="hint">{note}</p>
      )}
    </>
  );
}
