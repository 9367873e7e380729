/** The "per" of an amount: "per 100 g", "/kg", "pro Portion (30 g)", "par portion de 30 g", "per tablet", "in dry matter". */
import type { Item } from './match.ts';
import { readNumber } from './numbers.ts';
import type { Basis, PrintedQuantity } from './quantity.ts';
import type { Role } from './words.ts';

/** A quantity found in a line. `size` when it says how large a serving is, `bare` when no "per" stands before it. */
export interface FoundQuantity {
  readonly quantity: PrintedQuantity;
  readonly next: number;
  readonly size: boolean;
  readonly bare: boolean;
  /** Only "in dry matter" or "as fed", with no weight. */
  readonly basisOnly: boolean;
}

export const isRole = (item: Item | undefined, role: Role): boolean =>
  item?.kind === 'role' && item.roles.has(role);
export const isSign = (item: Item | undefined, signs: string): boolean =>
  item?.kind === 'sign' && signs.includes(item.text);
export const isEnergyUnit = (item: Item | undefined): boolean =>
  item?.kind === 'unit' && (item.unit === 'kcal' || item.unit === 'kJ' || item.unit === 'MJ');

/** Volumes that need a weight before they are grams. */
const VOLUMES = new Set(['ml', 'cl', 'dl', 'l', 'litre', 'liter', 'litro']);
/** Words that mean "per" and nothing else: what follows them is a denominator, known or not. */
const ONLY_PER = new Set([
  'per',
  'je',
  'pro',
  'par',
  'por',
  'cada',
  'por cada',
  'each',
  'every',
  'amount per',
]);
/** Grams, exact: the avoirdupois pound, and 1/16 of it (international yard and pound agreement, 1959). */
const GRAMS_PER_POUND = 453.59237;
const OUNCES_PER_POUND = 16;
/** Whether a word means "per" and nothing else. */
export const isOnlyPer = (item: Item | undefined): boolean =>
  item?.kind === 'role' && ONLY_PER.has(item.text.toLowerCase());
/** How far the words between "per" and what it is part of are followed. */
const FARTHEST = 6;
/** No more words than this are taken to name one denominator. */
const MOST_WORDS = 4;

/** The quantity that begins at `from`, or undefined. */
export function findQuantity(items: readonly Item[], from: number): FoundQuantity | undefined {
  const basis = basisAt(items, from);
  if (basis)
    return {
      quantity: { kind: 'percent', basis: basis.basis, text: textOf(items, from, basis.next) },
      next: basis.next,
      size: false,
      bare: false,
      basisOnly: true,
    };
  const slash = isSign(items[from], '/');
  const starts = slash || isRole(items[from], 'per');
  let i = starts ? from + 1 : from;
  if (starts && isRole(items[i], 'per')) i++;
  const found = weightFrom(items, from, i) ?? servingFrom(items, from, i, starts);
  if (found || !starts) return found;
  return energyFrom(items, from, i, slash) ?? strangeFrom(items, from, i, slash);
}

/** Where "in % der Trockenmasse", "on a dry basis" or "as sold" end, and what they say. */
export function basisAt(items: readonly Item[], from: number): { basis: Basis; next: number } | undefined {
  let i = from;
  while (
    i < from + FARTHEST &&
    (isRole(items[i], 'filler') || isRole(items[i], 'per') || isPercent(items[i]))
  )
    i++;
  const basis = basisOf(items[i]);
  return basis && { basis, next: pastProduct(items, i + 1) };
}

function basisOf(item: Item | undefined): Basis | undefined {
  if (isRole(item, 'dry matter')) return 'dry matter';
  if (isRole(item, 'prepared')) return 'prepared';
  return isRole(item, 'as fed') ? 'as fed' : undefined;
}

export function isPercent(item: Item | undefined): boolean {
  return item?.kind === 'unit' && item.unit === '%';
}

