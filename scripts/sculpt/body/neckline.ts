import type { Vec3 } from '../../../src/optics/types';
import { curve, type Field, softAbs } from '../field';
import type { Figure } from './figure';

/** A point of the edge: turn from the front (degrees), and its height over the notch or its x. */
type EdgePoint = { readonly turn: number } & ({ readonly height: number } | { readonly x: number });

/** Edges of the neck openings: a soft scoop for the woman, a crew neck for the man, mm. */
const EDGES: Readonly<Record<'female' | 'male', readonly EdgePoint[]>> = {
  female: [
    { turn: 0, height: -45 },
    { turn: 30, height: -40 },
    { turn: 58, height: -4 },
    { turn: 90, x: 92 },
    { turn: 120, x: 78 },
    { turn: 150, height: 40 },
    { turn: 180, height: 38 },
  ],
  male: [
    { turn: 0, height: -3 },
    { turn: 32, height: 5 },
    { turn: 62, height: 24 },
    { turn: 92, x: 68 },
    { turn: 120, x: 60 },
    { turn: 152, height: 60 },
    { turn: 180, height: 58 },
  ],
};

const rad = (degrees: number): number => (degrees * Math.PI) / 180;

/**
 * The edge of the neck opening, as a cone from a point inside the chest: seen from there every
 * part of chest, shoulders and nape lies square to the line of sight, so that the edge is well
 * placed all the way round. `surface` is what the cloth lies on; the edge meets it at the places
 * above. Returns the distance above the edge, mm (negative: cloth).
 */
export function neckline(f: Figure, surface: Field): Field {
  const notch = f.suprasternale[1];
  const centre: Vec3 = [0, notch - 95, -118];
  /** Outermost point of the surface in a direction. */
  const hit = (turn: number, elevation: number): Vec3 => {
    const dx = Math.cos(elevation) * Math.sin(turn);
    const dy = Math.sin(elevation);
    const dz = Math.cos(elevation) * Math.cos(turn);
    let t = 260;
    while (t > 20 && surface(t * dx, centre[1] + t * dy, centre[2] + t * dz) > 0) t -= 0.5;
    return [t * dx, centre[1] + t * dy, centre[2] + t * dz];
  };
  /** Elevation at which the edge is where it is wanted, found from above downwards. */
  const elevationOf = (p: EdgePoint): number => {
    const turn = rad(p.turn);
    let e = rad(80);
    for (; e > 0; e -= rad(0.2)) {
      const [x, y] = hit(turn, e);
      if ('x' in p ? x >= p.x : y <= notch + p.height) break;
    }
    return e;
  };
  const polar = EDGES[f.sex].map((p): [number, number] => [rad(p.turn), elevationOf(p)]);
  const front = polar[1] as [number, number];
  const back = polar[polar.length - 2] as [number, number];
  // Mirrored neighbours beyond both ends keep the edge level at the midline.
  const elevation = curve([[-front[0], front[1]], ...polar, [2 * Math.PI - back[0], back[1]]]);
  return (x, y, z) => {
    const dx = softAbs(x);
    const dz = z - centre[2];
    const r = Math.hypot(dx, dz);
    const e = Math.atan2(y - centre[1], r);
    const turn = Math.atan2(dx, dz);
    const slope = (elevation(turn + 0.01) - elevation(turn - 0.01)) / 0.02;
    const d = Math.hypot(r, y - centre[1]) * (e - elevation(turn));
    return d / Math.hypot(1, slope / Math.max(0.3, Math.cos(e)));
  };
}
