/** What goes to each seller, bought in one press. */
import { Button } from 'react-aria-components';
import type { ShoppingList } from '../../kitchen/shopping/shopping-list.ts';
import { words } from '../../words/words.ts';
import { useKitchen } from '../store/kitchen.ts';
import type { Buying } from './useBuying.ts';
import { money, orderPacks, orderPurchases, orderTotal, packWords } from './view-model.ts';

export function Orders(props: { list: ShoppingList; buying: Buying; stale: boolean }) {
  const { list, buying, stale } = props;
  const { kitchen } = useKitchen();
  const t = words().shopping.prices;
  if (list.orders.length === 0) return null;
  return (
    <ul className="shop-orders">
      {list.orders.map((order) => {
        const packs = orderPacks(list, order.seller);
        const least = kitchen.sellers?.find((s) => s.seller === order.seller)?.minimumOrder;
        const say = packs.length === 1 ? t.bought : t.boughtAll(packs.length);
        return (
          <li key={order.seller}>
            <h4>{order.seller}</h4>
            <ul>
              {packs.map(({ name, packs: p }) => (
                <li key={p.offer.id}>
                  <span>
                    {packWords(p)} {name}
                  </span>
                  <span className="shop-money">{money(p.price)}</span>
                </li>
              ))}
              {order.delivery > 0 && (
                <li>
                  <span>{t.delivery}</span>
                  <span className="shop-money">{money(order.delivery)}</span>
                </li>
              )}
              <li>
                <strong>{t.inAll}</strong>
                <strong className="shop-money">{money(orderTotal(order))}</strong>
              </li>
            </ul>
            {least !== undefined && (
              <p className="hint">{t.least(money(order.goods), order.seller, money(least))}</p>
            )}
            <Button
              className="button"
              isDisabled={stale || buying.busy}
              aria-label={t.wholeOrder(say, order.seller)}
              onPress={() => buying.bring({ purchases: orderPurchases(list, order.seller) })}
            >
              {say}
            </Button>
          </li>
        );
      })}
    </ul>
  );
}
