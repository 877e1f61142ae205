import type { Field, Point } from './field';
import type { TriangleMesh } from './mesh';

/** Hairs as tapered ribbons; `shade` darkens or lightens a hair's colour (1 = as given). */
export interface Ribbons extends TriangleMesh {
  readonly shade: Float32Array;
}

export interface PathPoint {
  readonly at: Point;
  /** Unit normal of what the hair lies on. */
  readonly normal: Point;
}

/** The field's unit gradient. */
export function gradient(field: Field, p: Point, tap = 0.4): [number, number, number] {
  const [x, y, z] = p;
  const a = field(x + tap, y - tap, z - tap);
  const b = field(x - tap, y - tap, z + tap);
  const c = field(x - tap, y + tap, z - tap);
  const d = field(x + tap, y + tap, z + tap);
  const g = [a - b - c + d, -a - b + c + d, -a + b - c + d] as const;
  const n = Math.hypot(...g) || 1e-9;
  return [g[0] / n, g[1] / n, g[2] / n];
}

/** Puts a point on the surface `height` mm over the field's zero (three Newton steps). */
export function settle(field: Field, p: Point, height: number, slope: number): PathPoint {
  let at = p;
  let normal = gradient(field, at);
  for (let i = 0; i < 3; i++) {
    const gap = field(...at) / slope - height;
    at = [at[0] - normal[0] * gap, at[1] - normal[1] * gap, at[2] - normal[2] * gap];
    normal = gradient(field, at);
  }
  return { at, normal };
}

const cross = (a: Point, b: Point): [number, number, number] => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Collects hairs into one mesh. */
export class RibbonBuilder {
  private readonly positions: number[] = [];
  private readonly normals: number[] = [];
  private readonly indices: number[] = [];
  private readonly shades: number[] = [];

  /**
   * Adds a hair along a path. `width` in mm at a share 0..1 of the path; the two borders' normals
   * lean apart by `roundness`, so that the flat ribbon is lit like a round lock.
   */
  add(
    path: readonly PathPoint[],
    width: (t: number) => number,
    shade: (t: number) => number,
    roundness: number,
  ): void {
    const first = this.shades.length;
    const last = path.length - 1;
    path.forEach(({ at, normal }, i) => {
      const a = (path[Math.max(0, i - 1)] as PathPoint).at;
      const b = (path[Math.min(last, i + 1)] as PathPoint).at;
      const along: Point = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
      const side = cross(along, normal);
      const n = Math.hypot(...side) || 1e-9;
      const t = i / last;
      const half = width(t) / 2;
      for (const s of [-1, 1]) {
        for (let j = 0; j < 3; j++)
          this.positions.push((at[j] as number) + (s * half * (side[j] as number)) / n);
        const lean = [0, 1, 2].map(
          (j) => (normal[j] as number) + (s * roundness * (side[j] as number)) / n,
        ) as [number, number, number];
        const m = Math.hypot(...lean);
        this.normals.push(lean[0] / m, lean[1] / m, lean[2] / m);
        this.shades.push(shade(t));
      }
      if (i === 0) return;
      const v = first + 2 * i;
      // Counter-clockwise seen along the normal.
      this.indices.push(v - 2, v, v - 1, v - 1, v, v + 1);
    });
  }

  build(): Ribbons {
    return {
      positions: Float32Array.from(this.positions),
      normals: Float32Array.from(this.normals),
      indices: Uint32Array.from(this.indices),
      shade: Float32Array.from(this.shades),
    };
  }
}

/** Evenly scattered numbers in 0..1 without randomness (additive recurrence, plastic number). */
export const scatter = (i: number, axis: 0 | 1 | 2): number =>
  ((i + 0.5) * ([0.8191725134, 0.6710436067, 0.5497004779] as const)[axis]) % 1;
