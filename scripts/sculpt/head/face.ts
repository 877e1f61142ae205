import {
  bell,
  capsule,
  ellipsoid,
  type Field,
  mix,
  smoothMin,
  softAbs,
  step,
  tube,
} from '../field';
import type { HeadShape } from './shape';

/** Soft tissue and jaw below the brow, without nose, lips and eyes. Drawn coordinates. */
export function face(shape: HeadShape): Field {
  const f = shape.femininity;
  const jawRadius = mix(9, 7.5, f);
  return (x, y, z) => {
    const ax = softAbs(x);
    let d = ellipsoid(ax, y, z, 0, -34, -42, 54, 60, 52);
    d = smoothMin(d, ellipsoid(ax, y, z, 0, -58, -19, 31.5, 36, 35.5), 26);
    // Mandible: ramus, body, chin.
    d = smoothMin(
      d,
      capsule(
        ax,
        y,
        z,
        [mix(49.5, 47.5, f), -70, -60, jawRadius],
        [mix(11, 8, f), -97, -3, mix(12, 11.5, f)],
      ),
      26,
    );
    d = smoothMin(
      d,
      capsule(ax, y, z, [59, -14, -74, 9], [mix(49.5, 47.5, f), -70, -60, jawRadius]),
      24,
    );
    d = smoothMin(d, ellipsoid(ax, y, z, 0, -97, -4, mix(18, 14.5, f), 13, mix(16.5, 15.5, f)), 16);
    // Cheek, the fat beside the mouth, the chewing muscle.
    d = smoothMin(
      d,
      ellipsoid(ax, y, z, mix(32, 33, f), mix(-41, -38, f), -19, 24.5, 30, mix(24.5, 25.5, f)),
      24,
    );
    d = smoothMin(d, ellipsoid(ax, y, z, 33, -63, -21, mix(17, 17.5, f), 24, mix(20, 20.5, f)), 22);
    d = smoothMin(d, ellipsoid(ax, y, z, mix(48.5, 46.5, f), -48, -52, 14, 29, 24), 22);
    // Floor of the mouth, so that the jaw meets the neck without a cut.
    return smoothMin(d, capsule(ax, y, z, [0, -99, -22, 9], [0, -100, -62, 20]), 26);
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
  const depth = mix(0.75, 0.4, f);
  return (x, y, z) => {
    if (z < -22 || y > -20 || y < -100) return 0;
    const ax = softAbs(x);
    return (
      depth * bell(fold.distance(ax, y, z), 4.5) +
      1.3 * bell(y + 78.5, 4.6) * bell(ax, 15) * step(-20, -8, z)
    );
  };
}
