/** A figure between being attached to its quantity and being settled. */
import type { Attachment } from './attachment.ts';
import type { Figure } from './figure.ts';
import type { Name } from './match.ts';
import type { Quantity } from './reading.ts';

/** A figure with its quantity, not yet settled. */
export interface Draft {
  readonly line: number;
  readonly name: Name;
  readonly heard: string;
  readonly figure: Figure;
  readonly per: Quantity;
  /** The columns it may belong to, when the line gives one figure for several. */
  readonly columns?: readonly Attachment[];
  /** A bare percentage that may be a share of the weight or of a daily need. */
  readonly percentUnclear?: boolean;
  /** Words that leave open whether the figure is of the food as sold. */
  readonly unclear?: string;
  /** It may be the share of an ingredient. */
  readonly ingredient?: boolean;
}
