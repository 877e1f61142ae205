import type { Person } from './controls';
import { type ClothedDimension, clothedExtents, earExtents, type Figure } from './extents';
import { girthShares, neckGirth, neckMiddle, neckTube, widenNeck } from './girth';
import type { DimensionName, Dimensions } from './types';

/** What guides must give more than asked, millimetres, so that the mesh measures right. */
export type More = Partial<Record<DimensionName, number>>;

/** Sizes closer than this are equal, metres. */
const TOLERANCE = 4e-5;
const TRUNK = [
  'chest_breadth',
  'chest_depth',
  'waist_breadth',
  'waist_depth',
  'hip_breadth_standing',
  'buttock_depth',
  'foot_length',
] as const satisfies readonly ClothedDimension[];
const EAR = ['ear_breadth', 'ear_protrusion'] as const;

/** What was missing before the last correction, and that correction, metres. */
export type Steps = Map<DimensionName, { readonly missing: number; readonly step: number }>;

/**
 * Adds to `more` what a measure lacks, by as much as the last correction answered (secant); true
 * when it lacks nothing.
 */
function correct(name: DimensionName, missing: number, more: More, steps: Steps): boolean {
  if (Math.abs(missing) < TOLERANCE) return true;
  const last = steps.get(name);
  const answer = last ? (last.missing - missing) / last.step : 1;
  const step = missing / (answer > 0.3 ? Math.min(answer, 2) : 1);
  steps.set(name, { missing, step });
  more[name] = (more[name] ?? 0) + 1000 * step;
  return false;
}

/** Corrects trunk and hips; true when they measure what was asked. */
export function fitTrunk(
  figure: Figure,
  asked: Dimensions,
  ease: Readonly<Record<ClothedDimension, number>>,
  more: More,
  steps: Steps,
): boolean {
  const now = clothedExtents(figure);
  return TRUNK.map((name) =>
    correct(name, asked[name] / 1000 - (now[name] - ease[name]), more, steps),
  ).every(Boolean);
}

/** Corrects the ears' breadth and protrusion; true when they measure what was asked. */
export function fitEars(figure: Figure, asked: Dimensions, more: More, steps: Steps): boolean {
  const now = earExtents(figure);
  return EAR.map((name) => correct(name, asked[name] / 1000 - now[name], more, steps)).every(
    Boolean,
  );
}

/** Up to this height over the floor a foot gives way to stand on it, metres. */
const ANKLE = 0.09;

/** Sets the soles on the floor: the lowest point of the shoes is where the stature says. */
export function settle({ meshes }: Figure, asked: Dimensions): void {
  const floor = (asked.vertex_above_eyes - asked.stature) / 1000;
  let lowest = Number.POSITIVE_INFINITY;
  for (const { substance, positions: P } of meshes)
    if (substance === 'shoes')
      for (let i = 1; i < P.length; i += 3) lowest = Math.min(lowest, P[i] as number);
  const gap = floor - lowest;
  for (const { substance, positions: P } of meshes) {
    if (substance !== 'shoes' && substance !== 'trousers') continue;
    for (let i = 1; i < P.length; i += 3) {
      const t = Math.min(1, Math.max(0, ((P[i] as number) - lowest) / ANKLE));
      P[i] = (P[i] as number) + gap * (1 - t * t * (3 - 2 * t));
    }
  }
}

/** Girths closer than this are equal, metres. */
const GIRTH_TOLERANCE = 2e-5;

/** Widens or narrows the neck about its axis until its girth is what was asked. */
export function fitNeck({ meshes }: Figure, skin: number, { dimensions, landmarks }: Person): void {
  const tube = neckTube((name) => landmarks[name]);
  const { positions, indices } = meshes[skin] as Figure['meshes'][number];
  const girth = (): number => neckGirth(tube, positions, indices);
  const middle = neckMiddle(tube, positions, indices);
  const shares = meshes.map(({ substance, positions: P }) =>
    substance === 'eye' ? new Float32Array(0) : girthShares(tube, middle, P),
  );
  const asked = dimensions.neck_circumference / 1000;
  let gain = 1;
  for (let round = 0, now = girth(); round < 8; round++) {
    const widen = (gain * (asked - now)) / now;
    if (Math.abs(asked - now) < GIRTH_TOLERANCE) return;
    meshes.forEach(({ positions: P }, m) => {
      widenNeck(tube, middle, P, shares[m] as Float32Array, widen);
    });
    const after = girth();
    // What the hull gained for what was given tells the next step (secant).
    const answer = (after - now) / (widen * now);
    if (answer > 0.2) gain = 1 / answer;
    now = after;
  }
}
