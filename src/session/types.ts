/**
 * The one document. Plain JSON: lengths in metres, angles in radians, aperture as f-number.
 * Everything on screen is a pure function of it; it is edited by the named actions alone.
 */
import type { Orientation } from '../optics/types';
import type { RoomPlan } from '../plan/run';
import type { Asked } from '../plan/types';
import type { Colours, DimensionName, Looks, Pose } from '../sitter/types';
import type { Handout } from './handout';
import type { Light } from './light';

export const SESSION_VERSION = 4;
export const LETTERS = ['A', 'B', 'C', 'D'] as const;
export type Letter = (typeof LETTERS)[number];

export const PERSON_IDS = ['1', '2'] as const;
export type PersonId = (typeof PERSON_IDS)[number];

/** Where the eyes look: into the lens of each picture, straight out of the face, or turned in the head. */
export type Gaze =
  | 'lens'
  | 'ahead'
  | {
      /** Positive to the sitter's left, radians. */
      readonly yaw: number;
      /** Positive up. */
      readonly pitch: number;
    };

/** What is changed of the looks that the model gives; the rest stays the model's. */
export type LooksChanges = Readonly<Partial<Omit<Looks, 'colours'>>> & {
  readonly colours?: Readonly<Partial<Colours>>;
};

/** Somebody in front of the camera: one of models/sitters with what is changed. */
export interface Person {
  readonly id: PersonId;
  readonly model: string;
  /** Millimetres. */
  readonly changes: Readonly<Partial<Record<DimensionName, number>>>;
  readonly pose: Pose;
  readonly looks: LooksChanges;
  readonly gaze: Gaze;
}

/** Where the second person's eyes are against the first's when both are in a picture, along the floor. */
export interface Beside {
  /** To the picture's right. */
  readonly right: number;
  /** Towards the camera. */
  readonly forward: number;
}

/** Who is in a picture; standpoint, eye height and crop are taken to the first. */
export type Company = readonly [PersonId, ...PersonId[]];

/** What two pictures have equal when their crops match. */
export type Hold = 'frame-height' | 'head-height' | 'pupil-distance';
/** What stays while a handle moves; the third quantity follows. */
export type Kept = 'crop' | 'lens' | 'standpoint';

/**
 * How a picture gets its view from its standpoint:
 * crop: the session's crop, by whatever focal length that needs;
 * lens: a fixed focal length, the crop follows;
 * cut: the session's crop, cut out of the wider picture of a fixed focal length ("stay back and crop").
 */
export type View =
  | { readonly by: 'crop' }
  | { readonly by: 'lens'; readonly focal: number }
  | { readonly by: 'cut'; readonly focal: number };

export interface Picture {
  readonly letter: Letter;
  readonly of: Company;
  /** Straight distance from the entrance pupil to the point midway between the pupils. */
  readonly standpoint: number;
  readonly view: View;
  readonly fNumber: number;
  /** Entrance pupil above (+) or below (-) the sitter's eyes. */
  readonly cameraHeight: number;
  /** Axis above (+) or below (-) level. */
  readonly tilt: number;
  /** A lens of the kit that must do it, or null for whichever of the kit can. */
  readonly lens: string | null;
}

export interface Crop {
  readonly hold: Hold;
  /**
   * Frame height at the eye plane, metres. It is what hold 'frame-height' holds; for the other
   * holds it is the frame height of the first picture, whose head height (or pupil distance) in
   * the picture the others take on.
   */
  readonly frameHeight: number;
  /** The named framing this came from (models/framings.json), or null if typed. */
  readonly framing: string | null;
  readonly orientation: Orientation;
  /** Where the eyes sit: share of the frame height from the top; across, share from the left. */
  readonly eyesAt: number;
  readonly eyesAcross: number;
}

/** A camera body of a kit. */
export interface Body {
  readonly id: string;
  readonly name: string;
  /** A file of models/formats. */
  readonly format: string;
  readonly megapixels: number;
}

/** A frame height seen at a distance on the tape, the focus untouched between two of them. */
export interface MeasuredFrame {
  readonly tape: number;
  readonly frame: number;
}

/** Two frames of one lens, and the distance on the tape that it was focused at; absent: the nearer one's. */
export interface Measured {
  readonly near: MeasuredFrame;
  readonly far: MeasuredFrame;
  readonly focusedAt?: number;
}

