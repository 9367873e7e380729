/** How long its batch lasts, and what of the pellet is fed in a month. */
import type { Supply } from '../../../household/reckon/care/supply-of.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';

const MONTH = 30;

export function SupplyLines({ supply }: { supply: Supply | undefined }) {
  const t = words().dailyFood.lasts;
  if (!supply) return <p className="empty">{t.none}</p>;
  const { batch, until, gramsADay, eaters, beside } = supply;
  const [first] = eaters;
  return (
    <ul className="plain-list">
      <li>
        {until === undefined
          ? t.unknown(batch.name)
          : until.days > 0
            ? t.batch(batch.name, until.days, dayInWords(until.day))
            : t.over(batch.name)}{' '}
        {gramsADay !== undefined &&
          (eaters.length === 1 && first !== undefined
            ? t.perDayOne(gramsADay, first)
            : t.perDay(gramsADay, eaters))}
      </li>
      {beside.map((b) => (
        <li key={b.food}>{t.pellet(b.name, b.gramsADay, b.gramsADay * MONTH)}</li>
      ))}
    </ul>
  );
}
