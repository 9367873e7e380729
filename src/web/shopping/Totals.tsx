/** What is to pay now, and what the batch, a kilogram and a day of it cost. */
import type { Eating } from '../../household/reckon/shopping/eating.ts';
import type { ShoppingList } from '../../kitchen/shopping/shopping-list.ts';
import { words } from '../../words/words.ts';
import { pricesOf, toPayWords } from './view-model.ts';

export function Totals({ list, eating }: { list: ShoppingList; eating: Eating }) {
  const t = words().shopping.prices;
  const { batch, perWeight, perDay, unknown } = pricesOf(list, eating.gramsADay);
  const [animal, ...others] = eating.animals;
  const delivery = list.orders.reduce((sum, o) => sum + o.delivery, 0);
  return (
    <>
      <dl className="shop-totals">
        <Total name={t.toPay} words={toPayWords(list)} strong />
        <Total name={t.batch} words={batch} />
        <Total name={t.perKg} words={perWeight} />
        {perDay !== undefined && (
          <Total name={animal && others.length === 0 ? t.dayOf(animal.name) : t.dayOfAll} words={perDay} />
        )}
      </dl>
      <p className="hint">{delivery > 0 ? t.noteDelivery : t.note}</p>
      {unknown.length > 0 && (
        <details className="shop-unpriced">
          <summary>{t.unknown(unknown.length)}</summary>
          <p>{t.unknownFoods(unknown.join('; '))}</p>
        </details>
      )}
      {!list.proven && <p className="hint">{t.notProven}</p>}
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
