/** How far a number may be off before the difference means something. */

/** Less than this is rounding in the last place, not food, g: far below what any scale shows. */
export const CRUMB = 1e-6;

/** A count as near to a whole number is that number: divisions of decimal weights, hours and days leave so much. */
export const WHOLE = 1e-9;

/** Weights as near are the same, g, and so are volumes, l, and parts of 1: sums of decimal steps leave so much. */
export const SAME = 1e-9;

/** Steps of the scale: as near to a whole step is that step. The ends of spans come from the solver, which is coarser. */
export const NEAR_STEP = 1e-6;

/** Percent: what is missing of 100 by no more is all there. The shares of an evaluation are summed from rounded ones. */
export const COMPLETE = 1e-6;

/** How sure a "dry" must be: what a 95 % interval leaves below its upper end. */
export const SURE = 0.975;
