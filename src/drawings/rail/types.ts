/** What the rail is told. Lengths are metres. */
import type { Units } from '../../readings/quantities';
import type { Letter } from '../../session/types';
import type { ProfileOutline } from '../profile/outline';
import type { ScaleKind } from '../scale';
import type { Limits } from '../steps';
import type { MeasureText } from '../text-width';
import type { FrameSpan } from './sight';

export interface RailPicture extends Limits {
  readonly letter: Letter;
  /** Straight from the eyes to the entrance pupil; [min, max] are the handle's limits. */
  readonly standpoint: number;
  /** Entrance pupil above (+) or below (-) the eyes. */
  readonly cameraHeight: number;
  /** Where its frame's edges cross the eye plane (see frameAtEyePlane). */
  readonly frame: FrameSpan;
  /** Why the handle cannot go on, when it stands at a limit. One sentence. */
  readonly reason?: string | undefined;
}

export interface RailRoom {
  /** Eyes to the backdrop. */
  readonly backdrop: number;
  /** Eyes to the wall behind the backdrop; absent: the backdrop hangs on that wall. */
  readonly rearWall?: number | undefined;
  /** Eyes to the wall behind the camera. */
  readonly cameraWall: number;
  /** Kept free before that wall for the photographer. */
  readonly behindCamera: number;
}

/** A lens's nearest focus as a distance from the eyes to the entrance pupil. */
export interface FocusMark {
  readonly distance: number;
  /** The picture that uses the lens; absent: a lens of the kit that none uses. */
  readonly letter?: Letter | undefined;
  /** The lens's name; needed when no picture uses it. */
  readonly lens?: string | undefined;
}

/** Nearest focuses at one place. */
export interface FocusGroup {
  readonly distance: number;
  readonly letters: readonly Letter[];
  readonly lenses: readonly string[];
}

export interface RailContent {
  readonly units: Units;
  readonly scale: ScaleKind;
  /** The sitter in profile (see profileOutline); null while it is being built. */
  readonly figure: ProfileOutline | null;
  readonly room: RailRoom;
  readonly pictures: readonly RailPicture[];
  readonly focus: readonly FocusMark[];
}

/** The sheet it is drawn on. */
export interface RailSheet {
  /** Width in CSS pixels; one unit of the drawing is one CSS pixel. */
  readonly width: number;
  /** The root font size in CSS pixels: texts and rows follow it. */
  readonly rem: number;
  /** Greatest height of the room's drawing in CSS pixels. */
  readonly maxBand?: number | undefined;
  readonly measure: MeasureText;
}
