/**
 * How near is near enough, where several files must mean the same by it. Rows are scaled so that their largest factor
 * is 1, and shares are percent, so a row's tolerance is about as much of a percent.
 */

/** How far a solved mix may miss a bound or a row: as fine as the solver can be relied on, far under any scale. */
export const SOLVER_TOLERANCE = 1e-9;
/** The solver's own usual tolerance, for what the finer one cannot settle. */
export const COARSE_TOLERANCE = 1e-7;
/** Factors smaller than this are dropped by the solver; its usual 1e-9 is as coarse as rows are kept to. */
export const SMALLEST_FACTOR = 1e-12;
/** A search for whole columns ends when its best and its bound are as near as this; only then is it proven. */
export const PROVEN_GAP = 1e-9;
/** How far a mix may lie outside a cone before a tangent plane is laid: ten times what the solver keeps the plane to. */
export const CONE_TOLERANCE = 1e-8;
/** An end of a span this near to the share's own bound, percent, is that bound: nobody reads a span finer. */
export const SPAN_TOLERANCE = 1e-7;
/** Whole steps of the scale keep a bound or a row that they miss by no more than this. */
export const STEPS_TOLERANCE = 1e-8;
/** A content within this part of its bound stands at it: a hundred times the solver's own tolerance. */
export const AT_BOUND = 1e-7;
/** A share of no more than this, percent, counts as none: what the solver may leave of a food that is out. */
export const NO_SHARE = 1e-9;
/** Shares that come this near to 100, percent, are a whole mix: sums of some hundred shares carry less error. */
export const WHOLE_MIX = 1e-6;
/** Closer to a whole step of the scale than this, in steps, is that step: products of shares carry such errors. */
export const WHOLE_STEP = 1e-9;
