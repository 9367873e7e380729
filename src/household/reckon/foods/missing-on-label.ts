/** What a label leaves open of the three things that a diet is judged by: protein, fat and fibre. */
import { plainFigures } from '../../../foods/figures.ts';
import type { Composition, Figures } from '../../../foods/food.ts';
import type { Tag } from '../../../nutrition/nutrients.ts';

export interface Missing {
  readonly tag: 'PROCNT' | 'FAT' | 'FIBC';
  /** The amount itself is not printed; or only the least of it, and the limits ask for the most too; or only the most. */
  readonly side: 'value' | 'high' | 'low';
  /** What is printed of it, g in 100 g. */
  readonly printed?: number;
}

/**
 * Fat first: a label commonly says "at least", and too much of it hurts. Fibre is commonly printed as a most, and what
 * is only bounded from above may be none at all.
 * @param told figures of 100 g as fed
 */
export function missingOnLabel(told: Figures): Missing[] {
  const { composition, low = {}, high = {} } = told;
  const missing = (tag: Missing['tag'], ...same: Tag[]): Missing[] => {
    const tags = [tag, ...same];
    if (tags.some((t) => composition[t] !== undefined)) return [];
    const [least, most] = [low[tag], high[tag]];
    if (least !== undefined) return most === undefined ? [{ tag, side: 'high', printed: least }] : [];
    if (most !== undefined) return [{ tag, side: 'low', printed: most }];
    return tags.some((t) => (low[t] ?? high[t]) !== undefined) ? [] : [{ tag, side: 'value' }];
  };
  return [...missing('FAT'), ...missing('PROCNT'), ...missing('FIBC', 'FIBTG')];
}

/** Answers to what was missing, g in 100 g as fed, by nutrient. */
export type MissingAnswers = Readonly<Partial<Record<Missing['tag'], number>>>;

/** The figures with the answers where they belong: an amount as an amount, a least or most as a bound. */
export function withAnswers(told: Figures, missing: readonly Missing[], answers: MissingAnswers): Figures {
  const composition: Composition = { ...told.composition };
  const high: Composition = { ...told.high };
  const low: Composition = { ...told.low };
  for (const { tag, side } of missing) {
    const answer = answers[tag];
    if (answer === undefined) continue;
    if (side === 'value') composition[tag] = answer;
    else if (side === 'high') high[tag] = answer;
    else low[tag] = answer;
  }
  return plainFigures({ ...told, composition, low, high });
}
