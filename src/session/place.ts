/** Where a picture's camera stands and looks, brought to the nearest place that can see the eyes. */
import { cameraAt, eyeDepth, standpointDistance } from '../optics/camera';
import type { Camera, Refusal, SensorSides } from '../optics/types';
import { type Metre, metres, radians } from '../optics/units';
import { GREATEST_HEIGHT } from '../plan/conditions';
import type { Picture } from './types';

/** The eyes lie no farther off the optical axis than this, or no frame can be placed on them. */
const GREATEST_OFF_AXIS = Math.PI / 3;

export interface Place {
  readonly standpoint: Metre;
  readonly position: Camera['position'];
  readonly tilt: Camera['tilt'];
  /** Depth of the eyes along the axis. */
  readonly depth: Metre;
  /** What of the request could not be met. */
  readonly refusals: readonly Refusal[];
}

const nearest = (value: number, size: number): number => Math.max(-size, Math.min(size, value));

export function placeOf(
  picture: Pick<Picture, 'standpoint' | 'cameraHeight' | 'tilt'>,
  sensor: SensorSides,
): Place {
  const refusals: Refusal[] = [];
  const standpoint = metres(picture.standpoint);
  const highest = standpoint * GREATEST_HEIGHT;
  const height = nearest(picture.cameraHeight, highest);
  if (height !== picture.cameraHeight) {
    refusals.push({
      ok: false,
      reason: 'camera-too-high',
      limit: highest,
      asked: Math.abs(picture.cameraHeight),
    });
  }
  const down = Math.asin(height / standpoint);
  const offAxis = nearest(picture.tilt + down, GREATEST_OFF_AXIS);
  if (offAxis !== picture.tilt + down) {
    refusals.push({
      ok: false,
      reason: 'behind-camera',
      limit: GREATEST_OFF_AXIS,
      asked: Math.abs(picture.tilt + down),
    });
  }
  // Place and axis do not hang on the lens: any focal length shows them.
  const probe = cameraAt({
    standpoint,
    height: metres(height),
    tilt: radians(offAxis - down),
    focal: metres(standpoint / 100),
    sensor,
  });
  if (!probe.ok) throw new RangeError(`standpoint ${standpoint}: ${probe.reason}`);
  const { position, tilt } = probe.value;
  return {
    standpoint: standpointDistance(probe.value),
    position,
    tilt,
    depth: eyeDepth(probe.value),
    refusals,
  };
}
