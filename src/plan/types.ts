/**
 * What the plan is asked and what it answers. Lengths in metres, angles in radians. Everything stands in
 * the frame of the first person of a framing: origin midway between the pupils, +X to the sitter's left,
 * +Y up, +Z along the camera's axis towards the camera. A group's origin is the middle of its front row, at the
 * eye height of whoever is nearest to it. The axis is level; `s` is the depth of the eye
 * plane along it, `d` the standpoint distance: d^2 = s^2 + height^2.
 */
import type { Lens, Orientation, SensorFormat, Vec3 } from '../optics/types';

/** One body with one lens on it. */
export interface PlanCamera {
  /** Unique: body id and lens id. */
  readonly id: string;
  readonly bodyName: string;
  readonly lensId: string;
  readonly lensName: string;
  readonly format: SensorFormat;
  readonly lens: Lens;
  /** Marks that may be set where they are not the lens's own: a lens of the same build, but longer or shorter. */
  readonly marks?: readonly [shortest: number, longest: number];
}

/** A thing on the floor of the room, or the ground a door sweeps. */
export interface PlanObstacle {
  readonly id: string;
  readonly name: string;
  readonly kind: 'thing' | 'door';
  /** Convex, in floor coordinates (x, z) of the sitter's frame. */
  readonly outline: readonly (readonly [x: number, z: number])[];
  /** Height above the floor; a door's sweep counts as floor alone. */
  readonly height: number;
}

/** The room as the camera's axis cuts it. */
export interface PlanRoom {
  /** Heights in the sitter's frame: the floor is negative. */
  readonly floor: number;
  readonly ceiling: number;
  /** Walls as a convex outline in floor coordinates (x, z); from the corner a diagonal axis comes out of. */
  readonly walls: readonly (readonly [x: number, z: number])[];
  readonly backdrop: {
    /** Eyes to the backdrop, positive. */
    readonly behind: number;
    /** Its edges, x in the sitter's frame: right is negative. */
    readonly left: number;
    readonly right: number;
    /** Upper edge; it reaches the floor and runs out under the sitter. */
    readonly top: number;
  };
  /** Where the axis meets the wall behind the camera, z. */
  readonly wallBehindCamera: number;
  /** Kept free behind the sensor mark for the photographer. */
  readonly behindCamera: number;
  readonly obstacles: readonly PlanObstacle[];
}

/** Somebody in a framing: landmarks in the frame of the first person. */
export interface PlanPerson {
  readonly id: string;
  readonly name: string;
  /** Midway between the pupils. */
  readonly eyes: Vec3;
  readonly pupils: readonly [right: Vec3, left: Vec3];
  readonly noseTip: Vec3;
  /** Tragion of each ear. */
  readonly ears: readonly [right: Vec3, left: Vec3];
  readonly crown: Vec3;
  readonly chin: Vec3;
  /** Half the body's greatest breadth as it is posed, about its own eyes' x. */
  readonly halfBreadth: number;
  /** Row of a group, 0 nearest to the camera. */
  readonly row: number;
}

/** A picture that is wanted. */
export interface Wanted {
  readonly id: string;
  readonly name: string;
  readonly orientation: Orientation;
  /** Place of the first person's eyes: share of the frame height from the top, of the width from the left. */
  readonly eyesAt: number;
  readonly eyesAcross: number;
  /**
   * Frame height at the first person's eye plane: a fixed one, or `null` for a group, whose frame grows
   * until everybody is in it, from crown to chin and as broad as they are, with `margin` (a share of the
   * frame's width) at each side; the places of the eyes above leave room for the chest.
   */
  readonly frameHeight: number | null;
  /** Points that a growing frame reaches down to besides the chins: a framing's lower edge under each of the front row. */
  readonly downTo?: readonly Vec3[];
  readonly margin: number;
  /** Entrance pupil above (+) or below (-) the first person's eyes. */
  readonly cameraHeight: number;
  /** The first is the one the distances are taken to. */
  readonly people: readonly [PlanPerson, ...PlanPerson[]];
  /** The room from this first person's eyes, where they are not as high as those the request's is told from. */
  readonly room?: PlanRoom;
}

export const SHARP = ['eyes', 'nose-to-ears', 'rows'] as const;
export type Sharp = (typeof SHARP)[number];

/** What the photographer asks of every picture; null is not asked. */
export interface Asked {
  /** Greatest nose-to-ear ratio less 1, of either ear. */
  readonly noseGain: number | null;
  /** Greatest difference in drawn head size between the nearest and the farthest row, as a share. */
  readonly rowDifference: number | null;
  /** Greatest stretch of a face: sec t - 1, t the angle between the axis and the line to its eyes. */
  readonly stretch: number | null;
  /** Least standpoint distance to anybody's eyes. */
  readonly personal: number | null;
  /** Least way between the lens's front and the nearest nose. */
  readonly clearance: number | null;
  readonly sharp: Sharp | null;
  /** The apertures that may be used. */
  readonly fNumber: readonly [widest: number, smallest: number];
  /** Least blur disc of the backdrop as a share of the picture's height. */
  readonly softness: number | null;
  /** The backdrop shows at least this much beyond the frame at each side, metres on it; null: it need not fill it. */
  readonly backdropMargin: number | null;
}

