/** A doubt about printed figures, and how figures are told in one. */
import { nutrient, type Tag } from '../../nutrition/nutrients.ts';

export type CheckName = 'sum' | 'part' | 'fibre' | 'energy' | 'bounds' | 'dried' | 'slip';

export interface Warning {
  readonly check: CheckName;
  /** The nutrients it is about. */
  readonly tags: readonly Tag[];
  readonly message: string;
}

/** A figure in words: "12.3 g protein". */
export function told(tag: Tag, amount: number): string {
  return `${round(amount)} ${nutrient(tag).unit} ${nutrient(tag).name.toLowerCase()}`;
}

/** To three digits. */
export function round(amount: number): number {
  return Number(amount.toPrecision(3));
}
