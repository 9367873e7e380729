/**
 * Fresh food counted as if it were air dry. Ranges as fed are meant for dry food, so of a fresh food beside the mix
 * only the dry matter counts, with as much water as dry food has. A food that is as dry already counts as it is.
 */

/** Water of air-dry food, g per 100 g: the moisture at which feed tables state their ranges (NRC 1995, 10 %). */
export const AIR_DRY_WATER = 10;

/** Whether a food can be counted without its water: that needs a known moisture, and some dry matter. */
export function canBeAirDry(water: number | undefined): water is number {
  return water !== undefined && water < 100;
}

/**
 * How much of one gram on the scale counts, above 0 to 1.
 * @param water g per 100 g of the food as weighed; without it, or without any dry matter, all of the gram counts
 */
export function airDryPart(water: number | undefined): number {
  return isWetter(water) ? (100 - water) / (100 - AIR_DRY_WATER) : 1;
}

/**
 * By how much every amount per 100 g but that of water rises when the food is counted air dry, 1 or more: the inverse
 * of {@link airDryPart}. The water itself becomes {@link airDryWater}.
 */
export function airDryFactor(water: number | undefined): number {
  return isWetter(water) ? (100 - AIR_DRY_WATER) / (100 - water) : 1;
}

/** Water that counts of a food, g per 100 g of what counts. */
export function airDryWater(water: number): number {
  return isWetter(water) ? AIR_DRY_WATER : water;
}

function isWetter(water: number | undefined): water is number {
  return canBeAirDry(water) && water > AIR_DRY_WATER;
}
