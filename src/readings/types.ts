import type { Camera, Lens, SensorFormat } from '../optics/types';
import type { Landmarks, Sitter } from '../sitter/types';

/** All that one picture's readings are computed from. */
export interface PictureInput {
  readonly camera: Camera;
  readonly format: SensorFormat;
  readonly sitter: Sitter;
  /** The lens that takes it, where one is chosen; else thin-lens figures alone. */
  readonly lens: Lens | null;
  /** Focal length of the whole (uncut) picture when the framing is cut out of it. */
  readonly cutFromFocal: number | null;
  readonly fNumber: number;
  readonly focusDistance: number;
  readonly backdropDistance: number;
  readonly printHeight: number;
  readonly megapixels: number;
}

export type ReadingUnit = 'm' | 'mm' | 'deg' | 'percent' | 'ratio' | 'stops' | 'text' | 'share';

/** One number measured from a picture. `value` is in SI (metres, radians, plain ratios). */
export interface Reading {
  /** snake_case, unit suffix as the CLI prints it, e.g. nose_to_ear_ratio. */
  readonly id: string;
  readonly name: string;
  readonly unit: ReadingUnit;
  readonly value: number | null;
  /** Why there is no value, when there is none. */
  readonly missing?: string;
  /** The value as shown, unit included. */
  readonly shown: string;
  /** One sentence a client would understand, with this picture's own values in it. */
  readonly meaning: string;
  readonly formula: string;
}

export type { Landmarks };
