/** What the arithmetic says, in words for people. */
import { words } from '../../words/words.ts';
import type { Bound } from '../solve/bounds.ts';

/** A number as people read it: no more decimals than matter. */
export function figure(value: number): string {
  return words().figures.figure(value);
}

const withUnit = (value: number | string, unit: string) => `${value}${unit ? ` ${unit}` : ''}`;

/** "protein of the ration must be at least 17 %". */
export function demand(bound: Bound): string {
  if (bound.says) return bound.says;
  const limit = `${bound.subject} must be ${bound.side === 'min' ? 'at least' : 'at most'} ${withUnit(bound.bound, bound.unit)}`;
  return bound.because ? `${limit} (${bound.because})` : limit;
}

/** "fat of the ration is 8.2 %, above the most allowed, 7 %". */
export function breachSentence(bound: Bound, actual: number): string {
  if (!Number.isFinite(actual))
    return `${bound.subject} cannot be told, since there is nothing to divide by; the ${bound.side === 'max' ? 'most' : 'least'} allowed is ${withUnit(bound.bound, bound.unit)}`;
  const value = nearBound(actual, bound.bound);
  return bound.side === 'max'
    ? `${bound.subject} is ${withUnit(value, bound.unit)}, above the most allowed, ${withUnit(bound.bound, bound.unit)}`
    : `${bound.subject} is ${withUnit(value, bound.unit)}, below the least allowed, ${withUnit(bound.bound, bound.unit)}`;
}

/** Enough decimals that a value just past its bound is not printed as the bound. */
export function nearBound(actual: number, bound: number): string {
  const { figure, number } = words().figures;
  const short = figure(actual);
  return short === figure(bound) ? number(Number(actual.toPrecision(8)), 8) : short;
}

export function bindingSentence(bound: Bound): string {
  return capital(
    `${bound.subject} stands at its ${bound.side === 'min' ? 'least' : 'most'}, ${withUnit(bound.bound, bound.unit)}.`,
  );
}

export function conflictSentence(bounds: readonly Bound[]): string {
  if (bounds.length === 0)
    return 'No mix of these foods keeps every rule to the last digit; loosen any one of them a little.';
  return `No mix of these foods can keep the rules: ${joined(bounds.map(demand))}.`;
}

/** "a, b and c"; nothing for an empty list. */
export function joined(parts: readonly string[]): string {
  return words().figures.list(parts);
}

/** "a, b or c"; nothing for an empty list. */
export function eitherOf(parts: readonly string[]): string {
  return words().figures.either(parts);
}

export function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
