/**
 * A quantity or basis at the end of a line of several amounts: "protein 12 g, fat 4 g per 100 g" means both. Where a
 * heading says otherwise already, which of the two holds for the amounts before the last is left open.
 */
import { words as texts } from '../../words/words.ts';
import type { Part } from './part.ts';
import type { PrintedQuantity } from './quantity.ts';

type Amount = Part & { readonly kind: 'amount' };

interface Trailing {
  /** The quantity that the line's end gives an amount with none of its own. */
  quantity(amount: Amount): PrintedQuantity | undefined;
  /** Words that leave open what the amount is of. */
  unclear(amount: Amount): string | undefined;
}

const NONE: Trailing = { quantity: () => undefined, unclear: () => undefined };

/** @param headed whether a heading says what the line's amounts are per */
export function trailingOf(parts: readonly Part[], headed: boolean): Trailing {
  const amounts = parts.filter((p): p is Amount => p.kind === 'amount');
  const last = amounts.at(-1);
  const figure = last?.figures.findLast((f) => !f.share);
  const share = last?.figures.at(-1)?.share === 'energy';
  if (!last || amounts.length < 2) return NONE;
  const before = amounts.slice(0, -1).flatMap((a) => a.figures);
  const { per, basis } = figure ?? {};
  const words = per && !per.text.startsWith('/') && before.every((f) => !f.per) ? per : undefined;
  const based = basis !== undefined && basis !== 'as fed' && before.every((f) => !f.basis);
  const shares = share && before.every((f) => !f.share && f.unit === '%');
  const open = shares
    ? texts().label.reading.energyShares
    : based
      ? `... ${basis}`
      : words && (headed || words.basis !== undefined)
        ? words.text
        : undefined;
  return {
    quantity: (amount) => (amount === last || headed || open !== undefined ? undefined : words),
    unclear: (amount) => (amount === last ? undefined : open),
  };
}
