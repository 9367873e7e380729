/** Prices and sellers, folded away: which packs to choose, what it all costs, and what goes to whom. */
import type { Eating } from '../../household/reckon/shopping/eating.ts';
import type { PackAim } from '../../kitchen/shopping/packs.ts';
import type { ShoppingList } from '../../kitchen/shopping/shopping-list.ts';
import { words } from '../../words/words.ts';
import { Radios } from '../shared/Radios.tsx';
import { Orders } from './Orders.tsx';
import { Sellers } from './Sellers.tsx';
import { Totals } from './Totals.tsx';
import type { Buying } from './useBuying.ts';

export function Prices(props: {
  list: ShoppingList;
  eating: Eating;
  aim: PackAim;
  onAim(next: PackAim): void;
  buying: Buying;
  stale: boolean;
}) {
  const { list, eating, aim, onAim, buying, stale } = props;
  const t = words().shopping.prices;
  return (
    <details className="shop-prices">
      <summary>{t.summary}</summary>
      <section aria-label={t.label}>
        <p className="hint">{t.hint}</p>
        <Radios
          label={t.aim}
          value={aim}
          options={[
            ['cost', t.cost],
            ['waste', t.waste],
          ]}
          onChange={onAim}
        />
        <Totals list={list} eating={eating} />
        <h3 className="shop-orders-head">{t.bySeller}</h3>
        {list.orders.length === 0 && (
          <p className="hint">{list.missing.length > 0 ? t.noneYet : t.noOrder}</p>
        )}
        <Orders list={list} buying={buying} stale={stale} />
        <Sellers />
      </section>
    </details>
  );
}
