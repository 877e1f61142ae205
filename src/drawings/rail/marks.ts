/** Brackets of the drawing: the frame at the eyes and the nearest focuses. */
import type { Letter } from '../../session/types';
import type { Point } from '../geometry';
import type { RailGround } from './ground';
import { onEyePlane } from './sight';
import type { FocusGroup, FocusMark, RailContent } from './types';

/** A frame's bracket at the eyes; without a letter it is every picture's. */
export interface FramePlace {
  readonly letter: Letter | null;
  readonly points: readonly [Point, Point];
}

/** Frames that differ by less than this are drawn as one, metres. */
const SAME_FRAME = 0.0005;
/** Nearest focuses closer than this share a mark, metres. */
const SAME_FOCUS = 0.005;

/** Whether all pictures have one frame at the eyes. */
export function sharesFrame({ pictures }: RailContent): boolean {
  const [first, ...others] = pictures;
  return others.every(
    ({ frame, cameraHeight }) =>
      first !== undefined &&
      Math.abs(frame.top - first.frame.top) < SAME_FRAME &&
      Math.abs(frame.bottom - first.frame.bottom) < SAME_FRAME &&
      cameraHeight === first.cameraHeight,
  );
}

/** The frames' brackets: one where all agree, else one for each picture. */
export function placeFrames(content: RailContent, ground: RailGround): FramePlace[] {
  const shared = sharesFrame(content);
  const shown = shared ? content.pictures.slice(0, 1) : content.pictures;
  return shown.map((picture) => ({
    letter: shared ? null : picture.letter,
    points: [
      ground.place(onEyePlane(picture, picture.frame.top)),
      ground.place(onEyePlane(picture, picture.frame.bottom)),
    ],
  }));
}

/** Nearest focuses up to the farthest distance shown, those at one place together. */
export function gatherFocus(focus: readonly FocusMark[], farthest: number): FocusGroup[] {
  const groups: { distance: number; letters: Letter[]; lenses: string[] }[] = [];
  const inside = focus.filter(({ distance }) => distance > 0 && distance < farthest);
  for (const { distance, letter, lens } of [...inside].sort((a, b) => a.distance - b.distance)) {
    const last = groups.at(-1);
    const group =
      last && distance - last.distance < SAME_FOCUS
        ? last
        : { distance, letters: [] as Letter[], lenses: [] as string[] };
    if (group !== last) groups.push(group);
    if (letter) group.letters.push(letter);
    else if (lens) group.lenses.push(lens);
  }
  return groups;
}
