/** Simple joinery: coloured pieces merged into one geometry. Metres; colours are linear reflectances. */
import {
  type BufferGeometry,
  CylinderGeometry,
  Euler,
  Float32BufferAttribute,
  Matrix4,
} from 'three';
import { RoundedBoxGeometry } from 'three/addons/geometries/RoundedBoxGeometry.js';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';

export type Rgb = readonly [number, number, number];
export type Place = readonly [number, number, number];
/** Share of the surrounding light that reaches a point, 0..1. */
export type Shade = (x: number, y: number, z: number) => number;

/** A neutral grey of the given reflectance. */
export const grey = (reflectance: number): Rgb => [reflectance, reflectance, reflectance];

const OPEN: Shade = () => 1;

/** Moves a geometry to its place and colours it. The geometry is used up. */
export function piece(
  geometry: BufferGeometry,
  colour: Rgb,
  at: Place = [0, 0, 0],
  turn: Place = [0, 0, 0],
): BufferGeometry {
  const loose = geometry.index ? geometry.toNonIndexed() : geometry;
  loose.applyMatrix4(new Matrix4().makeRotationFromEuler(new Euler(...turn)).setPosition(...at));
  loose.deleteAttribute('uv');
  const count = loose.getAttribute('position').count;
  const colours = Array.from({ length: count }, () => colour).flat();
  loose.setAttribute('color', new Float32BufferAttribute(colours, 3));
  return loose;
}

/** A box with rounded edges, which catch the light as real edges do. */
export const board = (
  width: number,
  height: number,
  depth: number,
  bevel = 0.003,
): BufferGeometry =>
  new RoundedBoxGeometry(
    width,
    height,
    depth,
    2,
    Math.min(bevel, width / 2, height / 2, depth / 2),
  );

/** An upright round rod, narrower at the top if asked. */
export const rod = (radius: number, length: number, top = radius): BufferGeometry =>
  new CylinderGeometry(top, radius, length, 16);

/** A rod between two points. */
export function bar(from: Place, to: Place, radius: number, colour: Rgb): BufferGeometry {
  const [dx, dy, dz] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const length = Math.hypot(dx, dy, dz);
  const lean = Math.acos(dy / length);
  const heading = Math.atan2(dx, dz);
  const geometry = rod(radius, length).applyMatrix4(
    new Matrix4().makeRotationY(heading).multiply(new Matrix4().makeRotationX(lean)),
  );
  return piece(geometry, colour, [
    (from[0] + to[0]) / 2,
    (from[1] + to[1]) / 2,
    (from[2] + to[2]) / 2,
  ]);
}

/** Joins pieces, and darkens each corner point by the shade there. The pieces are used up. */
export function join(pieces: readonly BufferGeometry[], shade: Shade = OPEN): BufferGeometry {
  const joined = mergeGeometries([...pieces]);
  for (const used of pieces) used.dispose();
  const place = joined.getAttribute('position');
  const colour = joined.getAttribute('color');
  for (let i = 0; i < place.count; i++) {
    const share = shade(place.getX(i), place.getY(i), place.getZ(i));
    colour.setXYZ(i, colour.getX(i) * share, colour.getY(i) * share, colour.getZ(i) * share);
  }
  return joined;
}
