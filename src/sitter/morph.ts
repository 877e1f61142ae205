import { type Control, controlsOf, type Person } from './controls';
import { type Ears, findEars, placeEars } from './ears';
import { landmarksFor } from './landmarks';
import { girthShare, type NeckAxis, neckAxis, neckGirth } from './neck';
import { positionAt, type Sculpture } from './sculpture';
import { DIMENSIONS, type Dimensions, type Landmarks } from './types';
import { applyWarp, coefficientsFor, prepareWarp, type Warp } from './warp';

/** What is worked out once for a sculpture. */
interface Rig {
  readonly controls: readonly Control[];
  readonly warp: Warp;
  readonly ears: Ears;
  /** Share of a change of the neck's girth, by mesh and vertex. */
  readonly girth: readonly Float32Array[];
}

const rigs = new WeakMap<Sculpture, Rig>();

/** The dimensions a sculpture's body was built from. @throws when its file lacks one. */
export function sculptedDimensions(sculpture: Sculpture): Dimensions {
  for (const name of DIMENSIONS)
    if (sculpture.body[name] === undefined)
      throw new RangeError(`the sculpture does not say its ${name}`);
  return sculpture.body as Dimensions;
}

function rigOf(sculpture: Sculpture): Rig {
  const known = rigs.get(sculpture);
  if (known) return known;
  const dimensions = sculptedDimensions(sculpture);
  const controls = controlsOf(sculpture, { dimensions, landmarks: landmarksFor(dimensions) });
  const axis = neckAxis((name) => positionAt(sculpture.meshes, sculpture.landmarks[name]));
  const rig: Rig = {
    controls,
    warp: prepareWarp(Float64Array.from(controls.flatMap((c) => c.from))),
    ears: findEars(sculpture),
    girth: sculpture.meshes.map(({ positions: P }) =>
      Float32Array.from({ length: P.length / 3 }, (_, v) =>
        girthShare(axis, P[3 * v] as number, P[3 * v + 1] as number, P[3 * v + 2] as number),
      ),
    ),
  };
  rigs.set(sculpture, rig);
  return rig;
}

/** Positions by mesh, metres, upright: the sculpture made to a person's dimensions. */
export function morph(sculpture: Sculpture, person: Person): readonly Float32Array[] {
  const rig = rigOf(sculpture);
  const targets = Float64Array.from(rig.controls.flatMap((control) => control.to(person)));
  const k = coefficientsFor(rig.warp, targets);
  const out = sculpture.meshes.map(({ positions, substance }, m) => {
    const target = new Float32Array(positions.length);
    if (substance === 'eye') moveEyes(sculpture, person.landmarks, m, target);
    else applyWarp(rig.warp, k, positions, target);
    return target;
  });
  const { ears } = rig;
  placeEars(
    ears,
    person.landmarks,
    (sculpture.meshes[ears.mesh] as Sculpture['meshes'][number]).positions,
    out[ears.mesh] as Float32Array,
  );
  fitNeck(rig, sculpture, person, out);
  return out;
}

/** Eyeballs keep their size: each moves with its pupil. */
function moveEyes(
  sculpture: Sculpture,
  landmarks: Landmarks,
  mesh: number,
  target: Float32Array,
): void {
  const { positions } = sculpture.meshes[mesh] as Sculpture['meshes'][number];
  const shift = (['left', 'right'] as const).map((side) => {
    const from = positionAt(sculpture.meshes, sculpture.landmarks[`pupil_${side}`]);
    const to = landmarks[`pupil_${side}`];
    return [to[0] - from[0], to[1] - from[1], to[2] - from[2]] as const;
  });
  for (let i = 0; i < positions.length; i += 3) {
    const by = shift[(positions[i] as number) > 0 ? 0 : 1] as readonly [number, number, number];
    for (let j = 0; j < 3; j++) target[i + j] = (positions[i + j] as number) + (by[j] as number);
  }
}

/** Widens or narrows the neck about its axis until its girth is what was asked. */
function fitNeck(
  rig: Rig,
  sculpture: Sculpture,
  { dimensions, landmarks }: Person,
  out: readonly Float32Array[],
): void {
  const axis = neckAxis((name) => landmarks[name]);
  const skin = rig.ears.mesh;
  const { indices } = sculpture.meshes[skin] as Sculpture['meshes'][number];
  const asked = dimensions.neck_circumference / 1000;
  // The hull is nearly linear in the widening: three rounds bring it within a hundredth of a mm.
  for (let round = 0; round < 3; round++) {
    const widen = asked / neckGirth(axis, out[skin] as Float32Array, indices) - 1;
    if (Math.abs(widen) < 1e-6) return;
    out.forEach((P, m) => {
      if (sculpture.meshes[m]?.substance !== 'eye')
        widenNeck(axis, P, rig.girth[m] as Float32Array, widen);
    });
  }
}

function widenNeck(axis: NeckAxis, P: Float32Array, share: Float32Array, widen: number): void {
  share.forEach((s, v) => {
    if (s === 0) return;
    const o = 3 * v;
    const [y, z] = [P[o + 1] as number, P[o + 2] as number];
    const t = axis.along(0, y, z);
    P[o] = (P[o] as number) * (1 + s * widen);
    for (const j of [1, 2] as const) {
      const centre = axis.root[j] + t * axis.direction[j];
      P[o + j] = centre + ((P[o + j] as number) - centre) * (1 + s * widen);
    }
  });
}
