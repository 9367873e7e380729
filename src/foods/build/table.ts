/** A row on its way into `reference.bin`, whatever table it comes from. */
import type { Composition, FoodGroup } from '../food.ts';

export interface TableRow {
  readonly ref: string;
  /** Name as the table prints it. */
  readonly tableName: string;
  /** The table's own group. */
  readonly tableGroup: string;
  readonly composition: Composition;
  readonly sd: Composition;
  /** Percent of the weight as purchased that is not eaten (peel, core, shell); absent where the table is silent. */
  readonly refuse?: number;
  /** What that part is, in the table's words. */
  readonly refuseDescription?: string;
  /** Latin name, where the table gives one. */
  readonly scientific?: string;
  /** Nitrogen factor that the protein was counted with; absent where nobody says. */
  readonly proteinFactor?: number;
  /** Whether it is a plain food that names no maker, so that advice may bring it in. */
  readonly suggestible: boolean;
  /** Only where it does not follow from the reference number. */
  readonly source?: string;
}

/** One line of `keeper-foods.json`: the plain name and group of a food keepers really use. */
export interface PlainName {
  readonly ref: string;
  readonly name: string;
  readonly group: FoodGroup;
  readonly also: readonly string[];
}

/** A build-time complaint about a source table, with the row it is about. */
export class TableError extends Error {
  constructor(where: string, message: string) {
    super(`${where}: ${message}`);
    this.name = 'TableError';
  }
}
