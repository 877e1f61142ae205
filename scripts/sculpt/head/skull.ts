import {
  capsule,
  ellipsoid,
  type Field,
  joinTube,
  mix,
  smoothMax,
  smoothMin,
  softAbs,
  tube,
} from '../field';
import type { HeadShape } from './shape';

/** The brain case alone, drawn coordinates; hair is built on it too. */
export function cranium(shape: HeadShape): Field {
  const f = shape.femininity;
  const backWidth = mix(76.2, 76, f);
  // A woman's forehead is steeper and fuller, her vertex as high for a shorter face.
  const front = mix(67.5, 69, f);
  const crown = mix(78.8, 80.6, f);
  return (x, y, z) => {
    const ax = softAbs(x);
    const back = ellipsoid(ax, y, z, 0, 33, -104, backWidth, crown, 80.5);
    return smoothMin(back, ellipsoid(ax, y, z, 0, 34, -60, 66, mix(75, 77, f), front), 30);
  };
}

/** Brain case with hollowed temples, brow and cheek bones. */
export function skull(shape: HeadShape): Field {
  const f = shape.femininity;
  const bowl = cranium(shape);
  const back = mix(0, 2, f);
  const brow = tube([
    // From beyond the midline, so that no end shows between the brows.
    [-7, 24, 6.2 - back, mix(5.8, 4.8, f)],
    [3, 24, 6.4 - back, mix(5.8, 4.8, f)],
    [14, mix(24.6, 25.5, f), mix(4.6, 2.4, f), mix(6, 4.4, f)],
    [27, mix(25.6, 26.4, f), mix(0.6, -1, f), mix(6.2, 4.8, f)],
    [38, mix(23.6, 24.4, f), -6.5, mix(6, 5.2, f)],
    [45.3, 12.5, -17, mix(5, 4, f)],
    [48, -2, -24, mix(4, 2.6, f)],
  ]);
  return (x, y, z) => {
    const ax = softAbs(x);
    let d = bowl(x, y, z);
    d = smoothMax(d, -ellipsoid(ax, y, z, 90, 20, -36, 20, 32, 33), 34);
    d = smoothMin(d, capsule(ax, y, z, [60.5, -15, -54, 6], [47.5, -20, -22, 9]), 22);
    d = smoothMin(d, ellipsoid(ax, y, z, 43, -24, -16, 15, 13, 13.5), 16);
    return joinTube(d, brow, ax, y, z, 24);
  };
}
