/** The lots of the cupboard by food, first to be used first, each with what is left and how it stands. */
import type { FoodLots, LotLine } from '../../household/reckon/cupboard/lots-by-food.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { lotWords } from '../shared/lots/lot-words.ts';
import { linkTo } from '../shared/route.ts';
import { LotMark } from './LotMark.tsx';

export function LotList({
  foods,
  shown,
  day,
  pick,
}: {
  foods: readonly FoodLots[];
  shown: string | undefined;
  day: Day;
  pick(): void;
}) {
  if (foods.length === 0)
    return (
      <p className="empty">
        No lot is kept yet. Add what stands in the cupboard, one lot for each pack or jar.
      </p>
    );
  return foods.map((food) => (
    <section key={food.food} className="lot-food">
      <h2>{food.name}</h2>
      <p className="hint">
        {food.ready === 0 ? 'none' : sayGrams(food.ready)} ready
        {food.all > food.ready && ` of ${sayGrams(food.all)}`}
      </p>
      <ul className="food-list">
        {food.lots.map((line) => (
          <li key={line.lot.id}>
            <a
              href={linkTo('cupboard', line.lot.id)}
              aria-current={line.lot.id === shown ? 'true' : undefined}
              onClick={pick}
            >
              <span>{line.lot.name}</span>
              {line.first && <span className="tag">use first</span>}
              <small className="lot-state">
                <LotMark kind={line.state.kind} /> {lotWords(line.lot, line.state, day)}
              </small>
              <small>{factsOf(line)}</small>
            </a>
          </li>
        ))}
      </ul>
    </section>
  ));
}

function factsOf({ lot, grams }: LotLine): string {
  const left = grams === lot.grams ? sayGrams(grams) : `${sayGrams(grams)} left of ${sayGrams(lot.grams)}`;
  return [
    left,
    `bought ${dayInWords(lot.boughtOn)}`,
    lot.openedOn && `opened ${dayInWords(lot.openedOn)}`,
    lot.bestBefore && `best before ${dayInWords(lot.bestBefore)}`,
    lot.frozen && 'kept in the freezer',
  ]
    .filter(Boolean)
    .join(' · ');
}
