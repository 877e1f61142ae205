import type { Vec3 } from '../optics/types';
import { PROPORTION } from './landmarks';
import { positionAt, type Sculpture } from './sculpture';
import { type Landmarks, REGION } from './types';
import { spread } from './vault';

/**
 * The ears keep their own character: points spread over each are moved as one piece, scaled along
 * the ear's own axes by its protrusion, length and breadth, and the warp of the whole head passes
 * through them. Worked out on the left ear; the right one is its mirror image.
 */
export interface Ear {
  /** Points of the sculpted left ear that the warp holds, metres. */
  readonly points: readonly Vec3[];
  /** The point of the sculpted rim that stands farthest out. */
  readonly outermost: Vec3;
  /** The ear's foremost point, across its long axis. */
  readonly foremost: Vec3;
  /**
   * Takes a point of the sculpted left ear to its place for a person's landmarks; `more` (mm)
   * draws the front of the ear forward, the rear not at all.
   */
  map(landmarks: Landmarks, more?: number): (from: Vec3) => Vec3;
}

/** How many points of an ear the warp holds besides its landmarks. */
const POINTS = 10;
/** Points nearer to the landmarks or to each other than this would only disturb, metres. */
const APART = 0.006;
const RIM = ['superaurale', 'subaurale', 'postaurale'] as const;

/** @throws when the sculpture has no left ear. */
export function earOf(sculpture: Sculpture): Ear {
  const at = (name: (typeof RIM)[number] | 'tragion'): Vec3 =>
    positionAt(sculpture.meshes, sculpture.landmarks[`${name}_left`]);
  const tragion = at('tragion');
  const rim = RIM.map((name) => less(at(name), tragion));
  const vertices = earVertices(sculpture);
  const outermost = vertices.reduce((a, b) => (b[0] > a[0] ? b : a));
  const behind = (p: Vec3): number => inAxes(less(p, tragion))[2];
  const foremost = vertices.reduce((a, b) => (behind(b) < behind(a) ? b : a));
  const local = (landmarks: Landmarks): ((from: Vec3) => Vec3) => {
    const map = earMap(
      rim.map(inAxes),
      RIM.map((name) => inAxes(less(landmarks[`${name}_left`], landmarks.tragion_left))),
    );
    return (from) => map(inAxes(less(from, tragion)));
  };
  const placed = (landmarks: Landmarks, inEar: Vec3): Vec3 => {
    const to = landmarks.tragion_left;
    const [x, y, z] = fromAxes(inEar);
    return [to[0] + x, to[1] + y, to[2] + z];
  };
  return {
    points: overEar(vertices, outermost, [tragion, foremost, ...RIM.map(at)]),
    outermost,
    foremost,
    map: (landmarks, more = 0) => {
      const map = local(landmarks);
      const rear = inAxes(less(landmarks.postaurale_left, landmarks.tragion_left))[2];
      return (from) => {
        const [out, up, back] = map(from);
        return placed(landmarks, [out, up, back - (more / 1000) * (1 - back / rear)]);
      };
    },
  };
}

function earVertices(sculpture: Sculpture): Vec3[] {
  const found: Vec3[] = [];
  for (const { positions: P, regions } of sculpture.meshes)
    regions.forEach((r, v) => {
      if (r === REGION.earLeft)
        found.push([P[3 * v] as number, P[3 * v + 1] as number, P[3 * v + 2] as number]);
    });
  if (!found.length) throw new RangeError('the sculpture has no left ear');
  return found;
}

/** The outermost vertex, then each time the one farthest from all that are held already. */
function overEar(vertices: readonly Vec3[], outermost: Vec3, held: readonly Vec3[]): Vec3[] {
  const first = held.every((p) => distance(p, outermost) > APART) ? [outermost] : [];
  return [...first, ...spread(vertices, [...held, ...first], POINTS - first.length, APART)];
}

const less = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const distance = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** Coordinates in the ear's own axes: out of the head, up along the ear, behind. */
const UP = [Math.cos(PROPORTION.earLean), -Math.sin(PROPORTION.earLean)] as const;
const inAxes = ([x, y, z]: Vec3): Vec3 => [x, y * UP[0] + z * UP[1], y * UP[1] - z * UP[0]];
const fromAxes = ([out, up, behind]: Vec3): Vec3 => [
  out,
  up * UP[0] + behind * UP[1],
  up * UP[1] - behind * UP[0],
];

/**
 * The ear's map, from and to offsets from the tragion in the ear's axes: scaled along each axis by
 * protrusion, length and breadth; what is left at the rim's three points (a millimetre or two, the
 * sculpted ear's own character) is spread by inverse-square distance (Shepard 1968).
 */
function earMap(from: readonly Vec3[], to: readonly Vec3[]): (p: Vec3) => Vec3 {
  const [top, bottom, rear] = from as [Vec3, Vec3, Vec3];
  const [topTo, bottomTo, rearTo] = to as [Vec3, Vec3, Vec3];
  const scale: Vec3 = [
    rearTo[0] / rear[0],
    (topTo[1] - bottomTo[1]) / (top[1] - bottom[1]),
    rearTo[2] / rear[2],
  ];
  const scaled = (p: Vec3): Vec3 => [p[0] * scale[0], p[1] * scale[1], p[2] * scale[2]];
  const nodes: readonly Vec3[] = [[0, 0, 0], ...from];
  const rest: readonly Vec3[] = [[0, 0, 0], ...to.map((p, i) => less(p, scaled(from[i] as Vec3)))];
  return (p) => {
    const weights = nodes.map((node) => 1 / (distance(p, node) ** 2 + 1e-14));
    const sum = weights.reduce((a, b) => a + b, 0);
    const shift = (j: 0 | 1 | 2): number =>
      weights.reduce((total, w, i) => total + (w / sum) * (rest[i] as Vec3)[j], 0);
    const at = scaled(p);
    return [at[0] + shift(0), at[1] + shift(1), at[2] + shift(2)];
  };
}
