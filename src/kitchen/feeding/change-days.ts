/** Days that a change takes: the least, the usual and the most (common practice, no source). */
export const CHANGE_DAYS = { least: 7, usual: 14, most: 21 } as const;
