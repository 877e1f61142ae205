/** What the sheet of stills asks. */
import type { Format } from '../../handout/encode/types';
import { fitsWebp } from '../../handout/encode/webp';
import { type Below, greatestWidth, LEAST_WIDTH, sheetFor } from '../../handout/sheet';
import type { Models } from '../../models/types';
import { sensorSides } from '../../optics/framing';
import { bodyOf } from '../../session/kit';
import { known } from '../../session/known';
import type { Letter, Session } from '../../session/types';
import { SAMPLES } from '../../stage';

/** All pictures side by side, the crop from each standpoint of the series, or one picture. */
export type What = 'all' | 'strip' | Letter;

export interface Options {
  readonly what: What;
  readonly format: Format;
  /** Of the sheet, pixels. */
  readonly width: number;
  /** 1..100; JPEG and WebP. */
  readonly quality: number;
  /** Views a pixel. */
  readonly samples: number;
  /** Blurred as the aperture blurs; else all is sharp. */
  readonly blurred: boolean;
  readonly below: Below;
  /** With names, notes, kit and measured bodies. */
  readonly whole: boolean;
}

export const USUAL_OPTIONS: Options = {
  what: 'all',
  format: 'png',
  width: 3840,
  quality: 92,
  samples: SAMPLES,
  blurred: false,
  below: { captions: true, letters: true, scale: false },
  whole: false,
};

export const SAMPLE_CHOICES = [16, 32, 64, 128] as const;
export const QUALITIES = { least: 1, most: 100 } as const;

/** Width over height of each picture. */
function aspectsOf(session: Session, models: Models, what: What): number[] {
  const { crop, pictures, series } = session;
  const format = known(models.formats, bodyOf(session).format);
  const { width, height } = sensorSides(format, crop.orientation);
  const count = what === 'all' ? pictures.length : what === 'strip' ? series.length : 1;
  return Array<number>(count).fill(width / height);
}

/** Pixels that a still's width may have, and whether a WebP of that width fits in memory. */
export function widthRange(session: Session, models: Models, { what, below }: Options) {
  const aspects = aspectsOf(session, models, what);
  return {
    least: LEAST_WIDTH,
    most: greatestWidth(aspects, below),
    fitsWebp: (width: number): boolean => fitsWebp(width, sheetFor(width, aspects, below).height),
  };
}