/** Skips "of the product". */
function pastProduct(items: readonly Item[], from: number): number {
  let i = from;
  while (i < from + FARTHEST && isRole(items[i], 'filler')) i++;
  return isRole(items[i], 'product') ? i + 1 : from;
}

/** A quantity with the basis that stands right after it, whatever fillers lie between. */
function made(
  items: readonly Item[],
  from: number,
  next: number,
  quantity: Omit<PrintedQuantity, 'text'>,
  more: { size?: boolean; bare?: boolean } = {},
): FoundQuantity {
  let end = pastProduct(items, next);
  // After a gap a basis heads a column of its own.
  const basis = items[end]?.gap ? undefined : basisAt(items, end);
  if (basis) end = basis.next;
  return {
    quantity: { ...quantity, ...(basis && { basis: basis.basis }), text: textOf(items, from, end) },
    next: end,
    size: more.size ?? false,
    bare: more.bare ?? false,
    basisOnly: false,
  };
}

function weightFrom(items: readonly Item[], from: number, i: number): FoundQuantity | undefined {
  const starts = i > from;
  const alone = starts && isRole(items[i], 'kilogram') ? 1000 : starts && isGram(items[i]) ? 1 : undefined;
  if (alone !== undefined) return made(items, from, i + 1, { kind: 'grams', grams: alone });
  const heavy = starts ? poundsOf(items[i]) : undefined;
  if (heavy !== undefined) return made(items, from, i + 1, { kind: 'grams', grams: heavy });
  const weight = weightAt(items, i);
  if (!weight || weight.grams <= 0) return undefined;
  // "12 g / 4 g" is two columns, "12 g / 100 g" is not.
  if (isSign(items[from], '/') && weight.grams < 25) return undefined;
  let { next } = weight;
  // "per 30 g serving", "per 30 g (1 serving)", "per 30 g (1/2 cup)"
  if (items[next]?.kind === 'number' && isRole(items[next + 1], 'serving')) next += 2;
  else if (isRole(items[next], 'serving') || isRole(items[next], 'piece')) next++;
  next = pastBracketed(items, next);
  const contains = isRole(items[next], 'contains');
  const bare = !starts && !contains;
  return made(items, from, contains ? next + 1 : next, { kind: 'grams', grams: weight.grams }, { bare });
}

/** A household measure in brackets after a weight only says the weight in other words. */
function pastBracketed(items: readonly Item[], from: number): number {
  let i = from;
  let measure = false;
  for (let item = items[i]; item?.bracketed && i < from + FARTHEST; item = items[++i]) {
    if (isRole(item, 'piece') || isRole(item, 'serving')) measure = true;
    else if (item.kind !== 'number' && !isSign(item, '/') && !isRole(item, 'about')) break;
  }
  return measure && !items[i]?.bracketed ? i : from;
}

function servingFrom(
  items: readonly Item[],
  from: number,
  i: number,
  starts: boolean,
): FoundQuantity | undefined {
  const here = items[i];
  const size = isRole(here, 'serving size');
  let at = i;
  while (at < i + 3 && (items[at]?.kind === 'number' || isSign(items[at], '/'))) at++;
  const counted = at > i;
  const piece = isRole(items[at], 'piece');
  if (!size && !isRole(items[at], 'serving') && !piece) return undefined;
  if (piece && !starts && !counted && !isRole(items[at + 1], 'contains')) return undefined;
  let next = at + 1;
  let equals = false;
  let apart = false;
  for (const [k, item] of items.slice(next, next + 8).entries()) {
    if (item.gap && !size && !item.bracketed) break;
    const found = weightAt(items, next + k);
    if (found && found.grams > 0) {
      const contains = isRole(items[found.next], 'contains') ? 1 : 0;
      const isSize = size || (equals && contains === 0);
      return {
        ...made(
          items,
          from,
          found.next + contains,
          {
            kind: isSize && piece ? 'each' : 'grams',
            grams: found.grams,
            ...(!starts && !piece && !isSize && !contains && { maySize: true }),
          },
          { size: isSize },
        ),
      };
    }
    if (isSign(item, '=')) equals = true;
    if (isSign(item, ':')) apart = true;
    const passes =
      isSign(item, '=/:≙~') ||
      isRole(item, 'filler') ||
      isRole(item, 'to') ||
      isRole(item, 'about') ||
      isRole(item, 'serving') ||
      isRole(item, 'piece') ||
      ((size || counted || equals || apart) && item.kind === 'number');
    if (!passes) break;
  }
  while (
    size &&
    (items[next]?.kind === 'number' ||
      isRole(items[next], 'serving') ||
      isRole(items[next], 'piece') ||
      isSign(items[next], '/:'))
  )
    next++;
  if (isRole(items[next], 'contains')) next++;
  const one = !counted || (at === i + 1 && items[i]?.text === '1');
  return made(items, from, next, { kind: piece || !one ? 'each' : 'serving' });
}

