/** What the keeper chooses of a change-over; days, grams and steps are in the units of the fields. */
export interface ChangeOverChoices {
  /** What is fed now, as the list of choices writes it; '' while nothing is chosen. */
  readonly present: string;
  readonly days: number;
  /** ISO 8601 date. */
  readonly start: string;
  /** Grams a day and step of the scale; those of the mix and its animals unless chosen. */
  readonly daily?: number;
  readonly step?: number;
}

/** What `present` begins with for a food of the tables; its reference number follows. */
export const TABLE = 'table ';
