/** What a condition is solved from, and what it leaves. */
import { sensorSides } from '../optics/framing';
import type { SensorSides } from '../optics/types';
import type { FramePiece } from './growth';
import type { Interval } from './intervals';
import type { Asked, Condition, PlanCamera, PlanRoom, Wanted } from './types';

/** One condition with the depths at which it holds. */
export interface Solved {
  readonly by: Condition;
  readonly at: readonly Interval[];
}

/** One framing with one camera, on a piece of the depths where its frame's height is upper / lower. */
export interface Case extends FramePiece {
  readonly wanted: Wanted;
  readonly room: PlanRoom;
  readonly asked: Asked;
  readonly camera: PlanCamera;
  readonly sensor: SensorSides;
}

/** Width over height of the frame of a wanted picture on a format. */
export function sensorOf({ format }: PlanCamera, { orientation }: Wanted): SensorSides {
  return sensorSides(format, orientation);
}

/** The photographer behind the camera, shoulders across, metres: common practice, no source. */
export const PHOTOGRAPHER_WIDTH = 0.6;

/** A camera higher or lower than this share of its standpoint distance sees crown or chin, not a face. */
export const GREATEST_HEIGHT = 0.9;
