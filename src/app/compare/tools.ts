/** The looking tools: what is drawn over the pictures. Of this visit, not of the session. */
import type { StagePicture } from '../../stage';
import type { Shown } from './shown';
import type { Rects } from './usePictureRects';

export interface Tools {
  readonly outline: boolean;
  readonly landmarks: boolean;
  readonly stretch: boolean;
  readonly blink: boolean;
  /** Everything in one grey: shape without colour. */
  readonly clay: boolean;
  /** Where the wipe stands, share of the width from the left; null when it is off. */
  readonly wipe: number | null;
}
export const NO_TOOLS: Tools = {
  outline: false,
  landmarks: false,
  stretch: false,
  blink: false,
  clay: false,
  wipe: null,
};

/** The picture that is compared with the i-th: the next one, the last with the first. */
export const otherOf = (pictures: readonly Shown[], i: number): Shown | null =>
  pictures.length < 2 ? null : (pictures[(i + 1) % pictures.length] as Shown);

/** What hangs where: each picture, or by blink and wipe the other one in its place. */
export function hangPictures(
  pictures: readonly Shown[],
  rects: Rects,
  tools: Tools,
  blinked: boolean,
): StagePicture[] {
  return pictures.flatMap((shown, i) => {
    const rect = rects[shown.letter];
    if (!rect) return [];
    const other = otherOf(pictures, i);
    const seen = blinked && other ? other : shown;
    const wiped =
      tools.wipe !== null && other
        ? {
            second: {
              camera: other.resolved.camera,
              from: tools.wipe,
              sitters: other.company,
            },
          }
        : {};
    const { resolved, company } = seen;
    return [{ letter: shown.letter, camera: resolved.camera, sitters: company, rect, ...wiped }];
  });
}
