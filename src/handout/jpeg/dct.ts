/**
 * The forward discrete cosine transform of 8 x 8 samples by Arai, Agui and Nakajima (1988): five
 * multiplications a row. Its results are those of T.81 A.3.3 times 8 and `SCALE` of row and column, which
 * the quantisation takes out again.
 */

/** 1, then sqrt(2) cos(k pi / 16). */
const SCALE = Array.from({ length: 8 }, (_, k) =>
  k === 0 ? 1 : Math.SQRT2 * Math.cos((k * Math.PI) / 16),
);

const C4 = Math.SQRT1_2;
const C6 = Math.cos((6 * Math.PI) / 16);
const C2_LESS_C6 = Math.cos((2 * Math.PI) / 16) - C6;
const C2_AND_C6 = Math.cos((2 * Math.PI) / 16) + C6;

/** By what each coefficient is multiplied to become a quantised one, natural order. */
export const quantisers = (table: Uint8Array): Float64Array =>
  Float64Array.from(
    table,
    (step, i) => 1 / (step * 8 * (SCALE[i >> 3] as number) * (SCALE[i & 7] as number)),
  );

/** One row or column: eight samples from `at`, `step` apart. */
function transform(d: Float64Array, at: number, step: number): void {
  const [i1, i2, i3, i4] = [at + step, at + 2 * step, at + 3 * step, at + 4 * step];
  const [i5, i6, i7] = [at + 5 * step, at + 6 * step, at + 7 * step];
  const d0 = d[at] as number;
  const d1 = d[i1] as number;
  const d2 = d[i2] as number;
  const d3 = d[i3] as number;
  const d4 = d[i4] as number;
  const d5 = d[i5] as number;
  const d6 = d[i6] as number;
  const d7 = d[i7] as number;
  const outer = d0 + d7;
  const inner = d3 + d4;
  const low = d1 + d6;
  const high = d2 + d5;
  const even = outer - inner;
  const turned = (low - high + even) * C4;
  d[at] = outer + inner + low + high;
  d[i4] = outer + inner - low - high;
  d[i2] = even + turned;
  d[i6] = even - turned;
  const a = d3 - d4 + (d2 - d5);
  const b = (d2 - d5 + (d1 - d6)) * C4;
  const c = d1 - d6 + (d0 - d7);
  const shared = (a - c) * C6;
  const p = C2_LESS_C6 * a + shared;
  const q = C2_AND_C6 * c + shared;
  const sum = d0 - d7 + b;
  const rest = d0 - d7 - b;
  d[i5] = rest + p;
  d[i3] = rest - p;
  d[i1] = sum + q;
  d[i7] = sum - q;
}

/** In place; samples about nought, rows top down. */
export function forwardDct(block: Float64Array): void {
  for (let row = 0; row < 64; row += 8) transform(block, row, 1);
  for (let column = 0; column < 8; column++) transform(block, column, 8);
}
