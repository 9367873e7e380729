/** Small vector arithmetic, and rows in the sparse form that the solver takes. */

/** What a list has at an index. @throws RangeError where it has nothing there, which is a fault of ours */
export function elementAt<T>(list: ArrayLike<T>, index: number): T {
  const element = list[index];
  if (element === undefined) throw new RangeError(`there is no element ${index} in a list of ${list.length}`);
  return element;
}

export function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

export function squaredDistance(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i]! - b[i]!) ** 2;
  return sum;
}

/** Positions and values of what is not zero. */
export function entries(row: ArrayLike<number>): { indices: number[]; values: number[] } {
  const indices: number[] = [];
  const values: number[] = [];
  for (let i = 0; i < row.length; i++) {
    const value = row[i]!;
    if (value === 0) continue;
    indices.push(i);
    values.push(value);
  }
  return { indices, values };
}

/** Dense rows as one compressed matrix. */
export function sparse(rows: readonly ArrayLike<number>[], numCols: number) {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const row of rows) {
    const kept = entries(row);
    indices.push(...kept.indices);
    values.push(...kept.values);
    starts.push(indices.length);
  }
  return { format: 'csr' as const, numRows: rows.length, numCols, starts, indices, values };
}
