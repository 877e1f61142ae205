/**
 * What the standpoint does to the face. Sizes hang on depth along the line from the eyes to the
 * lens, so that turning the camera about the lens changes none of them; what a ruler on the
 * picture would give ("as drawn") is measured on the picture.
 */
import { projectInPicture } from '../optics/camera';
import {
  depthBefore,
  distanceForGain,
  gainPerStep,
  ratioOf,
  sizeAtDepth,
} from '../optics/perspective';
import { must } from '../optics/result';
import type { Camera, Vec3 } from '../optics/types';
import { type Metre, metres, mmToM } from '../optics/units';
import { cross, dot, minus, unit } from '../optics/vector';
import { landmarksFor } from '../sitter/landmarks';
import type { LandmarkName, Landmarks, PairedLandmark } from '../sitter/types';
import { orNull } from './measure-lens';
import { METRES_PER } from './parse';
import type { PictureInput } from './types';

export interface Drawn {
  /** As a ruler on the picture gives it; null when a part is not before the lens. */
  readonly here: number | null;
  /** The same from far away in the same direction (parallel view). */
  readonly far: number;
}

export interface FaceMeasures {
  /** Depths before the eye plane, towards the lens; ears by their tragions. */
  readonly depth: {
    readonly nose: Metre;
    readonly earLeft: Metre;
    readonly earRight: Metre;
    readonly ears: Metre;
  };
  /** Sizes over the size at the eye plane. */
  readonly size: Readonly<Record<SizedPart, number | null>>;
  /** Of the nose tip over each ear, and over their mean depth. */
  readonly noseToEar: {
    readonly mean: number | null;
    readonly left: number | null;
    readonly right: number | null;
  };
  /** Change of the nose-to-ear ratio by one step, in the ratio. */
  readonly step: Readonly<
    Record<'nearer10cm' | 'farther10cm' | 'nearer1ft' | 'farther1ft', number | null>
  >;
  readonly distanceForGain: { readonly percent5: Metre | null; readonly percent10: Metre | null };
  readonly noseBreadthToFaceBreadth: Drawn;
  readonly faceHeightToFaceBreadth: Drawn;
  /** Where the camera stands as the face sees it: to its left (+), above its level (+); radians. */
  readonly seenFrom: { readonly turn: number; readonly pitch: number };
  /** Straight from the entrance pupil to the nose tip. */
  readonly noseToLens: Metre;
  /** Between the pupils, as the eyes look here and with the gaze level and far off. */
  readonly pupils: { readonly here: Metre; readonly far: Metre };
}

/** Parts whose size is read; the paired ones at the mean depth of both sides. */
export const SIZED_PARTS = {
  nose_tip: 'pronasale',
  cheekbones: 'zygion',
  ears: 'tragion',
  ear_left: 'tragion_left',
  ear_right: 'tragion_right',
  crown: 'vertex',
  chin: 'menton',
  shoulders: 'acromion',
} as const satisfies Record<string, LandmarkName | PairedLandmark>;
export type SizedPart = keyof typeof SIZED_PARTS;

const middle = (a: Vec3, b: Vec3): Vec3 => [
  (a[0] + b[0]) / 2,
  (a[1] + b[1]) / 2,
  (a[2] + b[2]) / 2,
];

function place(landmarks: Landmarks, name: LandmarkName | PairedLandmark): Vec3 {
  if (name in landmarks) return landmarks[name as LandmarkName];
  const paired = name as PairedLandmark;
  return middle(landmarks[`${paired}_left`], landmarks[`${paired}_right`]);
}

/** Size of one landmark's part over another's, in one picture; null when not before the lens. */
export function landmarkRatio(
  { camera, sitter }: Pick<PictureInput, 'camera' | 'sitter'>,
  a: LandmarkName,
  b: LandmarkName,
): number | null {
  const depth = (name: LandmarkName) => must(depthBefore(sitter.landmarks[name], camera.position));
  return orNull(ratioOf(metres(Math.hypot(...camera.position)), depth(a), depth(b)));
}

