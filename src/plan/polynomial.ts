/** Polynomials in one unknown, coefficients from the constant upwards. */
export type Polynomial = readonly number[];

export const constant = (value: number): Polynomial => [value];
/** a + b s */
export const linear = (a: number, b: number): Polynomial => [a, b];

export function sum(...terms: readonly Polynomial[]): Polynomial {
  const out: number[] = [];
  for (const term of terms)
    for (let i = 0; i < term.length; i++)
      out[i] = (i < out.length ? (out[i] as number) : 0) + (term[i] as number);
  return out;
}

export function times(p: Polynomial, factor: number): Polynomial {
  const out: number[] = [];
  for (let i = 0; i < p.length; i++) out.push((p[i] as number) * factor);
  return out;
}

export function less(p: Polynomial, q: Polynomial): Polynomial {
  const out: number[] = [];
  for (let i = 0; i < p.length || i < q.length; i++) out.push((p[i] ?? 0) - (q[i] ?? 0));
  return out;
}

/** p - factor q */
export function lessTimes(p: Polynomial, factor: number, q: Polynomial): Polynomial {
  // Most are of the first degree, and an array that grows takes room for many.
  if (p.length === 2 && q.length <= 2)
    return [(p[0] as number) - factor * (q[0] as number), (p[1] as number) - factor * (q[1] ?? 0)];
  const out: number[] = [];
  for (let i = 0; i < p.length || i < q.length; i++) out.push((p[i] ?? 0) - factor * (q[i] ?? 0));
  return out;
}

export function product(p: Polynomial, q: Polynomial): Polynomial {
  const out: number[] = [];
  for (let i = 0; i < p.length + q.length - 1; i++) out.push(0);
  for (let i = 0; i < p.length; i++)
    for (let j = 0; j < q.length; j++)
      out[i + j] = (out[i + j] as number) + (p[i] as number) * (q[j] as number);
  return out;
}

export function valueAt(p: Polynomial, s: number): number {
  let value = 0;
  for (let i = p.length - 1; i >= 0; i--) value = value * s + (p[i] as number);
  return value;
}

export const derivative = (p: Polynomial): Polynomial => p.slice(1).map((c, i) => c * (i + 1));

/** Coefficients so small beside the others are rounding. */
const NEGLIGIBLE = 1e-14;

/** Without leading coefficients that are rounding. */
export function trimmed(p: Polynomial): Polynomial {
  let largest = 0;
  for (const coefficient of p) largest = Math.max(largest, Math.abs(coefficient));
  let length = p.length;
  while (length > 1 && Math.abs(p[length - 1] as number) <= largest * NEGLIGIBLE) length--;
  return length === p.length ? p : p.slice(0, length);
}

/** Roots of a + b s + c s^2, smaller first, by the form that loses no digits; both when they coincide. */
function quadraticRoots(a: number, b: number, c: number): number[] {
  const inside = b * b - 4 * a * c;
  if (inside < 0) return [];
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(inside)) / 2;
  if (q === 0) return [0];
  const [x, y] = [q / c, a / q];
  return x <= y ? [x, y] : [y, x];
}

/** The root of a function between two places where its signs differ, to the last bits: bisection. */
export function bracketed(f: (s: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  const rising = f(high) > 0;
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    const value = f(middle);
    // The same place for f and -f: a prime's two ends must meet.
    if (value === 0) return middle;
    if (value > 0 === rising) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/**
 * Every root inside (from, to), smallest first: closed form up to the second degree; above it, between
 * the roots of the derivative the polynomial is monotone, so that each change of sign brackets one.
 */
export function rootsIn(poly: Polynomial, from: number, to: number): number[] {
  const p = trimmed(poly);
  const inside = (s: number) => s > from && s < to;
  if (p.length <= 1) return [];
  const [a = 0, b = 0, c = 0] = p;
  if (p.length === 2) return [-a / b].filter(inside);
  if (p.length === 3) return quadraticRoots(a, b, c).filter(inside);
  const marks = [from, ...rootsIn(derivative(p), from, to), to];
  const roots: number[] = [];
  for (let i = 0; i + 1 < marks.length; i++) {
    const [x, y] = [marks[i] as number, marks[i + 1] as number];
    const [u, v] = [valueAt(p, x), valueAt(p, y)];
    if (u === 0 && inside(x) && roots.at(-1) !== x) roots.push(x);
    if (u * v < 0) roots.push(bracketed((s) => valueAt(p, s), x, y));
  }
  return roots;
}
