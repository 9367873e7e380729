/** What the heading of a column says: what it holds, in which unit, per what. */

import { type Item, match } from '../../../foods/label/match.ts';
import { readNumber } from '../../../foods/label/numbers.ts';
import type { PrintedUnit } from '../../../foods/label/reading.ts';
import { unitFits } from '../../../foods/label/units.ts';
import { isTag } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import { plainText } from './grid.ts';
import { MEASURE_WORDS, plainKey, type Role, roleOfWords, rolesOfSign } from './words.ts';

export interface Heading {
  readonly text: string;
  /** What it may mean: one where it is plain, several where it must be asked, none where nothing is known. */
  readonly roles: readonly Role[];
  readonly unit?: PrintedUnit;
  /** g that the amounts are in. */
  readonly per?: number;
  readonly basis?: 'as fed' | 'dry matter';
  readonly bound?: 'low' | 'high';
  /** A weight of the food itself, in kg. */
  readonly kilograms?: true;
  /** Protein is named as crude protein. */
  readonly crude?: true;
  /** Why nothing can be taken from the column. */
  readonly why?: string;
}

const GRAMS_IN_KILOGRAM = 1000;
const CURRENCY = /[€$£¥]|\b(?:eur|euro|euros|usd|gbp|chf|fr)\b/i;
const CRUDE = /\b(?:crude|raw|roh\w*|brut\w*|ruw\w*|crud\w*|azotees)\b/;

/** @param printed the heading, with what stands above and below it */
export function readHeading(printed: string): Heading {
  const text = plainText(printed);
  // A label reads "dry matter" as the name of an amount where a figure follows.
  const items = match(`${text} 1`).items.slice(0, -1);
  const unit = unitOf(items);
  const per = perOf(items);
  const basis = items.some((i) => hasRole(i, 'dry matter'))
    ? ('dry matter' as const)
    : items.some((i) => hasRole(i, 'as fed'))
      ? ('as fed' as const)
      : undefined;
  const low = items.some((i) => hasRole(i, 'low'));
  const high = items.some((i) => hasRole(i, 'high'));
  const said = {
    text,
    ...(unit && { unit }),
    ...(per !== undefined && { per }),
    ...(items.some((i, k) => hasRole(i, 'kilogram') && !isPer(items[k - 1])) && { kilograms: true as const }),
    ...(low !== high && { bound: low ? ('low' as const) : ('high' as const) }),
  };
  if (text === '') return { text, roles: [] };
  const called = roleOfWords(text) ?? roleOfWords(withoutMeasures(text));
  if (called === 'share' && low !== high)
    return { ...said, roles: [], why: words().ownTable.headings.boundShare };
  if (called === 'share' && unit && unit !== '%') return { ...said, roles: ['grams', 'share'] };
  if (CURRENCY.test(text) || called === 'price') return { ...said, roles: ['price'] };
  if (called) return { ...said, roles: [called] };
  if (items.some((i) => hasRole(i, 'prepared')))
    return { ...said, roles: [], why: words().ownTable.headings.prepared };
  if (items.some((i) => hasRole(i, 'daily') || hasRole(i, 'energy share')))
    return { ...said, roles: [], why: words().ownTable.headings.daily };
  const named = {
    ...said,
    ...(basis && { basis }),
    ...(CRUDE.test(plainKey(text)) && { crude: true as const }),
  };
  const sign = onlyWord(text);
  const signed =
    sign === undefined ? [] : isTag(sign) && !rolesOfSign(sign).length ? [sign] : rolesOfSign(sign);
  if (sign !== undefined && signed.length > 0 && unitOf(match(sign).items)) {
    // "MG" is no milligram here.
    const rest = unitOf(match(text.replace(sign, ' ')).items);
    const { unit: _mistaken, ...others } = named;
    return { ...others, ...(rest && { unit: rest }), roles: signed };
  }
  if (signed.length > 0)
    return { ...named, roles: signed, ...(sign !== 'PROCNT' && signed[0] === 'PROCNT' && { crude: true }) };
  const names = items.flatMap((i) => (i.kind === 'name' ? [i.name] : []));
  // "Carbohydrate, of which sugars": what is broken out is what the column holds.
  const name = items.some((i) => hasRole(i, 'break')) ? names.at(-1) : names[0];
  if (name?.tags.length === 0) {
    if (/^dry matter/.test(name.called)) return { ...said, roles: ['dry matter'] };
    return { ...said, roles: [], why: name.reason };
  }
  if (name) {
    const distinct = new Set(names.map((n) => n.tags.join()));
    const rest = items.some((i) => i.kind === 'word');
    const tags = unit ? name.tags.filter((t) => unitFits(t, unit)) : name.tags;
    if (tags.length === 0)
      return {
        ...named,
        roles: [],
        why: words().ownTable.headings.unit(name.called, unit ?? ''),
      };
    const roles: Role[] = name.mark === 'salt' ? ['salt'] : [...tags];
    if (name.tags[0] === 'CHOCDF') roles.push('net-carbohydrate');
    // A second name or a strange word beside it leaves doubt.
    const doubt = (distinct.size > 1 && !items.some((i) => hasRole(i, 'break'))) || rest;
    return { ...named, roles: doubt ? [...roles, 'none'] : roles };
  }
  if (plainKey(text) === 'g' || plainKey(text) === 'kg') return { ...said, roles: ['grams', 'none'] };
  if (/^[%\s]+$/.test(text)) return { ...said, roles: ['share', 'none'] };
  return { ...named, roles: [] };
}

