import type { Camera, Lens, SensorFormat } from '../optics/types';
import type { Sitter } from '../sitter/types';

/** All that one picture's readings are computed from. Lengths in metres. */
export interface PictureInput {
  readonly camera: Camera;
  readonly format: SensorFormat;
  readonly sitter: Pick<Sitter, 'dimensions' | 'landmarks'>;
  /** The lens that takes it, where one is chosen; else thin-lens figures alone. */
  readonly lens: Lens | null;
  /** Focal length of the whole (uncut) picture when the framing is cut out of it. */
  readonly cutFromFocal: number | null;
  readonly fNumber: number;
  /** Entrance pupil to the plane in focus, along the axis. */
  readonly focusDistance: number;
  /** Eyes to the backdrop, an upright plane behind the sitter. */
  readonly backdropDistance: number;
  readonly printHeight: number;
  readonly megapixels: number;
}

export type ReadingUnit =
  | 'm'
  | 'mm'
  | 'deg'
  | 'percent'
  | 'ratio'
  | 'share'
  | 'stops'
  | 'f-number'
  | 'megapixels'
  | 'text'
  | 'yes-or-no';

/** In SI (metres, radians, plain ratios); a code for text; null where there is none. */
export type ReadingValue = number | string | boolean | null;

/** One number measured from a picture, with its words. */
export interface Reading<Id extends string = string> {
  /** snake_case with the unit in it; a dot stands before a part: `frame_m.width`. */
  readonly id: Id;
  readonly name: string;
  readonly unit: ReadingUnit;
  readonly value: ReadingValue;
  /** Why there is no value, when there is none. */
  readonly missing?: string;
  /** The value as shown, unit included; a dash when there is none. */
  readonly shown: string;
  /** One sentence a client would understand, with this picture's own values in it. */
  readonly meaning: string;
  readonly formula: string;
}
