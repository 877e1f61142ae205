/** What the drawings of the room are told. Metres and radians. */
import type { Camera, Vec3 } from '../../optics/types';
import type { RoomAsked } from '../../plan/room';
import type { Units } from '../../readings/quantities';
import type { Letter } from '../../session/types';
import type { ProfileOutline } from '../profile/outline';
import type { FocusMark } from '../rail/types';
import type { MeasureText } from '../text-width';

/** How far something may be moved; [min, max] are values of the number that is moved. */
export interface Move {
  readonly min: number;
  readonly max: number;
  /** Why it cannot go on, when it stands at a limit. One sentence. */
  readonly reason?: string | undefined;
}

/** Everything that can be moved, and by what numbers: see `onMove`. */
export type PlanThing =
  /** Standpoint: straight from the eyes to the entrance pupil. */
  | { readonly kind: 'camera'; readonly letter: Letter }
  /** Entrance pupil above the floor. */
  | { readonly kind: 'lens'; readonly letter: Letter }
  /** Eyes before the backdrop; from above also the axis beside the room's middle. */
  | { readonly kind: 'sitter' }
  /** Backdrop off the wall. */
  | { readonly kind: 'backdrop' }
  /** Upper edge of the backdrop above the floor. */
  | { readonly kind: 'backdrop-top' }
  /** Floor coordinates: of an obstacle's corner, of a light's stand. */
  | { readonly kind: 'obstacle'; readonly id: string }
  | { readonly kind: 'light'; readonly id: string };

export type Moved = readonly [number] | readonly [number, number];
export type MovePhase = 'start' | 'move' | 'end';

export interface PlanActions {
  /** One drag, or one run of a held key, is one start, many moves and one end: one step to undo. */
  onMove?(what: PlanThing, to: Moved, phase: MovePhase): void;
  /** A value is to be typed: the `which`th number; `first` is the character that began it, or empty. */
  onType?(what: PlanThing, which: 0 | 1, first: string): void;
}

/** A person; places are in the frame of the first person, whose eyes are its origin. */
export interface PlanFigure {
  readonly id: string;
  readonly name: string;
  /** Midway between the pupils. */
  readonly eyes: Vec3;
  /** Height of what the person stands or sits on above the room's floor: a step. */
  readonly stepHeight: number;
  readonly seated: boolean;
  /** Whole body and head about the vertical through the eyes, positive to the sitter's left. */
  readonly bodyTurn: number;
  readonly headTurn: number;
  /** Ellipses from above: breadth, depth, and how far their middle lies behind the eyes. */
  readonly shoulders: EllipseAbove;
  readonly head: EllipseAbove;
  /** Nose tip before the eyes. */
  readonly nose: number;
  /** Above the eyes. */
  readonly crown: number;
  readonly chin: number;
  readonly shoulderHeight: number;
  /** From the side, of this person's own mesh; null: drawn from the dimensions. */
  readonly profile: ProfileOutline | null;
}

export interface EllipseAbove {
  readonly breadth: number;
  readonly depth: number;
  readonly behind: number;
}

export interface PlanPicture {
  readonly letter: Letter;
  readonly camera: Pick<Camera, 'position' | 'tilt' | 'frustum'>;
  /** Straight from the eyes to the entrance pupil. */
  readonly standpoint: number;
  /** Nearest and farthest sharp depth from the entrance pupil; the far one may be infinite. */
  readonly sharp: readonly [near: number, far: number];
  /** Entrance pupil to sensor mark. */
  readonly toSensor: number;
  readonly move?: Move | undefined;
  readonly lift?: Move | undefined;
}

export interface PlanLight {
  readonly id: string;
  readonly name: string;
  /** Middle of the soft box: floor coordinates, and height above the floor. */
  readonly x: number;
  readonly y: number;
  readonly height: number;
  /** Side or diameter of the soft box. */
  readonly size: number;
  /** Pictures in which it is seen, and those whose camera stands in its light. */
  readonly inPicture: readonly Letter[];
  readonly shadedBy: readonly Letter[];
  readonly move?: readonly [x: Move, y: Move] | undefined;
}

/** A raised part of the floor: from and to along the axis (z), and its height. */
export interface PlanStep {
  readonly from: number;
  readonly to: number;
  readonly height: number;
}

export interface PlanContent {
  readonly units: Units;
  readonly room: RoomAsked;
  /** The first person's eyes above the floor. */
  readonly eyeHeight: number;
  readonly people: readonly PlanFigure[];
  readonly steps: readonly PlanStep[];
  readonly pictures: readonly PlanPicture[];
  /** The picture that is spoken of: its sharp zone and distance are told first. */
  readonly chosen: Letter | null;
  /** As on the rail: where a lens's nearest focus lets it stand. */
  readonly focus: readonly FocusMark[];
  readonly lights: readonly PlanLight[];
  readonly moves: {
    /** Eyes before the backdrop. */
    readonly sitter?: Move | undefined;
    /** Axis beside the middle. */
    readonly aside?: Move | undefined;
    readonly backdrop?: Move | undefined;
    readonly backdropTop?: Move | undefined;
    /** Corners of obstacles, by id. */
    readonly obstacles?: Readonly<Record<string, readonly [x: Move, y: Move]>> | undefined;
  };
}

/** The sheet a drawing lies on: one unit is one CSS pixel, except that print fixes the scale. */
export interface PlanSheet {
  readonly width: number;
  /** Root font size in CSS pixels: texts and rows follow it. */
  readonly rem: number;
  readonly maxHeight?: number | undefined;
  /** Printed at 1 : n; the drawing then takes the width that the room needs. */
  readonly printScale?: number | undefined;
  readonly measure: MeasureText;
}