/** Whether a heading says nothing but units, weights and bases: then it belongs to what stands above it. */
export function isMeasureOnly(text: string): boolean {
  const { items } = match(`${plainText(text)} 1`);
  const own = items.slice(0, -1);
  return (
    own.length > 0 &&
    own.every((i) => i.kind !== 'name' && i.kind !== 'word' && i.kind !== 'odd') &&
    own.some(
      (i) => i.kind === 'unit' || hasRole(i, 'dry matter') || hasRole(i, 'as fed') || hasRole(i, 'per'),
    )
  );
}

function hasRole(item: Item | undefined, role: Parameters<ReadonlySet<string>['has']>[0]): boolean {
  return item?.kind === 'role' && (item.roles as ReadonlySet<string>).has(role);
}

/** The unit of the amounts: the first that is no weight they are per. */
function unitOf(items: readonly Item[]): PrintedUnit | undefined {
  for (const [i, item] of items.entries())
    if (item.kind === 'unit' && items[i - 1]?.kind !== 'number' && !isPer(items[i - 1])) return item.unit;
  return undefined;
}

function isPer(item: Item | undefined): boolean {
  return hasRole(item, 'per') || (item?.kind === 'sign' && item.text === '/');
}

/** "per 100 g", "/kg", "g/100g": the weight that amounts are in, g. */
export function perOf(items: readonly Item[]): number | undefined {
  for (const [i, item] of items.entries()) {
    if (!isPer(item)) continue;
    const [next, after] = [items[i + 1], items[i + 2]];
    if (hasRole(next, 'kilogram')) return GRAMS_IN_KILOGRAM;
    if (next?.kind === 'unit' && next.unit === 'g') return 1;
    if (next?.kind !== 'number') continue;
    const read = readNumber(next.text);
    // "1.000 g" may be one gram or a thousand: then it is asked.
    if (typeof read === 'string' || read.readings.length > 1) continue;
    const [amount] = read.readings;
    if (!(amount > 0)) continue;
    if (after?.kind === 'unit' && after.unit === 'g') return amount;
    if (hasRole(after, 'kilogram')) return amount * GRAMS_IN_KILOGRAM;
  }
  return undefined;
}

/** The one word of a heading beside units and weights, as printed. */
function onlyWord(text: string): string | undefined {
  const words = text.match(/[\p{L}\p{N}+]+(?:_[\p{L}\p{N}]+)?/gu) ?? [];
  const all = words.filter((w) => !/^\d+$/.test(w));
  const [word, ...more] = all.length === 1 ? all : all.filter((w) => !MEASURE_WORDS.has(w.toLowerCase()));
  return more.length === 0 ? word : undefined;
}

function withoutMeasures(text: string): string {
  const words = plainKey(text).split(' ');
  return words.filter((w) => !MEASURE_WORDS.has(w) && !/^\d+$/.test(w)).join(' ');
}
