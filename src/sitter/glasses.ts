/**
 * Glasses with thin, nearly round rims. They sit where a fitter would put them: on the root of the nose and
 * on the ears, the lenses before the eyes. Sizes are those common in the trade (lens 46 mm wide, 20 mm
 * between the lenses, 12 to 14 mm from lens to cornea, leaning 8 degrees), from memory; they are scaled to
 * the breadth of the face.
 */
import type { Vec3 } from '../optics/types';
import { cross, dot, minus, unit } from '../optics/vector';
import { addTube, emptyWire, smooth, type Wire, wireMesh } from './tube';
import type { Landmarks, SitterMesh } from './types';

const MM = 0.001;
/** Breadth of the face that the sizes are meant for. */
const FACE = 136 * MM;
const LENS = { halfWidth: 23 * MM, halfHeight: 20 * MM, apart: 20 * MM, below: 1.5 * MM };
const CORNEA_TO_LENS = 13 * MM;
const LEAN = (8 * Math.PI) / 180;
/** Each lens faces outwards by this much. */
const WRAP = (4 * Math.PI) / 180;
const WIRE = 0.95 * MM;
const TEMPLE_WIRE = 1.05 * MM;
/** Radius of a lens' front. */
const BULGE = 110 * MM;
/** Roundness of the rims: 2 is an ellipse, more is squarer. */
const POWER = 2.35;
const STEPS = 64;
/** Skin this near to a wire, seen from the front, is beside it; air left between them. */
const BESIDE = 2.5 * MM;
const CLEAR = 0.3 * MM;
/** Dark brown, linear reflectance. */
const FRAME = [10, 7, 5] as const;

type Local = (across: number, up: number, out: number) => Vec3;

const between = (a: Vec3, b: Vec3, share: number): Vec3 => [
  a[0] + share * (b[0] - a[0]),
  a[1] + share * (b[1] - a[1]),
  a[2] + share * (b[2] - a[2]),
];

/** Where a temple rests: on the root of the ear, most of the way from the tragion to the ear's top. */
const rest = (landmarks: Landmarks, side: 'left' | 'right'): Vec3 =>
  between(landmarks[`tragion_${side}`], landmarks[`superaurale_${side}`], 0.62);

interface Seat {
  /** A point given across (towards the sitter's left), up and out from the middle between the pupils. */
  readonly at: Local;
  /** The reverse. */
  readonly of: (p: Vec3) => Vec3;
  readonly across: Vec3;
  readonly up: Vec3;
  /** Sizes against those stated. */
  readonly scale: number;
}

/** The axes of the glasses: level through the pupils, and along the temples. */
function seatOf(landmarks: Landmarks): Seat {
  const { pupil_left, pupil_right, zygion_left, zygion_right } = landmarks;
  const middle = between(pupil_left, pupil_right, 0.5);
  const across = unit(minus(pupil_left, pupil_right));
  const ears = between(rest(landmarks, 'left'), rest(landmarks, 'right'), 0.5);
  const back = minus(middle, ears);
  const out = unit(minus(back, between([0, 0, 0], across, dot(back, across))));
  const up = cross(out, across);
  return {
    at: (x, y, z) =>
      [0, 1, 2].map(
        (j) =>
          (middle[j] as number) +
          x * (across[j] as number) +
          y * (up[j] as number) +
          z * (out[j] as number),
      ) as unknown as Vec3,
    of: (p) => {
      const off = minus(p, middle);
      return [dot(off, across), dot(off, up), dot(off, out)];
    },
    across,
    up,
    scale: Math.hypot(...minus(zygion_left, zygion_right)) / FACE,
  };
}

/** A point of the plane that the lenses lie in, leaning and turned outwards about the bridge. */
const onFront =
  (seat: Seat, out: number): Local =>
  (across, up, forward) =>
    seat.at(
      across,
      up * Math.cos(LEAN) - forward * Math.sin(LEAN),
      out + up * Math.sin(LEAN) - Math.abs(across) * Math.tan(WRAP) + forward * Math.cos(LEAN),
    );

const rounded = (angle: number, half: number, cosine: boolean): number => {
  const value = cosine ? Math.cos(angle) : Math.sin(angle);
  return half * Math.sign(value) * Math.abs(value) ** (2 / POWER);
};

/** Adds one lens, a thin dome inside its rim. */
function addLens(into: Wire, front: Local, centre: readonly [number, number], k: number): void {
  const RINGS = 6;
  const first = into.positions.length / 3;
  const point = (share: number, angle: number): Vec3 => {
    const x = share * rounded(angle, LENS.halfWidth * k, true);
    const y = share * rounded(angle, LENS.halfHeight * k, false);
    const edge = (LENS.halfWidth * k) ** 2;
    return front(centre[0] + x, centre[1] + y, (edge - x * x - y * y) / (2 * BULGE));
  };
  const heart = front(centre[0], centre[1], -BULGE);
  const put = (p: Vec3) => {
    into.positions.push(...p);
    into.normals.push(...unit(minus(p, heart)));
  };
  put(point(0, 0));
  for (let r = 1; r <= RINGS; r++)
    for (let s = 0; s < STEPS; s++) put(point(r / RINGS, (2 * Math.PI * s) / STEPS));
  const ring = (r: number, s: number) => first + 1 + (r - 1) * STEPS + (s % STEPS);
  for (let s = 0; s < STEPS; s++) {
    into.indices.push(first, ring(1, s), ring(1, s + 1));
    for (let r = 1; r < RINGS; r++) {
      const [a, b, c, d] = [ring(r, s), ring(r + 1, s), ring(r + 1, s + 1), ring(r, s + 1)];
      into.indices.push(a, b, c, a, c, d);
    }
  }
}