/** Everything that can end an interval of standpoints. */
export const CONDITIONS = [
  'lens-shortest',
  'lens-longest',
  'nearest-focus',
  'clearance',
  'personal',
  'nose-gain',
  'row-difference',
  'stretch',
  'sharpness',
  'softness',
  'sharp-and-soft',
  'aperture',
  'backdrop-sides',
  'backdrop-top',
  'ceiling',
  'camera-height',
  'wall-behind-camera',
  'obstacle-in-picture',
  'obstacle-at-camera',
] as const;
export type ConditionName = (typeof CONDITIONS)[number];

/** A condition and, where it stands for one of several things, which (obstacle or person id). */
export interface Condition {
  readonly name: ConditionName;
  readonly of?: string;
}

/** Standpoint distances that satisfy everything, and what ends them at each side. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly fromBy: Condition;
  readonly toBy: Condition;
  /** Focal lengths to set at both ends; between them the mark grows with the distance. */
  readonly marks?: readonly [from: number, to: number];
}

/** All that is to be set for one picture. */
export interface Setting {
  /** Standpoint distance. */
  readonly standpoint: number;
  /** Depth of the eye plane along the axis. */
  readonly depth: number;
  readonly frameHeight: number;
  readonly frameWidth: number;
  /** Focal length as it acts, and as marked on the lens. */
  readonly focal: number;
  readonly mark: number;
  readonly fNumber: number;
  /** Plane in focus along the axis from the entrance pupil; for rows it is theirs, not the eyes'. */
  readonly focus: number;
  /** From the sensor mark to the plane in focus. */
  readonly tape: number;
  /** Entrance pupil above the floor. */
  readonly lensHeight: number;
  /** Nearest and farthest sharp depth from the entrance pupil; the far one may be infinite. */
  readonly sharp: readonly [near: number, far: number];
  /** Figures the reasons speak of. */
  readonly noseGain: number;
  /** From the sensor mark to where the photographer’s shoulders meet a wall. */
  readonly toWall: number;
  readonly noseClearance: number;
  /** Of the backdrop, width and upper edge above the floor. */
  readonly backdropUsed: { readonly width: number; readonly top: number };
  /** Blur disc of the backdrop as a share of the picture's height. */
  readonly softness: number;
  readonly stretch: number;
  readonly rowDifference: number;
}

/** A single change of the request; values are the new ones, not the differences. */
export type Change =
  | { readonly change: 'room-length'; readonly by: number }
  | { readonly change: 'focal'; readonly to: number; readonly atLeast: boolean }
  | { readonly change: 'f-number'; readonly to: number; readonly atLeast: boolean }
  | { readonly change: 'sitter-to-backdrop'; readonly to: number }
  | { readonly change: 'backdrop-width'; readonly to: number }
  | { readonly change: 'backdrop-height'; readonly to: number }
  | { readonly change: 'camera-height'; readonly to: number }
  | { readonly change: 'eyes-at'; readonly to: number }
  | { readonly change: 'frame-height'; readonly to: number; readonly atLeast: boolean }
  | { readonly change: 'nose-gain'; readonly to: number }
  | { readonly change: 'other-camera'; readonly camera: string }
  | { readonly change: 'drop-demand'; readonly demand: keyof Asked }
  | { readonly change: 'move-obstacle'; readonly obstacle: string };

/** A change that was computed again and works. */
export interface Remedy {
  readonly change: Change;
  /** What it opens. */
  readonly span: Span;
  /** Rank: how much is changed, as a share of the present value; smaller comes first. */
  readonly effort: number;
}

/** One framing with one camera. */
export interface Verdict {
  readonly wanted: string;
  readonly camera: string;
  /** Nearest first; empty when nothing works. */
  readonly spans: readonly Span[];
  /** Where the lens reaches, whatever else fails. */
  readonly reach: readonly Span[];
  readonly recommended: Setting | null;
  /** What stands in the way where nothing works: the conditions of which no two can be met together. */
  readonly conflict: readonly Condition[];
}

/** One place for the sitting with one camera. */
export interface OneStandpoint {
  readonly camera: string;
  readonly standpoint: number;
  /** Framings taken from there, and those that are not. */
  readonly covers: readonly string[];
  readonly misses: readonly string[];
  /** For each covered framing: nose-to-ear gain here less that at its own recommended place. */
  readonly lost: Readonly<Record<string, number>>;
}

export interface PlanRequest {
  readonly cameras: readonly PlanCamera[];
  readonly room: PlanRoom;
  readonly wanted: readonly Wanted[];
  readonly asked: Asked;
  /** Widths that backdrops come in; a wider one is offered from these first. */
  readonly backdropWidths?: readonly number[];
}

export interface PlanResult {
  readonly verdicts: readonly Verdict[];
  /** Best first. */
  readonly oneStandpoint: readonly OneStandpoint[];
}
