/** What is fed beside the mix, from its packs: by when more is to be bought, and when it runs out. */

import type { Mix } from '../../household/model.ts';
import { besideDays } from '../../household/reckon/calendar/fed-beside.ts';
import type { PelletStock } from '../../household/reckon/cupboard/pellet-stock.ts';
import type { Day } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { linkTo } from '../shared/route.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { dayWithWeekday } from './view-model.ts';

export function BesideDays({ mix, stocks, day }: { mix: Mix; stocks: readonly PelletStock[]; day: Day }) {
  const { pelletStock, calendar } = words();
  const t = pelletStock.days;
  const { foods, without, unknown } = besideDays(stocks, mix);
  if (foods.length + without.length + unknown.length === 0) return null;
  return (
    <section className="cal-beside" aria-label={t.title}>
      <h2>{t.title}</h2>
      {foods.map(({ food, name, left, estimated, gramsADay, runsOut, buyBy }) => (
        <section key={food} aria-label={name}>
          <h3>{name}</h3>
          <ul>
            <li className="cal-item buy">
              <strong>
                <a href={linkTo('shopping')}>{buyBy <= day ? t.buyNow(name) : t.buy(name)}</a>
              </strong>
              {buyBy > day && <small> {dayWithWeekday(buyBy, day)}</small>}
            </li>
            <li className="cal-item">
              <strong>{t.runsOut(name)}</strong>
              <small>
                {' '}
                {runsOut <= day
                  ? calendar.list.today(dayWithWeekday(day, day))
                  : dayWithWeekday(runsOut, day)}
              </small>
              {estimated && (
                <>
                  {' '}
                  <span className="tag">{t.estimate}</span>
                </>
              )}
              <br />
              <small>
                {t.fileText(sayGrams(Math.round(left)), sayGrams(Math.round(gramsADay * 10) / 10))}
              </small>
            </li>
          </ul>
        </section>
      ))}
      {unknown.map((sentence) => (
        <p key={sentence} className="notice-line">
          {sentence}
        </p>
      ))}
      {without.map(({ food, name }) => (
        <p key={food} className="hint">
          <Sentence
            of={t.noPack(name)}
            with={{ stock: (text) => <a href={linkTo('cupboard', 'new')}>{text}</a> }}
          />
        </p>
      ))}
    </section>
  );
}
