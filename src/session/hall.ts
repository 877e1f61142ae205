/** The room as the pictures show it: its walls about the camera's axis, and the backdrop in it. Metres. */
import { axisOf, hangBackdrop } from '../plan/run';
import type { Room } from './types';

/** A sheet that hangs in the room by itself, its middle on the axis. */
export interface Sheet {
  readonly width: number;
  /** Upper edge above the floor. */
  readonly top: number;
}

/** Two walls that meet behind the sitter: how far they run off the axis for each metre along it. */
export interface Corner {
  readonly left: number;
  readonly right: number;
}

/** Told from where the axis meets the end wall, or from the foot of the corner on it. */
export interface Hall {
  /** Axis to the walls at the sitter's left and right; in a room seen from a corner, at their farthest. */
  readonly left: number;
  readonly right: number;
  readonly height: number;
  readonly depth: number;
  /** From the end wall to the backdrop; 0 where the wall itself is the backdrop. */
  readonly behind: number;
  /** Null where the backdrop is as wide and as high as the room: it is the end wall then. */
  readonly sheet: Sheet | null;
  /** Null where one wall stands square to the axis. */
  readonly corner: Corner | null;
}

/** A sheet that hangs nearer to the wall is drawn so far off it: before the skirting. */
const OFF_SKIRTING = 0.03;

/** Narrower or lower by less, the backdrop is as good as the wall. */
const AS_GOOD_AS = 0.005;

export function hallOf(room: Room): Hall {
  const { length, width, ceiling: height } = room;
  const axis = axisOf(room);
  const { along, width: hung } = hangBackdrop(room);
  const at = axis.reach(along);
  const sheet = { width: hung, top: Math.min(room.backdrop.top, height) };
  if (hung > at.left + at.right - AS_GOOD_AS && sheet.top > height - AS_GOOD_AS) {
    return { ...at, height, depth: axis.leaves - along, behind: 0, sheet: null, corner: null };
  }
  if (room.axis !== 'diagonal') {
    const behind = Math.max(along, OFF_SKIRTING);
    return { ...at, height, depth: axis.leaves, behind, sheet, corner: null };
  }
  // The corners beside the diagonal lie by the height of the triangle off it.
  const farthest = (length * width) / Math.hypot(length, width);
  return {
    left: farthest - room.aside,
    right: farthest + room.aside,
    height,
    depth: axis.leaves,
    behind: along,
    sheet,
    corner: { left: length / width, right: width / length },
  };
}
