import type { PictureInput } from '../readings/types';
import type { Placed } from './cast';
import { bodyOf, runOf } from './kit';
import { LIMITS } from './limits';
import type { ResolvedPicture } from './resolve';
import type { Session } from './types';

type Measured = PictureInput['sitter'];

/** The camera as somebody beside the first one has it: the same, from that one's eyes. */
function cameraOf({ camera }: ResolvedPicture, { at }: Placed<Measured>): PictureInput['camera'] {
  const [x, y, z] = camera.position;
  return { ...camera, position: [x - at[0], y - at[1], z - at[2]] };
}

/** Is the camera before somebody's face, and no nearer than any standpoint? */
export const isMeasurable = (resolved: ResolvedPicture, placed: Placed<Measured>): boolean =>
  cameraOf(resolved, placed).position[2] >= LIMITS.standpoint.least;

/** What the readings of somebody in a resolved picture are computed from. */
export function readingInput(
  session: Session,
  resolved: ResolvedPicture,
  placed: Placed<Measured>,
): PictureInput {
  return {
    camera: cameraOf(resolved, placed),
    format: resolved.format,
    sitter: placed.sitter,
    lens: resolved.lens,
    cutFromFocal: resolved.cut === null ? null : resolved.focal,
    fNumber: resolved.fNumber,
    focusDistance: resolved.focusDistance,
    backdropDistance: Math.max(LIMITS.backdrop.least, runOf(session.room).backdrop + placed.at[2]),
    printHeight: session.printHeight,
    megapixels: bodyOf(session).megapixels,
  };
}
