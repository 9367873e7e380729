/** What a batch holds, one line a content. */
import { nutrient, type Tag, type Unit, unitWord } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';

/** One content of the mix per 100 g as weighed, in the unit of the tagname. */
export interface ContentLine {
  readonly tag: Tag;
  readonly name: string;
  readonly unit: Unit;
  readonly value: number;
  /** Standard deviation, from the foods that give one. */
  readonly sd: number;
  /** Least and most it can be, what is unknown taken at both ends. */
  readonly low: number;
  readonly high: number;
  /** Percent of the mix, by weight, for which the amount is known or estimated. */
  readonly coverage: number;
  /** Whether the value counts unknown amounts as nothing: there is at least so much. */
  readonly atLeast: boolean;
}

/** A content as people read it: "at least 12.3 g" where some of it is unknown. */
export function contentWords(line: ContentLine): string {
  const t = words().batch.contents;
  // Nothing known of it is no amount of it.
  if (line.atLeast && line.value === 0) return t.notKnown;
  const { number } = words().figures;
  const value = t.amount(number(Number(line.value.toPrecision(3)), 6), unitWord(nutrient(line.tag).unit));
  if (line.atLeast) return t.atLeast(value);
  return line.sd > 0 ? t.spread(value, number(Number((1.96 * line.sd).toPrecision(2)), 6)) : value;
}
