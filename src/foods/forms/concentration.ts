/** The one factor behind every change of moisture. */

/**
 * Factor by which what is in the dry matter is concentrated, per 100 g of food, when moisture changes.
 * @param from moisture before, g water per 100 g, below 100 @param to moisture after
 */
export function concentration(from: number, to: number): number {
  return (100 - to) / (100 - from);
}
