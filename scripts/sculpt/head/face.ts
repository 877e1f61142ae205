import {
  bell,
  capsule,
  ellipsoid,
  type Field,
  joinTube,
  type Knot,
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
  const angle: Knot = [mix(42, 40.5, f), mix(-63, -58, f), -61, mix(6.6, 6, f)];
  const ramus: Knot = [55.5, -14, -72, 7.5];
  const body: Knot = [mix(12.5, 9.5, f), mix(-96, -95, f), -4.5, mix(11.4, 10.6, f)];
  // The jaw's border bows downwards between its angle and the chin.
  const mandible = tube([angle, [mix(31, 28.5, f), mix(-83, -80, f), -31, mix(9.2, 8, f)], body]);
  return (x, y, z) => {
    const ax = softAbs(x);
    let d = ellipsoid(ax, y, z, 0, -32, -42, 50, 56, 51);
    // Teeth and lips' underlay.
    d = smoothMin(d, ellipsoid(ax, y, z, 0, -57, -18.5, 30, 34, 34.5), 24);
    d = joinTube(d, mandible, ax, y, z, 24);
    d = smoothMin(d, capsule(ax, y, z, ramus, angle), 22);
    d = smoothMin(
      d,
      ellipsoid(ax, y, z, 0, -94, -4, mix(16.5, 12, f), mix(12.5, 11.8, f), mix(16.2, 15.2, f)),
      22,
    );
    // Cheek, the fat beside the mouth, the chewing muscle.
    d = smoothMin(
      d,
      ellipsoid(ax, y, z, 31.5, mix(-38, -34, f), -19.5, 23, mix(28, 26, f), mix(23.5, 25, f)),
      22,
    );
    d = smoothMin(
      d,
      ellipsoid(ax, y, z, mix(30, 26.5, f), -60, -22, mix(15.5, 16, f), 23, mix(19, 20, f)),
      20,
    );
    d = smoothMin(
      d,
      ellipsoid(ax, y, z, mix(46, 43.5, f), mix(-42, -38, f), -54, mix(10.5, 9.5, f), 25, 22),
      20,
    );
    // The side of the cheek, or the face looks hollow before the chewing muscle.
    d = smoothMin(
      d,
      ellipsoid(ax, y, z, mix(42, 42.5, f), mix(-38, -35, f), -38, mix(12.5, 13.5, f), 23, 21),
      20,
    );
    // Between jaw and neck under the ear.
    d = smoothMin(d, ellipsoid(ax, y, z, mix(38, 37.5, f), mix(-64, -60, f), -76, 10, 22, 16), 22);
    // Floor of the mouth, so that the jaw meets the neck without a cut.
    return smoothMin(d, capsule(ax, y, z, [0, -91, -22, 8], [0, -96, -60, 17]), 24);
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
    if (z < -24 || y > -10 || y < -100) return 0;
    const ax = softAbs(x);
    return (
      depth * bell(fold.distance(ax, y, z), 4.5) +
      1.5 * bell(y + 78, 4.4) * bell(ax, 15) * step(-20, -8, z)
    );
  };
}
