import { loft } from '../body/loft';
import {
  bell,
  capsule,
  ellipsoid,
  type Field,
  joinTube,
  mix,
  smoothMin,
  softAbs,
  step,
  tube,
} from '../field';
import type { HeadShape } from './shape';

/** The jaw's lower border falls forwards by so much; sections are taken parallel to it. */
const TILT = (28 * Math.PI) / 180;
/** How fast a section falls back sideways, per mm, at the cheeks and at the jaw: its horseshoe. */
const SWEEP = [0.0035, 0.0065] as const;

/**
 * The face's mass without features: a loft of sections parallel to the jaw's border, from the
 * forehead to the border itself, so that the outline runs in one curve from cheekbone to chin.
 */
function mass(f: number): Field {
  // [level square to the sections, half breadth, front and back along the sections]
  const table = [
    [34, mix(51.5, 53, f), -9, -100],
    [10, mix(59, 60, f), 1, -92],
    [-14, 65, 16.5, -86],
    [-34, mix(65.5, 64.8, f), mix(30, 29.5, f), -80],
    [-52, mix(65.5, 63.5, f), mix(39, 37.5, f), -77],
    [-72, mix(58.5, 57, f), mix(45, 43, f), -75],
    [-87, mix(54, 51, f), mix(46.5, 45, f), -70],
    [mix(-102, -101, f), mix(50, 44.5, f), mix(44, 42, f), -62],
  ] as const;
  const body = loft(
    table
      .map(([at, half, front, back]) => ({
        at,
        u: [-half, half] as const,
        v: [back, front] as const,
        n: 2.05,
      }))
      .reverse(),
    mix(22, 26, f),
  );
  const [cos, sin] = [Math.cos(TILT), Math.sin(TILT)];
  return (x, y, z) => {
    const level = y * cos + z * sin;
    const sweep = mix(...SWEEP, step(-45, -95, level));
    return body(level, x, z * cos - y * sin + sweep * x * x);
  };
}

/** Soft tissue and jaw below the brow, without nose, lips and eyes. Drawn coordinates. */
export function face(shape: HeadShape): Field {
  const f = shape.femininity;
  const loaf = mass(f);
  // The jaw's border bows downwards between its angle and the chin, and runs round under it.
  const mandible = tube([
    [mix(40, 41.5, f), mix(-52, -50, f), mix(-76, -70, f), mix(7, 6, f)],
    [41, mix(-72, -68, f), mix(-64, -60, f), mix(8, 6.5, f)],
    [mix(34, 30, f), mix(-87, -85, f), -31, mix(9.5, 8, f)],
    [mix(15, 11, f), mix(-95.5, -94, f), -7, mix(10.5, 9.5, f)],
    [0, mix(-97, -95, f), mix(0, -1, f), mix(10.5, 9.5, f)],
  ]);
  return (x, y, z) => {
    const ax = softAbs(x);
    let d = loaf(x, y, z);
    // Teeth and lips' underlay.
    d = smoothMin(
      d,
      ellipsoid(ax, y, z, 0, mix(-61, -59.5, f), -20.5, 30, 33, mix(35.5, 34.2, f)),
      24,
    );
    d = smoothMin(
      d,
      ellipsoid(ax, y, z, 0, mix(-48, -45.5, f), -15.5, 25, 14, mix(33, 32.5, f)),
      14,
    );
    d = joinTube(d, mandible, ax, y, z, mix(18, 22, f));
    d = smoothMin(
      d,
      ellipsoid(
        ax,
        y,
        z,
        0,
        mix(-92, -91, f),
        mix(-3.5, -5, f),
        mix(18, 11, f),
        mix(10, 9.5, f),
        mix(14, 13.5, f),
      ),
      26,
    );
    // Cheek under the eye, and the fat beside the mouth.
    d = smoothMin(d, ellipsoid(ax, y, z, 36, -33, -18, 19, 20, mix(18.5, 20.5, f)), 24);
    d = smoothMin(
      d,
      ellipsoid(ax, y, z, mix(30, 33, f), -57, mix(-21, -24.5, f), 17, 23, mix(18.5, 21, f)),
      20,
    );
    // The side of the cheek and the gland under the ear, or the face looks hollow before the ear.
    d = smoothMin(d, ellipsoid(ax, y, z, mix(42, 42.5, f), -40, -38, 14, 24, 22), 20);
    d = smoothMin(d, ellipsoid(ax, y, z, mix(32, 38, f), -60, -77, 13, 22, 17), 20);
    // What fills the jaw's arch from below, or its border cuts a line.
    d = smoothMin(d, ellipsoid(ax, y, z, 22, -80, -48, 14, 13, 24), 22);
    // Floor of the mouth, so that the jaw meets the neck without a cut.
    return smoothMin(d, capsule(ax, y, z, [0, -90, -22, 7], [0, -92, -62, 15]), 24);
  };
}

/** Relief of the fold between nose and cheek and of the hollow over the chin: added to a distance. */
export function faceCreases(shape: HeadShape): Field {
  const f = shape.femininity;
  const fold = tube([
    [20.5, -31, 9, 1],
    [25.5, -41, 6.5, 1.4],
    [30.5, -52, 0.5, 1.4],
    [33.5, -62, -6, 0.8],
  ]);
  const depth = mix(0.7, 0.35, f);
  return (x, y, z) => {
    if (z < -24 || y > -10 || y < -104) return 0;
    const ax = softAbs(x);
    return (
      depth * bell(fold.distance(ax, y, z), 4.5) +
      1.3 * bell(y + 80.5, 4.4) * bell(ax, 15) * step(-20, -8, z)
    );
  };
}
