/** What a label leaves open of the three things that a diet is judged by: protein, fat and fibre. */
import type { Composition, Figures } from '../../../foods/food.ts';
import type { Tag } from '../../../nutrition/nutrients.ts';

export interface Missing {
  readonly tag: 'PROCNT' | 'FAT' | 'FIBC';
  /** The amount itself is not printed; or only the least of it, and the limits ask for the most too. */
  readonly side: 'value' | 'high';
  /** What is printed as the least, g in 100 g. */
  readonly least?: number;
}

/**
 * Fat first: a label commonly says "at least", and too much of it hurts.
 * @param told figures of 100 g as fed
 */
export function missingOnLabel(told: Figures): Missing[] {
  const { composition, low = {}, high = {} } = told;
  const missing = (tag: Missing['tag'], ...same: Tag[]): Missing[] => {
    const tags = [tag, ...same];
    if (tags.some((t) => composition[t] !== undefined || high[t] !== undefined)) return [];
    const least = low[tag];
    if (least !== undefined) return [{ tag, side: 'high', least }];
    return tags.some((t) => low[t] !== undefined) ? [] : [{ tag, side: 'value' }];
  };
  return [...missing('FAT'), ...missing('PROCNT'), ...missing('FIBC', 'FIBTG')];
}

/** Answers to what was missing, g in 100 g as fed, by nutrient. */
export type MissingAnswers = Readonly<Partial<Record<Missing['tag'], number>>>;

/** The figures with the answers where they belong: an amount as an amount, a most as a bound. */
export function withAnswers(told: Figures, missing: readonly Missing[], answers: MissingAnswers): Figures {
  const composition: Composition = { ...told.composition };
  const high: Composition = { ...told.high };
  for (const { tag, side } of missing) {
    const answer = answers[tag];
    if (answer === undefined) continue;
    if (side === 'value') composition[tag] = answer;
    else high[tag] = answer;
  }
  return { ...told, composition, ...(Object.keys(high).length > 0 && { high }) };
}