/** "per 100 kcal" is no weight; "1580 kJ / 377 kcal" is no denominator. */
function energyFrom(
  items: readonly Item[],
  from: number,
  i: number,
  slash: boolean,
): FoundQuantity | undefined {
  if (slash && isEnergyUnit(items[from - 1])) return undefined;
  if (items[i]?.kind === 'number' && isEnergyUnit(items[i + 1]))
    return made(items, from, i + 2, { kind: 'energy' });
  return isEnergyUnit(items[i]) ? made(items, from, i + 1, { kind: 'energy' }) : undefined;
}

/** A denominator that is a volume, a unit of something else, or a word that is not known. */
function strangeFrom(
  items: readonly Item[],
  from: number,
  i: number,
  slash: boolean,
): FoundQuantity | undefined {
  const counted = items[i]?.kind === 'number' ? 1 : 0;
  const what = items[i + counted];
  if (what?.kind === 'word' && VOLUMES.has(what.text.toLowerCase()))
    return made(items, from, i + counted + 1, { kind: 'volume' });
  const first = items[from]?.text.toLowerCase() ?? '';
  const before = items[from - 1];
  const sure = slash ? before?.kind === 'unit' : ONLY_PER.has(first) || counted > 0;
  if (!sure || (slash && isEnergyUnit(before))) return undefined;
  if (what?.kind === 'unit' && what.unit !== 'g' && what.unit !== '%' && counted === 0)
    return made(items, from, i + 1, { kind: 'each' });
  if (what?.kind !== 'word') return undefined;
  let next = i + counted + 1;
  while (next < i + counted + MOST_WORDS && items[next]?.kind === 'word') next++;
  return made(items, from, next, { kind: 'each' });
}

export function isGram(item: Item | undefined): boolean {
  return item?.kind === 'unit' && item.unit === 'g';
}

function poundsOf(item: Item | undefined): number | undefined {
  if (isRole(item, 'pound')) return GRAMS_PER_POUND;
  return isRole(item, 'ounce') ? GRAMS_PER_POUND / OUNCES_PER_POUND : undefined;
}

function weightAt(items: readonly Item[], i: number): { grams: number; next: number } | undefined {
  const number = items[i];
  const unit = items[i + 1];
  if (number?.kind !== 'number' || !unit) return undefined;
  const factor = isGram(unit) ? 1 : isRole(unit, 'kilogram') ? 1000 : poundsOf(unit);
  if (factor === undefined) return undefined;
  const read = readNumber(number.text);
  // A weight that may be 1.25 g or 1250 g settles nothing.
  if (typeof read === 'string' || read.readings.length > 1) return undefined;
  return { grams: read.readings[0] * factor, next: i + 2 };
}

function textOf(items: readonly Item[], from: number, to: number): string {
  return items
    .slice(from, to)
    .map((i) => i.text)
    .join(' ');
}
