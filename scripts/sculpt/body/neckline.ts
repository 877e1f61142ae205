import type { Vec3 } from '../../../src/optics/types';
import { curve, type Field, softAbs } from '../field';
import type { Figure } from './figure';

/**
 * The edge of the neck opening, as a cone from a point inside the chest: seen from there every
 * part of the chest, shoulders and nape lies square to the line of sight, so that the edge is
 * well placed all the way round. Returns the distance above the edge, mm (negative: cloth).
 */
export function neckline(f: Figure): Field {
  const { mm } = f;
  const notch = f.y(mm.suprasternale_height);
  const nape = f.y(mm.cervicale_height);
  const centre: Vec3 = [0, notch - 95, -118];
  const edge: readonly Vec3[] = f.by<readonly Vec3[]>(
    [
      [0, notch - 45, f.suprasternale[2] + 20],
      [42, notch - 36, f.suprasternale[2] + 12],
      [80, notch + 8, -88],
      [90, notch + 32, -132],
      [66, notch + 42, -176],
      [0, nape - 26, f.cervicale[2] - 8],
    ],
    [
      [0, notch - 4, f.suprasternale[2] + 4],
      [34, notch + 4, f.suprasternale[2] - 2],
      [66, notch + 38, -92],
      [72, notch + 62, -128],
      [50, notch + 66, -172],
      [0, nape - 8, f.cervicale[2] - 4],
    ],
  );
  const polar = edge.map(([x, y, z]): [number, number] => [
    Math.atan2(x, z - centre[2]),
    Math.atan2(y - centre[1], Math.hypot(x, z - centre[2])),
  ]);
  const front = polar[1] as [number, number];
  const back = polar[polar.length - 2] as [number, number];
  // Mirrored neighbours beyond both ends keep the edge level at the midline.
  const elevation = curve([[-front[0], front[1]], ...polar, [2 * Math.PI - back[0], back[1]]]);
  return (x, y, z) => {
    const dx = softAbs(x);
    const dz = z - centre[2];
    const r = Math.hypot(dx, dz);
    const e = Math.atan2(y - centre[1], r);
    const phi = Math.atan2(dx, dz);
    const slope = (elevation(phi + 0.01) - elevation(phi - 0.01)) / 0.02;
    const d = Math.hypot(r, y - centre[1]) * (e - elevation(phi));
    return d / Math.hypot(1, slope / Math.max(0.3, Math.cos(e)));
  };
}
