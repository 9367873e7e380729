/** From a reading to figures of a food: per 100 g as fed, in the units of the tagnames. */

import { asFed, toAsFed } from '../../nutrition/amount.ts';
import { nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import type { Composition, Figures } from '../food.ts';
import { content, counts, settledValue } from './compare.ts';
import type { LabelReading, ReadAmount } from './reading.ts';

export interface LabelFigures {
  readonly figures: Figures;
  readonly basis: 'as fed';
  /** What was reckoned rather than printed, in words. */
  readonly notes: readonly string[];
}

/**
 * The figures of a label. Only amounts without an open question count; bounds stay bounds. Where a nutrient is
 * given twice and the two agree, the finer figure counts, and the narrower bound.
 */
export function figuresOf(reading: LabelReading): LabelFigures {
  const composition: Composition = {};
  const low: Composition = {};
  const high: Composition = {};
  const notes: string[] = [];
  const moisture = settledValue(reading.amounts, 'WATER') ?? reading.moisture;
  const finest = new Map<Tag, ReadAmount>();
  for (const amount of reading.amounts) {
    if (!counts(amount) || amount.per.grams === undefined) continue;
    const { tag } = amount;
    const toFood = (printed: number): number | undefined => {
      const own = content(amount, printed)!;
      if (amount.per.basis === 'as fed') return own;
      if (moisture === undefined || moisture >= 100) return undefined;
      const { unit } = nutrient(tag);
      const fed = toAsFed({ ...asFed(own, unit), basis: 'dry matter' }, moisture);
      return fed.known ? fed.value : undefined;
    };
    if (amount.as === 'salt') note(words().label.reading.notes.fromSalt);
    if (amount.per.basis === 'dry matter' && moisture !== undefined)
      note(words().label.reading.notes.fromDry(moisture));
    if (amount.as === 'available carbohydrate') continue;
    if (amount.value !== undefined) {
      const value = toFood(amount.value);
      if (value === undefined) continue;
      const had = finest.get(tag);
      if (!had || finer(amount, had)) {
        finest.set(tag, amount);
        composition[tag] = value;
      }
    }
    const least = amount.low === undefined ? undefined : toFood(amount.low);
    const most = amount.high === undefined ? undefined : toFood(amount.high);
    if (least !== undefined) low[tag] = Math.max(least, low[tag] ?? 0);
    if (most !== undefined) high[tag] = Math.min(most, high[tag] ?? Number.POSITIVE_INFINITY);
  }
  addAvailable();
  return { figures: { composition, sd: {}, low, high }, basis: 'as fed', notes };

  function note(words: string): void {
    if (!notes.includes(words)) notes.push(words);
  }

  /** Carbohydrate by difference is the available carbohydrate and the fibre together; without the fibre it is at least the former. */
  function addAvailable(): void {
    for (const amount of reading.amounts) {
      if (amount.as !== 'available carbohydrate' || !counts(amount) || amount.per.grams === undefined)
        continue;
      const share =
        amount.per.basis === 'as fed' ? 1 : moisture === undefined ? undefined : (100 - moisture) / 100;
      const printed = amount.value ?? amount.low;
      if (share === undefined || printed === undefined) continue;
      const available = content(amount, printed)! * share;
      const fibre = composition.FIBTG;
      if (amount.value !== undefined && fibre !== undefined) {
        const had = finest.get('CHOCDF');
        if (composition.CHOCDF !== undefined && !(had && finer(amount, had))) continue;
        finest.set('CHOCDF', amount);
        composition.CHOCDF = available + fibre;
        note(words().label.reading.notes.withFibre);
      } else {
        low.CHOCDF = Math.max(available + (low.FIBTG ?? 0), low.CHOCDF ?? 0);
        note(words().label.reading.notes.leastOnly);
      }
    }
  }
}

/** The finer of two figures that agree: kcal as printed before kJ, then the smaller rounding, then the larger figure. */
function finer(a: ReadAmount, b: ReadAmount): boolean {
  const rank = (x: ReadAmount) => [
    x.tag === 'ENERC_KCAL' && x.unit !== 'kcal' ? 1 : 0,
    content(x, x.rounding)!,
    -content(x, x.value!)!,
  ];
  const [one, other] = [rank(a), rank(b)];
  for (const [k, mine] of one.entries()) {
    const its = other[k];
    if (its !== undefined && mine !== its) return mine < its;
  }
  return false;
}
