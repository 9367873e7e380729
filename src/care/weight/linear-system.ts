/** A small dense system of linear equations, by elimination with partial pivoting. */

/** @param rows of a square matrix @param right side @throws RangeError where the matrix is singular */
export function solved(rows: readonly (readonly number[])[], right: readonly number[]): number[] {
  const m = rows.map((row, i) => [...row, right[i] ?? Number.NaN]);
  const n = m.length;
  for (let c = 0; c < n; c++) {
    const below = m.slice(c);
    const pivot = below.reduce((best, row) => (Math.abs(row[c] ?? 0) > Math.abs(best[c] ?? 0) ? row : best));
    const lead = pivot[c] ?? 0;
    if (lead === 0) throw new RangeError('the equations have no single solution');
    const place = m.indexOf(pivot);
    [m[c], m[place]] = [pivot, m[c] ?? pivot];
    for (const row of m.slice(c + 1)) {
      const part = (row[c] ?? 0) / lead;
      if (part !== 0) for (let j = c; j <= n; j++) row[j] = (row[j] ?? 0) - part * (pivot[j] ?? 0);
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const row = m[i] ?? [];
    let sum = row[n] ?? 0;
    for (let j = i + 1; j < n; j++) sum -= (row[j] ?? 0) * (x[j] ?? 0);
    x[i] = sum / (row[i] ?? 0);
  }
  return x;
}
