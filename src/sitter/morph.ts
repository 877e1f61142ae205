import type { Vec3 } from '../optics/types';
import { type Control, controlsOf, type Person, steering } from './controls';
import { type ClothedDimension, clothedExtents, type Figure } from './extents';
import { fitEars, fitNeck, fitTrunk, type More, type Steps, settle } from './fit';
import { landmarksFor } from './landmarks';
import { levelPeaks } from './peaks';
import { type Place, positionAt, type Sculpture } from './sculpture';
import { DIMENSIONS, type Dimensions, type Landmarks, REGION } from './types';
import { type Neighbours, neighboursOf, untangle } from './untangle';
import { applyWarp, type Coefficients, coefficientsFor, prepareWarp, type Warp } from './warp';

/** What is worked out once for a sculpture. */
interface Rig {
  readonly controls: readonly Control[];
  readonly warp: Warp;
  /** Vertices of the skin that ears are measured by, and the guides and landmarks among them. */
  readonly ears: Uint32Array;
  readonly ease: Readonly<Record<ClothedDimension, number>>;
  /** By mesh: vertices that landmarks and guides stand on; neighbours, found when first needed. */
  readonly held: readonly ReadonlySet<number>[];
  readonly rings: Map<number, Neighbours>;
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
    ears: earVertices(sculpture),
    ease: clothEase(sculpture, dimensions),
    held: heldVertices(sculpture),
    rings: new Map(),
  };
  rigs.set(sculpture, rig);
  return rig;
}

/** Ears, and every place that is held on the skin. */
function earVertices(sculpture: Sculpture): Uint32Array {
  const skin = sculpture.landmarks.menton[0];
  const found = new Set<number>();
  for (const [m, v] of [...Object.values(sculpture.landmarks), ...Object.values(sculpture.guides)])
    if (m === skin) found.add(v);
  sculpture.meshes[skin]?.regions.forEach((r, v) => {
    if (r === REGION.earLeft) found.add(v);
  });
  return Uint32Array.from(found);
}

/** Vertices that landmarks and guides stand on, by mesh. */
function heldVertices(sculpture: Sculpture): Set<number>[] {
  const held = sculpture.meshes.map(() => new Set<number>());
  const guides = steering(sculpture).map(([, place]) => place);
  for (const [m, v] of [...Object.values(sculpture.landmarks), ...guides]) held[m]?.add(v);
  return held;
}

/** How much the sculpture's cloth stands off the body it was built to, metres, by dimension. */
export const easeOf = (sculpture: Sculpture): Rig['ease'] => rigOf(sculpture).ease;

function clothEase(sculpture: Sculpture, body: Dimensions): Rig['ease'] {
  const clothed = clothedExtents(
    asFigure(
      sculpture,
      sculpture.meshes.map(({ positions }) => positions),
    ),
  );
  return Object.fromEntries(
    Object.entries(clothed).map(([name, value]) => [
      name,
      value - body[name as ClothedDimension] / 1000,
    ]),
  ) as Rig['ease'];
}

/** The sculpture with other positions, as the measures see it. */
function asFigure(sculpture: Sculpture, positions: readonly Float32Array[]): Figure {
  const meshes = sculpture.meshes.map((mesh, m) => ({
    ...mesh,
    positions: positions[m] as Float32Array,
  }));
  const at = (place: Place | undefined): Vec3 => {
    if (!place) throw new RangeError('the sculpture lacks a guide');
    return positionAt(meshes, place);
  };
  return {
    meshes,
    landmark: (name) => at(sculpture.landmarks[name]),
    guide: (name) => at(sculpture.guides[name]),
  };
}

const CLOTH = new Set<string>(['top', 'trousers', 'shoes']);
const ROUNDS = 6;
const MENDINGS = 4;

/** Positions by mesh, metres, upright: the sculpture made to a person's dimensions. */
export function morph(sculpture: Sculpture, person: Person): readonly Float32Array[] {
  const rig = rigOf(sculpture);
  const out = sculpture.meshes.map(({ positions }) => new Float32Array(positions.length));
  const figure = asFigure(sculpture, out);
  const skin = sculpture.landmarks.menton[0];
  const more: More = {};
  const steps: Steps = new Map();
  const coefficients = (): Coefficients =>
    coefficientsFor(
      rig.warp,
      Float64Array.from(rig.controls.flatMap((control) => control.to({ ...person, more }))),
    );
  const warp = (k: Coefficients, m: number, only?: Uint32Array): void => {
    const mesh = sculpture.meshes[m] as Sculpture['meshes'][number];
    applyWarp(rig.warp, k, mesh.positions, out[m] as Float32Array, only);
  };
  const every = (wanted: (substance: string) => boolean): number[] =>
    sculpture.meshes.flatMap(({ substance }, m) => (wanted(substance) ? [m] : []));
  const cloth = every((substance) => CLOTH.has(substance));
  // First what has to be measured and corrected, until it measures what was asked.
  for (let round = 0; round < ROUNDS; round++) {
    warp(coefficients(), skin, rig.ears);
    if (fitEars(figure, person.dimensions, more, steps)) break;
  }
  for (let round = 0; round < ROUNDS; round++) {
    const k = coefficients();
    for (const m of cloth) warp(k, m);
    settle(figure, person.dimensions);
    if (fitTrunk(figure, person.dimensions, rig.ease, more, steps)) break;
  }
  const k = coefficients();
  for (const m of every((substance) => !CLOTH.has(substance) && substance !== 'eye')) warp(k, m);
  for (const m of every((substance) => substance === 'eye'))
    moveEyes(sculpture, person.landmarks, m, out[m] as Float32Array);
  // Mending moves the surface a little, so the measures follow it until nothing is left to mend.
  for (let round = 0; round < MENDINGS; round++) {
    levelPeaks(sculpture, person.landmarks, out);
    fitNeck(figure, skin, person);
    if (!mend(sculpture, rig, out)) break;
  }
  return out;
}

/** Turns back what triangles the warp turned over; false when there were none. */
function mend(sculpture: Sculpture, { held, rings }: Rig, out: readonly Float32Array[]): boolean {
  return sculpture.meshes
    .map(({ positions, indices, substance }, m) => {
      if (substance === 'eye') return false;
      const neighbours = (): Neighbours => {
        const known = rings.get(m);
        if (known) return known;
        const fresh = neighboursOf(positions.length / 3, indices);
        rings.set(m, fresh);
        return fresh;
      };
      return untangle(
        positions,
        out[m] as Float32Array,
        indices,
        held[m] as Set<number>,
        neighbours,
      );
    })
    .some(Boolean);
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
