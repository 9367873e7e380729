/** What is to pay now, and what the batch, a kilogram and a day of it cost. */
import type { Eating } from '../../household/reckon/shopping/eating.ts';
import type { ShoppingList } from '../../kitchen/shopping/shopping-list.ts';
import { pricesOf, toPayWords } from './view-model.ts';

export function Totals({ list, eating }: { list: ShoppingList; eating: Eating }) {
  const { batch, perKg, perDay, unknown } = pricesOf(list, eating.gramsADay);
  const [animal, ...others] = eating.animals;
  const delivery = list.orders.reduce((sum, o) => sum + o.delivery, 0);
  return (
    <>
      <dl className="shop-totals">
        <Total name="To pay now" words={toPayWords(list)} strong />
        <Total name="Price of this batch" words={batch} />
        <Total name="Of a kilogram" words={perKg} />
        {perDay !== undefined && (
          <Total
            name={animal && others.length === 0 ? `Of a day for ${animal.name}` : 'Of a day for all'}
            words={perDay}
          />
        )}
      </dl>
      <p className="hint">
        In your own money. The batch costs what goes into it{delivery > 0 ? ', delivery left out' : ''}; the
        rest of a pack stays yours. What is fed beside the mix is not counted.
      </p>
      {unknown.length > 0 && (
        <details className="shop-unpriced">
          <summary>Price not known in full ({unknown.length})</summary>
          <p>{unknown.join('; ')}. An offer, or the price of the lot in the cupboard, makes it known.</p>
        </details>
      )}
      {!list.proven && (
        <p className="hint">The search ended before it was shown that no better choice of packs exists.</p>
      )}
    </>
  );
}

function Total({ name, words, strong }: { name: string; words: string; strong?: boolean }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{strong ? <strong>{words}</strong> : words}</dd>
    </div>
  );
}
