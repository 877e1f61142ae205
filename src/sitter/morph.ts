import type { Vec3 } from '../optics/types';
import { type Control, controlsOf, type Person } from './controls';
import { type ClothedDimension, clothedExtents } from './extents';
import { landmarksFor } from './landmarks';
import { girthShares, neckAxis, neckGirth, widenNeck } from './neck';
import { levelPeaks } from './peaks';
import { type Place, positionAt, type Sculpture } from './sculpture';
import { DIMENSIONS, type Dimensions, type Landmarks } from './types';
import { applyWarp, coefficientsFor, prepareWarp, type Warp } from './warp';

/** What is worked out once for a sculpture. */
interface Rig {
  readonly controls: readonly Control[];
  readonly warp: Warp;
  readonly ease: Readonly<Record<ClothedDimension, number>>;
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
  const rig: Rig = {
    controls,
    warp: prepareWarp(Float64Array.from(controls.flatMap((c) => c.from))),
    ease: clothEase(sculpture, dimensions),
  };
  rigs.set(sculpture, rig);
  return rig;
}

/** How much the sculpture's cloth stands off the body it was built to, metres, by dimension. */
export const easeOf = (sculpture: Sculpture): Rig['ease'] => rigOf(sculpture).ease;

function clothEase(sculpture: Sculpture, body: Dimensions): Rig['ease'] {
  const at = (place: Place | undefined): Vec3 => {
    if (!place) throw new RangeError('the sculpture lacks a guide');
    return positionAt(sculpture.meshes, place);
  };
  const clothed = clothedExtents({
    meshes: sculpture.meshes,
    landmark: (name) => at(sculpture.landmarks[name]),
    guide: (name) => at(sculpture.guides[name]),
  });
  return Object.fromEntries(
    Object.entries(clothed).map(([name, value]) => [
      name,
      value - body[name as ClothedDimension] / 1000,
    ]),
  ) as Rig['ease'];
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
  levelPeaks(sculpture, person.landmarks, out);
  fitNeck(sculpture, sculpture.landmarks.menton[0], person, out);
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

/** Girths closer than this are equal, metres. */
const GIRTH_TOLERANCE = 2e-5;

/** Widens or narrows the neck about its axis until its girth is what was asked. */
function fitNeck(
  sculpture: Sculpture,
  skin: number,
  { dimensions, landmarks }: Person,
  out: readonly Float32Array[],
): void {
  const axis = neckAxis((name) => landmarks[name]);
  const { indices } = sculpture.meshes[skin] as Sculpture['meshes'][number];
  const girth = (): number => neckGirth(axis, out[skin] as Float32Array, indices);
  const shares = out.map((P, m) =>
    sculpture.meshes[m]?.substance === 'eye' ? new Float32Array(0) : girthShares(axis, P),
  );
  const asked = dimensions.neck_circumference / 1000;
  let gain = 1;
  for (let round = 0, now = girth(); round < 8; round++) {
    const widen = (gain * (asked - now)) / now;
    if (Math.abs(asked - now) < GIRTH_TOLERANCE) return;
    out.forEach((P, m) => {
      widenNeck(axis, P, shares[m] as Float32Array, widen);
    });
    const after = girth();
    // What the hull gained for what was given tells the next step (secant).
    const answer = (after - now) / (widen * now);
    if (answer > 0.2) gain = 1 / answer;
    now = after;
  }
}
