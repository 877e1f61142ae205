/** The legal range of every number of the document, in one table; metres, radians, plain ratios. */
import { LEAST_BEFORE, LEAST_TO_WALL } from '../plan/run';

export interface Range {
  readonly least: number;
  readonly most: number;
}

const range = (least: number, most: number): Range => ({ least, most });
const degrees = (least: number, most: number): Range =>
  range((least * Math.PI) / 180, (most * Math.PI) / 180);

export const LIMITS = {
  /** Nearer, the lens would stand in the face; farther, no portrait is taken. */
  standpoint: range(0.15, 30),
  frameHeight: range(0.1, 6),
  focal: range(0.004, 1.2),
  fNumber: range(0.7, 90),
  cameraHeight: range(-1.5, 1.5),
  tilt: degrees(-45, 45),
  /** Shares of the frame: the eyes stay in the picture. */
  eyesAt: range(0, 1),
  eyesAcross: range(0, 1),
  megapixels: range(1, 500),
  lean: degrees(0, 30),
  bodyTurn: degrees(-180, 180),
  headTurn: degrees(-80, 80),
  headNod: degrees(-45, 45),
  headTilt: degrees(-35, 35),
  smile: range(0, 1),
  /** Farther aside the iris goes under the lids and corners of the eye. */
  gazeYaw: degrees(-35, 35),
  gazePitch: degrees(-25, 20),
  besideRight: range(-3, 3),
  besideForward: range(-3, 3),
  lightAzimuth: degrees(-180, 180),
  lightElevation: degrees(-80, 89),
  lightStrength: range(0, 2),
  lightSoftness: range(0.02, 1.5),
  lightDistance: range(0.3, 12),
  lightSize: range(0.01, 6),
  /** Eyes to the backdrop. */
  backdrop: range(LEAST_BEFORE, 30),
  cameraWall: range(LEAST_TO_WALL, 60),
  behindCamera: range(0, 3),
  /** Length and width of the room; `clampRoom` keeps what stands in it inside. */
  roomSide: range(1, 100),
  ceiling: range(1.8, 12),
  /** The axis keeps so far from a wall beside it. */
  besideAxis: range(0.3, 50),
  backdropOffWall: range(0, 20),
  backdropWidth: range(0.3, 12),
  backdropTop: range(0.3, 12),
  obstacleSize: range(0.02, 20),
  obstacleHeight: range(0.02, 12),
  lensLength: range(0.01, 1.5),
  nearestFocus: range(0.02, 20),
  largestMagnification: range(0.01, 5),
  /** Behind the sensor mark (-) it lies in some long lenses. */
  entrancePupil: range(-0.5, 1),
  pupilMagnification: range(0.1, 10),
  measuredTape: range(0.1, 50),
  measuredFrame: range(0.02, 50),
  rowSpacing: range(0.2, 3),
  personSpacing: range(0.3, 3),
  step: range(0.05, 1),
  askedNoseGain: range(0.005, 1),
  askedRowDifference: range(0.005, 1),
  askedStretch: range(0.005, 1),
  askedPersonal: range(0.15, 10),
  askedClearance: range(0, 5),
  /** Blur disc over the picture's height. */
  askedSoftness: range(0.0005, 0.5),
  askedBackdropMargin: range(0, 2),
  playSeconds: range(0.5, 60),
  printHeight: range(0.02, 10),
  /** A changed dimension over the sitter's own: a little beyond the 1st and 99th percentile. */
  dimensionChange: range(0.65, 1.45),
} as const satisfies Record<string, Range>;

/** Longest texts, in characters. */
export const TITLE_LENGTH = 200;
export const NOTES_LENGTH = 20_000;
export const NAME_LENGTH = 80;
export const PAGE_WORDS_LENGTH = 4000;
/** Of a logo's data address: an image of about 220 kB. */
export const LOGO_LENGTH = 300_000;
/** A strip shows a change in no fewer pictures. */
export const LEAST_SERIES = 5;

/** Most of each in one document. */
export const MOST = {
  kits: 12,
  bodies: 8,
  lenses: 60,
  ownLenses: 40,
  obstacles: 24,
  wanted: 12,
  rows: 8,
  /** People of a group, all rows together. */
  group: 30,
  comparisons: 24,
  series: 12,
  tabled: 200,
  pages: 40,
} as const;

/** The nearest legal value. A value that is no number takes the least; -0, which no file keeps, is 0. */
export const clamp = (value: number, { least, most }: Range): number =>
  Number.isNaN(value) ? least : Math.min(most, Math.max(least, value)) + 0;
