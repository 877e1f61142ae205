/** The stool under a seated sitter: a round seat on four splayed legs, as high as the pose sits. */
import type { Vec3 } from '../optics/types';
import { addTube, emptyWire, type Wire, wireMesh } from './tube';
import type { SitterMesh, Substance } from './types';

const SEAT = { radius: 0.165, thickness: 0.034, edge: 0.012 };
const LEG = { radius: 0.013, top: 0.105, foot: 0.17 };
/** Height of the ring that braces the legs, a share of the legs' length. */
const BRACE = 0.35;
const STEPS = 48;
/** Air under the cloth, so that neither cuts the other. */
const CLEAR = 0.001;
/** Painted wood, linear reflectance in bytes. */
const WOOD = [52, 44, 36] as const;
const WORN_BELOW: ReadonlySet<Substance> = new Set(['top', 'trousers']);

interface Bounds {
  readonly middle: readonly [x: number, z: number];
  readonly seat: number;
  readonly floor: number;
}

/** Where the stool stands: under the lowest cloth near the hips, and as high as the soles are low. */
function boundsOf(meshes: readonly SitterMesh[], hips: readonly Vec3[]): Bounds {
  const mean = (j: 0 | 2): number => hips.reduce((sum, p) => sum + p[j], 0) / hips.length;
  const middle = [mean(0), mean(2)] as const;
  let seat = Number.POSITIVE_INFINITY;
  let floor = Number.POSITIVE_INFINITY;
  for (const { substance, positions: P } of meshes)
    for (let o = 0; o < P.length; o += 3) {
      const [x, y, z] = [P[o], P[o + 1], P[o + 2]] as [number, number, number];
      if (substance === 'shoes') floor = Math.min(floor, y);
      else if (WORN_BELOW.has(substance) && Math.hypot(x - middle[0], z - middle[1]) < SEAT.radius)
        seat = Math.min(seat, y);
    }
  return { middle, seat: seat - CLEAR, floor };
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
 * @param hips points round the hips, posed
 */
export function stoolFor(meshes: readonly SitterMesh[], hips: readonly Vec3[]): SitterMesh {
  const bounds = boundsOf(meshes, hips);
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
