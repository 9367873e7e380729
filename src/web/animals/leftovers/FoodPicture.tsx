/** A bar for each food: what was offered, what of it surely went, and what may have; beside it whether it is picked out. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { FoodIntake, Intake } from '../../../household/reckon/care/intake.ts';
import { words } from '../../../words/words.ts';

/** Foods at first: the ones that matter most on a phone. */
const FIRST = 6;

export function FoodPicture({ intake }: { intake: Intake }) {
  const t = words().leftovers.picture;
  const i = words().leftovers.index;
  const [all, setAll] = useState(false);
  const eaten = intake.hoard === 'counted';
  const whole = eaten ? intake.grams.eaten : intake.grams.taken;
  const mean = (50 * (whole.low + whole.high)) / intake.grams.offered;
  const shown = all ? intake.foods : intake.foods.slice(0, FIRST);
  const indexed = intake.foods.some((f) => f.index);
  return (
    <section aria-label={t.title}>
      <h4>{t.title}</h4>
      <p className="hint">{eaten ? t.hintEaten : t.hint}</p>
      <table className="left-foods">
        <thead>
          <tr>
            <th scope="col">{t.food}</th>
            <th scope="col">{eaten ? t.eatenHead : t.takenHead}</th>
            {indexed && <th scope="col">{t.index}</th>}
          </tr>
        </thead>
        <tbody>
          {shown.map((food) => (
            <Row key={food.food} food={food} eaten={eaten} mean={mean} indexed={indexed} />
          ))}
        </tbody>
      </table>
      {shown.length < intake.foods.length && (
        <Button className="button small" onPress={() => setAll(true)}>
          {t.more(intake.foods.length - shown.length)}
        </Button>
      )}
      {indexed && (
        <details className="left-help">
          <summary>{i.title}</summary>
          <p>{i.help}</p>
          <p>{i.spanHelp}</p>
          <p>{intake.sortedBy === 'eaten' ? i.byEaten : i.byTaken}</p>
        </details>
      )}
    </section>
  );
}

function Row(props: {
  food: FoodIntake;
  eaten: boolean;
  /** Percent of all food together that went. */
  mean: number;
  indexed: boolean;
}) {
  const { leftovers } = words();
  const t = leftovers.picture;
  const { food } = props;
  const gone = props.eaten ? food.eaten : food.taken;
  const part = (grams: number) => `${(100 * grams) / food.offered}%`;
  return (
    <tr>
      <th scope="row">{food.name}</th>
      <td>
        <span className="left-bar" aria-hidden="true">
          <i className="left-sure" style={{ width: part(gone.low) }} />
          <i className="left-maybe" style={{ width: part(gone.high - gone.low) }} />
          <i className="left-mean" style={{ left: `${props.mean}%` }} />
        </span>
        <span className="left-numbers">
          {t.of(gone.low, gone.high, food.offered)}{' '}
          <small>{t.percent((100 * gone.low) / food.offered, (100 * gone.high) / food.offered)}</small>
        </span>
      </td>
      {props.indexed && <td className="left-index">{food.index && <Index index={food.index} />}</td>}
    </tr>
  );
}

function Index({ index }: { index: NonNullable<FoodIntake['index']> }) {
  const t = words().leftovers.index;
  const { low, high } = index.span ?? index.bounds;
  const exact = t.value(low) === t.value(high);
  return (
    <>
      <span className={`left-leaning ${index.leaning}`}>{t.leaning[index.leaning]}</span>{' '}
      <b>{t.value(index.value)}</b>{' '}
      <small>
        {!exact && `(${t.limits(low, high)})`}{' '}
        <span className="left-nights-of">{t.nights(index.nights)}</span>
      </small>
    </>
  );
}
