/**
 * Turns the long edge of needle-thin triangles: a needle has hardly a direction of its own, shades
 * badly and turns over when the mesh is warped.
 */

/** Thinner than this (height over longest side) is a needle. */
const NEEDLE = 0.1;
const ROUNDS = 8;

type V3 = readonly [number, number, number];

const less = (a: V3, b: V3): V3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (u: V3, v: V3): V3 => [
  u[1] * v[2] - u[2] * v[1],
  u[2] * v[0] - u[0] * v[2],
  u[0] * v[1] - u[1] * v[0],
];
const dot = (u: V3, v: V3): number => u[0] * v[0] + u[1] * v[1] + u[2] * v[2];

/** Height over longest side, and the (not unit) normal. */
function form(a: V3, b: V3, c: V3): { thin: number; normal: V3 } {
  const normal = cross(less(b, a), less(c, a));
  const longest = Math.max(
    dot(less(a, b), less(a, b)),
    dot(less(b, c), less(b, c)),
    dot(less(c, a), less(c, a)),
  );
  return { thin: longest > 0 ? Math.hypot(...normal) / longest : 0, normal };
}

const agree = (u: V3, v: V3): boolean => dot(u, v) > 0.5 * Math.hypot(...u) * Math.hypot(...v);

/** Triangles over the same vertices, with needles turned where that helps. Deterministic. */
export function withoutNeedles(positions: Float32Array, triangles: Uint32Array): Uint32Array {
  const I = triangles.slice();
  const at = (v: number): V3 => [
    positions[3 * v] as number,
    positions[3 * v + 1] as number,
    positions[3 * v + 2] as number,
  ];
  for (let round = 0; round < ROUNDS; round++) if (!turnOnce(I, at)) break;
  return I;
}

/** One pass over all triangles; true when an edge was turned. */
function turnOnce(I: Uint32Array, at: (v: number) => V3): boolean {
  const key = (a: number, b: number): string => `${a},${b}`;
  const owner = new Map<string, number>();
  const claim = (t: number): void => {
    for (let k = 0; k < 3; k++)
      owner.set(key(I[t + k] as number, I[t + ((k + 1) % 3)] as number), t);
  };
  const release = (t: number): void => {
    for (let k = 0; k < 3; k++)
      owner.delete(key(I[t + k] as number, I[t + ((k + 1) % 3)] as number));
  };
  for (let t = 0; t < I.length; t += 3) claim(t);
  let turned = false;
  for (let t = 0; t < I.length; t += 3) {
    const corners = [I[t], I[t + 1], I[t + 2]] as [number, number, number];
    const needle = form(at(corners[0]), at(corners[1]), at(corners[2]));
    if (needle.thin >= NEEDLE) continue;
    const side = (k: number): number => {
      const d = less(at(corners[k] as number), at(corners[(k + 1) % 3] as number));
      return dot(d, d);
    };
    const k = [0, 1, 2].reduce((best, j) => (side(j) > side(best) ? j : best), 0);
    const [a, b, c] = [corners[k], corners[(k + 1) % 3], corners[(k + 2) % 3]] as typeof corners;
    const other = owner.get(key(b, a));
    if (other === undefined) continue;
    const d = [0, 1, 2].map((j) => I[other + j] as number).find((v) => v !== a && v !== b);
    if (d === undefined || owner.has(key(c, d)) || owner.has(key(d, c))) continue;
    const neighbour = form(at(b), at(a), at(d));
    const [one, two] = [form(at(a), at(d), at(c)), form(at(d), at(b), at(c))];
    if (Math.min(one.thin, two.thin) <= needle.thin) continue;
    if (!agree(one.normal, neighbour.normal) || !agree(two.normal, neighbour.normal)) continue;
    release(t);
    release(other);
    I.set([a, d, c], t);
    I.set([d, b, c], other);
    claim(t);
    claim(other);
    turned = true;
  }
  return turned;
}