/** Distance between two landmarks over that between two others: on the picture and from afar. */
function drawnRatio(
  camera: Camera,
  landmarks: Landmarks,
  over: readonly [LandmarkName, LandmarkName],
  under: readonly [LandmarkName, LandmarkName],
): Drawn {
  const towards = unit(camera.position);
  const far = ([a, b]: readonly [LandmarkName, LandmarkName]) => {
    const span = minus(landmarks[a], landmarks[b]);
    return Math.sqrt(Math.max(0, dot(span, span) - dot(span, towards) ** 2));
  };
  const here = ([a, b]: readonly [LandmarkName, LandmarkName]) => {
    const from = orNull(projectInPicture(camera, landmarks[a]));
    const to = orNull(projectInPicture(camera, landmarks[b]));
    return from && to ? Math.hypot(from.u - to.u, from.v - to.v) : null;
  };
  const [drawnOver, drawnUnder] = [here(over), here(under)];
  return {
    here: drawnOver !== null && drawnUnder ? drawnOver / drawnUnder : null,
    far: far(over) / far(under),
  };
}

/**
 * The direction to the camera in the head's own axes. The head is rigid: its axes follow from
 * where the pose has put the outer eye corners and the nose tip, against where the dimensions put
 * them. The pupils would not do: they go with the gaze.
 */
function seenFrom({ camera, sitter }: PictureInput): FaceMeasures['seenFrom'] {
  const [, restY, restZ] = landmarksFor(sitter.dimensions).pronasale;
  const angle = Math.atan2(restY, restZ);
  const { ectocanthion_left, ectocanthion_right, pronasale } = sitter.landmarks;
  const left = unit(minus(ectocanthion_left, ectocanthion_right));
  const nose = unit(pronasale);
  const square = cross(nose, left);
  const up: Vec3 = [0, 1, 2].map(
    (k) => Math.sin(angle) * (nose[k] ?? 0) + Math.cos(angle) * (square[k] ?? 0),
  ) as [number, number, number];
  const forward = cross(left, up);
  const to = unit(camera.position);
  return {
    turn: Math.atan2(dot(to, left), dot(to, forward)),
    pitch: Math.asin(Math.max(-1, Math.min(1, dot(to, up)))),
  };
}

/** Proportions of one picture. */
export function measureFace(input: PictureInput): FaceMeasures {
  const { camera, sitter } = input;
  const { landmarks } = sitter;
  const distance = metres(Math.hypot(...camera.position));
  const depthOf = (name: LandmarkName | PairedLandmark): Metre =>
    must(depthBefore(place(landmarks, name), camera.position));
  const nose = depthOf('pronasale');
  const ears = depthOf('tragion');
  const earLeft = depthOf('tragion_left');
  const earRight = depthOf('tragion_right');
  const step = (by: number) => orNull(gainPerStep(distance, nose, ears, metres(by)));
  const breadth = ['zygion_left', 'zygion_right'] as const;
  return {
    depth: { nose, ears, earLeft, earRight },
    size: Object.fromEntries(
      Object.entries(SIZED_PARTS).map(([part, name]) => [
        part,
        orNull(sizeAtDepth(distance, depthOf(name))),
      ]),
    ) as Record<SizedPart, number | null>,
    noseToEar: {
      mean: orNull(ratioOf(distance, nose, ears)),
      left: orNull(ratioOf(distance, nose, earLeft)),
      right: orNull(ratioOf(distance, nose, earRight)),
    },
    step: {
      nearer10cm: step(-0.1),
      farther10cm: step(0.1),
      nearer1ft: step(-METRES_PER.ft),
      farther1ft: step(METRES_PER.ft),
    },
    distanceForGain: {
      percent5: orNull(distanceForGain(nose, ears, 0.05)),
      percent10: orNull(distanceForGain(nose, ears, 0.1)),
    },
    noseBreadthToFaceBreadth: drawnRatio(camera, landmarks, ['alare_left', 'alare_right'], breadth),
    faceHeightToFaceBreadth: drawnRatio(camera, landmarks, ['sellion', 'menton'], breadth),
    seenFrom: seenFrom(input),
    noseToLens: metres(Math.hypot(...minus(camera.position, landmarks.pronasale))),
    pupils: {
      here: metres(Math.hypot(...minus(landmarks.pupil_left, landmarks.pupil_right))),
      far: mmToM(sitter.dimensions.interpupillary_distance),
    },
  };
}
