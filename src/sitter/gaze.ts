/**
 * Where the eyes look. Each turns about a point behind its own pupil; by Listing's law (Helmholtz 1867)
 * without rolling. The white of the eye is drawn out into the lid corners, so only cornea and iris turn as
 * a whole: farther out the white slides along the shape it has at rest.
 */
import type { Vec3 } from '../optics/types';
import { cross, dot, plus, scaled, unit } from '../optics/vector';
import { type Shell, type ShellPoint, shellOf } from './gazeShell';
import { type Axes, cornersOf, type LidPlace, withLids } from './lidMeshes';
import { beforeLids, lidTurn } from './lids';
import type { Landmarks, Sitter, SitterMesh } from './types';

/** From the pupil to the point the eye turns about, metres. */
export const ROTATION_DEPTH = 0.0105;
/** How far an eye turns in its head, radians: what is comfortable, from memory. */
export const GAZE_LIMIT = { yaw: (35 * Math.PI) / 180, pitch: (25 * Math.PI) / 180 } as const;

/** Turned in the head, radians: to the sitter's left, and up. */
export interface EyeTurn {
  readonly yaw: number;
  readonly pitch: number;
}

/** Within this angle of its axis, seen from the point it turns about, the eye turns as a whole. */
const WHOLE = 0.73;
/** Out here, under the lids, nothing of it moves. */
const STILL = 1.51;
/** The cornea's rim blends into the white within this angle. */
const BLEND = 0.17;

/** A point moved along a direction. */
const moved = (from: Vec3, way: Vec3, by = 1): Vec3 => plus(from, scaled(way, by));

const vec = (list: Float32Array, v: number): Vec3 => [
  list[3 * v] as number,
  list[3 * v + 1] as number,
  list[3 * v + 2] as number,
];

/** One eye of the eyes' mesh: its vertices are `first` .. `end` - 1, and `first` is the pupil's middle. */
export interface EyeFrame {
  readonly first: number;
  readonly end: number;
  readonly pupil: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
  /** Where it looks. */
  readonly out: Vec3;
}

/** Both eyes, the left one first: the mesh holds one after the other. */
export function eyeFrames({ positions, normals }: SitterMesh): readonly [EyeFrame, EyeFrame] {
  const half = positions.length / 6;
  const across = unit(moved(vec(positions, 0), vec(positions, half), -1));
  const frame = (first: number): EyeFrame => {
    const out = unit(vec(normals, first));
    const right = unit(moved(across, out, -dot(across, out)));
    return {
      first,
      end: first + half,
      pupil: vec(positions, first),
      right,
      up: cross(out, right),
      out,
    };
  };
  return [frame(0), frame(half)];
}

/** The face's own axes: level through the pupils, and out along the mean of both eyes at rest. */
function faceAxes([left, right]: readonly [EyeFrame, EyeFrame]): Axes {
  const across = unit(moved(left.pupil, right.pupil, -1));
  const ahead = moved(left.out, right.out);
  const out = unit(moved(ahead, across, -dot(ahead, across)));
  return [across, cross(out, across), out];
}

const within = (value: number, most: number): number => Math.max(-most, Math.min(most, value));

/** How an eye has to turn to look at a point, within what it can. */
function turnTowards(target: Vec3, centre: Vec3, [right, up, out]: Axes): EyeTurn {
  const way = unit(moved(target, centre, -1));
  return {
    yaw: Math.atan2(dot(way, right), dot(way, out)),
    pitch: Math.asin(within(dot(way, up), 1)),
  };
}

/** Direction of a turn, in the face's axes. */
const direction = ({ yaw, pitch }: EyeTurn): Vec3 => [
  Math.sin(yaw) * Math.cos(pitch),
  Math.sin(pitch),
  Math.cos(yaw) * Math.cos(pitch),
];

/** Turns a vector about a unit axis (Rodrigues). */
function turned(p: Vec3, axis: Vec3, angle: number): Vec3 {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return moved(moved(moved([0, 0, 0], p, c), cross(axis, p), s), axis, (1 - c) * dot(axis, p));
}

interface Written {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly openness: Uint8Array;
}

const worldOf =
  (axes: Axes) =>
  (p: Vec3): Vec3 =>
    moved(moved(moved([0, 0, 0], axes[0], p[0]), axes[1], p[1]), axes[2], p[2]);

/** How one eye turns for a target, within what it can. */
function turnOf(eye: EyeFrame, axes: Axes, target: Vec3 | EyeTurn): EyeTurn {
  const centre = moved(eye.pupil, axes[2], -ROTATION_DEPTH);
  const wanted = 'yaw' in target ? target : turnTowards(target, centre, axes);
  return {
    yaw: within(wanted.yaw, GAZE_LIMIT.yaw),
    pitch: within(wanted.pitch, GAZE_LIMIT.pitch),
  };
}

/** Where the pupil of a turned eye is. */
const turnedPupil = (eye: EyeFrame, axes: Axes, turn: EyeTurn): Vec3 =>
  moved(moved(eye.pupil, axes[2], -ROTATION_DEPTH), worldOf(axes)(direction(turn)), ROTATION_DEPTH);

