import { mix } from '../field';
import type { Eyeball } from '../head/eyeball';
import type { HeadParts } from '../head/parts';
import type { TriangleMesh } from '../mesh';

type Rgb = [number, number, number];
const linear = (hex: string): Rgb => {
  const n = Number.parseInt(hex.slice(1), 16);
  return [n >> 16, (n >> 8) & 255, n & 255].map((c) => {
    const v = c / 255;
    return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
  }) as Rgb;
};

const SKIN = linear('#d9b29c');
const LIPS = linear('#b57266');
const HAIR = linear('#4a3527');
const WHITE = linear('#c8beb4');
const IRIS = linear('#6b5238');
const PUPIL = linear('#0b0908');

const blend = (a: Rgb, b: Rgb, t: number): Rgb => [
  mix(a[0], b[0], t),
  mix(a[1], b[1], t),
  mix(a[2], b[2], t),
];

/** Linear colours of the skin for the preview, occlusion included. */
export function skinColours(mesh: TriangleMesh, parts: HeadParts, haired: boolean): Float32Array {
  const { positions: P, normals: N } = mesh;
  const out = new Float32Array(P.length);
  for (let i = 0; i < P.length; i += 3) {
    const [x, y, z] = [P[i], P[i + 1], P[i + 2]] as Rgb;
    const [nx, ny, nz] = [N[i], N[i + 1], N[i + 2]] as Rgb;
    const m = parts.masks(x, y, z);
    const open = parts.occlusion(x, y, z, nx, ny, nz);
    let c = blend(SKIN, LIPS, 0.68 * m.lips);
    c = blend(c, [c[0] * 0.95, c[1] * 0.62, c[2] * 0.58], 0.7 * m.lidRim);
    c = blend(c, HAIR, 0.42 * m.brow + (haired ? 0.75 * m.scalp : 0));
    c = blend(c, [0.09, 0.035, 0.028], 0.6 * m.parting);
    c = blend(c, [0.03, 0.02, 0.018], 0.75 * m.lash);
    const shade: Rgb = [open ** 0.75, open ** 1.05, open ** 1.15];
    out[i] = c[0] * mix(0.16, 1, shade[0]);
    out[i + 1] = c[1] * (1 - 0.2 * m.blush) * mix(0.16, 1, shade[1]);
    out[i + 2] = c[2] * (1 - 0.22 * m.blush) * mix(0.16, 1, shade[2]);
  }
  return out;
}

/** One colour darkened where the surface is enclosed. */
export function hairColours(mesh: TriangleMesh, shade: (vertex: number) => number): Float32Array {
  return Float32Array.from(
    mesh.positions,
    (_, i) => (HAIR[i % 3] as number) * shade(Math.floor(i / 3)),
  );
}

export function eyeColours(eye: Eyeball): Float32Array {
  const out = new Float32Array(eye.positions.length);
  for (let v = 0; v < eye.pupil.length; v++) {
    const [pupil, iris, blush, shade] = [
      eye.pupil[v],
      eye.iris[v],
      eye.blush[v],
      eye.openness[v],
    ] as [number, number, number, number];
    let c = blend(WHITE, [WHITE[0] * 0.9, WHITE[1] * 0.62, WHITE[2] * 0.58], 0.6 * blush);
    c = blend(c, IRIS, iris);
    c = blend(c, PUPIL, pupil);
    out.set(
      c.map((k) => k * shade),
      3 * v,
    );
  }
  return out;
}
