/** What a column, or the print right beside a figure, makes of it: what it is per and of, and whether it is a bound. */
import { words } from '../../words/words.ts';
import type { Column } from './columns.ts';
import type { Context } from './context.ts';
import type { Figure } from './figure.ts';
import type { Bound, PrintedQuantity } from './quantity.ts';
import type { Quantity } from './reading.ts';
import { ownQuantity } from './units.ts';

export const NO_QUANTITY: Quantity = { kind: 'unknown', basis: 'as fed', text: '' };

/** What a column makes of a figure. */
export interface Attachment {
  readonly per: Quantity;
  readonly bound?: Bound;
  /** The column's own words, where its figures are of the food once prepared. */
  readonly prepared?: string;
  readonly text: string;
}

/** What print right beside the figure says of its basis goes before what the heading says. */
export function withFigure(to: Attachment, { basis, unit }: Figure): Attachment {
  const own = ownQuantity(unit);
  const text = unit === '%' ? '%' : `per ${own} g`;
  const kind = unit === '%' ? 'percent' : 'grams';
  const base: Quantity = own === undefined ? to.per : { kind, grams: own, basis: to.per.basis, text };
  const { prepared: _, ...rest } = to;
  if (basis === undefined) return { ...to, per: base };
  if (basis === 'prepared')
    return { ...to, per: base, prepared: to.prepared ?? words().label.reading.asPrepared };
  return { ...rest, per: { ...base, basis } };
}

/** A figure by itself: its own "per", or none at all, under the one basis and bound of the heading. */
export function alone(quantity: PrintedQuantity | undefined, { heading }: Context): Attachment {
  const bases = new Set(heading.columns.map((c) => c.basis));
  const [basis] = bases;
  const bounds = new Set(heading.columns.map((c) => c.bound));
  const [bound] = bounds;
  const column: Column = {
    ...(quantity && { quantity }),
    basis: quantity?.basis ?? (bases.size === 1 ? basis : undefined),
    ...(bounds.size === 1 && bound && { bound }),
    text: (basis === 'prepared' && heading.columns[0]?.text) || (quantity?.text ?? ''),
  };
  return attachment(column);
}

/** A value as a bound; a figure that is a bound or a range already stays as it is. */
export function asBound(figure: Figure, side: Bound): Figure {
  const { value, ...rest } = figure;
  return value === undefined ? figure : { ...rest, [side]: value };
}

export function attachment(column: Column | undefined): Attachment {
  const bound = column?.bound === 'mean' ? undefined : column?.bound;
  const text = column?.text ?? '';
  const prepared = column?.basis === 'prepared' ? text || words().label.reading.asPrepared : undefined;
  return {
    per: resolved(column?.quantity, column?.basis),
    ...(bound && { bound }),
    ...(prepared !== undefined && { prepared }),
    text,
  };
}

export function resolved(quantity: PrintedQuantity | undefined, basis: Column['basis']): Quantity {
  const of = quantity?.basis ?? basis;
  const { maySize: _, basis: __, ...rest } = quantity ?? (NO_QUANTITY as PrintedQuantity);
  return { ...rest, basis: of === 'dry matter' ? 'dry matter' : 'as fed' };
}
