/** The stool under a seated sitter: a round seat on four splayed legs, as high as the pose sits. */
import type { Vec3 } from '../optics/types';
import { SEAT_RADIUS, type Seat } from './seat';
import { addTube, emptyWire, type Wire, wireMesh } from './tube';
import type { SitterMesh } from './types';

const SEAT = { radius: SEAT_RADIUS, thickness: 0.034, edge: 0.012 };
const LEG = { radius: 0.013, top: 0.105, foot: 0.17 };
/** Height of the ring that braces the legs, a share of the legs' length. */
const BRACE = 0.35;
const STEPS = 48;
/** Air under the cloth, so that neither cuts the other. */
const CLEAR = 0.0002;
/** Painted wood, linear reflectance in bytes. */
const WOOD = [52, 44, 36] as const;

interface Bounds {
  readonly middle: readonly [x: number, z: number];
  readonly seat: number;
  readonly floor: number;
}

/** Where the stool stands: under the hips, on the floor that the soles are on. */
function boundsOf({ hips, height }: Seat, meshes: readonly SitterMesh[]): Bounds {
  let floor = Number.POSITIVE_INFINITY;
  for (const { substance, positions: P } of meshes)
    if (substance === 'shoes')
      for (let i = 1; i < P.length; i += 3) floor = Math.min(floor, P[i] as number);
  return { middle: [hips[0], hips[2]], seat: height - CLEAR, floor };
}

/** The seat's outline from its top's middle round the edge to its underside: radius, depth, normal. */
function profile(): readonly (readonly [r: number, down: number, out: number, up: number])[] {
  const { radius, thickness, edge } = SEAT;
  const round = (from: number, centre: number): (readonly [number, number, number, number])[] =>
    [0, 1, 2, 3, 4].map((k) => {
      const a = from - (k * Math.PI) / 8;
      const [out, up] = [Math.cos(a), Math.sin(a)];
      return [radius - edge + edge * out, centre - edge * up, out, up];
    });
  return [
    [0, 0, 0, 1],
    ...round(Math.PI / 2, edge),
    ...round(0, thickness - edge),
    [0, thickness, 0, -1],
  ];
}

function addSeat(into: Wire, { middle, seat }: Bounds): void {
  const rings = profile();
  for (const [r, down, out, up] of rings)
    for (let s = 0; s < STEPS; s++) {
      const a = (2 * Math.PI * s) / STEPS;
      const [sin, cos] = [Math.sin(a), Math.cos(a)];
      into.positions.push(middle[0] + r * sin, seat - down, middle[1] + r * cos);
      into.normals.push(out * sin, up, out * cos);
    }
  for (let k = 0; k + 1 < rings.length; k++)
    for (let s = 0; s < STEPS; s++) {
      const [a, b] = [k * STEPS + s, k * STEPS + ((s + 1) % STEPS)];
      into.indices.push(a, a + STEPS, b, b, a + STEPS, b + STEPS);
    }
}

/**
 * The stool of a seated figure, in the figure's own frame.
 * @param meshes posed, metres
 */
export function stoolFor(place: Seat, meshes: readonly SitterMesh[]): SitterMesh {
  const bounds = boundsOf(place, meshes);
  const { middle, seat, floor } = bounds;
  const wire = emptyWire();
  addSeat(wire, bounds);
  const top = seat - SEAT.thickness;
  const at = (angle: number, r: number, y: number): Vec3 => [
    middle[0] + r * Math.sin(angle),
    y,
    middle[1] + r * Math.cos(angle),
  ];
  for (const quarter of [1, 3, 5, 7]) {
    const angle = (quarter * Math.PI) / 4;
    addTube(
      wire,
      [at(angle, LEG.top, top), at(angle, LEG.foot, floor)],
      LEG.radius,
      [0, 0, 1],
      false,
    );
  }
  const r = LEG.foot + BRACE * (LEG.top - LEG.foot);
  const ring = Array.from({ length: STEPS }, (_, s) =>
    at((2 * Math.PI * s) / STEPS, r, floor + BRACE * (top - floor)),
  );
  addTube(wire, ring, 0.6 * LEG.radius, [0, 1, 0], true);
  return wireMesh('stool', 'shoes', wire, WOOD);
}
