/** One picture of a contact sheet: who, how, in what light, from where. Degrees and metres. */
import type { Looks, Pose, SitterModel } from '../../src/sitter/types';
import type { LampSetting, Look, StudioLight } from '../../src/stage';

export type LampChange = Partial<LampSetting> & {
  /** Size of the source over its distance. */
  readonly softness?: number;
};

export interface Cell {
  readonly label: string;
  /** A file of models/sitters/. */
  readonly person: SitterModel['id'];
  readonly looks?: Partial<Looks>;
  readonly changes?: Readonly<Record<string, number>>;
  /** Angles in degrees. */
  readonly pose?: Partial<Pose>;
  /** The whole sitter about the vertical, degrees, positive to the sitter's left. */
  readonly turn?: number;
  /** 'lens', or yaw and pitch in degrees; straight ahead unless told. */
  readonly gaze?: 'lens' | readonly [yaw: number, pitch: number];
  readonly distance?: number;
  /** Frame height at the eyes, metres. */
  readonly frame?: number;
  /** Where the eyes sit, share of the height from the top. */
  readonly eyesAt?: number;
  /** The same of the width from the left. */
  readonly eyesAcross?: number;
  readonly look?: Look;
  /** A grey card is held before the face. */
  readonly card?: boolean;
  /** Angles in degrees. */
  readonly light?: { readonly [lamp in keyof StudioLight]?: LampChange };
  readonly backdrop?: number;
  /** Somebody beside, at metres from the first's eyes. */
  readonly beside?: {
    readonly person: SitterModel['id'];
    readonly looks?: Partial<Looks>;
    readonly pose?: Partial<Pose>;
    readonly at: readonly [number, number, number];
    readonly turn?: number;
  };
}

export interface Sheet {
  readonly name: string;
  readonly columns: number;
  /** A cell's picture, pixels. */
  readonly width: number;
  readonly height: number;
  readonly samples?: number;
  readonly cells: readonly Cell[];
}
