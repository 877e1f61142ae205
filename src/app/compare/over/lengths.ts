import { eyeDepth, pictureShare, project } from '../../../optics/camera';
import type { Camera } from '../../../optics/types';
import type { LandmarkName, Landmarks } from '../../../sitter/types';

/** The lengths shown on a picture: between two landmarks each. */
export const LENGTHS = [
  { id: 'face-breadth', from: 'zygion_right', to: 'zygion_left' },
  { id: 'pupils', from: 'pupil_right', to: 'pupil_left' },
  { id: 'nose-breadth', from: 'alare_right', to: 'alare_left' },
  { id: 'mouth', from: 'cheilion_right', to: 'cheilion_left' },
  { id: 'face-height', from: 'sellion', to: 'menton' },
  { id: 'ear-left', from: 'superaurale_left', to: 'subaurale_left' },
  { id: 'ear-right', from: 'superaurale_right', to: 'subaurale_right' },
] as const satisfies readonly { id: string; from: LandmarkName; to: LandmarkName }[];
export type LengthId = (typeof LENGTHS)[number]['id'];

export interface DrawnLength {
  readonly id: LengthId;
  /** As it is numbered on the picture and in the table, from 1. */
  readonly number: number;
  /** Ends, as shares of the frame from the left and the top. */
  readonly ends: readonly [readonly [number, number], readonly [number, number]];
  /** As drawn, put back to the eye plane: what a rule held at the eyes would read. Metres. */
  readonly drawn: number;
  /** Between the landmarks themselves. Metres. */
  readonly real: number;
}

/** Lengths as the picture draws them, at the scale of the plane through the eyes. */
export function drawnLengths(camera: Camera, landmarks: Landmarks): DrawnLength[] {
  const scale = eyeDepth(camera) / camera.imageDistance;
  const out: DrawnLength[] = [];
  for (const [i, { id, from, to }] of LENGTHS.entries()) {
    const [a, b] = [landmarks[from], landmarks[to]];
    const [pa, pb] = [project(camera, a), project(camera, b)];
    const [sa, sb] = [pictureShare(camera, a), pictureShare(camera, b)];
    if (!pa.ok || !pb.ok || !sa.ok || !sb.ok) continue;
    const onSensor = Math.hypot(pa.value.u - pb.value.u, pa.value.v - pb.value.v);
    out.push({
      id,
      number: i + 1,
      ends: [
        [sa.value.across, sa.value.down],
        [sb.value.across, sb.value.down],
      ],
      drawn: onSensor * scale,
      real: Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]),
    });
  }
  return out;
}
