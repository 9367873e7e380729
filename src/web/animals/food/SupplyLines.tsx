/** How long its batch lasts, and what is fed beside it. */

import type { Circumstances } from '../../../household/reckon/calendar/circumstances.ts';
import type { Supply } from '../../../household/reckon/care/supply-of.ts';
import { isFedBeside } from '../../../household/reckon/cupboard/foods-beside.ts';
import { pelletStock } from '../../../household/reckon/cupboard/pellet-stock.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';
import { linkTo } from '../../shared/route.ts';
import { Sentence } from '../../shared/words/Sentence.tsx';
import { useMixDraft } from '../../store/mix-draft.tsx';

const MONTH = 30;

export function SupplyLines({ supply, under }: { supply: Supply | undefined; under: Circumstances }) {
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
        <li key={b.food}>
          {t.pellet(b.name, b.gramsADay, b.gramsADay * MONTH)}{' '}
          <Packs food={b.food} name={b.name} under={under} />
        </li>
      ))}
    </ul>
  );
}

/** Until when the packs of a food last; that none is kept. Nothing of fresh food: it is bought as it is needed. */
function Packs({ food, name, under }: { food: string; name: string; under: Circumstances }) {
  const { house } = useMixDraft();
  const t = words().pelletStock;
  if (!isFedBeside(house, food)) return null;
  const { packs, days, runsOut, buyBy } = pelletStock(house, food, under);
  if (packs.length === 0)
    return (
      <Sentence
        of={t.days.noPack(name)}
        with={{ stock: (text) => <a href={linkTo('cupboard')}>{text}</a> }}
      />
    );
  if (days === undefined || runsOut?.status !== 'known') return <>{runsOut?.sentence}</>;
  return (
    <>
      <a href={linkTo('cupboard')}>{t.lasts(days, dayInWords(runsOut.day))}</a>{' '}
      {buyBy !== undefined && (buyBy <= under.today ? t.buyNow : t.buyBy(dayInWords(buyBy)))}
    </>
  );
}
