/**
 * The parts of a line: amounts by name, headings that say what amounts are per or of, sections, the size of a serving,
 * and what was missed. A word that may change what a figure means is always in one of them, never dropped.
 */
import type { Figure } from './figure.ts';
import type { Name } from './match.ts';
import type { Bound, PrintedQuantity } from './quantity.ts';

/** A percentage that is no share of the weight. */
interface Share {
  readonly kind: 'share';
  readonly of: 'daily' | 'energy' | 'unknown';
  readonly text: string;
}

interface BoundWord {
  readonly kind: 'bound';
  readonly side: Bound | 'mean';
  readonly text: string;
}

/** One thing that a heading says. */
export type Atom = PrintedQuantity | Share | BoundWord;

/** `vitamins` and the like head a part of another section. */
export type Section = 'analysis' | 'constituents' | 'additives' | 'ingredients' | 'composition' | 'vitamins';

export type Part =
  | {
      readonly kind: 'amount';
      readonly name: Name;
      readonly heard: string;
      readonly figures: readonly Figure[];
    }
  | {
      readonly kind: 'heading';
      readonly atoms: readonly Atom[];
      /** Words in it that are not known. */
      readonly words: readonly string[];
      readonly text: string;
      /** It begins with "in", "on" and the like, so that unknown words say what amounts are of. */
      readonly leads?: boolean;
      /** "For" and the like with a word: whom the food is for, or after figures what others are per. */
      readonly forWords?: boolean;
      /** A comma parts it from what follows, as in a list. */
      readonly listed?: boolean;
      /** Holds to the end of its line only, as "min." before a name. */
      readonly lineOnly?: boolean;
    }
  | { readonly kind: 'section'; readonly section: Section }
  | { readonly kind: 'serving size'; readonly quantity: PrintedQuantity }
  | {
      readonly kind: 'missed';
      readonly text: string;
      readonly why: string;
      /** It holds words that may change what the other figures of its line mean. */
      readonly taints?: boolean;
      /** It is told as a heading too. */
      readonly heads?: boolean;
      /** A percentage of something that is no nutrient, as in a list of ingredients. */
      readonly strangeShare?: boolean;
    };

export interface LineParts {
  readonly parts: readonly Part[];
  /** Names that stand without a figure. */
  readonly bare: readonly string[];
}
