/** Animals for which the caution list counts as it does for dwarf hamsters, whatever their species: prone to diabetes. */

/** Said beside a species, in the one form that is kept in problems; rows of the list for such animals look for it. */
const PRONE = 'prone to diabetes';

/** @param species in words @returns as problems hold it: "golden hamster, prone to diabetes" */
export function proneToDiabetes(species: string): string {
  return `${species}, ${PRONE}`;
}
