/** Limits that are no lens's own: where the camera stands, what frame it can take, the room. */
import { focusForFrame } from '../optics/framing';
import { depthBefore } from '../optics/perspective';
import type { Lens, Refusal } from '../optics/types';
import type { Metre } from '../optics/units';
import type { Sitter } from '../sitter/types';
import type { RoomRun } from './kit';
import type { Asked } from './lens-fit';
import { type Limit, limitFrom, type Remedy } from './limit';
import type { Place } from './place';
import type { View } from './view';

const placeLimit = (refusal: Refusal, place: Place): Limit =>
  limitFrom(refusal, null, [
    refusal.reason === 'camera-too-high'
      ? { change: 'camera-height', value: place.position[1], atLeast: false }
      : { change: 'tilt', value: place.tilt, atLeast: false },
  ]);

/** What place and view asked too much of. `frame` is the smallest frame height that would do. */
export function viewLimits(place: Place, view: View, asked: Asked, frame: Metre): Limit[] {
  const limits = place.refusals.map((refusal) => placeLimit(refusal, place));
  if (view.refusal === null) return limits;
  const remedies: Remedy[] = [{ change: 'focal', value: view.longest, atLeast: false }];
  const focus = focusForFrame(frame, view.wantedFocal, asked.sensorHeight);
  if (focus.ok) {
    remedies.push({
      change: 'standpoint',
      value: focus.value * asked.standpointPerFocus,
      atLeast: true,
    });
  }
  return [...limits, limitFrom(view.refusal, null, remedies)];
}

/**
 * The wall behind the photographer and the nose before the lens. A step of the standpoint moves
 * the sensor by more than itself while the crop is held, since the lens grows with it.
 */
export function roomLimits(
  place: Place,
  asked: Asked,
  tape: Metre,
  lens: Lens | null,
  room: RoomRun,
  sitter: Sitter,
): Limit[] {
  const found: Limit[] = [];
  const stepPerMove = asked.isFocalFixed ? 1 : asked.focus / tape;
  const stand = (by: number, atLeast: boolean) => [
    { change: 'standpoint' as const, value: place.standpoint + by * stepPerMove, atLeast },
  ];
  const sensorAt = place.position[2] + (tape - asked.focus) * Math.cos(place.tilt);
  const farthest = room.cameraWall - room.behindCamera;
  if (sensorAt > farthest) {
    found.push({
      reason: 'no-room',
      limit: farthest,
      asked: sensorAt,
      lens: null,
      remedies: stand(farthest - sensorAt, false),
    });
  }
  const nose = depthBefore(sitter.landmarks.pronasale, place.position);
  if (lens && nose.ok) {
    const clearance = tape - lens.length - nose.value;
    if (clearance < 0) {
      found.push({
        reason: 'no-clearance',
        limit: 0,
        asked: clearance,
        lens,
        remedies: stand(-clearance, true),
      });
    }
  }
  return found;
}
