/** A square matrix split into triangles with partial pivoting; solve as often as wanted. */
export interface Factors {
  readonly size: number;
  readonly lu: Float64Array;
  readonly order: Uint32Array;
}

/** Factors a row-major `size` x `size` matrix. @throws when it is singular. */
export function factor(matrix: Float64Array, size: number): Factors {
  const lu = matrix.slice();
  const order = Uint32Array.from({ length: size }, (_, i) => i);
  const at = (r: number, c: number): number => lu[r * size + c] as number;
  for (let c = 0; c < size; c++) {
    let pivot = c;
    for (let r = c + 1; r < size; r++) if (Math.abs(at(r, c)) > Math.abs(at(pivot, c))) pivot = r;
    const largest = at(pivot, c);
    if (!(Math.abs(largest) > 1e-12)) throw new Error(`singular matrix at column ${c}`);
    if (pivot !== c) {
      for (let k = 0; k < size; k++) {
        const t = at(c, k);
        lu[c * size + k] = at(pivot, k);
        lu[pivot * size + k] = t;
      }
      const o = order[c] as number;
      order[c] = order[pivot] as number;
      order[pivot] = o;
    }
    for (let r = c + 1; r < size; r++) {
      const f = at(r, c) / largest;
      lu[r * size + c] = f;
      if (f !== 0) for (let k = c + 1; k < size; k++) lu[r * size + k] = at(r, k) - f * at(c, k);
    }
  }
  return { size, lu, order };
}

/** Solves for `columns` right-hand sides at once; `rhs` is row-major, size x columns. */
export function solve(factors: Factors, rhs: Float64Array, columns: number): Float64Array {
  const { size, lu, order } = factors;
  const x = new Float64Array(size * columns);
  for (let r = 0; r < size; r++)
    for (let k = 0; k < columns; k++) {
      let sum = rhs[(order[r] as number) * columns + k] as number;
      for (let c = 0; c < r; c++)
        sum -= (lu[r * size + c] as number) * (x[c * columns + k] as number);
      x[r * columns + k] = sum;
    }
  for (let r = size - 1; r >= 0; r--)
    for (let k = 0; k < columns; k++) {
      let sum = x[r * columns + k] as number;
      for (let c = r + 1; c < size; c++)
        sum -= (lu[r * size + c] as number) * (x[c * columns + k] as number);
      x[r * columns + k] = sum / (lu[r * size + r] as number);
    }
  return x;
}