/** Rim of one lens. */
const rimOf = (front: Local, centre: readonly [number, number], k: number): Vec3[] =>
  Array.from({ length: STEPS }, (_, i) => {
    const angle = (2 * Math.PI * i) / STEPS;
    const x = rounded(angle, LENS.halfWidth * k, true);
    const y = rounded(angle, LENS.halfHeight * k, false);
    return front(centre[0] + x, centre[1] + y, 0);
  });

const archOf = (front: Local, k: number): Vec3[] =>
  Array.from({ length: 13 }, (_, i) => {
    const t = i / 6 - 1;
    const rise = 1 - t * t;
    return front(
      t * ((LENS.apart * k) / 2 + 0.6 * MM),
      (3.5 + 2.6 * rise) * MM * k,
      1.6 * MM * rise,
    );
  });

/** Places of the skin's vertices before the eye plane's depth minus 20 mm, in the glasses' axes. */
function faceBefore(seat: Seat, { positions }: SitterMesh): Vec3[] {
  const face: Vec3[] = [];
  for (let i = 0; i < positions.length; i += 3) {
    const p = seat.of([positions[i], positions[i + 1], positions[i + 2]] as unknown as Vec3);
    if (Math.abs(p[0]) < 0.07 && Math.abs(p[1]) < 0.05 && p[2] > -0.02) face.push(p);
  }
  return face;
}

/** How far a wire would have to come forward so that no skin beside it stands before it. */
function pushedBy(face: readonly Vec3[], wire: readonly Vec3[]): number {
  let push = 0;
  for (const [x, y, out] of wire)
    for (const q of face) {
      const [dx, dy] = [q[0] - x, q[1] - y];
      if (dx * dx + dy * dy < BESIDE * BESIDE) push = Math.max(push, q[2] - out);
    }
  return push;
}

/** Frame and lenses on a face, from its landmarks and skin as they are posed. */
export function glassesFor(landmarks: Landmarks, skin: SitterMesh): readonly SitterMesh[] {
  const seat = seatOf(landmarks);
  const { scale: k } = seat;
  const middle = LENS.halfWidth * k + (LENS.apart * k) / 2;
  const centres = [1, -1].map((sign) => [sign * middle, -LENS.below * k] as const);
  const usual = onFront(seat, CORNEA_TO_LENS);
  const face = faceBefore(seat, skin);
  const wires = [...centres.map((centre) => rimOf(usual, centre, k)), archOf(usual, k)];
  const pushes = wires.map((wire) => pushedBy(face, wire.map(seat.of)));
  const front = onFront(seat, CORNEA_TO_LENS + Math.max(...pushes) + WIRE + CLEAR);
  const [frame, glass] = [emptyWire(), emptyWire()];
  const forward = minus(front(0, 0, 1), front(0, 0, 0));
  for (const [i, centre] of centres.entries()) {
    addTube(frame, rimOf(front, centre, k), WIRE, forward, true);
    addLens(glass, front, centre, k);
    const side = i === 0 ? 'left' : 'right';
    addTemple(frame, seat, front, rest(landmarks, side), Math.sign(centre[0]), centre);
  }
  addTube(frame, archOf(front, k), WIRE, seat.up, false);
  return [
    wireMesh('glasses-frame', 'frame', frame, FRAME),
    wireMesh('glasses-lenses', 'glass', glass, [0, 0, 0]),
  ];
}

/** From the rim's outer side back over the ear, then down behind it. */
function addTemple(
  frame: Wire,
  seat: Seat,
  front: Local,
  ear: Vec3,
  sign: number,
  centre: readonly [number, number],
): void {
  const { scale: k } = seat;
  const [earX, earY, earZ] = seat.of(ear);
  const outer = centre[0] + sign * (LENS.halfWidth * k * 0.985);
  const hinge = seat.of(front(outer, centre[1] + 5.5 * MM * k, 0));
  const wide = sign * Math.max(Math.abs(hinge[0]) + 4 * MM, Math.abs(earX) + 1.5 * MM);
  const over = earY + 1.5 * MM;
  const knots: readonly Vec3[] = [
    hinge,
    [(hinge[0] + wide) / 2, hinge[1] + 0.3 * MM, hinge[2] - 1 * MM],
    [wide, hinge[1], hinge[2] - 6 * MM],
    [wide + sign * 0.5 * MM, (hinge[1] * 2 + over) / 3, (hinge[2] * 2 + earZ) / 3],
    [(wide + earX) / 2 + sign * 1 * MM, (hinge[1] + 2 * over) / 3, (hinge[2] + 2 * earZ) / 3],
    [earX, over, earZ],
    [earX - sign * 1 * MM, over - 4 * MM, earZ - 10 * MM * k],
    [earX - sign * 2.5 * MM, over - 17 * MM * k, earZ - 17 * MM * k],
    [earX - sign * 4 * MM, over - 32 * MM * k, earZ - 20 * MM * k],
  ];
  const path = smooth(knots).map((p) => seat.at(...p));
  addTube(frame, path, TEMPLE_WIRE, seat.across, false);
}