/** The pupils of a sitter that looks so, without turning the mesh: see `withGaze`. */
export function gazedPupils(
  { landmarks, landmarkVertices, meshes }: Sitter,
  target: Vec3 | EyeTurn | null,
): Pick<Landmarks, 'pupil_left' | 'pupil_right'> {
  const mesh = meshes[landmarkVertices.pupil_left[0]];
  if (!target || !mesh) return landmarks;
  const frames = eyeFrames(mesh);
  const axes = faceAxes(frames);
  const [pupil_left, pupil_right] = frames.map((eye) =>
    turnedPupil(eye, axes, turnOf(eye, axes, target)),
  ) as [Vec3, Vec3];
  return { pupil_left, pupil_right };
}

/** The white reaches into both corners: how far, level from the pupil, metres. */
function reachOf(eye: EyeFrame, across: Vec3, positions: Float32Array) {
  let [least, most] = [0, 0];
  for (let v = eye.first; v < eye.end; v++) {
    const x = dot(moved(vec(positions, v), eye.pupil, -1), across);
    least = Math.min(least, x);
    most = Math.max(most, x);
  }
  return { least, most };
}

/** Turns one eye, writing into the mesh's new arrays; the lids' shade on it goes with the lids. */
function turnEye(
  eye: EyeFrame,
  axes: Axes,
  turn: EyeTurn,
  lids: number,
  shell: Shell,
  written: Written,
): void {
  const centre = moved(eye.pupil, axes[2], -ROTATION_DEPTH);
  const shaded = beforeLids(lids, reachOf(eye, axes[0], written.positions));
  const local = (p: Vec3): Vec3 => [dot(p, axes[0]), dot(p, axes[1]), dot(p, axes[2])];
  const world = worldOf(axes);
  const look = direction(turn);
  const angle = Math.acos(within(look[2], 1));
  const axis: Vec3 = angle < 1e-9 ? [1, 0, 0] : unit([-look[1], look[0], 0]);
  for (let v = eye.first; v < eye.end; v++) {
    const p = local(moved(vec(written.positions, v), centre, -1));
    const radius = Math.hypot(...p);
    const from = Math.acos(within(p[2] / radius, 1));
    const share = within((STILL - from) / (STILL - WHOLE), 1);
    if (share <= 0) continue;
    const way = unit(turned(p, axis, share * angle));
    const here: ShellPoint = shell(way);
    const whole = within((WHOLE + BLEND - from) / BLEND, 1);
    const kept = Math.max(0, whole);
    const normal = turned(local(vec(written.normals, v)), axis, share * angle);
    const reach = kept * radius + (1 - kept) * here.radius;
    const facing = unit(moved(moved([0, 0, 0], normal, kept), here.normal, 1 - kept));
    written.positions.set(moved(centre, world(way), reach), 3 * v);
    written.normals.set(world(facing), 3 * v);
    const place = scaled(way, reach);
    const before = shaded(place);
    const shade = before === place ? here : shell(unit(before));
    written.openness[v] = Math.round(shade.openness);
  }
}

/** The turns of both eyes for a target, and of the lids, which go together (radians). */
function turnsOf(frames: readonly [EyeFrame, EyeFrame], axes: Axes, target: Vec3 | EyeTurn) {
  const [left, right] = frames.map((eye) => turnOf(eye, axes, target)) as [EyeTurn, EyeTurn];
  return { eyes: [left, right], lids: lidTurn((left.pitch + right.pitch) / 2) } as const;
}

/** The eyes' mesh turned. */
export function turnedEyes(mesh: SitterMesh, target: Vec3 | EyeTurn): SitterMesh {
  const frames = eyeFrames(mesh);
  const axes = faceAxes(frames);
  const shells = shellOf(mesh, frames, axes, { depth: ROTATION_DEPTH, cornea: WHOLE });
  const written: Written = {
    positions: mesh.positions.slice(),
    normals: mesh.normals.slice(),
    openness: mesh.openness.slice(),
  };
  const { eyes, lids } = turnsOf(frames, axes, target);
  frames.forEach((eye, i) => {
    turnEye(eye, axes, eyes[i] as EyeTurn, lids, shells[i] as Shell, written);
  });
  return { ...mesh, ...written };
}

/**
 * The sitter with the eyes turned: to a point (the lens, in the sitter's own frame), on which they
 * converge; to a direction in the head, both alike; or `null`, as built. The lids go with the eyes up and
 * down, and nothing else changes. The pupils' landmarks go along, so near a lens the distance between the
 * pupils shrinks. The origin stays midway between the pupils at rest.
 * @param turned the eyes' mesh where it has been turned so before: `turnedEyes`
 */
export function withGaze<S extends Sitter>(
  sitter: S,
  target: Vec3 | EyeTurn | null,
  turned?: SitterMesh,
): S {
  const [index] = sitter.landmarkVertices.pupil_left;
  const mesh = sitter.meshes[index];
  if (!target || !mesh) return sitter;
  const eyes = turned ?? turnedEyes(mesh, target);
  const frames = eyeFrames(mesh);
  const axes = faceAxes(frames);
  const places = frames.map(
    ({ pupil }, i): LidPlace => ({
      centre: moved(pupil, axes[2], -ROTATION_DEPTH),
      corners: cornersOf(sitter, i === 0 ? 'left' : 'right', pupil, axes[0]),
    }),
  );
  const meshes = withLids(sitter, axes, places, turnsOf(frames, axes, target).lids);
  return {
    ...sitter,
    meshes: meshes.map((each, i) => (i === index ? eyes : each)),
    landmarks: { ...sitter.landmarks, ...gazedPupils(sitter, target) },
  };
}
