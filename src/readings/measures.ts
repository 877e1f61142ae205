/** Every number of one picture, in SI, before any words. */
import { viewAngle } from '../optics/camera';
import type { Vec3 } from '../optics/types';
import { type FaceMeasures, measureFace } from './measure-face';
import { type LensMeasures, measureLens } from './measure-lens';
import { measureScene, type SceneMeasures } from './measure-scene';
import { type PersonalDistance, personalDistance } from './proxemics';
import type { PictureInput } from './types';
import type { Visibility } from './visibility';

export interface Measures {
  readonly lens: LensMeasures;
  readonly face: FaceMeasures;
  readonly scene: SceneMeasures;
  /** Front of the chosen lens to the nose tip; negative when it would pass the tip; null without a lens. */
  readonly clearance: number | null;
  /** Angle of the line from the eyes to the lens above (+) or below (-) level, radians. */
  readonly viewAngle: number;
  readonly personalDistance: PersonalDistance;
  /** Null until the rays have been cast. */
  readonly visibility: Visibility | null;
}

/**
 * All measures of one picture. Visible shares cost more than all the rest and are passed in
 * when they are there (see `visibility`).
 * @throws RangeError when the f-number or the focus distance contradict the camera.
 */
export function measure(input: PictureInput, visibility: Visibility | null = null): Measures {
  const lens = measureLens(input);
  const face = measureFace(input);
  return {
    lens,
    face,
    scene: measureScene(input, lens),
    clearance: clearance(input, lens),
    viewAngle: viewAngle(input.camera),
    personalDistance: personalDistance(lens.standpoint),
    visibility,
  };
}

/** The front of the lens lies on the optical axis, the lens's length before the sensor mark. */
function clearance({ camera, lens, sitter }: PictureInput, figures: LensMeasures): number | null {
  if (!lens) return null;
  const forward = lens.length - (figures.sensorMark - figures.focusDistance);
  const front: Vec3 = [
    camera.position[0],
    camera.position[1] + forward * Math.sin(camera.tilt),
    camera.position[2] - forward * Math.cos(camera.tilt),
  ];
  const nose = sitter.landmarks.pronasale;
  const gap = Math.hypot(front[0] - nose[0], front[1] - nose[1], front[2] - nose[2]);
  return front[2] < nose[2] ? -gap : gap;
}
