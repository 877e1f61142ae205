/** A picture's caption in words, for the strip below it and for the still. Pure. */
import { formatAngle, formatFNumber, formatFocal, formatLength } from '../../readings/format';
import type { Session } from '../../session/types';
import { words } from '../words';
import type { Shown } from './shown';

export interface CaptionWords {
  /** Who is in it, where the session has two people. */
  readonly who: string | null;
  readonly distance: string;
  readonly focal: string;
  readonly frame: string;
  readonly aperture: string;
  /** The angle at which the camera sees the face, when it is not level with it. */
  readonly angle: string | null;
}

/** Less than this is shown as 0.0 degrees. */
const LEVEL = (0.05 * Math.PI) / 180;

export function captionWords({ resolved, subjects }: Shown, units: Session['units']): CaptionWords {
  const { faceAngle } = resolved;
  const names = subjects.flatMap(({ name }) => name ?? []);
  return {
    who: names.length === 0 ? null : words.compare.list(names),
    distance: formatLength(resolved.standpoint, units, 'distance'),
    focal: formatFocal(resolved.focal),
    frame: formatLength(resolved.frameHeight, units, 'frame'),
    aperture: formatFNumber(resolved.fNumber),
    angle:
      Math.abs(faceAngle) < LEVEL
        ? null
        : words.compare.angle(formatAngle(Math.abs(faceAngle)), faceAngle > 0 ? 'above' : 'below'),
  };
}
