/** What differs between two pictures: one thing teaches, two confuse, and the page says so. */
import type { ResolvedPicture } from './resolve';

export type Difference = 'sitter' | 'standpoint' | 'camera-height' | 'tilt' | 'crop';

const NAMES: Readonly<Record<Difference, string>> = {
  sitter: 'the sitter',
  standpoint: 'the standpoint',
  'camera-height': 'the camera height',
  tilt: 'the tilt',
  crop: 'the crop',
};

/** Smaller differences are not told apart in a picture: metres, radians, share of the held size. */
const SAME = { distance: 0.0005, angle: 0.0005, size: 0.002 } as const;

const differ = (a: number, b: number, same: number): boolean => Math.abs(a - b) > same;

/** Do the crops match? By the session's hold where both follow it, else by frame height. */
function cropsDiffer(a: ResolvedPicture, b: ResolvedPicture): boolean {
  if (a.followsCrop && b.followsCrop) return false;
  return differ(a.frameHeight / b.frameHeight, 1, SAME.size);
}

/** All that differs between the views of two pictures; aperture, which no view hangs on, apart. */
export function differences(a: ResolvedPicture, b: ResolvedPicture): readonly Difference[] {
  const found: Difference[] = [];
  if (a.of[0] !== b.of[0]) found.push('sitter');
  if (differ(a.standpoint, b.standpoint, SAME.distance)) found.push('standpoint');
  if (differ(a.camera.position[1], b.camera.position[1], SAME.distance)) {
    found.push('camera-height');
  }
  if (differ(a.camera.tilt, b.camera.tilt, SAME.angle)) found.push('tilt');
  if (cropsDiffer(a, b)) found.push('crop');
  return found;
}

/** "Two things differ: the standpoint and the camera height." Null when at most one does. */
export function differenceSentence(found: readonly Difference[]): string | null {
  if (found.length < 2) return null;
  const names = found.map((each) => NAMES[each]);
  const count = ['Two', 'Three', 'Four', 'Five'][found.length - 2];
  return `${count} things differ: ${names.slice(0, -1).join(', ')} and ${names.at(-1)}.`;
}
