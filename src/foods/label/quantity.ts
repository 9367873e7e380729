/** What print says an amount is per and of, before the rest of the label settles it. */
import type { LabelBasis, Quantity } from './reading.ts';

/** What print says an amount is part of; `prepared` is the food cooked or made up, which is not what is fed dry. */
export type Basis = LabelBasis | 'prepared';
export type Bound = 'low' | 'high';

/** What an amount is per, as printed; no basis where print gives none. */
export interface PrintedQuantity extends Omit<Quantity, 'basis'> {
  readonly basis?: Basis;
  /** A serving with its weight and no "per" before it: it may head amounts, or only say how large a serving is. */
  readonly maySize?: boolean;
}
