import { notPositive, ok } from './result';
import type { Result } from './types';
import { type Metre, metres } from './units';

/**
 * Distance from which a print (screen, projection) of height P shows the camera's own
 * perspective: d P / H for frame height H at the eye plane, metres. Every angle at the viewer's
 * eye then equals the angle at the lens.
 */
export function viewingDistance(
  distance: Metre,
  printHeight: Metre,
  frameHeight: Metre,
): Result<Metre> {
  return (
    notPositive(distance, printHeight, frameHeight) ??
    ok(metres((distance * printHeight) / frameHeight))
  );
}