/** A lens that the photographer typed or measured; its figures mean what those of a `Lens` of optics mean. */
export interface OwnLens {
  readonly id: string;
  readonly name: string;
  readonly focal: readonly [number, number];
  readonly widest: readonly [number, number];
  readonly smallest: number;
  readonly nearestFocus: readonly [number, number];
  readonly length: number;
  readonly largestMagnification?: number;
  readonly entrancePupil?: number;
  readonly pupilMagnification?: number;
  /** Where it was measured: what the entrance pupil's place and the focal length follow from. */
  readonly measured?: Measured;
}

export interface Kit {
  readonly id: string;
  readonly name: string;
  readonly bodies: readonly [Body, ...Body[]];
  /** The body that the pictures are taken with. */
  readonly body: string;
  /** Ids of models/lenses or of own lenses. */
  readonly lenses: readonly string[];
}

/** A thing on the floor, or the ground a door sweeps. */
export interface Obstacle {
  readonly id: string;
  readonly name: string;
  readonly kind: 'thing' | 'door';
  /** Floor coordinates of the corner nearest to the room's own corner (0, 0). */
  readonly x: number;
  readonly y: number;
  /** Along x. */
  readonly length: number;
  /** Along y. */
  readonly width: number;
  readonly height: number;
}

/**
 * The room that is photographed in. Floor coordinates: x along its length from the end wall, y across its
 * width. How the camera's axis lies in it, `RoomPlan` tells.
 */
export interface Room extends RoomPlan {
  readonly name: string;
  readonly ceiling: number;
  readonly backdrop: RoomPlan['backdrop'] & {
    /** Upper edge above the floor. */
    readonly top: number;
  };
  /** Kept free behind the sensor mark for the photographer. */
  readonly behindCamera: number;
  readonly obstacles: readonly Obstacle[];
}

/** A row of a group; rows are told from the camera backwards. */
export interface GroupRow {
  readonly place: 'seated' | 'standing' | 'step';
  /** Files of models/sitters, from the picture's left. */
  readonly models: readonly string[];
  /** Between neighbours, eyes to eyes. */
  readonly spacing: number;
}

export interface Group {
  readonly rows: readonly GroupRow[];
  /** Between two rows, eyes to eyes along the axis. */
  readonly rowSpacing: number;
  /** Height of one step. */
  readonly step: number;
  readonly curve: 'straight' | 'curved';
}

/** A picture that is wanted from the sitting. */
export interface PlanWanted {
  readonly id: string;
  /** A file of models/framings, or null for a frame of its own. */
  readonly framing: string | null;
  /** Null: the framing's usual height for that person; for a group, as wide as it needs. */
  readonly frameHeight: number | null;
  readonly orientation: Orientation;
  readonly eyesAt: number;
  readonly cameraHeight: number;
  readonly of: PersonId | 'both' | 'group';
}

export interface PlanPart {
  /** In the order of shooting. */
  readonly wanted: readonly PlanWanted[];
  readonly asked: Asked;
  readonly group: Group | null;
  /** The picture that a chosen result is hung in. */
  readonly picture: Letter;
}

export interface Session {
  readonly version: typeof SESSION_VERSION;
  readonly title: string;
  readonly units: 'metric' | 'imperial';
  /** One or two, by their ids. */
  readonly people: readonly [Person, ...Person[]];
  readonly beside: Beside;
  readonly kits: readonly [Kit, ...Kit[]];
  /** The kit in use. */
  readonly kit: string;
  readonly ownLenses: readonly OwnLens[];
  readonly crop: Crop;
  readonly kept: Kept;
  readonly pictures: readonly Picture[];
  readonly light: Light;
  readonly room: Room;
  readonly plan: PlanPart;
  readonly play: { readonly from: Letter; readonly to: Letter; readonly seconds: number };
  /** Height of the print whose viewing distance is read. */
  readonly printHeight: number;
  readonly notes: string;
  /** Comparisons kept beside the one on the wall, in the order in which they are shown. */
  readonly comparisons: readonly Comparison[];
  /** Standpoints of a strip of pictures with equal crops, metres, rising. */
  readonly series: readonly number[];
  /** Standpoints of the table and the charts of readings, metres, rising. */
  readonly tabled: readonly number[];
  readonly handout: Handout;
}

/** What a comparison's pictures hang on, apart from the room and the kit, which all of them share. */
export type Compared = Pick<Session, 'people' | 'beside' | 'crop' | 'pictures' | 'light' | 'play'>;

/** A comparison kept for the handout and the talk. */
export interface Comparison extends Compared {
  readonly id: string;
  readonly name: string;
  /** Shown in the talk. */
  readonly presented: boolean;
  /** The class is asked which picture was taken from nearer, before it is told. */
  readonly asks: boolean;
}
