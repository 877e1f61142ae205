/** What a condition is solved from, and what it leaves. */
import { sensorSides } from '../optics/framing';
import type { SensorSides } from '../optics/types';
import type { FramePiece } from './growth';
import type { Interval } from './intervals';
import { type Polynomial, valueAt } from './polynomial';
import type { Asked, Condition, PlanCamera, PlanRoom, Wanted } from './types';

/** One condition with the depths at which it holds. */
export interface Solved {
  readonly by: Condition;
  readonly at: readonly Interval[];
}

/** A quotient of two polynomials, both positive where it is looked at. */
export interface Quotient {
  readonly over: Polynomial;
  readonly under: Polynomial;
}

export const quotientAt = ({ over, under }: Quotient, s: number): number =>
  valueAt(over, s) / valueAt(under, s);

/** One framing on one sensor, on a piece of the depths where its frame's height is upper / lower. */
export interface Scene extends FramePiece {
  readonly wanted: Wanted;
  readonly room: PlanRoom;
  readonly asked: Asked;
  readonly sensor: SensorSides;
  readonly circleOfConfusion: number;
}

/** The same with what an aperture must do there. */
export interface Case extends Scene {
  /** f-numbers from which each part that is asked for is sharp. */
  readonly sharpFrom: readonly Quotient[];
  /** The largest f-number at which the backdrop is as soft as asked; null where that is not asked. */
  readonly softUpTo: Quotient | null;
}

/** Width over height of the frame of a wanted picture on a format. */
export function sensorOf({ format }: PlanCamera, { orientation }: Wanted): SensorSides {
  return sensorSides(format, orientation);
}

/** The photographer behind the camera, shoulders across, metres: common practice, no source. */
export const PHOTOGRAPHER_WIDTH = 0.6;

/** A camera higher or lower than this share of its standpoint distance sees crown or chin, not a face. */
export const GREATEST_HEIGHT = 0.9;

/** Room beside the outermost of several people, a share of the frame's width at each side: by eye. */
export const PEOPLE_MARGIN = 0.05;
