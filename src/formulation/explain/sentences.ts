/** What the arithmetic says, in words for people. */
import { words } from '../../words/words.ts';
import type { Bound } from '../solve/bounds.ts';

/** A number as people read it: no more decimals than matter. */
export function figure(value: number): string {
  return words().figures.figure(value);
}

/** An amount with its unit, where it has one. @param digits decimals at most, where it is a number */
export function withUnit(value: number | string, unit: string, digits = 8): string {
  const said = typeof value === 'string' ? value : words().figures.number(value, digits);
  return unit ? `${said} ${unit}` : said;
}

/** "protein of the ration must be at least 17 %". */
export function demand(bound: Bound): string {
  if (bound.says) return bound.says;
  const t = words().formulation;
  const limit = (bound.side === 'min' ? t.mustAtLeast : t.mustAtMost)(bound.subject, limitOf(bound));
  return bound.because ? t.because(limit, bound.because) : limit;
}

/** "fat of the ration is 8.2 %, above the most allowed, 7 %". */
export function breachSentence(bound: Bound, actual: number): string {
  const t = words().formulation;
  const limit = limitOf(bound);
  const most = bound.side === 'max';
  if (!Number.isFinite(actual)) return (most ? t.noMost : t.noLeast)(bound.subject, limit);
  const value = withUnit(nearBound(actual, bound.bound), bound.unit);
  return (most ? t.above : t.below)(bound.subject, value, limit);
}

const limitOf = ({ bound, unit }: Bound) => withUnit(bound, unit);

/** Enough decimals that a value just past its bound is not printed as the bound. */
export function nearBound(actual: number, bound: number): string {
  const { figure, number } = words().figures;
  const short = figure(actual);
  return short === figure(bound) ? number(Number(actual.toPrecision(8)), 8) : short;
}

/** "Fat of the ration stands at its most, 7 %." */
export function bindingSentence(bound: Bound): string {
  return capital(words().formulation.sentence(standing(bound, bound.subject)));
}

/** At which end it stands. @param subject what stands there */
export function standing(bound: Bound, subject: string): string {
  const t = words().formulation;
  return (bound.side === 'min' ? t.atLeast : t.atMost)(subject, limitOf(bound));
}

export function conflictSentence(bounds: readonly Bound[]): string {
  const t = words().formulation;
  return bounds.length === 0 ? t.toTheLastDigit : t.collide(bounds.map(demand));
}

/** "a, b and c"; nothing for an empty list. */
export function joined(parts: readonly string[]): string {
  return words().figures.list(parts);
}

export function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
