/** Cholesky's factor of a matrix, row after row, in place in the lower triangle; false where the matrix is not positive definite. */
export function cholesky(a: Float64Array, n: number): boolean {
  for (let i = 0; i < n; i++) {
    const at = i * n;
    for (let j = 0; j <= i; j++) {
      const other = j * n;
      let sum = a[at + j]!;
      for (let k = 0; k < j; k++) sum -= a[at + k]! * a[other + k]!;
      if (i === j) {
        if (!(sum > 0)) return false;
        a[at + i] = Math.sqrt(sum);
      } else a[at + j] = sum / a[other + j]!;
    }
  }
  return true;
}
