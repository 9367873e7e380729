/** What goes to each seller, bought in one press. */
import { Button } from 'react-aria-components';
import type { ShoppingList } from '../../kitchen/shopping/shopping-list.ts';
import { useKitchen } from '../store/kitchen.ts';
import type { Buying } from './BoughtPacks.tsx';
import { money, orderPacks, orderTotal, packWords } from './view-model.ts';

export function Orders(props: { list: ShoppingList; buying: Buying; stale: boolean }) {
  const { list, buying, stale } = props;
  const { kitchen } = useKitchen();
  if (list.orders.length === 0) return null;
  return (
    <ul className="shop-orders">
      {list.orders.map((order) => {
        const packs = orderPacks(list, order.seller);
        const least = kitchen.sellers?.find((s) => s.seller === order.seller)?.minimumOrder;
        const words = packs.length === 1 ? 'Bought' : `Bought all ${packs.length}`;
        return (
          <li key={order.seller}>
            <h3>{order.seller}</h3>
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
                  <span>Delivery</span>
                  <span className="shop-money">{money(order.delivery)}</span>
                </li>
              )}
              <li>
                <strong>In all</strong>
                <strong className="shop-money">{money(orderTotal(order))}</strong>
              </li>
            </ul>
            {least !== undefined && (
              <p className="hint">
                Goods for {money(order.goods)}; {order.seller} sends nothing below {money(least)}.
              </p>
            )}
            <Button
              className="button"
              isDisabled={stale || buying.busy}
              aria-label={`${words}: the whole order at ${order.seller}`}
              onPress={() => void buying.buy(packs, '.shop-orders-head')}
            >
              {words}
            </Button>
          </li>
        );
      })}
    </ul>
  );
}
