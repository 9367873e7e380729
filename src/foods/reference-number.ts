/** Numbers of foods in the tables. */

/** Whether an id is a number of a reference table by its form ("sr28:20038"); those that left the tables are too. */
export function isReferenceNumber(id: string): boolean {
  return /^(sr28|ifct|pub):\S/.test(id);
}
