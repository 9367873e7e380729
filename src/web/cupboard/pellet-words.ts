/** Packs of pellets in words: how each stands, and until when all of them last. */
import type { PelletPack, PelletStock } from '../../household/reckon/cupboard/pellet-stock.ts';
import { dayInWords, daysBetween } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';

/** An open pack of dry food keeps about so many days (common practice, no source). */
const OPEN_DAYS = 90;

/** "Lasts about 81 days, until 30 May. Buy more by 23 May."; what is missing where nobody can say. */
export function lastsWords(stock: PelletStock, today: Day): string {
  const t = words().pelletStock;
  const { runsOut, days, buyBy, estimated, tooMuch } = stock;
  if (!runsOut) return '';
  if (runsOut.status === 'unknown' || days === undefined || buyBy === undefined) return runsOut.sentence;
  const lasts = (estimated ? t.lastsAbout : t.lasts)(days, dayInWords(runsOut.day, today));
  return [
    lasts,
    buyBy <= today ? t.buyNow : t.buyBy(dayInWords(buyBy, today)),
    ...(tooMuch !== undefined && tooMuch >= 1 ? [t.tooMuch(sayGrams(Math.round(tooMuch)))] : []),
  ].join(' ');
}

/** How a pack stands that may be fed; undefined for one whose state is that of any lot. */
export function packState({ state, left }: PelletPack): string | undefined {
  const t = words().pelletStock.state;
  if (state === 'past') return t.past;
  if (state !== 'in-use' && state !== 'kept') return undefined;
  if (left === 0) return t.shouldBeEmpty;
  return state === 'in-use' ? t.inUse : t.kept;
}

/** "about 412 g left of 1 kg"; the weight alone where nothing was taken. */
export function packLeft({ left, lot, estimated }: PelletPack): string {
  const t = words().pelletStock;
  // What is worked out to a tenth of a gram was not weighed so.
  const grams = sayGrams(estimated > 0 ? Math.round(left) : left);
  if (estimated > 0) return t.leftAbout(grams, sayGrams(lot.grams));
  return left === lot.grams ? sayGrams(left) : t.left(grams, sayGrams(lot.grams));
}

/** That a pack has been open for long; undefined where it has not, or nobody said when it was opened. */
export function openLong({ lot, state }: PelletPack, today: Day): string | undefined {
  if (lot.openedOn === undefined || state === 'barred' || state === 'empty') return undefined;
  const days = daysBetween(lot.openedOn, today);
  return days > OPEN_DAYS ? words().pelletStock.keeping.openLong(days) : undefined;
}
