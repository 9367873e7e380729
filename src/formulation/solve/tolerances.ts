/** How near is near enough, where several files must mean the same by it. */

/** A content within this part of its bound stands at it; a hundred times the solver's own tolerance. */
export const AT_BOUND = 1e-7;
