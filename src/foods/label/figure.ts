/** One printed figure with its unit: a value, a range, or a bound, as the words before it say. */
import { words } from '../../words/words.ts';
import type { Item } from './match.ts';
import { type NumberReading, readNumber } from './numbers.ts';
import { isRole, isSign } from './per.ts';
import type { Basis, PrintedQuantity } from './quantity.ts';
import type { PrintedUnit } from './reading.ts';

export interface Figure {
  value?: NumberReading;
  low?: NumberReading;
  high?: NumberReading;
  /** "<0.5": the least is nothing at all. */
  under?: boolean;
  unit: PrintedUnit;
  per?: PrintedQuantity;
  /** What print right beside the figure says it is part of. */
  basis?: Basis;
  /** A share of a daily intake or of the energy, and so no amount. */
  share?: 'daily' | 'energy';
  about?: boolean;
  /** The line it was printed on, where that is not the line of its name. */
  line?: number;
}

/** What stood before the figure. */
export interface Ahead {
  /** Unit given with the name, as in "Fat (g)", and whether the label prints it. */
  readonly hint: PrintedUnit | undefined;
  readonly printedHint: boolean;
  readonly bound: 'low' | 'high' | undefined;
  readonly strict: boolean;
  readonly about: boolean;
  readonly per: PrintedQuantity | undefined;
  readonly share: 'daily' | 'energy' | undefined;
  /** "Between": a range then has "and" in its middle. */
  readonly between: boolean;
}

/** The figure that begins with the number at `from`, or why there is none. */
export function readFigure(
  items: readonly Item[],
  from: number,
  ahead: Ahead,
): { figure: Figure; next: number } | string {
  const item = items[from] as Item & { kind: 'number' };
  if (item.glued && items[from - 1]?.kind === 'sign') return words().label.reading.why.minus;
  const first = readNumber(item.text);
  if (typeof first === 'string') return first;
  let next = from + 1;
  let printed = unitAt(items, next);
  if (printed) next++;
  const energy = items[next];
  if (!printed && isRole(energy, 'energy share') && energy?.text.endsWith('%'))
    return { figure: { unit: '%', value: first, share: 'energy' }, next: next + 1 };
  let second: NumberReading | undefined;
  const to = items[next];
  const upper = items[next + 1];
  const joins =
    isSign(to, '-–—−') || isRole(to, 'to') || (ahead.between && (isRole(to, 'and') || isSign(to, '&')));
  if (ahead.between && !(joins && upper?.kind === 'number')) return words().label.reading.why.halfRange;
  if (joins && upper?.kind === 'number') {
    const read = readNumber(upper.text);
    if (typeof read === 'string') return read;
    second = read;
    const own = unitAt(items, next + 2);
    next += own ? 3 : 2;
    if (printed && own && printed !== own) return words().label.reading.why.twoUnits;
    printed = own ?? printed;
    if (Math.min(...first.readings) > Math.max(...second.readings)) return words().label.reading.why.falling;
  }
  const unit = printed ?? ahead.hint;
  if (!unit) return words().label.reading.why.noUnit(item.text);
  if (printed && ahead.printedHint && printed !== ahead.hint)
    return words().label.reading.why.betweenUnits(item.text);
  if (!printed && item.spaced) return words().label.reading.why.oneOrTwo(item.text);
  const figure: Figure = { unit, ...(item.line !== undefined && { line: item.line }) };
  if (second) {
    if (ahead.bound) return words().label.reading.why.rangeAndBound;
    figure.low = first;
    figure.high = second;
  } else if (ahead.bound) {
    figure[ahead.bound] = first;
    if (ahead.strict) figure.under = true;
  } else figure.value = first;
  if (ahead.about) figure.about = true;
  if (ahead.per) figure.per = ahead.per;
  if (ahead.share && unit !== '%')
    return ahead.share === 'daily'
      ? words().label.reading.why.shareOfDaily
      : words().label.reading.why.shareOfEnergy;
  if (ahead.share) figure.share = ahead.share;
  return { figure, next };
}

/** Where "5 % NRV" ends when it stands apart from a nutrient, as in a footnote; undefined when it is no such thing. */
export function dailyAlone(items: readonly Item[], from: number): number | undefined {
  let next = from + 1;
  if (unitAt(items, next) !== '%') return undefined;
  next++;
  while (isRole(items[next], 'filler') || isRole(items[next], 'per') || items[next]?.kind === 'noise') next++;
  return isRole(items[next], 'daily') ? next + 1 : undefined;
}

function unitAt(items: readonly Item[], i: number): PrintedUnit | undefined {
  const item = items[i];
  return item?.kind === 'unit' ? item.unit : undefined;
}
