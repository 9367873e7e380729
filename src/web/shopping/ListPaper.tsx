/** The shopping list on paper: one page, a box to tick beside each food. Hidden on the screen. */
import { Fragment } from 'react';
import type { ToGet } from '../../household/reckon/shopping/basket.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import type { ShoppingLine, ShoppingList } from '../../kitchen/shopping/shopping-list.ts';
import { words } from '../../words/words.ts';
import { amountWords, orderWords, packWords, type Section } from './view-model.ts';

interface Props {
  readonly list: ShoppingList;
  readonly title: string;
  /** For how much of the mix it is, in a sentence. */
  readonly size: string;
  readonly sections: readonly (readonly [Section, readonly ShoppingLine[]])[];
  getOf(line: ShoppingLine): ToGet;
  /** Whether a food is ticked already. */
  isTicked(food: string): boolean;
}

export function ListPaper({ list, title, size, sections, getOf, isTicked }: Props) {
  const t = words().shopping;
  const stocked = list.lines.filter((l) => l.toBuy === 0);
  return (
    <div className="print-sheet shop-paper" aria-hidden="true">
      <h1>{t.paper.title(title)}</h1>
      <p>{size}</p>
      <table>
        <tbody>
          {sections.map(([section, lines]) => (
            <Fragment key={section}>
              <tr>
                <th colSpan={4} scope="colgroup">
                  {t.list.groups[section]}
                </th>
              </tr>
              {lines.map((line) => (
                <tr key={line.food}>
                  <td className="shop-box">
                    <span>{isTicked(line.food) ? '✓' : ''}</span>
                  </td>
                  <td>{line.name}</td>
                  <td>{amountWords(getOf(line), line.toBuy)}</td>
                  <td>{line.packs.map((p) => t.paper.from(packWords(p), p.offer.seller)).join('; ')}</td>
                </tr>
              ))}
            </Fragment>
          ))}
        </tbody>
      </table>
      {list.orders.map((order) => (
        <p key={order.seller}>{orderWords(order)}</p>
      ))}
      {stocked.length > 0 && (
        <p>
          <strong>{t.paper.home}</strong>:{' '}
          {stocked.map((l) => t.told.pack(l.name, sayGrams(Math.ceil(l.needed)))).join('; ')}
        </p>
      )}
    </div>
  );
}
