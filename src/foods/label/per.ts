/** The "per" of an amount: "per 100 g", "/kg", "pro Portion (30 g)", "par portion de 30 g", "in dry matter". */
import type { Item } from './match.ts';
import { readNumber } from './numbers.ts';
import type { LabelBasis, Quantity } from './reading.ts';
import type { Role } from './words.ts';

/** A quantity found in a line. `size` when it says how large a serving is, `bare` when no "per" stands before it. */
interface FoundQuantity {
  readonly quantity: Quantity;
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

const MILLILITRES: Readonly<Record<string, number>> = { ml: 1, cl: 10, dl: 100, l: 1000 };

/** The quantity that begins at `from`, or undefined. */
export function findQuantity(items: readonly Item[], from: number): FoundQuantity | undefined {
  let i = from;
  const startsPer = isRole(items[i], 'per') || isSign(items[i], '/');
  if (startsPer) i++;
  if (startsPer && isRole(items[i], 'per')) i++;
  const make = (kind: Quantity['kind'], next: number, grams?: number, more: { size?: boolean } = {}) => {
    const basis = basisAt(items, next);
    const end = basis ? next + 1 : next;
    return {
      quantity: {
        kind,
        ...(grams !== undefined && { grams }),
        basis: basis ?? ('as fed' as const),
        text: textOf(items, from, end),
      },
      next: end,
      size: more.size ?? false,
      bare: !startsPer && kind === 'grams' && !more.size,
      basisOnly: false,
    };
  };

  const here = items[i];
  const after = items[i + 1];
  const basis = startsPer ? undefined : basisAt(items, i);
  if (basis)
    return {
      quantity: { kind: 'percent', basis, text: textOf(items, i, i + 1) },
      next: i + 1,
      size: false,
      bare: false,
      basisOnly: true,
    };

  const weight = weightAt(items, i);
  if (weight && weight.grams > 0) {
    let next = weight.next;
    // "per 30 g serving", "per 30 g (1 serving)"
    if (items[next]?.kind === 'number' && isRole(items[next + 1], 'serving')) next += 2;
    else if (isRole(items[next], 'serving')) next++;
    // "12 g / 4 g" is two columns, "12 g / 100 g" is not.
    if (isSign(items[from], '/') && weight.grams < 25) return undefined;
    return make('grams', next, weight.grams);
  }
  if (startsPer && here?.kind === 'unit' && here.unit === 'g') return make('grams', i + 1, 1);
  if (startsPer && here?.kind === 'word' && here.text.toLowerCase() === 'kg')
    return make('grams', i + 1, 1000);
  if (startsPer && here?.kind === 'number' && after?.kind === 'word') {
    const each = MILLILITRES[after.text.toLowerCase()];
    if (each !== undefined) return make('volume', i + 2);
  }

  const size = isRole(here, 'serving size');
  const counted = here?.kind === 'number' && isRole(after, 'serving') ? 1 : 0;
  if (!size && !isRole(items[i + counted], 'serving')) return undefined;
  let next = i + counted + 1;
  let equals = false;
  for (const [k, item] of items.slice(next, next + 8).entries()) {
    const found = weightAt(items, next + k);
    if (found && found.grams > 0) return make('grams', found.next, found.grams, { size: size || equals });
    if (isSign(item, '=')) equals = true;
    const passes =
      isSign(item, '=/:≙~') ||
      isRole(item, 'filler') ||
      isRole(item, 'to') ||
      isRole(item, 'about') ||
      isRole(item, 'serving') ||
      ((size || counted > 0 || equals) && item.kind === 'number');
    if (!passes) break;
  }
  while (
    size &&
    (items[next]?.kind === 'number' || isRole(items[next], 'serving') || isSign(items[next], '/:'))
  )
    next++;
  return make('serving', next);
}

function basisAt(items: readonly Item[], i: number): LabelBasis | undefined {
  if (isRole(items[i], 'dry matter')) return 'dry matter';
  return isRole(items[i], 'as fed') ? 'as fed' : undefined;
}

function weightAt(items: readonly Item[], i: number): { grams: number; next: number } | undefined {
  const number = items[i];
  const unit = items[i + 1];
  if (number?.kind !== 'number' || !unit) return undefined;
  const factor =
    unit.kind === 'unit' && unit.unit === 'g'
      ? 1
      : unit.kind === 'word' && unit.text.toLowerCase() === 'kg'
        ? 1000
        : undefined;
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
