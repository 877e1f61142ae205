/** What the files of models/ hold once read: metres inside, each with its source. */
import type { Lens, Orientation, SensorFormat } from '../optics/types';
import type { Metre } from '../optics/units';
import type { DimensionName, SitterModel } from '../sitter/types';

/** Where a file's numbers come from and how they are known ("read", "memory", "computed" ...). */
export interface Sourced {
  readonly source: string;
  readonly how: string;
}

export interface FormatModel extends SensorFormat, Sourced {
  readonly circleOfConfusionRule: string;
}

export interface LensModel extends Lens, Sourced {}

/** Levels of the standing sitter that framings run between. */
export const LEVELS = [
  'vertex',
  'menton',
  'suprasternale',
  'chest',
  'waist',
  'crotch',
  'knee',
  'floor',
] as const;
export type Level = (typeof LEVELS)[number];

/** From one level of the sitter down to another (or midway between two), plus some room. */
export interface FramingRule {
  readonly from: Level;
  readonly to: Level | readonly [Level, Level];
  /** Share added to the height between the levels; negative when the frame cuts into them. */
  readonly room: number;
}

export interface FramingModel extends Sourced {
  readonly id: string;
  readonly name: string;
  readonly orientation: Orientation;
  /** Usual place of the eyes: share of the frame height from the top. */
  readonly eyesAt: number;
  readonly least: FramingRule;
  readonly usual: FramingRule;
  readonly most: FramingRule;
  /** Where the lower edge cuts, in one sentence. */
  readonly cut: string;
  /** Usual height of the camera, in one sentence. */
  readonly cameraHeight: string;
}

/** A backdrop as it is sold. */
export interface BackdropModel extends Sourced {
  readonly id: string;
  readonly name: string;
  readonly width: Metre;
  /** What such a width is used for. */
  readonly use?: string;
}

/** Millimetres, over the individual records of one survey. */
export interface Percentiles {
  readonly p1: number;
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
  readonly p99: number;
}

/** What a dimension of a sitter means and where adults stand. */
export interface DimensionModel {
  readonly name: string;
  readonly kind: string;
  readonly definition: string;
  readonly survey?: string;
  readonly female?: Percentiles;
  readonly male?: Percentiles;
  readonly note?: string;
}

/** Everything in models/, by id, in the order a list shows it. */
export interface Models {
  /** Smallest diagonal first. */
  readonly formats: ReadonlyMap<string, FormatModel>;
  /** Shortest focal length first. */
  readonly lenses: ReadonlyMap<string, LensModel>;
  /** Tightest first. */
  readonly framings: ReadonlyMap<string, FramingModel>;
  /** Narrowest first. */
  readonly backdrops: ReadonlyMap<string, BackdropModel>;
  readonly sitters: ReadonlyMap<string, SitterModel>;
  readonly dimensions: Readonly<Record<DimensionName, DimensionModel>>;
}
