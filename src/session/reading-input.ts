import type { PictureInput } from '../readings/types';
import type { ResolvedPicture } from './resolve';
import type { Session } from './types';

/** What the readings of a resolved picture are computed from. */
export const readingInput = (
  session: Session,
  resolved: ResolvedPicture,
  sitter: PictureInput['sitter'],
): PictureInput => ({
  camera: resolved.camera,
  format: resolved.format,
  sitter,
  lens: resolved.lens,
  cutFromFocal: resolved.cut === null ? null : resolved.focal,
  fNumber: resolved.fNumber,
  focusDistance: resolved.focusDistance,
  backdropDistance: session.room.backdrop,
  printHeight: session.printHeight,
  megapixels: session.body.megapixels,
});
