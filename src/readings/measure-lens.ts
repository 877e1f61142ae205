/** Lens, distances and frame of one picture. */
import { eyeDepth, frameAtDepth, standpointDistance } from '../optics/camera';
import { type Cut, cutFrom } from '../optics/cut';
import { angleOfView, diagonal, frameForFocal, sensorSides } from '../optics/framing';
import { focalForImageDistance, imageDistance } from '../optics/lens';
import { viewingDistance } from '../optics/print';
import { lensMarkDistance, markedFocalFor } from '../optics/real-lens';
import { must } from '../optics/result';
import type { Result, SensorSides } from '../optics/types';
import { type Metre, metres } from '../optics/units';
import type { PictureInput } from './types';

/** The value, or null for a refused request: the row's words then say why there is none. */
export const orNull = <T>(result: Result<T>): T | null => (result.ok ? result.value : null);

/** What stands on the camera, and the uncut lens that would draw the same picture. */
export interface LensFigures {
  /** Thin-lens focal length of what is on the camera. */
  readonly focal: Metre;
  readonly fNumber: number;
  readonly imageDistance: Metre;
  readonly magnification: number;
  readonly focusDistance: Metre;
  /** Without a cut these equal the above; with one, blur and angles follow these. */
  readonly asIf: {
    readonly focal: Metre;
    readonly fNumber: number;
    readonly imageDistance: Metre;
  };
  /** The whole sensor as the upright picture shows it. */
  readonly sensor: SensorSides;
}

export interface LensMeasures extends LensFigures {
  readonly standpoint: Metre;
  readonly eyeDepth: Metre;
  readonly sensorMark: Metre;
  /** Mark to set on a chosen lens, breathing allowed for; null without one. */
  readonly lensMark: Metre | null;
  readonly angle: {
    readonly horizontal: number;
    readonly vertical: number;
    readonly diagonal: number;
  };
  readonly frame: { readonly width: Metre; readonly height: Metre };
  readonly print: { readonly height: Metre; readonly viewing: Metre };
  readonly cut: Cut | null;
}

function lensFigures(input: PictureInput): LensFigures {
  const { camera, format, cutFromFocal } = input;
  const orientation = camera.sensor.width > camera.sensor.height ? 'landscape' : 'portrait';
  const sensor = sensorSides(format, orientation);
  const focusDistance = metres(input.focusDistance);
  if (cutFromFocal === null) {
    const focal = must(focalForImageDistance(camera.imageDistance, focusDistance));
    const own = { focal, fNumber: input.fNumber, imageDistance: camera.imageDistance };
    return {
      ...own,
      magnification: camera.imageDistance / focusDistance,
      focusDistance,
      asIf: own,
      sensor,
    };
  }
  const focal = metres(cutFromFocal);
  const image = must(imageDistance(focal, focusDistance));
  const asIfImage = metres(sensor.height / (camera.frustum.top - camera.frustum.bottom));
  const asIfFocal = must(focalForImageDistance(asIfImage, focusDistance));
  return {
    focal,
    fNumber: input.fNumber,
    imageDistance: image,
    magnification: image / focusDistance,
    focusDistance,
    asIf: {
      focal: asIfFocal,
      fNumber: (input.fNumber * asIfFocal) / focal,
      imageDistance: asIfImage,
    },
    sensor,
  };
}

/**
 * Lens, distances and frame. The camera has been resolved, so its figures are in range.
 * @throws RangeError when focus distance or f-number contradict the camera.
 */
export function measureLens(input: PictureInput): LensMeasures {
  const { camera, lens } = input;
  const figures = lensFigures(input);
  const { focal, focusDistance, sensor, asIf } = figures;
  const depth = eyeDepth(camera);
  const frame = must(frameAtDepth(camera, depth));
  const view = (side: Metre) => must(angleOfView(side, asIf.imageDistance));
  const sensorMark = lens
    ? must(lensMarkDistance(lens, focal, focusDistance))
    : metres(focusDistance + figures.imageDistance);
  const printHeight = metres(input.printHeight);
  return {
    ...figures,
    standpoint: standpointDistance(camera),
    eyeDepth: depth,
    sensorMark,
    lensMark: lens ? orNull(markedFocalFor(lens, focal, sensorMark)) : null,
    angle: {
      horizontal: view(sensor.width),
      vertical: view(sensor.height),
      diagonal: view(diagonal(sensor)),
    },
    frame,
    print: {
      height: printHeight,
      viewing: must(viewingDistance(depth, printHeight, frame.height)),
    },
    cut: input.cutFromFocal === null ? null : cutOf(input, figures),
  };
}

function cutOf(
  input: PictureInput,
  { focal, focusDistance, sensor, asIf }: LensFigures,
): Cut | null {
  const frameHeight = must(frameForFocal(asIf.focal, focusDistance, sensor.height));
  return orNull(
    cutFrom({
      focal,
      fNumber: input.fNumber,
      focus: focusDistance,
      sensor,
      frameHeight,
      megapixels: input.megapixels,
    }),
  );
}
