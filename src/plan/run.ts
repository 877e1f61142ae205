/**
 * The camera's axis through a room, and where the backdrop hangs on it. Metres, floor coordinates: x along
 * the room's length from the end wall, y across its width. The sitter looks along the axis towards the
 * camera, so the sitter's left is the axis turned by +90 degrees.
 */

export const AXES = ['along', 'across', 'diagonal'] as const;
export type AxisName = (typeof AXES)[number];

/** What of a room the axis hangs on. */
export interface RoomPlan {
  readonly length: number;
  readonly width: number;
  /**
   * along: from (0, width / 2 + aside) in +x; across: from (length / 2 - aside, 0) in +y; diagonal: from the
   * corner (0, 0) towards (length, width), shifted by aside.
   */
  readonly axis: AxisName;
  /** The axis beside the middle, to the sitter's left. */
  readonly aside: number;
  readonly backdrop: {
    /** Along the axis from the wall, or from the corner's foot on it. */
    readonly offWall: number;
    readonly width: number;
  };
  /** Eyes to the backdrop. */
  readonly sitterBefore: number;
}

export type FloorPoint = readonly [x: number, y: number];

/** The axis; what lies on it is told by its way from the origin. */
export interface Axis {
  readonly origin: FloorPoint;
  /** Unit vector. */
  readonly towards: FloorPoint;
  /** Where it comes into the room and where it meets the wall behind the camera. */
  readonly enters: number;
  readonly leaves: number;
  /** Way from the axis to the walls, square to it, at a place on it. */
  readonly reach: (along: number) => { readonly left: number; readonly right: number };
}

export function axisOf({ length, width, axis, aside }: Omit<RoomPlan, 'backdrop'>): Axis {
  if (axis !== 'diagonal') {
    const [run, across] = axis === 'along' ? [length, width] : [width, length];
    const reach = { left: across / 2 - aside, right: across / 2 + aside };
    return {
      origin: axis === 'along' ? [0, width / 2 + aside] : [length / 2 - aside, 0],
      towards: axis === 'along' ? [1, 0] : [0, 1],
      enters: 0,
      leaves: run,
      reach: () => reach,
    };
  }
  const whole = Math.hypot(length, width);
  const [steep, flat] = [length / width, width / length];
  return {
    origin: [(-aside * width) / whole, (aside * length) / whole],
    towards: [length / whole, width / whole],
    enters: Math.max(aside * flat, -aside * steep),
    leaves: whole + Math.min(aside * flat, -aside * steep),
    reach: (along) => ({
      left: Math.min(along * steep, (whole - along) * flat) - aside,
      right: Math.min(along * flat, (whole - along) * steep) + aside,
    }),
  };
}

/** Where the axis runs `along` from its origin and `left` beside it. */
export const floorPoint = (
  { origin, towards: [x, y] }: Axis,
  along: number,
  left: number,
): FloorPoint => [origin[0] + along * x - left * y, origin[1] + along * y + left * x];

/** Sitter to backdrop and sitter to the wall behind the camera are at least so. */
export const LEAST_BEFORE = 0.3;
export const LEAST_TO_WALL = 0.5;

export interface Hung {
  /** Where on the axis the backdrop hangs. */
  readonly along: number;
  /** So much of its width as the walls leave. */
  readonly width: number;
  /** By how much it had to come forward from where it was asked, so that its ends clear the walls. */
  readonly forward: number;
}

/**
 * The backdrop, middle on the axis, inside the walls: on a diagonal a wide one must come forward out of the
 * corner. Where it cannot come so far and leave place for sitter and camera, or is wider than the room,
 * it is narrower.
 */
export function hangBackdrop(room: RoomPlan): Hung {
  const { offWall, width } = room.backdrop;
  const axis = axisOf(room);
  const farthest = axis.leaves - LEAST_BEFORE - LEAST_TO_WALL;
  const asked = Math.min(offWall, farthest);
  let along = asked;
  if (room.axis === 'diagonal') {
    const needed = Math.max(
      ((room.aside + width / 2) * room.width) / room.length,
      ((width / 2 - room.aside) * room.length) / room.width,
    );
    // Past the middle the walls close in again.
    const widest = Math.hypot(room.length, room.width) / 2;
    along = Math.max(asked, Math.min(needed, farthest, widest));
  }
  const { left, right } = axis.reach(along);
  return {
    along,
    width: Math.max(0, Math.min(width, 2 * left, 2 * right)),
    forward: along - asked,
  };
}

/** The room as the camera's axis meets it, all from the eyes. */
export interface Run {
  readonly backdrop: number;
  /** To the wall behind the camera. */
  readonly cameraWall: number;
}

export function runThrough(room: RoomPlan): Run {
  const backdrop = room.sitterBefore;
  return { backdrop, cameraWall: axisOf(room).leaves - hangBackdrop(room).along - backdrop };
}

/** Rounds of the fixed point below; each at least halves the error. */
const ROUNDS = 60;
const SETTLED = 1e-12;

/**
 * Length and width of the room whose wall behind the camera is `cameraWall` from the eyes: the side along
 * the axis changes; on a diagonal both do, in proportion.
 */
export function sidesForCameraWall(
  room: RoomPlan,
  cameraWall: number,
): Pick<RoomPlan, 'length' | 'width'> {
  const { length, width, axis } = room;
  const change = cameraWall - runThrough(room).cameraWall;
  switch (axis) {
    case 'along':
      return { length: length + change, width };
    case 'across':
      return { length, width: width + change };
    case 'diagonal': {
      // One step, but where the paper hangs by the middle of the room and goes with it.
      let now = { length, width };
      for (let i = 0, left = change; i < ROUNDS && Math.abs(left) > SETTLED; i++) {
        const times = 1 + left / Math.hypot(now.length, now.width);
        now = { length: now.length * times, width: now.width * times };
        left = cameraWall - runThrough({ ...room, ...now }).cameraWall;
      }
      return now;
    }
  }
}
