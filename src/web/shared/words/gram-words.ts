/** Grams as people read them. */
/** Grams as people read them: no more places than there are. */
export const gramWords = (g: number) => `${Number(g.toFixed(2))} g`;
