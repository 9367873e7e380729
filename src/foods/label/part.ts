/** The parts of a line: amounts by name, quantities that head amounts, the size of a serving, and what was missed. */
import type { Figure } from './figure.ts';
import type { Name } from './match.ts';
import type { Quantity } from './reading.ts';

export type Part =
  | {
      readonly kind: 'amount';
      readonly name: Name;
      readonly heard: string;
      readonly figures: readonly Figure[];
    }
  | { readonly kind: 'quantity'; readonly columns: Column[] }
  | { readonly kind: 'serving size'; readonly quantity: Quantity }
  | { readonly kind: 'missed'; readonly text: string; readonly why: string };

export type Column = Quantity | 'daily';

export interface LineParts {
  readonly parts: readonly Part[];
  /** Names that stand without a figure. */
  readonly bare: readonly string[];
}
