/** The shopping list on paper: by seller, with a box to tick. Hidden on the screen. */

import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import type { ShoppingList } from '../../kitchen/shopping/shopping-list.ts';
import { money, orderPacks, orderTotal, packWords, toBuyWords } from './view-model.ts';

export function ListPaper({ list, title }: { list: ShoppingList; title: string }) {
  const missing = new Set(list.missing.map((m) => m.food));
  const lines = list.lines.filter((l) => missing.has(l.food));
  const lots = list.lines.filter((l) => l.fromLots.length > 0);
  return (
    <div className="print-sheet" aria-hidden="true">
      <h1>Shopping for {title}</h1>
      <p>{sayGrams(list.batchGrams)} of the mix.</p>
      {list.orders.map((order) => (
        <table key={order.seller} className="shop-paper-order">
          <caption>{order.seller}</caption>
          <thead>
            <tr>
              <th>Food</th>
              <th>Packs</th>
              <th>Price</th>
              <th>Bought</th>
            </tr>
          </thead>
          <tbody>
            {orderPacks(list, order.seller).map(({ name, packs }) => (
              <tr key={packs.offer.id}>
                <td>{name}</td>
                <td>{packWords(packs)}</td>
                <td>{money(packs.price)}</td>
                <td>☐</td>
              </tr>
            ))}
            <tr>
              <td>{order.delivery > 0 ? `In all, with ${money(order.delivery)} for delivery` : 'In all'}</td>
              <td />
              <td>{money(orderTotal(order))}</td>
              <td />
            </tr>
          </tbody>
        </table>
      ))}
      {lines.length > 0 && (
        <table>
          <caption>Still to be found</caption>
          <thead>
            <tr>
              <th>Food</th>
              <th>To buy</th>
              <th>Bought</th>
            </tr>
          </thead>
          <tbody>
            {lines.map((line) => (
              <tr key={line.food}>
                <td>{line.name}</td>
                <td>{toBuyWords(line)}</td>
                <td>☐</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {lots.length > 0 && (
        <table>
          <caption>In the cupboard already</caption>
          <tbody>
            {lots.map((line) => (
              <tr key={line.food}>
                <td>{line.name}</td>
                <td>{line.fromLots.map((l) => `${l.lot.name} ${sayGrams(l.grams)}`).join(', ')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </div>
  );
}
