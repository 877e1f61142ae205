import type { Field, Point } from './field';
import type { TriangleMesh } from './mesh';

/**
 * Hairs as ribbons. A ribbon carries one hair or a sheet of many: `strand` numbers the hairs across
 * it, and the stage cuts the sheet into them.
 */
export interface Ribbons extends TriangleMesh {
  /** Darkens or lightens a hair's colour (1 = as given). */
  readonly shade: Float32Array;
  /** Number of the hair at a vertex, 0..255; whole numbers are the gaps between hairs. */
  readonly strand: Uint8Array;
  /** Share of the sheet's hairs that are missing here, 0..255. */
  readonly sheer: Uint8Array;
}

export interface PathPoint {
  readonly at: Point;
  /** Unit normal of what the hair lies on. */
  readonly normal: Point;
}

/** What a ribbon looks like along its path; `t` is the share 0..1 of the path. */
export interface RibbonLook {
  /** Breadth, mm. */
  readonly width: (t: number) => number;
  readonly shade: (t: number) => number;
  /** Share of the hairs that are missing; none unless told. */
  readonly sheer?: (t: number) => number;
  /** Hairs side by side in it. */
  readonly hairs?: number;
  /** Height over what it lies on, mm: lower ones are drawn first, since those above cover them by shares. */
  readonly over?: number;
  /** The two borders' normals lean apart by this, so that the flat ribbon is lit like a round lock. */
  readonly roundness: number;
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
    if (i < 2 && Math.abs(gap) > 0.05) normal = gradient(field, at);
  }
  return { at, normal };
}

export const cross = (a: Point, b: Point): [number, number, number] => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

const byte = (share: number): number => Math.round(255 * Math.min(1, Math.max(0, share)));

/** Collects hairs into one mesh. */
export class RibbonBuilder {
  private readonly positions: number[] = [];
  private readonly normals: number[] = [];
  private readonly strips: { readonly over: number; readonly indices: number[] }[] = [];
  private readonly shades: number[] = [];
  private readonly strands: number[] = [];
  private readonly sheers: number[] = [];

  /** Adds a ribbon along a path. */
  add(path: readonly PathPoint[], look: RibbonLook): void {
    const { width, shade, sheer = () => 0, hairs = 1, over = 0, roundness } = look;
    const first = this.shades.length;
    const last = path.length - 1;
    const firstHair = Math.floor(chance(this.strips.length, 97) * (255 - hairs));
    const indices: number[] = [];
    this.strips.push({ over, indices });
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
        this.strands.push(s < 0 ? firstHair : firstHair + hairs);
        this.sheers.push(byte(sheer(t)));
      }
      if (i === 0) return;
      const v = first + 2 * i;
      // Counter-clockwise seen along the normal.
      indices.push(v - 2, v - 1, v, v - 1, v + 1, v);
    });
  }

  build(): Ribbons {
    return {
      positions: Float32Array.from(this.positions),
      normals: Float32Array.from(this.normals),
      indices: Uint32Array.from(
        this.strips.toSorted((a, b) => a.over - b.over).flatMap(({ indices }) => indices),
      ),
      shade: Float32Array.from(this.shades),
      strand: Uint8Array.from(this.strands),
      sheer: Uint8Array.from(this.sheers),
    };
  }
}

/** Evenly scattered numbers in 0..1 without randomness (additive recurrence, plastic number). */
export const scatter = (i: number, axis: 0 | 1 | 2): number =>
  ((i + 0.5) * ([0.8191725134, 0.6710436067, 0.5497004779] as const)[axis]) % 1;

/**
 * A number in 0..1 that looks random but is the same at every run: the finaliser of MurmurHash3
 * (A. Appleby, public domain) over an index and the number of the draw.
 */
export function chance(i: number, draw: number): number {
  let h = (Math.imul(i + 1, 0x9e3779b1) ^ Math.imul(draw + 1, 0x85ebca77)) >>> 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0) / 0x1_0000_0000;
}
